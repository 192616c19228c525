//! The bar at the top: which job this is, and what can be done with it as a whole.

use super::action::{Action, Effect, Model, ViewChange};
use super::theme::{self, Theme};
use crate::geometry::Orientation;
use crate::job::Document;
use crate::vehicle::Naming;
use eframe::egui::{self, Button, Ui};

/// Draws the bar.
pub(super) fn top_bar_ui(ui: &mut Ui, m: &Model<'_>, document: &Document, out: &mut Vec<Action>) {
    // What can be pressed comes first; names take the room that is left.
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
        files(ui, document, out);
        ui.add_space(8.0);
        view_menu(ui, m, out);
        ui.add_space(8.0);
        history(ui, document, out);
        ui.add_space(8.0);
        names(ui, theme::bold(&m.job.name, 16.0), &m.job.vehicle.description);
    });
}

/// A name and something about it at the left of a bar, each cut where there is no room.
pub(super) fn names(ui: &mut Ui, name: egui::RichText, about: &str) {
    ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
        let shown = |ui: &mut Ui, text: egui::RichText| ui.add(egui::Label::new(text).truncate());
        shown(ui, name);
        if ui.available_width() > 48.0 {
            shown(ui, theme::soft(about));
        }
    });
}

/// New, open, save.
fn files(ui: &mut Ui, document: &Document, out: &mut Vec<Action>) {
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
}

/// Undo and redo, each saying what it would do.
fn history(ui: &mut Ui, document: &Document, out: &mut Vec<Action>) {
    let mut effect = |effect| out.push(Action::Effect(effect));
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
}

/// How things look: theme, size, which way the front points, names.
fn view_menu(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let mut view = |change| out.push(Action::View(change));
    ui.menu_button("View", |ui| {
        ui.set_min_width(200.0);
        let now = theme::current(ui.ctx());
        for theme in Theme::ALL {
            if ui.radio(now == theme, theme.name()).clicked() {
                view(ViewChange::Theme(theme));
            }
        }
        ui.separator();
        let now = ui.ctx().zoom_factor();
        for percent in [75.0_f32, 100.0, 125.0, 150.0, 200.0] {
            let scale = percent / 100.0;
            if ui.radio((now - scale).abs() < 0.01, format!("{percent:.0}\u{202f}%")).clicked() {
                view(ViewChange::Scale(scale));
            }
        }
        ui.separator();
        let now = m.view.viewport.map(|v| v.orientation()).unwrap_or_default();
        for (orientation, name) in [(Orientation::FrontLeft, "Front to the left"), (Orientation::FrontUp, "Front up")] {
            if ui.radio(now == orientation, name).clicked() {
                view(ViewChange::Turn(orientation));
            }
        }
        ui.separator();
        for (naming, name) in [(Naming::Uk, "Bonnet, boot, wing"), (Naming::Us, "Hood, trunk, fender")] {
            if ui.radio(m.view.naming == naming, name).clicked() {
                view(ViewChange::Naming(naming));
            }
        }
    });
}
