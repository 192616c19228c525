//! What becomes of a panel, in words for somebody who brought a vehicle and never held a polisher.

use super::budget::Budget;
use super::defect::{DefectKind, Treatment};
use super::facts::PanelFacts;
use super::outcome::Outcome;
use super::plan::{Level, PolishPlan};
use crate::say;
use crate::units::{capital, listed};
use crate::words::decimal;

/// A sentence or two: how it is worked, what goes, what stays, how much of the clear coat it costs.
pub(super) fn sentence(facts: &PanelFacts<'_>, budget: &Budget, plan: &PolishPlan) -> String {
    if let Some(refused) = &budget.refused {
        return refused.clone();
    }
    let how = match plan.level {
        Level::Leave => say!("polish-customer-left"),
        Level::Gloss => say!("polish-customer-gloss"),
        Level::OneStep => say!("polish-customer-once"),
        Level::TwoStep => say!("polish-customer-several"),
        Level::SandAndPolish => say!("polish-customer-sanded"),
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
        let coat = if facts.finish == super::Finish::SingleStage { "paint" } else { "clear" };
        text.push(' ');
        text.push_str(&say!("polish-customer-takes", share = decimal(share, 0), coat = coat));
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
    let fate = |(group, kinds): (usize, &Vec<&str>)| match group {
        0 => say!("polish-fate-gone", defects = listed(kinds)),
        1 => say!("polish-fate-less", defects = listed(kinds)),
        2 => say!("polish-fate-stays", defects = listed(kinds)),
        3 => say!("polish-fate-cleaned", defects = listed(kinds)),
        4 => say!("polish-fate-levelled", defects = listed(kinds)),
        5 => say!("polish-fate-touch-up", defects = listed(kinds)),
        _ => say!("polish-fate-painted", defects = listed(kinds)),
    };
    let parts: Vec<String> = groups.iter().enumerate().filter(|(_, kinds)| !kinds.is_empty()).map(fate).collect();
    match parts.join("; ") {
        text if text.is_empty() => text,
        text => format!("{}.", capital(&text)),
    }
}
