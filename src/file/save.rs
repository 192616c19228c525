//! Writing a job so that a crash or a power cut at any moment leaves the old file or the new one, whole.
//!
//! The text is read back before the disk is touched; it goes to a new file in the same folder and is synced; the file it replaces
//! stays as `NAME~`; one rename switches; then the folder is synced. A sync that failed is never tried again on the same file,
//! since the system may have dropped the bytes it couldn't write.

use super::disk::Disk;
use super::load::read_back;
use super::v1::JobFile;
use crate::finding::Finding;
use crate::job::Job;
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
    #[error("it could not be written as text: {0}")]
    Text(String),
    /// There is no folder to keep vehicle templates in.
    #[error("there is no folder for vehicles of your own on this computer")]
    NoFolder,
    /// A template of that name is there already.
    #[error("there is a vehicle \"{0}\" already")]
    Taken(String),
    /// There is no template of the user's with this id.
    #[error("\"{0}\" is no vehicle of your own")]
    NotOwn(String),
    /// The template has a fault, so it could not be used again.
    #[error("the vehicle can't be saved: {}: {}", .0.place, .0.cause)]
    Faulty(Box<Finding>),
    /// The disk refused.
    #[error("cannot save \"{}\": {doing}: {cause}", path.display())]
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
            Self::Text(_) => "nothing was written; keep the window open and report this as a fault of the program",
            Self::NoFolder => "set HOME to a folder of your own and start the program again",
            Self::Taken(_) => "give it another name",
            Self::NotOwn(_) => "save it under another name",
            Self::Faulty(_) => "take the last change back",
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
    let again = read_back(&text).map_err(|e| SaveError::Text(e.to_string()))?;
    if again == *job { Ok(text) } else { Err(SaveError::Text("it reads back as another job".to_owned())) }
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
    let path = &behind_links(path);
    let unfinished = Unfinished { fresh: beside(path, ".new"), kept: beside(path, ".old") };
    let replaced = unfinished.clear(disk).and_then(|()| replace(disk, path, bytes, &unfinished, previous));
    if let Err((doing, cause)) = replaced {
        // What can't be removed now is in nobody's way; the next save does it.
        drop(unfinished.clear(disk));
        return Err(SaveError::Disk { path: path.clone(), doing, cause });
    }
    let folder = path.parent().filter(|f| !f.as_os_str().is_empty()).unwrap_or(Path::new("."));
    Ok(if disk.sync_folder(folder).is_ok() { Saved::Confirmed } else { Saved::NotConfirmed })
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
        let left = [&self.fresh, &self.kept].into_iter().filter(|file| file.symlink_metadata().is_ok());
        let cleared = left.map(|file| disk.remove(file)).fold(Ok(()), Result::and);
        cleared.map_err(|e| ("clearing an unfinished save", e))
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
    disk.write_new(fresh, bytes, path).map_err(|e| ("writing the new file", e))?;
    if previous == Previous::Kept && path.exists() {
        let keep = || {
            disk.link(path, kept)?;
            disk.rename(kept, &path.with_file_name(with_ending(path, "~")))?;
            // Renaming over another name of the same file does nothing at all: so it is after a save that ended here.
            if kept.exists() { disk.remove(kept) } else { Ok(()) }
        };
        keep().map_err(|e| ("keeping the previous version", e))?;
    }
    disk.rename(fresh, path).map_err(|e| ("putting the new file in place", e))
}

/// The file that a path stands for, through symbolic links, whether or not it exists yet.
fn behind_links(path: &Path) -> PathBuf {
    let mut path = path.to_owned();
    for _ in 0..40 {
        let Ok(target) = path.read_link() else { break };
        path = path.parent().unwrap_or(Path::new("")).join(target);
    }
    path
}

/// A hidden name beside a file that no other process uses.
fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = OsString::from(".");
    name.push(with_ending(path, &format!(".{}{ending}", std::process::id())));
    path.with_file_name(name)
}

fn with_ending(path: &Path, ending: &str) -> OsString {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(ending);
    name
}
