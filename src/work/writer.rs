//! Writing the taps of a day to the disk, in their order, on a thread of its own.

use super::journal::said;
use crate::bay::Entry;
use crate::file::{RealDisk, append_day};
use crate::say;
use crate::words::taking_along;
use std::collections::VecDeque;
use std::io;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, SyncSender, TryRecvError, TrySendError, sync_channel};
use std::task::Waker;
use std::thread;

/// Taps that may wait for a slow disk.
const ROOM: usize = 256;

/// Takes entries and says of each, in order, when it is on the disk. Entries given before a drop are still written.
#[derive(Debug)]
pub(super) struct Writer {
    entries: SyncSender<Entry>,
    written: Receiver<io::Result<()>>,
    waiting: VecDeque<Entry>,
}

impl Writer {
    /// A writer to a file, which is made with the first entry.
    pub(super) fn start(path: PathBuf, waker: Waker) -> io::Result<Self> {
        let (entries, to_write) = sync_channel::<Entry>(ROOM);
        let (say, written) = sync_channel(ROOM);
        thread::Builder::new().name("write-day".to_owned()).spawn(taking_along(move || {
            for entry in to_write {
                let append = || append_day(&RealDisk, &path, &entry);
                let result = catch_unwind(AssertUnwindSafe(append))
                    .unwrap_or_else(|cause| Err(io::Error::other(say!("work-mistake", why = said(&*cause)))));
                if say.send(result).is_err() {
                    continue; // nobody listens any more, but what was tapped is still written
                }
                waker.wake_by_ref();
            }
        }))?;
        Ok(Self { entries, written, waiting: VecDeque::new() })
    }

    /// Hands an entry over; false where the disk is so far behind that there is no room for more.
    pub(super) fn write(&mut self, entry: Entry) -> bool {
        match self.entries.try_send(entry.clone()) {
            Err(TrySendError::Full(_)) => return false,
            // A thread that is gone is noticed when its answer is read.
            Ok(()) | Err(TrySendError::Disconnected(_)) => self.waiting.push_back(entry),
        }
        true
    }

    pub(super) fn waiting(&self) -> &VecDeque<Entry> {
        &self.waiting
    }

    /// The next entry with what became of it.
    pub(super) fn done(&mut self) -> Option<(Entry, io::Result<()>)> {
        let result = match self.written.try_recv() {
            Ok(result) => result,
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => Err(io::Error::other(say!("work-writer-ended"))),
        };
        self.waiting.pop_front().map(|entry| (entry, result))
    }
}
