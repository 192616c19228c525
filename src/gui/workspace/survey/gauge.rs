//! The gauge, and its checks on the bare plate and on shims.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{button_room, choice, entry_field, number, said, section};
use crate::job::{Command, Job, Survey, SurveyChange, SurveyCheck};
use crate::measure::{Gauge, GaugeCheck, GaugePrinciple};
use crate::say;
use crate::units::Micrometres;
use eframe::egui::{self, RichText, Ui};

/// How the gauge measures and how exactly.
pub(super) fn gauge_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, say!("survey-gauge"));
    let gauge = &m.job.gauge;
    let mut set = |gauge: Gauge| out.push(Action::edit(Command::SetGauge(gauge)));
    let principles: Vec<_> = GaugePrinciple::ALL.iter().map(|p| (*p, p.name().to_owned())).collect();
    if let Some(principle) = choice(ui, say!("survey-principle"), gauge.principle, &principles) {
        set(Gauge { principle, ..gauge.clone() });
    }
    let um = |value: f64| Micrometres::new(value).ok();
    let fixed = number(ui, say!("survey-accuracy-fixed"), "µm", gauge.accuracy_fixed_um.um(), 1, 0.0..=50.0);
    if let Some(accuracy_fixed_um) = fixed.and_then(um) {
        set(Gauge { accuracy_fixed_um, ..gauge.clone() });
    }
    let share = number(ui, say!("survey-accuracy-share"), "%", gauge.accuracy_share * 100.0, 1, 0.0..=50.0);
    if let Some(percent) = share {
        set(Gauge { accuracy_share: percent / 100.0, ..gauge.clone() });
    }
    let step = number(ui, say!("survey-smallest-step"), "µm", gauge.resolution_um.um(), 2, 0.0..=50.0);
    if let Some(resolution_um) = step.and_then(um) {
        set(Gauge { resolution_um, ..gauge.clone() });
    }
    ui.label(theme::soft(say!("survey-gauges-read")));
}

/// The checks of the present survey, and a way to note one.
pub(super) fn checks_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, say!("survey-check-of-gauge"));
    let current = m.job.current_survey() as usize;
    let Some(survey) = m.job.surveys.get(current) else { return };
    standing(ui, m.job, survey);
    for (index, check) in survey.checks.iter().enumerate() {
        check_row(ui, m.job, (current, index), check, out);
    }
    let certified = entry_field(ui, "check", say!("survey-certified"), "µm", 0.0..=100_000.0);
    let shown = entry_field(ui, "check", say!("survey-gauge-shows"), "µm", 0.0..=100_000.0);
    let um = |value: Option<f64>| value.and_then(|v| Micrometres::new(v).ok());
    let check = um(certified.value).zip(um(shown.value));
    let note = ui.add_enabled(check.is_some(), egui::Button::new(say!("survey-note-check"))).clicked();
    if let Some((certified_um, shown_um)) = check.filter(|_| note || shown.entered) {
        certified.clear(ui);
        shown.clear(ui);
        let check = GaugeCheck { certified_um, shown_um };
        out.push(Action::edit(Command::Survey(SurveyChange::AddCheck(check))));
    }
}

/// What the checks so far mean.
fn standing(ui: &mut Ui, job: &Job, survey: &Survey) {
    let p = theme::of(ui.ctx());
    let number = job.current_survey();
    let suspects = job.suspects();
    let readings = job.panels.values().flat_map(|r| &r.spots).flat_map(|s| s.readings_in(number));
    let doubtful = readings.filter(|r| suspects.has(r)).count();
    let fails = survey.checks.iter().any(|c| !job.gauge.passes(&c.check()));
    let last = job.last_number(number);
    let (text, bad) = match survey.checks.last() {
        _ if doubtful > 0 => (say!("survey-gauge-doubtful", count = doubtful), true),
        None => (say!("survey-gauge-unchecked").to_owned(), false),
        Some(_) if fails => (say!("survey-gauge-failed").to_owned(), true),
        Some(check) if check.after_reading == last && last > 0 => (say!("survey-gauge-passed-last").to_owned(), false),
        Some(_) => (say!("survey-gauge-passed").to_owned(), false),
    };
    ui.label(RichText::new(text).color(if bad { p.note } else { p.ink }));
}

fn check_row(ui: &mut Ui, job: &Job, (survey, index): (usize, usize), check: &SurveyCheck, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let passes = job.gauge.passes(&check.check());
    let room = button_room(ui, say!("survey-remove"));
    ui.horizontal(|ui| {
        let when = match check.after_reading {
            0 => say!("survey-check-before").to_owned(),
            number => say!("survey-check-after", number = number),
        };
        let on = if check.certified_um > Micrometres::ZERO {
            format!("{}", check.certified_um)
        } else {
            say!("survey-bare-plate").to_owned()
        };
        let allowed = job.gauge.allowed_at(check.certified_um);
        ui.vertical(|ui| {
            ui.set_width(ui.available_width() - room);
            ui.spacing_mut().item_spacing.y = 0.0;
            let shown = check.shown_um.to_string();
            let text = if passes {
                say!("survey-check-good", on = on, shown = shown)
            } else {
                say!("survey-check-fails", on = on, shown = shown)
            };
            ui.label(RichText::new(said(ui, &text)).color(if passes { p.ink } else { p.note }));
            ui.label(theme::soft(said(
                ui,
                &say!("survey-check-allowed", when = when, allowed = format!("{allowed:.1}")),
            )));
        });
        let remove = ui.button(say!("survey-remove")).on_hover_text(say!("survey-remove-check"));
        if remove.clicked() {
            let change = SurveyChange::RemoveCheck { survey, check: index };
            out.push(Action::edit(Command::Survey(change)));
        }
    });
}
