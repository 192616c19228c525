//! What somebody may wish for in the bay.

use crate::bay::Event;
use crate::coat::Air;
use crate::say;

/// Which work is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(in crate::gui) enum Trade {
    #[default]
    Coating,
    Polishing,
}

impl Trade {
    pub(in crate::gui) const ALL: [Self; 2] = [Self::Coating, Self::Polishing];

    /// As it stands on a button.
    pub(in crate::gui) fn name(self) -> &'static str {
        match self {
            Self::Coating => say!("bay-coating"),
            Self::Polishing => say!("bay-polishing"),
        }
    }

    /// The day of that work.
    pub(in crate::gui) fn day(self) -> &'static str {
        match self {
            Self::Coating => say!("bay-coating-day"),
            Self::Polishing => say!("bay-polishing-day"),
        }
    }
}

/// What is asked on screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::gui) enum Asking {
    /// For how long a worker leaves.
    Away(usize),
    /// What a worker takes instead.
    Other(usize),
    /// For how long everybody stops.
    Pause,
    /// What the air is now.
    Air(Air),
    /// Everything that is seldom wanted.
    More,
    /// Whether a new day shall begin.
    StartOver,
}

/// What the bay shows.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(in crate::gui) struct BayView {
    pub(in crate::gui) trade: Trade,
    pub(in crate::gui) asking: Option<Asking>,
    /// The last lap before everything is level.
    pub(in crate::gui) lap: bool,
}

/// A wish.
#[derive(Debug, Clone)]
pub(in crate::gui) enum BayWish {
    /// Begins the day.
    Begin,
    /// Tries the day without a file.
    Rehearse,
    /// A worker is done with an operation.
    Finish { worker: usize, operation: usize },
    /// Something happened.
    Note(Event),
    /// Several things happened with one tap, and are taken back with one.
    NoteAll(Vec<Event>),
    /// Asks something, or stops asking.
    Ask(Option<Asking>),
    /// Shows another work.
    Show(Trade),
    /// Shows the last lap, or the work.
    Lap(bool),
}
