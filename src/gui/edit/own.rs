//! Vehicles of one's own that are there already: saving over one, deleting one.

use super::wish::VehicleWish;
use crate::file::RealDisk;
use crate::gui::app::App;
use crate::gui::modals::Question;
use crate::job::{Command, carry_over};
use eframe::egui;
use std::sync::Arc;

impl App {
    /// Carries out a wish about vehicles of one's own.
    pub(super) fn keep_own(&mut self, wish: VehicleWish, ctx: &egui::Context) {
        let used = self.document.job().vehicle.template.clone();
        match wish {
            VehicleWish::AskReplace if self.is_vehicle_changed() => {
                let own = self.bodies.own(&used);
                self.question = own.map(|own| Question::ReplaceVehicle { name: own.name.clone(), kept: kept(&used) });
            }
            VehicleWish::Replace => self.replace_vehicle(ctx),
            VehicleWish::ShowOwn => {
                let own = self.bodies.listed().iter().filter(|l| l.own).cloned().collect();
                self.question = Some(Question::OwnVehicles { own, used });
            }
            VehicleWish::AskDelete(id) if id != used => {
                let own = self.bodies.own(&id).map(|own| own.name.clone());
                self.question = own.map(|name| Question::DeleteVehicle { kept: kept(&id), id, name });
            }
            VehicleWish::Delete(id) if id != used => {
                self.question = None;
                match self.bodies.templates().delete(&RealDisk, &id) {
                    Ok(()) => self.bodies.list_again(),
                    Err(error) => self.fail(error.into()),
                }
            }
            _ => {}
        }
    }

    fn replace_vehicle(&mut self, ctx: &egui::Context) {
        self.question = None;
        let Some(editing) = &self.editing else { return };
        let template = Arc::clone(editing.history.now());
        let saved = match self.bodies.templates().replace(&RealDisk, &template) {
            Ok(saved) => saved,
            Err(error) => return self.fail(error.into()),
        };
        let panels = carry_over(&self.document.job().panels, &editing.before.template, &template);
        self.stop_editing();
        self.bodies.replace(Arc::clone(&template));
        self.apply(&Command::SetTemplate { template: template.id.clone(), panels }, None, ctx);
        // They belong to panels of the vehicle as it was.
        self.document.forget_steps();
        self.say_if_not_confirmed(saved);
    }
}

/// What the file of an id is called once it is put aside.
fn kept(id: &str) -> String {
    format!("{id}.ron~")
}
