//! Why a file could not be read, and what to do about it.

use crate::finding::Finding;
use crate::vehicle::TemplateError;
use std::path::PathBuf;

/// A file that could not be read as what it should be. Prints as one line; [`ReadError::hint`] is the next one.
#[derive(Debug, thiserror::Error)]
pub enum ReadError {
    /// The file could not be opened or read.
    #[error("cannot read \"{}\": {cause}", path.display())]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        cause: std::io::Error,
    },
    /// More bytes than any job has.
    #[error("\"{}\" is larger than {limit_mib} MiB", path.display())]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// The limit.
        limit_mib: u64,
    },
    /// Not UTF-8.
    #[error("{name}:{line}:{column}: the file is not UTF-8 text")]
    NotText {
        /// The file.
        name: String,
        /// Line of the first bad byte, from 1.
        line: usize,
        /// Column of it in bytes, from 1.
        column: usize,
    },
    /// The text doesn't fit the format.
    #[error("{name}:{line}:{column}: {message}{}", at_field(field))]
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
    #[error("{name}:{line}:1: the format is \"{format}\", this version reads \"{reads}\"")]
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
    #[error("{name}: vehicle.template: there is no vehicle template \"{template}\"")]
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
    #[error("{}: its id is \"{inside}\", its name says \"{named}\"", path.display())]
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

fn at_field(field: &str) -> String {
    if field.is_empty() { String::new() } else { format!(" (field {field})") }
}

impl ReadError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> String {
        match self {
            Self::Unreadable { cause, .. } if cause.kind() == std::io::ErrorKind::NotFound => {
                "check the name, or write a job to start from: lapwright sample --out my.job.ron".to_owned()
            }
            Self::Unreadable { .. } => "check that the file is there and may be read".to_owned(),
            Self::TooLarge { .. } => "no file of this program is that large; choose another one".to_owned(),
            Self::NotText { .. } => {
                "save the file as UTF-8 text, or take the previous version of it (its name ends in ~)".to_owned()
            }
            Self::Syntax { .. } => {
                "mend the place named, or take the previous version of the file (its name ends in ~)".to_owned()
            }
            Self::OtherFormat { .. } => {
                "it holds what this version does not know, so it is left as it is; open it with the version of \
                 lapwright that wrote it, or a later one"
                    .to_owned()
            }
            Self::UnknownTemplate { known, .. } => format!("use one of: {known}"),
            Self::Template { cause: TemplateError::Findings(found), .. } => {
                found.first().map_or_else(|| "mend the file".to_owned(), |first| first.action.clone())
            }
            Self::Template { .. } => "mend the place named, or choose another vehicle".to_owned(),
            Self::OtherTemplate { inside, .. } => format!("name the file {inside}.ron, or mend the id in it"),
            Self::Unusable { first, more: 0, .. } => first.action.clone(),
            Self::Unusable { first, more, .. } => format!("{}; lapwright check lists {more} more", first.action),
        }
    }
}
