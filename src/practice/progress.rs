//! Everything that there is to practise.

use super::lesson::Lesson;
use crate::say;

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

    /// As it stands on a button.
    pub fn name(self) -> &'static str {
        match self {
            Self::Lesson(lesson) => lesson.name(),
            Self::NextPanel => say!("practice-next-panel"),
            Self::Polishing => say!("practice-how-hard"),
        }
    }

    /// As it stands in the file of a learner, in any language.
    pub fn written(self) -> &'static str {
        match self {
            Self::Lesson(lesson) => lesson.written(),
            Self::NextPanel => "Which panel next",
            Self::Polishing => "How hard to polish",
        }
    }

    /// What the file of a learner calls so, if anything.
    pub fn of_written(written: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|done| done.written() == written)
    }

    /// What it is about, in a sentence.
    pub fn about(self) -> &'static str {
        match self {
            Self::Lesson(lesson) => lesson.about(),
            Self::NextPanel => say!("practice-about-next-panel"),
            Self::Polishing => say!("practice-about-how-hard"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, within};

    /// A result of a German learner is found again by an English one.
    #[test]
    fn the_file_of_a_learner_calls_exercises_the_same_in_every_language() {
        for done in Done::ALL {
            assert_eq!(done.written(), done.name(), "British is the language of files");
            for language in Language::ALL {
                within(language, || assert_eq!(Done::of_written(done.written()), Some(done)));
            }
            assert_ne!(within(Language::German, || done.name()), done.written());
        }
        assert_eq!(Done::of_written("Something else"), None);
    }
}
