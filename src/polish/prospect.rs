//! All that could be done to a panel, searched once, so that goal after goal can be tried without searching again.

use super::ambition::AmbitionPoint;
use super::budget::Budget;
use super::choose::{Candidates, Choice};
use super::facts::PanelFacts;
use super::outcome::{correction, outcomes};
use super::plan::{Goal, PolishPlan, planned};
use super::step::PolishStep;
use crate::measure::thickness;
use crate::units::Seconds;

/// What could be done to one panel within its budget. It holds for the facts, budget and steps it was made from; only the goal
/// may change.
#[derive(Debug, Clone)]
pub struct Prospect {
    /// None where nothing is polished.
    candidates: Option<Candidates>,
}

impl Prospect {
    /// Searches.
    pub fn new(facts: &PanelFacts<'_>, budget: &Budget, steps: &[PolishStep]) -> Self {
        Self { candidates: budget.refused.is_none().then(|| Candidates::new(facts, budget.allowed, steps)) }
    }

    fn choose(&self, share: f64) -> Choice {
        self.candidates.as_ref().and_then(|c| c.choose(share)).unwrap_or_else(Choice::nothing)
    }

    /// The plan for a goal; the same as [`super::plan()`]. Facts, budget and steps are those it was made from.
    pub fn plan(&self, facts: &PanelFacts<'_>, budget: &Budget, steps: &[PolishStep], goal: Goal) -> PolishPlan {
        planned(facts, budget, steps, goal, &self.choose(goal.share()))
    }

    /// What each of several goals costs, in the order given. Facts and budget are those it was made from.
    ///
    /// On a refused panel every point is zero.
    pub fn ambition(&self, facts: &PanelFacts<'_>, budget: &Budget, wanted: &[f64]) -> Vec<AmbitionPoint> {
        let point = |&wanted: &f64| {
            let share = Goal::Correct { share: wanted }.share();
            let choice = self.choose(share);
            let gone = if choice.whole.passes.is_empty() { 0.0 } else { correction(facts, &outcomes(facts, &choice)) };
            AmbitionPoint {
                wanted: share,
                correction: gone,
                seconds: choice.whole.seconds + choice.local.iter().map(|(_, found)| found.seconds).sum::<Seconds>(),
                removal: thickness(choice.whole.removal),
                removal_upper: thickness(choice.whole.removal_upper).min(budget.allowed),
            }
        };
        wanted.iter().map(point).collect()
    }
}
