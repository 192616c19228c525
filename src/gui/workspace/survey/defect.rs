//! One defect in full.

use super::defects::{QUANTITIES, kinds};
use crate::gui::action::{Action, Effect, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{choice, number, said, section, text};
use crate::job::{Command, Defect, Extent, PhotoId};
use crate::polish::{Fingernail, depth_by_fingernail, size_class};
use crate::units::{Micrometres, Millimetres, capital};
use crate::vehicle::Panel;
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
            if ui.button("Back to the panel").clicked() {
                out.push(Action::View(ViewChange::Defect(None)));
            }
        });
    });
    ui.label(theme::soft(capital(defect.kind.treatment().in_words()) + "."));
    let mut gesture = None;
    let mut value = defect.clone();
    facts(ui, &mut value);
    section(ui, "Depth");
    depth(ui, defect, &mut value);
    section(ui, "Note");
    if let Some((note, of)) = text(ui, "Anything else", &defect.note, 2) {
        value.note = note;
        gesture = Some(of);
    }
    section(ui, "Pictures");
    photos(ui, m, &mut value, out);
    if ui
        .button("Add picture…")
        .on_hover_text("Or drop it on the window; a copy is kept beside the job, without place and time")
        .clicked()
    {
        out.push(Action::Effect(Effect::AskPhoto(panel.id.clone(), index)));
    }
    if m.photos.is_working() {
        ui.label(theme::soft("Taking in the picture…"));
    }
    if value != *defect {
        out.push(Action::Edit(Command::SetDefect { panel: panel.id.clone(), defect: index, value }, gesture));
    }
    ui.add_space(12.0);
    if ui.button("Remove this defect").clicked() {
        out.push(Action::edit(Command::RemoveDefect { panel: panel.id.clone(), defect: index }));
        out.push(Action::View(ViewChange::Defect(None)));
    }
}

/// Kind, number, size, fingernail.
fn facts(ui: &mut Ui, value: &mut Defect) {
    if let Some(kind) = choice(ui, "Kind", value.kind, &kinds()) {
        value.kind = kind;
    }
    let quantities: Vec<(u8, String)> = (0..).zip(QUANTITIES).map(|(q, name)| (q, format!("{q}, {name}"))).collect();
    if let Some(quantity) = choice(ui, "How many", value.quantity.min(5), &quantities) {
        value.quantity = quantity;
    }
    let (label, drawn) = match value.extent {
        Extent::Point => ("Size across", "A point on the map."),
        Extent::Line(_) => ("Length", "A line on the map."),
        Extent::Area(_) => ("Size across", "An area on the map."),
    };
    if let Some(mm) = number(ui, label, "mm", value.size_mm.mm(), 1, 0.0..=20_000.0)
        && let Ok(size) = Millimetres::new(mm)
    {
        value.size_mm = size;
    }
    let class = match size_class(value.size_mm) {
        2 => "just visible",
        3 => "smaller than 0.5\u{202f}mm",
        4 => "0.5 to 5\u{202f}mm",
        _ => "larger than 5\u{202f}mm",
    };
    ui.label(theme::soft(format!("{drawn} Size class {}, {class} (after ISO 4628-1).", size_class(value.size_mm))));
    let nails = [
        (Fingernail::NotTried, "not tried".to_owned()),
        (Fingernail::Catches, "catches".to_owned()),
        (Fingernail::Slides, "slides over".to_owned()),
    ];
    if let Some(fingernail) = choice(ui, "Fingernail", value.fingernail, &nails) {
        value.fingernail = fingernail;
    }
}

/// The depth, as usual for the kind or as somebody estimates it.
fn depth(ui: &mut Ui, defect: &Defect, value: &mut Defect) {
    let (least, most) = defect.depth();
    let set = |um: f64| Micrometres::new(um).unwrap_or(Micrometres::ZERO);
    if let Some(um) = number(ui, "Least", "µm", least.um(), 1, 0.0..=1_000.0) {
        value.depth_um = Some((set(um), set(um).max(most)));
    }
    if let Some(um) = number(ui, "Most", "µm", most.um(), 1, 0.0..=1_000.0) {
        value.depth_um = Some((least.min(set(um)), set(um)));
    }
    let usual = depth_by_fingernail(defect.kind, defect.fingernail);
    let words = said(ui, &format!("Usual for this kind: {:.1} to {:.1}", usual.0.um(), usual.1));
    if defect.depth_um.is_some() {
        ui.horizontal(|ui| {
            ui.label(theme::soft(words));
            if ui.button("Use it").clicked() {
                value.depth_um = None;
            }
        });
    } else {
        ui.label(theme::soft(format!("{words} (our estimate).")));
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
                        ui.label(RichText::new("The picture is not in the folder beside the job.").color(p.note));
                    }
                    Some(Some(texture)) => {
                        let image = egui::Image::new(texture).max_size(vec2(136.0, 96.0)).corner_radius(4);
                        ui.add(image.alt_text(format!("Picture {number}")));
                    }
                }
                if ui.button("Remove").accessible_name(format!("Remove picture {number}")).clicked() {
                    gone = Some(photo.clone());
                }
            });
        }
    });
    if let Some(gone) = gone {
        value.photos.retain(|photo| *photo != gone);
    }
}
