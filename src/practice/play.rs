//! Playing what was laid, by plain rules.
//!
//! Everybody goes through their lane in its order, to the next place as soon as walking allows. Levelling waits until the
//! shortest wait of its panel is over, and a step waits as long as the learner said. Nothing else is waited for: leaning over
//! a wet panel, standing in each other's place and passing a window happen, and are marked.

use super::exercise::Exercise;
use super::laid::{Laid, Step};
use crate::crew::{PlanFile, PlanRow, Problem, Row, Schedule, is_of_the_present};
use crate::units::{Interval, Seconds};

/// Steps by worker of the problem.
pub(super) type Lanes = Vec<Vec<Step>>;

/// What comes of it.
#[derive(Debug, Clone)]
pub struct Played {
    /// One row for each step that could be begun, by start; operations and workers as in the exercise's problem.
    pub rows: Vec<Row>,
    /// Its plan for the part of the problem that was played.
    pub plan: PlanFile,
    /// That part, as the checker takes it.
    pub problem: Problem,
    /// Whether it is all of the problem.
    pub complete: bool,
}

/// When an operation can begin after another one of its worker, before any wait on purpose; none while what it waits for has no
/// time yet.
pub(super) fn release_s(
    exercise: &Exercise,
    ends: &[Option<Seconds>],
    before: Option<usize>,
    operation: usize,
) -> Option<Seconds> {
    let spec = &exercise.spec;
    let free = match before {
        Some(before) => ends[before]? + walk_s(exercise, before, operation),
        None => 0,
    };
    let mut released = free;
    for lag in spec.lags.iter().filter(|l| l.to == spec.operations[operation].id) {
        let from = spec.operations.iter().position(|o| o.id == lag.from)?;
        // What another panel asks for is a rule to be learnt; nobody waits for it by themselves.
        let waited_for = spec.operations[from].panel == spec.operations[operation].panel
            || is_of_the_present(&spec.operations[from].role);
        if waited_for {
            released = released.max(ends[from]? + lag.min_s);
        }
    }
    Some(released)
}

/// Seconds to walk from the place of one operation to that of another.
pub(super) fn walk_s(exercise: &Exercise, from: usize, to: usize) -> Seconds {
    let spec = &exercise.spec;
    let stance = |o: usize| spec.stances.iter().position(|s| *s == spec.operations[o].stance);
    stance(from).zip(stance(to)).map_or(0, |(a, b)| spec.walk_s[a][b])
}

/// Plays what was laid.
pub fn play(exercise: &Exercise, laid: &Laid) -> Played {
    let lanes = laid.lanes();
    let mut ends: Vec<Option<Seconds>> = vec![None; exercise.spec.operations.len()];
    let mut rows: Vec<Row> = Vec::new();
    let mut at = vec![0; lanes.len()];
    let mut moved = true;
    while moved {
        moved = false;
        for (worker, lane) in lanes.iter().enumerate() {
            while let Some(step) = lane.get(at[worker]) {
                let before = at[worker].checked_sub(1).map(|k| lane[k].operation);
                let Some(released) = release_s(exercise, &ends, before, step.operation) else { break };
                let lasts = exercise.spec.operations[step.operation].duration_s;
                let interval = Interval::lasting(released + step.hold_s, lasts);
                ends[step.operation] = Some(interval.end);
                rows.push(Row { operation: step.operation, worker, interval });
                at[worker] += 1;
                moved = true;
            }
        }
    }
    rows.sort_by_key(|r| (r.interval.start, r.operation));
    let complete = rows.len() == exercise.spec.operations.len();
    let mut placed: Vec<usize> = rows.iter().map(|r| r.operation).collect();
    placed.sort_unstable();
    let problem = if complete { exercise.problem.clone() } else { exercise.problem.only(&placed) };
    let plan = with_figures(&problem, &rows_of(exercise, &rows));
    Played { rows, plan, problem, complete }
}

fn rows_of(exercise: &Exercise, rows: &[Row]) -> Vec<PlanRow> {
    let row = |r: &Row| PlanRow {
        id: exercise.spec.operations[r.operation].id.clone(),
        worker: exercise.spec.workers[r.worker].id.clone(),
        start_s: r.interval.start,
    };
    rows.iter().map(row).collect()
}

/// The plan of these rows with its own figures.
fn with_figures(problem: &Problem, rows: &[PlanRow]) -> PlanFile {
    let bare = PlanFile { operations: rows.to_vec(), makespan_s: 0, walking_s: 0, cost: 0, bound: 0 };
    // Every row is an operation and a worker of the problem, once.
    Schedule::from_plan(problem, &bare).map_or(bare, |schedule| schedule.to_plan(problem, 0))
}

impl Played {
    /// The row of an operation, if it was begun.
    pub fn row(&self, operation: usize) -> Option<&Row> {
        self.rows.iter().find(|r| r.operation == operation)
    }

    /// When the last step ends.
    pub fn end_s(&self) -> Seconds {
        self.plan.makespan_s
    }
}
