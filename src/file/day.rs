//! The log of a day in the bay, beside its job as `NAME.job.ron.day`: one entry a line, on the disk before the tap counts.
//!
//! The first line names the format, `day/1`. A crash or a flat battery can tear the last line only: it is left out when the log
//! is read, and closed off by the next entry. Lines in the middle that can't be read are left out too, and counted. A link of its
//! name is refused.

use super::disk::{Disk, clear, folder_of, nothing_but_a_file, sync_names};
use super::error::ReadError;
use crate::bay::{Entry, Log};
use std::ffi::OsString;
use std::io;
use std::path::{Path, PathBuf};

const FORMAT: &str = "day/1";
/// Closes off a line that was torn, so that it never counts, not even where only its end was missing.
const TORN: char = '~';
/// A day of a tap a second for a week is far below this.
const LIMIT: u64 = 64 << 20;

/// The file that holds the day of a job.
pub fn day_path(job: &Path) -> PathBuf {
    beside(job, ".day")
}

/// The file that holds the day on which its panels are polished.
pub fn polishing_day_path(job: &Path) -> PathBuf {
    beside(job, ".polishing.day")
}

fn beside(job: &Path, ending: &str) -> PathBuf {
    let mut name = OsString::from(job);
    name.push(ending);
    PathBuf::from(name)
}

/// Writes a whole day at once, for a job that got another name.
///
/// # Errors
/// What the system says; a file that is there already is never touched.
pub fn write_day(disk: &dyn Disk, path: &Path, log: &Log) -> io::Result<()> {
    let lines = log.entries().iter().map(|e| ron::to_string(e).map_err(io::Error::other));
    let lines = lines.collect::<io::Result<Vec<String>>>()?;
    let text = format!("{FORMAT}\n{}\n", lines.join("\n"));
    let written = disk.write_new(path, text.as_bytes(), path).and_then(|()| sync_names(disk, folder_of(path)));
    if written.as_ref().is_err_and(|error| error.kind() != io::ErrorKind::AlreadyExists) {
        drop(clear(disk, path)); // a part of it is no day
    }
    written
}

/// A log on disk.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DayFile {
    /// What could be read of it.
    pub log: Log,
    /// Lines that could not be read; a torn last line is not one of them.
    pub unreadable: usize,
}

/// Reads the log of a day; an empty one where there is no file.
///
/// # Errors
/// [`ReadError`] when the file can't be read or is of another format.
pub fn read_day(disk: &dyn Disk, path: &Path) -> Result<DayFile, ReadError> {
    let bytes = match nothing_but_a_file(disk, path).and_then(|()| disk.read(path, LIMIT)) {
        Ok(bytes) => bytes,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(DayFile::default()),
        Err(cause) => return Err(ReadError::Unreadable { path: path.to_owned(), cause }),
    };
    let text = String::from_utf8_lossy(&bytes);
    let (whole, _torn) = text.rsplit_once('\n').unwrap_or(("", &text));
    let mut day = DayFile::default();
    // A first line that was torn is followed by a whole one.
    let mut lines = whole.lines().skip_while(|l| *l != FORMAT && FORMAT.starts_with(l));
    match lines.next() {
        None => return Ok(day),
        Some(FORMAT) => {}
        Some(first) => {
            let (name, format) = (path.display().to_string(), first.chars().take(40).collect());
            return Err(ReadError::OtherFormat { name, line: 1, format, reads: FORMAT });
        }
    }
    for line in lines.filter(|l| !l.trim().is_empty() && !l.ends_with(TORN)) {
        match ron::from_str::<Entry>(line) {
            Ok(entry) => {
                day.log.push(entry);
            }
            Err(_) => day.unreadable += 1,
        }
    }
    Ok(day)
}

/// Writes an entry behind the others and waits until it is on the disk.
///
/// # Errors
/// What the system says; the entries before are as they were.
pub fn append_day(disk: &dyn Disk, path: &Path, entry: &Entry) -> io::Result<()> {
    let line = ron::to_string(entry).map_err(io::Error::other)?;
    let before = match nothing_but_a_file(disk, path).and_then(|()| disk.read(path, LIMIT)) {
        Ok(before) if !before.is_empty() => before,
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
        // A new file, and its name, are on the disk before anything counts as written to it.
        _ => {
            let first = format!("{FORMAT}\n").into_bytes();
            disk.append(path, &first)?;
            sync_names(disk, folder_of(path))?;
            first
        }
    };
    let start = match before.last() {
        None | Some(b'\n') => String::new(),
        Some(_) if before.contains(&b'\n') => format!("{TORN}\n"),
        Some(_) => format!("\n{FORMAT}\n"), // the first line itself was torn
    };
    disk.append(path, format!("{start}{line}\n").as_bytes())
}
