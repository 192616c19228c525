//! What more ambition costs, in time and in clear.

use super::budget::Budget;
use super::choose::{Candidates, Choice};
use super::facts::PanelFacts;
use super::outcome::{correction, outcomes};
use super::step::PolishStep;
use crate::measure::thickness;
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
    let candidates = budget.refused.is_none().then(|| Candidates::new(facts, budget.allowed, steps));
    let point = |&wanted: &f64| {
        let share = if wanted.is_nan() { 0.0 } else { wanted.clamp(0.0, 1.0) };
        let choice = candidates.as_ref().and_then(|c| c.choose(share)).unwrap_or_else(Choice::nothing);
        AmbitionPoint {
            wanted: share,
            correction: if choice.whole.passes.is_empty() { 0.0 } else { correction(facts, &outcomes(facts, &choice)) },
            seconds: choice.whole.seconds + choice.local.iter().map(|(_, found)| found.seconds).sum::<Seconds>(),
            removal: thickness(choice.whole.removal),
            removal_upper: thickness(choice.whole.removal_upper).min(budget.allowed),
        }
    };
    wanted.iter().map(point).collect()
}
