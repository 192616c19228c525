//! Finding an order within a time.

use super::polishing::find_polishing;
use crate::crew::{
    Control, Lateness, Limits, Outcome, Problem, ProblemSpec, Schedule, Target, explain, habits, simulate, solve,
    solve_robust, tidy,
};
use crate::insight::CrewOrder;
use crate::polish::Dose;
use crate::say;
use crate::words::shortest;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

/// Hears of improvements as (seconds, plan, bound), from any thread.
pub type Listener<'a> = &'a (dyn Fn(f64, &Schedule, i64) + Sync);

/// Stops the planner after a while, or when told to.
pub(super) struct StopAfter<'a> {
    started: Instant,
    limit: Duration,
    stop: &'a AtomicBool,
    listener: Listener<'a>,
}

impl<'a> StopAfter<'a> {
    pub(super) fn new(seconds: f64, stop: &'a AtomicBool, listener: Listener<'a>) -> Self {
        let limit = Duration::try_from_secs_f64(seconds).unwrap_or(Duration::MAX);
        Self { started: Instant::now(), limit, stop, listener }
    }
}

impl Control for StopAfter<'_> {
    fn should_stop(&self) -> bool {
        self.stop.load(Ordering::Relaxed) || self.started.elapsed() >= self.limit
    }

    fn improved(&self, best: &Schedule, bound: i64) {
        (self.listener)(self.started.elapsed().as_secs_f64(), best, bound);
    }
}

/// How much work to put into an order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort {
    /// Longest search in seconds.
    pub seconds: f64,
    /// Most steps of the search; with one thread the answer is then the same everywhere.
    pub nodes: Option<u64>,
    /// Threads that search.
    pub threads: usize,
    /// Seed of the search.
    pub seed: u64,
}

impl Default for Effort {
    /// Two seconds on two threads: what somebody waits for without noticing.
    fn default() -> Self {
        Self { seconds: 2.0, nodes: None, threads: 2, seed: 1 }
    }
}

/// Solves a crew problem within a time.
pub fn solve_for(
    problem: &Problem,
    limits: &Limits,
    seconds: f64,
    stop: &AtomicBool,
    listener: Listener<'_>,
) -> Outcome {
    solve(problem, limits, &StopAfter::new(seconds, stop, listener))
}

/// Share of the time that goes to the first order; the rest goes to one that people keep on a slow day as well.
const FIRST_SHARE: f64 = 0.2;

/// What there is to plan.
#[derive(Debug, Clone, PartialEq)]
pub enum Task {
    /// Coating within its windows.
    Coating {
        /// With all that was asked of the order.
        problem: Arc<ProblemSpec>,
        /// With nothing asked, where something was: what the wishes cost is told by it.
        free: Option<Arc<ProblemSpec>>,
    },
    /// Polishing, with what each operation adds to somebody's day.
    Polishing(Arc<ProblemSpec>, Arc<[Dose]>),
}

impl Task {
    /// The problem to solve.
    pub fn problem(&self) -> &Arc<ProblemSpec> {
        match self {
            Self::Coating { problem, .. } | Self::Polishing(problem, _) => problem,
        }
    }
}

/// What the outside gives to a search.
#[derive(Clone, Copy)]
pub(super) struct Given<'a> {
    /// Set when it has to end.
    pub(super) stop: &'a AtomicBool,
    /// Hears of every better order.
    pub(super) improved: &'a (dyn Fn(CrewOrder) + Sync),
}

/// An order, or why there is none, as sentences.
pub(super) type Found = Result<CrewOrder, Vec<String>>;

/// Finds the order of a task within a time; `improved` hears of better and better ones.
///
/// # Errors
/// Why there is none, as sentences.
pub fn find_task(
    task: &Task,
    effort: Effort,
    stop: &AtomicBool,
    improved: &(dyn Fn(CrewOrder) + Sync),
) -> Result<CrewOrder, Vec<String>> {
    match task {
        Task::Coating { problem, free } => find_asked(problem, free.as_ref(), effort, stop, improved),
        Task::Polishing(problem, doses) => find_polishing(problem, doses, effort, Given { stop, improved }),
    }
}

/// Share of the time that an order with nothing asked of it gets on top.
const FREE_SHARE: f64 = 0.5;

/// Finds an order of coating, and what it would be with nothing asked of it.
fn find_asked(
    problem: &Arc<ProblemSpec>,
    free: Option<&Arc<ProblemSpec>>,
    effort: Effort,
    stop: &AtomicBool,
    improved: &(dyn Fn(CrewOrder) + Sync),
) -> Result<CrewOrder, Vec<String>> {
    let found = find_order(problem, effort, stop, improved);
    let Some(free) = free else { return found };
    let less = Effort { seconds: effort.seconds * FREE_SHARE, ..effort };
    let without = find_order(free, less, stop, &|_| ());
    match (found, without) {
        (Ok(order), without) => Ok(CrewOrder { free: without.ok().map(|o| o.plan), ..order }),
        (Err(mut reasons), Ok(_)) => {
            reasons.push(say!("work-without-choices").to_owned());
            Err(reasons)
        }
        (Err(reasons), Err(_)) => Err(reasons),
    }
}

/// Finds an order of coating within a time. First the fastest one, so that there is something to see; then the fastest of
/// those that pass a window on at most one simulated day in twenty. `improved` hears of each.
///
/// # Errors
/// Why there is none, as sentences.
pub fn find_order(
    spec: &Arc<ProblemSpec>,
    effort: Effort,
    stop: &AtomicBool,
    improved: &(dyn Fn(CrewOrder) + Sync),
) -> Result<CrewOrder, Vec<String>> {
    let problem = Problem::try_from((**spec).clone()).map_err(|errors| vec![errors.to_string()])?;
    let order = |best: &Schedule, bound| CrewOrder {
        problem: Arc::clone(spec),
        plan: Arc::new(best.to_plan(&problem, bound)),
        lateness: None,
        habits: None,
        reasons: Arc::from([]),
        faster: None,
        free: None,
    };
    let Effort { seconds, nodes, threads, seed } = effort;
    let limits = Limits { nodes, threads, seed };
    let listener = |_: f64, best: &Schedule, bound: i64| improved(order(best, bound));
    let first = solve_for(&problem, &limits, seconds * FIRST_SHARE, stop, &listener);
    let proven = match first {
        Outcome::Optimal(best) => best.cost(),
        Outcome::Feasible { bound, .. } => bound,
        Outcome::Infeasible(conflicts) => return Err(conflicts.iter().map(ToString::to_string).collect()),
        Outcome::Unknown { .. } => 0,
    };
    let control = StopAfter::new(seconds * (1.0 - FIRST_SHARE), stop, &|_, _, _| ());
    let Ok(robust) = solve_robust(&problem, &limits, &control, Target::default()) else {
        return Err(vec![say!("work-no-order", seconds = shortest(seconds))]);
    };
    let (best, lateness) = regular(&problem, robust.schedule, robust.lateness, seed);
    Ok(CrewOrder {
        lateness: Some(lateness),
        habits: Some(habits(&problem, &best)),
        reasons: (0..spec.operations.len()).map(|o| explain(&problem, &best, o).sentence).collect(),
        ..order(&best, proven.max(robust.bound))
    })
}

/// What an order that is easier to keep in one's head may cost on top, as a share.
const REGULAR_SHARE: f64 = 0.01;
/// Changes tried for it.
const REGULAR_NODES: u64 = 20_000;

/// A more regular order of nearly the same cost that is late no more often than it may be; the given one if there is none.
fn regular(problem: &Problem, best: Schedule, lateness: Lateness, seed: u64) -> (Schedule, Lateness) {
    let target = Target::default();
    let most = best.cost() + (best.cost() as f64 * REGULAR_SHARE) as i64;
    let tidied = tidy(problem, &best, most, REGULAR_NODES, seed);
    let measured = simulate(problem, &tidied, target.runs, seed);
    if measured.late_chance <= target.late_chance.max(lateness.late_chance) {
        (tidied, measured)
    } else {
        (best, lateness)
    }
}
