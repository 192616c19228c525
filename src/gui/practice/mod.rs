//! Practice in the window: who practises, what is being laid or asked, and what of it is on screen.

mod carry_out;
mod laying;
mod quiz;
mod wish;

pub(super) use laying::{Laying, SPEEDS};
pub(super) use quiz::Quiz;
pub(super) use wish::PracticeWish;

use crate::coat::Air;
use crate::file::{Attempt, Learners, RealDisk};
use crate::insight::Insight;
use crate::job::Job;
use crate::practice::{Done, NextRound, Part, PolishRound};
use crate::scene::MapScene;
use crate::vehicle::Template;
use crate::work::PracticeRun;
use std::sync::Arc;

/// What is practised.
#[derive(Debug, Default)]
pub(super) enum Stage {
    /// Nothing yet: the list of exercises.
    #[default]
    Choosing,
    /// The planner works out the best answer.
    Making(Done, PracticeRun),
    /// An order is laid and played.
    Laying(Box<Laying>),
    /// "Which panel next?"
    Next(Quiz<NextRound>),
    /// "How hard to polish?"
    Polish(Quiz<PolishRound>),
}

/// Everything about practising.
#[derive(Debug, Default)]
pub(super) struct PracticeState {
    pub(super) learners: Learners,
    /// Names of all who have practised, as far as they were asked for.
    pub(super) names: Vec<String>,
    pub(super) learner: Option<String>,
    /// What the learner has done so far.
    pub(super) attempts: Vec<Attempt>,
    /// What could not be done, in words.
    pub(super) trouble: Option<String>,
    /// The vehicle, where it is not that of the job.
    pub(super) body: Option<Arc<Template>>,
    /// What follows for that vehicle with nothing known of it.
    pub(super) bare: Option<Insight>,
    pub(super) part: Part,
    /// The air, where it is not that of the lesson.
    pub(super) air: Option<Air>,
    pub(super) stage: Stage,
    /// What the map shows, the same one as long as nothing changes.
    pub(super) map: Option<Arc<MapScene>>,
}

impl PracticeState {
    /// Nobody practises yet.
    pub(super) fn new(learners: Learners) -> Self {
        Self { names: learners.list(&RealDisk), learners, ..Self::default() }
    }

    /// The best score of an exercise so far, and how often it was done.
    pub(super) fn best_of(&self, done: Done) -> Option<(u32, usize)> {
        let mine = self.attempts.iter().filter(|a| a.exercise == done.name());
        Some((mine.clone().map(|a| a.score_pct).max()?, mine.count()))
    }

    /// The exercise on screen.
    pub(super) fn doing(&self) -> Option<Done> {
        match &self.stage {
            Stage::Choosing => None,
            Stage::Making(done, _) => Some(*done),
            Stage::Laying(laying) => Some(Done::Lesson(laying.exercise.setup.lesson)),
            Stage::Next(_) => Some(Done::NextPanel),
            Stage::Polish(_) => Some(Done::Polishing),
        }
    }

    /// The order on screen.
    pub(super) fn laying(&self) -> Option<&Laying> {
        if let Stage::Laying(laying) = &self.stage { Some(laying) } else { None }
    }

    /// What follows for the vehicle on screen, where it is not the job's.
    pub(super) fn insight(&self) -> Option<&Insight> {
        match &self.stage {
            Stage::Laying(laying) => Some(&laying.exercise.insight),
            Stage::Next(quiz) => quiz.rounds.first().map(|r| &r.exercise.insight),
            Stage::Polish(quiz) => quiz.now().or(quiz.rounds.last()).map(|r| &r.whole),
            _ => self.body.as_ref().and(self.bare.as_ref()),
        }
    }

    /// The job on screen, where it is not the window's.
    pub(super) fn job(&self) -> Option<&Arc<Job>> {
        match &self.stage {
            Stage::Laying(laying) => Some(&laying.exercise.job),
            Stage::Next(quiz) => quiz.rounds.first().map(|r| &r.exercise.job),
            Stage::Polish(quiz) => quiz.now().or(quiz.rounds.last()).map(|r| &r.job),
            _ => None,
        }
    }

    /// The vehicle on screen, where it is not that of the job.
    pub(super) fn template(&self) -> Option<&Arc<Template>> {
        match &self.stage {
            Stage::Laying(laying) => Some(&laying.exercise.template),
            Stage::Next(quiz) => quiz.rounds.first().map(|r| &r.exercise.template),
            Stage::Polish(quiz) => quiz.rounds.first().map(|r| &r.template),
            _ => self.body.as_ref(),
        }
    }
}
