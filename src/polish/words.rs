//! Reasons in sentences that an apprentice and a customer understand.

use super::budget::Budget;
use super::defect::{DefectKind, ETCH_REFINISH_METALLIC_UM};
use super::facts::{DefectFacts, PanelFacts};
use super::outcome::Outcome;
use super::plan::{Goal, Level, PolishPlan, Stays};
use super::search::finest_unit;
use crate::say;
use crate::units::{capital, minutes};
use crate::words::decimal;

/// Why the panel is worked like this; never empty.
pub(super) fn why(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan, goal: Goal) -> Vec<String> {
    if let Some(refused) = &budget.refused {
        return vec![refused.clone()];
    }
    let mut why = Vec::new();
    let allowed = format!("{:.1}", budget.allowed);
    if plan.level == Level::Leave && facts.level_at_most == Some(Level::Leave) {
        why.push(say!("polish-why-left-by-hand", allowed = allowed));
    } else if plan.level == Level::Leave {
        why.push(say!("polish-why-left", allowed = allowed));
    } else {
        why.push(what_is_done(plan));
        why.push(say!(
            "polish-why-takes",
            mean = format!("{:.1}", plan.removal),
            most = format!("{:.1}", plan.removal_upper),
            allowed = allowed,
            rule = budget.deciding().map_or("none", |l| l.what.as_str()),
        ));
        why.push(what_it_brings(facts, budget, plan, goal));
    }
    why.extend(budget.cautions.iter().cloned());
    why
}

fn what_is_done(plan: &PolishPlan) -> String {
    let step = |s: &super::plan::PlannedStep| say!("polish-done-step", step = &s.name, passes = s.passes);
    let steps: Vec<String> = plan.steps.iter().map(step).collect();
    say!(
        "polish-done",
        level = plan.level.name(),
        steps = steps.join(say!("polish-then")),
        places = plan.local.len(),
        time = minutes(plan.seconds),
    )
}

/// Whether removals were compared as finely as a budget like this is ever compared.
fn tried_all(plan: &PolishPlan, budget: &Budget) -> bool {
    plan.resolution.um() <= finest_unit(budget.allowed.um()) * 1.5
}

fn what_it_brings(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan, goal: Goal) -> String {
    let helped = facts.defects.iter().any(|d| d.kind.treatment().by_removal() && d.safe_weight() > 0.0);
    if !helped {
        return say!("polish-brings-gloss").to_owned();
    }
    let gone = decimal((plan.correction * 100.0).floor(), 0);
    let wanted = decimal(goal.share() * 100.0, 0);
    // Where the steps can be combined in too many ways, a better one may have been missed.
    let sure = if tried_all(plan, budget) { "yes" } else { "no" };
    if goal.share() <= 0.0 {
        say!("polish-brings-gloss-as-chosen", gone = gone)
    } else if plan.correction + 1e-9 >= goal.share() {
        say!("polish-brings-enough", gone = gone, wanted = wanted, sure = sure)
    } else if let Some(level) = facts.level_at_most {
        say!("polish-brings-held", gone = gone, wanted = wanted, level = level.name())
    } else {
        say!("polish-brings-less", gone = gone, wanted = wanted, sure = sure)
    }
}

/// The defects that stay or only fade, each with its reason.
pub(super) fn stays(facts: &PanelFacts<'_>, budget: &Budget, outcomes: &[Outcome]) -> Vec<Stays> {
    let unfinished = facts.defects.iter().zip(outcomes).enumerate().filter(|(_, (_, o))| **o != Outcome::Goes);
    unfinished.map(|(defect, (facts, outcome))| Stays { defect, reason: reason(facts, *outcome, budget) }).collect()
}

fn reason(defect: &DefectFacts, outcome: Outcome, budget: &Budget) -> String {
    let kind = capital(defect.kind.name());
    let treatment = defect.kind.treatment();
    if !treatment.by_removal() {
        return say!("polish-stays-helps", defect = kind, helps = treatment.in_words());
    }
    let gone = match outcome {
        Outcome::Fades { share } => decimal(share * 100.0, 0),
        _ => "none".to_owned(),
    };
    if budget.refused.is_some() {
        return say!("polish-stays-refused", defect = kind, gone = gone);
    }
    let deepest = defect.depth_um.0.max(defect.depth_um.1);
    if deepest > budget.allowed {
        let etched = matches!(defect.kind, DefectKind::Etching | DefectKind::BirdEtching);
        let help = if etched && deepest > ETCH_REFINISH_METALLIC_UM { "paint" } else { "touch-up" };
        let (depth, allowed) = (format!("{deepest:.1}"), format!("{:.1}", budget.allowed));
        return say!("polish-stays-deep", defect = kind, gone = gone, depth = depth, allowed = allowed, help = help);
    }
    say!("polish-stays-goal", defect = kind, gone = gone)
}
