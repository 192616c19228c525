//! A label with something at its right; where both have no room in one line, the label stands above.

use crate::gui::theme;
use eframe::egui::{self, Align, Layout, Response, TextStyle, Ui};

/// How wide a text is in one line.
pub(super) fn width_of(ui: &Ui, text: &str) -> f32 {
    let font = TextStyle::Body.resolve(ui.style());
    ui.painter().layout_no_wrap(text.to_owned(), font, theme::of(ui.ctx()).ink).size().x
}

/// Draws the label, and at the right what needs so much room; from right to left, with the label's response to be named by.
pub(super) fn beside<R>(ui: &mut Ui, label: &str, room: f32, add: impl FnOnce(&mut Ui, Response) -> R) -> R {
    let text = egui::RichText::new(label).color(theme::of(ui.ctx()).ink_soft);
    let from_right = Layout::right_to_left(Align::Center);
    if width_of(ui, label) + ui.spacing().item_spacing.x + room <= ui.available_width() {
        return ui
            .horizontal(|ui| {
                let name = ui.label(text);
                ui.with_layout(from_right, |ui| add(ui, name)).inner
            })
            .inner;
    }
    let name = ui.label(text);
    ui.horizontal(|ui| ui.with_layout(from_right, |ui| add(ui, name)).inner).inner
}

/// The room that a button with a text takes beside something.
pub(in crate::gui) fn button_room(ui: &Ui, text: &str) -> f32 {
    width_of(ui, text) + 2.0 * ui.spacing().button_padding.x + ui.spacing().item_spacing.x + 2.0
}
