//! The rest of a day: what is still to be done once part of it has happened, perhaps otherwise than planned.
//!
//! [`rest_of`] writes what is left as an ordinary crew problem, so that everything that plans, checks and explains one serves here
//! too, and anyone can check that the advice keeps the rules given what has happened. [`replan()`] finds an order for it that
//! stays near to the one people have in their heads.
//!
//! **How the past is held fixed.** One more operation, [`NOW`], stands for the present; a worker of its own does it in the first
//! second. What somebody is doing, or being away, is an operation of theirs right after it, with a longest wait from [`NOW`] that
//! leaves it no choice. Whatever is done only holds the rest through waiting times, and those are counted from [`NOW`]. Seconds
//! of the rest's clock are seconds since [`Rest::origin_s`].
//!
//! A rule that was broken in the past can't be kept any more and is left out: what counts is what can still be done right.

mod keep;
mod replan;
mod spec;

pub use replan::{Late, Replanned, replan};
pub use spec::{NOW, is_of_the_present, rest_of};

use super::spec::ProblemSpec;
use crate::units::Seconds;

/// What became of an operation so far. Times are seconds on one clock, the same for all of a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// Not begun.
    ToDo,
    /// Somebody is at it.
    Running {
        /// Index of the worker.
        worker: usize,
        /// When it was begun.
        start_s: Seconds,
        /// When it is expected to be over.
        end_s: Seconds,
    },
    /// Over.
    Done {
        /// Index of the worker.
        worker: usize,
        /// When it was begun.
        start_s: Seconds,
        /// When it was over.
        end_s: Seconds,
    },
}

/// Where somebody is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Whereabouts {
    /// Index of the stance where they were seen last, if they were.
    pub stance: Option<usize>,
    /// They are away until then.
    pub away_until_s: Option<Seconds>,
}

/// How far a day has come.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SoFar {
    /// The present.
    pub now_s: Seconds,
    /// By operation of the problem.
    pub operations: Vec<State>,
    /// By worker of the problem.
    pub workers: Vec<Whereabouts>,
}

impl SoFar {
    /// A day that begins now.
    pub fn beginning(problem: &ProblemSpec, now_s: Seconds) -> Self {
        Self {
            now_s,
            operations: vec![State::ToDo; problem.operations.len()],
            workers: vec![Whereabouts::default(); problem.workers.len()],
        }
    }

    /// Whether nothing is left to begin.
    pub fn is_over(&self) -> bool {
        self.operations.iter().all(|s| matches!(s, State::Done { .. }))
    }
}

/// What is left of a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rest {
    /// As a crew problem; windows that began in the past are [`Rest::deadlines`] and not in it.
    pub spec: ProblemSpec,
    /// The moment of the day at which the rest's clock shows 0.
    pub origin_s: Seconds,
    /// Operations to be over by a moment of the rest's clock, which may lie in the past.
    pub deadlines: Vec<Deadline>,
}

/// An operation and when it has to be over.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Deadline {
    /// Name of the operation.
    pub operation: String,
    /// Seconds of the rest's clock.
    pub by_s: Seconds,
}

impl Rest {
    /// The problem with each deadline in it as a longest wait from [`NOW`], none before `least` of that operation says.
    pub fn strict(&self, least: &dyn Fn(&str) -> Seconds) -> ProblemSpec {
        let mut spec = self.spec.clone();
        for deadline in &self.deadlines {
            let max = (deadline.by_s.max(least(&deadline.operation)) - spec::NOW_LASTS_S).max(0);
            for lag in spec.lags.iter_mut().filter(|l| l.from == NOW && l.to == deadline.operation) {
                lag.max_s = Some(lag.max_s.map_or(max, |m| m.min(max)));
            }
        }
        spec
    }
}
