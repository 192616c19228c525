//! How near an order is to the best possible.
//!
//! share = best / (max(cost, best) + weight · Σ price), with cost as the planner weighs it (the whole job and all walking), weight
//! that of a second of the whole job, and a price in seconds for each broken rule: a fixed one by its kind and as long as it
//! lasted on top, up to [`MOST_SECONDS_MORE`].
//!
//! So breaking rules can't make up for itself by being quicker than the best; a longer job, a longer way or one more broken
//! rule never scores higher; nothing is above 1; the planner's order is exactly 1; and an order with steps left out has no score.

use super::exercise::Exercise;
use super::marks::{Mark, Trouble};
use super::play::Played;
use crate::units::Seconds;

/// What a broken rule costs on top for lasting long, at most, in seconds.
pub const MOST_SECONDS_MORE: Seconds = 120;

/// A score with what it is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Score {
    /// Share of the best possible, from 0 to 1.
    pub share: f64,
    /// How long the order takes, in seconds.
    pub makespan_s: Seconds,
    /// How long the best takes.
    pub best_makespan_s: Seconds,
    /// Seconds walked by all.
    pub walking_s: Seconds,
    /// Seconds walked by all in the best.
    pub best_walking_s: Seconds,
    /// Broken rules.
    pub broken: usize,
    /// What they cost, in seconds of the whole job.
    pub price_s: Seconds,
}

impl Score {
    /// In whole per cent, rounded down, so that 100 means the best.
    pub fn percent(&self) -> u32 {
        (self.share * 100.0 + 1e-9).floor() as u32
    }
}

/// What a broken rule costs, in seconds of the whole job, beside as long as it lasted. Our estimates: a smeared film is applied
/// and levelled again, one that has set is polished off first, bumping into each other costs a moment and perhaps a panel.
pub fn price_s(trouble: Trouble) -> Seconds {
    match trouble {
        Trouble::Place => 60,
        Trouble::Lean | Trouble::TopLast => 120,
        Trouble::Window => 180,
        Trouble::Other => 300,
    }
}

/// Scores what was played; none while steps are missing.
pub fn score(exercise: &Exercise, played: &Played, marks: &[Mark]) -> Option<Score> {
    if !played.complete {
        return None;
    }
    let best = exercise.best.cost.max(1);
    let price = |m: &Mark| price_s(m.trouble) + m.violation.amount.clamp(0, MOST_SECONDS_MORE);
    let price: Seconds = marks.iter().map(price).sum();
    let all = played.plan.cost.max(best) + exercise.spec.objective.makespan * price;
    Some(Score {
        share: best as f64 / all as f64,
        makespan_s: played.plan.makespan_s,
        best_makespan_s: exercise.best.makespan_s,
        walking_s: played.plan.walking_s,
        best_walking_s: exercise.best.walking_s,
        broken: marks.len(),
        price_s: price,
    })
}
