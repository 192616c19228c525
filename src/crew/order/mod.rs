//! One order of all operations and the times it leads to: the state of the search.
//!
//! The list says, for any two operations that can't run at once, which goes first: of one worker, of two workers in close
//! stances, of a wet period and what it blocks. Every operation then starts as early as those before it allow. A longest wait
//! that is passed pushes the start of its first operation back, again as little as possible, until all windows are kept or
//! nothing can be gained. Any valid plan, sorted by start, is such a list and no worse, so the lists hold an optimal plan.
//!
//! A change of the list is tried from its first changed place on ([`Order::trial`]) and then either kept or taken back, so the
//! rest of the state is never copied.

mod tails;
mod times;

use crate::crew::consts::MOST_PUSHES;
use crate::crew::model::Model;
use crate::crew::problem::Problem;
use crate::crew::schedule::Schedule;
use crate::units::Seconds;

/// No operation.
const NONE: u32 = u32::MAX;

/// A list of operations, the workers, and the times that follow from them.
#[derive(Debug, Clone)]
pub(crate) struct Order {
    /// Operations in the order in which they are decided; by start in the kept state.
    pub(crate) list: Vec<u32>,
    /// By operation: place in the list.
    pub(crate) place: Vec<u32>,
    /// By operation.
    pub(crate) worker: Vec<u8>,
    /// By operation.
    end: Vec<i32>,
    /// By operation: previous of the same worker.
    previous: Vec<u32>,
    /// By operation: next of the same worker.
    next: Vec<u32>,
    /// By operation: seconds walked to get there.
    step: Vec<i32>,
    /// By operation: longest way from its start to the last end, its own duration included; windows left out.
    tail: Vec<i32>,
    /// By place: last end before it.
    end_before: Vec<i32>,
    /// By place: last end from it on.
    end_from: Vec<i32>,
    /// Operations pushed back for a window.
    pushed: Vec<u32>,
    /// First place of one of them; `n` when there is none.
    first_pushed: usize,
    makespan: i32,
    walking: i32,
    cost: i64,
    trial: Trial,
}

/// A changed stretch of the list.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stretch {
    /// First changed place.
    pub(crate) from: usize,
    /// Last changed place.
    pub(crate) to: usize,
    /// Whether an operation changed its worker.
    pub(crate) reassigned: bool,
}

/// The same figures for the list as changed; equal to the kept ones outside `dirty_from..dirty_to`.
#[derive(Debug, Clone, Default)]
struct Trial {
    end: Vec<i32>,
    previous: Vec<u32>,
    step: Vec<i32>,
    /// By operation: not earlier, because of a window.
    ready: Vec<i32>,
    /// Operations with a `ready` above 0.
    pushed: Vec<u32>,
    /// By worker: its last operation so far.
    last: Vec<u32>,
    dirty_from: usize,
    dirty_to: usize,
    most_pushes: usize,
    makespan: i32,
    walking: i32,
}

impl Order {
    /// The times of a list; `None` when it breaks a lag, a wet rule or a window whatever the times.
    pub(crate) fn new(model: &Model, list: Vec<u32>, worker: Vec<u8>) -> Option<Self> {
        let n = model.n;
        if list.len() != n {
            return None; // lags in a circle left something out
        }
        let mut order = Self {
            place: vec![0; n],
            end: vec![0; n],
            previous: vec![NONE; n],
            next: vec![NONE; n],
            step: vec![0; n],
            tail: vec![0; n],
            end_before: vec![0; n + 1],
            end_from: vec![0; n + 1],
            pushed: Vec::new(),
            first_pushed: n,
            makespan: 0,
            walking: 0,
            cost: i64::MAX,
            trial: Trial {
                end: vec![0; n],
                previous: vec![NONE; n],
                step: vec![0; n],
                ready: vec![0; n],
                last: vec![NONE; model.workers],
                // Each push settles the window of the earliest part for good, so this many are enough for parts in a row.
                most_pushes: model.windows.len() + 2,
                ..Trial::default()
            },
            list,
            worker,
        };
        for (place, &o) in order.list.iter().enumerate() {
            order.place[o as usize] = place as u32;
        }
        order.trial(model, Stretch { from: 0, to: n - 1, reassigned: true }, i64::MAX)?;
        order.trial.most_pushes = MOST_PUSHES;
        order.keep(model);
        Some(order)
    }

    /// The order of a plan; no dearer than the plan.
    pub(crate) fn of(model: &Model, schedule: &Schedule) -> Option<Self> {
        let list = schedule.rows().iter().map(|r| r.operation as u32).collect();
        let worker = schedule.by_operation().iter().map(|r| r.worker as u8).collect();
        Self::new(model, list, worker)
    }

    /// Cost of the kept list.
    pub(crate) fn cost(&self) -> i64 {
        self.cost
    }

    /// Whether timing the whole list anew gives the same; for checks in debug builds.
    pub(crate) fn agrees(&self, model: &Model) -> bool {
        let anew = Self::new(model, self.list.clone(), self.worker.clone());
        anew.is_some_and(|anew| (anew.cost, &anew.end, &anew.tail) == (self.cost, &self.end, &self.tail))
    }

    /// Start of an operation in the kept list.
    pub(crate) fn start(&self, model: &Model, operation: usize) -> i32 {
        self.end[operation] - model.duration[operation]
    }

    /// The plan of the kept list.
    pub(crate) fn schedule(&self, model: &Model, problem: &Problem) -> Schedule {
        let workers: Vec<usize> = self.worker.iter().map(|&w| usize::from(w)).collect();
        let starts: Vec<Seconds> = (0..model.n).map(|o| Seconds::from(self.start(model, o))).collect();
        Schedule::new(problem, &workers, &starts)
    }

    /// Takes the tried times for the kept ones; sorts the list by start, which changes no time.
    pub(crate) fn keep(&mut self, model: &Model) {
        let dirty = self.trial.dirty_from..self.trial.dirty_to;
        for &o in &self.list[dirty.clone()] {
            let o = o as usize;
            self.end[o] = self.trial.end[o];
            self.previous[o] = self.trial.previous[o];
            self.step[o] = self.trial.step[o];
        }
        self.makespan = self.trial.makespan;
        self.walking = self.trial.walking;
        self.cost = model.cost(self.makespan, self.walking);
        self.sort(model, dirty.clone());
        let first = &mut self.first_pushed;
        *first = model.n;
        let place = &self.place;
        self.pushed.retain(|&o| place[o as usize] as usize >= dirty.end); // further on nothing was tried
        self.pushed.append(&mut self.trial.pushed);
        self.pushed.iter().for_each(|&o| *first = (*first).min(place[o as usize] as usize));
        self.ends(model.n);
        self.tails(model, dirty.end);
        self.trial.dirty_to = self.trial.dirty_from;
    }

    /// Drops the tried times; to be called before the list is changed back.
    pub(crate) fn drop_trial(&mut self) {
        for &o in &self.list[self.trial.dirty_from..self.trial.dirty_to] {
            let o = o as usize;
            self.trial.end[o] = self.end[o];
            self.trial.previous[o] = self.previous[o];
            self.trial.step[o] = self.step[o];
        }
        self.trial.dirty_to = self.trial.dirty_from;
    }

    /// Sorts some places by start (insertion sort: they are nearly sorted); those behind start later than all of them.
    fn sort(&mut self, model: &Model, places: std::ops::Range<usize>) {
        for place in places.start.max(1)..places.end {
            let x = self.list[place];
            let key = self.end[x as usize] - model.duration[x as usize];
            let mut hole = place;
            while hole > 0 {
                let y = self.list[hole - 1];
                if self.end[y as usize] - model.duration[y as usize] <= key {
                    break;
                }
                self.list[hole] = y;
                self.place[y as usize] = hole as u32;
                hole -= 1;
            }
            self.list[hole] = x;
            self.place[x as usize] = hole as u32;
        }
    }

    /// Last ends before and from each place.
    fn ends(&mut self, n: usize) {
        let mut last = 0;
        for place in 0..n {
            self.end_before[place] = last;
            last = last.max(self.end[self.list[place] as usize]);
        }
        self.end_before[n] = last;
        let mut last = 0;
        self.end_from[n] = 0;
        for place in (0..n).rev() {
            last = last.max(self.end[self.list[place] as usize]);
            self.end_from[place] = last;
        }
    }
}
