//! Correction: what may go, what must go, what will be done, and why.

mod curve;
mod goal;
mod open_points;
mod panel;
mod people;
mod policy;
mod steps;
mod table;
mod test_spot;
mod whole;

pub(in crate::gui) use table::table_ui;

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::widgets::panel_head;
use crate::say;
use eframe::egui::Ui;

/// Draws the plan of the chosen panel, or of the whole vehicle.
pub(super) fn correction_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    match m.current() {
        Some((index, panel)) => {
            panel_head(ui, m, index, panel);
            panel::panel_ui(ui, m, index, out);
            people::panel_ui(ui, m, index, out);
            ui.add_space(8.0);
            if ui.button(say!("correction-whole-vehicle")).clicked() {
                out.push(Action::View(ViewChange::Choose(None)));
            }
        }
        None => whole::whole_ui(ui, m, out),
    }
}
