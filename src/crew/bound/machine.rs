//! One crew by itself: heads, bodies and tails (Carlier 1982, "The one-machine sequencing problem").
//!
//! For any set of operations of a crew of `k`: nobody starts before the least head, the work and the walking between the
//! stances of the set are shared by `k`, and after the last end the least tail is to come. With heads and tails in ascending
//! order only sets of the form "head at least h and tail at least q" matter (Jackson's preemptive schedule gives the largest of
//! them for one machine).

use super::crews::Crews;
use super::{shared, walking};
use crate::crew::problem::Problem;

/// Lower bound of the last end.
pub(super) fn finish(problem: &Problem, crews: &Crews) -> i64 {
    let alone = (0..problem.len()).map(|o| crews.head[o] + i64::from(problem.operations[o].duration) + crews.tail[o]);
    let mut best = alone.max().unwrap_or(0);
    for (crew, &size) in crews.size.iter().enumerate() {
        let own: Vec<usize> = (0..problem.len()).filter(|&o| crews.of[o] == crew).collect();
        for head in thresholds(own.iter().map(|&o| crews.head[o])) {
            for tail in thresholds(own.iter().map(|&o| crews.tail[o])) {
                let set: Vec<usize> =
                    own.iter().copied().filter(|&o| crews.head[o] >= head && crews.tail[o] >= tail).collect();
                if set.is_empty() {
                    continue;
                }
                let work: i64 = set.iter().map(|&o| i64::from(problem.operations[o].duration)).sum();
                let tree = walking::spanning_tree(problem, &Crews::stances(problem, set.iter().copied()));
                best = best.max(head + shared(work + walking::forest(&tree, size), size) + tail);
            }
        }
    }
    best
}

/// At most a few dozen values, the lowest always among them; leaving some out only weakens the bound.
fn thresholds(values: impl Iterator<Item = i64>) -> Vec<i64> {
    const MOST: usize = 24;
    let mut values: Vec<i64> = values.collect();
    values.sort_unstable();
    values.dedup();
    let step = values.len().div_ceil(MOST).max(1);
    values.into_iter().step_by(step).collect()
}
