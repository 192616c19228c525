//! The surveys of this visit, and how another one begins.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{section, text};
use crate::job::{Command, Job, Survey, SurveyChange, SurveyStage};
use crate::say;
use eframe::egui::Ui;

/// When and by whom, the earlier surveys, and buttons for another one.
pub(super) fn surveys_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let current = m.job.current_survey() as usize;
    let Some(survey) = m.job.surveys.get(current) else { return };
    section(ui, &say!("survey-number-stage", number = current + 1, stage = survey.stage.name()));
    let describe =
        |date: String, taken_by: String| Command::Survey(SurveyChange::Describe { survey: current, date, taken_by });
    if let Some((date, gesture)) = text(ui, say!("survey-day-of-survey"), &survey.date, 1) {
        out.push(Action::Edit(describe(date, survey.taken_by.clone()), Some(gesture)));
    }
    if let Some((taken_by, gesture)) = text(ui, say!("survey-held-by"), &survey.taken_by, 1) {
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
        if current > 0 && ui.button(say!("survey-drop")).clicked() {
            out.push(Action::edit(Command::Survey(SurveyChange::Drop)));
        }
        return;
    }
    if ui.button(say!("survey-measure-after")).on_hover_text(say!("survey-measure-after-hint")).clicked() {
        out.push(begin(SurveyStage::After));
    }
    let before = survey.stage == SurveyStage::Before;
    let hint = say!("survey-anew-hint");
    if before && ui.button(say!("survey-anew")).on_hover_text(hint).clicked() {
        out.push(begin(SurveyStage::Before));
    }
}

fn readings(job: &Job, survey: usize) -> usize {
    job.panels.values().flat_map(|r| &r.spots).map(|s| s.count_in(survey as u32)).sum()
}

/// An earlier survey on one line.
fn line(job: &Job, number: usize, survey: &Survey) -> String {
    let count = say!("survey-reading-count", count = readings(job, number));
    let number = say!("survey-number", number = number + 1);
    let parts = [&number, survey.stage.name(), survey.date.trim(), survey.taken_by.trim(), &count];
    parts.into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join(", ")
}
