//! Survey: readings by number and Enter, defects by kind and click.

mod after;
mod defect;
mod defects;
mod dots;
mod entry;
mod film;
mod gauge;
mod gloss;
mod ledger;
mod pad;
mod paint;
mod points;
mod rules;
mod several;
mod statistics;
mod surveys;

pub(in crate::gui) use defects::defect_keys;

use crate::gui::action::{Action, Model};
use crate::gui::import::import_button;
use crate::gui::theme;
use crate::gui::widgets::{panel_head, section};
use crate::job::PanelRecord;
use crate::say;
use eframe::egui::Ui;

/// Draws the survey of the chosen panel, or of the panels chosen.
pub(super) fn survey_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if m.view.chosen.len() > 1 {
        return several::several_ui(ui, m, out);
    }
    let Some((index, panel)) = m.current() else {
        overview(ui, m, out);
        return;
    };
    let blank = PanelRecord::default();
    let record = m.job.record(&panel.id).map_or(&blank, |r| r);
    panel_head(ui, m, index, panel);
    if let Some((index, defect)) = m.view.defect.and_then(|d| Some((d, record.defects.get(d)?))) {
        return defect::defect_ui(ui, m, panel, index, defect, out);
    }
    // The field keeps its place from panel to panel, so what varies in height comes after it.
    entry::entry_ui(ui, m, out);
    film::film_ui(ui, m, index, out);
    entry::readings_ui(ui, m, panel, record, out);
    section(ui, say!("survey-defects"));
    defects::defects_ui(ui, m, record, out);
    section(ui, say!("survey-paint"));
    paint::paint_ui(ui, m, &[panel], out);
    ledger::panel_ledger(ui, m, panel, record, out);
    gloss::gloss_ui(ui, m, panel, record, out);
}

/// What to do when no panel is chosen.
fn overview(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("survey-survey"), 20.0));
    ui.label(say!("survey-how-to"));
    entry::entry_ui(ui, m, out);
    import_button(ui, out);
    points::all_points(ui, m, out);
    after::vehicle_after(ui, m);
    surveys::surveys_ui(ui, m, out);
    gauge::checks_ui(ui, m, out);
    gauge::gauge_ui(ui, m, out);
    rules::assurance_ui(ui, m, out);
    rules::bands_ui(ui, m, out);
    ledger::vehicle_ledger(ui, m, out);
}
