//! What somebody is doing at a panel.

use crate::job::Role;
use crate::polish::StepKind;
use crate::say;

/// What is done, as a mark on a chart or a map.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Work {
    /// A part of coating.
    Coat(Role),
    /// A polishing step.
    Polish(StepKind),
}

impl Work {
    /// As a person says it of somebody.
    pub fn verb(self) -> &'static str {
        match self {
            Self::Coat(role) => role.verb(),
            Self::Polish(StepKind::Sand) => say!("scene-sands"),
            Self::Polish(StepKind::Cut) => say!("scene-cuts"),
            Self::Polish(StepKind::Polish) => say!("scene-polishes"),
            Self::Polish(StepKind::Finish) => say!("scene-finishes"),
        }
    }
}
