//! Holding the advice for the rest of a day against the rules, with the past as it was.

use lapwright::crew::{PlanFile, PlanRow, Problem, ProblemSpec, Replanned, Rule, State, is_of_the_present, violations};

/// The rest by its own rules, then past and rest together by the rules of the whole day: a broken rule is excused only where all
/// of it lies in the past, or where the advice itself names the window as one that can't be met.
pub(crate) fn check_rest(spec: &ProblemSpec, planned: &Replanned, states: &[State]) {
    let rest = Problem::try_from((*planned.problem).clone()).expect("a sound rest");
    assert_eq!(violations(&rest, &planned.plan), [], "the rest keeps its rules");

    let mut whole = spec.clone();
    let mut rows = Vec::new();
    let mut past = Vec::new();
    for (operation, state) in whole.operations.iter_mut().zip(states) {
        match *state {
            State::Done { worker, start_s, end_s } | State::Running { worker, start_s, end_s } => {
                operation.duration_s = end_s - start_s;
                past.push(operation.id.clone());
                let worker = spec.workers[worker].id.clone();
                rows.push(PlanRow { id: operation.id.clone(), worker, start_s });
            }
            State::ToDo => {}
        }
    }
    let ahead = planned.plan.operations.iter().filter(|r| !is_of_the_present(&r.id) && !past.contains(&r.id));
    rows.extend(ahead.map(|r| PlanRow { start_s: r.start_s + planned.origin_s, ..r.clone() }));
    let plan = PlanFile { operations: rows, makespan_s: 0, walking_s: 0, cost: 0, bound: 0 };
    let whole = Problem::try_from(whole).expect("a sound day");
    for violation in violations(&whole, &plan) {
        let over = violation.operations.iter().all(|o| past.contains(o));
        let excused = violation.rule == Rule::MaxLag
            && violation.operations.iter().any(|o| planned.late.iter().any(|l| l.operation == *o));
        let figure = matches!(violation.rule, Rule::Figure | Rule::Bound);
        assert!(over || excused || figure, "{violation}");
    }
}
