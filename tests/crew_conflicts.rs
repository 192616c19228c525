//! Problems without a plan: the answer names what can't be kept together, and nothing else.

#![expect(clippy::panic, clippy::unwrap_used, reason = "a helper of a test may fail it")]

mod crew_support;

use crew_support::brute::brute_force;
use crew_support::invent::{COMMON, invent};
use crew_support::quiet::Quiet;
use crew_support::random_problem::{Dice, random_problem};
use lapwright::crew::{Conflict, LagSpec, Limits, Outcome, Problem, ProblemSpec, WetSpec, solve, violations};

fn conflicts(spec: ProblemSpec) -> Vec<Conflict> {
    let problem = Problem::try_from(spec).unwrap();
    match solve(&problem, &Limits { nodes: Some(10_000), threads: 1, seed: 1 }, &Quiet) {
        Outcome::Infeasible(conflicts) => conflicts,
        other => panic!("expected a conflict, got cost {:?}", other.schedule().map(lapwright::crew::Schedule::cost)),
    }
}

fn operations(spec: &ProblemSpec, panel: usize) -> (String, String) {
    (spec.lags[panel].from.clone(), spec.lags[panel].to.clone())
}

#[test]
fn a_window_too_short_for_the_work_is_named() {
    let mut spec = invent(&COMMON, 1);
    let (from, to) = operations(&spec, 7);
    spec.lags[7].max_s = Some(61);
    let found = conflicts(spec);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].places, ["lags[7]"]);
    assert_eq!(found[0].operations, [from.clone(), to.clone()]);
    assert!(found[0].sentence.contains(&format!("{to} waits at least 60 s for {from}")), "{}", found[0]);
}

#[test]
fn each_of_two_conflicts_is_named() {
    let mut spec = invent(&COMMON, 1);
    spec.lags[7].max_s = Some(61);
    spec.lags[20].max_s = Some(62);
    let mut places: Vec<String> = conflicts(spec).into_iter().flat_map(|c| c.places).collect();
    places.sort();
    assert_eq!(places, ["lags[20]", "lags[7]"]);
}

#[test]
fn work_that_has_to_happen_over_a_wet_panel_is_named() {
    let mut spec = invent(&COMMON, 2);
    let (apply, level) = operations(&spec, 3);
    let (other, _) = operations(&spec, 9);
    // the other panel is to be applied after this one's applying and before its levelling, but reaching it means leaning over
    spec.lags.push(LagSpec { from: apply.clone(), to: other.clone(), min_s: 0, max_s: None });
    spec.lags.push(LagSpec { from: other.clone(), to: level.clone(), min_s: 0, max_s: None });
    let (a, b) = (spec.lags.len() - 2, spec.lags.len() - 1);
    spec.wet.push(WetSpec { from: apply.clone(), to: level, blocks: vec![other] });
    let wet = spec.wet.iter().rposition(|w| w.from == apply).unwrap();
    let found = conflicts(spec);
    assert_eq!(found.len(), 1);
    assert!(found[0].places.contains(&format!("lags[{a}]")), "{:?}", found[0]);
    assert!(found[0].places.contains(&format!("lags[{b}]")), "{:?}", found[0]);
    assert!(found[0].places.iter().any(|p| p.starts_with("wet[")), "{:?} has no wet[{wet}]", found[0]);
}

/// Taking any of the named operations out of a small infeasible problem must leave fewer conflicts or a plan, and the named
/// operations by themselves must have none.
#[test]
fn named_operations_are_in_conflict_by_themselves() {
    let mut checked = 0;
    for seed in 0..3_000 {
        let spec = random_problem(&mut Dice::new(seed));
        if brute_force(&spec).is_some() {
            continue;
        }
        for conflict in conflicts(spec.clone()) {
            let named = |id: &String| conflict.operations.contains(id);
            let mut alone = spec.clone();
            alone.operations.retain(|o| named(&o.id));
            alone.lags.retain(|l| named(&l.from) && named(&l.to));
            alone.wet.retain(|w| named(&w.from) && named(&w.to));
            alone.wet.iter_mut().for_each(|w| w.blocks.retain(named));
            assert_eq!(brute_force(&alone), None, "seed {seed}: {conflict}");
            for out in &conflict.operations {
                let mut fewer = alone.clone();
                fewer.operations.retain(|o| o.id != *out);
                fewer.lags.retain(|l| l.from != *out && l.to != *out);
                fewer.wet.retain(|w| w.from != *out && w.to != *out);
                fewer.wet.iter_mut().for_each(|w| w.blocks.retain(|b| b != out));
                assert!(fewer.operations.is_empty() || brute_force(&fewer).is_some(), "seed {seed}: {conflict}, {out}");
            }
            checked += 1;
        }
    }
    assert!(checked > 100, "{checked}");
}

/// A wet period whose end no lag puts after its beginning: the search takes that order for granted, so nothing may be called
/// impossible because all orders were tried.
#[test]
fn a_period_without_a_direction_gets_a_valid_plan_and_no_false_proof() {
    let mut plans = 0;
    for seed in 0..500 {
        let mut spec = random_problem(&mut Dice::new(seed));
        let [first, second, third, ..] = spec.operations.as_slice() else { continue };
        spec.wet = vec![WetSpec { from: third.id.clone(), to: first.id.clone(), blocks: vec![second.id.clone()] }];
        let problem = Problem::try_from(spec.clone()).unwrap();
        match solve(&problem, &Limits { nodes: Some(5_000), threads: 1, seed }, &Quiet) {
            Outcome::Infeasible(conflicts) => panic!("seed {seed}: {conflicts:?}"),
            Outcome::Unknown { .. } => {}
            Outcome::Optimal(best) | Outcome::Feasible { best, .. } => {
                assert_eq!(violations(&problem, &best.to_plan(&problem, 0)), [], "seed {seed}");
                plans += 1;
            }
        }
    }
    assert!(plans > 150, "{plans}");
}
