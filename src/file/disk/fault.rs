//! A disk that fails when it is told to.

use super::{About, Disk, Lock, RealDisk};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};

/// A disk that fails at a chosen operation, for tests: the `nth` call (from 0) and, if it stays broken, every later one.
#[derive(Debug)]
pub struct Fault {
    nth: usize,
    stays_broken: bool,
    calls: AtomicUsize,
}

impl Fault {
    /// Fails at call `nth`, counted from 0.
    pub fn at(nth: usize, stays_broken: bool) -> Self {
        Self { nth, stays_broken, calls: AtomicUsize::new(0) }
    }

    /// Whether the chosen call was reached.
    pub fn struck(&self) -> bool {
        self.calls.load(Ordering::SeqCst) > self.nth
    }

    fn step(&self) -> io::Result<()> {
        let call = self.calls.fetch_add(1, Ordering::SeqCst);
        let fails = if self.stays_broken { call >= self.nth } else { call == self.nth };
        if fails { Err(io::Error::new(io::ErrorKind::StorageFull, "no space left on device")) } else { Ok(()) }
    }
}

impl Disk for Fault {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        self.step()?;
        RealDisk.read(path, limit)
    }
    fn about(&self, path: &Path) -> io::Result<Option<About>> {
        self.step()?;
        RealDisk.about(path)
    }
    fn target(&self, path: &Path) -> io::Result<Option<PathBuf>> {
        self.step()?;
        RealDisk.target(path)
    }
    fn list(&self, folder: &Path) -> io::Result<Vec<PathBuf>> {
        self.step()?;
        RealDisk.list(folder)
    }
    fn make_folder(&self, folder: &Path) -> io::Result<()> {
        self.step()?;
        RealDisk.make_folder(folder)
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
    fn lock(&self, path: &Path, holder: &str) -> io::Result<Option<Lock>> {
        self.step()?;
        RealDisk.lock(path, holder)
    }
}
