//! One job that every other job must go before or after.
//!
//! Let all jobs go through the same crews in `K` stages with shortest waits between (two for one layer, four for two), and
//! take one job `p`. Choose some stages as cuts. Any other job `q` is before `p` at the first cut, or after it at one cut and
//! before it at the next, or after it at the last one. In the first case its operation one stage before the cut has to be done
//! before `p` reaches the cut, wait included; in the second its operation one stage before the next cut falls between the two
//! visits of `p`; in the third its operation at the last cut comes after `p`. So
//! `finish >= durations of p + waits + sum over q of the least of those operations`. With two stages this is the bound of
//! Johnson's rule for a single job `p`; for more stages it is ours, after the path argument for permutation flow shops
//! (Ignall and Schrage 1965; Lageweg, Lenstra and Rinnooy Kan 1978), without needing equal sequences. It counts the
//! longest job at every stage, which is what holds two layers up.
//!
//! When `p` has one stance at all stages, the ways between all pass it, so a minimum spanning tree over the stances of all such
//! jobs may be added; leaving other stances out of a way makes it no longer (triangle inequality).

use super::crews::{Crews, Job};
use super::{shared, walking};
use crate::crew::problem::Problem;
use std::collections::BTreeMap;

/// Stages beyond which a job is left to the other bounds.
const MOST_STAGES: usize = 8;

/// Lower bound of the last end; 0 when no job has two stages.
pub(super) fn finish(problem: &Problem, crews: &Crews) -> i64 {
    let mut kinds: BTreeMap<Vec<usize>, Vec<&Job>> = BTreeMap::new();
    for job in crews.jobs.iter().filter(|j| (2..=MOST_STAGES).contains(&j.operations.len())) {
        kinds.entry(job.operations.iter().map(|&o| crews.of[o]).collect()).or_default().push(job);
    }
    kinds.iter().map(|(stages, jobs)| of_kind(problem, crews, stages, jobs)).max().unwrap_or(0)
}

fn of_kind(problem: &Problem, crews: &Crews, stages: &[usize], jobs: &[&Job]) -> i64 {
    let count = stages.len();
    let size: Vec<i64> = stages.iter().map(|&c| crews.size[c]).collect();
    let whole: i64 = size.iter().copied().fold(1, lcm);
    let wait: Vec<i64> = (0..count - 1).map(|s| jobs.iter().map(|j| j.waits[s]).min().unwrap_or(0)).collect();
    let stances = jobs.iter().filter(|j| j.stance(problem).is_some()).map(|j| j.operations[0]);
    let tree = walking::spanning_tree(problem, &Crews::stances(problem, stances));
    // in 1 / whole of a second
    let share = |job: &Job, s: usize| i64::from(problem.operations[job.operations[s]].duration) * (whole / size[s]);
    let mut best = 0;
    for chosen in 1_u32..1 << count {
        let cuts: Vec<usize> = (0..count).filter(|s| chosen >> s & 1 == 1).collect();
        let Some(counted) = counted_stages(&cuts, count) else { continue };
        let parts: i64 = 1 + counted.iter().map(|&s| size[s] - 1).sum::<i64>();
        let largest = counted.iter().map(|&s| size[s]).max().unwrap_or(1);
        let walked = walking::forest(&tree, parts) * (whole / largest);
        let least = |job: &Job| counted.iter().map(|&s| share(job, s)).min().unwrap_or(0);
        let all: i64 = jobs.iter().map(|j| least(j)).sum();
        let after_last: i64 = (cuts[cuts.len() - 1] + 1..count)
            .map(|s| jobs.iter().map(|j| i64::from(problem.operations[j.operations[s]].duration)).min().unwrap_or(0))
            .sum();
        let last_cut = cuts[cuts.len() - 1];
        for p in jobs {
            let own: i64 = (0..=last_cut).map(|s| share(p, s)).sum();
            let walked = if p.stance(problem).is_some() { walked } else { 0 };
            let bound = own + all - least(p) + walked + (wait.iter().sum::<i64>() + after_last) * whole;
            best = best.max(shared(bound, whole));
        }
    }
    best
}

/// The stage counted in each part between cuts; none when the cuts leave a gap the argument does not cover.
fn counted_stages(cuts: &[usize], stages: usize) -> Option<Vec<usize>> {
    let (&first, &last) = (cuts.first()?, cuts.last()?);
    let steps_are_short = cuts.windows(2).all(|pair| pair[1] - pair[0] <= 2);
    if first > 1 || last + 2 < stages || !steps_are_short {
        return None;
    }
    let mut counted = vec![first.saturating_sub(1)];
    counted.extend(cuts.windows(2).map(|pair| pair[1] - 1));
    counted.push(last);
    Some(counted)
}

fn lcm(a: i64, b: i64) -> i64 {
    let (mut x, mut y) = (a, b);
    while y > 0 {
        (x, y) = (y, x % y);
    }
    a / x * b
}
