//! The orders that stand on sheets and maps.

use crate::crew::{Problem, violations};
use crate::file::Loaded;
use crate::insight::{Insight, OrderRow, PolishOrder, crew_problem, order_rows, polish_order, polish_work};
use crate::work::{Effort, Task, find_order, find_task};
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

/// The order of coating: the one agreed on where it still fits the job, else a planned one; and why there is none.
pub(super) fn coating(loaded: &Loaded, insight: &Insight) -> (Vec<OrderRow>, Vec<String>) {
    let problem = Arc::new(crew_problem(&loaded.job, &loaded.template, insight));
    if problem.operations.is_empty() {
        return (Vec::new(), Vec::new()); // every panel is left uncoated
    }
    let stands = Problem::try_from((*problem).clone()).ok();
    let agreed = loaded.job.order.as_ref().filter(|plan| stands.is_some_and(|p| violations(&p, plan).is_empty()));
    let plan = match agreed {
        Some(plan) => Arc::clone(plan),
        None => match find_order(&problem, effort(), &AtomicBool::new(false), &|_| ()) {
            Ok(found) => found.plan,
            Err(conflicts) => return (Vec::new(), conflicts),
        },
    };
    (order_rows(&loaded.job, &loaded.template, &problem, &plan), Vec::new())
}

/// The order of polishing, or why there is none.
pub(super) fn polishing(loaded: &Loaded, insight: &Insight) -> (Option<PolishOrder>, Vec<String>) {
    let work = polish_work(&loaded.job, &loaded.template, insight);
    if work.operations.is_empty() {
        return (None, Vec::new()); // nothing is polished
    }
    let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
    match find_task(&task, effort(), &AtomicBool::new(false), &|_| ()) {
        Ok(found) => (Some(polish_order(&loaded.job, &loaded.template, &work, &found)), Vec::new()),
        Err(conflicts) => (None, conflicts),
    }
}

/// So much work that a good order is found, and the same one every time: the same job gives the same file.
fn effort() -> Effort {
    Effort { seconds: 60.0, nodes: Some(30_000), threads: 1, seed: 1 }
}
