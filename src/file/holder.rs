//! Who has a file open, in `.NAME.lock` beside it: a second window then knows, and does not save over the first one's work.
//!
//! The lock is the system's and ends with the program, however it ends; what is written in the file is only for people. It is not
//! the job itself that is locked: saving replaces that file, and a lock on it would be lost.

use super::disk::{Disk, Lock, clear_link};
use super::save::{behind_links, hidden};
use serde::{Deserialize, Serialize};
use std::io;
use std::path::Path;

/// Somebody who has a file open.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Holder {
    /// The name of the computer.
    pub host: String,
    /// The name of the user.
    pub user: String,
    /// The number of the process.
    pub pid: u32,
    /// Since when, in seconds since 1970 (UTC).
    pub since_s: i64,
}

/// What came of taking a file.
#[derive(Debug)]
pub enum Hold {
    /// It is ours until this is dropped.
    Ours(Lock),
    /// Somebody else has it; who, where that could be read.
    Others(Option<Holder>),
    /// Nothing can be written in its folder.
    NoWriting(io::Error),
    /// Locks don't work there.
    NoLocks(io::Error),
}

impl Holder {
    /// This program.
    pub fn me(now_s: i64) -> Self {
        let variable = |names: [&str; 2]| names.into_iter().find_map(|n| std::env::var(n).ok()).unwrap_or_default();
        Self {
            host: gethostname::gethostname().to_string_lossy().into_owned(),
            user: variable(["USER", "USERNAME"]),
            pid: std::process::id(),
            since_s: now_s,
        }
    }
}

/// Takes a file for `holder`.
pub fn hold(disk: &dyn Disk, file: &Path, holder: &Holder) -> Hold {
    let note = match ron::to_string(holder) {
        Ok(note) => note,
        Err(error) => return Hold::NoLocks(io::Error::other(error)),
    };
    let path = match behind_links(disk, file) {
        Ok(path) => hidden(&path, ".lock"),
        Err(error) => return Hold::NoLocks(error),
    };
    // A link of that name is none of ours, and must not become the way to write somewhere else.
    match clear_link(disk, &path).and_then(|()| disk.lock(&path, &note)) {
        Ok(Some(lock)) => Hold::Ours(lock),
        Ok(None) => {
            let said = disk.read(&path, 4096).ok().and_then(|bytes| ron::de::from_bytes(&bytes).ok());
            Hold::Others(said)
        }
        Err(error) if is_no_writing(&error) => Hold::NoWriting(error),
        Err(error) => Hold::NoLocks(error),
    }
}

fn is_no_writing(error: &io::Error) -> bool {
    matches!(error.kind(), io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem)
}
