//! Lower bounds of the cost over all valid plans, each with its source.
//!
//! Every bound drops some rules and solves the rest exactly, so each holds by itself and the largest counts. A bound of the
//! finish and a bound of the walking may be added, weighed, because each holds for every plan.

mod chain;
mod crews;
mod johnson;
mod machine;
mod visits;
mod walking;

use super::problem::Problem;
use crews::Crews;
use visits::Visits;

/// The largest bound of the cost. `best` is the cost of a known plan: what is proven may be proven only of plans below it, so
/// the answer never exceeds it.
pub(crate) fn cost(problem: &Problem, best: Option<i64>) -> i64 {
    let crews = Crews::of(problem);
    let visits = Visits::of(problem, &crews);
    let objective = problem.spec().objective;
    let finish = [machine::finish(problem, &crews), johnson::finish(problem, &crews), chain::finish(problem, &crews)];
    let finish = finish.into_iter().max().unwrap_or(0);
    let walking = |latest: i64| visits.iter().map(|v| v.walking(latest)).collect::<Vec<_>>();
    let least = walking(i64::MAX / 1_000_000);
    let latest = best.filter(|_| objective.makespan > 0).map_or(i64::MAX / 1_000_000, |best| {
        (best - 1 - objective.walking * least.iter().sum::<i64>()) / objective.makespan
    });
    let ways = walking(latest);
    let all: i64 = ways.iter().sum();
    let pooled = visits
        .iter()
        .zip(&ways)
        .map(|(crew, own)| crew.cost(objective.makespan, objective.walking) + objective.walking * (all - own));
    let bound = problem.cost(finish, all).max(pooled.max().unwrap_or(0));
    best.map_or(bound, |best| bound.min(best))
}

/// Rounds a fraction up; `parts` above 0.
fn shared(whole: i64, parts: i64) -> i64 {
    whole.div_euclid(parts) + i64::from(whole.rem_euclid(parts) > 0)
}
