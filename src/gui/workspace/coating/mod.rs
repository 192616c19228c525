//! Coating: the air, the window, the order, the coating itself.

mod air;
mod amounts;
mod choices;
mod order;
mod product;

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::section;
use eframe::egui::{self, Ui};

/// Draws the coating sheet.
pub(super) fn coating_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    air::verdict_ui(ui, m);
    section(ui, "Order");
    order::order_ui(ui, m, out);
    order::reasons_ui(ui, m);
    folded(ui, "What is asked of the order", |ui| choices::choices_ui(ui, m, out));
    folded(ui, "Who levels", |ui| choices::crew_ui(ui, m, out));
    section(ui, "Air");
    air::air_ui(ui, m, out);
    air::window_ui(ui, m, out);
    section(ui, "Coating");
    product::product_ui(ui, m, out);
    folded(ui, "How much is needed", |ui| amounts::amounts_ui(ui, m));
    section(ui, "Step by step");
    order::rows_ui(ui, m, out);
}

/// Something that is closed until somebody wants it.
fn folded(ui: &mut Ui, title: &str, add: impl FnOnce(&mut Ui)) {
    let salt = title.split(':').next().unwrap_or(title);
    egui::CollapsingHeader::new(theme::bold(title, 14.0)).id_salt(salt).show(ui, add);
}
