//! What a learner has done so far, as it is kept.

use super::lesson::Lesson;
use crate::units::Date;

/// What was practised.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Done {
    /// An order was laid.
    Lesson(Lesson),
    /// "Which panel next?"
    NextPanel,
    /// "How hard to polish?"
    Polishing,
}

impl Done {
    /// All of them.
    pub const ALL: [Self; 7] = [
        Self::Lesson(Lesson::OneSide),
        Self::Lesson(Lesson::Alone),
        Self::Lesson(Lesson::Partner),
        Self::Lesson(Lesson::HumidDay),
        Self::Lesson(Lesson::Surprise),
        Self::NextPanel,
        Self::Polishing,
    ];

    /// As it stands on a button, and in the file of a learner.
    pub fn name(self) -> &'static str {
        match self {
            Self::Lesson(lesson) => lesson.name(),
            Self::NextPanel => "Which panel next",
            Self::Polishing => "How hard to polish",
        }
    }

    /// What it is about, in a sentence.
    pub fn about(self) -> &'static str {
        match self {
            Self::Lesson(lesson) => lesson.about(),
            Self::NextPanel => "Five quick questions from the middle of a day: where to go now?",
            Self::Polishing => "Five panels with readings and defects: how hard may each be worked?",
        }
    }
}

/// One result of a learner.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Attempt {
    /// The day.
    pub date: Date,
    /// What was practised.
    pub done: Done,
    /// On which vehicle, by its name.
    pub vehicle: String,
    /// Share of the best possible, in whole per cent, 0 to 100.
    pub score_pct: u32,
    /// Broken rules, or wrong answers.
    pub broken: u32,
}
