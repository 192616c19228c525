//! Below the map: the lanes of an order, or how a learner gets on.

use super::{lanes, plot};
use crate::gui::action::{Action, Model};
use crate::gui::practice::Stage;
use eframe::egui::Ui;

/// Draws what belongs to the stage.
pub(in crate::gui) fn practice_below_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    match &m.practice.stage {
        Stage::Laying(laying) => lanes::lanes_ui(ui, m, laying, out),
        _ => plot::plot_ui(ui, m),
    }
}
