//! Writing a job so that a crash or a power cut at any moment leaves the old file or the new one, whole.
//!
//! The text is read back before the disk is touched; it goes to a new file in the same folder and is synced; the file it replaces
//! stays as `NAME~`; one rename switches; then the folder is synced. A sync that failed is never tried again on the same file,
//! since the system may have dropped the bytes it couldn't write.

use super::disk::{Disk, clear, file_or_nothing, folder_of, is_missing, why};
use super::load::{newer_format, read_back};
use super::v1::JobFile;
use crate::finding::Finding;
use crate::job::Job;
use crate::say;
use std::ffi::OsString;
use std::io;
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
    /// It could not be turned into text that reads back as the same.
    #[error("{}", say!("file-no-text", why = .0))]
    Text(String),
    /// There is no folder to keep vehicle templates in.
    #[error("{}", say!("file-no-vehicle-folder"))]
    NoFolder,
    /// There is no folder to keep an unsaved job in.
    #[error("{}", say!("file-no-kept-folder"))]
    NowhereToKeep,
    /// A template of that name is there already.
    #[error("{}", say!("file-taken", name = .0))]
    Taken(String),
    /// There is no template of the user's with this id.
    #[error("{}", say!("file-not-own", name = .0))]
    NotOwn(String),
    /// The template has a fault, so it could not be used again.
    #[error("{}", say!("file-faulty-vehicle", place = .0.place.as_str(), cause = .0.cause.as_str()))]
    Faulty(Box<Finding>),
    /// A newer version of the program wrote what is there.
    #[error("{}", say!("file-newer", path = path.display().to_string(), format = format))]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its format.
        format: String,
    },
    /// The disk refused.
    #[error("{}", say!("file-cannot-save", path = path.display().to_string(), doing = *doing, cause = why(cause)))]
    Disk {
        /// The file that was to be written.
        path: PathBuf,
        /// What was being done.
        doing: &'static str,
        /// What the system said.
        cause: io::Error,
    },
}

impl SaveError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> &'static str {
        match self {
            Self::Text(_) => say!("file-report"),
            Self::NoFolder => say!("file-set-home"),
            Self::NowhereToKeep => say!("file-save-first"),
            Self::Taken(_) => say!("file-other-name"),
            Self::NotOwn(_) => say!("file-save-other-name"),
            Self::Faulty(_) => say!("file-take-back"),
            Self::Newer { .. } => say!("file-as-it-was"),
            Self::Disk { cause, .. } => match cause.kind() {
                io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => {
                    say!("file-disk-full")
                }
                io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => {
                    say!("file-not-allowed")
                }
                _ => say!("file-check-disk"),
            },
        }
    }
}

/// The text of a job file.
///
/// # Errors
/// [`SaveError::Text`] when it would not read back as the same job.
pub fn job_to_text(job: &Job) -> Result<String, SaveError> {
    let text = job_text(job)?;
    let again = read_back(&text).map_err(|e| SaveError::Text(e.to_string()))?;
    if again == *job { Ok(text) } else { Err(SaveError::Text(say!("file-reads-other-job").to_owned())) }
}

/// The same for the journal, which takes a job as it is.
pub(super) fn job_text(job: &Job) -> Result<String, SaveError> {
    let style = ron::ser::PrettyConfig::new().depth_limit(6).new_line("\n").indentor("  ").compact_arrays(true);
    let mut text = ron::ser::to_string_pretty(&JobFile::of(job), style).map_err(|e| SaveError::Text(e.to_string()))?;
    text.push('\n');
    Ok(text)
}

/// Saves a job under a name; never over the file of a newer version of the program.
///
/// # Errors
/// [`SaveError`]; the file on disk is then as it was.
pub fn save_job(disk: &dyn Disk, path: &Path, job: &Job) -> Result<Saved, SaveError> {
    let text = job_to_text(job)?;
    let there = |cause| SaveError::Disk { path: path.to_owned(), doing: say!("file-doing-looking"), cause };
    match head_of(disk, path).map_err(there)?.and_then(|head| newer_format(&head)) {
        Some(format) => Err(SaveError::Newer { path: path.to_owned(), format }),
        None => write_text(disk, path, &text),
    }
}

/// The first text of a file; none where there is none, as behind links that lead in a circle.
fn head_of(disk: &dyn Disk, path: &Path) -> io::Result<Option<String>> {
    let path = behind_links(disk, path)?;
    if disk.target(&path)?.is_some() {
        return Ok(None);
    }
    file_or_nothing(disk, &path)?;
    match disk.read(&path, HEAD) {
        Ok(head) => Ok(Some(String::from_utf8_lossy(&head).into_owned())),
        Err(error) if is_missing(&error) => Ok(None),
        Err(error) => Err(error),
    }
}

/// The format stands in the first bytes of a job; comments may come before it.
const HEAD: u64 = 64 << 10;

/// Replaces a file by the recipe in the module's head.
///
/// # Errors
/// [`SaveError::Disk`]; the file on disk is then as it was.
pub fn write_text(disk: &dyn Disk, path: &Path, text: &str) -> Result<Saved, SaveError> {
    write(disk, path, text.as_bytes(), Previous::Kept)
}

/// The same for what can be made again, such as a sheet: the previous version is not kept.
///
/// # Errors
/// [`SaveError::Disk`]; the file on disk is then as it was.
pub fn write_export(disk: &dyn Disk, path: &Path, bytes: &[u8]) -> Result<Saved, SaveError> {
    write(disk, path, bytes, Previous::Replaced)
}

/// What becomes of the version that was there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Previous {
    Kept,
    Replaced,
}

fn write(disk: &dyn Disk, path: &Path, bytes: &[u8], previous: Previous) -> Result<Saved, SaveError> {
    let asked = path;
    let refused = |doing, cause| SaveError::Disk { path: asked.to_owned(), doing, cause };
    let path = &behind_links(disk, path).map_err(|cause| refused(say!("file-doing-finding"), cause))?;
    let unfinished = Unfinished { fresh: beside(path, ".new"), kept: beside(path, ".old") };
    let replaced = unfinished.clear(disk).and_then(|()| replace(disk, path, bytes, &unfinished, previous));
    if let Err((doing, cause)) = replaced {
        // What can't be removed now is in nobody's way; the next save does it.
        drop(unfinished.clear(disk));
        return Err(refused(doing, cause));
    }
    Ok(if disk.sync_folder(folder_of(path)).is_ok() { Saved::Confirmed } else { Saved::NotConfirmed })
}

/// What was being done, and what the system said.
type Refused = (&'static str, io::Error);

/// Files that are there only while saving.
struct Unfinished {
    fresh: PathBuf,
    kept: PathBuf,
}

impl Unfinished {
    fn clear(&self, disk: &dyn Disk) -> Result<(), Refused> {
        let cleared = [&self.fresh, &self.kept].into_iter().map(|file| clear(disk, file)).fold(Ok(()), Result::and);
        cleared.map_err(|e| (say!("file-doing-clearing"), e))
    }
}

fn replace(
    disk: &dyn Disk,
    path: &Path,
    bytes: &[u8],
    unfinished: &Unfinished,
    previous: Previous,
) -> Result<(), Refused> {
    let Unfinished { fresh, kept } = unfinished;
    disk.write_new(fresh, bytes, path).map_err(|e| (say!("file-doing-writing"), e))?;
    if previous == Previous::Kept {
        let keep = || {
            match disk.link(path, kept) {
                Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(()), // there is none
                result => result?,
            }
            disk.rename(kept, &path.with_file_name(with_ending(path, "~")))?;
            // Renaming over another name of the same file does nothing at all: so it is after a save that ended here.
            clear(disk, kept)
        };
        keep().map_err(|e| (say!("file-doing-keeping-previous"), e))?;
    }
    disk.rename(fresh, path).map_err(|e| (say!("file-doing-putting"), e))
}

/// The file that a path stands for, through symbolic links, whether or not it exists yet.
pub(super) fn behind_links(disk: &dyn Disk, path: &Path) -> io::Result<PathBuf> {
    let mut path = path.to_owned();
    for _ in 0..40 {
        let Some(target) = disk.target(&path)? else { break };
        path = path.parent().unwrap_or(Path::new("")).join(target);
    }
    Ok(path)
}

/// A hidden name beside a file that no other process uses.
fn beside(path: &Path, ending: &str) -> PathBuf {
    hidden(path, &format!(".{}{ending}", std::process::id()))
}

/// The hidden name beside a file with this ending.
pub(super) fn hidden(path: &Path, ending: &str) -> PathBuf {
    let mut name = OsString::from(".");
    name.push(with_ending(path, ending));
    path.with_file_name(name)
}

pub(super) fn with_ending(path: &Path, ending: &str) -> OsString {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(ending);
    name
}
