//! The few disk operations that saving needs, behind one trait so that tests can make each of them fail.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::Path;

/// What saving does to a disk. Every call either did all of it or returns the error.
pub trait Disk {
    /// Reads at most `limit` bytes.
    ///
    /// # Errors
    /// What the system says.
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>>;
    /// Writes a file that must not exist yet, and waits until its bytes are on the disk. Takes over the permissions of
    /// `like`, if that exists.
    ///
    /// # Errors
    /// What the system says.
    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> io::Result<()>;
    /// Writes bytes behind those of a file, which is made where there is none, and waits until they are on the disk.
    ///
    /// # Errors
    /// What the system says; a part of the bytes may be there.
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
    /// Removes a file.
    ///
    /// # Errors
    /// What the system says.
    fn remove(&self, path: &Path) -> io::Result<()>;
    /// Waits until the names in a folder are on the disk.
    ///
    /// # Errors
    /// What the system says.
    fn sync_folder(&self, folder: &Path) -> io::Result<()>;
}

/// The disk of this machine.
#[derive(Debug, Clone, Copy, Default)]
pub struct RealDisk;

impl Disk for RealDisk {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        let mut bytes = Vec::new();
        File::open(path)?.take(limit).read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> io::Result<()> {
        let mut file = OpenOptions::new().write(true).create_new(true).open(path)?;
        if let Ok(old) = fs::metadata(like) {
            file.set_permissions(old.permissions())?; // first, so that nobody else can read it meanwhile
        }
        file.write_all(bytes)?;
        file.sync_all()
    }

    fn append(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        let mut file = OpenOptions::new().append(true).create(true).open(path)?;
        file.write_all(bytes)?;
        file.sync_all()
    }

    fn link(&self, from: &Path, to: &Path) -> io::Result<()> {
        fs::hard_link(from, to).or_else(|_| {
            fs::copy(from, to)?;
            File::open(to)?.sync_all()
        })
    }

    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        fs::rename(from, to)
    }

    fn remove(&self, path: &Path) -> io::Result<()> {
        fs::remove_file(path)
    }

    fn sync_folder(&self, folder: &Path) -> io::Result<()> {
        if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
    }
}

/// A disk that fails at a chosen operation, for tests: the `nth` call (from 0) and, if it stays broken, every later one.
#[derive(Debug)]
pub struct Fault {
    nth: usize,
    stays_broken: bool,
    calls: std::cell::Cell<usize>,
}

impl Fault {
    /// Fails at call `nth`, counted from 0.
    pub fn at(nth: usize, stays_broken: bool) -> Self {
        Self { nth, stays_broken, calls: std::cell::Cell::new(0) }
    }

    /// Whether the chosen call was reached.
    pub fn struck(&self) -> bool {
        self.calls.get() > self.nth
    }

    fn step(&self) -> io::Result<()> {
        let call = self.calls.get();
        self.calls.set(call + 1);
        let fails = if self.stays_broken { call >= self.nth } else { call == self.nth };
        if fails { Err(io::Error::other("no space left on device")) } else { Ok(()) }
    }
}

impl Disk for Fault {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        self.step()?;
        RealDisk.read(path, limit)
    }
    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> io::Result<()> {
        if let Err(error) = self.step() {
            // A full disk takes a part of the file first.
            RealDisk.write_new(path, &bytes[..bytes.len() / 2], like)?;
            return Err(error);
        }
        RealDisk.write_new(path, bytes, like)
    }
    fn append(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        if let Err(error) = self.step() {
            RealDisk.append(path, &bytes[..bytes.len() / 2])?;
            return Err(error);
        }
        RealDisk.append(path, bytes)
    }
    fn link(&self, from: &Path, to: &Path) -> io::Result<()> {
        self.step()?;
        RealDisk.link(from, to)
    }
    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        self.step()?;
        RealDisk.rename(from, to)
    }
    fn remove(&self, path: &Path) -> io::Result<()> {
        self.step()?;
        RealDisk.remove(path)
    }
    fn sync_folder(&self, folder: &Path) -> io::Result<()> {
        self.step()?;
        RealDisk.sync_folder(folder)
    }
}
