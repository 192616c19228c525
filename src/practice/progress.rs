//! Everything that there is to practise.

use super::lesson::Lesson;

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
