//! A field for a number that is not there yet: empty until somebody types, empty again after Enter.

use super::beside::beside;
use super::fields::WITH_UNIT;
use super::units_of;
use crate::gui::theme;
use crate::say;
use crate::words::shortest;
use eframe::egui::{self, Ui};
use std::ops::RangeInclusive;

/// What somebody typed so far, and whether Enter was pressed.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::gui) struct Typed {
    /// The number, if it is one in range.
    pub(in crate::gui) value: Option<f64>,
    /// Whether Enter was pressed in the field.
    pub(in crate::gui) entered: bool,
    id: egui::Id,
}

impl Typed {
    /// Empties the field.
    pub(in crate::gui) fn clear(&self, ui: &Ui) {
        ui.data_mut(|d| d.remove::<String>(self.id));
    }
}

/// A label and an empty field with its unit. `key` tells fields of one label apart.
pub(in crate::gui) fn entry_field(
    ui: &mut Ui,
    key: impl std::hash::Hash + std::fmt::Debug,
    label: &str,
    unit: &str,
    range: RangeInclusive<f64>,
) -> Typed {
    let p = theme::of(ui.ctx());
    let units = units_of(ui.ctx());
    let id = ui.make_persistent_id(("entry", label, key));
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_default();
    let mut entered = false;
    beside(ui, label, WITH_UNIT, |ui, name| {
        ui.add_sized([36.0, 20.0], egui::Label::new(theme::soft(units.name(unit))).halign(egui::Align::LEFT));
        let edit = egui::TextEdit::singleline(&mut draft)
            .id(id.with("field"))
            .desired_width(64.0)
            .char_limit(12)
            .align(egui::Align2::RIGHT_CENTER)
            .margin(egui::Margin::symmetric(8, 6));
        let response = ui.add(edit).labelled_by(name.id);
        entered = response.lost_focus() && ui.input(|i| i.key_pressed(egui::Key::Enter));
    });
    let value = units.typed(&draft, unit).filter(|v| range.contains(v));
    if value.is_none() && !draft.trim().is_empty() {
        let (least, most) = (shortest(*range.start()), shortest(*range.end()));
        let text = say!("window-type-number", least = least, most = most, unit = unit);
        ui.label(egui::RichText::new(units.say(&text)).color(p.note));
    }
    ui.data_mut(|d| d.insert_temp(id, draft));
    Typed { value, entered, id }
}
