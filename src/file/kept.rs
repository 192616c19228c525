//! Small files of the program's own, in RON: preferences, the list of recent jobs.
//!
//! They are written whole like a job. One that can't be read is put aside as `NAME.broken` and never written over, so that nothing
//! that somebody set by hand is lost.

use super::disk::Disk;
use super::load::read_text;
use super::save::{SaveError, Saved, write_text};
use crate::say;
use serde::{Serialize, de::DeserializeOwned};
use std::path::Path;

/// What came of reading one.
#[derive(Debug, Clone, PartialEq)]
pub enum Kept<T> {
    /// There is none yet.
    Nothing,
    /// As it was kept.
    Read(T),
    /// It can't be used: what is wrong with it and where it is now, as a sentence.
    Broken(String),
}

/// Reads one; a broken one is put aside.
pub fn kept<T: DeserializeOwned>(disk: &dyn Disk, path: &Path) -> Kept<T> {
    if disk.about(path).is_ok_and(|about| about.is_none()) {
        return Kept::Nothing;
    }
    let read = read_text(disk, path).map_err(|e| e.to_string());
    let broken = match read.and_then(|text| ron::from_str(&text).map_err(|e| e.to_string())) {
        Ok(value) => return Kept::Read(value),
        Err(broken) => broken,
    };
    let mut aside = path.as_os_str().to_owned();
    aside.push(".broken");
    let place = if disk.rename(path, Path::new(&aside)).is_ok() {
        say!("file-kept-as", path = Path::new(&aside).display().to_string())
    } else {
        say!("file-kept-still", path = path.display().to_string())
    };
    Kept::Broken(format!("{broken}. {place}."))
}

/// Writes one; its folder is made where it is missing.
///
/// # Errors
/// [`SaveError`]; what was kept before is then as it was.
pub fn keep<T: Serialize>(disk: &dyn Disk, path: &Path, value: &T) -> Result<Saved, SaveError> {
    let style = ron::ser::PrettyConfig::new().new_line("\n").indentor("  ");
    let mut text = ron::ser::to_string_pretty(value, style).map_err(|e| SaveError::Text(e.to_string()))?;
    text.push('\n');
    if let Some(folder) = path.parent() {
        disk.make_folder(folder).map_err(|cause| SaveError::Disk {
            path: folder.to_owned(),
            doing: say!("file-doing-making-folder"),
            cause,
        })?;
    }
    write_text(disk, path, &text)
}
