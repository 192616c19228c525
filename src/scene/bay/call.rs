//! What is said aloud at a change, and what is said when something goes wrong.

use super::BayFacts;
use crate::say;
use crate::units::minutes;

/// What is said of a panel when a part of the work is done there.
fn said_of(panel: &str, role: &str) -> String {
    match role {
        "apply" => say!("scene-said-applied", panel = panel),
        "level" => say!("scene-said-level", panel = panel),
        "sand" => say!("scene-said-sanded", panel = panel),
        "cut" => say!("scene-said-cut", panel = panel),
        "polish" => say!("scene-said-polished", panel = panel),
        "finish" => say!("scene-said-finished", panel = panel),
        _ => say!("scene-said-done", panel = panel),
    }
}

/// "Bonnet left is on, roof left next."
pub(super) fn call(facts: &BayFacts<'_>) -> Option<String> {
    let worker = facts.day.last_to_finish()?;
    let done = facts.doing(facts.day.last_done(worker)?);
    let role = &facts.problem.operations[done.operation].role;
    let board = &facts.board.workers[worker];
    let next = board.current.map(|c| c.operation).or_else(|| board.next.first().map(|n| n.operation));
    let next = match next {
        Some(operation) => say!("scene-said-next", what = facts.doing(operation).in_short()),
        None => say!("scene-said-nothing-left").to_owned(),
    };
    let done = said_of(&done.name.replace(", ", " "), role);
    Some(say!("scene-said", done = done, next = next))
}

/// Which window can't be met and what to do; what of the log does not count.
pub(super) fn warnings(facts: &BayFacts<'_>) -> Vec<String> {
    let mut warnings = Vec::new();
    for late in facts.late {
        let Some(operation) = facts.problem.operations.iter().position(|o| o.id == late.operation) else { continue };
        let name = facts.doing(operation).name;
        warnings.push(say!("scene-late", panel = name, time = minutes(late.by_s)));
    }
    if let Some(first) = facts.day.odd.first() {
        warnings.push(say!("scene-odd-taps", count = facts.day.odd.len(), cause = &first.cause));
    }
    warnings
}
