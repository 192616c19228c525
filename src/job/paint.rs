//! What lies on the paint already.

use serde::{Deserialize, Serialize};

/// What was put on the paint before.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PreviousCoating {
    /// Nobody knows.
    #[default]
    Unknown,
    /// Nothing.
    Nothing,
    /// Wax, which wears and washes off.
    Wax,
    /// A polymer sealant.
    Sealant,
    /// A hard coating, such as a ceramic one.
    Hard,
}

impl PreviousCoating {
    /// Every one, in the order of a list to choose from.
    pub const ALL: [Self; 5] = [Self::Unknown, Self::Nothing, Self::Wax, Self::Sealant, Self::Hard];

    /// As it stands in a list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Unknown => "not known",
            Self::Nothing => "nothing",
            Self::Wax => "wax",
            Self::Sealant => "sealant",
            Self::Hard => "hard coating",
        }
    }

    /// What to mind, as a sentence (common practice, no source). `polished` says whether the panel is polished at all.
    pub fn caution(self, polished: bool) -> Option<&'static str> {
        match (self, polished) {
            (Self::Unknown | Self::Nothing, _) => None,
            (Self::Wax | Self::Sealant, _) => Some(
                "Mind: what is on the paint fills fine marks and keeps a coating from holding; take it off before judging and before coating.",
            ),
            (Self::Hard, true) => Some(
                "Mind: the gauge reads the old coating as paint, and it clogs the pad; polish it off on a test spot first and look again.",
            ),
            (Self::Hard, false) => Some(
                "Mind: the old coating stays, as nothing is polished here; a new one holds on it only if its maker says so.",
            ),
        }
    }
}
