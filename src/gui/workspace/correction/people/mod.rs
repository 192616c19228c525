//! Polishing in a team: the order, what it does to hands and ears, what it uses up.

mod dilution;
mod exposure;
mod order;
mod stops;
mod supplies;

pub(super) use order::panel_ui;

use crate::gui::action::{Action, Model};
use crate::insight::polish_cautions;
use eframe::egui::{self, Ui};

/// The order in figures, then hands and ears.
pub(super) fn order_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    order::whole_ui(ui, m);
    exposure::exposure_ui(ui, m);
    let cautions = polish_cautions(m.job, m.template, m.insight);
    details(ui, &format!("What to mind ({})", cautions.len()), |ui| {
        for caution in &cautions {
            ui.label(caution);
        }
        ui.label(crate::gui::theme::soft("Local rules and the makers’ sheets come first."));
    });
    stops::stops_ui(ui, m, out);
}

/// What is used up, prices, dilution.
pub(super) fn shop_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    details(ui, "Materials", |ui| supplies::supplies_ui(ui, m, out));
    details(ui, "Cost, for the shop only", |ui| supplies::cost_ui(ui, m, out));
    details(ui, "Dilution", |ui| dilution::dilution_ui(ui, m, out));
}

/// Something that is closed until somebody wants it.
fn details(ui: &mut Ui, title: &str, add: impl FnOnce(&mut Ui)) {
    let salt = title.split(" (").next().unwrap_or(title);
    egui::CollapsingHeader::new(title).id_salt(salt).show(ui, add);
}
