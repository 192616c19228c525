//! Exercises are made in the background: the planner has to know the best answer before anybody is asked.

use super::order::{Effort, StopAfter};
use crate::crew::Limits;
use crate::job::Job;
use crate::practice::{Exercise, NextRound, PolishRound, Setup, next_rounds, polish_rounds, prepare};
use crate::say;
use crate::vehicle::{Naming, Template};
use crate::words::taking_along;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::task::Waker;
use std::thread;

/// Orders tried for the best order of an exercise, and for each place that a quick question offers.
const NODES: u64 = 400_000;
/// As `NODES`.
const QUICK_NODES: u64 = 12_000;
/// Longest search on a slow machine, in seconds.
const LONGEST_S: f64 = 20.0;
/// Questions of a round.
const QUESTIONS: usize = 5;

/// What is asked for.
#[derive(Debug, Clone)]
pub enum PracticeAsk {
    /// An order to lay.
    Order(Setup),
    /// "Which panel next?", from a seed, with reasons that call panels so.
    NextPanel(u64, Naming),
    /// "How hard to polish?", from a seed.
    Polishing(u64),
}

/// What came of it.
#[derive(Debug)]
pub enum PracticeAnswer {
    /// An order to lay.
    Order(Box<Exercise>),
    /// Quick questions.
    NextPanel(Vec<NextRound>),
    /// Panels to judge.
    Polishing(Vec<PolishRound>),
    /// There is none; a sentence.
    None(String),
}

/// An exercise being made. Dropping it stops that.
#[derive(Debug)]
pub struct PracticeRun {
    stop: Arc<AtomicBool>,
    answer: Receiver<PracticeAnswer>,
}

impl PracticeRun {
    /// Starts making an exercise with the crew, product and shop of `base`.
    ///
    /// # Errors
    /// What the system says when it has no thread to give.
    pub fn start(
        base: Arc<Job>,
        template: Arc<Template>,
        ask: PracticeAsk,
        effort: Effort,
        waker: Waker,
    ) -> std::io::Result<Self> {
        let stop = Arc::new(AtomicBool::new(false));
        let (send, answer) = sync_channel(1);
        let stopped = Arc::clone(&stop);
        thread::Builder::new().name("make-exercise".to_owned()).spawn(taking_along(move || {
            // A reader that is gone wants no answer.
            drop(send.send(made(&base, &template, &ask, effort, &stopped)));
            waker.wake();
        }))?;
        Ok(Self { stop, answer })
    }

    /// The answer, once it is there.
    pub fn answer(&self) -> Option<PracticeAnswer> {
        match self.answer.try_recv() {
            Ok(answer) => Some(answer),
            Err(TryRecvError::Empty) => None,
            Err(TryRecvError::Disconnected) => Some(PracticeAnswer::None(say!("work-try-again").to_owned())),
        }
    }
}

fn made(base: &Job, template: &Arc<Template>, ask: &PracticeAsk, effort: Effort, stop: &AtomicBool) -> PracticeAnswer {
    let control = StopAfter::new(LONGEST_S, stop, &|_, _, _| ());
    let limits = |most: u64, threads| {
        let nodes = Some(effort.nodes.unwrap_or(u64::MAX).min(most));
        Limits { nodes, threads, seed: effort.seed }
    };
    match ask {
        PracticeAsk::Order(setup) => match prepare(base, template, setup, &limits(NODES, effort.threads), &control) {
            Ok(exercise) => PracticeAnswer::Order(Box::new(exercise)),
            Err(error) => PracticeAnswer::None(error.to_string()),
        },
        PracticeAsk::NextPanel(seed, naming) => {
            let limits = limits(QUICK_NODES, 1);
            match next_rounds(base, template, (*seed, QUESTIONS), *naming, &limits, &control) {
                Ok(rounds) => PracticeAnswer::NextPanel(rounds),
                Err(error) => PracticeAnswer::None(error.to_string()),
            }
        }
        PracticeAsk::Polishing(seed) => match polish_rounds(base, template, *seed, QUESTIONS) {
            rounds if rounds.is_empty() => PracticeAnswer::None(say!("work-gauge-reads-none").to_owned()),
            rounds => PracticeAnswer::Polishing(rounds),
        },
    }
}

impl Drop for PracticeRun {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}
