//! What there is to practise, from easy to hard.

use crate::coat::Air;
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

    /// As it stands on a button, and in the file of a learner.
    pub fn name(self) -> &'static str {
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
            Self::OneSide => "You apply and level the panels of one side by yourself.",
            Self::Alone => "You apply and level every panel by yourself.",
            Self::Partner => "One applies, the other levels, and neither gets in the other's way.",
            Self::HumidDay => "Warm, humid air: the film has to be levelled much sooner.",
            Self::Surprise => "Half is done, then one of you leaves for four minutes. Lay the rest.",
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
            Self::Both => "both of you",
            Self::Applies => "who applies",
            Self::Levels => "who levels",
        }
    }
}
