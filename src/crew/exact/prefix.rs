//! The first operations of a plan by start, and when they start.

use crate::crew::consts::LARGEST_HORIZON;
use crate::crew::model::Model;

/// A sequence under construction. Starts never decrease along it.
#[derive(Debug)]
pub(crate) struct Prefix<'a> {
    model: &'a Model,
    list: Vec<u32>,
    placed: Vec<bool>,
    worker: Vec<u8>,
    /// By operation.
    end: Vec<i32>,
    /// By operation: not earlier because of a window.
    ready: Vec<i32>,
    /// Of each placement: what it changed.
    undo: Vec<Undo>,
}

#[derive(Debug)]
struct Undo {
    /// Ends and starts before a window pushed something, if one did.
    times: Option<(Vec<i32>, Vec<i32>)>,
}

impl<'a> Prefix<'a> {
    /// Nothing placed.
    pub(crate) fn new(model: &'a Model) -> Self {
        let n = model.n;
        Self {
            model,
            list: Vec::with_capacity(n),
            placed: vec![false; n],
            worker: vec![0; n],
            end: vec![0; n],
            ready: vec![0; n],
            undo: Vec::with_capacity(n),
        }
    }

    /// What is placed, by start.
    pub(crate) fn list(&self) -> &[u32] {
        &self.list
    }

    /// By operation; meaningful for what is placed.
    pub(crate) fn workers(&self) -> &[u8] {
        &self.worker
    }

    /// Whether an operation is placed.
    pub(crate) fn placed(&self, operation: usize) -> bool {
        self.placed[operation]
    }

    /// End of a placed operation.
    pub(crate) fn end(&self, operation: usize) -> i32 {
        self.end[operation]
    }

    /// Nothing more starts before this.
    pub(crate) fn now(&self) -> i32 {
        self.list.last().map_or(0, |&o| self.end[o as usize] - self.model.duration[o as usize])
    }

    /// The last operation of a worker.
    pub(crate) fn last(&self, worker: usize) -> Option<usize> {
        self.list.iter().rev().map(|&o| o as usize).find(|&o| usize::from(self.worker[o]) == worker)
    }

    /// Whether lags and wet periods let an operation start next.
    pub(crate) fn may_start(&self, operation: usize) -> bool {
        let model = self.model;
        !self.placed[operation]
            && model.before.of(operation).iter().all(|&(before, _)| self.placed[before as usize])
            && model
                .blocked_by
                .of(operation)
                .iter()
                .all(|&(wets, dries)| !self.placed[wets as usize] || self.placed[dries as usize])
    }

    /// Earliest start after what is placed.
    pub(crate) fn earliest(&self, operation: usize, worker: usize) -> i32 {
        self.earliest_at(self.list.len(), operation, worker)
    }

    /// Earliest start after the first `place` operations.
    fn earliest_at(&self, place: usize, x: usize, worker: usize) -> i32 {
        let model = self.model;
        let mut at = self.ready[x];
        if let Some(&last) = self.list[..place].last() {
            at = at.max(self.end[last as usize] - model.duration[last as usize]);
        }
        for &(before, wait) in model.before.of(x) {
            at = at.max(self.end[before as usize] + wait);
        }
        for &o in &self.list[..place] {
            let o = o as usize;
            if usize::from(self.worker[o]) == worker {
                at = at.max(self.end[o] + model.walk(o, x));
            } else if model.close(o, x) {
                at = at.max(self.end[o]);
            }
        }
        let before = |o: u32| self.list[..place].contains(&o);
        for &blocked in model.blocks.of(x) {
            if before(blocked) {
                at = at.max(self.end[blocked as usize]);
            }
        }
        for &(_, dries) in model.blocked_by.of(x) {
            if before(dries) {
                at = at.max(self.end[dries as usize]);
            }
        }
        at
    }

    /// Places an operation next; false, and nothing changed, when a window can't be kept any more.
    pub(crate) fn place(&mut self, operation: usize, worker: usize) -> bool {
        self.end[operation] = self.earliest(operation, worker) + self.model.duration[operation];
        self.worker[operation] = worker as u8;
        self.placed[operation] = true;
        self.list.push(operation as u32);
        self.undo.push(Undo { times: None });
        let kept = self.keep_windows();
        if !kept {
            self.take_back();
        }
        kept
    }

    /// Takes the last placement back.
    pub(crate) fn take_back(&mut self) {
        let (Some(o), Some(undo)) = (self.list.pop(), self.undo.pop()) else { return };
        self.placed[o as usize] = false;
        if let Some((end, ready)) = undo.times {
            self.end = end;
            self.ready = ready;
        }
    }

    /// Pushes starts back until all windows between placed operations are kept. Each round settles at least one window for
    /// good (Bellman 1958), so more rounds than windows mean a circle that never ends.
    fn keep_windows(&mut self) -> bool {
        for _ in 0..=self.model.windows.len() {
            let mut pushed = false;
            for window in &self.model.windows {
                let (from, to) = (window.from as usize, window.to as usize);
                let least = self.end[to] - window.max;
                if self.placed[to] && self.end[from] < least {
                    if let Some(undo) = self.undo.last_mut().filter(|u| u.times.is_none()) {
                        undo.times = Some((self.end.clone(), self.ready.clone()));
                    }
                    self.ready[from] = self.ready[from].max(least - self.model.duration[from]);
                    pushed = true;
                }
            }
            if !pushed {
                return true;
            }
            for place in 0..self.list.len() {
                let o = self.list[place] as usize;
                self.end[o] = self.earliest_at(place, o, usize::from(self.worker[o])) + self.model.duration[o];
            }
            if i64::from(self.makespan()) > LARGEST_HORIZON {
                return false; // only a circle of windows pushes that far
            }
        }
        false
    }

    /// Seconds walked so far.
    pub(crate) fn walking(&self) -> i32 {
        let mut last: Vec<Option<usize>> = vec![None; self.model.workers];
        let mut walking = 0;
        for &o in &self.list {
            let o = o as usize;
            if let Some(from) = last[usize::from(self.worker[o])].replace(o) {
                walking += self.model.walk(from, o);
            }
        }
        walking
    }

    /// Last end so far.
    pub(crate) fn makespan(&self) -> i32 {
        self.list.iter().map(|&o| self.end[o as usize]).max().unwrap_or(0)
    }

    /// Cost of what is placed.
    pub(crate) fn cost(&self) -> i64 {
        self.model.cost(self.makespan(), self.walking())
    }
}
