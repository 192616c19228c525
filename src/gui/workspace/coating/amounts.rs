//! How much coating each panel takes, and what is used up besides.

use super::folded;
use crate::coat::{DROP_ML, amount, bottles, coating_materials, drops};
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{fact, said};
use crate::insight::{coated_panels, coating_amount};
use crate::say;
use crate::units::{Millilitres, SquareMetres};
use crate::words::decimal;
use eframe::egui::Ui;

/// Totals, then the panels.
pub(super) fn amounts_ui(ui: &mut Ui, m: &Model<'_>) {
    let product = &m.job.product;
    let coated = coated_panels(m.job, m.template);
    let area: SquareMetres = coated.iter().map(|&i| m.template.panels[i].area).sum();
    let all = coating_amount(m.job, m.template);
    let load = product.first_load_ml;
    let used = coating_materials(area, product);
    fact(ui, say!("coating-for-vehicle"), in_drops(all));
    fact(ui, say!("coating-first-load"), in_drops(load));
    let bottles = bottles(all, product);
    fact(ui, &say!("coating-bottles", volume = format!("{:.0}", product.bottle_ml)), bottles.to_string());
    fact(ui, say!("coating-applicators"), used.applicators.to_string());
    fact(ui, say!("coating-level-towels"), used.level_towels.to_string());
    fact(ui, say!("coating-last-towels"), used.last_towels.to_string());
    folded(ui, "by panel", say!("coating-by-panel"), |ui| {
        for &index in &coated {
            let panel = &m.template.panels[index];
            fact(ui, &panel.name(m.view.naming), in_drops(amount(panel.area, product)));
        }
    });
    ui.label(theme::soft(said(ui, &say!("coating-drop-is", volume = decimal(DROP_ML, 2)))));
}

fn in_drops(volume: Millilitres) -> String {
    say!("coating-drops", volume = format!("{volume:.1}"), count = drops(volume))
}
