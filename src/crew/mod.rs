//! The crew planner: who does what, when, and never in each other's way.
//!
//! A [`Problem`] is one vehicle, a few workers and a list of operations with waiting windows between them. [`solve`] looks for
//! the order with the least cost (finish and walking, weighed) and proves how good it is; [`violations`] checks any plan
//! without sharing code with the search; [`simulate()`] says what becomes of a plan when people are slower or faster.
//!
//! It knows nothing of paint, panels or products, and neither the clock nor the file system: time limits come in through
//! [`Control`], seeds through [`Limits`].

mod bound;
mod checker;
mod conflict;
mod construct;
mod consts;
mod exact;
mod explain;
mod habits;
mod local;
mod model;
mod order;
mod outcome;
mod parts;
mod portfolio;
mod problem;
mod random;
mod read;
mod rest;
mod robust;
mod schedule;
mod simulate;
mod spec;
mod split;
mod tidy;
mod validate;

pub use checker::{Rule, Violation, violations};
pub use explain::{Explanation, Hold, cost_of_moving, explain, waits};
pub use habits::{Habits, LongWalk, habits, long_walks};
pub use outcome::{Conflict, Control, Limits, Outcome};
pub use portfolio::solve;
pub use problem::{Problem, ProblemErrors};
pub(crate) use random::Random;
pub use read::ReadError;
pub use rest::{Deadline, Late, NOW, Replanned, Rest, SoFar, State, Whereabouts, is_of_the_present, replan, rest_of};
pub use robust::{RobustPlan, Target, solve_robust};
pub use schedule::{PlanError, PlanFile, PlanRow, Row, Schedule};
pub use simulate::{DURATION_VARIATION, Lateness, simulate};
pub use spec::{FORMAT, LagSpec, ObjectiveSpec, OperationSpec, ProblemSpec, WetSpec, WorkerSpec};
pub use tidy::tidy;
