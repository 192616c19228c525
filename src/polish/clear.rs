//! How much clear there is: measured where a gauge can, otherwise assumed, and then always a range.

use super::policy::RemovalPolicy;
use crate::measure::FilmSummary;
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Where a clear thickness comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ClearBasis {
    /// A share of the film; the gauge reads everything above the base and can't see the clear.
    Assumed,
    /// Read on its own by a gauge that can tell the layers apart.
    Measured,
}

impl fmt::Display for ClearBasis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Assumed => say!("polish-clear-is-assumed"),
            Self::Measured => say!("polish-clear-is-measured"),
        })
    }
}

/// Clear coat of a panel as a range.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClearEstimate {
    /// What decisions rest on.
    pub lower: Micrometres,
    /// What it may be at most.
    pub upper: Micrometres,
    /// Where it comes from.
    pub basis: ClearBasis,
}

impl ClearEstimate {
    /// The range and where it comes from, for the place where it is shown.
    pub fn in_words(&self) -> String {
        let (low, high) = (decimal(self.lower.um(), 0), format!("{:.0}", self.upper));
        match self.basis {
            ClearBasis::Assumed => say!("polish-clear-assumed", low = low, high = high),
            ClearBasis::Measured => say!("polish-clear-measured", low = low, high = high),
        }
    }
}

/// Clear that may be assumed under a film: shares of its lower bound and of its mean, capped.
pub(super) fn assume(film: &FilmSummary, policy: &RemovalPolicy) -> ClearEstimate {
    let lower = (policy.assumed_share_low * film.lower.um()).min(policy.assumed_low_at_most_um.um());
    let upper = (policy.assumed_share_high * film.mean).min(policy.assumed_high_at_most_um.um()).max(lower);
    ClearEstimate {
        lower: crate::measure::thickness(lower),
        upper: crate::measure::thickness(upper),
        basis: ClearBasis::Assumed,
    }
}
