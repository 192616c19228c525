//! Defects of the chosen panel.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::Tool;
use crate::gui::widgets::choice;
use crate::job::{Command, Defect, PanelRecord};
use crate::polish::DefectKind;
use crate::vehicle::Panel;
use eframe::egui::{self, Ui};

/// The defects noted so far, and a tool to place more.
pub(super) fn defects_ui(ui: &mut Ui, m: &Model<'_>, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    for (index, defect) in record.defects.iter().enumerate() {
        ui.push_id(("defect", index), |ui| defect_row(ui, panel, index, defect, out));
    }
    let placing = if let Tool::PlaceDefect(kind) = m.view.tool { Some(kind) } else { None };
    let kind = placing.unwrap_or(DefectKind::Swirl);
    let options: Vec<_> = DefectKind::ALL.iter().map(|k| (*k, k.name().to_owned())).collect();
    if let Some(kind) = choice(ui, "New defect", kind, &options) {
        out.push(Action::View(ViewChange::Tool(Tool::PlaceDefect(kind))));
    }
    match placing {
        Some(kind) => {
            ui.label(egui::RichText::new(format!("Click on the map to place: {}.", kind.name())).color(p.accent));
            if ui.button("Done").clicked() {
                out.push(Action::View(ViewChange::Tool(Tool::Choose)));
            }
        }
        None => {
            if ui.button("Place on the map").clicked() {
                out.push(Action::View(ViewChange::Tool(Tool::PlaceDefect(kind))));
            }
        }
    }
}

fn defect_row(ui: &mut Ui, panel: &Panel, index: usize, defect: &Defect, out: &mut Vec<Action>) {
    ui.horizontal(|ui| {
        ui.label(capital(defect.kind.name()));
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            let panel = panel.id.clone();
            if ui.button("Remove").clicked() {
                out.push(Action::edit(Command::RemoveDefect { panel: panel.clone(), defect: index }));
            }
            let names = ["none", "very few", "few", "moderate", "considerable", "dense"];
            let mut quantity = defect.quantity;
            egui::ComboBox::from_id_salt("quantity")
                .width(104.0)
                .selected_text(names[usize::from(quantity.min(5))])
                .show_ui(ui, |ui| {
                    for (value, name) in (1_u8..).zip(&names[1..]) {
                        ui.selectable_value(&mut quantity, value, *name);
                    }
                })
                .response
                .accessible_name("How many");
            if quantity != defect.quantity {
                let value = Defect { quantity, ..defect.clone() };
                out.push(Action::edit(Command::SetDefect { panel, defect: index, value }));
            }
        });
    });
    if !defect.note.is_empty() {
        ui.label(theme::soft(&defect.note));
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
