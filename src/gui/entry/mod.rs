//! Entering readings: what is being typed, where it goes, and what comes of it.
//!
//! The way round is `Model::way`; the next reading goes to its first stop that is not full, from where somebody is. Everything
//! happens in the order it was typed, since a gauge that types can send several readings within one picture.

mod carry_out;
mod keys;
mod next;

pub(super) use keys::keys;
pub(super) use next::{NextReading, Progress, next_reading, number_of, progress};

use crate::units::ThicknessUnit;
use eframe::egui;
use std::collections::BTreeSet;

/// What a person or a gauge typed or pressed.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum EntryWish {
    /// More of a number.
    Type(String),
    /// The number is complete.
    Take,
    /// The last digit goes; where there is none, the last reading.
    Back,
    /// All digits go.
    Clear,
    /// Leave this spot for later.
    Skip,
    /// Back to the first spot that was skipped.
    Skipped,
    /// Measure this spot again: its readings go; where it has none, those of the spot before.
    Repeat,
    /// On to the next open spot, or back to the one before.
    Step { forward: bool },
    /// The unit that the gauge shows.
    Unit(ThicknessUnit),
    /// Large keys on the screen.
    Pad(bool),
}

/// Where somebody is with their readings.
#[derive(Debug, Clone, Default)]
pub(super) struct Entry {
    /// The number so far.
    pub(super) draft: String,
    /// The unit of what is typed; the job keeps micrometres.
    pub(super) unit: ThicknessUnit,
    /// Whether the large keys are shown.
    pub(super) pad: bool,
    /// The stop that was gone to, by its place in the way.
    pub(super) at: Option<usize>,
    /// The stop that was read last.
    pub(super) last: Option<usize>,
    /// Stops left for later.
    pub(super) skipped: BTreeSet<usize>,
    /// What was wrong with the last number, or what to look at.
    pub(super) said: Option<String>,
}

impl Entry {
    /// Another vehicle has other stops.
    pub(super) fn forget_places(&mut self) {
        let Self { unit, pad, .. } = *self;
        *self = Self { unit, pad, ..Self::default() };
    }
}

/// The field that shows what is typed.
pub(super) fn field() -> egui::Id {
    egui::Id::unique("reading-field")
}
