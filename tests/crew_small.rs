//! Small random problems with all features mixed: the planner against brute force, bounds below the optimum, every answer
//! accepted by the checker.

mod crew_support;

use crew_support::brute::brute_force;
use crew_support::quiet::Quiet;
use crew_support::random_problem::{Dice, random_problem};
use lapwright::crew::{Limits, Outcome, Problem, solve, violations};

const PROBLEMS: u64 = 5_000;

#[test]
fn the_planner_finds_what_brute_force_finds() {
    let (mut feasible, mut infeasible) = (0, 0);
    for seed in 0..PROBLEMS {
        let spec = random_problem(&mut Dice::new(seed));
        let problem = Problem::try_from(spec.clone()).unwrap_or_else(|e| panic!("seed {seed}: {e}"));
        let optimum = brute_force(&spec);
        let outcome = solve(&problem, &Limits { nodes: Some(200_000), threads: 1, seed }, &Quiet);
        match (optimum, outcome) {
            (Some(cost), Outcome::Optimal(best)) => {
                assert_eq!(best.cost(), cost, "seed {seed}");
                let broken = violations(&problem, &best.to_plan(&problem, cost));
                assert!(broken.is_empty(), "seed {seed}: {broken:?}");
                feasible += 1;
            }
            (None, Outcome::Infeasible(conflicts)) => {
                assert!(!conflicts.is_empty() && conflicts.iter().all(|c| !c.places.is_empty()), "seed {seed}");
                infeasible += 1;
            }
            (optimum, outcome) => panic!("seed {seed}: brute force {optimum:?}, planner {outcome:?}"),
        }
    }
    assert!(feasible > PROBLEMS / 2 && infeasible > PROBLEMS / 50, "{feasible} feasible, {infeasible} not");
}

#[test]
fn bounds_never_pass_the_optimum() {
    let mut gap = 0.0;
    for seed in 0..PROBLEMS {
        let spec = random_problem(&mut Dice::new(seed));
        let Some(optimum) = brute_force(&spec).filter(|&cost| cost > 0) else { continue };
        let problem = Problem::try_from(spec).unwrap();
        // no nodes: nothing but the first plan and the bound
        let outcome = solve(&problem, &Limits { nodes: Some(0), threads: 1, seed }, &Quiet);
        let bound = outcome.bound().unwrap();
        assert!(bound <= optimum, "seed {seed}: bound {bound}, optimum {optimum}");
        assert!(outcome.schedule().unwrap().cost() >= optimum, "seed {seed}");
        gap += (optimum - bound) as f64 / optimum as f64 / PROBLEMS as f64;
    }
    assert!(gap < 0.25, "mean gap {gap}: the bounds have become much weaker");
}

/// A few orders are soon tried; on a small problem that was once no end but a loop.
#[test]
fn a_handful_of_nodes_is_an_end() {
    for seed in 0..300 {
        let problem = Problem::try_from(random_problem(&mut Dice::new(seed))).unwrap();
        let outcome = solve(&problem, &Limits { nodes: Some(1 + 7 * seed), threads: 1, seed }, &Quiet);
        if let Some(best) = outcome.schedule() {
            let bound = outcome.bound().unwrap_or(0);
            let broken = violations(&problem, &best.to_plan(&problem, bound));
            assert!(broken.is_empty(), "seed {seed}: {broken:?}");
        }
    }
}
