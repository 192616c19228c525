//! Survey: readings by number and Enter, defects by kind and click.

mod after;
mod defects;
mod dots;
mod entry;
mod film;
mod gauge;
mod gloss;
mod ledger;
mod paint;
mod points;
mod rules;
mod statistics;
mod surveys;

pub(in crate::gui) use entry::next_reading;

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{panel_head, section};
use crate::job::PanelRecord;
use eframe::egui::Ui;

/// Draws the survey of the chosen panel.
pub(super) fn survey_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some((index, panel)) = m.current() else {
        overview(ui, m, out);
        return;
    };
    let blank = PanelRecord::default();
    let record = m.job.record(&panel.id).map_or(&blank, |r| r);
    panel_head(ui, m, index, panel);
    film::film_ui(ui, m, index, out);
    entry::entry_ui(ui, m, index, out);
    entry::readings_ui(ui, panel, record, out);
    section(ui, "Defects");
    defects::defects_ui(ui, m, panel, record, out);
    section(ui, "Paint");
    paint::paint_ui(ui, panel, record, out);
    ledger::panel_ledger(ui, m, panel, record, out);
    gloss::gloss_ui(ui, m, panel, record, out);
}

/// What to do when no panel is chosen.
fn overview(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold("Survey", 20.0));
    ui.label("Choose a panel on the map, then type a reading and press Enter. The next spot lights up by itself.");
    let next = (0..m.template.panels.len()).find(|&i| next_reading(m, i).is_some());
    if let Some(index) = next {
        let name = m.template.panels[index].name(m.view.naming);
        if crate::gui::widgets::primary(ui, &format!("Read next: {name}")).clicked() {
            out.push(Action::View(ViewChange::Choose(Some(m.template.panels[index].id.clone()))));
        }
    } else {
        ui.label("Every panel that the gauge can read has its readings.");
    }
    points::all_points(ui, m, out);
    after::vehicle_after(ui, m);
    surveys::surveys_ui(ui, m, out);
    gauge::checks_ui(ui, m, out);
    gauge::gauge_ui(ui, m, out);
    rules::assurance_ui(ui, m, out);
    rules::bands_ui(ui, m, out);
    ledger::vehicle_ledger(ui, m, out);
}
