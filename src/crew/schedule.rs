//! The answer: who does what, when; and its figures.

use super::problem::Problem;
use crate::say;
use crate::units::{Interval, Seconds};
use serde::{Deserialize, Serialize};
use std::collections::HashMap;

/// A complete plan: every operation of the problem exactly once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Schedule {
    rows: Vec<Row>,
    makespan: Seconds,
    walking: Seconds,
    cost: i64,
}

/// One operation placed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// Index in `spec.operations`.
    pub operation: usize,
    /// Index in `spec.workers`.
    pub worker: usize,
    /// From start to end.
    pub interval: Interval,
}

/// The plan as it is written. `bound` is a proven lower bound of the cost over all valid plans, 0 if nothing is known.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlanFile {
    /// By start, then in the order of the problem.
    pub operations: Vec<PlanRow>,
    /// Last end, in seconds.
    pub makespan_s: i64,
    /// Seconds walked by all workers together.
    pub walking_s: i64,
    /// As the problem's objective weighs them.
    pub cost: i64,
    /// Proven lower bound of the cost.
    pub bound: i64,
}

/// One operation of a written plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlanRow {
    /// Name of the operation.
    pub id: String,
    /// Name of the worker.
    pub worker: String,
    /// Start in seconds.
    pub start_s: i64,
}

/// Why a written plan does not speak of this problem.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PlanError {
    /// A name the problem does not have.
    #[error("{}", say!("crew-plan-operation", name = .0))]
    UnknownOperation(String),
    /// A name the problem does not have.
    #[error("{}", say!("crew-plan-worker", name = .0))]
    UnknownWorker(String),
    /// Placed more than once.
    #[error("{}", say!("crew-plan-twice", name = .0))]
    Twice(String),
    /// Not placed.
    #[error("{}", say!("crew-plan-missing", name = .0))]
    Missing(String),
}

impl Schedule {
    /// Puts together who does what (`workers`) and when (`starts`), both by operation index.
    pub(crate) fn new(problem: &Problem, workers: &[usize], starts: &[Seconds]) -> Self {
        let mut rows: Vec<Row> = problem
            .operations
            .iter()
            .enumerate()
            .map(|(operation, o)| Row {
                operation,
                worker: workers[operation],
                interval: Interval::lasting(starts[operation], Seconds::from(o.duration)),
            })
            .collect();
        rows.sort_by_key(|r| (r.interval.start, r.operation));
        let makespan = rows.iter().map(|r| r.interval.end).max().unwrap_or(0);
        let mut stands = vec![None; problem.workers];
        let mut walking = 0;
        for row in &rows {
            let stance = problem.operations[row.operation].stance;
            if let Some(from) = stands[row.worker].replace(stance) {
                walking += Seconds::from(problem.walk(from, stance));
            }
        }
        Self { rows, makespan, walking, cost: problem.cost(makespan, walking) }
    }

    /// One row for each operation, by start, then by operation index.
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// Rows of one worker, in the order of the work.
    pub fn rows_of(&self, worker: usize) -> impl Iterator<Item = &Row> {
        self.rows.iter().filter(move |r| r.worker == worker)
    }

    /// Row of each operation, by operation index.
    pub(crate) fn by_operation(&self) -> Vec<Row> {
        let mut rows = self.rows.clone();
        rows.sort_by_key(|r| r.operation);
        rows
    }

    /// When the last operation ends.
    pub fn makespan_s(&self) -> Seconds {
        self.makespan
    }

    /// Seconds walked by all workers together.
    pub fn walking_s(&self) -> Seconds {
        self.walking
    }

    /// Cost as the problem's objective weighs it.
    pub fn cost(&self) -> i64 {
        self.cost
    }

    /// The plan to be written, with a proven lower `bound` of the cost.
    pub fn to_plan(&self, problem: &Problem, bound: i64) -> PlanFile {
        let row = |r: &Row| PlanRow {
            id: problem.operation_id(r.operation).to_owned(),
            worker: problem.worker_id(r.worker).to_owned(),
            start_s: r.interval.start,
        };
        PlanFile {
            operations: self.rows.iter().map(row).collect(),
            makespan_s: self.makespan,
            walking_s: self.walking,
            cost: self.cost,
            bound,
        }
    }

    /// Takes a written plan in, whether or not it keeps the rules; figures are computed anew.
    ///
    /// # Errors
    /// [`PlanError`] when it does not place exactly the operations of the problem, or names an unknown worker.
    pub fn from_plan(problem: &Problem, plan: &PlanFile) -> Result<Self, PlanError> {
        let spec = problem.spec();
        let operation_of: HashMap<&str, usize> =
            spec.operations.iter().enumerate().map(|(at, o)| (o.id.as_str(), at)).collect();
        let mut placed: Vec<Option<(usize, Seconds)>> = vec![None; problem.len()];
        for row in &plan.operations {
            let operation =
                *operation_of.get(row.id.as_str()).ok_or_else(|| PlanError::UnknownOperation(row.id.clone()))?;
            let worker = spec
                .workers
                .iter()
                .position(|w| w.id == row.worker)
                .ok_or_else(|| PlanError::UnknownWorker(row.worker.clone()))?;
            if placed[operation].replace((worker, row.start_s)).is_some() {
                return Err(PlanError::Twice(row.id.clone()));
            }
        }
        let mut workers = Vec::with_capacity(placed.len());
        let mut starts = Vec::with_capacity(placed.len());
        for (operation, place) in placed.into_iter().enumerate() {
            let (worker, start) =
                place.ok_or_else(|| PlanError::Missing(problem.operation_id(operation).to_owned()))?;
            workers.push(worker);
            starts.push(start);
        }
        Ok(Self::new(problem, &workers, &starts))
    }
}
