//! A disk in memory that remembers what a power cut leaves: bytes that were synced, names whose folder was synced, and of
//! everything else any part.
//!
//! Stricter than the file systems people have: syncing a file does not sync its name, and names that were not synced may be kept
//! in any selection (POSIX, fsync, rename; "All file systems are not created equal", Pillai et al., OSDI 2014). Folders are taken to
//! be there at once.

use lapwright::file::{About, Disk, Lock};
use std::collections::{BTreeMap, BTreeSet};
use std::io::{Error, ErrorKind, Result};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard};

/// Changes of names that belong together.
type NameChange = Vec<(PathBuf, Option<usize>)>;

#[derive(Debug, Clone, Default)]
struct Inner {
    /// Bytes as they are, and as they were synced.
    files: Vec<(Vec<u8>, Option<Vec<u8>>)>,
    names: BTreeMap<PathBuf, usize>,
    synced_names: BTreeMap<PathBuf, usize>,
    pending: Vec<NameChange>,
    steps: usize,
    cut_at: Option<usize>,
    forgets_files: bool,
    forgets_folders: bool,
}

/// The disk.
#[derive(Debug, Default)]
pub(crate) struct ModelDisk(Mutex<Inner>);

/// More changes of names than this, and a selection of the selections is looked at.
const MOST_CHANGES: usize = 8;

impl ModelDisk {
    /// One that says that it synced a file, and did not.
    pub(crate) fn that_forgets_files() -> Self {
        Self(Mutex::new(Inner { forgets_files: true, ..Inner::default() }))
    }

    /// One that says that it synced a folder, and did not.
    pub(crate) fn that_forgets_folders() -> Self {
        Self(Mutex::new(Inner { forgets_folders: true, ..Inner::default() }))
    }

    /// The same disk, cut off before a step. Everything on it is synced.
    pub(crate) fn cut_at(&self, step: usize) -> Self {
        let inner = self.lock().clone();
        Self(Mutex::new(Inner { steps: 0, cut_at: Some(step), ..inner }))
    }

    /// Steps taken so far.
    pub(crate) fn steps(&self) -> usize {
        self.lock().steps
    }

    /// Every disk that a power cut now may leave.
    pub(crate) fn after_power_cut(&self) -> Vec<Self> {
        let inner = self.lock();
        let count = inner.pending.len();
        let all = 1_usize << count.min(MOST_CHANGES);
        let mut seen = BTreeSet::new();
        let mut found = Vec::new();
        for selection in 0..all {
            let mut names = inner.synced_names.clone();
            for (number, change) in inner.pending.iter().enumerate() {
                // Beyond the most, the last bit goes for all that follow.
                if selection >> number.min(MOST_CHANGES - 1) & 1 == 1 {
                    for (name, file) in change {
                        match file {
                            Some(file) => names.insert(name.clone(), *file),
                            None => names.remove(name),
                        };
                    }
                }
            }
            // What was not synced of a file: nothing, half, or all of it.
            for part in 0..3 {
                let bytes = |(now, synced): &(Vec<u8>, Option<Vec<u8>>)| match synced {
                    Some(synced) if synced == now => now.clone(),
                    Some(synced) if part == 0 => synced.clone(),
                    _ => now[..now.len() * part / 2].to_vec(),
                };
                let content: BTreeMap<_, _> = names.iter().map(|(n, f)| (n.clone(), bytes(&inner.files[*f]))).collect();
                if seen.insert(content.clone()) {
                    found.push(Self::of(content));
                }
            }
        }
        found
    }

    fn of(content: BTreeMap<PathBuf, Vec<u8>>) -> Self {
        let mut inner = Inner::default();
        for (name, bytes) in content {
            inner.names.insert(name, inner.files.len());
            inner.files.push((bytes.clone(), Some(bytes)));
        }
        inner.synced_names.clone_from(&inner.names);
        Self(Mutex::new(inner))
    }

    fn lock(&self) -> MutexGuard<'_, Inner> {
        self.0.lock().expect("one thread")
    }
}

impl Inner {
    fn step(&mut self) -> Result<()> {
        if self.cut_at.is_some_and(|cut| self.steps >= cut) {
            return Err(Error::other("the power is gone"));
        }
        self.steps += 1;
        Ok(())
    }

    fn find(&self, path: &Path) -> Result<usize> {
        self.names.get(path).copied().ok_or_else(|| ErrorKind::NotFound.into())
    }

    fn change(&mut self, change: NameChange) -> Result<()> {
        self.step()?;
        for (name, file) in &change {
            match file {
                Some(file) => self.names.insert(name.clone(), *file),
                None => self.names.remove(name),
            };
        }
        self.pending.push(change);
        Ok(())
    }

    fn write(&mut self, file: usize, bytes: &[u8]) -> Result<()> {
        let before = self.files[file].0.len();
        for part in [bytes.len() / 2, bytes.len()] {
            self.step()?;
            let now = &mut self.files[file].0;
            now.truncate(before);
            now.extend_from_slice(&bytes[..part]);
        }
        self.step()?;
        let (now, synced) = &mut self.files[file];
        if !self.forgets_files {
            *synced = Some(now.clone());
        }
        Ok(())
    }

    fn create(&mut self, path: &Path) -> Result<usize> {
        self.files.push((Vec::new(), None));
        let file = self.files.len() - 1;
        self.change(vec![(path.to_owned(), Some(file))])?;
        Ok(file)
    }
}

impl Disk for ModelDisk {
    fn read(&self, path: &Path, limit: u64) -> Result<Vec<u8>> {
        let inner = self.lock();
        let bytes = &inner.files[inner.find(path)?].0;
        Ok(bytes[..bytes.len().min(limit as usize)].to_vec())
    }

    fn about(&self, path: &Path) -> Result<Option<About>> {
        let inner = self.lock();
        let about = |file: usize| {
            let len = inner.files[file].0.len() as u64;
            About { is_file: true, len, modified: None, protected: false }
        };
        Ok(inner.find(path).ok().map(about))
    }

    fn target(&self, _: &Path) -> Result<Option<PathBuf>> {
        Ok(None)
    }

    fn list(&self, folder: &Path) -> Result<Vec<PathBuf>> {
        let found: Vec<_> = self.lock().names.keys().filter(|n| n.parent() == Some(folder)).cloned().collect();
        if found.is_empty() { Err(ErrorKind::NotFound.into()) } else { Ok(found) }
    }

    fn make_folder(&self, _: &Path) -> Result<()> {
        Ok(())
    }

    fn write_new(&self, path: &Path, bytes: &[u8], _: &Path) -> Result<()> {
        let mut inner = self.lock();
        if inner.names.contains_key(path) {
            return Err(ErrorKind::AlreadyExists.into());
        }
        let file = inner.create(path)?;
        inner.write(file, bytes)
    }

    fn append(&self, path: &Path, bytes: &[u8]) -> Result<()> {
        let mut inner = self.lock();
        let file = inner.find(path).or_else(|_| inner.create(path))?;
        inner.write(file, bytes)
    }

    fn link(&self, from: &Path, to: &Path) -> Result<()> {
        let mut inner = self.lock();
        let file = inner.find(from)?;
        if inner.names.contains_key(to) {
            return Err(ErrorKind::AlreadyExists.into());
        }
        inner.change(vec![(to.to_owned(), Some(file))])
    }

    fn rename(&self, from: &Path, to: &Path) -> Result<()> {
        let mut inner = self.lock();
        let file = inner.find(from)?;
        // Two names of one file: nothing happens (POSIX, rename).
        if inner.names.get(to) == Some(&file) {
            return inner.step();
        }
        inner.change(vec![(from.to_owned(), None), (to.to_owned(), Some(file))])
    }

    fn remove(&self, path: &Path) -> Result<()> {
        let mut inner = self.lock();
        inner.find(path)?;
        inner.change(vec![(path.to_owned(), None)])
    }

    fn sync_folder(&self, folder: &Path) -> Result<()> {
        let mut inner = self.lock();
        inner.step()?;
        if inner.forgets_folders {
            return Ok(());
        }
        let pending = std::mem::take(&mut inner.pending);
        let (synced, left): (Vec<_>, Vec<_>) =
            pending.into_iter().partition(|change| change.iter().all(|(name, _)| name.parent() == Some(folder)));
        inner.pending = left;
        for (name, file) in synced.into_iter().flatten() {
            match file {
                Some(file) => inner.synced_names.insert(name, file),
                None => inner.synced_names.remove(&name),
            };
        }
        Ok(())
    }

    fn lock(&self, _: &Path, _: &str) -> Result<Option<Lock>> {
        Err(ErrorKind::Unsupported.into())
    }
}
