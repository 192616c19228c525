//! One defect in full.

use super::defects::{QUANTITIES, kinds};
use crate::gui::action::{Action, Effect, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{choice, number, said, section, text};
use crate::job::{Command, Defect, Extent, PhotoId};
use crate::polish::{Fingernail, depth_by_fingernail, size_class};
use crate::say;
use crate::units::{Micrometres, Millimetres, capital};
use crate::vehicle::Panel;
use crate::words::decimal;
use eframe::egui::{self, RichText, Sense, Ui, vec2};

/// Draws the sheet of a defect.
pub(super) fn defect_ui(
    ui: &mut Ui,
    m: &Model<'_>,
    panel: &Panel,
    index: usize,
    defect: &Defect,
    out: &mut Vec<Action>,
) {
    ui.horizontal(|ui| {
        ui.label(theme::bold(capital(defect.kind.name()), 16.0));
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.button(say!("survey-back-to-panel")).clicked() {
                out.push(Action::View(ViewChange::Defect(None)));
            }
        });
    });
    ui.label(theme::soft(capital(defect.kind.treatment().in_words()) + "."));
    let mut gesture = None;
    let mut value = defect.clone();
    facts(ui, &mut value);
    section(ui, say!("survey-depth"));
    depth(ui, defect, &mut value);
    section(ui, say!("survey-note"));
    if let Some((note, of)) = text(ui, say!("survey-anything-else"), &defect.note, 2) {
        value.note = note;
        gesture = Some(of);
    }
    section(ui, say!("survey-pictures"));
    photos(ui, m, &mut value, out);
    if ui.button(say!("survey-add-picture")).on_hover_text(say!("survey-add-picture-hint")).clicked() {
        out.push(Action::Effect(Effect::AskPhoto(panel.id.clone(), index)));
    }
    if m.photos.is_working() {
        ui.label(theme::soft(say!("survey-taking-in")));
    }
    if value != *defect {
        out.push(Action::Edit(Command::SetDefect { panel: panel.id.clone(), defect: index, value }, gesture));
    }
    ui.add_space(12.0);
    if ui.button(say!("survey-remove-defect")).clicked() {
        out.push(Action::edit(Command::RemoveDefect { panel: panel.id.clone(), defect: index }));
        out.push(Action::View(ViewChange::Defect(None)));
    }
}

/// Kind, number, size, fingernail.
fn facts(ui: &mut Ui, value: &mut Defect) {
    if let Some(kind) = choice(ui, say!("survey-kind"), value.kind, &kinds()) {
        value.kind = kind;
    }
    let quantities: Vec<(u8, String)> =
        (0..).zip(QUANTITIES).map(|(q, name)| (q, format!("{q}, {}", name.text()))).collect();
    if let Some(quantity) = choice(ui, say!("survey-how-many"), value.quantity.min(5), &quantities) {
        value.quantity = quantity;
    }
    let label = match value.extent {
        Extent::Line(_) => say!("survey-length"),
        Extent::Point | Extent::Area(_) => say!("survey-size-across"),
    };
    if let Some(mm) = number(ui, label, "mm", value.size_mm.mm(), 1, 0.0..=20_000.0)
        && let Ok(size) = Millimetres::new(mm)
    {
        value.size_mm = size;
    }
    let number = size_class(value.size_mm);
    let class = match number {
        2 => say!("survey-class-visible"),
        3 => say!("survey-class-small"),
        4 => say!("survey-class-middle"),
        _ => say!("survey-class-large"),
    };
    ui.label(theme::soft(match value.extent {
        Extent::Point => say!("survey-drawn-point", number = number, class = class),
        Extent::Line(_) => say!("survey-drawn-line", number = number, class = class),
        Extent::Area(_) => say!("survey-drawn-area", number = number, class = class),
    }));
    let nails = [
        (Fingernail::NotTried, say!("survey-nail-not-tried").to_owned()),
        (Fingernail::Catches, say!("survey-nail-catches").to_owned()),
        (Fingernail::Slides, say!("survey-nail-slides").to_owned()),
    ];
    if let Some(fingernail) = choice(ui, say!("survey-fingernail"), value.fingernail, &nails) {
        value.fingernail = fingernail;
    }
}

/// The depth, as usual for the kind or as somebody estimates it.
fn depth(ui: &mut Ui, defect: &Defect, value: &mut Defect) {
    let (least, most) = defect.depth();
    let set = |um: f64| Micrometres::new(um).unwrap_or(Micrometres::ZERO);
    if let Some(um) = number(ui, say!("survey-least"), "µm", least.um(), 1, 0.0..=1_000.0) {
        value.depth_um = Some((set(um), set(um).max(most)));
    }
    if let Some(um) = number(ui, say!("survey-most"), "µm", most.um(), 1, 0.0..=1_000.0) {
        value.depth_um = Some((least.min(set(um)), set(um)));
    }
    let usual = depth_by_fingernail(defect.kind, defect.fingernail);
    let words = said(ui, &say!("survey-usual-depth", low = decimal(usual.0.um(), 1), high = format!("{:.1}", usual.1)));
    if defect.depth_um.is_some() {
        ui.horizontal(|ui| {
            ui.label(theme::soft(words));
            if ui.button(say!("survey-use-it")).clicked() {
                value.depth_um = None;
            }
        });
    } else {
        ui.label(theme::soft(say!("survey-our-estimate", what = words)));
    }
}

/// The pictures, each with a way to take it out.
fn photos(ui: &mut Ui, m: &Model<'_>, value: &mut Defect, out: &mut Vec<Action>) {
    let mut gone: Option<PhotoId> = None;
    ui.horizontal_wrapped(|ui| {
        for (number, photo) in (1..).zip(&value.photos) {
            ui.vertical(|ui| {
                ui.set_width(136.0);
                match m.photos.of(photo) {
                    None => {
                        ui.allocate_exact_size(vec2(136.0, 96.0), Sense::hover());
                        out.push(Action::Effect(Effect::ShowPhoto(photo.clone())));
                    }
                    Some(None) => {
                        let p = theme::of(ui.ctx());
                        ui.label(RichText::new(say!("survey-picture-gone")).color(p.note));
                    }
                    Some(Some(texture)) => {
                        let image = egui::Image::new(texture).max_size(vec2(136.0, 96.0)).corner_radius(4);
                        ui.add(image.alt_text(say!("survey-picture", number = number)));
                    }
                }
                if ui
                    .button(say!("survey-remove"))
                    .accessible_name(say!("survey-remove-picture", number = number))
                    .clicked()
                {
                    gone = Some(photo.clone());
                }
            });
        }
    });
    if let Some(gone) = gone {
        value.photos.retain(|photo| *photo != gone);
    }
}
