//! Parts that several workspaces share.

mod beside;
mod budget_bar;
mod entry_field;
mod fields;
mod number_rows;
mod one_line;
mod panel_head;
mod shown;
mod symbols;

pub(super) use beside::button_room;
pub(super) use budget_bar::{budget_bars, removal_bar};
pub(super) use entry_field::entry_field;
pub(super) use fields::{choice, day, line, name, number, optional_number, slider, text};
pub(super) use number_rows::{NumberRow, number_rows};
pub(super) use one_line::{one_line, one_line_at};
pub(super) use panel_head::panel_head;
pub(super) use shown::{film, said, set_units, units_of};
pub(super) use symbols::{hatched, pin_symbol, worker_badge, worker_shape};

use super::theme;
use beside::{beside, width_of};
use eframe::egui::{self, Ui};

/// A heading inside a sheet, with the air above it that groups what follows.
pub(super) fn section(ui: &mut Ui, title: &str) {
    ui.add_space(12.0);
    ui.label(theme::bold(title, 14.0));
}

/// A label and a value on one line, the value at the right, in the units of the window.
pub(super) fn fact(ui: &mut Ui, label: &str, value: impl Into<egui::WidgetText>) {
    let label = said(ui, label);
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 18.0;
        let value = match value.into() {
            egui::WidgetText::Text(text) => said(ui, &text).into(),
            other => other,
        };
        let room = width_of(ui, value.text());
        beside(ui, &label, room, |ui, _| ui.label(value));
    });
}

/// A page that lies over the window, with room round what it holds.
pub(super) fn page_over(ui: &Ui, name: &str) -> egui::Modal {
    egui::Modal::new(egui::Id::unique(name)).frame(egui::Frame::popup(ui.style()).inner_margin(20))
}

/// The one button of a screen that matters most.
pub(super) fn primary(ui: &mut Ui, text: &str) -> egui::Response {
    let p = theme::of(ui.ctx());
    let label = egui::RichText::new(text).color(p.on_accent);
    ui.add(egui::Button::new(label).fill(p.accent).min_size(egui::vec2(0.0, 36.0)))
}
