//! Taking in photographs in the background: a large one takes a good part of a second.

use super::journal::said;
use crate::file::{Disk, PICTURE_LIMIT_MIB, Picture, take_picture, why};
use crate::say;
use crate::words::taking_along;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::task::Waker;
use std::thread;

/// Photographs being taken in.
#[derive(Debug)]
pub struct PictureRun {
    messages: Receiver<Result<Picture, String>>,
}

impl PictureRun {
    /// Starts with the files in their order; `waker` is woken after each.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(disk: Arc<dyn Disk>, files: Vec<PathBuf>, waker: Waker) -> std::io::Result<Self> {
        let (send, messages) = sync_channel(4);
        thread::Builder::new().name("take-pictures".to_owned()).spawn(taking_along(move || {
            for file in files {
                let taken = catch_unwind(AssertUnwindSafe(|| take(&*disk, &file)))
                    .unwrap_or_else(|cause| Err(say!("work-mistake-with-it", why = said(&*cause))));
                let taken = taken.map_err(|reason| format!("\"{}\": {reason}", file.display()));
                if send.send(taken).is_err() {
                    return; // nobody waits for it any more
                }
                waker.wake_by_ref();
            }
            drop(send);
            waker.wake_by_ref();
        }))?;
        Ok(Self { messages })
    }

    /// The next picture, or why there is none; `Ok(None)` while it is still being worked on.
    ///
    /// # Errors
    /// When all have come.
    pub fn next_picture(&self) -> Result<Option<Result<Picture, String>>, Ended> {
        match self.messages.try_recv() {
            Ok(picture) => Ok(Some(picture)),
            Err(TryRecvError::Empty) => Ok(None),
            Err(TryRecvError::Disconnected) => Err(Ended),
        }
    }
}

/// Nothing more comes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ended;

fn take(disk: &dyn Disk, file: &Path) -> Result<Picture, String> {
    let limit = PICTURE_LIMIT_MIB * 1024 * 1024;
    let bytes = disk.read(file, limit + 1).map_err(|e| why(&e))?;
    if bytes.len() as u64 > limit {
        return Err(say!("work-picture-large", limit = PICTURE_LIMIT_MIB));
    }
    take_picture(&bytes)
}
