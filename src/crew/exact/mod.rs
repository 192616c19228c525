//! Exact search for small problems: who starts next?
//!
//! A plan is the sequence of its operations by start. The search builds that sequence from the front, each operation as early
//! as those before it allow and no earlier than the last one, so that what is still to come starts later than everything
//! placed ([`Prefix`]). A branch ends when its bound ([`Remaining`]) reaches the best known cost.

mod prefix;
mod remaining;

use super::model::Model;
pub(crate) use prefix::Prefix;
use remaining::Remaining;

/// What an exact search has to say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Answer {
    /// The search came to its end: the best sequence below the given cost, or none when there is none.
    Complete(Option<Sequence>),
    /// The allowance was used up; the best sequence so far.
    Stopped(Option<Sequence>),
}

/// Operations by start, and the worker of each operation (by operation index).
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Sequence {
    pub(crate) list: Vec<u32>,
    pub(crate) worker: Vec<u8>,
    pub(crate) cost: i64,
}

/// Looks for the cheapest plan below `limit`, placing at most `nodes` operations; `go_on` is asked every thousand.
pub(crate) fn search(model: &Model, limit: i64, nodes: u64, go_on: &mut dyn FnMut() -> bool) -> Answer {
    let mut search = Search {
        model,
        prefix: Prefix::new(model),
        remaining: Remaining::new(model),
        alike: alike(model),
        best: None,
        limit,
        left: nodes,
        go_on,
    };
    search.branch();
    if search.left == 0 { Answer::Stopped(search.best) } else { Answer::Complete(search.best) }
}

struct Search<'a> {
    model: &'a Model,
    prefix: Prefix<'a>,
    remaining: Remaining<'a>,
    /// By worker: the first worker who may do exactly the same.
    alike: Vec<usize>,
    best: Option<Sequence>,
    /// Only plans below this cost are of interest.
    limit: i64,
    /// Placements left; 0 ends the search.
    left: u64,
    go_on: &'a mut dyn FnMut() -> bool,
}

/// One way to go on.
struct Branch {
    operation: usize,
    worker: usize,
    start: i32,
    step: i32,
}

impl Search<'_> {
    fn branch(&mut self) {
        if self.prefix.list().len() == self.model.n {
            let cost = self.prefix.cost();
            if cost < self.limit {
                self.limit = cost;
                let (list, worker) = (self.prefix.list().to_vec(), self.prefix.workers().to_vec());
                self.best = Some(Sequence { list, worker, cost });
            }
            return;
        }
        for next in self.branches() {
            if self.left == 0 {
                return;
            }
            self.left -= 1;
            if self.left.is_multiple_of(1000) && !(self.go_on)() {
                self.left = 0;
                return;
            }
            if self.prefix.place(next.operation, next.worker) {
                if self.remaining.bound(&self.prefix) < self.limit {
                    self.branch();
                }
                self.prefix.take_back();
            }
        }
    }

    /// What may start next, the earliest first.
    fn branches(&self) -> Vec<Branch> {
        let mut branches = Vec::new();
        for operation in (0..self.model.n).filter(|&o| self.prefix.may_start(o)) {
            for &worker in &self.model.able[operation] {
                let fresh = self.prefix.last(worker).is_none();
                let twin = fresh
                    && (self.alike[worker]..worker)
                        .any(|w| self.alike[w] == self.alike[worker] && self.prefix.last(w).is_none());
                if twin {
                    continue; // the same as giving it to the other one
                }
                let step = self.prefix.last(worker).map_or(0, |last| self.model.walk(last, operation));
                branches.push(Branch { operation, worker, start: self.prefix.earliest(operation, worker), step });
            }
        }
        branches.sort_by_key(|b| (b.start, b.step, b.operation, b.worker));
        branches
    }
}

fn alike(model: &Model) -> Vec<usize> {
    let same = |a: usize, b: usize| model.able.iter().all(|able| able.contains(&a) == able.contains(&b));
    (0..model.workers).map(|w| (0..w).find(|&other| same(other, w)).unwrap_or(w)).collect()
}
