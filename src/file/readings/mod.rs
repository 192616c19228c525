//! Readings from a file of comma-separated values, as gauges and spreadsheets write it.
//!
//! The first line names the columns: `panel`, `reading`, and `thickness_um` or `thickness_mil`; a column `spot` keeps readings
//! together, and every other column becomes a note. What the separator, the decimal sign, the text encoding and the unit are is
//! read off the file by rules that leave no choice, and said ([`Recognised`]). A row that can't be taken is kept with its line and
//! the reason; it never spoils the others.

mod cells;
mod panels;
mod table;
mod text;

pub use panels::{Matched, UnknownPanel, match_panels};
pub use table::{ReadingRow, Readings, Recognised, RejectedRow, readings_from_bytes};
pub use text::TextEncoding;

use super::disk::{Disk, why};
use crate::say;
use std::path::{Path, PathBuf};

/// A larger file is no list of readings.
const LIMIT_MIB: u64 = 8;

/// A file that holds no readings at all. Prints as one line; [`ReadingsError::hint`] is the next one.
#[derive(Debug, thiserror::Error)]
pub enum ReadingsError {
    /// It could not be opened or read.
    #[error("{}", say!("file-unreadable", path = path.display().to_string(), cause = why(cause)))]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        cause: std::io::Error,
    },
    /// More bytes than a list of readings has.
    #[error("{}", say!("file-csv-too-large", name = name, limit = *limit_mib))]
    TooLarge {
        /// The file.
        name: String,
        /// The limit.
        limit_mib: u64,
    },
    /// More rows than a job could hold.
    #[error("{}", say!("file-csv-rows", name = name, line = *line, limit = *limit))]
    TooManyRows {
        /// The file.
        name: String,
        /// Line of the first row too many, from 1.
        line: u64,
        /// The limit.
        limit: usize,
    },
    /// A picture, a spreadsheet of its own format, or another file that is not text.
    #[error("{}", say!("file-csv-not-text", name = name))]
    NotText {
        /// The file.
        name: String,
    },
    /// The first line does not name the columns.
    #[error("{name}:{line}:1: {problem}")]
    Header {
        /// The file.
        name: String,
        /// Its line, from 1.
        line: u64,
        /// What is wrong with it.
        problem: String,
    },
}

impl ReadingsError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> &'static str {
        match self {
            Self::Unreadable { .. } => say!("file-csv-check"),
            Self::TooLarge { .. } | Self::TooManyRows { .. } => say!("file-csv-split"),
            Self::NotText { .. } => say!("file-csv-export"),
            Self::Header { .. } => {
                say!("file-csv-header")
            }
        }
    }
}

/// Reads a file of readings.
///
/// # Errors
/// [`ReadingsError`]; rows that can't be taken are no error but stand in [`Readings::rejected`].
pub fn read_readings(disk: &dyn Disk, path: &Path) -> Result<Readings, ReadingsError> {
    let limit = LIMIT_MIB * 1024 * 1024;
    let bytes =
        disk.read(path, limit + 1).map_err(|cause| ReadingsError::Unreadable { path: path.to_owned(), cause })?;
    readings_from_bytes(&path.display().to_string(), &bytes)
}
