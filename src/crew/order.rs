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

    /// Cost of the list after a change (list, places and workers already changed): `None` when it breaks a rule or costs more
    /// than `limit`.
    pub(crate) fn trial(&mut self, model: &Model, stretch: Stretch, limit: i64) -> Option<i64> {
        self.trial.dirty_from = stretch.from.min(self.first_pushed);
        self.trial.dirty_to = self.trial.dirty_from;
        self.trial.pushed.clear();
        let kept = self.times(model, stretch, limit) && self.windows(model, limit);
        for &o in &self.trial.pushed {
            self.trial.ready[o as usize] = 0;
        }
        kept.then(|| model.cost(self.trial.makespan, self.trial.walking))
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

    /// Times of a changed list, as far as they change; false as soon as a rule is broken or the cost is sure to pass `limit`.
    ///
    /// Behind the stretch the list is as kept and sorted by start. An operation whose kept start lies after everything that
    /// changed, waits included, keeps its start, and so does everything behind it: there the work ends.
    fn times(&mut self, model: &Model, stretch: Stretch, limit: i64) -> bool {
        let start = self.trial.dirty_from;
        let mut makespan = self.end_before[start];
        let mut walking = self.walking;
        self.find_last(start);
        // workers whose next way after the stretch is still to be looked at, a bit each
        let mut open: u64 = if stretch.reassigned { u64::MAX >> (64 - model.workers) } else { 0 };
        let mut reach = i32::MIN;
        for place in start..model.n {
            let x = self.list[place] as usize;
            let kept_end = self.end[x];
            if place > stretch.to {
                if open == 0 && kept_end - model.duration[x] > reach {
                    self.trial.dirty_to = place;
                    self.trial.makespan = makespan.max(self.end_from[place]);
                    self.trial.walking = walking;
                    return model.cost(self.trial.makespan, walking) <= limit;
                }
                open &= !(1 << self.worker[x]);
            } else {
                open |= 1 << self.worker[x];
            }
            let old_step = self.trial.step[x];
            let Some(end) = self.time(model, place) else {
                self.trial.dirty_to = place + 1;
                return false;
            };
            walking += self.trial.step[x] - old_step;
            makespan = makespan.max(end);
            if end != kept_end || place <= stretch.to {
                reach = reach.max(end.max(kept_end) + model.influence[x]);
            }
            if open == 0 && place > stretch.to {
                // The kept tail still holds here.
                let least = makespan.max(end - model.duration[x] + self.tail[x]);
                if model.cost(least, walking) > limit {
                    self.trial.dirty_to = place + 1;
                    return false;
                }
            }
        }
        self.trial.dirty_to = model.n;
        self.trial.makespan = makespan;
        self.trial.walking = walking;
        model.cost(makespan, walking) <= limit
    }

    /// The same from `start` to the end of the list, after a start was pushed back.
    fn times_again(&mut self, model: &Model, start: usize) -> bool {
        self.find_last(start);
        for place in start..model.n {
            if self.time(model, place).is_none() {
                self.trial.dirty_to = model.n;
                return false;
            }
        }
        self.trial.dirty_to = model.n;
        let ends = self.list.iter().map(|&o| self.trial.end[o as usize]);
        self.trial.makespan = ends.max().unwrap_or(0);
        true
    }

    /// Times the operation at one place after those before it; `None` when a lag or a wet rule forbids this order.
    #[inline]
    fn time(&mut self, model: &Model, place: usize) -> Option<i32> {
        let trial = &mut self.trial;
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
                return None;
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
                    return None;
                }
                at = at.max(trial.end[dries as usize]);
            }
        }
        for (other, &last) in trial.last.iter().enumerate() {
            if other != w {
                let mut y = last;
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
        trial.end[x] = end;
        trial.previous[x] = own;
        trial.step[x] = step;
        trial.last[w] = x as u32;
        Some(end)
    }

    /// Finds the last operation of each worker before a place.
    fn find_last(&mut self, start: usize) {
        let last = &mut self.trial.last;
        last.fill(NONE);
        let mut missing = last.len();
        for &o in self.list[..start].iter().rev() {
            let there = &mut last[usize::from(self.worker[o as usize])];
            if *there == NONE {
                *there = o;
                missing -= 1;
                if missing == 0 {
                    return;
                }
            }
        }
    }

    /// Pushes starts back until every window is kept; false when that does not come to an end or passes `limit`.
    fn windows(&mut self, model: &Model, limit: i64) -> bool {
        for _ in 0..self.trial.most_pushes {
            let mut first = model.n;
            for &o in &self.list[self.trial.dirty_from..self.trial.dirty_to] {
                for window in model.windows_of.of(o as usize) {
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
            }
            if first == model.n {
                return true;
            }
            self.trial.dirty_from = self.trial.dirty_from.min(first);
            if !self.times_again(model, first) || model.cost(self.trial.makespan, self.trial.walking) > limit {
                return false;
            }
        }
        false
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

    /// Longest ways to the end, backwards through the list; those from place `to` on have not changed. Windows are left out, so
    /// they are lower bounds.
    fn tails(&mut self, model: &Model, to: usize) {
        let next = &mut self.trial.last; // here: the next operation of each worker
        next.fill(NONE);
        for &o in self.list[to..].iter().rev() {
            next[usize::from(self.worker[o as usize])] = o;
        }
        for place in (0..to).rev() {
            let x = self.list[place] as usize;
            let w = usize::from(self.worker[x]);
            let own = next[w];
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
            for (other, &first) in next.iter().enumerate() {
                if other != w {
                    let mut y = first;
                    while y != NONE && self.tail[y as usize] > tail {
                        if model.close(x, y as usize) {
                            tail = self.tail[y as usize];
                            break;
                        }
                        y = self.next[y as usize];
                    }
                }
            }
            self.tail[x] = tail + model.duration[x];
            self.next[x] = own;
            next[w] = x as u32;
        }
    }
}
