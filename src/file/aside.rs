//! States that nobody wanted now, but that are not thrown away: dated files in the user's folder `lapwright/kept`.

use super::disk::{Disk, clear, is_file};
use super::journal::{FoundJournal, remove_journal};
use super::load::read_back;
use super::photos::{copy_photos, photo_folder, photos_of, remove_photos, save_photo};
use super::save::{SaveError, job_to_text, write_export};
use crate::job::{Job, PhotoId};
use crate::say;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// More than so many, and the oldest go.
pub const KEPT_FILES: usize = 50;

/// Puts a found journal aside with its pictures and takes it away from where it was; `beside` is the file of the job, where the other
/// pictures are. `stamp` is the time, as part of a name.
///
/// Gives the file that can be opened as a job; of a journal that was torn and has no version before it, the file with its bytes.
///
/// # Errors
/// [`SaveError`]; the journal is then where it was.
pub fn put_aside(
    disk: &dyn Disk,
    data: &Path,
    found: &FoundJournal,
    beside: Option<&Path>,
    stamp: &str,
) -> Result<PathBuf, SaveError> {
    let mut kept = keep_torn(disk, data, found, stamp)?;
    if let Some(text) = &found.text {
        kept = Some(keep(disk, data, name_of(found), stamp, "job.ron", text.as_bytes())?);
    }
    let refused = |cause| SaveError::Disk { path: found.path.clone(), doing: say!("file-doing-taking-away"), cause };
    let pictures = photo_folder(&found.path);
    let there = disk.target(&pictures).map_err(refused)?.is_none() && disk.about(&pictures).map_err(refused)?.is_some();
    if let Some(kept) = kept.as_ref().filter(|_| there) {
        disk.rename(&pictures, &photo_folder(kept)).map_err(refused)?;
    }
    if let (Some(kept), Some(from)) = (&kept, beside)
        && let Some(job) = found.text.as_deref().and_then(|text| read_back(text).ok())
    {
        copy_photos(disk, from, kept, &job)?;
    }
    remove_journal(disk, &found.path).map_err(refused)?;
    Ok(kept.unwrap_or_else(|| folder(data)))
}

/// Keeps the bytes of a journal that was torn; gives the file.
///
/// # Errors
/// [`SaveError`].
pub fn keep_torn(
    disk: &dyn Disk,
    data: &Path,
    found: &FoundJournal,
    stamp: &str,
) -> Result<Option<PathBuf>, SaveError> {
    let keep = |bytes: &Vec<u8>| keep(disk, data, name_of(found), stamp, "torn.journal", bytes);
    found.torn.as_ref().map(keep).transpose()
}

fn name_of(found: &FoundJournal) -> &str {
    found.head.as_ref().map_or("job", |head| head.name.as_str())
}

/// Keeps a job that is about to be replaced by another state, with its pictures: those in memory, and those that are beside its file.
///
/// # Errors
/// [`SaveError`].
pub fn keep_job(
    disk: &dyn Disk,
    data: &Path,
    job: &Job,
    in_memory: &[(PhotoId, Arc<Vec<u8>>)],
    beside: Option<&Path>,
    stamp: &str,
) -> Result<PathBuf, SaveError> {
    let kept = keep(disk, data, &job.name, stamp, "job.ron", job_to_text(job)?.as_bytes())?;
    let photos = photos_of(job);
    for (photo, bytes) in in_memory.iter().filter(|(photo, _)| photos.contains(photo)) {
        save_photo(disk, &kept, photo, bytes)?;
    }
    beside.map_or(Ok(()), |from| copy_photos(disk, from, &kept, job))?;
    Ok(kept)
}

fn folder(data: &Path) -> PathBuf {
    data.join("kept")
}

fn keep(
    disk: &dyn Disk,
    data: &Path,
    name: &str,
    stamp: &str,
    ending: &str,
    bytes: &[u8],
) -> Result<PathBuf, SaveError> {
    let folder = folder(data);
    let refused = |cause| SaveError::Disk { path: folder.clone(), doing: say!("file-doing-keeping-folder"), cause };
    disk.make_folder(&folder).map_err(refused)?;
    let plain = |c: char| if c.is_alphanumeric() { c } else { ' ' };
    let words: String = name.chars().map(plain).take(60).collect();
    let words = words.split_whitespace().collect::<Vec<_>>().join("-");
    let words = if words.is_empty() { "job".to_owned() } else { words };
    let path = free_name(disk, &folder, &format!("{stamp}-{words}"), ending).map_err(refused)?;
    write_export(disk, &path, bytes)?;
    // The names begin with their time. What can't be removed now goes next time.
    let all = disk.list(&folder).unwrap_or_default();
    let files: Vec<_> = all.iter().filter(|path| is_file(disk, path)).collect();
    for old in files.into_iter().rev().skip(KEPT_FILES) {
        drop(remove_photos(disk, old).and_then(|()| clear(disk, old)));
    }
    Ok(path)
}

fn free_name(disk: &dyn Disk, folder: &Path, stem: &str, ending: &str) -> io::Result<PathBuf> {
    for n in 1..10_000 {
        let path = match n {
            1 => folder.join(format!("{stem}.{ending}")),
            n => folder.join(format!("{stem}-{n}.{ending}")),
        };
        if disk.about(&path)?.is_none() {
            return Ok(path);
        }
    }
    Err(io::Error::other(say!("file-no-free-name")))
}
