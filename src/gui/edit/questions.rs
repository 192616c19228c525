//! What has to be asked before a vehicle of one's own is replaced or deleted.

use super::wish::VehicleWish;
use crate::file::Listed;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::say;
use eframe::egui::Ui;

/// Whether a vehicle of one's own shall be saved over what it was.
pub(in crate::gui) fn replace_ui(ui: &mut Ui, name: &str, kept: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("edit-save-over", name = name), 16.0));
    ui.label(say!("edit-save-over-means"));
    ui.label(theme::soft(say!("edit-before-kept-as", file = kept)));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, say!("edit-save-changes")).clicked() {
            out.push(Action::Vehicle(VehicleWish::Replace));
        }
        if ui.button(say!("common-cancel")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}

/// The vehicles of one's own, each with a way to delete it. The one that the job uses stays.
pub(in crate::gui) fn own_ui(ui: &mut Ui, own: &[Listed], used: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("edit-own-vehicles"), 16.0));
    ui.add_space(4.0);
    eframe::egui::ScrollArea::vertical().max_height(320.0).show(ui, |ui| {
        for vehicle in own {
            ui.horizontal(|ui| {
                let name = eframe::egui::Label::new(&vehicle.name).truncate();
                ui.add_sized(eframe::egui::vec2(260.0, 32.0), name);
                if vehicle.id == used {
                    ui.label(theme::soft(say!("edit-used-by-job")));
                } else {
                    let button = ui.button(say!("edit-delete"));
                    if button.clicked() {
                        out.push(Action::Vehicle(VehicleWish::AskDelete(vehicle.id.clone())));
                    }
                }
            });
        }
    });
    ui.add_space(8.0);
    if primary(ui, say!("common-close")).clicked() {
        out.push(Action::Effect(Effect::Dismiss));
    }
}

/// Whether a vehicle of one's own shall go.
pub(in crate::gui) fn delete_ui(ui: &mut Ui, id: &str, name: &str, kept: &str, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("edit-delete-which", name = name), 16.0));
    ui.label(say!("edit-delete-means"));
    ui.label(theme::soft(say!("edit-deleted-kept-as", file = kept, name = id)));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, say!("edit-keep-it")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
        if ui.button(say!("edit-delete-it")).clicked() {
            out.push(Action::Vehicle(VehicleWish::Delete(id.to_owned())));
        }
    });
}
