//! Which vehicle it is, how large, and the way to change it.

use crate::gui::action::{Action, Effect, Model};
use crate::gui::edit::VehicleWish;
use crate::gui::theme;
use crate::gui::widgets::{choice, number};
use crate::job::Command;
use crate::say;
use crate::units::Millimetres;
use crate::vehicle::Surface;
use crate::vehicle::template_name;
use crate::words::decimal;
use eframe::egui::{self, Ui};

/// Draws body, size and what follows from them.
pub(super) fn vehicle_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    body(ui, m, out);
    size(ui, m, out);
    let paint: f64 = m.template.panels.iter().filter(|p| p.surface == Surface::Paint).map(|p| p.area.m2()).sum();
    ui.label(theme::soft(say!("job-paint-area", area = decimal(paint, 1))));
    ui.horizontal(|ui| {
        if ui.button(say!("job-edit-vehicle")).on_hover_text(say!("job-edit-vehicle-does")).clicked() {
            out.push(Action::Vehicle(VehicleWish::Begin));
        }
        if m.bodies.iter().any(|l| l.own) && ui.button(say!("job-own-vehicles")).clicked() {
            out.push(Action::Vehicle(VehicleWish::ShowOwn));
        }
    });
    ui.horizontal(|ui| {
        let own = m.job.vehicle.size_mm.is_some();
        if own && ui.add(egui::Button::new(say!("job-template-size"))).clicked() {
            out.push(Action::edit(Command::SetSize(None)));
        }
    });
}

/// The choice of a vehicle template: those of the program, then the user's own.
fn body(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let options: Vec<(&str, String)> =
        m.bodies.iter().map(|l| (l.id.as_str(), template_name(&l.id, &l.name))).collect();
    if let Some(id) = choice(ui, say!("job-body"), m.job.vehicle.template.as_str(), &options) {
        out.push(Action::Effect(Effect::TakeBody(id.to_owned())));
    }
}

/// Length, width and height, the template's unless given.
fn size(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let now = m.template.size();
    let labels = [say!("job-length"), say!("job-width"), say!("job-height")];
    for (index, (label, (_, value, range))) in labels.into_iter().zip(now.measures()).enumerate() {
        let entered = number(ui, label, "mm", value.mm(), 0, range);
        let Some(entered) = entered.and_then(|mm| Millimetres::new(mm).ok()) else { continue };
        let mut size = now;
        *[&mut size.length, &mut size.width, &mut size.height][index] = entered;
        out.push(Action::edit(Command::SetSize(Some(size))));
    }
}
