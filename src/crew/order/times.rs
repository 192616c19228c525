//! When everything starts in a changed list, as far as that changes.

use super::{NONE, Order, Stretch};
use crate::crew::consts::LARGEST_HORIZON;
use crate::crew::model::Model;

impl Order {
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
        // Doing everything one after the other takes less: only a circle of windows pushes further, and then without end.
        i64::from(self.trial.makespan) <= LARGEST_HORIZON
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
}
