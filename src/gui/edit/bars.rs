//! What stands above and below the map while the vehicle is changed, and the keys.

use super::wish::VehicleWish;
use super::{Editing, floor};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::commands::is_pressed;
use crate::gui::theme;
use crate::gui::top_bar::names;
use crate::gui::view_state::Tool;
use crate::say;
use eframe::egui::{self, Button, Panel, Ui};

/// Room for the list of what was done.
const LIST_WIDTH: f32 = 312.0;

/// The bar at the top: what is being changed, undo and redo.
pub(in crate::gui) fn top_ui(ui: &mut Ui, m: &Model<'_>, editing: &Editing, out: &mut Vec<Action>) {
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
        let mut wish = |wish| out.push(Action::Vehicle(wish));
        let redo = editing.history.what_was_undone();
        let hint =
            redo.map_or_else(|| say!("edit-nothing-to-redo").to_owned(), |what| say!("edit-redo-what", what = what));
        if ui.add_enabled(redo.is_some(), Button::new(say!("edit-redo"))).on_hover_text(hint).clicked() {
            wish(VehicleWish::Redo);
        }
        let undo = editing.history.what_was_done().next_back();
        let hint =
            undo.map_or_else(|| say!("edit-nothing-to-undo").to_owned(), |what| say!("edit-undo-what", what = what));
        if ui.add_enabled(undo.is_some(), Button::new(say!("edit-undo"))).on_hover_text(hint).clicked() {
            wish(VehicleWish::Undo);
        }
        ui.add_space(8.0);
        let name = theme::bold(say!("edit-editing", vehicle = &m.template.name), 16.0);
        names(ui, name, say!("edit-not-saved-yet"));
    });
}

/// The floor, and what was done so far.
pub(in crate::gui) fn below_ui(ui: &mut Ui, m: &Model<'_>, editing: &Editing, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let frame = egui::Frame::new().fill(p.sheet).inner_margin(egui::Margin::symmetric(16, 8));
    Panel::right("changes").exact_size(LIST_WIDTH).resizable(false).frame(frame).show(ui, |ui| {
        ui.label(theme::bold(say!("edit-changes"), 14.0));
        egui::ScrollArea::vertical().stick_to_bottom(true).auto_shrink([false, false]).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let mut none = true;
            for (index, what) in editing.history.what_was_done().enumerate() {
                none = false;
                ui.label(theme::soft(format!("{}. {what}", index + 1)));
            }
            if none {
                ui.label(theme::soft(say!("edit-no-changes")));
            }
        });
    });
    let floor = egui::Frame::new().fill(p.sheet);
    egui::CentralPanel::default().frame(floor).show(ui, |ui| floor::floor_ui(ui, m, editing, out));
}

/// Whether the vehicle being changed is one of the user's own.
pub(super) fn is_own(m: &Model<'_>) -> bool {
    m.bodies.iter().any(|l| l.own && l.id == m.template.id)
}

/// Keys while the vehicle is changed.
pub(in crate::gui) fn shortcuts(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if is_pressed(ui, "save") {
        out.push(Action::Vehicle(if is_own(m) { VehicleWish::AskReplace } else { VehicleWish::AskName }));
    }
    // A text field that is being typed in takes back its own letters.
    if ui.text_edit_focused() {
        return;
    }
    if is_pressed(ui, "redo") {
        out.push(Action::Vehicle(VehicleWish::Redo));
    } else if is_pressed(ui, "undo") {
        out.push(Action::Vehicle(VehicleWish::Undo));
    }
    if is_pressed(ui, "let-go") {
        if m.view.tool == Tool::Cut {
            out.push(Action::View(ViewChange::Tool(Tool::Choose)));
        } else {
            out.push(Action::View(ViewChange::Choose(None)));
            out.push(Action::Vehicle(VehicleWish::ChooseStance(None)));
        }
    }
    if is_pressed(ui, "fit") {
        out.push(Action::View(ViewChange::Fit));
    }
    if is_pressed(ui, "fit-chosen") {
        out.push(Action::View(ViewChange::FitChosen));
    }
}
