//! A command that could not be carried out: two lines on stderr.

use super::Exit;
use crate::file::{ReadError, ReadingsError, SaveError, why};
use crate::say;
use std::io::Write;

/// What went wrong and what to do, one line each.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Failure {
    error: String,
    hint: String,
    reader_gone: bool,
}

impl Failure {
    /// A failure in words. Line breaks become blanks, so that a line stays a line.
    pub fn new(error: impl AsRef<str>, hint: impl AsRef<str>) -> Self {
        let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        Self { error: one_line(error.as_ref()), hint: one_line(hint.as_ref()), reader_gone: false }
    }

    /// Writes the two lines; nothing where the reader of the output has gone, as `head` does when it has seen enough.
    pub fn report(&self, notes: &mut dyn Write) -> Exit {
        if self.reader_gone {
            return Exit::Failed;
        }
        // Where stderr is closed nobody can be told.
        drop(writeln!(notes, "error: {}\nhint: {}", self.error, self.hint));
        Exit::Failed
    }

    /// What went wrong.
    pub fn error(&self) -> &str {
        &self.error
    }

    /// What to do.
    pub fn hint(&self) -> &str {
        &self.hint
    }
}

impl From<ReadError> for Failure {
    fn from(error: ReadError) -> Self {
        Self::new(error.to_string(), error.hint())
    }
}

impl From<ReadingsError> for Failure {
    fn from(error: ReadingsError) -> Self {
        Self::new(error.to_string(), error.hint())
    }
}

impl From<SaveError> for Failure {
    fn from(error: SaveError) -> Self {
        Self::new(error.to_string(), error.hint())
    }
}

impl From<std::io::Error> for Failure {
    fn from(error: std::io::Error) -> Self {
        let reader_gone = error.kind() == std::io::ErrorKind::BrokenPipe;
        Self { reader_gone, ..Self::new(say!("cli-no-output", why = why(&error)), say!("cli-no-output-do")) }
    }
}
