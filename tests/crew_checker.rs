//! The checker against a second one that plays plans second by second, on thousands of changed plans.

mod crew_support;

use crew_support::clockwork::plays;
use crew_support::quiet::Quiet;
use crew_support::random_problem::{Dice, random_problem};
use lapwright::crew::{Limits, PlanFile, Problem, ProblemSpec, Rule, Schedule, solve, violations};

/// Figures as they follow from the rows, so that only the rules decide.
fn with_figures(problem: &Problem, plan: PlanFile) -> PlanFile {
    match Schedule::from_plan(problem, &plan) {
        Ok(schedule) => PlanFile { operations: plan.operations, ..schedule.to_plan(problem, 0) },
        Err(_) => plan,
    }
}

fn mutated(dice: &mut Dice, spec: &ProblemSpec, plan: &PlanFile) -> PlanFile {
    let operations = plan.operations.clone();
    let mut plan = PlanFile { operations, ..*plan };
    let count = plan.operations.len() as u64;
    let one = dice.below(count) as usize;
    let other = dice.below(count) as usize;
    match dice.below(7) {
        0 => plan.operations[one].start_s += dice.range(1, 6),
        1 => plan.operations[one].start_s -= dice.range(1, 6),
        2 => plan.operations[one].worker.clone_from(&spec.workers[dice.below(spec.workers.len() as u64) as usize].id),
        3 => {
            let start = plan.operations[one].start_s;
            plan.operations[one].start_s = plan.operations[other].start_s;
            plan.operations[other].start_s = start;
        }
        4 => drop(plan.operations.remove(one)),
        5 => plan.operations.push(plan.operations[one].clone()),
        _ => plan.operations.iter_mut().for_each(|row| row.start_s += dice.range(-1, 2)),
    }
    plan
}

#[test]
fn the_checker_says_what_the_clockwork_says() {
    let (mut valid, mut broken) = (0, 0);
    let mut rules = std::collections::HashSet::new();
    for seed in 0..1_500 {
        let mut dice = Dice::new(seed + 50_000);
        let spec = random_problem(&mut dice);
        let problem = Problem::try_from(spec.clone()).unwrap();
        let outcome = solve(&problem, &Limits { nodes: Some(2_000), threads: 1, seed }, &Quiet);
        let Some(schedule) = outcome.schedule() else { continue };
        let plan = schedule.to_plan(&problem, 0);
        assert!(plays(&spec, &plan) && violations(&problem, &plan).is_empty(), "seed {seed}");
        for _ in 0..20 {
            let changed = with_figures(&problem, mutated(&mut dice, &spec, &plan));
            let found = violations(&problem, &changed);
            assert_eq!(found.is_empty(), plays(&spec, &changed), "seed {seed}: {found:?} in {changed:?}");
            rules.extend(found.iter().map(|v| v.rule));
            if found.is_empty() { valid += 1 } else { broken += 1 }
        }
    }
    assert!(valid > 500 && broken > 5_000, "{valid} valid, {broken} broken");
    for rule in [Rule::Placed, Rule::Role, Rule::Start, Rule::Walk, Rule::MinLag, Rule::MaxLag, Rule::Close, Rule::Wet]
    {
        assert!(rules.contains(&rule), "no plan broke {rule:?}");
    }
}

#[test]
fn false_figures_are_reported() {
    let spec = random_problem(&mut Dice::new(3));
    let problem = Problem::try_from(spec).unwrap();
    let outcome = solve(&problem, &Limits { nodes: Some(2_000), threads: 1, seed: 1 }, &Quiet);
    let plan = outcome.schedule().unwrap().to_plan(&problem, outcome.bound().unwrap());
    assert_eq!(violations(&problem, &plan), []);
    let rule = |plan: &PlanFile| violations(&problem, plan).iter().map(|v| v.rule).collect::<Vec<_>>();
    assert_eq!(rule(&PlanFile { makespan_s: plan.makespan_s - 1, ..plan.clone() }), [Rule::Figure]);
    assert_eq!(rule(&PlanFile { walking_s: plan.walking_s + 1, ..plan.clone() }), [Rule::Figure]);
    assert_eq!(rule(&PlanFile { cost: plan.cost - 1, ..plan.clone() }), [Rule::Figure]);
    assert_eq!(rule(&PlanFile { bound: plan.cost + 1, ..plan.clone() }), [Rule::Bound]);
}
