//! The right side, one file per workspace. Workspaces don't know each other.

mod bay;
mod coating;
mod correction;
mod handover;
mod job;
mod practice;
mod survey;
mod vehicle;

pub(super) use bay::{bay_below_ui, bay_call_ui};
pub(super) use correction::table_ui;
pub(super) use practice::{practice_below_ui, practice_keys, practice_marks};
pub(super) use survey::defect_keys;

use super::action::{Action, Model};
use super::view_state::Workspace;
use eframe::egui::{self, Ui};

/// Draws the right side of the workspace that is open.
pub(super) fn side_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if m.view.workspace == Workspace::Bay {
        return bay::bay_ui(ui, m, out); // what is pressed with gloves must not scroll away
    }
    // What is shown of one panel keeps its place from panel to panel; anything else begins at its top.
    let shown = (m.view.workspace, m.view.chosen.len().min(2), m.view.defect.is_some());
    egui::ScrollArea::vertical().id_salt(shown).auto_shrink([false, false]).show(ui, |ui| {
        column(ui, |ui| match m.view.workspace {
            Workspace::Job => job::job_ui(ui, m, out),
            Workspace::Survey => survey::survey_ui(ui, m, out),
            Workspace::Correction => correction::correction_ui(ui, m, out),
            Workspace::Coating => coating::coating_ui(ui, m, out),
            Workspace::Handover => handover::handover_ui(ui, m, out),
            Workspace::Practice => practice::practice_ui(ui, m, out),
            Workspace::Bay => {}
        });
        ui.add_space(16.0);
    });
}

/// A column of fixed width: what is too wide for it is cut at its end and does not push the rest aside.
fn column(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    let width = ui.available_width() - 4.0;
    let area = egui::Rect::from_min_size(ui.cursor().min, egui::vec2(width, ui.available_height().max(1.0)));
    let mut inner = ui.new_child(egui::UiBuilder::new().id_salt("column").max_rect(area));
    add(&mut inner);
    ui.allocate_space(egui::vec2(width, inner.min_rect().height()));
}
