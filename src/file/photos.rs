//! Pictures beside a job: in a folder `NAME.photos` next to `NAME.job.ron`, each under its hash.

use super::disk::{Disk, clear, sync_names};
use super::save::SaveError;
use crate::job::{Job, PhotoId};
use crate::say;
use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};

/// A larger file is not one of ours.
const LIMIT: u64 = 16 * 1024 * 1024;

/// The folder for the pictures of a job.
pub fn photo_folder(job: &Path) -> PathBuf {
    let name = job.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
    let stem = name.strip_suffix(".ron").unwrap_or(&name);
    job.with_file_name(format!("{}.photos", stem.strip_suffix(".job").unwrap_or(stem)))
}

/// The file of a picture of a job.
pub fn photo_file(job: &Path, photo: &PhotoId) -> PathBuf {
    photo_folder(job).join(format!("{photo}.jpg"))
}

/// Every picture that a job speaks of, each once.
pub fn photos_of(job: &Job) -> BTreeSet<PhotoId> {
    job.panels.values().flat_map(|r| &r.defects).flat_map(|d| d.photos.iter().cloned()).collect()
}

/// Reads a picture of a job; never one that is a link, or in a folder that is one, since it would lie elsewhere.
///
/// # Errors
/// What the system says; `InvalidInput` where there is a link.
pub fn read_photo(disk: &dyn Disk, job: &Path, photo: &PhotoId) -> io::Result<Vec<u8>> {
    let file = photo_file(job, photo);
    if disk.target(&photo_folder(job))?.is_some() || disk.target(&file)?.is_some() {
        return Err(io::Error::new(io::ErrorKind::InvalidInput, "it is a link to another place"));
    }
    disk.read(&file, LIMIT)
}

/// Keeps a picture beside a job. One that is there already is left alone: the same name means the same bytes.
///
/// # Errors
/// [`SaveError::Disk`]; the folder then has the whole picture or none.
pub fn save_photo(disk: &dyn Disk, job: &Path, photo: &PhotoId, bytes: &[u8]) -> Result<(), SaveError> {
    let path = photo_file(job, photo);
    let folder = photo_folder(job);
    let fresh = folder.join(format!(".{photo}.{}.new", std::process::id()));
    let write = || {
        if disk.about(&path)?.is_some() {
            return Ok(());
        }
        disk.make_folder(&folder)?;
        clear(disk, &fresh)?; // left by a save that was cut short
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
