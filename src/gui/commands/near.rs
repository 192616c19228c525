//! Commands as buttons.

use super::by_id;
use crate::gui::action::{Action, Model};
use crate::say;
use eframe::egui::{Button, Response, Ui};

/// A button of a command; it says why where it can't be pressed.
pub(in crate::gui) fn button(ui: &mut Ui, m: &Model<'_>, id: &str, out: &mut Vec<Action>) {
    button_saying(ui, m, id, None, out);
}

/// The same with its own words for what it does just now.
pub(in crate::gui) fn button_saying(ui: &mut Ui, m: &Model<'_>, id: &str, says: Option<&str>, out: &mut Vec<Action>) {
    let Some(command) = by_id(id) else { return };
    let usable = (command.usable)(m);
    let asks = matches!(id, "open" | "save-as" | "import" | "all-jobs" | "preferences");
    let name = command.name();
    let name = if asks { say!("command-with-dots", name = name) } else { name.to_owned() };
    let response = ui.add_enabled(usable.is_ok(), Button::new(name));
    let hint = match (says, command.keys_in_words()) {
        (Some(says), keys) if !keys.is_empty() => format!("{says} ({keys})"),
        (Some(says), _) => says.to_owned(),
        (None, _) => command.hint(),
    };
    let response: Response = match usable {
        Ok(()) => response.on_hover_text(hint),
        Err(why) => response.on_disabled_hover_text(why),
    };
    if response.clicked() {
        out.push((command.wish)(m));
    }
}

/// A command as one of a few choices.
pub(in crate::gui) fn radio(ui: &mut Ui, m: &Model<'_>, id: &str, now: bool, out: &mut Vec<Action>) {
    let Some(command) = by_id(id) else { return };
    if ui.radio(now, command.name()).on_hover_text(command.hint()).clicked() && !now {
        out.push((command.wish)(m));
    }
}
