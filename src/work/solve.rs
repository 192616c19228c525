//! Planning an order in the background.

use super::order::{Effort, Task, find_task};
use crate::insight::CrewOrder;
use crate::job::Revision;
use crate::say;
use crate::words::taking_along;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::task::Waker;
use std::thread::{self, JoinHandle};

/// A run in progress. Dropping it stops it.
#[derive(Debug)]
pub struct SolveRun {
    /// The job that it works for.
    pub revision: Revision,
    stop: Arc<AtomicBool>,
    messages: Receiver<Progress>,
    thread: Option<JoinHandle<()>>,
}

/// What a run has to say.
#[derive(Debug, Clone)]
pub enum Progress {
    /// A better order.
    Improved(CrewOrder),
    /// The end, with the best order.
    Done(CrewOrder),
    /// There is no order, and why.
    Impossible(Vec<String>),
    /// The planner failed; the message is for a person.
    Failed(String),
}

impl SolveRun {
    /// Starts planning; `waker` is woken after every message.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(task: Task, revision: Revision, effort: Effort, waker: Waker) -> std::io::Result<Self> {
        let stop = Arc::new(AtomicBool::new(false));
        let (send, messages) = sync_channel(64);
        let stopped = Arc::clone(&stop);
        let thread = thread::Builder::new().name("plan-order".to_owned()).spawn(taking_along(move || {
            let improved = |order| {
                // A full channel or a reader that is gone both mean: nobody needs this one, a better one follows.
                drop(send.try_send(Progress::Improved(order)));
                waker.wake_by_ref();
            };
            let end = match find_task(&task, effort, &stopped, &improved) {
                Ok(order) => Progress::Done(order),
                Err(reasons) => Progress::Impossible(reasons),
            };
            // The end must arrive, so wait for room; a reader that is gone is fine.
            drop(send.send(end));
            waker.wake_by_ref();
        }))?;
        Ok(Self { revision, stop, messages, thread: Some(thread) })
    }

    /// The next message, if there is one. A planner that died says so once.
    pub fn next_message(&mut self) -> Option<Progress> {
        match self.messages.try_recv() {
            Ok(message) => Some(message),
            Err(TryRecvError::Empty) => None,
            Err(TryRecvError::Disconnected) => {
                let cause = self.thread.take()?.join().err()?;
                let text = cause.downcast_ref::<String>().map(String::as_str);
                let text = text.or_else(|| cause.downcast_ref::<&str>().copied()).unwrap_or(say!("work-no-reason"));
                Some(Progress::Failed(say!("work-planner-stopped", why = text)))
            }
        }
    }
}

impl Drop for SolveRun {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}
