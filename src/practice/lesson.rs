//! What there is to practise, from easy to hard.

use crate::coat::Air;
use crate::say;
use crate::units::{Celsius, RelativeHumidity};

/// An order to lay.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Lesson {
    /// One side of the vehicle, alone.
    OneSide,
    /// The whole vehicle, alone.
    Alone,
    /// The whole vehicle, one applies and one levels.
    Partner,
    /// The same with a short window.
    HumidDay,
    /// The second half, after somebody has just left for four minutes.
    Surprise,
}

impl Lesson {
    /// All of them, the easiest first.
    pub const ALL: [Self; 5] = [Self::OneSide, Self::Alone, Self::Partner, Self::HumidDay, Self::Surprise];

    /// As it stands on a button.
    pub fn name(self) -> &'static str {
        match self {
            Self::OneSide => say!("practice-one-side"),
            Self::Alone => say!("practice-alone"),
            Self::Partner => say!("practice-partner"),
            Self::HumidDay => say!("practice-humid-day"),
            Self::Surprise => say!("practice-surprise"),
        }
    }

    /// As it stands in the file of a learner, in any language.
    pub fn written(self) -> &'static str {
        match self {
            Self::OneSide => "One side",
            Self::Alone => "Whole vehicle alone",
            Self::Partner => "With a partner",
            Self::HumidDay => "Humid day",
            Self::Surprise => "A surprise",
        }
    }

    /// What it is about, in a sentence.
    pub fn about(self) -> &'static str {
        match self {
            Self::OneSide => say!("practice-about-one-side"),
            Self::Alone => say!("practice-about-alone"),
            Self::Partner => say!("practice-about-partner"),
            Self::HumidDay => say!("practice-about-humid-day"),
            Self::Surprise => say!("practice-about-surprise"),
        }
    }

    /// Whether one person does everything.
    pub fn is_alone(self) -> bool {
        matches!(self, Self::OneSide | Self::Alone)
    }

    /// The air that it has unless another one is asked for.
    pub fn air(self) -> Air {
        match self {
            Self::HumidDay => Air {
                air_temp_c: Celsius::of(26.0),
                humidity_pct: RelativeHumidity::of(68.0),
                surface_temp_c: Celsius::of(26.0),
                warmest_surface_temp_c: None,
            },
            _ => Air::default(),
        }
    }
}

/// For whom the learner lays the order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Part {
    /// For both.
    #[default]
    Both,
    /// For the one who applies; how the other levels is given.
    Applies,
    /// For the one who levels; how the other applies is given.
    Levels,
}

impl Part {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Both, Self::Applies, Self::Levels];

    /// As it stands in a list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Both => say!("practice-both"),
            Self::Applies => say!("practice-who-applies"),
            Self::Levels => say!("practice-who-levels"),
        }
    }
}
