//! Why a file could not be read, and what to do about it.

use super::disk::why;
use crate::finding::Finding;
use crate::say;
use crate::vehicle::TemplateError;
use std::path::PathBuf;

/// A file that could not be read as what it should be. Prints as one line; [`ReadError::hint`] is the next one.
#[derive(Debug, thiserror::Error)]
pub enum ReadError {
    /// The file could not be opened or read.
    #[error("{}", say!("file-unreadable", path = path.display().to_string(), cause = why(cause)))]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        cause: std::io::Error,
    },
    /// There is nothing in it.
    #[error("{}", say!("file-empty", name = name))]
    Empty {
        /// The file.
        name: String,
    },
    /// A text of something else.
    #[error("{}", say!("file-no-job", name = name))]
    NoJob {
        /// The file.
        name: String,
    },
    /// More bytes than any job has.
    #[error("{}", say!("file-too-large", path = path.display().to_string(), limit = *limit_mib))]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// The limit.
        limit_mib: u64,
    },
    /// Not UTF-8.
    #[error("{}", say!("file-not-text", name = name, line = *line, column = *column))]
    NotText {
        /// The file.
        name: String,
        /// Line of the first bad byte, from 1.
        line: usize,
        /// Column of it in bytes, from 1.
        column: usize,
    },
    /// The text doesn't fit the format.
    #[error("{name}:{line}:{column}: {}", at_field(message, field))]
    Syntax {
        /// The file.
        name: String,
        /// Line, from 1.
        line: usize,
        /// Column, from 1.
        column: usize,
        /// Field path such as `panels[3].spots[0].readings[1].thickness_um`; empty at the top.
        field: String,
        /// What is wrong there.
        message: String,
    },
    /// Written by a later version of the program, with something in it that this one does not know.
    #[error("{}", say!("file-other-format", name = name, line = *line, format = format, reads = *reads))]
    OtherFormat {
        /// The file.
        name: String,
        /// Line of the format field, from 1.
        line: usize,
        /// What the file says.
        format: String,
        /// What this version reads.
        reads: &'static str,
    },
    /// The job names a template that doesn't exist.
    #[error("{}", say!("file-no-template", name = name, template = template))]
    UnknownTemplate {
        /// The file.
        name: String,
        /// What the file says.
        template: String,
        /// What it could say.
        known: String,
    },
    /// The file of a vehicle template can't be read as one.
    #[error("{}:{cause}", path.display())]
    Template {
        /// The file.
        path: PathBuf,
        /// What is wrong, with its place.
        cause: TemplateError,
    },
    /// The file of a vehicle template holds another one than its name says.
    #[error("{}", say!("file-other-template", path = path.display().to_string(), inside = inside, named = named))]
    OtherTemplate {
        /// The file.
        path: PathBuf,
        /// The id in the file.
        inside: String,
        /// The id that the name of the file stands for.
        named: String,
    },
    /// Readable, but it can't be used; the first fault stands for all.
    #[error("{name}: {}: {}", first.place, first.cause)]
    Unusable {
        /// The file.
        name: String,
        /// The first fault.
        first: Box<Finding>,
        /// How many more there are.
        more: usize,
    },
}

fn at_field(message: &str, field: &str) -> String {
    if field.is_empty() { message.to_owned() } else { say!("file-at-field", message = message, field = field) }
}

impl ReadError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> String {
        match self {
            Self::Unreadable { cause, .. } if cause.kind() == std::io::ErrorKind::NotFound => {
                say!("file-check-name").to_owned()
            }
            Self::Unreadable { .. } => say!("file-check-there").to_owned(),
            Self::Empty { .. } => say!("file-take-previous").to_owned(),
            Self::NoJob { .. } => say!("file-choose-job").to_owned(),
            Self::TooLarge { .. } => say!("file-choose-another").to_owned(),
            Self::NotText { .. } => say!("file-save-as-text").to_owned(),
            Self::Syntax { .. } => say!("file-mend-place").to_owned(),
            Self::OtherFormat { .. } => say!("file-newer-version").to_owned(),
            Self::UnknownTemplate { known, .. } => say!("file-use-one-of", known = known),
            Self::Template { cause: TemplateError::Findings(found), .. } => {
                found.first().map_or_else(|| say!("file-mend").to_owned(), |first| first.action.clone())
            }
            Self::Template { .. } => say!("file-mend-or-other").to_owned(),
            Self::OtherTemplate { inside, .. } => say!("file-name-it", inside = inside),
            Self::Unusable { first, more: 0, .. } => first.action.clone(),
            Self::Unusable { first, more, .. } => say!("file-check-lists", first = first.action.as_str(), more = *more),
        }
    }
}
