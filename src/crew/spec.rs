//! A crew problem as it is written: the `crew-problem/1` JSON document, field for field.
//!
//! Nothing here is checked; [`super::Problem`] does that. Times are whole seconds.

use serde::{Deserialize, Serialize};

/// The only value of [`ProblemSpec::format`] that is understood.
pub const FORMAT: &str = "crew-problem/1";

/// One vehicle, a few workers and the operations between them, with names instead of indices.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProblemSpec {
    /// Always [`FORMAT`].
    pub format: String,
    /// Free text.
    pub name: String,
    /// Who is there, in the order used for ties.
    pub workers: Vec<WorkerSpec>,
    /// Names of the places round the vehicle where somebody stands to work.
    pub stances: Vec<String>,
    /// Seconds to walk from stance (row) to stance (column), square, in the order of `stances`.
    pub walk_s: Vec<Vec<i64>>,
    /// Pairs of stances that two workers can't use at once; a stance is always close to itself.
    pub close: Vec<[String; 2]>,
    /// What is to be done.
    pub operations: Vec<OperationSpec>,
    /// Waiting times between two operations.
    pub lags: Vec<LagSpec>,
    /// What can't be reached while something is wet.
    pub wet: Vec<WetSpec>,
    /// What a plan costs.
    pub objective: ObjectiveSpec,
}

impl ProblemSpec {
    /// Whether two stances are too near for two people at once; one is too near to itself.
    pub fn is_close(&self, a: &str, b: &str) -> bool {
        a == b || self.close.iter().any(|[x, y]| (x == a && y == b) || (x == b && y == a))
    }
}

/// A person and what they may do.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkerSpec {
    /// Unique name.
    pub id: String,
    /// Roles this worker may take.
    pub roles: Vec<String>,
}

/// One piece of work: one worker, one stance, without a break.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OperationSpec {
    /// Unique name.
    pub id: String,
    /// The panel it belongs to; only for people to read.
    pub panel: String,
    /// The role a worker needs for it.
    pub role: String,
    /// How long it takes, at least 1 s.
    pub duration_s: i64,
    /// Where the worker stands.
    pub stance: String,
    /// The only worker who may do it; none means anybody with the role.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub worker: Option<String>,
}

impl OperationSpec {
    /// Whether a worker may do it.
    pub fn is_for(&self, worker: &WorkerSpec) -> bool {
        worker.roles.contains(&self.role) && self.worker.as_ref().is_none_or(|only| *only == worker.id)
    }
}

/// `start(to) >= end(from) + min_s`, and `end(to) <= end(from) + max_s` unless `max_s` is absent.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LagSpec {
    /// The operation that comes first.
    pub from: String,
    /// The operation that comes after.
    pub to: String,
    /// Shortest wait, from the end of `from` to the start of `to`.
    pub min_s: i64,
    /// Longest time from the end of `from` to the end of `to`; none means any.
    pub max_s: Option<i64>,
}

/// Between `start(from)` and `end(to)` none of `blocks` may run.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WetSpec {
    /// The operation that makes the panel wet.
    pub from: String,
    /// The operation after which it may be leant over.
    pub to: String,
    /// Operations that mean leaning over it.
    pub blocks: Vec<String>,
}

/// `cost = makespan * last end + walking * seconds walked by all workers`; smaller is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ObjectiveSpec {
    /// Weight of one second of the whole job.
    pub makespan: i64,
    /// Weight of one second of walking by anybody.
    pub walking: i64,
}
