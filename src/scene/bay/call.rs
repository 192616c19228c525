//! What is said aloud at a change, and what is said when something goes wrong.

use super::BayFacts;
use crate::units::minutes;

/// What is said of a panel when a part of the work is done there.
const PAST: [(&str, &str); 6] = [
    ("apply", "is on"),
    ("level", "is level"),
    ("sand", "is sanded"),
    ("cut", "is cut"),
    ("polish", "is polished"),
    ("finish", "is finished"),
];

/// "Bonnet left is on, roof left next."
pub(super) fn call(facts: &BayFacts<'_>) -> Option<String> {
    let worker = facts.day.last_to_finish()?;
    let done = facts.doing(facts.day.last_done(worker)?);
    let role = &facts.problem.operations[done.operation].role;
    let is = PAST.iter().find(|(id, _)| id == role).map_or("is done", |(_, is)| is);
    let board = &facts.board.workers[worker];
    let next = board.current.map(|c| c.operation).or_else(|| board.next.first().map(|n| n.operation));
    let next = next.map_or_else(|| "nothing left for me".to_owned(), |o| format!("{} next", facts.doing(o).in_short()));
    let done = done.name.replace(", ", " ");
    Some(format!("{done} {is}, {next}"))
}

/// Which window can't be met and what to do; what of the log does not count.
pub(super) fn warnings(facts: &BayFacts<'_>) -> Vec<String> {
    let mut warnings = Vec::new();
    for late in facts.late {
        let Some(operation) = facts.problem.operations.iter().position(|o| o.id == late.operation) else { continue };
        let name = facts.doing(operation).name;
        warnings.push(format!(
            "{name} will be about {} late. Level it first; where it drags, wet it with the used applicator and level at once.",
            minutes(late.by_s)
        ));
    }
    match facts.day.odd.len() {
        0 => {}
        1 => warnings.push(format!("One tap does not count: {}.", facts.day.odd[0].cause)),
        n => warnings.push(format!("{n} taps do not count. The first: {}.", facts.day.odd[0].cause)),
    }
    warnings
}
