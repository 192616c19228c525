//! All jobs of a folder: what is in each, read once and remembered by the file's time and length.
//!
//! Folders inside are looked through too, as deep as shops sort by year and customer; hidden ones and links to elsewhere are not. A
//! file that is no readable job is listed with the reason, never left out.

mod head;
mod heads;
mod index;
mod look;

pub use head::JobHead;
pub use look::{history_of, matching, sort_by_date};

use super::disk::Disk;
use heads::read_heads;
use index::Index;
use std::io;
use std::path::{Path, PathBuf};
use std::time::UNIX_EPOCH;

/// Deepest folder inside that is looked at.
const DEEPEST: usize = 3;
/// Most files that are listed; more are counted.
const MOST: usize = 50_000;

/// A folder of jobs, and where to remember what was read of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FolderOfJobs {
    folder: PathBuf,
    cache: Option<PathBuf>,
}

/// What is in a folder.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Listing {
    /// The jobs, newest first.
    pub jobs: Vec<JobHead>,
    /// How many had to be read because they were new or changed.
    pub read: usize,
    /// How many there are beyond those listed.
    pub left_out: usize,
}

/// How far reading a folder is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Reading {
    /// Files looked at.
    pub done: usize,
    /// Files that there are.
    pub all: usize,
}

/// A file as the folder says it is.
struct Found {
    file: String,
    path: PathBuf,
    stamp: Stamp,
}

/// Tells whether a file is still the one that was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Stamp {
    /// Nanoseconds since 1970 of its last change.
    pub(super) changed_ns: u64,
    /// Bytes.
    pub(super) length: u64,
}

impl FolderOfJobs {
    /// A folder; `cache` is where programs keep what can be made again, if there is such a place.
    pub fn new(folder: impl Into<PathBuf>, cache: Option<PathBuf>) -> Self {
        Self { folder: folder.into(), cache }
    }

    /// The folder.
    pub fn path(&self) -> &Path {
        &self.folder
    }

    /// Lists the jobs. `go_on` is told how far it is, and ends it by saying no; what was read until then is remembered.
    ///
    /// # Errors
    /// What the system says where the folder itself can't be read; `Interrupted` where `go_on` said no.
    pub fn list(&self, disk: &dyn Disk, go_on: &mut dyn FnMut(Reading) -> bool) -> io::Result<Listing> {
        let mut found = Vec::new();
        gather(disk, &self.folder, "", DEEPEST, &mut found)?;
        found.sort_by(|a, b| a.file.cmp(&b.file));
        let left_out = found.len().saturating_sub(MOST);
        found.truncate(MOST);
        let mut known = Index::read(disk, self.index_file().as_deref());
        let (all, was) = (found.len(), known.len());
        let mut jobs = Vec::with_capacity(all);
        found.retain(|file| match known.take(&file.file, file.stamp) {
            Some(head) => {
                jobs.push(head);
                false
            }
            None => true,
        });
        let (heads, ended) = read_heads(disk, &found, Reading { done: jobs.len(), all }, go_on);
        let read = heads.len();
        jobs.extend(heads);
        sort_by_date(&mut jobs);
        if read > 0 || was != jobs.len() {
            Index::write(disk, self.index_file().as_deref(), &jobs);
        }
        if ended {
            return Err(io::Error::from(io::ErrorKind::Interrupted));
        }
        Ok(Listing { jobs, read, left_out })
    }

    /// The file of a job in the list.
    pub fn file(&self, job: &JobHead) -> PathBuf {
        job.file.split('/').fold(self.folder.clone(), |folder, part| folder.join(part))
    }

    fn index_file(&self) -> Option<PathBuf> {
        let absolute = std::path::absolute(&self.folder).ok()?;
        Some(self.cache.as_ref()?.join(Index::name(&absolute)))
    }
}

/// Finds the job files of a folder and of those inside it; only the outermost one has to be readable.
fn gather(disk: &dyn Disk, folder: &Path, before: &str, deeper: usize, found: &mut Vec<Found>) -> io::Result<()> {
    for path in disk.list(folder)? {
        let name = path.file_name().and_then(|name| name.to_str()).filter(|name| !name.starts_with('.'));
        let Some(name) = name else { continue };
        let (Ok(None), Ok(Some(about))) = (disk.target(&path), disk.about(&path)) else { continue };
        if !about.is_file && deeper > 0 {
            // One that can't be looked into has no jobs for this person.
            drop(gather(disk, &path, &format!("{before}{name}/"), deeper - 1, found));
        } else if about.is_file && name.ends_with(".job.ron") {
            let changed = about.modified.and_then(|at| at.duration_since(UNIX_EPOCH).ok());
            let changed_ns = changed.map_or(0, |d| u64::try_from(d.as_nanos()).unwrap_or(u64::MAX));
            let stamp = Stamp { changed_ns, length: about.len };
            found.push(Found { file: format!("{before}{name}"), path, stamp });
        }
    }
    Ok(())
}
