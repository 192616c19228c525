//! Construction, then search on every thread, within what the outside allows. The only place in `crew` with threads.
//!
//! Threads share nothing but the best plan they report, and none of them steers by it: with a limit of nodes each has its
//! share, so the answer depends on problem, seed, nodes and thread count only.

use super::bound;
use super::construct;
use super::consts::{COLD_S, FIRST_RUN, FIRST_TRIES, HOT_S, LONGEST_RUN};
use super::local::{Annealer, Run};
use super::model::Model;
use super::order::Order;
use super::outcome::{Control, Limits, Outcome};
use super::problem::Problem;
use super::random::Random;
use super::schedule::Schedule;
use std::sync::Mutex;

/// Plans a problem: the best order found within the limits, with a proven lower bound of the cost.
pub fn solve(problem: &Problem, limits: &Limits, control: &dyn Control) -> Outcome {
    let model = Model::new(problem);
    let bound = bound::cost(problem, None);
    let Some(first) = construct::first_order(&model, &mut Random::new(limits.seed, 0), FIRST_TRIES) else {
        return Outcome::Unknown { bound };
    };
    let shared = Shared { problem, model: &model, control, bound, best: Mutex::new(None) };
    shared.offer(&first);
    let threads = limits.threads.max(1);
    let share = limits.nodes.map(|n| n / threads as u64);
    let search = |thread: usize| {
        let random = Random::new(limits.seed, 1 + thread as u64);
        shared.search(Annealer::new(&model, first.clone(), random), share);
    };
    if threads == 1 {
        search(0);
    } else {
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
    }
    shared.outcome()
}

struct Shared<'a> {
    problem: &'a Problem,
    model: &'a Model,
    control: &'a dyn Control,
    bound: i64,
    best: Mutex<Option<Schedule>>,
}

impl Shared<'_> {
    /// Reports an order if it is the best so far. Among plans of equal cost the earliest in (start, worker) order stays, so
    /// that the answer does not depend on which thread came first.
    fn offer(&self, order: &Order) {
        let schedule = order.schedule(self.model, self.problem);
        let mut best = self.best.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        let (better, news) = match &*best {
            None => (true, true),
            Some(kept) => (key(&schedule) < key(kept), schedule.cost() < kept.cost()),
        };
        if better {
            if news {
                self.control.improved(&schedule, self.bound);
            }
            *best = Some(schedule);
        }
    }

    fn done(&self) -> bool {
        let best = self.best.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        best.as_ref().is_some_and(|b| b.cost() <= self.bound)
    }

    /// Coolings, each twice as long as the one before, until the share of nodes is used or the outside says stop.
    fn search(&self, mut annealer: Annealer<'_>, share: Option<u64>) {
        let weight = self.model.makespan_weight.max(self.model.walking_weight) as f64;
        let mut left = share.unwrap_or(u64::MAX);
        let mut length = FIRST_RUN;
        let mut best = annealer.order.clone();
        let mut stop = left == 0 || self.done() || self.control.should_stop();
        while !stop {
            let run = Run { length: length.min(left), hot: HOT_S * weight, cold: COLD_S * weight };
            let mut found = None;
            annealer.run(
                run,
                best.cost(),
                |order| {
                    self.offer(order);
                    found = Some(order.clone());
                },
                |batch| {
                    left -= batch;
                    stop = left == 0 || self.control.should_stop();
                    !stop
                },
            );
            if let Some(found) = found {
                best = found;
            }
            annealer.order = best.clone();
            stop |= share.is_none() && self.done();
            stop |= best.cost() <= self.bound;
            length = (length * 2).min(LONGEST_RUN);
        }
    }

    fn outcome(self) -> Outcome {
        match self.best.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner) {
            None => Outcome::Unknown { bound: self.bound },
            Some(best) if best.cost() <= self.bound => Outcome::Optimal(best),
            Some(best) => Outcome::Feasible { best, bound: self.bound },
        }
    }
}

/// Order of preference of plans: cost, then the rows themselves.
fn key(schedule: &Schedule) -> (i64, Vec<(i64, usize, usize)>) {
    (schedule.cost(), schedule.rows().iter().map(|r| (r.interval.start, r.operation, r.worker)).collect())
}
