//! Lower bounds of the cost over all valid plans, each with its source.

use super::problem::Problem;

/// The best of all bounds.
pub(crate) fn cost(problem: &Problem) -> i64 {
    let work: i64 = problem.operations.iter().map(|o| i64::from(o.duration)).sum();
    let workers = problem.workers as i64;
    problem.cost((work + workers - 1) / workers, 0)
}
