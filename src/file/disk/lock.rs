//! A lock on a file beside the one that is worked on.

use super::real::never_through_links;
use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

/// Held until it is dropped; the system lets go of it when the program ends in whatever way.
#[derive(Debug)]
pub struct Lock {
    file: File,
    path: PathBuf,
}

/// A lock file that was put away between opening and locking it is opened again, at most so often.
const TRIES: usize = 10;

impl Lock {
    pub(super) fn take(path: &Path, holder: &str) -> io::Result<Option<Self>> {
        for _ in 0..TRIES {
            let mut file =
                never_through_links(OpenOptions::new().write(true).create(true).truncate(false)).open(path)?;
            match file.try_lock() {
                Err(TryLockError::WouldBlock) => return Ok(None),
                Err(TryLockError::Error(error)) => return Err(error),
                Ok(()) if is_still(&file, path) => {
                    file.set_len(0)?;
                    file.write_all(holder.as_bytes())?;
                    return Ok(Some(Self { file, path: path.to_owned() }));
                }
                Ok(()) => {}
            }
        }
        Err(io::Error::other("the lock file is put away all the time"))
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        // Put away while it is still held, so that nobody else's is; what can't be put away is in nobody's way.
        if cfg!(unix) && is_still(&self.file, &self.path) {
            drop(fs::remove_file(&self.path));
        }
    }
}

/// Whether the name still means the file that is open.
#[cfg(unix)]
fn is_still(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    match (file.metadata(), fs::metadata(path)) {
        (Ok(open), Ok(named)) => (open.dev(), open.ino()) == (named.dev(), named.ino()),
        _ => false,
    }
}

/// Elsewhere lock files are never put away.
#[cfg(not(unix))]
fn is_still(_: &File, _: &Path) -> bool {
    true
}
