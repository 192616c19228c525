//! Problems whose answers are published or follow from a published theorem.
#![expect(clippy::unwrap_used, reason = "a helper of a test may fail it")]

mod crew_support;

use crew_support::flow_shop::{Job, flow_shop};
use crew_support::quiet::Quiet;
use crew_support::random_problem::Dice;
use lapwright::crew::{Limits, Outcome, Problem, solve};

fn job(first: i64, wait: i64, second: i64) -> Job {
    Job { first, wait, second, no_wait: false }
}

fn solved(jobs: &[Job], nodes: u64) -> Outcome {
    let problem = Problem::try_from(flow_shop(jobs)).unwrap();
    solve(&problem, &Limits { nodes: Some(nodes), threads: 1, seed: 1 }, &Quiet)
}

/// Johnson (1954). Worked examples: five jobs, 30 hours in the order B D C E A (shaalaa.com, question bank for mathematics,
/// sequencing); five jobs in tenths of an hour, 20.5 hours in the order C A D E B (from memory).
#[test]
fn johnsons_rule_worked_examples() {
    let first = [job(5, 0, 2), job(1, 0, 6), job(9, 0, 7), job(3, 0, 8), job(10, 0, 4)];
    let second = [job(32, 0, 42), job(47, 0, 15), job(22, 0, 50), job(58, 0, 40), job(31, 0, 28)];
    for (jobs, time) in [(first, 30), (second, 205)] {
        let Outcome::Optimal(best) = solved(&jobs, 100_000) else { panic!("not proven") };
        assert_eq!(best.makespan_s(), time);
    }
}

/// Johnson (1954): a job with a shorter first time goes before, shortest first; the others after, longest second time first.
fn johnson(jobs: &[Job]) -> i64 {
    let mut order = jobs.to_vec();
    order.sort_by_key(|j| if j.first < j.second { (0, j.first) } else { (1, -j.second) });
    let (mut one, mut two) = (0, 0);
    for job in &order {
        one += job.first;
        two = two.max(one) + job.second;
    }
    two
}

/// Mitten (1959) with one wait for all jobs: the optimum is Johnson's, the wait later. Forty jobs are far beyond any exact
/// search, so this also shows that the bound closes the gap by itself.
#[test]
fn equal_waits_only_shift_johnsons_optimum() {
    for seed in 0..25 {
        let mut dice = Dice::new(seed);
        let count = dice.range(2, 40);
        let wait = dice.range(0, 90);
        let jobs: Vec<Job> = (0..count).map(|_| job(dice.range(1, 50), wait, dice.range(1, 50))).collect();
        let Outcome::Optimal(best) = solved(&jobs, 400_000) else { panic!("seed {seed}: not proven") };
        assert_eq!(best.makespan_s(), wait + johnson(&jobs), "seed {seed}");
    }
}

/// Mitten (1959): with a wait of its own for each job, an optimal common sequence is Johnson's for first + wait and wait +
/// second. People need not keep a common sequence, so the planner may be better, never worse.
#[test]
fn mittens_common_sequence_is_never_beaten_from_above() {
    for seed in 100..150 {
        let mut dice = Dice::new(seed);
        let count = dice.range(2, 6);
        let jobs: Vec<Job> = (0..count).map(|_| job(dice.range(1, 20), dice.range(0, 40), dice.range(1, 20))).collect();
        let mut order = jobs.clone();
        order.sort_by_key(|j| if j.first < j.second { (0, j.first + j.wait) } else { (1, -(j.second + j.wait)) });
        let (mut one, mut two) = (0, 0);
        for job in &order {
            one += job.first;
            two = two.max(one + job.wait) + job.second;
        }
        let best = solved(&jobs, 300_000);
        assert!(best.schedule().unwrap().makespan_s() <= two, "seed {seed}");
    }
}

/// Gilmore and Gomory (1964): without waiting, the last end is a shortest tour where job k after job j costs
/// `max(first(k) - second(j), 0)`, plus all second times. The tour is found by Bellman, Held and Karp's recursion (1962).
#[test]
fn no_wait_is_gilmore_and_gomorys_tour() {
    for seed in 200..230 {
        let mut dice = Dice::new(seed);
        let count = dice.range(3, 7) as usize;
        let jobs: Vec<Job> = (0..count)
            .map(|_| Job { first: dice.range(1, 30), wait: 0, second: dice.range(1, 30), no_wait: true })
            .collect();
        let Outcome::Optimal(best) = solved(&jobs, 5_000_000) else { panic!("seed {seed}: not proven") };
        assert_eq!(best.makespan_s(), shortest_tour(&jobs), "seed {seed}");
    }
}

fn shortest_tour(jobs: &[Job]) -> i64 {
    let n = jobs.len();
    let mut least = vec![vec![i64::MAX; n]; 1 << n];
    for (j, job) in jobs.iter().enumerate() {
        least[1 << j][j] = job.first;
    }
    for set in 1_usize..1 << n {
        for j in (0..n).filter(|j| set >> j & 1 == 1) {
            let so_far = least[set][j];
            for k in (0..n).filter(|k| so_far < i64::MAX && set >> k & 1 == 0) {
                let longer = so_far + (jobs[k].first - jobs[j].second).max(0);
                let there = &mut least[set | 1 << k][k];
                *there = (*there).min(longer);
            }
        }
    }
    least[(1 << n) - 1].iter().min().unwrap() + jobs.iter().map(|j| j.second).sum::<i64>()
}
