//! Everything that the program does to a disk, behind one trait, so that tests can make each of it fail.
//!
//! `real.rs` is the only file of the program that calls the system (`tests/architecture.rs` makes sure of it).

mod fault;
mod lock;
mod real;
mod why;

pub use fault::Fault;
pub use lock::Lock;
pub use real::{RealDisk, new_private_folder};
pub use why::why;

use crate::say;
use std::fmt::Debug;
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// What stands under a name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct About {
    /// Whether it is a file; else it is a folder or something odd.
    pub is_file: bool,
    /// Size in bytes.
    pub len: u64,
    /// When it was changed last, where the file system knows.
    pub modified: Option<SystemTime>,
    /// Whether it is read-only.
    pub protected: bool,
}

/// A disk. Every call either did all of it or returns the error.
pub trait Disk: Debug + Send + Sync {
    /// Reads at most `limit` bytes.
    ///
    /// # Errors
    /// What the system says.
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>>;
    /// What stands under a name, through symbolic links; none where nothing does.
    ///
    /// # Errors
    /// What the system says.
    fn about(&self, path: &Path) -> io::Result<Option<About>>;
    /// What a symbolic link leads to; none where it is no link, or nothing is there.
    ///
    /// # Errors
    /// What the system says.
    fn target(&self, path: &Path) -> io::Result<Option<PathBuf>>;
    /// Everything in a folder, sorted by name.
    ///
    /// # Errors
    /// What the system says.
    fn list(&self, folder: &Path) -> io::Result<Vec<PathBuf>>;
    /// Makes a folder and those above it; fine where it is there.
    ///
    /// # Errors
    /// What the system says.
    fn make_folder(&self, folder: &Path) -> io::Result<()>;
    /// Writes a file that must not exist yet, and waits until its bytes are on the disk. Takes over the permissions of
    /// `like`, if that exists.
    ///
    /// # Errors
    /// What the system says.
    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> io::Result<()>;
    /// Writes bytes behind those of a file, which is made where there is none, and waits until they are on the disk. Never through
    /// a symbolic link.
    ///
    /// # Errors
    /// What the system says, also where the name is a link or no file; a part of the bytes may be there.
    fn append(&self, path: &Path, bytes: &[u8]) -> io::Result<()>;
    /// Gives a file a second name; copies it where the file system has no hard links.
    ///
    /// # Errors
    /// What the system says.
    fn link(&self, from: &Path, to: &Path) -> io::Result<()>;
    /// Renames a file over another one.
    ///
    /// # Errors
    /// What the system says.
    fn rename(&self, from: &Path, to: &Path) -> io::Result<()>;
    /// Removes a file, or a folder with nothing in it.
    ///
    /// # Errors
    /// What the system says.
    fn remove(&self, path: &Path) -> io::Result<()>;
    /// Waits until the names in a folder are on the disk.
    ///
    /// # Errors
    /// What the system says.
    fn sync_folder(&self, folder: &Path) -> io::Result<()>;
    /// Takes a file that only says who holds something, and writes who; none where somebody else holds it. Never through a symbolic
    /// link.
    ///
    /// # Errors
    /// What the system says, also where the name is a link or no file, or where it knows no locks.
    fn lock(&self, path: &Path, holder: &str) -> io::Result<Option<Lock>>;
}

/// Whether there is a file of that name; also false where the disk can't say.
pub(super) fn is_file(disk: &dyn Disk, path: &Path) -> bool {
    disk.about(path).is_ok_and(|about| about.is_some_and(|about| about.is_file))
}

/// Whether a plain file of that name is right there. A folder from elsewhere may hold links of any name, also of the names that
/// this program gives to its own files; what a link leads to is never one of them.
pub(super) fn is_file_here(disk: &dyn Disk, path: &Path) -> io::Result<bool> {
    Ok(disk.target(path)?.is_none() && disk.about(path)?.is_some_and(|about| about.is_file))
}

/// Makes sure that nothing but a plain file stands under a name, or nothing.
///
/// # Errors
/// `InvalidInput` where it is a link, a folder or something odd; what the system says.
pub(super) fn nothing_but_a_file(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    no_link(disk, path)?;
    file_or_nothing(disk, path)
}

/// Makes sure that nothing but a file stands under a name, through links, or nothing.
///
/// # Errors
/// `InvalidInput` where it is a folder or something odd; what the system says.
pub(super) fn file_or_nothing(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    match disk.about(path)? {
        Some(about) if !about.is_file => Err(odd(say!("file-is-no-file"))),
        _ => Ok(()),
    }
}

/// Removes a link, whatever it leads to; fine where there is none.
pub(super) fn clear_link(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    if disk.target(path)?.is_some() { clear(disk, path) } else { Ok(()) }
}

/// Makes sure that a name is no link.
///
/// # Errors
/// `InvalidInput` where it is one; what the system says.
pub(super) fn no_link(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    if disk.target(path)?.is_some() { Err(odd(say!("file-is-link"))) } else { Ok(()) }
}

fn odd(what: &str) -> io::Error {
    io::Error::new(io::ErrorKind::InvalidInput, what)
}

/// Removes a file; fine where there is none.
pub(super) fn clear(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    match disk.remove(path) {
        Err(error) if is_missing(&error) => Ok(()),
        result => result,
    }
}

/// Whether the error says that nothing is there.
pub(super) fn is_missing(error: &io::Error) -> bool {
    error.kind() == io::ErrorKind::NotFound
}

/// The folder that a file is in.
pub(super) fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|f| !f.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// Waits until the names in a folder are on the disk, where the file system can say so at all; not every share can.
pub(super) fn sync_names(disk: &dyn Disk, folder: &Path) -> io::Result<()> {
    match disk.sync_folder(folder) {
        Err(error) if matches!(error.kind(), io::ErrorKind::Unsupported | io::ErrorKind::InvalidInput) => Ok(()),
        result => result,
    }
}
