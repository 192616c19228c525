//! The bar at the top: which job this is, and what can be done with it as a whole.

use super::action::{Action, Effect, Model};
use super::theme;
use crate::job::Document;
use eframe::egui::{self, Button, Ui};

/// Draws the bar.
pub(super) fn top_bar_ui(ui: &mut Ui, m: &Model<'_>, document: &Document, out: &mut Vec<Action>) {
    ui.horizontal_centered(|ui| {
        ui.label(theme::bold(&m.job.name, 16.0));
        ui.label(theme::soft(&m.job.vehicle.description));
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            let mut effect = |effect| out.push(Action::Effect(effect));
            if ui.button("Save as…").on_hover_text("Ctrl+Shift+S").clicked() {
                effect(Effect::AskSaveAs);
            }
            if ui.add_enabled(document.is_dirty(), Button::new("Save")).on_hover_text("Ctrl+S").clicked() {
                effect(Effect::Save);
            }
            if ui.button("Open…").on_hover_text("Ctrl+O").clicked() {
                effect(Effect::AskOpen);
            }
            if ui.button("New").on_hover_text("Ctrl+N").clicked() {
                effect(Effect::New);
            }
            ui.add_space(8.0);
            let redo = document.redo_label();
            let hint = redo.map_or_else(|| "Nothing to redo".to_owned(), |l| format!("Redo {l} (Ctrl+Shift+Z)"));
            if ui.add_enabled(redo.is_some(), Button::new("Redo")).on_hover_text(hint).clicked() {
                effect(Effect::Redo);
            }
            let undo = document.undo_label();
            let hint = undo.map_or_else(|| "Nothing to undo".to_owned(), |l| format!("Undo {l} (Ctrl+Z)"));
            if ui.add_enabled(undo.is_some(), Button::new("Undo")).on_hover_text(hint).clicked() {
                effect(Effect::Undo);
            }
        });
    });
}
