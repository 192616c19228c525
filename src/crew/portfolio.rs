//! Construction, then search on every thread, within what the outside allows. The only place in `crew` with threads.
//!
//! With a limit of nodes each thread has its share and goes its own way, so the answer depends on problem, seed, nodes and
//! thread count only. Without one the clock decides when they stop, and every other thread goes on from what all have found.

use super::bound;
use super::conflict;
use super::construct::{self, First};
use super::consts::{
    COLD_S, COOLEST_HOT_S, EXACT_AT_ONCE, EXACT_NODES, EXACT_OPERATIONS, FIRST_RUN, HOT_S, HOT_TURNS, LONGEST_RUN_EACH,
    TRIALS_A_DEGREE,
};
use super::exact::{self, Answer};
use super::local::{Annealer, Run};
use super::model::Model;
use super::order::Order;
use super::outcome::{Control, Limits, Outcome};
use super::problem::Problem;
use super::random::Random;
use super::schedule::{PlanFile, Schedule};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// Plans a problem: the best order found within the limits, with a proven lower bound of the cost.
pub fn solve(problem: &Problem, limits: &Limits, control: &dyn Control) -> Outcome {
    let model = Model::new(problem);
    match construct::first(problem, &model, &mut Random::new(limits.seed, 0)) {
        First::Found(orders) => search(problem, &model, &orders, limits, control),
        First::Impossible(parts) if problem.undirected.is_empty() => {
            Outcome::Infeasible(parts.iter().map(|part| conflict::explain(problem, part)).collect())
        }
        First::Impossible(_) | First::Unclear => Outcome::Unknown { bound: bound::cost(problem, None) },
    }
}

/// Looks for a better order than a known one; none where that one breaks a rule of the problem whatever the times.
pub(crate) fn improve(problem: &Problem, known: &PlanFile, limits: &Limits, control: &dyn Control) -> Option<Outcome> {
    let model = Model::new(problem);
    let order = Order::of(&model, &Schedule::from_plan(problem, known).ok()?)?;
    Some(search(problem, &model, &[order], limits, control))
}

/// Search on every thread, from valid orders, the cheapest first.
fn search(problem: &Problem, model: &Model, first: &[Order], limits: &Limits, control: &dyn Control) -> Outcome {
    let best = Best { schedule: first[0].schedule(model, problem), bound: bound::cost(problem, None) };
    control.improved(&best.schedule, best.bound);
    let shared = Shared { problem, model, control, floor: best.bound, best: Mutex::new(best) };
    let threads = limits.threads.max(1);
    let share = limits.nodes.map(|n| n / threads as u64);
    let search = |thread: usize| {
        let start = &first[thread % first.len()];
        let annealer = Annealer::new(model, start.clone(), Random::new(limits.seed, 1 + thread as u64));
        let left = share.unwrap_or(u64::MAX);
        Search { shared: &shared, best: start.clone(), annealer, thread, left, alone: share.is_some(), stop: false }
            .run();
    };
    std::thread::scope(|scope| {
        for thread in 1..threads {
            let name = format!("crew-{thread}");
            let search = &search;
            if std::thread::Builder::new().name(name).spawn_scoped(scope, move || search(thread)).is_err() {
                search(thread); // no thread to be had: do its share here
            }
        }
        search(0);
    });
    shared.refresh();
    let best = shared.best.into_inner().unwrap_or_else(PoisonError::into_inner);
    if best.schedule.cost() <= best.bound {
        Outcome::Optimal(best.schedule)
    } else {
        Outcome::Feasible { best: best.schedule, bound: best.bound }
    }
}

/// The best plan of all threads and what is proven.
struct Best {
    schedule: Schedule,
    bound: i64,
}

struct Shared<'a> {
    problem: &'a Problem,
    model: &'a Model,
    control: &'a dyn Control,
    /// The bound known before any search.
    floor: i64,
    best: Mutex<Best>,
}

impl Shared<'_> {
    fn lock(&self) -> MutexGuard<'_, Best> {
        self.best.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Reports an order if it is the best so far. Of plans with equal cost the one with the least rows stays, so that the
    /// answer does not depend on which thread came first.
    fn offer(&self, order: &Order) {
        let schedule = order.schedule(self.model, self.problem);
        let mut best = self.lock();
        if key(&schedule) < key(&best.schedule) {
            if schedule.cost() < best.schedule.cost() {
                self.control.improved(&schedule, best.bound.min(schedule.cost()));
            }
            best.schedule = schedule;
        }
    }

    /// Bounds again, with the cost of the best plan known.
    fn refresh(&self) {
        let cost = self.lock().schedule.cost();
        self.prove(bound::cost(self.problem, Some(cost)));
    }

    /// No plan costs less than `bound`.
    fn prove(&self, bound: i64) {
        let mut best = self.lock();
        if bound > best.bound {
            best.bound = bound;
            self.control.improved(&best.schedule, bound);
        }
    }

    fn proven(&self) -> bool {
        let best = self.lock();
        best.schedule.cost() <= best.bound
    }
}

/// What one thread does.
struct Search<'a> {
    shared: &'a Shared<'a>,
    annealer: Annealer<'a>,
    /// The best order of this thread.
    best: Order,
    thread: usize,
    /// Nodes left.
    left: u64,
    /// Whether this thread may not look at what others found.
    alone: bool,
    stop: bool,
}

impl Search<'_> {
    /// Coolings, each twice as long as the one before, until the nodes are used up, the outside says stop, or the bound is met.
    /// A small problem is given to the exact search after the first cooling.
    fn run(&mut self) {
        let mut length = FIRST_RUN;
        self.stop = self.left == 0 || self.shared.control.should_stop() || self.finished();
        let proves = self.shared.problem.undirected.is_empty();
        let small = proves && self.shared.model.n <= EXACT_OPERATIONS;
        let tiny = proves && self.shared.model.n <= EXACT_AT_ONCE;
        if tiny && self.thread == 0 && !self.stop {
            self.exact();
        }
        let longest = LONGEST_RUN_EACH * self.shared.model.n as u64;
        for number in 0.. {
            if self.stop {
                return;
            }
            self.catch_up();
            let run = self.cooling(length, number);
            self.cool(run);
            if number == 0 && self.thread == 0 {
                self.shared.refresh();
                if small && !tiny && !self.stop {
                    self.exact();
                }
            }
            self.stop |= self.finished();
            length = (length * 2).min(longest.max(FIRST_RUN));
        }
    }

    /// Without a limit of nodes every other thread goes on from the best order of all; the rest look elsewhere.
    fn catch_up(&mut self) {
        if self.alone || !self.thread.is_multiple_of(2) {
            return;
        }
        let best = self.shared.lock().schedule.clone();
        let ahead = best.cost() < self.best.cost();
        if let Some(order) = Order::of(self.shared.model, &best).filter(|_| ahead) {
            self.best = order;
            self.annealer.order = self.best.clone();
        }
    }

    /// A longer run can begin hotter and still settle; every other thread begins hotter still, and both take turns with cooler
    /// ones, which keep more of what is already good.
    fn cooling(&self, length: u64, number: usize) -> Run {
        let model = self.shared.model;
        let weight = model.makespan_weight.max(model.walking_weight) as f64;
        let each = length as f64 / model.n as f64;
        let pace = if self.thread.is_multiple_of(2) { TRIALS_A_DEGREE } else { TRIALS_A_DEGREE / 8.0 };
        let hot = (each / pace).min(HOT_S) * HOT_TURNS[number % HOT_TURNS.len()];
        Run { length: length.min(self.left), hot: hot.max(COOLEST_HOT_S) * weight, cold: COLD_S * weight }
    }

    fn cool(&mut self, run: Run) {
        let (shared, left, stop) = (self.shared, &mut self.left, &mut self.stop);
        let mut found = None;
        self.annealer.run(
            run,
            self.best.cost(),
            |order| {
                shared.offer(order);
                found = Some(order.clone());
            },
            |tried| {
                *left -= tried;
                *stop = *left == 0 || shared.control.should_stop();
                !*stop
            },
        );
        if let Some(found) = found {
            self.best = found;
        }
        self.annealer.order = self.best.clone();
    }

    /// Proves the best order of this thread optimal or finds a better one, if that takes no more than the allowance.
    fn exact(&mut self) {
        let (model, control) = (self.shared.model, self.shared.control);
        let allowance = EXACT_NODES.min(self.left);
        let mut tried = 0;
        let answer = exact::search(model, self.best.cost(), allowance, &mut || {
            tried += 1000;
            !control.should_stop()
        });
        self.left -= tried.min(self.left);
        self.stop |= self.left == 0;
        let (Answer::Complete(found) | Answer::Stopped(found)) = &answer;
        if let Some(order) = found.as_ref().and_then(|s| Order::new(model, s.list.clone(), s.worker.clone())) {
            self.shared.offer(&order);
            self.best = order;
        }
        if matches!(answer, Answer::Complete(_)) {
            self.shared.prove(self.best.cost());
            self.stop = true;
        }
    }

    fn finished(&self) -> bool {
        if self.alone { self.best.cost() <= self.shared.floor } else { self.shared.proven() }
    }
}

/// Order of preference of plans: cost, then the rows themselves.
fn key(schedule: &Schedule) -> (i64, Vec<(i64, usize, usize)>) {
    (schedule.cost(), schedule.rows().iter().map(|r| (r.interval.start, r.operation, r.worker)).collect())
}
