//! Polishing in a team: the order, what it does to hands and ears, what it uses up.

mod dilution;
mod exposure;
mod order;
mod stops;
mod supplies;

pub(super) use order::panel_ui;

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::insight::polish_cautions;
use crate::say;
use eframe::egui::{self, Ui};

/// The order in figures, then hands and ears.
pub(super) fn order_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    order::whole_ui(ui, m);
    exposure::exposure_ui(ui, m);
    let cautions = polish_cautions(m.job, m.template, m.insight);
    details(ui, "mind", &say!("correction-what-to-mind", count = cautions.len()), |ui| {
        for caution in &cautions {
            ui.label(caution);
        }
        ui.label(theme::soft(say!("correction-local-rules")));
    });
    stops::stops_ui(ui, m, out);
}

/// What is used up, prices, dilution.
pub(super) fn shop_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    details(ui, "supplies", say!("correction-materials"), |ui| supplies::supplies_ui(ui, m, out));
    details(ui, "cost", say!("correction-cost"), |ui| supplies::cost_ui(ui, m, out));
    details(ui, "dilution", say!("correction-dilution"), |ui| dilution::dilution_ui(ui, m, out));
}

/// Something that is closed until somebody wants it.
fn details(ui: &mut Ui, salt: &str, title: &str, add: impl FnOnce(&mut Ui)) {
    egui::CollapsingHeader::new(title).id_salt(salt).show(ui, add);
}
