//! The order people have in their heads, carried over to what is left, and mended where a deadline would be missed.

use super::{NOW, Rest, is_of_the_present};
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::problem::Problem;
use crate::crew::schedule::PlanRow;
use crate::units::Seconds;
use std::collections::HashMap;

/// An order of the rest, with how late it is.
#[derive(Debug, Clone)]
pub(super) struct Kept {
    pub(super) order: Order,
    /// Seconds past the deadlines, all together.
    pub(super) late: Seconds,
}

/// The rest laid out for the search, without its deadlines.
pub(super) struct Mender<'a> {
    pub(super) problem: &'a Problem,
    pub(super) model: &'a Model,
    /// (operation, by), in seconds of the rest's clock.
    deadlines: Vec<(usize, Seconds)>,
}

impl<'a> Mender<'a> {
    pub(super) fn new(rest: &Rest, problem: &'a Problem, model: &'a Model) -> Self {
        let index: HashMap<&str, usize> = (0..problem.len()).map(|o| (problem.operation_id(o), o)).collect();
        let deadlines = rest.deadlines.iter().filter_map(|d| Some((*index.get(d.operation.as_str())?, d.by_s)));
        Self { problem, model, deadlines: deadlines.collect() }
    }

    /// How many seconds each deadline is passed by, all together.
    fn late(&self, order: &Order) -> Seconds {
        let end = |o: usize| Seconds::from(order.start(self.model, o) + self.model.duration[o]);
        self.deadlines.iter().map(|&(o, by)| (end(o) - by).max(0)).sum()
    }

    fn time(&self, list: Vec<u32>, worker: Vec<u8>) -> Option<Kept> {
        Order::new(self.model, list, worker).map(|order| self.kept(order))
    }

    /// An order with how late it is.
    pub(super) fn kept(&self, order: Order) -> Kept {
        Kept { late: self.late(&order), order }
    }

    /// The rows of an earlier plan in their order, each with its worker. What the plan didn't know comes last.
    pub(super) fn as_planned(&self, plan: &[PlanRow]) -> Option<Kept> {
        let known: HashMap<&str, &PlanRow> = plan.iter().map(|r| (r.id.as_str(), r)).collect();
        let mut list: Vec<u32> = (0..self.problem.len() as u32).collect();
        list.sort_by_key(|&o| {
            let id = self.problem.operation_id(o as usize);
            let group = if id == NOW { 0 } else { 2 - u8::from(self.is_forced(o as usize)) };
            (group, known.get(id).map_or(Seconds::MAX, |r| r.start_s), o)
        });
        let worker = (0..self.problem.len()).map(|o| {
            let able = &self.model.able[o];
            let planned = known.get(self.problem.operation_id(o)).map(|r| r.worker.as_str());
            let same = able.iter().copied().find(|&w| planned == Some(self.problem.worker_id(w)));
            same.unwrap_or(able[0]) as u8
        });
        self.time(list, worker.collect())
    }

    /// Whether an operation can't but come first: what somebody is doing.
    fn is_forced(&self, operation: usize) -> bool {
        is_of_the_present(&self.problem.spec().operations[operation].role)
    }

    /// Moves operations that miss a deadline, each to the place and worker where least is missed, until nothing helps.
    pub(super) fn mended(&self, mut kept: Kept) -> Kept {
        while kept.late > 0 {
            let worst: Vec<usize> = self.deadlines.iter().map(|d| d.0).collect();
            let better =
                worst.into_iter().filter_map(|o| self.best_move(&kept, o)).min_by_key(|k| (k.late, k.order.cost()));
            match better {
                Some(better) if better.late < kept.late => kept = better,
                _ => break,
            }
        }
        kept
    }

    fn best_move(&self, kept: &Kept, operation: usize) -> Option<Kept> {
        let place = kept.order.place[operation] as usize;
        let mut best: Option<Kept> = None;
        for &worker in &self.model.able[operation] {
            for to in 0..place {
                let mut list = kept.order.list.clone();
                let moved = list.remove(place);
                list.insert(to, moved);
                let mut workers = kept.order.worker.clone();
                workers[operation] = worker as u8;
                let found = self.time(list, workers);
                if let Some(found) = found.filter(|f| best.as_ref().is_none_or(|b| f.late < b.late)) {
                    best = Some(found);
                }
            }
        }
        best
    }
}
