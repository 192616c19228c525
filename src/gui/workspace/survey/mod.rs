//! Survey: readings by number and Enter, defects by kind and click.

mod defects;
mod entry;
mod film;
mod paint;

pub(in crate::gui) use entry::next_reading;

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, panel_head, section};
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
    let insight = &m.insight.panels[index];
    panel_head(ui, m, index, panel);
    film::film_ui(ui, m, insight);
    entry::entry_ui(ui, m, index, out);
    entry::readings_ui(ui, panel, record, out);
    section(ui, "Defects");
    defects::defects_ui(ui, m, panel, record, out);
    section(ui, "Paint");
    paint::paint_ui(ui, panel, record, out);
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
    section(ui, "Gauge");
    fact(ui, "Principle", m.job.gauge.principle.name());
    fact(
        ui,
        "Accuracy",
        format!(
            "±({:.1} + {:.0}\u{202f}%)\u{202f}µm",
            m.job.gauge.accuracy_fixed_um.um(),
            m.job.gauge.accuracy_share * 100.0
        ),
    );
    ui.label(theme::soft(
        "These gauges read everything above the metal. The clear coat is assumed from it, as a range.",
    ));
}
