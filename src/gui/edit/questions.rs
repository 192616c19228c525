//! What has to be asked before a vehicle of one's own is replaced or deleted.

use super::wish::VehicleWish;
use crate::file::Listed;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::gui::widgets::primary;
use eframe::egui::Ui;

/// Whether a vehicle of one's own shall be saved over what it was.
pub(in crate::gui) fn replace_ui(ui: &mut Ui, name: &str, kept: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold(format!("Save the changes to “{name}”?"), 16.0));
    ui.label(
        "Every job that uses this vehicle changes with it. Readings go to the panels they lie on in this job only.",
    );
    ui.label(theme::soft(format!(
        "What was there before is kept as {kept}. Earlier steps of this job can't be undone after it."
    )));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, "Save the changes").clicked() {
            out.push(Action::Vehicle(VehicleWish::Replace));
        }
        if ui.button("Cancel").clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}

/// The vehicles of one's own, each with a way to delete it. The one that the job uses stays.
pub(in crate::gui) fn own_ui(ui: &mut Ui, own: &[Listed], used: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold("Vehicles of your own", 16.0));
    ui.add_space(4.0);
    eframe::egui::ScrollArea::vertical().max_height(320.0).show(ui, |ui| {
        for vehicle in own {
            ui.horizontal(|ui| {
                let name = eframe::egui::Label::new(&vehicle.name).truncate();
                ui.add_sized(eframe::egui::vec2(260.0, 32.0), name);
                if vehicle.id == used {
                    ui.label(theme::soft("used by this job"));
                } else {
                    let button = ui.button("Delete…");
                    if button.clicked() {
                        out.push(Action::Vehicle(VehicleWish::AskDelete(vehicle.id.clone())));
                    }
                }
            });
        }
    });
    ui.add_space(8.0);
    if primary(ui, "Close").clicked() {
        out.push(Action::Effect(Effect::Dismiss));
    }
}

/// Whether a vehicle of one's own shall go.
pub(in crate::gui) fn delete_ui(ui: &mut Ui, id: &str, name: &str, kept: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold(format!("Delete “{name}”?"), 16.0));
    ui.label("A job that uses it can't be opened without it.");
    ui.label(theme::soft(format!("The file is kept as {kept}; named {id}.ron again, it is back.")));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, "Keep it").clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
        if ui.button("Delete it").clicked() {
            out.push(Action::Vehicle(VehicleWish::Delete(id.to_owned())));
        }
    });
}
