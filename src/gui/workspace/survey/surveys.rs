//! The surveys of this visit, and how another one begins.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{section, text};
use crate::job::{Command, Job, Survey, SurveyChange, SurveyStage};
use eframe::egui::Ui;

/// When and by whom, the earlier surveys, and buttons for another one.
pub(super) fn surveys_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let current = m.job.current_survey() as usize;
    let Some(survey) = m.job.surveys.get(current) else { return };
    section(ui, &format!("Survey {}, {}", current + 1, survey.stage.name()));
    let describe =
        |date: String, taken_by: String| Command::Survey(SurveyChange::Describe { survey: current, date, taken_by });
    if let Some((date, gesture)) = text(ui, "Day of the survey", &survey.date, 1) {
        out.push(Action::Edit(describe(date, survey.taken_by.clone()), Some(gesture)));
    }
    if let Some((taken_by, gesture)) = text(ui, "Gauge held by", &survey.taken_by, 1) {
        out.push(Action::Edit(describe(survey.date.clone(), taken_by), Some(gesture)));
    }
    for (number, earlier) in m.job.surveys.iter().enumerate().take(current) {
        ui.label(theme::soft(line(m.job, number, earlier)));
    }
    let begin = |stage: SurveyStage| {
        let taken_by = survey.taken_by.clone();
        Action::edit(Command::Survey(SurveyChange::Begin(Survey { taken_by, stage, ..Survey::default() })))
    };
    if readings(m.job, current) == 0 {
        if current > 0 && ui.button("Drop this survey").clicked() {
            out.push(Action::edit(Command::Survey(SurveyChange::Drop)));
        }
        return;
    }
    if ui.button("Measure again after polishing").on_hover_text("At the same spots, with the same gauge").clicked() {
        out.push(begin(SurveyStage::After));
    }
    let before = survey.stage == SurveyStage::Before;
    let hint = "The latest readings of a panel count; the earlier ones stay in the job";
    if before && ui.button("Read the vehicle anew").on_hover_text(hint).clicked() {
        out.push(begin(SurveyStage::Before));
    }
}

fn readings(job: &Job, survey: usize) -> usize {
    job.panels.values().flat_map(|r| &r.spots).map(|s| s.count_in(survey as u32)).sum()
}

/// An earlier survey on one line.
fn line(job: &Job, number: usize, survey: &Survey) -> String {
    let (number, count) = (format!("Survey {}", number + 1), format!("{} readings", readings(job, number)));
    let parts = [&number, survey.stage.name(), survey.date.trim(), survey.taken_by.trim(), &count];
    parts.into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join(", ")
}
