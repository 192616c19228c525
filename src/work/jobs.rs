//! Looking through a folder of jobs in the background: the first time it has to read every file.

use crate::file::{FolderOfJobs, Listing, Reading, RealDisk, why};
use crate::say;
use crate::words::taking_along;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::task::Waker;
use std::thread;

/// Files between two words about how far it is.
const EVERY: usize = 64;

/// A folder being looked through. Dropping it ends the work.
#[derive(Debug)]
pub struct JobsRun {
    messages: Receiver<Message>,
    stop: Arc<AtomicBool>,
    /// How far it is.
    pub reading: Reading,
}

#[derive(Debug)]
enum Message {
    Reading(Reading),
    Listed(Result<Listing, String>),
}

impl JobsRun {
    /// Starts; `waker` is woken whenever there is something to say.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(folder: FolderOfJobs, waker: Waker) -> std::io::Result<Self> {
        let (send, messages) = sync_channel(64);
        let stop = Arc::new(AtomicBool::new(false));
        let stopped = Arc::clone(&stop);
        thread::Builder::new().name("list-jobs".to_owned()).spawn(taking_along(move || {
            let mut read = 0;
            let mut go_on = |reading: Reading| {
                read += 1;
                if read % EVERY == 1 && send.try_send(Message::Reading(reading)).is_ok() {
                    waker.wake_by_ref();
                }
                !stopped.load(Ordering::Relaxed)
            };
            let listed = folder.list(&RealDisk, &mut go_on).map_err(|e| why(&e));
            // A window that is gone needs no answer.
            drop(send.send(Message::Listed(listed)));
            waker.wake_by_ref();
        }))?;
        Ok(Self { messages, stop, reading: Reading::default() })
    }

    /// The list once it is there, or why there is none; nothing while it is being made.
    pub fn listed(&mut self) -> Option<Result<Listing, String>> {
        loop {
            match self.messages.try_recv() {
                Ok(Message::Reading(reading)) => self.reading = reading,
                Ok(Message::Listed(listed)) => return Some(listed),
                Err(TryRecvError::Empty) => return None,
                Err(TryRecvError::Disconnected) => return Some(Err(say!("work-listing-broke-off").to_owned())),
            }
        }
    }
}

impl Drop for JobsRun {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}
