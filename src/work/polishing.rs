//! Finding who polishes what in which order, and keeping everybody below the action values where a change of hands does it.

use super::order::{Effort, Found, Given, solve_for};
use crate::crew::{Explanation, Hold, Limits, Outcome, Problem, ProblemSpec, Schedule, explain, habits, tidy};
use crate::insight::CrewOrder;
use crate::polish::{Dose, swap_panels};
use crate::say;
use crate::units::clock;
use crate::words::shortest;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Share of the time that goes to the fastest order; the rest is for the same work shared in another way.
const FASTEST_SHARE: f64 = 0.75;
/// What an order that is easier to keep in one's head may cost on top, as a share.
const REGULAR_SHARE: f64 = 0.01;
/// Changes tried for it.
const REGULAR_NODES: u64 = 20_000;

/// The fastest order, then a more regular one of nearly the same cost. Where that takes somebody over an action value and
/// handing panels over keeps everybody below, the fastest order with the work shared so.
///
/// # Errors
/// Why there is none, as sentences.
pub(super) fn find_polishing(spec: &Arc<ProblemSpec>, doses: &[Dose], effort: Effort, given: Given<'_>) -> Found {
    let problem = Problem::try_from((**spec).clone()).map_err(|errors| vec![errors.to_string()])?;
    let Effort { seconds, nodes, threads, seed } = effort;
    let limits = Limits { nodes, threads, seed };
    let order = |best: &Schedule, bound: i64| CrewOrder {
        problem: Arc::clone(spec),
        plan: Arc::new(best.to_plan(&problem, bound)),
        lateness: None,
        habits: None,
        reasons: Arc::from([]),
        faster: None,
        free: None,
    };
    let listener = |_: f64, best: &Schedule, bound: i64| (given.improved)(order(best, bound));
    let outcome = solve_for(&problem, &limits, seconds * FASTEST_SHARE, given.stop, &listener);
    let bound = outcome.bound().unwrap_or(0);
    let fastest = match outcome {
        Outcome::Optimal(best) | Outcome::Feasible { best, .. } => best,
        Outcome::Infeasible(conflicts) => return Err(conflicts.iter().map(ToString::to_string).collect()),
        Outcome::Unknown { .. } => return Err(vec![say!("work-no-order", seconds = shortest(seconds))]),
    };
    let most = fastest.cost() + (fastest.cost() as f64 * REGULAR_SHARE) as i64;
    let best = tidy(&problem, &fastest, most, REGULAR_NODES, seed);
    let done = |best: &Schedule| CrewOrder {
        habits: Some(habits(&problem, best)),
        reasons: (0..spec.operations.len()).map(|o| reason(&problem, best, o)).collect(),
        ..order(best, bound)
    };
    let Some(fixed) = shared_anew(spec, &problem, &best, doses) else { return Ok(done(&best)) };
    let silent = |_: f64, _: &Schedule, _: i64| ();
    let again = solve_for(&fixed, &limits, seconds * (1.0 - FASTEST_SHARE), given.stop, &silent);
    let Some(shared) = again.schedule() else { return Ok(done(&best)) };
    Ok(CrewOrder { faster: Some(order(&best, bound).plan), ..done(shared) })
}

/// The problem with everybody's work fixed, where that keeps all below the action values and the given order does not.
fn shared_anew(spec: &ProblemSpec, problem: &Problem, best: &Schedule, doses: &[Dose]) -> Option<Problem> {
    let rows = best.by_operation();
    let owners: Vec<usize> = rows.iter().map(|r| r.worker).collect();
    let mut known: BTreeMap<&str, usize> = BTreeMap::new();
    let panels: Vec<usize> = spec
        .operations
        .iter()
        .map(|o| {
            let next = known.len();
            *known.entry(o.panel.as_str()).or_insert(next)
        })
        .collect();
    let shared = swap_panels(&owners, &panels, doses, spec.workers.len()).filter(|s| *s != owners)?;
    let mut fixed = problem.spec().clone();
    for (operation, owner) in fixed.operations.iter_mut().zip(shared) {
        operation.worker = Some(fixed.workers[owner].id.clone());
    }
    Problem::try_from(fixed).ok()
}

/// Why an operation comes when it does. The planner's own words are for wet panels; here it is dust.
fn reason(problem: &Problem, schedule: &Schedule, operation: usize) -> String {
    let Explanation { hold, stands_still_s, sentence, .. } = explain(problem, schedule, operation);
    let spec = &problem.spec().operations;
    let rows = schedule.by_operation();
    let because = match hold {
        Hold::Wet { operation: other } => {
            say!("work-dust", other = spec[other].id.as_str())
        }
        Hold::Wait { operation: other, min_s } if min_s > 0 => {
            say!("work-wiped-first", other = spec[other].id.as_str())
        }
        Hold::Wait { operation: other, .. } => say!("work-comes-first", other = spec[other].id.as_str()),
        _ => return sentence,
    };
    let worker = &problem.spec().workers[rows[operation].worker].id;
    let (name, at) = (spec[operation].id.as_str(), clock(rows[operation].interval.start));
    if stands_still_s == 0 {
        return say!("work-starts", operation = name, at = at, because = because);
    }
    let (worker, seconds) = (worker.as_str(), stands_still_s);
    say!("work-starts-late", operation = name, at = at, because = because, worker = worker, seconds = seconds)
}
