//! The coating as the shop knows it, every figure of it editable.

use super::folded;
use crate::coat::Product;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{NumberRow, number_rows, said, text};
use crate::insight::coating_cautions;
use crate::job::Command;
use crate::say;
use crate::units::{Celsius, Millilitres, RelativeHumidity};
use eframe::egui::{self, Ui};

macro_rules! row {
    (@seconds $label:expr, $field:ident, $unit:literal, $size:literal, $most:literal) => {
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
    (@celsius $label:expr, $field:ident) => {
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
    (@humidity $label:expr, $field:ident) => {
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
    (@ml $label:expr, $field:ident, $decimals:literal, $most:literal) => {
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
    ($label:expr, $unit:literal, $field:ident, $decimals:literal, $least:literal, $most:literal) => {
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

/// Groups of figures by a name of their own and a title, most asked for first.
fn groups() -> [(&'static str, &'static str, Vec<NumberRow<Product>>); 5] {
    [
        (
            "window",
            say!("coating-label-window"),
            vec![
                row!(@seconds say!("coating-window-from"), window_min_s, "s", 1, 3600.0),
                row!(@seconds say!("coating-window-to"), window_max_s, "s", 1, 7200.0),
                row!(@celsius say!("coating-holds-at-temp"), reference_temp_c),
                row!(@humidity say!("coating-holds-at-humidity"), reference_humidity_pct),
                row!(say!("coating-by-warmth"), "kJ/mol", activation_kj_per_mol, 0, 0.0, 200.0),
                row!(say!("coating-by-moisture"), "0\u{2013}3", humidity_exponent, 1, 0.0, 3.0),
            ],
        ),
        (
            "limits",
            say!("coating-label-limits"),
            vec![
                row!(@celsius say!("coating-temp-least"), min_temp_c),
                row!(@celsius say!("coating-temp-most"), max_temp_c),
                row!(@humidity say!("coating-humidity-least"), min_humidity_pct),
                row!(@humidity say!("coating-humidity-most"), max_humidity_pct),
            ],
        ),
        (
            "amounts",
            say!("coating-how-much"),
            vec![
                row!(say!("coating-per-metre"), "ml", amount_ml_per_m2, 1, 0.0, 100.0),
                row!(@ml say!("coating-load"), first_load_ml, 1, 20.0),
                row!(@ml say!("coating-in-bottle"), bottle_ml, 0, 1_000.0),
                NumberRow {
                    label: say!("coating-layers"),
                    unit: "",
                    decimals: 0,
                    get: |p| f64::from(p.layers),
                    set: |p, v| p.layers = v.round() as u32,
                    least: 1.0,
                    most: 10.0,
                },
                row!(@seconds say!("coating-next-layer"), recoat_s, "min", 60, 2_880.0),
            ],
        ),
        (
            "speed",
            say!("coating-how-fast"),
            vec![
                row!(say!("coating-apply-metre"), "s", apply_s_per_m2, 0, 5.0, 600.0),
                row!(say!("coating-level-metre"), "s", level_s_per_m2, 0, 5.0, 600.0),
                row!(@seconds say!("coating-each-panel"), panel_s, "s", 1, 120.0),
            ],
        ),
        (
            "afterwards",
            say!("coating-afterwards"),
            vec![
                row!(@seconds say!("coating-high-spot-for"), high_spot_s, "min", 60, 600.0),
                row!(@seconds say!("coating-drive-after"), drive_s, "h", 3600, 336.0),
                row!(@seconds say!("coating-rain-after"), rain_s, "h", 3600, 336.0),
                row!(@seconds say!("coating-wash-after"), wash_s, "h", 3600, 1_440.0),
                row!(@seconds say!("coating-hard-after"), full_cure_s, "h", 3600, 2_160.0),
            ],
        ),
    ]
}

/// Everything about the product, and the way back to a plain set.
pub(super) fn product_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let before = &m.job.product;
    let set = |product: Product| Command::SetProduct(Box::new(product));
    if let Some((name, gesture)) = text(ui, say!("coating-own-name"), before.shown_name(), 1) {
        out.push(Action::Edit(set(Product { name, ..before.clone() }), Some(gesture)));
    }
    ui.label(theme::soft(say!("coating-plain-set")));
    for (group, title, rows) in groups() {
        folded(ui, group, title, |ui| {
            if let Some(product) = number_rows(ui, group, before, &rows) {
                out.push(Action::edit(set(product)));
            }
        });
    }
    let cautions = coating_cautions(m.job, m.template);
    folded(ui, "cautions", say!("coating-cautions"), |ui| {
        let label = say!("coating-safety-sheet");
        if let Some((cautions, gesture)) = text(ui, label, &before.cautions, 3) {
            out.push(Action::Edit(set(Product { cautions, ..before.clone() }), Some(gesture)));
        }
        for caution in cautions.iter().filter(|c| **c != before.cautions.trim()) {
            ui.label(said(ui, caution));
        }
        ui.label(theme::soft(say!("coating-rules-first")));
    });
    let usual = Product { name: before.name.clone(), cautions: before.cautions.clone(), ..Product::default() };
    if *before != usual && ui.add(egui::Button::new(say!("coating-back-to-plain"))).clicked() {
        out.push(Action::edit(set(usual)));
    }
}
