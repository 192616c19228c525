//! What lies on the paint already.

use crate::say;
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
            Self::Unknown => say!("job-coating-unknown"),
            Self::Nothing => say!("job-coating-nothing"),
            Self::Wax => say!("job-coating-wax"),
            Self::Sealant => say!("job-coating-sealant"),
            Self::Hard => say!("job-coating-hard"),
        }
    }

    /// What to mind, as a sentence (common practice, no source). `polished` says whether the panel is polished at all.
    pub fn caution(self, polished: bool) -> Option<&'static str> {
        match (self, polished) {
            (Self::Unknown | Self::Nothing, _) => None,
            (Self::Wax | Self::Sealant, _) => Some(say!("job-mind-wax")),
            (Self::Hard, true) => Some(say!("job-mind-polished-hard")),
            (Self::Hard, false) => Some(say!("job-mind-kept-hard")),
        }
    }
}
