//! The journal: what is unsaved in a window, on the disk, so that a crash costs a few seconds of work at most.
//!
//! A job with a file has it beside the file, as `.NAME.journal`; one without in the user's folder `lapwright/unsaved`. Format `journal/1`:
//! the format on the first line, what it is about on the second (RON), then the text of the job. It is written like a job, so that
//! a crash while it is written leaves the one before; the previous version stays as `NAME~` all the same, for disks that tear
//! files. It is removed only once the job is saved for sure, or given up on purpose. A link of its name is no journal: it is not
//! followed, and the next journal takes its place.

use super::disk::{Disk, clear, clear_link, folder_of, is_file_here, is_missing, sync_names};
use super::fingerprint::{Fingerprint, sha256_of};
use super::photos::remove_photos;
use super::save::{SaveError, Saved, behind_links, hidden, job_text, with_ending, write_text};
use crate::job::Job;
use crate::say;
use serde::{Deserialize, Serialize};
use std::io;
use std::path::{Path, PathBuf};

const FORMAT: &str = "journal/1";
/// A journal holds one job and little more.
const LIMIT: u64 = 65 << 20;
const ENDING: &str = ".journal";

/// What a journal is about.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct JournalHead {
    /// What the job is called.
    pub name: String,
    /// The file it was read from, where it has one.
    pub file: Option<String>,
    /// The SHA-256 of that file when it was read or saved last.
    pub base_sha256: Option<String>,
    /// When it was written, in seconds since 1970 (UTC).
    pub at_s: i64,
    /// Changes since the file was read or saved last.
    pub changes: u64,
    /// The SHA-256 of the text below.
    text_sha256: String,
}

impl JournalHead {
    /// A head for a job as it is now; `base` is its file as it was.
    pub fn new(job: &Job, file: Option<&Path>, base: Option<&Fingerprint>, at_s: i64, changes: u64) -> Self {
        let base_sha256 = base.map(Fingerprint::sha256);
        let file = file.map(|file| file.display().to_string());
        Self { name: job.name.clone(), file, base_sha256, at_s, changes, text_sha256: String::new() }
    }
}

/// A journal that was found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FoundJournal {
    /// Its file.
    pub path: PathBuf,
    /// What it is about; none where not even that can be read.
    pub head: Option<JournalHead>,
    /// The text of the job, where it is whole.
    pub text: Option<String>,
    /// The bytes of a file that was torn, to be kept as they are.
    pub torn: Option<Vec<u8>>,
}

impl FoundJournal {
    /// Whether it holds nothing but this job as it is.
    pub fn is_only(&self, job: &Job) -> bool {
        self.torn.is_none() && self.text.is_some() && self.text == job_text(job).ok()
    }
}

/// The journal of a job's file.
///
/// # Errors
/// What the system says of the links that lead to the file.
pub fn journal_of(disk: &dyn Disk, file: &Path) -> io::Result<PathBuf> {
    Ok(hidden(&behind_links(disk, file)?, ENDING))
}

/// A journal for a job without a file, in the user's folder; `name` is one that no other window has.
pub fn journal_without_file(data: &Path, name: &str) -> PathBuf {
    data.join("unsaved").join(format!("{name}{ENDING}"))
}

/// All journals of jobs without a file, the oldest first where their names begin with their time.
///
/// # Errors
/// What the system says; a folder that is not there holds none.
pub fn journals_without_file(disk: &dyn Disk, data: &Path) -> io::Result<Vec<PathBuf>> {
    match disk.list(&data.join("unsaved")) {
        Ok(mut all) => {
            all.retain(|path| path.extension().is_some_and(|e| e == ENDING.trim_start_matches('.')));
            Ok(all)
        }
        Err(error) if is_missing(&error) => Ok(Vec::new()),
        Err(error) => Err(error),
    }
}

/// Writes what is unsaved over the journal before.
///
/// # Errors
/// [`SaveError`]; the journal before is then as it was.
pub fn write_journal(disk: &dyn Disk, path: &Path, head: &JournalHead, job: &Job) -> Result<Saved, SaveError> {
    let text = job_text(job)?;
    let head = JournalHead { text_sha256: sha256_of(text.as_bytes()), ..head.clone() };
    let head = ron::to_string(&head).map_err(|e| SaveError::Text(e.to_string()))?;
    let refused = |cause| SaveError::Disk { path: path.to_owned(), doing: say!("file-doing-clearing"), cause };
    clear_link(disk, path).map_err(refused)?;
    write_text(disk, path, &format!("{FORMAT}\n{head}\n{text}"))
}

/// Reads a journal; none where there is none. Where it was torn, the version before it counts.
///
/// # Errors
/// What the system says.
pub fn read_journal(disk: &dyn Disk, path: &Path) -> io::Result<Option<FoundJournal>> {
    let Some(bytes) = read(disk, path)? else { return Ok(None) };
    let (head, text) = taken_apart(&bytes);
    if text.is_some() {
        return Ok(Some(FoundJournal { path: path.to_owned(), head, text, torn: None }));
    }
    let before = read(disk, &previous(path))?.map(|bytes| taken_apart(&bytes));
    let (head_before, text) = before.filter(|(_, text)| text.is_some()).unwrap_or_default();
    let head = if text.is_some() { head_before } else { head };
    Ok(Some(FoundJournal { path: path.to_owned(), head, text, torn: Some(bytes) }))
}

/// Removes a journal with its previous version, which alone would count for nothing, and its pictures.
///
/// # Errors
/// What the system says.
pub fn remove_journal(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    clear(disk, &previous(path))?;
    clear(disk, path)?;
    match sync_names(disk, folder_of(path)) {
        Err(error) if !is_missing(&error) => return Err(error), // it could come back with a power cut
        _ => {}
    }
    remove_photos(disk, path) // those of a job with a file lie beside that
}

fn previous(path: &Path) -> PathBuf {
    path.with_file_name(with_ending(path, "~"))
}

fn read(disk: &dyn Disk, path: &Path) -> io::Result<Option<Vec<u8>>> {
    if !is_file_here(disk, path)? {
        return Ok(None);
    }
    match disk.read(path, LIMIT) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if is_missing(&error) => Ok(None),
        Err(error) => Err(error),
    }
}

/// What it is about, and the text where that is whole.
fn taken_apart(bytes: &[u8]) -> (Option<JournalHead>, Option<String>) {
    let whole = String::from_utf8_lossy(bytes);
    let mut parts = whole.splitn(3, '\n');
    if parts.next() != Some(FORMAT) {
        return (None, None);
    }
    let head: Option<JournalHead> = parts.next().and_then(|line| ron::from_str(line).ok());
    let text = parts.next().filter(|text| head.as_ref().is_some_and(|h| h.text_sha256 == sha256_of(text.as_bytes())));
    let text = text.map(str::to_owned);
    (head, text)
}
