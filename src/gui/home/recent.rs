//! The jobs that were open last.

use crate::file::{Kept, RealDisk, keep, kept};
use std::path::{Path, PathBuf};

/// As many as are kept.
const MOST: usize = 12;
const FILE: &str = "recent-jobs.ron";

/// Those of a folder; none where there is no list or it can't be read, which loses nothing that anybody wrote.
pub(super) fn read(folder: Option<&Path>) -> Vec<PathBuf> {
    match folder.map(|folder| kept(&RealDisk, &folder.join(FILE))) {
        Some(Kept::Read(recent)) => recent,
        _ => Vec::new(),
    }
}

/// Puts one first and writes the list. It is no loss where that fails.
pub(super) fn note(recent: &mut Vec<PathBuf>, path: &Path, folder: Option<&Path>) {
    let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    // A path that is no text can't be kept as one.
    if path.to_str().is_some() {
        recent.retain(|other| *other != path);
        recent.insert(0, path);
        recent.truncate(MOST);
        write(recent, folder);
    }
}

/// Takes one out.
pub(super) fn forget(recent: &mut Vec<PathBuf>, path: &Path, folder: Option<&Path>) {
    recent.retain(|other| other != path);
    write(recent, folder);
}

fn write(recent: &Vec<PathBuf>, folder: Option<&Path>) {
    if let Some(folder) = folder {
        drop(keep(&RealDisk, &folder.join(FILE), recent));
    }
}
