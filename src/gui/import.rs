//! Readings of a file, shown before they are added: what was recognised, what will be taken, what will not and why.

use super::action::{Action, Effect, ViewChange};
use super::app::App;
use super::theme;
use super::view_state::Workspace;
use super::widgets::{film, page_over, primary, section};
use crate::cli::Failure;
use crate::file::{Matched, Readings, ReadingsError, RealDisk, match_panels, read_readings, readings_from_bytes};
use crate::insight::add_readings;
use crate::say;
use crate::vehicle::{Naming, PanelId, Template};
use eframe::egui::{self, Key, Ui};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// A file of readings that is being looked at.
#[derive(Debug)]
pub(super) struct ImportDraft {
    file: String,
    readings: Readings,
    template: Arc<Template>,
    naming: Naming,
    assigned: BTreeMap<String, PanelId>,
    matched: Matched,
    /// Names that no panel has, before any was assigned.
    strange: Vec<(String, usize)>,
}

/// What a person does with it.
#[derive(Debug)]
pub(super) enum ImportWish {
    /// Says which panel a name means, or none.
    Assign(String, Option<PanelId>),
    /// Adds the readings.
    Add,
    /// Leaves them.
    Drop,
}

/// Most rows shown that are not taken; the others are counted.
const MOST_SHOWN: usize = 200;

impl App {
    /// Reads a file of readings and shows what is in it.
    pub(super) fn show_readings(&mut self, path: &Path) {
        self.question = None;
        if self.is_vehicle_changed() {
            return self.fail(Failure::new(say!("survey-import-changed"), say!("survey-import-changed-do")));
        }
        self.stop_editing();
        let file = path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        self.preview(file, read_readings(&RealDisk, path));
    }

    /// Shows readings that were pasted, read as a file would be.
    pub(super) fn show_pasted(&mut self, text: &str) {
        if self.is_vehicle_changed() {
            return self.fail(Failure::new(say!("survey-import-changed"), say!("survey-import-changed-do")));
        }
        self.stop_editing();
        let name = say!("survey-pasted");
        self.preview(name.to_owned(), readings_from_bytes(name, text.as_bytes()));
    }

    fn preview(&mut self, file: String, read: Result<Readings, ReadingsError>) {
        match read {
            Ok(readings) => {
                let template = Arc::clone(&self.template);
                let matched = match_panels(&readings, self.document.job(), &template, &BTreeMap::new());
                let strange = matched.unknown.iter().map(|u| (u.name.clone(), u.lines.len())).collect();
                let naming = self.view.naming;
                let assigned = BTreeMap::new();
                self.import = Some(ImportDraft { file, readings, template, naming, assigned, matched, strange });
            }
            Err(error) => self.fail(error.into()),
        }
    }

    /// Carries out what a person does with the file.
    pub(super) fn change_import(&mut self, wish: ImportWish, ctx: &egui::Context) {
        let Some(draft) = &mut self.import else { return };
        match wish {
            ImportWish::Assign(name, panel) => {
                match panel {
                    Some(panel) => drop(draft.assigned.insert(name, panel)),
                    None => drop(draft.assigned.remove(&name)),
                }
                draft.matched = match_panels(&draft.readings, self.document.job(), &draft.template, &draft.assigned);
            }
            ImportWish::Drop => self.import = None,
            ImportWish::Add => {
                let command = add_readings(self.document.job(), &self.template, &draft.matched.taken);
                self.import = None;
                if let Some(command) = command {
                    self.apply(&command, None, ctx);
                    self.change_view(ViewChange::Workspace(Workspace::Survey));
                }
            }
        }
    }
}

/// Draws the preview.
pub(super) fn import_ui(ui: &mut Ui, draft: &ImportDraft, out: &mut Vec<Action>) {
    let tall = ui.ctx().content_rect().height();
    let shown = page_over(ui, "import").show(ui, |ui| {
        ui.set_width(640.0);
        ui.label(theme::bold(say!("survey-import-from", file = draft.file.as_str()), 20.0));
        ui.label(theme::soft(say!("survey-import-read-as", what = draft.readings.recognised.in_words())));
        ui.separator();
        egui::ScrollArea::vertical().max_height((tall - 240.0).max(160.0)).show(ui, |ui| {
            ui.set_width(624.0);
            taken(ui, draft);
            strange(ui, draft, out);
            rejected(ui, draft);
        });
        ui.separator();
        ui.horizontal(|ui| {
            let count = draft.matched.taken.len();
            let text = say!("survey-import-add", count = count);
            let add = ui.add_enabled_ui(count > 0, |ui| primary(ui, &text)).inner;
            if add.clicked() || (count > 0 && ui.input(|i| i.key_pressed(Key::Enter) && i.modifiers.is_none())) {
                out.push(Action::Import(ImportWish::Add));
            }
            if ui.button(say!("common-cancel")).clicked() {
                out.push(Action::Import(ImportWish::Drop));
            }
            ui.label(theme::soft(say!("survey-import-one-step")));
        });
    });
    if shown.should_close() {
        out.push(Action::Import(ImportWish::Drop));
    }
}

/// What will be added, per panel.
fn taken(ui: &mut Ui, draft: &ImportDraft) {
    let mut counts: BTreeMap<&PanelId, (usize, f64)> = BTreeMap::new();
    for reading in &draft.matched.taken {
        let (count, sum) = counts.entry(&reading.panel).or_default();
        *count += 1;
        *sum += reading.thickness.um();
    }
    ui.label(theme::bold(say!("survey-import-to", count = counts.len()), 14.0));
    if counts.is_empty() {
        ui.label(say!("survey-import-none"));
        return;
    }
    egui::Grid::new("taken").num_columns(3).striped(true).spacing([24.0, 4.0]).show(ui, |ui| {
        for heading in [say!("survey-import-panel"), say!("survey-import-readings"), say!("survey-import-mean")] {
            ui.label(theme::soft(heading));
        }
        ui.end_row();
        for panel in &draft.template.panels {
            let Some((count, sum)) = counts.get(&panel.id) else { continue };
            ui.label(panel.name(draft.naming));
            ui.label(count.to_string());
            ui.label(film(ui, sum / *count as f64, 0));
            ui.end_row();
        }
    });
}

/// Names that no panel has, each with a way to say which one is meant.
fn strange(ui: &mut Ui, draft: &ImportDraft, out: &mut Vec<Action>) {
    if draft.strange.is_empty() {
        return;
    }
    section(ui, say!("survey-import-no-panel"));
    for (name, rows) in &draft.strange {
        let now = draft.assigned.get(name);
        let panel_name = |id: &PanelId| draft.template.panel(id).map(|p| p.name(draft.naming)).unwrap_or_default();
        ui.horizontal(|ui| {
            let label = ui.label(say!("survey-import-name-rows", name = name.as_str(), count = *rows));
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                let shown = now.map_or_else(
                    || say!("survey-import-left-out").to_owned(),
                    |id| say!("survey-import-is", panel = panel_name(id)),
                );
                let combo = egui::ComboBox::from_id_salt(("assign", name)).width(240.0).selected_text(shown);
                let inner = combo.show_ui(ui, |ui| {
                    if ui.selectable_label(now.is_none(), say!("survey-import-left-out")).clicked() {
                        out.push(Action::Import(ImportWish::Assign(name.clone(), None)));
                    }
                    for panel in &draft.template.panels {
                        if ui.selectable_label(now == Some(&panel.id), panel.name(draft.naming)).clicked() {
                            out.push(Action::Import(ImportWish::Assign(name.clone(), Some(panel.id.clone()))));
                        }
                    }
                });
                inner.response.labelled_by(label.id);
            });
        });
    }
}

/// Rows that are not taken, with their line and why.
fn rejected(ui: &mut Ui, draft: &ImportDraft) {
    let mut rejected: Vec<_> = draft.readings.rejected.iter().chain(&draft.matched.impossible).collect();
    rejected.sort_by_key(|row| row.line);
    if rejected.is_empty() {
        return;
    }
    section(ui, &say!("survey-import-not-taken", count = rejected.len()));
    for row in rejected.iter().take(MOST_SHOWN) {
        ui.label(say!("survey-import-line", line = row.line, why = row.reason.as_str()));
    }
    if rejected.len() > MOST_SHOWN {
        ui.label(theme::soft(say!("survey-import-more", count = rejected.len() - MOST_SHOWN)));
    }
}

/// A button that asks for a file of readings.
pub(super) fn import_button(ui: &mut Ui, out: &mut Vec<Action>) {
    let button = ui.button(say!("survey-import-from-file"));
    if button.on_hover_text(say!("survey-import-from-file-hint")).clicked() {
        out.push(Action::Effect(Effect::AskReadings));
    }
}
