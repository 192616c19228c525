//! Writing the journal of a job on a thread of its own: at once after a change, then at most every few seconds, and at once
//! when the window goes away, in whatever way.

use crate::file::{Disk, JournalHead, remove_journal, save_photo, why, write_journal};
use crate::job::{Job, PhotoId};
use crate::say;
use crate::words::taking_along;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::task::Waker;
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

/// After a failure the next attempt waits so many pauses.
const AFTER_FAILURE: u32 = 5;

/// What is unsaved.
#[derive(Debug, Clone)]
pub struct Snapshot {
    /// What it is about.
    pub head: JournalHead,
    /// The job as it is.
    pub job: Arc<Job>,
    /// Pictures that are in memory only.
    pub photos: Vec<(PhotoId, Arc<Vec<u8>>)>,
}

/// A journal being written. Dropping it writes what is left to write first.
#[derive(Debug)]
pub struct JournalRun {
    shared: Arc<Shared>,
    thread: Option<JoinHandle<()>>,
}

#[derive(Debug, Default)]
struct Shared {
    state: Mutex<State>,
    bell: Condvar,
}

#[derive(Debug, Default)]
struct State {
    wanted: Wanted,
    /// Whether a wish is being carried out.
    busy: bool,
    closing: bool,
    /// What went wrong at the last attempt.
    failure: Option<String>,
}

#[derive(Debug, Default)]
enum Wanted {
    #[default]
    Nothing,
    Write(Snapshot),
    Remove,
}

impl Shared {
    fn lock(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// Where a journal goes.
#[derive(Debug, Clone)]
struct Target {
    disk: Arc<dyn Disk>,
    journal: PathBuf,
    /// Its pictures go beside this.
    beside: PathBuf,
    pause: Duration,
    waker: Waker,
}

impl JournalRun {
    /// A journal at a place; pictures that are in memory only are kept beside `beside`. `waker` is woken when something goes wrong,
    /// and when it goes well again.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(
        disk: Arc<dyn Disk>,
        journal: PathBuf,
        beside: PathBuf,
        pause: Duration,
        waker: Waker,
    ) -> std::io::Result<Self> {
        let shared = Arc::<Shared>::default();
        let target = Target { disk, journal, beside, pause, waker };
        let theirs = Arc::clone(&shared);
        let thread = thread::Builder::new()
            .name("write-journal".to_owned())
            .spawn(taking_along(move || target.work(&theirs)))?;
        Ok(Self { shared, thread: Some(thread) })
    }

    /// Hands over what is unsaved now; what was handed over before and is not written yet is out of date.
    pub fn write(&self, snapshot: Snapshot) {
        self.want(Wanted::Write(snapshot));
    }

    /// Wants the journal gone: the job is saved, or given up on purpose.
    pub fn remove(&self) {
        self.want(Wanted::Remove);
    }

    fn want(&self, wanted: Wanted) {
        self.shared.lock().wanted = wanted;
        self.shared.bell.notify_all();
    }

    /// Whether something is still to be written.
    pub fn is_busy(&self) -> bool {
        let state = self.shared.lock();
        state.busy || !matches!(state.wanted, Wanted::Nothing)
    }

    /// What went wrong at the last attempt; the next one is on its way.
    pub fn failure(&self) -> Option<String> {
        self.shared.lock().failure.clone()
    }
}

impl Drop for JournalRun {
    fn drop(&mut self) {
        self.shared.lock().closing = true;
        self.shared.bell.notify_all();
        // It catches its own panics, so there is nothing to hear of.
        drop(self.thread.take().map(JoinHandle::join));
    }
}

impl Target {
    fn work(&self, shared: &Shared) {
        let mut due = Instant::now();
        loop {
            let mut state = shared.lock();
            loop {
                let left = due.saturating_duration_since(Instant::now());
                match state.wanted {
                    Wanted::Nothing if state.closing => return,
                    Wanted::Nothing => state = shared.bell.wait(state).unwrap_or_else(PoisonError::into_inner),
                    _ if state.closing || left.is_zero() => break,
                    _ => {
                        let waited = shared.bell.wait_timeout(state, left);
                        state = waited.unwrap_or_else(PoisonError::into_inner).0;
                    }
                }
            }
            let wanted = std::mem::take(&mut state.wanted);
            state.busy = true;
            drop(state);
            let result = catch_unwind(AssertUnwindSafe(|| self.carry_out(&wanted)));
            let failure = match result {
                Ok(result) => result.err(),
                Err(cause) => Some(say!("work-mistake", why = said(&*cause))),
            };
            let mut state = shared.lock();
            state.busy = false;
            due = Instant::now() + if failure.is_some() { self.pause * AFTER_FAILURE } else { self.pause };
            // What failed is tried again, unless something newer is wanted or there is no time left.
            if failure.is_some() && !state.closing && matches!(state.wanted, Wanted::Nothing) {
                state.wanted = wanted;
            }
            let told = state.failure != failure;
            state.failure = failure;
            drop(state);
            if told {
                self.waker.wake_by_ref();
            }
        }
    }

    fn carry_out(&self, wanted: &Wanted) -> Result<(), String> {
        let disk = &*self.disk;
        match wanted {
            Wanted::Nothing => Ok(()),
            Wanted::Remove => remove_journal(disk, &self.journal).map_err(|e| why(&e)),
            Wanted::Write(snapshot) => {
                let folder = self.journal.parent().unwrap_or(Path::new(""));
                if !folder.as_os_str().is_empty() {
                    disk.make_folder(folder).map_err(|e| why(&e))?;
                }
                for (photo, bytes) in &snapshot.photos {
                    save_photo(disk, &self.beside, photo, bytes).map_err(|e| e.to_string())?;
                }
                let written = write_journal(disk, &self.journal, &snapshot.head, &snapshot.job);
                written.map(drop).map_err(|e| e.to_string())
            }
        }
    }
}

/// What a panic said.
pub(super) fn said(cause: &(dyn std::any::Any + Send)) -> &str {
    let text = cause.downcast_ref::<String>().map(String::as_str);
    text.or_else(|| cause.downcast_ref::<&str>().copied()).unwrap_or(say!("work-no-reason"))
}
