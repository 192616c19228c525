//! Keys that go to the readings, wherever the focus is, as long as nobody types into another field.

use super::EntryWish;
use crate::gui::action::{Action, Model};
use crate::gui::view_state::{Tool, Workspace};
use eframe::egui::{Event, Key, Modifiers, Ui};

/// Takes what belongs to the readings out of this picture's events, in the order it was typed.
///
/// Digits and signs begin a number, anything may go on with it, and carriage return, line feed or tab end it, so a gauge that
/// types like a keyboard needs nothing else. Letters are keys only while no number is begun.
pub(in crate::gui) fn keys(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if m.view.workspace != Workspace::Survey || m.view.tool != Tool::Choose || ui.text_edit_focused() {
        return;
    }
    let mut typed = m.view.entry.draft.chars().count();
    let mut wish = |wish: EntryWish, typed: &mut usize| {
        *typed = match &wish {
            EntryWish::Type(text) => *typed + text.chars().count(),
            EntryWish::Back => typed.saturating_sub(1),
            _ => 0,
        };
        out.push(Action::Entry(wish));
    };
    let on_field = ui.memory(|memory| memory.has_focus(super::field()));
    ui.input_mut(|input| {
        input.events.retain(|event| match event {
            Event::Text(text) | Event::Paste(text) => {
                let belongs =
                    typed > 0 || text.trim_start().starts_with(|c: char| c.is_ascii_digit() || "+-.,".contains(c));
                if belongs {
                    for part in text.split_inclusive(['\n', '\r', '\t']) {
                        let number = part.trim_end_matches(['\n', '\r', '\t']);
                        if !number.is_empty() {
                            wish(EntryWish::Type(number.to_owned()), &mut typed);
                        }
                        if number.len() < part.len() && typed > 0 {
                            wish(EntryWish::Take, &mut typed);
                        }
                    }
                }
                !belongs
            }
            Event::Key { key, pressed: true, modifiers, repeat, .. } if *modifiers == Modifiers::NONE => {
                let meant = match key {
                    Key::Enter | Key::Tab if typed > 0 => Some(EntryWish::Take),
                    Key::Escape if typed > 0 => Some(EntryWish::Clear),
                    Key::Backspace if typed > 0 || !repeat => Some(EntryWish::Back),
                    Key::S if typed == 0 => Some(EntryWish::Skip),
                    Key::R if typed == 0 && !repeat => Some(EntryWish::Repeat),
                    Key::B if typed == 0 => Some(EntryWish::Skipped),
                    Key::ArrowRight | Key::ArrowDown if typed == 0 && on_field => {
                        Some(EntryWish::Step { forward: true })
                    }
                    Key::ArrowLeft | Key::ArrowUp if typed == 0 && on_field => Some(EntryWish::Step { forward: false }),
                    _ => None,
                };
                meant.map(|meant| wish(meant, &mut typed)).is_none()
            }
            _ => true,
        });
    });
}
