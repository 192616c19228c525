//! Reasons in sentences that an apprentice and a customer understand.

use super::budget::Budget;
use super::defect::{DefectKind, ETCH_REFINISH_METALLIC_UM};
use super::facts::{DefectFacts, PanelFacts};
use super::outcome::Outcome;
use super::plan::{Goal, Level, PolishPlan, Stays};
use super::search::finest_unit;
use crate::units::{capital, minutes};

/// Why the panel is worked like this; never empty.
pub(super) fn why(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan, goal: Goal) -> Vec<String> {
    if let Some(refused) = &budget.refused {
        return vec![refused.clone()];
    }
    let mut why = Vec::new();
    if plan.level == Level::Leave && facts.level_at_most == Some(Level::Leave) {
        why.push(format!("Left as it is, as chosen by hand; {:.1} may go.", budget.allowed));
    } else if plan.level == Level::Leave {
        why.push(format!("Left as it is: {:.1} may go, and even the gentlest step could take more.", budget.allowed));
    } else {
        why.push(what_is_done(plan));
        why.push(format!(
            "It takes off about {:.1}, at most {:.1}; {:.1} may go{}.",
            plan.removal,
            plan.removal_upper,
            budget.allowed,
            budget.deciding().map(|l| format!(" ({})", l.what)).unwrap_or_default()
        ));
        why.push(what_it_brings(facts, budget, plan, goal));
    }
    why.extend(budget.cautions.iter().cloned());
    why
}

fn what_is_done(plan: &PolishPlan) -> String {
    let steps: Vec<String> = plan
        .steps
        .iter()
        .map(|s| format!("{} ({} {})", s.name, s.passes, if s.passes == 1 { "pass" } else { "passes" }))
        .collect();
    let extra = match plan.local.len() {
        0 => String::new(),
        1 => ", with extra work at one place first".to_owned(),
        n => format!(", with extra work at {n} places first"),
    };
    format!("{}: {}{extra}; {}.", plan.level, steps.join(", then "), minutes(plan.seconds))
}

/// Said where the steps can be combined in too many ways.
const NOT_ALL: &str = "with fewer steps or passes to choose from a better way may be found";

/// Whether removals were compared as finely as a budget like this is ever compared.
fn tried_all(plan: &PolishPlan, budget: &Budget) -> bool {
    plan.resolution.um() <= finest_unit(budget.allowed.um()) * 1.5
}

fn what_it_brings(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan, goal: Goal) -> String {
    let helped = facts.defects.iter().any(|d| d.kind.treatment().by_removal() && d.safe_weight() > 0.0);
    let percent = (plan.correction * 100.0).floor();
    if !helped {
        return "There is nothing to correct here, so it is polished for gloss only.".to_owned();
    }
    let wanted = goal.share() * 100.0;
    let gone = format!("about {percent:.0}\u{202f}% of the defects go");
    if wanted <= 0.0 {
        format!("For gloss only, as chosen; {gone} with it.")
    } else if plan.correction + 1e-9 >= goal.share() {
        let quickest = if tried_all(plan, budget) { "nothing quicker does that" } else { NOT_ALL };
        format!("{}, where {wanted:.0}\u{202f}% were wanted; {quickest}.", capital(&gone))
    } else if let Some(level) = facts.level_at_most {
        format!("{}; {wanted:.0}\u{202f}% were wanted, but it is held at {level} by hand.", capital(&gone))
    } else {
        let no_more = if tried_all(plan, budget) { "but these steps and this budget allow no more" } else { NOT_ALL };
        format!("{}; {wanted:.0}\u{202f}% were wanted, {no_more}.", capital(&gone))
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
        return format!("{kind}: {}.", treatment.in_words());
    }
    let deepest = defect.depth_um.0.max(defect.depth_um.1);
    let verb = match outcome {
        Outcome::Fades { share } => format!("about {:.0}\u{202f}% of it goes, the rest stays", share * 100.0),
        _ => "stays".to_owned(),
    };
    if budget.refused.is_some() {
        return format!("{kind}: {verb}, because this panel is not polished.");
    }
    if deepest > budget.allowed {
        let etched = matches!(defect.kind, DefectKind::Etching | DefectKind::BirdEtching);
        let help = if etched && deepest > ETCH_REFINISH_METALLIC_UM {
            "etching that deep needs new paint"
        } else {
            "touch-up or refinishing would help more"
        };
        return format!("{kind}: {verb}; it may be {deepest:.1} deep and only {:.1} may go; {help}.", budget.allowed);
    }
    format!(
        "{kind}: {verb}; taking out all of it is not needed for the goal, or these steps can't do it within the budget."
    )
}
