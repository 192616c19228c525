//! Who does what now and next, and which windows run.

use super::day::Day;
use crate::crew::{ProblemSpec, Replanned, SoFar, State, is_of_the_present};
use crate::units::Seconds;

/// Everything the bay shows at a moment. Times are of the day's clock.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Board {
    /// By worker of the problem.
    pub workers: Vec<WorkerBoard>,
    /// Coated and not yet levelled, the most urgent first.
    pub windows: Vec<OpenWindow>,
    /// When everything is expected to be over.
    pub finish_s: Seconds,
}

/// One person's present and future.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WorkerBoard {
    /// What they are at.
    pub current: Option<Current>,
    /// What comes after that.
    pub next: Vec<NextUp>,
    /// When they are expected back, if they are away.
    pub away_until_s: Option<Seconds>,
}

/// Something being done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Current {
    /// Index into the operations of the problem.
    pub operation: usize,
    /// Since when.
    pub start_s: Seconds,
    /// Until when, as expected now.
    pub end_s: Seconds,
}

/// Something to be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NextUp {
    /// Index into the operations of the problem.
    pub operation: usize,
    /// From when, as planned now.
    pub start_s: Seconds,
}

/// A coated panel that waits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OpenWindow {
    /// The operation that ends the wait, by index.
    pub operation: usize,
    /// When the wait began.
    pub since_s: Seconds,
    /// The moment to try.
    pub try_s: Seconds,
    /// The latest moment to begin, so that it is over in time.
    pub latest_s: Seconds,
    /// When it is planned to begin, or began.
    pub planned_s: Option<Seconds>,
    /// Whether somebody is at it.
    pub running: bool,
}

/// What is to be said aloud at a change: somebody is done with something and goes on with something else.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Call {
    /// Index of the worker.
    pub worker: usize,
    /// What they are done with, by index.
    pub done: usize,
    /// What they do next, by index.
    pub next: Option<usize>,
}

impl Board {
    /// Lays a day beside the plan of what is left. `problem` is that of the whole day with the windows in force.
    pub fn new(problem: &ProblemSpec, day: &Day, plan: Option<&Replanned>, now_s: Seconds) -> Self {
        let so_far = day.so_far(problem, now_s);
        let starts = planned_starts(problem, plan);
        let mut finish_s = now_s;
        let workers = (0..problem.workers.len()).map(|w| {
            let current = day.doing(w).map(|(operation, start_s)| {
                let end_s = match so_far.operations[operation] {
                    State::Running { end_s, .. } => end_s,
                    State::ToDo | State::Done { .. } => now_s,
                };
                Current { operation, start_s, end_s }
            });
            let mut next: Vec<NextUp> = (0..problem.operations.len())
                .filter(|&o| so_far.operations[o] == State::ToDo)
                .filter_map(|operation| {
                    let (worker, start_s) = starts[operation]?;
                    (worker == w).then_some(NextUp { operation, start_s })
                })
                .collect();
            next.sort_by_key(|n| (n.start_s, n.operation));
            if let Some(last) = next.last() {
                finish_s = finish_s.max(last.start_s + problem.operations[last.operation].duration_s);
            }
            if let Some(current) = current {
                finish_s = finish_s.max(current.end_s);
            }
            WorkerBoard { current, next, away_until_s: day.away_until(w, now_s) }
        });
        let workers: Vec<WorkerBoard> = workers.collect();
        let windows = open_windows(problem, &so_far, &starts);
        Self { workers, windows, finish_s }
    }
}

/// By operation: worker and start, where the plan has it.
fn planned_starts(problem: &ProblemSpec, plan: Option<&Replanned>) -> Vec<Option<(usize, Seconds)>> {
    let mut starts = vec![None; problem.operations.len()];
    let Some(plan) = plan else { return starts };
    for row in plan.plan.operations.iter().filter(|r| !is_of_the_present(&r.id)) {
        let operation = problem.operations.iter().position(|o| o.id == row.id);
        let worker = problem.workers.iter().position(|w| w.id == row.worker);
        if let (Some(operation), Some(worker)) = (operation, worker) {
            starts[operation] = Some((worker, plan.origin_s + row.start_s));
        }
    }
    starts
}

fn open_windows(problem: &ProblemSpec, so_far: &SoFar, starts: &[Option<(usize, Seconds)>]) -> Vec<OpenWindow> {
    let index = |id: &str| problem.operations.iter().position(|o| o.id == id);
    let mut windows: Vec<OpenWindow> = problem
        .lags
        .iter()
        .filter_map(|lag| {
            let max_s = lag.max_s?;
            let (from, operation) = (index(&lag.from)?, index(&lag.to)?);
            let State::Done { end_s, .. } = so_far.operations[from] else { return None };
            let (planned_s, running) = match so_far.operations[operation] {
                State::Done { .. } => return None,
                State::Running { start_s, .. } => (Some(start_s), true),
                State::ToDo => (starts[operation].map(|s| s.1), false),
            };
            let latest_s = end_s + (max_s - problem.operations[operation].duration_s).max(0);
            Some(OpenWindow { operation, since_s: end_s, try_s: end_s + lag.min_s, latest_s, planned_s, running })
        })
        .collect();
    windows.sort_by_key(|w| (w.latest_s, w.operation));
    windows
}
