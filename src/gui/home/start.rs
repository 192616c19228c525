//! The beginning of the Job workspace: what was open last, and the way to all jobs.

use super::HomeWish;
use crate::gui::action::{Action, Effect, Model};
use crate::gui::commands;
use crate::gui::theme;
use crate::gui::widgets::section;
use crate::say;
use eframe::egui::{self, RichText, Ui};

/// As many as are shown.
const SHOWN: usize = 5;

/// Draws the list, nothing where there is none.
pub(in crate::gui) fn recent_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.horizontal_wrapped(|ui| {
        commands::button(ui, m, "all-jobs", out);
        if !m.job.vehicle.plate.trim().is_empty() {
            commands::button(ui, m, "vehicle-history", out);
        }
    });
    let others: Vec<_> = m.home.recent.iter().filter(|path| m.path != Some(path.as_path())).take(SHOWN).collect();
    if others.is_empty() {
        return;
    }
    section(ui, say!("home-open-again"));
    let p = theme::of(ui.ctx());
    for path in others {
        let name = path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        let name = name.trim_end_matches(".job.ron").to_owned();
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                let forget = ui.button(say!("home-forget")).on_hover_text(say!("home-forget-hint"));
                if forget.accessible_name(say!("home-forget-job", job = name.as_str())).clicked() {
                    out.push(Action::Home(HomeWish::Forget(path.clone())));
                }
                ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                    let button = egui::Button::new(RichText::new(&name).color(p.accent)).frame(false).truncate();
                    if ui.add(button).on_hover_text(path.display().to_string()).clicked() {
                        out.push(Action::Effect(Effect::Open(path.clone())));
                    }
                });
            });
        });
    }
}
