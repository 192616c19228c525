//! What people tapped, in the order they did.

use crate::coat::{Air, Feel};
use crate::units::Seconds;
use serde::{Deserialize, Serialize};

/// One thing that happened. Workers and operations go by their names in the crew problem.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Event {
    /// Somebody began an operation. What they were at until then goes back to what is to do.
    Began {
        /// Who.
        worker: String,
        /// What.
        operation: String,
    },
    /// Somebody is done with what they were at.
    Finished {
        /// Who.
        worker: String,
    },
    /// Somebody laid down what they were at without finishing it.
    PutBack {
        /// Who.
        worker: String,
    },
    /// Somebody left the vehicle.
    Left {
        /// Who.
        worker: String,
        /// For how long, as far as they know.
        for_s: Seconds,
    },
    /// Somebody is back.
    Returned {
        /// Who.
        worker: String,
    },
    /// How the towel felt on a panel that was levelled.
    Felt {
        /// The operation of levelling.
        operation: String,
        /// The answer.
        feel: Feel,
    },
    /// A place of the last lap was looked at and is fine.
    Looked {
        /// Which place.
        place: String,
    },
    /// A high spot was found there.
    FoundHighSpot {
        /// Which place.
        place: String,
    },
    /// It was wet again and levelled.
    SavedHighSpot {
        /// Which place.
        place: String,
    },
    /// It is too late for that; it has to be polished.
    LeftForPolishing {
        /// Which place.
        place: String,
    },
    /// The air or the vehicle's surface is another now, as when the sun comes round.
    AirChanged {
        /// What it is from now on.
        air: Air,
    },
    /// Somebody took a fresh pad.
    PadChanged {
        /// Who.
        worker: String,
    },
    /// The order that people go by from now on: each operation with who does it.
    Agreed {
        /// (operation, worker), in the order of their beginning.
        order: Vec<(String, String)>,
    },
    /// The latest entry that still counts is taken back.
    TakenBack,
    /// Everything before belongs to another day.
    StartedOver,
}

/// An event and when it happened.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Seconds of the day's clock.
    pub at_s: Seconds,
    /// What happened.
    pub event: Event,
    /// Whether the program assumed it because the plan said so, and nobody tapped.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub assumed: bool,
}

impl Event {
    /// Whose it is, where it is somebody's.
    fn worker(&self) -> Option<&str> {
        match self {
            Self::Began { worker, .. }
            | Self::Finished { worker }
            | Self::PutBack { worker }
            | Self::Left { worker, .. }
            | Self::Returned { worker }
            | Self::PadChanged { worker } => Some(worker),
            _ => None,
        }
    }
}

/// Takes the latest tap away with what follows from it. Somebody else who began something is still at it.
fn take_back(standing: &mut Vec<&Entry>) {
    let Some(at) = standing.iter().rposition(|e| !e.assumed) else { return };
    let tap = standing.remove(at);
    let after = standing.split_off(at);
    let others = |e: &&Entry| matches!(e.event, Event::Began { .. }) && e.event.worker() != tap.event.worker();
    standing.extend(after.into_iter().filter(others));
    if standing.iter().all(|e| e.assumed) {
        standing.clear(); // nobody tapped anything, so nothing began
    }
}

/// Everything that happened on a day, oldest first. Only ever grows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Log {
    entries: Vec<Entry>,
}

impl Log {
    /// Notes something that somebody tapped. A moment before the last entry counts as that of the last entry.
    pub fn note(&mut self, at_s: Seconds, event: Event) -> &Entry {
        self.push(Entry { at_s, event, assumed: false })
    }

    /// Notes something that follows from the plan without a tap.
    pub fn assume(&mut self, at_s: Seconds, event: Event) -> &Entry {
        self.push(Entry { at_s, event, assumed: true })
    }

    /// Adds an entry as it was written; its time is held to the order.
    pub fn push(&mut self, mut entry: Entry) -> &Entry {
        entry.at_s = self.entries.last().map_or(entry.at_s, |last| entry.at_s.max(last.at_s));
        self.entries.push(entry);
        &self.entries[self.entries.len() - 1]
    }

    /// Everything that was written down, taken back or not.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The entries that count: a [`Event::TakenBack`] takes the latest tap away, and with it whatever was assumed after it, save
    /// that somebody else began something; a
    /// [`Event::StartedOver`] leaves nothing of what was before.
    pub fn standing(&self) -> Vec<&Entry> {
        let mut standing: Vec<&Entry> = Vec::with_capacity(self.entries.len());
        for entry in &self.entries {
            match entry.event {
                Event::StartedOver => standing.clear(),
                Event::TakenBack => take_back(&mut standing),
                _ => standing.push(entry),
            }
        }
        standing
    }

    /// What [`Event::TakenBack`] would take away.
    pub fn latest(&self) -> Option<&Entry> {
        self.standing().into_iter().rev().find(|e| !e.assumed)
    }

    /// The moment of the last entry, taken back or not.
    pub fn last_s(&self) -> Option<Seconds> {
        self.entries.last().map(|e| e.at_s)
    }

    /// When the day began, if it did.
    pub fn began_s(&self) -> Option<Seconds> {
        self.standing().first().map(|e| e.at_s)
    }
}
