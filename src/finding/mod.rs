//! Findings: what a check has to say about a job, a template or a problem file.
//!
//! A finding is not an error: a check returns all of them, and the file is still there to be worked on. Each has a code that
//! [`Code::explanation`] explains, a place, a cause and what to do about it.

mod code;

pub use code::{Code, UnknownCode};

use crate::say;
use std::fmt;

/// How much a finding matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth knowing; nothing is wrong.
    Notice,
    /// The file can be used, but the result may not be what was meant.
    Warning,
    /// The file can't be used as it is.
    Fault,
}

impl fmt::Display for Severity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Notice => say!("check-severity-notice"),
            Self::Warning => say!("check-severity-warning"),
            Self::Fault => say!("check-severity-fault"),
        })
    }
}

/// One thing that a check noticed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// What kind of thing; tells the severity as well.
    pub code: Code,
    /// Where: a panel, a point, a field path. Never empty.
    pub place: String,
    /// What was found there, in one sentence without a full stop.
    pub cause: String,
    /// What a person can do about it, as a sentence without a full stop.
    pub action: String,
}

impl Finding {
    /// A finding of one kind at one place.
    pub fn new(code: Code, place: impl Into<String>, cause: impl Into<String>, action: impl Into<String>) -> Self {
        Self { code, place: place.into(), cause: cause.into(), action: action.into() }
    }

    /// How much it matters.
    pub fn severity(&self) -> Severity {
        self.code.severity()
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} [{}] {}: {}; {}", self.severity(), self.code, self.place, self.cause, self.action)
    }
}
