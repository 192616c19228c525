//! Writing a job so that a crash or a power cut at any moment leaves the old file or the new one, whole.
//!
//! The text is read back before the disk is touched; it goes to a new file in the same folder and is synced; the file it replaces
//! stays as `NAME~`; one rename switches; then the folder is synced. A sync that failed is never tried again on the same file,
//! since the system may have dropped the bytes it couldn't write.

use super::disk::Disk;
use super::load::job_from_text;
use super::v1::JobFile;
use crate::job::Job;
use std::path::{Path, PathBuf};

/// How sure it is that a save outlives a power cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Saved {
    /// On the disk.
    Confirmed,
    /// Written and in place, but the folder could not be synced: a power cut in the next seconds may bring back the old file.
    NotConfirmed,
}

/// A save that did not happen; the file on disk is as it was.
#[derive(Debug, thiserror::Error)]
pub enum SaveError {
    /// The job could not be turned into text that reads back as the same job.
    #[error("the job could not be written as text: {0}")]
    Text(String),
    /// The disk refused.
    #[error("cannot save \"{}\": {doing}: {cause}", path.display())]
    Disk {
        /// The file that was to be written.
        path: PathBuf,
        /// What was being done.
        doing: &'static str,
        /// What the system said.
        cause: std::io::Error,
    },
}

impl SaveError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> &'static str {
        match self {
            Self::Text(_) => "nothing was written; keep the window open and report this as a fault of the program",
            Self::Disk { .. } => {
                "the file is as it was; free some space or check the folder's permissions, or save under another name"
            }
        }
    }
}

/// The text of a job file.
///
/// # Errors
/// [`SaveError::Text`] when it would not read back as the same job.
pub fn job_to_text(job: &Job) -> Result<String, SaveError> {
    let style = ron::ser::PrettyConfig::new().depth_limit(6).new_line("\n").indentor("  ").compact_arrays(true);
    let mut text = ron::ser::to_string_pretty(&JobFile::of(job), style).map_err(|e| SaveError::Text(e.to_string()))?;
    text.push('\n');
    let again = job_from_text("the text just written", &text).map_err(|e| SaveError::Text(e.to_string()))?;
    if *again.job == *job { Ok(text) } else { Err(SaveError::Text("it reads back as another job".to_owned())) }
}

/// Saves a job under a name.
///
/// # Errors
/// [`SaveError`]; the file on disk is then as it was.
pub fn save_job(disk: &dyn Disk, path: &Path, job: &Job) -> Result<Saved, SaveError> {
    write_text(disk, path, &job_to_text(job)?)
}

/// Replaces a file by the recipe in the module's head.
///
/// # Errors
/// [`SaveError::Disk`]; the file on disk is then as it was.
pub fn write_text(disk: &dyn Disk, path: &Path, text: &str) -> Result<Saved, SaveError> {
    let path = &path.canonicalize().unwrap_or_else(|_| path.to_owned()); // through a link to the file it stands for
    let failed = |doing| move |cause| SaveError::Disk { path: path.clone(), doing, cause };
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder.to_owned(),
        _ => PathBuf::from("."),
    };
    let fresh = beside(path, ".", ".new");
    let kept = beside(path, ".", ".old");
    for leftover in [&fresh, &kept] {
        if leftover.exists() {
            disk.remove(leftover).map_err(failed("clearing an unfinished save"))?;
        }
    }
    disk.write_new(&fresh, text.as_bytes(), path).map_err(|cause| {
        // The unfinished file is in nobody's way; if it can't be removed now, the next save does it.
        drop(disk.remove(&fresh));
        failed("writing the new file")(cause)
    })?;
    if path.exists() {
        disk.link(path, &kept).map_err(failed("keeping the previous version"))?;
        disk.rename(&kept, &beside(path, "", "~")).map_err(failed("keeping the previous version"))?;
    }
    disk.rename(&fresh, path).map_err(failed("putting the new file in place"))?;
    Ok(if disk.sync_folder(&folder).is_ok() { Saved::Confirmed } else { Saved::NotConfirmed })
}

/// `folder/PREFIXnameSUFFIX`, with the process in the middle of names that are only used while saving.
fn beside(path: &Path, prefix: &str, suffix: &str) -> PathBuf {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let process = if prefix.is_empty() { String::new() } else { format!(".{}", std::process::id()) };
    path.with_file_name(format!("{prefix}{name}{process}{suffix}"))
}
