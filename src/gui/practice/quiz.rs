//! A few questions, one after another.

use crate::practice::{NextRound, PolishRound};

/// Questions with the answers so far.
#[derive(Debug)]
pub(in crate::gui) struct Quiz<R> {
    pub(in crate::gui) rounds: Vec<R>,
    /// The one on screen; behind the last one it is over.
    pub(in crate::gui) at: usize,
    /// Answers, by question.
    pub(in crate::gui) answers: Vec<usize>,
    /// Whether a hint is shown for the question on screen.
    pub(in crate::gui) hinted: bool,
}

impl<R> Quiz<R> {
    /// The first question.
    pub(in crate::gui) fn new(rounds: Vec<R>) -> Self {
        Self { rounds, at: 0, answers: Vec::new(), hinted: false }
    }

    /// The question on screen; none at the end.
    pub(in crate::gui) fn now(&self) -> Option<&R> {
        self.rounds.get(self.at)
    }

    /// The answer given to it.
    pub(in crate::gui) fn answer(&self) -> Option<usize> {
        self.answers.get(self.at).copied()
    }

    /// Takes an answer, the first one only.
    pub(in crate::gui) fn take(&mut self, answer: usize) {
        if self.answers.len() == self.at && self.at < self.rounds.len() {
            self.answers.push(answer);
        }
    }

    /// Goes on once there is an answer; says whether that was the last question.
    pub(in crate::gui) fn go_on(&mut self) -> bool {
        if self.at < self.rounds.len() && self.answer().is_some() {
            (self.at, self.hinted) = (self.at + 1, false);
            return self.at == self.rounds.len();
        }
        false
    }
}

/// Something that an answer can be worth.
pub(in crate::gui) trait Question {
    /// From 0 to 1.
    fn worth(&self, answer: usize) -> f64;
}

impl Question for NextRound {
    fn worth(&self, answer: usize) -> f64 {
        f64::from(u8::from(self.candidates.get(answer).is_some_and(|c| c.right)))
    }
}

impl Question for PolishRound {
    fn worth(&self, answer: usize) -> f64 {
        crate::polish::Level::ALL.get(answer).map_or(0.0, |level| self.judge(*level).worth())
    }
}

impl<R: Question> Quiz<R> {
    /// Share of what could be had, in whole per cent, and how many answers were not right.
    pub(in crate::gui) fn score(&self) -> (u32, u32) {
        let worth: Vec<f64> = self.rounds.iter().zip(&self.answers).map(|(r, a)| r.worth(*a)).collect();
        let share = worth.iter().sum::<f64>() / self.rounds.len().max(1) as f64;
        let wrong = worth.iter().filter(|w| **w < 1.0).count();
        ((share * 100.0 + 1e-9).floor() as u32, wrong as u32)
    }
}
