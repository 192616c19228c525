//! What the visits of one vehicle took from a panel, all together.
//!
//! Clear that is gone does not come back, so removals add up over visits. Where a removal was measured the upper end of its
//! interval counts; where it was only planned the upper bound of the plan counts. A measured value replaces the planned one of the
//! same visit, even if it is larger.

use crate::measure::thickness;
use crate::units::Micrometres;
use serde::{Deserialize, Serialize};

/// The removal of one visit from one panel.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LedgerEntry {
    /// Date or name of the visit, as the shop writes it.
    pub visit: String,
    /// Upper bound of what was planned.
    pub planned_upper_um: Micrometres,
    /// Upper end of what was measured, where it was.
    pub measured_upper_um: Option<Micrometres>,
}

impl LedgerEntry {
    /// What counts for this visit.
    pub fn counts(&self) -> Micrometres {
        self.measured_upper_um.unwrap_or(self.planned_upper_um)
    }

    /// Whether more went than the plan allowed for.
    pub fn over_plan(&self) -> bool {
        self.measured_upper_um.is_some_and(|measured| measured > self.planned_upper_um)
    }
}

/// All recorded visits of one panel, in any order.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Ledger {
    /// The visits.
    pub entries: Vec<LedgerEntry>,
}

impl Ledger {
    /// What went in all recorded visits, for [`super::PanelFacts::removed_um`].
    pub fn removed(&self) -> Micrometres {
        thickness(self.entries.iter().map(|e| e.counts().um()).sum())
    }

    /// Visits left at a removal like `upper` each before `lifetime` is used up; `None` when nothing is removed.
    pub fn visits_left(&self, lifetime: Micrometres, upper: Micrometres) -> Option<u32> {
        let left = lifetime.saturating_sub(self.removed()).um();
        (upper > Micrometres::ZERO).then(|| (left / upper.um() + 1e-9).floor() as u32)
    }
}
