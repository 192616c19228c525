//! Defects of the chosen panel, and the tool that draws more.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::{Shape, Tool, Workspace};
use crate::gui::widgets::choice;
use crate::job::{Defect, Extent, PanelRecord};
use crate::message;
use crate::polish::DefectKind;
use crate::say;
use crate::units::capital;
use crate::words::Message;
use eframe::egui::{self, Key, RichText, Ui};

/// How many there are, in words, from 0 to 5, after the idea of ISO 4628-1.
pub(super) const QUANTITIES: [Message; 6] = [
    message!("survey-quantity-none"),
    message!("survey-quantity-very-few"),
    message!("survey-quantity-few"),
    message!("survey-quantity-moderate"),
    message!("survey-quantity-considerable"),
    message!("survey-quantity-dense"),
];

/// The defects noted so far, and a tool to draw more.
pub(super) fn defects_ui(ui: &mut Ui, m: &Model<'_>, record: &PanelRecord, out: &mut Vec<Action>) {
    for (index, defect) in record.defects.iter().enumerate() {
        ui.push_id(("defect", index), |ui| row(ui, index, defect, out));
    }
    tool_ui(ui, m, out);
}

/// One defect in a line; a click opens it.
fn row(ui: &mut Ui, index: usize, defect: &Defect, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let name = capital(defect.kind.name());
    let button = egui::Button::new((
        RichText::new(&name),
        egui::Atom::grow(),
        RichText::new(in_short(defect)).color(p.ink_soft),
    ));
    let width = ui.available_width();
    let response = ui.add(button.min_size(egui::vec2(width, 32.0))).on_hover_text(say!("survey-open-defect"));
    let response = response.accessible_name(format!("{name}, {}", in_short(defect)));
    if response.clicked() {
        out.push(Action::View(ViewChange::Defect(Some(index))));
    }
}

/// How many and how large: "few, 300 mm long".
pub(super) fn in_short(defect: &Defect) -> String {
    let quantity = QUANTITIES[usize::from(defect.quantity.min(5))].text();
    let size = format!("{:.0}", defect.size_mm);
    let short = match defect.extent {
        Extent::Line(_) => say!("survey-in-short-long", quantity = quantity, size = size),
        Extent::Point | Extent::Area(_) => say!("survey-in-short", quantity = quantity, size = size),
    };
    match defect.photos.len() {
        0 => short,
        count => say!("survey-with-pictures", defect = short, count = count),
    }
}

/// Kind and shape of the next defect, and how to draw it.
fn tool_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let placing = placing(m);
    let (kind, shape) = placing.unwrap_or((DefectKind::Swirl, Shape::Point));
    let mut tool = |tool| out.push(Action::View(ViewChange::Tool(tool)));
    if let Some(kind) = choice(ui, say!("survey-new-defect"), kind, &kinds()) {
        tool(Tool::PlaceDefect(kind, shape));
    }
    if placing.is_none() {
        if ui.button(say!("survey-draw")).clicked() {
            tool(Tool::PlaceDefect(kind, shape));
        }
        return;
    }
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        for (number, other) in (1..).zip(Shape::ALL) {
            let button = egui::Button::selectable(other == shape, format!("{} ({number})", other.name()));
            if ui.add(button).clicked() {
                tool(Tool::PlaceDefect(kind, other));
            }
        }
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.button(say!("common-done")).on_hover_text(say!("survey-escape")).clicked() {
                tool(Tool::Choose);
            }
        });
    });
    let how = match shape {
        Shape::Point => say!("survey-click-where"),
        Shape::Line => say!("survey-drag-line"),
        Shape::Area => say!("survey-drag-area"),
    };
    ui.label(RichText::new(how).color(p.accent));
    ui.label(theme::soft(say!("survey-letter-kind")));
}

/// Every kind with its name, for a list to choose from.
pub(super) fn kinds() -> Vec<(DefectKind, String)> {
    DefectKind::ALL.iter().map(|k| (*k, capital(k.name()))).collect()
}

/// What is being drawn.
fn placing(m: &Model<'_>) -> Option<(DefectKind, Shape)> {
    if let Tool::PlaceDefect(kind, shape) = m.view.tool { Some((kind, shape)) } else { None }
}

/// D begins to draw defects; while drawing, 1 to 3 choose the shape and a letter the next kind that begins with it.
pub(in crate::gui) fn defect_keys(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if m.view.workspace != Workspace::Survey || ui.text_edit_focused() || !m.view.entry.draft.is_empty() {
        return;
    }
    let mut tool = |kind, shape| out.push(Action::View(ViewChange::Tool(Tool::PlaceDefect(kind, shape))));
    let Some((kind, shape)) = placing(m) else {
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, Key::D)) {
            tool(DefectKind::Swirl, Shape::Point);
        }
        return;
    };
    for (key, shape) in [Key::Num1, Key::Num2, Key::Num3].into_iter().zip(Shape::ALL) {
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, key)) {
            tool(kind, shape);
        }
    }
    let all = DefectKind::ALL;
    let now = all.iter().position(|k| *k == kind).unwrap_or(0);
    for letter in 'a'..='z' {
        let Some(key) = Key::from_name(&letter.to_ascii_uppercase().to_string()) else { continue };
        let next =
            (1..=all.len()).map(|k| all[(now + k) % all.len()]).find(|k| k.name().to_lowercase().starts_with(letter));
        if let Some(next) = next
            && ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, key))
        {
            tool(next, shape);
        }
    }
}
