//! How often each stance must be come to.
//!
//! Somebody stays at a stance for a while, then walks on: a visit. Take the visits of one crew in the order of time. The steps
//! to the first visits of each stance are a forest over the stances; each further visit is walked to as well, at least from
//! the nearest other stance. Only the first visit of each worker is free. So `k` workers walk at least, for some `j < k`, a
//! spanning forest of `k - j` trees and all further visits but `j`.
//!
//! When two operations of one job are at one stance and done by one crew, then either the stance is visited again, or one visit
//! holds both, and whatever part of the wait between can't be filled with other work at this stance is spent standing still.

use super::crews::Crews;
use super::{shared, walking};
use crate::crew::problem::Problem;

/// What one crew has to walk to.
#[derive(Debug)]
pub(super) struct Visits {
    size: i64,
    /// Seconds of work.
    work: i64,
    /// Seconds in which nobody of the crew can work yet, or no more.
    outside: i64,
    /// Edges of a minimum spanning tree over the stances.
    tree: Vec<i64>,
    /// Stances that need a further visit, or standing still.
    again: Vec<Again>,
}

#[derive(Debug)]
struct Again {
    /// Seconds from the nearest other stance.
    nearest: i64,
    /// Seconds of standing still otherwise.
    idle: i64,
}

impl Visits {
    /// Of each crew.
    pub(super) fn of(problem: &Problem, crews: &Crews) -> Vec<Self> {
        (0..crews.size.len()).map(|crew| Self::of_crew(problem, crews, crew)).collect()
    }

    fn of_crew(problem: &Problem, crews: &Crews, crew: usize) -> Self {
        let own: Vec<usize> = (0..problem.len()).filter(|&o| crews.of[o] == crew).collect();
        let stances = Crews::stances(problem, own.iter().copied());
        let duration = |o: usize| i64::from(problem.operations[o].duration);
        let mut again = Vec::new();
        for &s in &stances {
            let steps = stances.iter().filter(|&&t| t != s).map(|&t| i64::from(problem.walk(t, s)));
            let here = |o: usize| problem.operations[o].stance == s && crews.of[o] == crew;
            let work: i64 = own.iter().filter(|&&o| here(o)).map(|&o| duration(o)).sum();
            let gaps = crews.jobs.iter().filter_map(|job| job.gap(problem, here));
            let idle = gaps.map(|(gap, both)| gap - (work - both)).max().unwrap_or(0);
            if let Some(nearest) = steps.min().filter(|_| idle > 0) {
                again.push(Again { nearest, idle });
            }
        }
        let head = own.iter().map(|&o| crews.head[o]).min().unwrap_or(0);
        let tail = own.iter().map(|&o| crews.tail[o]).min().unwrap_or(0);
        Self {
            size: crews.size[crew],
            work: own.iter().map(|&o| duration(o)).sum(),
            outside: head + tail,
            tree: walking::spanning_tree(problem, &stances),
            again,
        }
    }

    /// Least seconds walked by the crew when all is over by `latest`: standing still must fit what is left of that time.
    pub(super) fn walking(&self, latest: i64) -> i64 {
        let once = walking::forest(&self.tree, self.size);
        let spare = (latest - self.outside) * self.size - self.work - once;
        let mut idles: Vec<i64> = self.again.iter().map(|a| a.idle).collect();
        idles.sort_unstable();
        let mut used = 0;
        let still = idles.iter().take_while(|&&idle| {
            used += idle;
            used <= spare
        });
        let still = still.count();
        let mut again: Vec<i64> = self.again.iter().map(|a| a.nearest).collect();
        again.sort_unstable();
        again.truncate(again.len() - still);
        self.least(&again)
    }

    /// Lower bound of `makespan * last end + walking * seconds walked by this crew`, standing still weighed against walking.
    pub(super) fn cost(&self, makespan: i64, walking: i64) -> i64 {
        // A second of standing still costs makespan / size, one of walking that and its own weight: count in 1 / size.
        let walked = makespan + walking * self.size;
        let mut again: Vec<i64> = self.again.iter().map(|a| (a.nearest * walked).min(a.idle * makespan)).collect();
        again.sort_unstable();
        let ways = (0..self.size.min(again.len() as i64 + 1)).map(|free| {
            let further: i64 = again[..again.len() - free as usize].iter().sum();
            walking::forest(&self.tree, self.size - free) * walked + further
        });
        let ways = ways.min().unwrap_or(0);
        shared((self.work + self.outside * self.size) * makespan + ways, self.size)
    }

    /// Forest and further visits (ascending), the best use of the free first visit of each worker.
    fn least(&self, again: &[i64]) -> i64 {
        let ways = (0..self.size.min(again.len() as i64 + 1)).map(|free| {
            let further: i64 = again[..again.len() - free as usize].iter().sum();
            walking::forest(&self.tree, self.size - free) + further
        });
        ways.min().unwrap_or(0)
    }
}
