//! What the planner is given beside the problem, and what it says.

use super::schedule::Schedule;
use std::fmt;

/// How much work may be spent. Wall-clock limits come through [`Control`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// Orders that may be evaluated, all threads together; none means until stopped or proven. With a number here the
    /// answer depends on nothing but problem, seed, number and thread count.
    pub nodes: Option<u64>,
    /// Search threads, at least 1.
    pub threads: usize,
    /// Start of the random numbers.
    pub seed: u64,
}

impl Default for Limits {
    fn default() -> Self {
        Self { nodes: None, threads: 1, seed: 1 }
    }
}

/// All that the planner knows of the outside. Called from any of its threads.
pub trait Control: Sync {
    /// Whether to come to an end; asked about every thousand evaluations.
    fn should_stop(&self) -> bool;
    /// A better plan, or a better bound for the same plan. `bound` is a proven lower bound of the cost.
    fn improved(&self, best: &Schedule, bound: i64);
}

/// The answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// No valid plan costs less.
    Optimal(Schedule),
    /// A valid plan, and a proven lower bound of the cost.
    Feasible {
        /// The best plan found.
        best: Schedule,
        /// No valid plan costs less than this.
        bound: i64,
    },
    /// There is no valid plan, and these rules can't be kept together.
    Infeasible(Vec<Conflict>),
    /// No plan was found in time, and none was proven impossible.
    Unknown {
        /// No valid plan costs less than this.
        bound: i64,
    },
}

impl Outcome {
    /// The plan, if there is one.
    pub fn schedule(&self) -> Option<&Schedule> {
        match self {
            Self::Optimal(best) | Self::Feasible { best, .. } => Some(best),
            Self::Infeasible(_) | Self::Unknown { .. } => None,
        }
    }

    /// The proven lower bound of the cost, if there may be a plan.
    pub fn bound(&self) -> Option<i64> {
        match self {
            Self::Optimal(best) => Some(best.cost()),
            Self::Feasible { bound, .. } | Self::Unknown { bound } => Some(*bound),
            Self::Infeasible(_) => None,
        }
    }
}

/// Rules that can't be kept together.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Conflict {
    /// Field paths of the rules and operations in conflict, such as `lags[3]`; never empty.
    pub places: Vec<String>,
    /// Names of the operations concerned, each once.
    pub operations: Vec<String>,
    /// Why they can't be kept together, one sentence without a full stop.
    pub sentence: String,
}

impl fmt::Display for Conflict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}
