//! The units in which a window shows everything, kept with the window as its theme is.

use crate::units::ShownUnits;
use eframe::egui::{Context, Id, Ui};

fn key() -> Id {
    Id::unique("units")
}

/// The units of a window.
pub(in crate::gui) fn units_of(ctx: &Context) -> ShownUnits {
    ctx.data(|d| d.get_temp(key())).unwrap_or_default()
}

/// Changes them.
pub(in crate::gui) fn set_units(ctx: &Context, units: ShownUnits) {
    ctx.data_mut(|d| d.insert_temp(key(), units));
}

/// A sentence with its figures in the units of the window.
pub(in crate::gui) fn said(ui: &Ui, text: &str) -> String {
    units_of(ui.ctx()).say(text).into_owned()
}

/// A thickness with its unit.
pub(in crate::gui) fn film(ui: &Ui, um: f64, decimals: usize) -> String {
    units_of(ui.ctx()).with_unit(um, "µm", decimals)
}
