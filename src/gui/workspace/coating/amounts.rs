//! How much coating each panel takes, and what is used up besides.

use super::folded;
use crate::coat::{amount, bottles, coating_materials, drops};
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{fact, said};
use crate::insight::{coated_panels, coating_amount};
use crate::units::{Millilitres, SquareMetres};
use eframe::egui::Ui;

/// Totals, then the panels.
pub(super) fn amounts_ui(ui: &mut Ui, m: &Model<'_>) {
    let product = &m.job.product;
    let coated = coated_panels(m.job, m.template);
    let area: SquareMetres = coated.iter().map(|&i| m.template.panels[i].area).sum();
    let all = coating_amount(m.job, m.template);
    let load = product.first_load_ml;
    let used = coating_materials(area, product);
    fact(ui, "Coating for the vehicle", in_drops(all));
    fact(ui, "First load of an applicator", in_drops(load));
    let bottles = bottles(all, product);
    fact(ui, format!("Bottles of {:.0}", product.bottle_ml).as_str(), bottles.to_string());
    fact(ui, "Applicators", used.applicators.to_string());
    fact(ui, "Towels to level", used.level_towels.to_string());
    fact(ui, "Dry towels for the last wipe", used.last_towels.to_string());
    folded(ui, "Panel by panel", |ui| {
        for &index in &coated {
            let panel = &m.template.panels[index];
            fact(ui, &panel.name(m.view.naming), in_drops(amount(panel.area, product)));
        }
    });
    ui.label(theme::soft(said(ui, "A drop is taken as 0.05\u{202f}ml; applicators and towels are our estimates.")));
}

fn in_drops(volume: Millilitres) -> String {
    match drops(volume) {
        1 => format!("{volume:.1}, 1 drop"),
        drops => format!("{volume:.1}, {drops} drops"),
    }
}
