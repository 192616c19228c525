//! Planning what is left of a day, in the background.

use crate::crew::{Control, Limits, PlanRow, ProblemSpec, Replanned, Schedule, SoFar, replan, rest_of};
use crate::say;
use crate::words::taking_along;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::task::Waker;
use std::thread;
use std::time::{Duration, Instant};

/// Orders tried after each thing that happens in the bay.
pub const REST_LIMITS: Limits = Limits { nodes: Some(600), threads: 1, seed: 1 };
/// Longest search on a slow machine.
const LONGEST: Duration = Duration::from_millis(150);

/// A search for the rest of a day. Dropping it stops it.
#[derive(Debug)]
pub struct RestRun {
    stop: Arc<AtomicBool>,
    answer: Receiver<RestAnswer>,
}

/// What came of it.
#[derive(Debug, Clone)]
pub enum RestAnswer {
    /// An order for what is left, and what the search took.
    Planned(Box<Replanned>, Duration),
    /// There is none, or the planner failed; a sentence.
    None(String),
}

struct Deadline {
    started: Instant,
    stop: Arc<AtomicBool>,
}

impl Control for Deadline {
    fn should_stop(&self) -> bool {
        self.stop.load(Ordering::Relaxed) || self.started.elapsed() >= LONGEST
    }

    fn improved(&self, _: &Schedule, _: i64) {}
}

impl RestRun {
    /// Starts planning what is left of `problem`; `known` is the order people go by.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(problem: Arc<ProblemSpec>, so_far: SoFar, known: Vec<PlanRow>, waker: Waker) -> std::io::Result<Self> {
        let stop = Arc::new(AtomicBool::new(false));
        let (send, answer) = sync_channel(1);
        let control = Deadline { started: Instant::now(), stop: Arc::clone(&stop) };
        thread::Builder::new().name("plan-rest".to_owned()).spawn(taking_along(move || {
            let found = match replan(&rest_of(&problem, &so_far), &known, &REST_LIMITS, &control) {
                Ok(Some(rest)) => RestAnswer::Planned(Box::new(rest), control.started.elapsed()),
                Ok(None) => RestAnswer::None(say!("work-rest-none").to_owned()),
                Err(errors) => RestAnswer::None(errors.to_string()),
            };
            // A reader that is gone wants no answer.
            drop(send.send(found));
            waker.wake();
        }))?;
        Ok(Self { stop, answer })
    }

    /// The answer, once it is there.
    pub fn answer(&self) -> Option<RestAnswer> {
        match self.answer.try_recv() {
            Ok(answer) => Some(answer),
            Err(TryRecvError::Empty) => None,
            Err(TryRecvError::Disconnected) => Some(RestAnswer::None(say!("work-taps-safe").to_owned())),
        }
    }
}

impl Drop for RestRun {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}
