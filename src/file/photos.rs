//! Pictures beside a job: in a folder `NAME.photos` next to `NAME.job.ron`, each under its hash.

use super::disk::{Disk, clear, is_file_here, is_missing, no_link, nothing_but_a_file, sync_names};
use super::save::SaveError;
use crate::job::{Job, PhotoId};
use crate::say;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};

/// A larger file is not one of ours.
const LIMIT: u64 = 16 * 1024 * 1024;
const ENDING: &str = ".jpg";
/// Pictures kept so far by this process, so that no two calls write to one unfinished file.
static CALLS: AtomicU64 = AtomicU64::new(0);

/// The name of a picture: the hash of its bytes.
pub fn photo_id(bytes: &[u8]) -> PhotoId {
    PhotoId::of_hash(Sha256::digest(bytes).into())
}

/// The folder for the pictures of a job.
pub fn photo_folder(job: &Path) -> PathBuf {
    let name = job.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
    let stem = name.strip_suffix(".ron").unwrap_or(&name);
    job.with_file_name(format!("{}.photos", stem.strip_suffix(".job").unwrap_or(stem)))
}

/// The file of a picture of a job.
pub fn photo_file(job: &Path, photo: &PhotoId) -> PathBuf {
    photo_folder(job).join(format!("{photo}{ENDING}"))
}

/// Whether a file has the name of a picture, or of one that was cut short while it was written.
fn is_photo(file: &Path) -> bool {
    let name = file.file_name().map(|n| n.to_string_lossy()).unwrap_or_default();
    let whole = name.strip_suffix(ENDING);
    let stem = whole.or_else(|| name.strip_prefix('.')?.strip_suffix(".new")?.split_once('.').map(|(id, _)| id));
    stem.is_some_and(|stem| PhotoId::try_from(stem.to_owned()).is_ok())
}

/// Every picture that a job speaks of, each once.
pub fn photos_of(job: &Job) -> BTreeSet<PhotoId> {
    job.panels.values().flat_map(|r| &r.defects).flat_map(|d| d.photos.iter().cloned()).collect()
}

/// Reads a picture of a job; never one that is a link, or in a folder that is one, since it would lie elsewhere.
///
/// # Errors
/// What the system says; `InvalidInput` where there is a link; `InvalidData` where it is another picture than its name says.
pub fn read_photo(disk: &dyn Disk, job: &Path, photo: &PhotoId) -> io::Result<Vec<u8>> {
    let file = photo_file(job, photo);
    no_link(disk, &photo_folder(job))?;
    nothing_but_a_file(disk, &file)?;
    let bytes = disk.read(&file, LIMIT)?;
    if photo_id(&bytes) == *photo {
        Ok(bytes)
    } else {
        Err(io::Error::new(io::ErrorKind::InvalidData, say!("file-other-picture")))
    }
}

/// Keeps a picture beside a job. One that is there already is left alone: the same name means the same bytes. What is there but is
/// another picture, or a link, is replaced; a folder for the pictures that is a link is refused.
///
/// # Errors
/// [`SaveError::Disk`]; the folder then has the whole picture or none.
pub fn save_photo(disk: &dyn Disk, job: &Path, photo: &PhotoId, bytes: &[u8]) -> Result<(), SaveError> {
    let path = photo_file(job, photo);
    let folder = photo_folder(job);
    // The window and the thread of its journal may keep the same picture at the same time.
    let call = CALLS.fetch_add(1, Ordering::Relaxed);
    let fresh = folder.join(format!(".{photo}.{}.{call}.new", std::process::id()));
    let write = || {
        no_link(disk, &folder)?;
        if is_file_here(disk, &path)? && photo_id(&disk.read(&path, LIMIT)?) == *photo {
            return Ok(());
        }
        disk.make_folder(&folder)?;
        clear(disk, &fresh)?; // left by a save of another process of this number that was cut short
        disk.write_new(&fresh, bytes, job)?;
        disk.rename(&fresh, &path)?;
        sync_names(disk, &folder)
    };
    write().map_err(|cause| {
        drop(clear(disk, &fresh));
        SaveError::Disk { path: path.clone(), doing: say!("file-doing-keeping-picture"), cause }
    })
}

/// Copies the pictures of a job to where another file of it will be; one that is missing stays missing.
///
/// # Errors
/// [`SaveError::Disk`].
pub fn copy_photos(disk: &dyn Disk, from: &Path, to: &Path, job: &Job) -> Result<(), SaveError> {
    if photo_folder(from) == photo_folder(to) {
        return Ok(());
    }
    for photo in photos_of(job) {
        if let Ok(bytes) = read_photo(disk, from, &photo) {
            save_photo(disk, to, &photo, &bytes)?;
        }
    }
    Ok(())
}

/// Removes the pictures beside a file, and a link in the place of their folder. What is no picture stays, and so does the folder then.
///
/// # Errors
/// What the system says.
pub(super) fn remove_photos(disk: &dyn Disk, beside: &Path) -> io::Result<()> {
    let folder = photo_folder(beside);
    if disk.target(&folder)?.is_some() {
        return clear(disk, &folder);
    }
    let found = match disk.list(&folder) {
        Err(error) if is_missing(&error) => return Ok(()),
        found => found?,
    };
    let (pictures, others): (Vec<_>, Vec<_>) = found.into_iter().partition(|file| is_photo(file));
    pictures.iter().try_for_each(|picture| clear(disk, picture))?;
    if others.is_empty() { clear(disk, &folder) } else { Ok(()) }
}
