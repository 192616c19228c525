//! The least cost of a plan that begins with a given sequence.

use super::prefix::Prefix;
use crate::crew::model::Model;

/// What does not change during the search.
#[derive(Debug)]
pub(super) struct Remaining<'a> {
    model: &'a Model,
    /// By operation: least time from its start to the last end by its lags, its own duration included.
    tail: Vec<i32>,
    /// Operations so that each comes after those its lags wait for.
    sorted: Vec<usize>,
    /// By operation: seconds to its stance from the nearest other stance in use.
    nearest: Vec<i32>,
    /// The longest step between any two operations.
    farthest: i32,
    /// By worker: its crew, workers linked by what both may do.
    crew: Vec<usize>,
}

impl<'a> Remaining<'a> {
    /// Looks at the problem once.
    pub(super) fn new(model: &'a Model) -> Self {
        let n = model.n;
        let mut waits: Vec<usize> = (0..n).map(|o| model.before.of(o).len()).collect();
        let mut sorted: Vec<usize> = (0..n).filter(|&o| waits[o] == 0).collect();
        let mut at = 0;
        while at < sorted.len() {
            for &(later, _) in model.after.of(sorted[at]) {
                waits[later as usize] -= 1;
                if waits[later as usize] == 0 {
                    sorted.push(later as usize);
                }
            }
            at += 1;
        }
        let mut tail = vec![0; n];
        for &o in sorted.iter().rev() {
            let later = model.after.of(o).iter().map(|&(later, wait)| wait + tail[later as usize]).max().unwrap_or(0);
            tail[o] = model.duration[o] + later;
        }
        let nearest = (0..n)
            .map(|o| {
                let others = (0..n).filter(|&x| model.stance[x] != model.stance[o]);
                others.map(|x| model.walk(x, o)).min().unwrap_or(0)
            })
            .collect();
        let steps = (0..n).flat_map(|a| (0..n).map(move |b| model.walk(a, b)));
        let farthest = steps.max().unwrap_or(0);
        let mut crew: Vec<usize> = (0..model.workers).collect();
        for able in &model.able {
            let first = crew[able[0]];
            for &w in able {
                let old = crew[w];
                crew.iter_mut().filter(|c| **c == old).for_each(|c| *c = first);
            }
        }
        Self { model, tail, sorted, nearest, farthest, crew }
    }

    /// Lower bound of the cost: heads and tails by the lags, the work left shared by each crew, each stance walked to.
    pub(super) fn bound(&self, prefix: &Prefix<'_>) -> i64 {
        let model = self.model;
        let now = prefix.now();
        let mut finish = prefix.makespan();
        let mut walking = prefix.walking();
        let mut start = vec![0; model.n];
        for &o in &self.sorted {
            if prefix.placed(o) {
                continue;
            }
            let wait = |&(before, wait): &(u32, i32)| {
                let before = before as usize;
                let end =
                    if prefix.placed(before) { prefix.end(before) } else { start[before] + model.duration[before] };
                end + wait
            };
            let at = model.before.of(o).iter().map(wait).max().unwrap_or(0).max(now);
            start[o] = at;
            finish = finish.max(at + self.tail[o]);
        }
        for crew in (0..model.workers).filter(|&w| self.crew[w] == w) {
            let (shared, walked) = self.of_crew(prefix, crew, now);
            finish = finish.max(shared);
            walking += walked;
        }
        model.cost(finish, walking)
    }

    /// Lower bounds of the crew's last end and of what it still walks.
    fn of_crew(&self, prefix: &Prefix<'_>, crew: usize, now: i32) -> (i32, i32) {
        let model = self.model;
        let own = (0..model.n).filter(|&o| !prefix.placed(o) && self.crew[model.able[o][0]] == crew);
        let (mut work, mut tail, mut count) = (0, i32::MAX, 0);
        let mut stances: Vec<(u32, i32)> = Vec::new();
        for o in own {
            count += 1;
            work += model.duration[o];
            tail = tail.min(self.tail[o] - model.duration[o]);
            if !stances.iter().any(|&(s, _)| s == model.stance[o]) {
                stances.push((model.stance[o], self.nearest[o]));
            }
        }
        if count == 0 {
            return (0, 0);
        }
        let (mut free, mut members, mut from) = (0, 0, 0);
        for w in (0..model.workers).filter(|&w| self.crew[w] == crew) {
            members += 1;
            if let Some(last) = prefix.last(w) {
                // the first step may have begun before now
                from += prefix.end(last).max(now - self.farthest);
                stances.retain(|&(s, _)| s != model.stance[last]);
            } else {
                from += now;
                free += 1;
            }
        }
        stances.sort_unstable_by_key(|&(_, nearest)| nearest);
        stances.truncate(stances.len().saturating_sub(free));
        let walked: i32 = stances.iter().map(|&(_, nearest)| nearest).sum();
        ((from + work + walked + members - 1) / members + tail, walked)
    }
}
