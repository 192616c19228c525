//! What becomes of a panel, in words for somebody who brought a vehicle and never held a polisher.

use super::budget::Budget;
use super::defect::{DefectKind, Treatment};
use super::facts::PanelFacts;
use super::outcome::Outcome;
use super::plan::{Level, PolishPlan};
use crate::units::{capital, listed};

/// A sentence or two: how it is worked, what goes, what stays, how much of the clear coat it costs.
pub(super) fn sentence(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan) -> String {
    if let Some(refused) = &budget.refused {
        return refused.clone();
    }
    let how = match plan.level {
        Level::Leave => "This panel is left as it is.",
        Level::Gloss => "This panel is polished gently for gloss.",
        Level::OneStep => "This panel is polished once.",
        Level::TwoStep => "This panel is polished in several steps, from coarse to fine.",
        Level::SandAndPolish => "This panel is wet sanded and then polished until it is clear again.",
    };
    let mut text = how.to_owned();
    let fates = fates(facts, &plan.outcomes);
    if !fates.is_empty() {
        text.push(' ');
        text.push_str(&fates);
    }
    if let Some(clear) = budget.clear.filter(|c| plan.level != Level::Leave && c.lower.um() > 0.0) {
        let most = plan.local.iter().map(|l| l.removal_upper.um()).fold(0.0, f64::max) + plan.removal_upper.um();
        let share = (100.0 * most / clear.lower.um()).ceil();
        let which = if facts.finish == super::Finish::SingleStage { "paint" } else { "clear coat" };
        text += " It takes at most ";
        text += &share.to_string();
        text += "\u{202f}% of the ";
        text += which;
        text.push('.');
    }
    text
}

/// What becomes of each kind of defect; empty without any.
fn fates(facts: &PanelFacts<'_>, outcomes: &[Outcome]) -> String {
    let mut kinds: Vec<DefectKind> = facts.defects.iter().map(|d| d.kind).collect();
    kinds.sort_unstable();
    kinds.dedup();
    let mut groups: [Vec<&str>; 7] = Default::default();
    for kind in kinds {
        let mine = || facts.defects.iter().zip(outcomes).filter(|(d, _)| d.kind == kind).map(|(_, o)| *o);
        let group = match kind.treatment() {
            Treatment::Polish | Treatment::Reduce if mine().all(|o| o == Outcome::Goes) => 0,
            Treatment::Polish | Treatment::Reduce if mine().all(|o| o.share() <= 0.0) => 2,
            Treatment::Polish | Treatment::Reduce => 1,
            Treatment::Decontaminate => 3,
            Treatment::LevelLocally => 4,
            Treatment::TouchUp => 5,
            Treatment::Refinish => 6,
        };
        groups[group].push(kind.name());
    }
    let ends = [
        "will be gone",
        "will be less to be seen",
        "will stay",
        "will be cleaned off before",
        "will be levelled by hand, if asked for",
        "will stay until touched up",
        "can only be painted anew",
    ];
    let parts = groups.iter().zip(ends).filter(|(g, _)| !g.is_empty()).map(|(g, end)| format!("{} {end}", listed(g)));
    let parts: Vec<String> = parts.collect();
    match parts.join("; ") {
        text if text.is_empty() => text,
        text => format!("{}.", capital(&text)),
    }
}
