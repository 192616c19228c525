//! Every command of the window, once: its name, what it does, its keys, when it can be used, and the wish that it pushes.
//!
//! The keyboard, the bar at the top, the search for commands and the help page are all made from [`all`]. A command that is not in
//! the list has no key and no place in the help.

mod find;
mod go;
mod help;
mod help_text;
mod job;
mod keys;
mod look;
mod near;
mod work;

pub(super) use find::{Find, find_button, find_button_id, find_ui};
pub(super) use help::help_ui;
pub(super) use keys::{is_pressed, pressed};
pub(super) use near::{button, button_saying, radio};

use super::action::{Action, Model};
use crate::say;
use crate::words::text;
use eframe::egui::{KeyboardShortcut, ModifierNames, Modifiers};

/// Where a command stands in the help.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Group {
    Job,
    Go,
    Map,
    Work,
    Look,
}

impl Group {
    /// All of them, in the order of the help.
    pub(super) const ALL: [Self; 5] = [Self::Job, Self::Go, Self::Map, Self::Work, Self::Look];

    /// As a heading.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Job => say!("command-group-job"),
            Self::Go => say!("command-group-go"),
            Self::Map => say!("command-group-map"),
            Self::Work => say!("command-group-work"),
            Self::Look => say!("command-group-look"),
        }
    }
}

/// Something that the window can do.
pub(super) struct WindowCommand {
    /// Tells it from all others.
    pub(super) id: &'static str,
    pub(super) group: Group,
    /// The first is the one that is shown.
    pub(super) keys: &'static [KeyboardShortcut],
    /// Whether it may be used now, or why not, as a sentence.
    pub(super) usable: fn(&Model<'_>) -> Result<(), &'static str>,
    /// What it asks for.
    pub(super) wish: fn(&Model<'_>) -> Action,
}

impl WindowCommand {
    /// As it stands on a button, without dots.
    pub(super) fn name(&self) -> &'static str {
        text(&format!("command-{}", self.id))
    }

    /// What it does, as one sentence.
    pub(super) fn does(&self) -> &'static str {
        text(&format!("command-{}-does", self.id))
    }

    /// Its keys as they stand on them, nothing where it has none.
    pub(super) fn keys_in_words(&self) -> String {
        self.keys.first().copied().map(in_words).unwrap_or_default()
    }

    /// What a pointer that rests on its button reads.
    pub(super) fn hint(&self) -> String {
        match self.keys_in_words() {
            keys if keys.is_empty() => self.does().to_owned(),
            keys => format!("{} ({keys})", self.does().trim_end_matches('.')),
        }
    }
}

/// A shortcut as it stands on the keys.
pub(super) fn in_words(keys: KeyboardShortcut) -> String {
    let names =
        ModifierNames { ctrl: say!("command-key-ctrl"), shift: say!("command-key-shift"), ..ModifierNames::NAMES };
    // The sign is what stands on the key.
    keys.format(&names, cfg!(target_os = "macos")).replace("Comma", ",")
}

/// Every command, in the order of the help.
pub(super) fn all() -> impl Iterator<Item = &'static WindowCommand> {
    [job::COMMANDS, go::COMMANDS, work::COMMANDS, look::COMMANDS].into_iter().flatten()
}

/// The command with an id.
pub(super) fn by_id(id: &str) -> Option<&'static WindowCommand> {
    all().find(|c| c.id == id)
}

/// Id and name of every command, in the order of the help; for tests.
pub fn command_names() -> impl Iterator<Item = (&'static str, &'static str)> {
    all().map(|command| (command.id, command.name()))
}

/// Every shortcut as it stands on the keys, with the id of its command; for tests.
pub fn command_keys() -> impl Iterator<Item = (&'static str, String)> {
    all().flat_map(|command| command.keys.iter().map(move |keys| (command.id, in_words(*keys))))
}

/// Nothing held with a key.
const BARE: Modifiers = Modifiers::NONE;
/// Ctrl, or the command key where there is one.
const CTRL: Modifiers = Modifiers::COMMAND;
/// Ctrl and Shift.
const CTRL_SHIFT: Modifiers = Modifiers::COMMAND.plus(Modifiers::SHIFT);
/// Alt.
const ALT: Modifiers = Modifiers::ALT;

/// Any time.
#[expect(clippy::unnecessary_wraps, reason = "it stands where others say why not")]
fn always(_: &Model<'_>) -> Result<(), &'static str> {
    Ok(())
}

/// A key with what is held.
const fn key(held: Modifiers, key: eframe::egui::Key) -> KeyboardShortcut {
    KeyboardShortcut::new(held, key)
}
