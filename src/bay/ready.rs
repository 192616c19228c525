//! Whether something can be begun now, and what stands against it.

use super::day::Day;
use crate::crew::{ProblemSpec, State};
use crate::units::Seconds;

/// What stands against beginning an operation now; all by index into the problem.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hold {
    /// Another one has to be over first.
    First {
        /// Which.
        operation: usize,
    },
    /// It is too early.
    Until {
        /// From when it would not be.
        at_s: Seconds,
    },
    /// Another one is still wet, or throws dust.
    Wet {
        /// The one that ends that.
        operation: usize,
    },
    /// Somebody works too near.
    InTheWay {
        /// Who.
        worker: usize,
    },
}

impl Day {
    /// Everything that stands against `worker` beginning `operation` at a moment; empty where nothing does.
    pub fn holds(&self, problem: &ProblemSpec, worker: usize, operation: usize, now_s: Seconds) -> Vec<Hold> {
        let so_far = self.so_far(problem, now_s);
        let index = |id: &str| problem.operations.iter().position(|o| o.id == id);
        let spec = &problem.operations[operation];
        let mut holds = Vec::new();
        for lag in problem.lags.iter().filter(|l| l.to == spec.id) {
            let Some(from) = index(&lag.from) else { continue };
            match so_far.operations[from] {
                State::Done { end_s, .. } if end_s + lag.min_s > now_s => {
                    holds.push(Hold::Until { at_s: end_s + lag.min_s });
                }
                State::Done { .. } => {}
                State::ToDo | State::Running { .. } => holds.push(Hold::First { operation: from }),
            }
        }
        for rule in problem.wet.iter().filter(|r| r.blocks.contains(&spec.id)) {
            let (Some(from), Some(to)) = (index(&rule.from), index(&rule.to)) else { continue };
            let open = so_far.operations[from] != State::ToDo && !matches!(so_far.operations[to], State::Done { .. });
            if open {
                holds.push(Hold::Wet { operation: to });
            }
        }
        for (other, state) in so_far.operations.iter().enumerate() {
            if let State::Running { worker: by, .. } = *state
                && by != worker
                && problem.is_close(&problem.operations[other].stance, &spec.stance)
            {
                holds.push(Hold::InTheWay { worker: by });
            }
        }
        holds
    }
}
