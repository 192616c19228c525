//! What the visits of one vehicle took from a panel, all together.
//!
//! Clear that is gone does not come back, so removals add up over visits. What counts is the most that may have gone: the upper
//! end of the interval where it was measured, the upper bound of the plan where it was not.

use crate::measure::thickness;
use crate::say;
use crate::units::Micrometres;
use serde::{Deserialize, Serialize};

/// Where a removal is known from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RemovalSource {
    /// Read before and after at the same spots.
    Measured,
    /// Planned, and done as planned.
    Planned,
    /// Told by somebody, or estimated.
    Told,
}

impl RemovalSource {
    /// Every source, the surest first.
    pub const ALL: [Self; 3] = [Self::Measured, Self::Planned, Self::Told];

    /// As it stands in a list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Measured => say!("polish-removal-measured"),
            Self::Planned => say!("polish-removal-planned"),
            Self::Told => say!("polish-removal-told"),
        }
    }
}

/// The removal of one visit from one panel.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LedgerEntry {
    /// Date or name of the visit, as the shop writes it.
    pub visit: String,
    /// What probably went.
    pub removed_um: Micrometres,
    /// The most that may have gone; this counts. Never below `removed_um`.
    pub upper_um: Micrometres,
    /// Where it is known from.
    pub source: RemovalSource,
}

/// All recorded earlier visits of one panel, in any order.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Ledger {
    /// The visits.
    pub entries: Vec<LedgerEntry>,
}

impl Ledger {
    /// Whether no visit is recorded.
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// What went in all recorded visits, for [`super::PanelFacts::removed_um`].
    pub fn removed(&self) -> Micrometres {
        thickness(self.entries.iter().map(|e| e.upper_um.um()).sum())
    }

    /// Visits left at a removal like `upper` each before `lifetime` is used up; `None` when nothing is removed.
    pub fn visits_left(&self, lifetime: Micrometres, upper: Micrometres) -> Option<u32> {
        let left = lifetime.saturating_sub(self.removed()).um();
        (upper > Micrometres::ZERO).then(|| (left / upper.um() + 1e-9).floor() as u32)
    }
}
