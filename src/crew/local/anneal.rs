//! Simulated annealing over orders (Kirkpatrick, Gelatt and Vecchi 1983): worse orders are kept with a chance that shrinks.
//!
//! The limit a change must keep is drawn before it is tried, so most trials end after a few places.

use super::change::Change;
use super::near::Near;
use super::{hand_over, panel, relocate, reverse, swap};
use crate::crew::consts::POLL_EVERY;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// How far along the list a move reaches when it does not look for something near.
pub(crate) const REACH: usize = 12;

/// The state of one annealing search.
#[derive(Debug)]
pub(crate) struct Annealer<'a> {
    model: &'a Model,
    near: Near,
    /// Where the search stands.
    pub(crate) order: Order,
    change: Change,
    places: Vec<usize>,
    random: Random,
    /// Orders tried so far.
    pub(crate) tried: u64,
}

/// One cooling.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Run {
    /// Orders to try.
    pub(crate) length: u64,
    /// Temperature at the start, in units of cost.
    pub(crate) hot: f64,
    /// Temperature at the end.
    pub(crate) cold: f64,
}

impl<'a> Annealer<'a> {
    /// A search that begins at `order`.
    pub(crate) fn new(model: &'a Model, order: Order, random: Random) -> Self {
        let near = Near::new(model);
        Self { model, near, order, change: Change::default(), places: Vec::new(), random, tried: 0 }
    }

    /// Cools once; tells `better` of every order below `best`. `go_on` is asked every thousand trials; false ends the run.
    pub(crate) fn run(
        &mut self,
        run: Run,
        mut best: i64,
        mut better: impl FnMut(&Order),
        mut go_on: impl FnMut(u64) -> bool,
    ) {
        let factor = (run.cold / run.hot).powf(POLL_EVERY as f64 / run.length as f64);
        let mut temperature = run.hot;
        let mut left = run.length;
        while left > 0 {
            let batch = left.min(POLL_EVERY);
            for _ in 0..batch {
                if self.step(temperature) && self.order.cost() < best {
                    best = self.order.cost();
                    better(&self.order);
                }
            }
            debug_assert!(self.order.agrees(self.model), "timing a part of the list gives what timing all of it gives");
            left -= batch;
            self.tried += batch;
            temperature *= factor;
            if !go_on(batch) {
                return;
            }
        }
    }

    /// Tries one change; true when it was kept.
    fn step(&mut self, temperature: f64) -> bool {
        let limit = self.order.cost() + (-temperature * self.random.unit().ln()) as i64;
        self.attempt(limit, |_| true)
    }

    /// Tries one change that costs no more than `limit` altogether and that `agree` agrees to; true when it was kept.
    pub(crate) fn attempt(&mut self, limit: i64, agree: impl FnOnce(&Order) -> bool) -> bool {
        let (model, near, order, random, change) =
            (self.model, &self.near, &mut self.order, &mut self.random, &mut self.change);
        let changed = match random.below(16) {
            0..=5 => relocate::apply(model, near, order, random, change),
            6..=9 => swap::apply(model, near, order, random, change),
            10..=11 => reverse::apply(model, order, random, change, &mut self.places),
            12..=13 => panel::apply(model, near, order, random, change),
            _ => {
                hand_over::apply(model, near, order, random, change)
                    || relocate::apply(model, near, order, random, change)
            }
        };
        if !changed {
            return false;
        }
        if order.trial(model, change.stretch(), limit).is_some() && agree(order) {
            order.keep(model);
            true
        } else {
            order.drop_trial();
            change.undo(order);
            false
        }
    }
}
