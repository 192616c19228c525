//! One order of all operations and the times it leads to: the state of the search.
//!
//! The list says, for any two operations that can't run at once, which goes first: of one worker, of two workers in close
//! stances, of a wet period and what it blocks. Every operation then starts as early as those before it allow. A longest wait
//! that is passed pushes the start of its first operation back, again as little as possible, until all windows are kept or
//! nothing can be gained. Any valid plan, sorted by start, is such a list and no worse, so the lists hold an optimal plan.
//!
//! A change of the list is tried from its first changed place on ([`Order::trial`]) and then either kept or taken back, so the
//! rest of the state is never copied.

use super::consts::MOST_PUSHES;
use super::model::Model;
use super::problem::Problem;
use super::schedule::Schedule;
use crate::units::Seconds;

/// No operation.
const NONE: u32 = u32::MAX;

/// A list of operations, the workers, and the times that follow from them.
#[derive(Debug, Clone)]
pub(crate) struct Order {
    /// Operations in the order in which they are decided.
    pub(crate) list: Vec<u32>,
    /// By operation: place in the list.
    pub(crate) place: Vec<u32>,
    /// By operation.
    pub(crate) worker: Vec<u8>,
    /// By operation.
    end: Vec<i32>,
    /// By operation: previous of the same worker.
    previous: Vec<u32>,
    /// By operation: seconds walked to get there.
    step: Vec<i32>,
    /// By operation: longest way from its start to the last end, its own duration included.
    tail: Vec<i32>,
    /// First place whose operation was pushed back for a window; `n` when none was.
    first_pushed: usize,
    makespan: i32,
    walking: i32,
    cost: i64,
    trial: Trial,
}

/// The same figures for the list as changed; equal to the kept ones outside `dirty_from..dirty_to`.
#[derive(Debug, Clone, Default)]
struct Trial {
    end: Vec<i32>,
    previous: Vec<u32>,
    step: Vec<i32>,
    ready: Vec<i32>,
    /// Operations with a `ready` above 0.
    pushed: Vec<u32>,
    next_of: Vec<u32>,
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
        let mut order = Self {
            place: vec![0; n],
            end: vec![0; n],
            previous: vec![NONE; n],
            step: vec![0; n],
            tail: vec![0; n],
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
                ..Trial::default()
            },
            list,
            worker,
        };
        for (place, &o) in order.list.iter().enumerate() {
            order.place[o as usize] = place as u32;
        }
        // Each push settles the window of the earliest part for good, so this many are enough for parts in a row.
        order.trial.most_pushes = model.windows.len() + 2;
        order.trial(model, 0, n - 1, i64::MAX).is_some().then(|| {
            order.trial.most_pushes = MOST_PUSHES;
            order.keep(model);
            order
        })
    }

    /// Cost of the kept list.
    pub(crate) fn cost(&self) -> i64 {
        self.cost
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

    /// Cost of the list after a change at the places `from..=to` (list, places and workers already changed): `None` when it
    /// breaks a rule or costs more than `limit`.
    pub(crate) fn trial(&mut self, model: &Model, from: usize, to: usize, limit: i64) -> Option<i64> {
        let start = from.min(self.first_pushed);
        self.trial.dirty_from = start;
        self.trial.dirty_to = start;
        self.trial.pushed.clear();
        let result = self
            .times(model, start, to, limit, Pass::First)
            .then_some(())
            .and_then(|()| self.windows(model, limit).then(|| model.cost(self.trial.makespan, self.trial.walking)));
        for &o in &self.trial.pushed {
            self.trial.ready[o as usize] = 0;
        }
        result.filter(|&cost| cost <= limit)
    }

    /// Takes the tried times for the kept ones; sorts the list by start, which changes no time.
    pub(crate) fn keep(&mut self, model: &Model) {
        for &o in &self.list[self.trial.dirty_from..] {
            let o = o as usize;
            self.end[o] = self.trial.end[o];
            self.previous[o] = self.trial.previous[o];
            self.step[o] = self.trial.step[o];
        }
        self.makespan = self.trial.makespan;
        self.walking = self.trial.walking;
        self.cost = model.cost(self.makespan, self.walking);
        self.sort(model, self.trial.dirty_from);
        self.first_pushed = self.trial.pushed.iter().map(|&o| self.place[o as usize] as usize).min().unwrap_or(model.n);
        self.tails(model);
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

    /// Times from place `start` on; false as soon as a rule is broken or the cost is sure to pass `limit`.
    fn times(&mut self, model: &Model, start: usize, to: usize, limit: i64, pass: Pass) -> bool {
        let n = model.n;
        let mut makespan = self.before(model, start);
        let mut walking = if matches!(pass, Pass::First) { self.walking } else { self.trial.walking };
        let settled = to + 2 * model.workers; // by then each worker's way is as before again, nearly always
        let trial = &mut self.trial;
        for place in start..n {
            let x = self.list[place] as usize;
            let w = usize::from(self.worker[x]);
            let own = trial.last[w];
            let mut at = trial.ready[x];
            let mut step = 0;
            if own != NONE {
                step = model.walk(own as usize, x);
                at = at.max(trial.end[own as usize] + step);
            }
            for &(before, wait) in model.before.of(x) {
                if self.place[before as usize] as usize >= place {
                    trial.dirty_to = trial.dirty_to.max(place);
                    return false;
                }
                at = at.max(trial.end[before as usize] + wait);
            }
            for &blocked in model.blocks.of(x) {
                if (self.place[blocked as usize] as usize) < place {
                    at = at.max(trial.end[blocked as usize]);
                }
            }
            for &(wets, dries) in model.blocked_by.of(x) {
                if (self.place[wets as usize] as usize) < place {
                    if self.place[dries as usize] as usize > place {
                        trial.dirty_to = trial.dirty_to.max(place);
                        return false;
                    }
                    at = at.max(trial.end[dries as usize]);
                }
            }
            for other in 0..model.workers {
                if other != w {
                    let mut y = trial.last[other];
                    while y != NONE && trial.end[y as usize] > at {
                        if model.close(x, y as usize) {
                            at = trial.end[y as usize];
                            break;
                        }
                        y = trial.previous[y as usize];
                    }
                }
            }
            let end = at + model.duration[x];
            walking += step - trial.step[x];
            makespan = makespan.max(end);
            trial.end[x] = end;
            trial.previous[x] = own;
            trial.step[x] = step;
            trial.last[w] = x as u32;
            if place > settled && matches!(pass, Pass::First) {
                // From here on the list is as kept, so the kept tail still holds.
                let least = makespan.max(at + self.tail[x]);
                if model.cost(least, walking) > limit {
                    trial.dirty_to = trial.dirty_to.max(place + 1);
                    return false;
                }
            }
        }
        trial.dirty_to = n;
        trial.makespan = makespan;
        trial.walking = walking;
        model.cost(makespan, walking) <= limit
    }

    /// Last end of the places before `start`; sets the last operation of each worker there.
    fn before(&mut self, model: &Model, start: usize) -> i32 {
        self.trial.last.fill(NONE);
        let mut makespan = 0;
        for &o in &self.list[..start] {
            let o = o as usize;
            self.trial.last[usize::from(self.worker[o])] = o as u32;
            makespan = makespan.max(self.trial.end[o]);
        }
        debug_assert!(self.trial.last.len() == model.workers);
        makespan
    }

    /// Pushes starts back until every window is kept; false when that does not come to an end or passes `limit`.
    fn windows(&mut self, model: &Model, limit: i64) -> bool {
        for _ in 0..self.trial.most_pushes {
            let mut first = model.n;
            for window in &model.windows {
                let (from, to) = (window.from as usize, window.to as usize);
                let least = self.trial.end[to] - window.max;
                if self.trial.end[from] < least {
                    if self.trial.ready[from] == 0 {
                        self.trial.pushed.push(window.from);
                    }
                    self.trial.ready[from] = least - model.duration[from];
                    first = first.min(self.place[from] as usize);
                }
            }
            if first == model.n {
                return true;
            }
            self.trial.dirty_from = self.trial.dirty_from.min(first);
            if !self.times(model, first, model.n, limit, Pass::Again) {
                return false;
            }
        }
        false
    }

    /// Sorts the places from `from` on by start (insertion sort: the list is nearly sorted).
    fn sort(&mut self, model: &Model, from: usize) {
        for place in from.max(1)..model.n {
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

    /// Longest ways to the end, backwards through the list; windows left out, so they are lower bounds.
    fn tails(&mut self, model: &Model) {
        let last = &mut self.trial.last; // here: the next operation of each worker
        last.fill(NONE);
        let next = &mut self.trial.next_of;
        next.resize(model.n, NONE);
        for place in (0..model.n).rev() {
            let x = self.list[place] as usize;
            let w = usize::from(self.worker[x]);
            let own = last[w];
            let mut tail = 0;
            if own != NONE {
                tail = model.walk(x, own as usize) + self.tail[own as usize];
            }
            for &(later, wait) in model.after.of(x) {
                tail = tail.max(wait + self.tail[later as usize]);
            }
            for &blocked in model.frees.of(x) {
                if self.place[blocked as usize] as usize > place {
                    tail = tail.max(self.tail[blocked as usize]);
                }
            }
            for &(wets, _) in model.blocked_by.of(x) {
                if self.place[wets as usize] as usize > place {
                    tail = tail.max(self.tail[wets as usize]);
                }
            }
            for (other, &first) in last.iter().enumerate() {
                if other != w {
                    let mut y = first;
                    while y != NONE && self.tail[y as usize] > tail {
                        if model.close(x, y as usize) {
                            tail = self.tail[y as usize];
                            break;
                        }
                        y = next[y as usize];
                    }
                }
            }
            self.tail[x] = tail + model.duration[x];
            next[x] = own;
            last[w] = x as u32;
        }
    }
}

/// Which evaluation of a trial it is.
#[derive(Debug, Clone, Copy)]
enum Pass {
    /// From the change on: kept tails hold after it.
    First,
    /// After a start was pushed back.
    Again,
}
