//! What keeps a job safe while a window has it: the lock on its file, its journal, and what the file was when it was read.
//!
//! Nothing is asked here and nothing waits; the window asks people and says what they want.

mod found;
mod save;

pub use found::Taken;
pub use save::Obstacle;

use super::clock::{Clock, WallClock};
use super::journal::{JournalRun, Snapshot};
use crate::file::{
    Change, Disk, Fingerprint, FoundJournal, Hold, Holder, JournalHead, Lock, RealDisk, hold, journal_of,
    journal_without_file, why,
};
use crate::job::{Document, PhotoId, Revision};
use crate::say;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::task::Waker;
use std::time::Duration;

/// What a window keeps jobs with.
#[derive(Debug, Clone)]
pub struct Shelf {
    /// The disk.
    pub disk: Arc<dyn Disk>,
    /// The user's own folder for this program; without one a job without a file has no journal.
    pub data: Option<PathBuf>,
    /// Shortest time between two writes of the journal.
    pub pause: Duration,
    /// What time it is.
    pub clock: Arc<dyn Clock>,
}

impl Shelf {
    /// The disk of this machine, with a folder for what has no other place.
    pub fn new(data: Option<PathBuf>) -> Self {
        Self { disk: Arc::new(RealDisk), data, pause: Duration::from_secs(2), clock: Arc::new(WallClock) }
    }
}

/// How a window stands to the file of its job.
#[derive(Debug)]
pub enum Standing {
    /// There is no file yet, or nobody keeps watch.
    Free,
    /// The file is held against other windows.
    Ours(Lock),
    /// Another window has it.
    Others(Option<Holder>),
    /// Nothing can be written in its folder, and why.
    NoWriting(String),
    /// The file is read-only.
    Protected,
    /// A newer version of the program wrote it in this format.
    Newer(String),
    /// Locks don't work in its folder, and why; two windows can't know of each other.
    NoLocks(String),
}

impl Standing {
    /// Whether the job may be saved under its own name.
    pub fn may_write(&self) -> bool {
        matches!(self, Self::Free | Self::Ours(_) | Self::NoLocks(_))
    }
}

/// Keeps one job.
#[derive(Debug)]
pub struct Keeper {
    shelf: Option<Shelf>,
    file: Option<PathBuf>,
    print: Option<Fingerprint>,
    standing: Standing,
    /// A file that the job is about to be saved to.
    next: Option<(PathBuf, Standing)>,
    /// A journal from before, until somebody says what becomes of it; with the lock on it, where it has no file.
    found: Option<(FoundJournal, Option<Lock>)>,
    run: Option<JournalRun>,
    /// Where the journal is, once there is one, and the lock on it, where it has no file.
    journal: Option<(PathBuf, Option<Lock>)>,
    /// The state that is in the file, and the one handed over last.
    saved_at: Revision,
    /// Changes that were unsaved already when the job was taken up.
    before: u64,
    followed: Option<Revision>,
    /// Whether the job was taken up from a state that is older than what the file is now.
    older_base: bool,
    /// A change of the file that somebody saw and left.
    left: Option<Fingerprint>,
    /// Why no journal can be written, where that is so.
    failure: Option<String>,
}

impl Default for Keeper {
    /// Keeps nothing.
    fn default() -> Self {
        Self {
            shelf: None,
            file: None,
            print: None,
            standing: Standing::Free,
            next: None,
            found: None,
            run: None,
            journal: None,
            saved_at: Revision::default(),
            before: 0,
            followed: None,
            older_base: false,
            left: None,
            failure: None,
        }
    }
}

impl Keeper {
    /// Keeps a job; `print` is what its file was when it was read, `newer` its format if that is a newer one.
    pub fn new(shelf: Shelf, file: Option<&Path>, print: Option<Fingerprint>, newer: Option<String>) -> Self {
        let mut keeper = Self { shelf: Some(shelf), file: file.map(Path::to_owned), print, ..Self::default() };
        if let (Some(file), Some(shelf)) = (file, &keeper.shelf) {
            keeper.standing = stand(shelf, file, newer);
        }
        keeper
    }

    /// Lets go of the job; what is left to write is written first. Gives the shelf, for the next job.
    pub fn let_go(&mut self) -> Option<Shelf> {
        std::mem::take(self).shelf
    }

    /// How the window stands to the file.
    pub fn standing(&self) -> &Standing {
        &self.standing
    }

    /// The disk.
    pub fn disk(&self) -> Arc<dyn Disk> {
        self.shelf.as_ref().map_or_else(|| Arc::new(RealDisk) as Arc<dyn Disk>, |shelf| Arc::clone(&shelf.disk))
    }

    /// The file of the journal, once there is one.
    pub fn journal(&self) -> Option<&Path> {
        self.journal.as_ref().map(|(path, _)| path.as_path())
    }

    /// Whether something is still to be written.
    pub fn is_busy(&self) -> bool {
        self.run.as_ref().is_some_and(JournalRun::is_busy)
    }

    /// Why the journal can't be written at present; it is tried again.
    pub fn failure(&self) -> Option<String> {
        self.failure.clone().or_else(|| self.run.as_ref().and_then(JournalRun::failure))
    }

    /// The present, in seconds since 1970 (UTC).
    pub fn now_s(&self) -> i64 {
        self.shelf.as_ref().map_or_else(|| WallClock.now_s(), |shelf| shelf.clock.now_s())
    }

    /// Takes in the job as it is; `photos` are pictures that are in memory only. Cheap where nothing has changed.
    pub fn follow(
        &mut self,
        document: &Document,
        photos: impl Fn() -> Vec<(PhotoId, Arc<Vec<u8>>)>,
        waker: impl Fn() -> Waker,
    ) {
        let now = document.revision();
        // While it is open what becomes of an older journal, no new one is written over it.
        if self.shelf.is_none() || self.followed == Some(now) || self.found.is_some() {
            return;
        }
        if !document.is_dirty() {
            self.followed = Some(now);
            self.saved_at = now;
            if let Some(run) = &self.run {
                run.remove(); // everything was taken back
            }
            return;
        }
        match self.writing(&waker) {
            Ok(()) => self.failure = None,
            Err(reason) => return self.failure = Some(reason),
        }
        self.followed = Some(now);
        let changes = (self.before + now.0.saturating_sub(self.saved_at.0)).max(1);
        let file = self.file.as_deref().map(absolute);
        let head = JournalHead::new(document.job(), file.as_deref(), self.print.as_ref(), self.now_s(), changes);
        if let Some(run) = &self.run {
            run.write(Snapshot { head, job: Arc::clone(document.job()), photos: photos() });
        }
    }

    /// Makes sure that there is a thread that writes the journal.
    fn writing(&mut self, waker: &dyn Fn() -> Waker) -> Result<(), String> {
        let Some(shelf) = self.shelf.as_ref().filter(|_| self.run.is_none()) else { return Ok(()) };
        let own = self.file.as_deref().filter(|_| self.standing.may_write());
        if self.journal.is_none() {
            let place = match (own, &shelf.data) {
                (Some(file), _) => (journal_of(&*shelf.disk, file).map_err(|e| why(&e))?, None),
                (None, Some(data)) => free_journal(shelf, data)?,
                (None, None) => return Err(say!("work-no-folder").to_owned()),
            };
            self.journal = Some(place);
        }
        let Some((journal, _)) = &self.journal else { return Ok(()) };
        let beside = own.unwrap_or(journal).to_owned();
        let run = JournalRun::start(Arc::clone(&shelf.disk), journal.clone(), beside, shelf.pause, waker());
        self.run = Some(run.map_err(|e| say!("work-no-thread", why = why(&e)))?);
        Ok(())
    }

    /// Gives up what is unsaved, on purpose.
    pub fn discard(&mut self) {
        if let Some(run) = &self.run {
            run.remove();
        }
    }

    /// What became of the file since it was read or saved last. A change that was seen and left is none.
    ///
    /// # Errors
    /// What the system says.
    pub fn glance(&self) -> std::io::Result<Change> {
        let (Some(shelf), Some(file), Some(print)) = (&self.shelf, &self.file, &self.print) else {
            return Ok(Change::None);
        };
        Ok(match print.glance(&*shelf.disk, file)? {
            Change::Changed(now) if self.left == Some(now) => Change::None,
            change => change,
        })
    }

    /// Notes that somebody saw a change of the file and left it.
    pub fn leave(&mut self, change: Fingerprint) {
        self.left = Some(change);
    }

    /// Tries again to get the file that another window had. Says whether it is ours now.
    pub fn take_over(&mut self) -> bool {
        if let (Some(shelf), Some(file), Standing::Others(_)) = (&self.shelf, &self.file, &self.standing) {
            self.standing = stand(shelf, file, None);
            // The journal goes beside the file from now on; the one in the user's folder stays until the job is saved.
            if self.standing.may_write() && self.run.is_none() {
                self.journal = None;
            }
        }
        self.standing.may_write()
    }
}

/// A path from the root; as it is where there is no present folder.
fn absolute(file: &Path) -> PathBuf {
    std::path::absolute(file).unwrap_or_else(|_| file.to_owned())
}

/// How a window stands to a file.
fn stand(shelf: &Shelf, file: &Path, newer: Option<String>) -> Standing {
    if let Some(format) = newer {
        return Standing::Newer(format);
    }
    if shelf.disk.about(file).is_ok_and(|about| about.is_some_and(|about| about.protected)) {
        return Standing::Protected;
    }
    match hold(&*shelf.disk, file, &Holder::me(shelf.clock.now_s())) {
        Hold::Ours(lock) => Standing::Ours(lock),
        Hold::Others(holder) => Standing::Others(holder),
        Hold::NoWriting(error) => Standing::NoWriting(why(&error)),
        Hold::NoLocks(error) => Standing::NoLocks(why(&error)),
    }
}

/// A journal in the user's folder that no other window has, with the lock on it.
fn free_journal(shelf: &Shelf, data: &Path) -> Result<(PathBuf, Option<Lock>), String> {
    let now_s = shelf.clock.now_s();
    let stem = format!("{}-{}", super::clock::clock_stamp(now_s), std::process::id());
    for n in 1..1_000 {
        let name = if n == 1 { stem.clone() } else { format!("{stem}-{n}") };
        let path = journal_without_file(data, &name);
        if let Some(folder) = path.parent() {
            shelf.disk.make_folder(folder).map_err(|e| why(&e))?;
        }
        if shelf.disk.about(&path).map_err(|e| why(&e))?.is_some() {
            continue;
        }
        match hold(&*shelf.disk, &path, &Holder::me(now_s)) {
            Hold::Ours(lock) => return Ok((path, Some(lock))),
            Hold::NoLocks(_) => return Ok((path, None)),
            Hold::Others(_) => {}
            Hold::NoWriting(error) => return Err(why(&error)),
        }
    }
    Err(say!("work-no-name").to_owned())
}
