//! The coating as the shop knows it, every figure of it editable.

use super::folded;
use crate::coat::Product;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{NumberRow, number_rows, said, text};
use crate::insight::coating_cautions;
use crate::job::Command;
use crate::units::{Celsius, Millilitres, RelativeHumidity};
use eframe::egui::{self, Ui};

macro_rules! row {
    (@seconds $label:literal, $field:ident, $unit:literal, $size:literal, $most:literal) => {
        NumberRow {
            label: $label,
            unit: $unit,
            decimals: 0,
            get: |p: &Product| p.$field as f64 / f64::from($size),
            set: |p, v| p.$field = (v * f64::from($size)).round() as i64,
            least: 0.0,
            most: $most,
        }
    };
    (@celsius $label:literal, $field:ident) => {
        NumberRow {
            label: $label,
            unit: "°C",
            decimals: 0,
            get: |p: &Product| p.$field.c(),
            set: |p, v| p.$field = Celsius::new(v).unwrap_or(p.$field),
            least: -20.0,
            most: 80.0,
        }
    };
    (@humidity $label:literal, $field:ident) => {
        NumberRow {
            label: $label,
            unit: "%",
            decimals: 0,
            get: |p: &Product| p.$field.pct(),
            set: |p, v| p.$field = RelativeHumidity::new(v).unwrap_or(p.$field),
            least: 1.0,
            most: 100.0,
        }
    };
    (@ml $label:literal, $field:ident, $decimals:literal, $most:literal) => {
        NumberRow {
            label: $label,
            unit: "ml",
            decimals: $decimals,
            get: |p: &Product| p.$field.ml(),
            set: |p, v| p.$field = Millilitres::new(v).unwrap_or(p.$field),
            least: 0.0,
            most: $most,
        }
    };
    ($label:literal, $unit:literal, $field:ident, $decimals:literal, $least:literal, $most:literal) => {
        NumberRow {
            label: $label,
            unit: $unit,
            decimals: $decimals,
            get: |p: &Product| p.$field,
            set: |p, v| p.$field = v,
            least: $least,
            most: $most,
        }
    };
}

/// Groups of figures, most asked for first.
fn groups() -> [(&'static str, Vec<NumberRow<Product>>); 5] {
    [
        (
            "Window of the label",
            vec![
                row!(@seconds "Level no sooner than", window_min_s, "s", 1, 3600.0),
                row!(@seconds "and no later than", window_max_s, "s", 1, 7200.0),
                row!(@celsius "It holds at", reference_temp_c),
                row!(@humidity "and a humidity of", reference_humidity_pct),
                row!("Shortened by warmth", "kJ/mol", activation_kj_per_mol, 0, 0.0, 200.0),
                row!("Shortened by moisture", "0\u{2013}3", humidity_exponent, 1, 0.0, 3.0),
            ],
        ),
        (
            "Limits of the label",
            vec![
                row!(@celsius "Air and panel at least", min_temp_c),
                row!(@celsius "and at most", max_temp_c),
                row!(@humidity "Humidity at least", min_humidity_pct),
                row!(@humidity "and at most", max_humidity_pct),
            ],
        ),
        (
            "How much",
            vec![
                row!("For a square metre and layer", "ml", amount_ml_per_m2, 1, 0.0, 100.0),
                row!(@ml "To load an applicator", first_load_ml, 1, 20.0),
                row!(@ml "In a bottle", bottle_ml, 0, 1_000.0),
                NumberRow {
                    label: "Layers",
                    unit: "",
                    decimals: 0,
                    get: |p| f64::from(p.layers),
                    set: |p, v| p.layers = v.round() as u32,
                    least: 1.0,
                    most: 10.0,
                },
                row!(@seconds "Next layer after", recoat_s, "min", 60, 2_880.0),
            ],
        ),
        (
            "How fast you work",
            vec![
                row!("Apply a square metre in", "s", apply_s_per_m2, 0, 5.0, 600.0),
                row!("Level a square metre in", "s", level_s_per_m2, 0, 5.0, 600.0),
                row!(@seconds "Each panel on top", panel_s, "s", 1, 120.0),
            ],
        ),
        (
            "Afterwards",
            vec![
                row!(@seconds "A high spot can be saved for", high_spot_s, "min", 60, 600.0),
                row!(@seconds "May be driven after", drive_s, "h", 3600, 336.0),
                row!(@seconds "Rain does no harm after", rain_s, "h", 3600, 336.0),
                row!(@seconds "May be washed after", wash_s, "h", 3600, 1_440.0),
                row!(@seconds "Full hardness after", full_cure_s, "h", 3600, 2_160.0),
            ],
        ),
    ]
}

/// Everything about the product, and the way back to a plain set.
pub(super) fn product_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let before = &m.job.product;
    let set = |product: Product| Command::SetProduct(Box::new(product));
    if let Some((name, gesture)) = text(ui, "What you call it", &before.name, 1) {
        out.push(Action::Edit(set(Product { name, ..before.clone() }), Some(gesture)));
    }
    ui.label(theme::soft("The figures are a plain set to start from. What the label says comes first: enter it here."));
    for (title, rows) in groups() {
        folded(ui, title, |ui| {
            if let Some(product) = number_rows(ui, title, before, &rows) {
                out.push(Action::edit(set(product)));
            }
        });
    }
    let cautions = coating_cautions(m.job, m.template);
    folded(ui, "Solvents and cautions", |ui| {
        let label = "What its safety data sheet asks for";
        if let Some((cautions, gesture)) = text(ui, label, &before.cautions, 3) {
            out.push(Action::Edit(set(Product { cautions, ..before.clone() }), Some(gesture)));
        }
        for caution in cautions.iter().filter(|c| **c != before.cautions.trim()) {
            ui.label(said(ui, caution));
        }
        ui.label(theme::soft("Local rules, the maker’s data sheets and licensed practice come first."));
    });
    let usual = Product { name: before.name.clone(), cautions: before.cautions.clone(), ..Product::default() };
    if *before != usual && ui.add(egui::Button::new("Back to the plain set")).clicked() {
        out.push(Action::edit(set(usual)));
    }
}
