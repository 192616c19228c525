//! Who shares work with whom, and which operations follow each other: what the bounds see of a problem.

use crate::crew::problem::Problem;

/// Workers who may do some of the same operations belong to one crew; two crews have no operation in common.
#[derive(Debug)]
pub(super) struct Crews {
    /// Number of workers of each crew that has work.
    pub(super) size: Vec<i64>,
    /// By operation: its crew.
    pub(super) of: Vec<usize>,
    /// By operation: earliest start by its lags alone.
    pub(super) head: Vec<i64>,
    /// By operation: least time from its end to the last end by its lags alone.
    pub(super) tail: Vec<i64>,
    /// Operations that follow each other by a lag, each operation in one job.
    pub(super) jobs: Vec<Job>,
}

/// A chain of operations; nearly always one layer, or all layers, of one panel.
#[derive(Debug, Clone)]
pub(super) struct Job {
    pub(super) operations: Vec<usize>,
    /// Shortest wait after each operation but the last.
    pub(super) waits: Vec<i64>,
}

impl Job {
    /// The stance of all its operations, if it is the same.
    pub(super) fn stance(&self, problem: &Problem) -> Option<usize> {
        let mut stances = self.operations.iter().map(|&o| problem.operations[o].stance);
        let first = stances.next()?;
        stances.all(|s| s == first).then_some(first)
    }

    /// Of the operations that are `here`, the two next to each other in the job with the longest least time between: that time
    /// and their durations together.
    pub(super) fn gap(&self, problem: &Problem, here: impl Fn(usize) -> bool) -> Option<(i64, i64)> {
        let duration = |o: usize| i64::from(problem.operations[o].duration);
        let mut best = None;
        let mut last: Option<(usize, i64)> = None; // operation, least time since its end
        for (at, &o) in self.operations.iter().enumerate() {
            let since = last.map(|(l, time)| (l, time + self.waits[at - 1]));
            if here(o) {
                best = best.max(since.map(|(l, time)| (time, duration(l) + duration(o))));
                last = Some((o, 0));
            } else {
                last = since.map(|(l, time)| (l, time + duration(o)));
            }
        }
        best
    }
}

impl Crews {
    /// Looks at a problem once.
    pub(super) fn of(problem: &Problem) -> Self {
        let n = problem.len();
        let (of, size) = crews(problem);
        let sorted = problem.sorted_by_lags();
        let mut head = vec![0; n];
        let mut tail = vec![0; n];
        let duration = |o: usize| i64::from(problem.operations[o].duration);
        for &o in &sorted {
            for lag in problem.lags.iter().filter(|l| l.from == o) {
                head[lag.to] = head[lag.to].max(head[o] + duration(o) + i64::from(lag.min));
            }
        }
        for &o in sorted.iter().rev() {
            for lag in problem.lags.iter().filter(|l| l.to == o) {
                tail[lag.from] = tail[lag.from].max(i64::from(lag.min) + duration(o) + tail[o]);
            }
        }
        Self { size, of, jobs: jobs(problem, &sorted), head, tail }
    }

    /// Stances of some operations, each once, ascending.
    pub(super) fn stances(problem: &Problem, operations: impl Iterator<Item = usize>) -> Vec<usize> {
        let mut stances: Vec<usize> = operations.map(|o| problem.operations[o].stance).collect();
        stances.sort_unstable();
        stances.dedup();
        stances
    }
}

fn crews(problem: &Problem) -> (Vec<usize>, Vec<i64>) {
    let mut root: Vec<usize> = (0..problem.workers).collect();
    for operation in &problem.operations {
        let first = root[operation.able[0]];
        for &w in &operation.able {
            let old = root[w];
            for r in &mut root {
                if *r == old {
                    *r = first;
                }
            }
        }
    }
    let mut names: Vec<usize> = problem.operations.iter().map(|o| root[o.able[0]]).collect();
    names.sort_unstable();
    names.dedup();
    let index = |w: usize| names.binary_search(&root[w]).ok();
    let of = problem.operations.iter().map(|o| index(o.able[0]).unwrap_or(0)).collect();
    let mut size = vec![0; names.len()];
    for w in 0..problem.workers {
        if let Some(crew) = index(w) {
            size[crew] += 1;
        }
    }
    (of, size)
}

/// Links operations along lags, each to at most one before and one after; other lags are left out, which only relaxes.
fn jobs(problem: &Problem, sorted: &[usize]) -> Vec<Job> {
    let n = problem.len();
    let mut next: Vec<Option<(usize, i64)>> = vec![None; n];
    let mut has_previous = vec![false; n];
    for lag in &problem.lags {
        if next[lag.from].is_none() && !has_previous[lag.to] {
            next[lag.from] = Some((lag.to, i64::from(lag.min)));
            has_previous[lag.to] = true;
        }
    }
    let mut jobs = Vec::new();
    for &first in sorted.iter().filter(|&&o| !has_previous[o]) {
        let mut job = Job { operations: vec![first], waits: Vec::new() };
        let mut at = first;
        while let Some((to, wait)) = next[at] {
            job.operations.push(to);
            job.waits.push(wait);
            at = to;
        }
        jobs.push(job);
    }
    jobs
}
