//! Two crews one after the other with a shortest wait between: Johnson 1954, with the equal time lags of Mitten 1959.
//!
//! Let a job take `a` by the first crew (of `k`), at least `l` of waiting, and `b` by the second (of `m`). Number jobs by their
//! start at the second crew. When job `i` starts there, jobs `1..=i` have left the first crew at least `l` ago; from then on
//! the second crew has jobs `i..` before it. So for every order, and every `i`,
//! `finish >= (a_1 + … + a_i) / k + l + (b_i + … + b_n) / m`, and the order that makes the largest of these as small as
//! possible is Johnson's. Sequences of the two crews need not agree for this.
//!
//! Both ways, of the first crew through `1..=i` and of the second through `i..`, pass the stance of job `i`, so together they
//! are a connected graph over all stances: a minimum spanning tree may be added, for larger crews less its longest edges. This
//! needs both operations of each job to be at one stance; jobs that move are looked at without walking.

use super::crews::{Crews, Job};
use super::{shared, walking};
use crate::crew::problem::Problem;
use std::collections::BTreeMap;

/// Lower bound of the last end; 0 when no two crews follow each other.
pub(super) fn finish(problem: &Problem, crews: &Crews) -> i64 {
    let mut pairs: BTreeMap<(usize, usize), Vec<Leg>> = BTreeMap::new();
    for job in &crews.jobs {
        for leg in legs(problem, crews, job) {
            pairs.entry(leg.crews).or_default().push(leg);
        }
    }
    let of = |legs: &Vec<Leg>| {
        let in_place: Vec<Leg> = legs.iter().copied().filter(|l| l.in_place).collect();
        let walked = by_wait(&in_place).map(|some| of_legs(problem, crews, some)).max();
        walked.max(by_wait(legs).map(|some| of_legs(problem, crews, some)).max())
    };
    pairs.values().filter_map(of).max().unwrap_or(0)
}

/// Two consecutive operations of a job, by different crews.
#[derive(Debug, Clone, Copy)]
struct Leg {
    crews: (usize, usize),
    operations: (usize, usize),
    /// Whether both are at one stance.
    in_place: bool,
    wait: i64,
    /// Least time before the first and after the second.
    head: i64,
    tail: i64,
}

fn legs<'a>(problem: &'a Problem, crews: &'a Crews, job: &'a Job) -> impl Iterator<Item = Leg> + 'a {
    job.operations.windows(2).zip(&job.waits).filter_map(move |(pair, &wait)| {
        let between = (crews.of[pair[0]], crews.of[pair[1]]);
        (between.0 != between.1).then(|| Leg {
            crews: between,
            operations: (pair[0], pair[1]),
            in_place: problem.operations[pair[0]].stance == problem.operations[pair[1]].stance,
            wait,
            head: crews.head[pair[0]],
            tail: crews.tail[pair[1]],
        })
    })
}

/// Subsets that are worth a bound of their own: those with at least a given head, wait and tail.
fn by_wait(legs: &[Leg]) -> impl Iterator<Item = Vec<Leg>> + '_ {
    let mut keys: Vec<(i64, i64, i64)> = legs.iter().map(|l| (l.head, l.wait, l.tail)).collect();
    keys.sort_unstable();
    keys.dedup();
    let step = keys.len().div_ceil(40).max(1);
    keys.into_iter().step_by(step).map(|(head, wait, tail)| {
        legs.iter().copied().filter(|l| l.head >= head && l.wait >= wait && l.tail >= tail).collect()
    })
}

fn of_legs(problem: &Problem, crews: &Crews, mut legs: Vec<Leg>) -> i64 {
    let Some(&any) = legs.first() else { return 0 };
    let (k, m) = (crews.size[any.crews.0], crews.size[any.crews.1]);
    let duration = |o: usize| i64::from(problem.operations[o].duration);
    // all times in 1 / (k m) of a second, so that shares stay whole
    let a = |l: &Leg| duration(l.operations.0) * m;
    let b = |l: &Leg| duration(l.operations.1) * k;
    legs.sort_by_key(|l| if a(l) < b(l) { (0, a(l)) } else { (1, -b(l)) });
    let (mut first, mut second) = (0, 0);
    for leg in &legs {
        first += a(leg);
        second = second.max(first) + b(leg);
    }
    let in_place = legs.iter().all(|l| l.in_place);
    let tree = walking::spanning_tree(problem, &Crews::stances(problem, legs.iter().map(|l| l.operations.0)));
    let walked = if in_place { walking::forest(&tree, k + m - 1) * k.min(m) } else { 0 }; // shared by the larger crew
    let least = |of: fn(&Leg) -> i64| legs.iter().map(of).min().unwrap_or(0);
    least(|l| l.head) + least(|l| l.wait) + least(|l| l.tail) + shared(second + walked, k * m)
}
