//! Opening a job to work on it: with what is needed to notice later that somebody else changed its file.

use super::disk::{Disk, file_or_nothing};
use super::error::ReadError;
use super::fingerprint::Fingerprint;
use super::load::{Loaded, newer_format, read_text};
use super::templates::Templates;
use std::path::Path;

/// A job with what its file was when it was read.
#[derive(Debug, Clone)]
pub struct Opened {
    /// The job.
    pub loaded: Loaded,
    /// Its file.
    pub print: Option<Fingerprint>,
    /// The format, where a newer version of the program wrote the file: it may be looked at, and never be written over.
    pub newer: Option<String>,
}

impl From<Loaded> for Opened {
    /// A job that has no file.
    fn from(loaded: Loaded) -> Self {
        Self { loaded, print: None, newer: None }
    }
}

impl Templates {
    /// Opens a job. One of a newer format is opened where this version knows everything that stands in it.
    ///
    /// # Errors
    /// [`ReadError`] as for [`Templates::read_job`].
    pub fn open_job(&self, disk: &dyn Disk, path: &Path) -> Result<Opened, ReadError> {
        let unreadable = |cause| ReadError::Unreadable { path: path.to_owned(), cause };
        file_or_nothing(disk, path).map_err(unreadable)?;
        // Before its text, so that a change while it is read is noticed later.
        let print = Fingerprint::read(disk, path).map_err(unreadable)?;
        let name = path.display().to_string();
        let text = read_text(disk, path)?;
        let newer = newer_format(&text);
        let loaded = match &newer {
            None => self.job_from_text(&name, &text)?,
            Some(_) => match self.job_of_newer(&name, &text) {
                Ok(loaded) => loaded,
                // What it says first is that it is of a newer format.
                Err(_) => self.job_from_text(&name, &text)?,
            },
        };
        Ok(Opened { loaded, print, newer })
    }
}
