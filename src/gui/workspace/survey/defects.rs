//! Defects of the chosen panel, and the tool that draws more.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::{Shape, Tool, Workspace};
use crate::gui::widgets::choice;
use crate::job::{Defect, Extent, PanelRecord};
use crate::polish::DefectKind;
use crate::units::capital;
use eframe::egui::{self, Key, RichText, Ui};

/// How many there are, in words, from 0 to 5, after the idea of ISO 4628-1.
pub(super) const QUANTITIES: [&str; 6] = ["none", "very few", "few", "moderate", "considerable", "dense"];

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
    let response = ui.add(button.min_size(egui::vec2(width, 32.0))).on_hover_text("Open this defect");
    let response = response.accessible_name(format!("{name}, {}", in_short(defect)));
    if response.clicked() {
        out.push(Action::View(ViewChange::Defect(Some(index))));
    }
}

/// How many and how large: "few, 300 mm long".
pub(super) fn in_short(defect: &Defect) -> String {
    let quantity = QUANTITIES[usize::from(defect.quantity.min(5))];
    let across = match defect.extent {
        Extent::Line(_) => " long",
        Extent::Point | Extent::Area(_) => "",
    };
    let photos = match defect.photos.len() {
        0 => String::new(),
        1 => ", 1 picture".to_owned(),
        n => format!(", {n} pictures"),
    };
    format!("{quantity}, {:.0}{across}{photos}", defect.size_mm)
}

/// Kind and shape of the next defect, and how to draw it.
fn tool_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let placing = placing(m);
    let (kind, shape) = placing.unwrap_or((DefectKind::Swirl, Shape::Point));
    let mut tool = |tool| out.push(Action::View(ViewChange::Tool(tool)));
    if let Some(kind) = choice(ui, "New defect", kind, &kinds()) {
        tool(Tool::PlaceDefect(kind, shape));
    }
    if placing.is_none() {
        if ui.button("Draw on the map (D)").clicked() {
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
            if ui.button("Done").on_hover_text("Escape").clicked() {
                tool(Tool::Choose);
            }
        });
    });
    let how = match shape {
        Shape::Point => "Click on the map where it is.",
        Shape::Line => "Drag on the map from one end to the other.",
        Shape::Area => "Drag on the map round it.",
    };
    ui.label(RichText::new(how).color(p.accent));
    ui.label(theme::soft("A letter takes the next kind that begins with it."));
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
        let next = (1..=all.len()).map(|k| all[(now + k) % all.len()]).find(|k| k.name().starts_with(letter));
        if let Some(next) = next
            && ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, key))
        {
            tool(next, shape);
        }
    }
}
