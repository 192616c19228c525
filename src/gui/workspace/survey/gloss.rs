//! Gloss of a panel, where somebody has the instrument.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, entry_field};
use crate::job::{Command, Job, PanelRecord, SurveyChange, SurveyStage};
use crate::measure::{GlossComparison, GlossGeometry, compare_gloss, next_gloss_geometry};
use crate::say;
use crate::units::GlossUnits;
use crate::vehicle::Panel;
use eframe::egui::{self, Ui};

/// The gloss readings, what they show, and a field for the next one; closed at first.
pub(super) fn gloss_ui(ui: &mut Ui, m: &Model<'_>, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    egui::CollapsingHeader::new(say!("survey-gloss")).id_salt("gloss").show(ui, |ui| {
        for (reading, gloss) in record.gloss.iter().enumerate() {
            ui.horizontal(|ui| {
                let stage = m.job.surveys.get(gloss.survey as usize).map_or("", |s| s.stage.name());
                ui.label(say!(
                    "survey-gloss-at",
                    gloss = format!("{:.1}", gloss.gloss_gu),
                    angle = format!("{:.0}", gloss.geometry.degrees()),
                    stage = stage,
                ));
                ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                    if ui.button(say!("survey-remove")).clicked() {
                        let change = SurveyChange::RemoveGloss { panel: panel.id.clone(), reading };
                        out.push(Action::edit(Command::Survey(change)));
                    }
                });
            });
        }
        for comparison in comparisons(m.job, record) {
            ui.label(comparison.text);
        }
        next(ui, m.job, panel, record, out);
        ui.label(theme::soft(say!("survey-gloss-compare")));
    });
}

/// Before against after in each geometry read at both times.
fn comparisons(job: &Job, record: &PanelRecord) -> Vec<GlossComparison> {
    let at = |geometry: GlossGeometry, stage| -> Vec<f64> {
        let of = |survey: u32| job.surveys.get(survey as usize).map(|s| s.stage);
        let mine = record.gloss.iter().filter(|g| g.geometry == geometry && of(g.survey) == Some(stage));
        mine.map(|g| g.gloss_gu.gu()).collect()
    };
    GlossGeometry::ALL
        .into_iter()
        .filter_map(|g| compare_gloss(g, &at(g, SurveyStage::Before), &at(g, SurveyStage::After)))
        .collect()
}

/// The next reading, in the geometry that the rule asks for unless another one is chosen.
fn next(ui: &mut Ui, job: &Job, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    let survey = job.current_survey();
    let taken = record.gloss.iter().filter(|g| g.survey == survey).map(|g| (g.geometry, g.gloss_gu.gu()));
    let (advised, why) = next_gloss_geometry(&taken.collect::<Vec<_>>());
    ui.label(why);
    let id = ui.make_persistent_id(("gloss geometry", panel.id.as_str()));
    let mut geometry = ui.data(|d| d.get_temp::<(GlossGeometry, usize)>(id)).filter(|c| c.1 == record.gloss.len());
    let names: Vec<_> = GlossGeometry::ALL.iter().map(|g| (*g, format!("{:.0}°", g.degrees()))).collect();
    if let Some(chosen) = choice(ui, say!("survey-angle"), geometry.map_or(advised, |g| g.0), &names) {
        geometry = Some((chosen, record.gloss.len()));
        ui.data_mut(|d| d.insert_temp(id, (chosen, record.gloss.len())));
    }
    let geometry = geometry.map_or(advised, |g| g.0);
    let typed = entry_field(ui, panel.id.as_str(), say!("survey-gloss-reading"), "GU", 0.0..=2_000.0);
    if typed.entered
        && let Some(gloss) = typed.value.and_then(|gu| GlossUnits::new(gu).ok())
    {
        typed.clear(ui);
        let change = SurveyChange::AddGloss { panel: panel.id.clone(), geometry, gloss };
        out.push(Action::edit(Command::Survey(change)));
    }
}
