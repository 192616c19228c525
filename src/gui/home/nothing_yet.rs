//! What to do where there is nothing yet: one sentence and the way there.

use crate::gui::action::{Action, Model};
use crate::gui::commands;
use eframe::egui::Ui;

/// A sentence and the button of a command.
pub(in crate::gui) fn nothing_yet(ui: &mut Ui, m: &Model<'_>, sentence: &str, id: &str, out: &mut Vec<Action>) {
    ui.label(sentence);
    commands::button(ui, m, id, out);
    ui.add_space(8.0);
}

/// Whether no panel has been read.
pub(in crate::gui) fn is_unread(m: &Model<'_>) -> bool {
    m.insight.panels.iter().all(|panel| panel.film.is_none())
}
