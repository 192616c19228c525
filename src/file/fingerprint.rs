//! How a file on disk is known again: by its size, the time of its last change, and the hash of its bytes.

use super::disk::{Disk, is_missing};
use sha2::{Digest, Sha256};
use std::io;
use std::path::Path;
use std::time::SystemTime;

/// A larger file is no file of this program, so it is one that somebody else put there.
const LIMIT: u64 = 64 << 20;

/// What a file was when it was read or written last.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fingerprint {
    len: u64,
    modified: Option<SystemTime>,
    sha256: [u8; 32],
}

/// What became of a file since.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// It holds the same bytes.
    None,
    /// It holds others.
    Changed(Fingerprint),
    /// It is not there any more.
    Gone,
}

impl Fingerprint {
    /// That of a file as it is; none where there is no file.
    ///
    /// # Errors
    /// What the system says.
    pub fn read(disk: &dyn Disk, path: &Path) -> io::Result<Option<Self>> {
        // The time first: a file that is changed in between then shows a time that is too old, and is looked at again.
        let Some(about) = disk.about(path)? else { return Ok(None) };
        let bytes = match disk.read(path, LIMIT) {
            Ok(bytes) => bytes,
            Err(error) if is_missing(&error) => return Ok(None),
            Err(error) => return Err(error),
        };
        Ok(Some(Self { len: about.len, modified: about.modified, sha256: Sha256::digest(&bytes).into() }))
    }

    /// The SHA-256 of the bytes, in hexadecimal digits.
    pub fn sha256(&self) -> String {
        hex(&self.sha256)
    }

    /// When the file was changed last, where the file system knows.
    pub fn modified(&self) -> Option<SystemTime> {
        self.modified
    }

    /// What became of the file, looking at its bytes only where size or time are others.
    ///
    /// # Errors
    /// What the system says.
    pub fn glance(&self, disk: &dyn Disk, path: &Path) -> io::Result<Change> {
        match disk.about(path)? {
            None => Ok(Change::Gone),
            Some(about) if about.len == self.len && about.modified == self.modified && about.modified.is_some() => {
                Ok(Change::None)
            }
            Some(_) => self.compare(disk, path),
        }
    }

    /// What became of the file, by its bytes.
    ///
    /// # Errors
    /// What the system says.
    pub fn compare(&self, disk: &dyn Disk, path: &Path) -> io::Result<Change> {
        Ok(match Self::read(disk, path)? {
            None => Change::Gone,
            Some(now) if now.sha256 == self.sha256 => Change::None,
            Some(now) => Change::Changed(now),
        })
    }
}

/// The SHA-256 of some bytes, in hexadecimal digits.
pub(super) fn sha256_of(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().flat_map(|b| [b >> 4, b & 15]).filter_map(|half| char::from_digit(u32::from(half), 16)).collect()
}
