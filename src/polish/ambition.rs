//! What more ambition costs, in time and in clear.

use super::budget::Budget;
use super::facts::PanelFacts;
use super::prospect::Prospect;
use super::step::PolishStep;
use crate::units::{Micrometres, Seconds};

/// What one goal costs on one panel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AmbitionPoint {
    /// The share of the defects that was wanted, 0 to 1.
    pub wanted: f64,
    /// The share that goes.
    pub correction: f64,
    /// Time, extra work at single defects included.
    pub seconds: Seconds,
    /// Mean removal over the panel.
    pub removal: Micrometres,
    /// Upper bound of the removal over the panel.
    pub removal_upper: Micrometres,
}

/// What each of several goals costs on one panel, in the order given; the same as planning each, but searched only once.
///
/// On a refused panel every point is zero.
pub fn ambition(facts: &PanelFacts<'_>, budget: &Budget, steps: &[PolishStep], wanted: &[f64]) -> Vec<AmbitionPoint> {
    Prospect::new(facts, budget, steps).ambition(facts, budget, wanted)
}
