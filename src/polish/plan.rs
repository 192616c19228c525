//! What will be done to a panel.

use super::budget::Budget;
use super::choose::Choice;
use super::customer;
use super::facts::PanelFacts;
use super::local::LocalWork;
use super::outcome::{Outcome, correction, outcomes};
use super::prospect::Prospect;
use super::search::Found;
use super::step::{PolishStep, StepKind};
use super::words;
use crate::measure::thickness;
use crate::say;
use crate::units::{Micrometres, Seconds};
use serde::{Deserialize, Serialize};
use std::fmt;

/// How hard a panel is worked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// Not polished.
    Leave,
    /// Finest polish for gloss only.
    Gloss,
    /// One correcting step that leaves gloss.
    OneStep,
    /// A correcting step and at least one finer one.
    TwoStep,
    /// Wet sanding and what must follow it.
    SandAndPolish,
}

impl Level {
    /// All of them, gentlest first.
    pub const ALL: [Self; 5] = [Self::Leave, Self::Gloss, Self::OneStep, Self::TwoStep, Self::SandAndPolish];

    /// The level of a sequence, by the kinds of its steps.
    pub fn of(kinds: impl IntoIterator<Item = StepKind>) -> Self {
        let kinds: Vec<StepKind> = kinds.into_iter().collect();
        match kinds.as_slice() {
            [] => Self::Leave,
            all if all.contains(&StepKind::Sand) => Self::SandAndPolish,
            all if all.iter().all(|k| *k == StepKind::Finish) => Self::Gloss,
            [_] => Self::OneStep,
            _ => Self::TwoStep,
        }
    }

    /// As it stands in a list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Leave => say!("polish-level-leave"),
            Self::Gloss => say!("polish-level-gloss"),
            Self::OneStep => say!("polish-level-one-step"),
            Self::TwoStep => say!("polish-level-two-step"),
            Self::SandAndPolish => say!("polish-level-sand-and-polish"),
        }
    }
}

impl fmt::Display for Level {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}

/// What the customer wants.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Goal {
    /// Gloss only.
    Gloss,
    /// A share of the defects gone.
    Correct {
        /// 0 to 1; 0.5, 0.8 and 0.95 are usual.
        #[serde(deserialize_with = "crate::units::fields::share")]
        share: f64,
    },
}

impl Goal {
    /// The share of the defects that shall go; 0 for gloss only.
    pub fn share(self) -> f64 {
        match self {
            Self::Gloss => 0.0,
            Self::Correct { share } if share.is_nan() => 0.0,
            Self::Correct { share } => share.clamp(0.0, 1.0),
        }
    }
}

/// A step of the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedStep {
    /// Its name, as [`PolishStep::called`] has it.
    pub name: String,
    /// Its place in the shop's list.
    pub index: usize,
    /// How hard it is.
    pub kind: StepKind,
    /// How often over the whole panel.
    pub passes: u32,
    /// Mean removal.
    pub removal: Micrometres,
    /// Upper bound of the removal.
    pub removal_upper: Micrometres,
    /// Time.
    pub seconds: Seconds,
}

/// A defect that does not go, or not wholly.
#[derive(Debug, Clone, PartialEq)]
pub struct Stays {
    /// Its place in [`PanelFacts::defects`].
    pub defect: usize,
    /// Why, and what else would help, as a sentence.
    pub reason: String,
}

/// What will be done to a panel, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishPlan {
    /// How hard.
    pub level: Level,
    /// Steps over the whole panel, in order; empty when it is left.
    pub steps: Vec<PlannedStep>,
    /// Extra work at single defects, before the last steps over the panel.
    pub local: Vec<LocalWork>,
    /// Mean removal of the steps over the panel.
    pub removal: Micrometres,
    /// Upper bound of that removal; never above the budget.
    pub removal_upper: Micrometres,
    /// Time of all steps, local work included.
    pub seconds: Seconds,
    /// Share of the weighted defects that goes, 0 to 1; those that removal can't help are not counted. 1 when there are none.
    pub correction: f64,
    /// Reasons as sentences for those who work on it; at least one.
    pub why: Vec<String>,
    /// What becomes of the panel, in a sentence or two for the customer.
    pub for_customer: String,
    /// What becomes of each defect, one entry each in the order given.
    pub outcomes: Vec<Outcome>,
    /// Defects that do not go or only fade, with the reason.
    pub stays: Vec<Stays>,
    /// Removals were compared in units of this: 0.01 µm, one two-thousandth of a budget above 20 µm, or more where the list of
    /// steps is too rich to try everything as finely. The plan is the best one as far as such units tell.
    pub resolution: Micrometres,
}

/// Finds the least work that reaches the goal within the budget, or the best that the budget allows.
///
/// Exact over all sequences of the given steps (hardest first, each at most once, passes within its range) in which every step
/// takes out the marks of the one before, the last leaves gloss, and the upper bound of the removal stays within the budget, and
/// over all extra work of that kind at single defects: reaching the goal comes first, then a higher correction while below it,
/// then less time, then less removal over the panel. Best as far as [`PolishPlan::resolution`] tells, with extra work at the
/// twelve heaviest single defects at most.
pub fn plan(facts: &PanelFacts<'_>, budget: &Budget, steps: &[PolishStep], goal: Goal) -> PolishPlan {
    Prospect::new(facts, budget, steps).plan(facts, budget, steps, goal)
}

/// A plan from what was chosen.
pub(super) fn planned(
    facts: &PanelFacts<'_>,
    budget: &Budget,
    steps: &[PolishStep],
    goal: Goal,
    chosen: &Choice,
) -> PolishPlan {
    let planned = planned_steps(&chosen.whole, steps, facts.area.m2());
    let local: Vec<LocalWork> =
        chosen.local.iter().map(|(defect, found)| LocalWork::new(*defect, found, steps, facts.area)).collect();
    let outcomes = outcomes(facts, chosen);
    let mut plan = PolishPlan {
        level: Level::of(planned.iter().map(|s| s.kind)),
        removal: thickness(chosen.whole.removal),
        removal_upper: thickness(chosen.whole.removal_upper).min(budget.allowed), // both differ by rounding at most
        seconds: chosen.whole.seconds + local.iter().map(|l| l.seconds).sum::<Seconds>(),
        correction: correction(facts, &outcomes),
        why: Vec::new(),
        for_customer: String::new(),
        stays: words::stays(facts, budget, &outcomes),
        resolution: thickness(chosen.unit),
        steps: planned,
        local,
        outcomes,
    };
    plan.why = words::why(facts, budget, &plan, goal);
    plan.for_customer = customer::sentence(facts, budget, &plan);
    plan
}

/// The steps of a sequence with the figures a person wants to see.
pub(super) fn planned_steps(found: &Found, steps: &[PolishStep], area_m2: f64) -> Vec<PlannedStep> {
    let planned = |&(index, passes): &(usize, u32)| {
        let step = &steps[index];
        PlannedStep {
            name: step.called().to_owned(),
            index,
            kind: step.kind,
            passes,
            removal: thickness(step.removal(passes)),
            removal_upper: thickness(step.removal_upper(passes)),
            seconds: step.seconds(passes, area_m2),
        }
    };
    found.passes.iter().map(planned).collect()
}
