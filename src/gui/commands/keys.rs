//! The keyboard: which commands were pressed.

use super::{WindowCommand, all};
use crate::gui::action::{Action, Model};
use crate::gui::home::HomeWish;
use eframe::egui::{Event, Key, KeyboardShortcut, Modifiers, Ui};

/// Pushes the wishes of the commands that were pressed. While somebody types into a field, keys that a field uses itself are its own.
pub(in crate::gui) fn pressed(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let counts = |event: &Event| matches!(event, Event::Key { pressed: true, .. } | Event::Copy | Event::Paste(_));
    if !ui.input(|i| i.events.iter().any(counts)) {
        return;
    }
    let typing = ui.text_edit_focused();
    let mut keys: Vec<(KeyboardShortcut, &WindowCommand)> =
        all().flat_map(|command| command.keys.iter().map(move |keys| (*keys, command))).collect();
    // With Ctrl and Shift held, a key is not the one with Ctrl alone.
    keys.sort_by_key(|(keys, _)| std::cmp::Reverse(held(keys.modifiers)));
    for (keys, command) in keys {
        if typing && belongs_to_fields(keys) {
            continue;
        }
        if was_pressed(ui, keys) && (command.usable)(m).is_ok() {
            out.push((command.wish)(m));
        }
    }
    if !typing {
        clipboard(ui, m, out);
    }
}

fn held(modifiers: Modifiers) -> usize {
    [modifiers.command || modifiers.ctrl, modifiers.shift, modifiers.alt].into_iter().filter(|on| *on).count()
}

/// Keys that a field for text has its own use for.
fn belongs_to_fields(keys: KeyboardShortcut) -> bool {
    let function = matches!(keys.logical_key, Key::F1 | Key::F11);
    let own = matches!(keys.logical_key, Key::Z | Key::Y | Key::C | Key::V | Key::X | Key::A);
    (keys.modifiers.is_none() && !function) || (keys.modifiers.command && own)
}

/// Whether the keys of a command were pressed; for a place that has its own meaning for them.
pub(in crate::gui) fn is_pressed(ui: &Ui, id: &str) -> bool {
    super::by_id(id).is_some_and(|command| command.keys.iter().any(|keys| was_pressed(ui, *keys)))
}

fn was_pressed(ui: &Ui, keys: KeyboardShortcut) -> bool {
    if keys.modifiers.is_none() {
        // Others look for Escape too, so it is left where it is.
        return ui.input(|i| i.key_pressed(keys.logical_key) && i.modifiers.is_none());
    }
    ui.input_mut(|i| i.consume_shortcut(&keys))
}

/// The system turns the keys for copying and pasting into these.
fn clipboard(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let events = ui.input(|i| i.events.clone());
    for event in events {
        match event {
            Event::Copy => out.extend(super::by_id("copy").map(|copy| (copy.wish)(m))),
            Event::Paste(text) if !text.trim().is_empty() => out.push(Action::Home(HomeWish::Pasted(text))),
            _ => {}
        }
    }
}
