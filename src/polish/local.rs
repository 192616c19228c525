//! Extra work at single defects that the steps over the whole panel do not take out.

use super::plan::{PlannedStep, planned_steps};
use super::search::Found;
use super::step::PolishStep;
use crate::measure::thickness;
use crate::units::{Micrometres, Seconds, SquareMetres};

/// Surface that is worked around a single defect: a hand's breadth square (our estimate).
pub const LOCAL_AREA_M2: f64 = 0.04;

/// Work at one place, before the steps over the whole panel.
#[derive(Debug, Clone, PartialEq)]
pub struct LocalWork {
    /// The defect, by its place in the facts of the panel.
    pub defect: usize,
    /// Steps in order.
    pub steps: Vec<PlannedStep>,
    /// Mean removal there, on top of that of the panel.
    pub removal: Micrometres,
    /// Upper bound of that removal; together with the panel's never above the budget.
    pub removal_upper: Micrometres,
    /// Time.
    pub seconds: Seconds,
}

impl LocalWork {
    pub(super) fn new(defect: usize, found: &Found, steps: &[PolishStep], panel: SquareMetres) -> Self {
        Self {
            defect,
            steps: planned_steps(found, steps, LOCAL_AREA_M2.min(panel.m2())),
            removal: thickness(found.removal),
            removal_upper: thickness(found.removal_upper),
            seconds: found.seconds,
        }
    }
}
