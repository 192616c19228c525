//! The gauge, and its checks on the bare plate and on shims.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, entry_field, number, said, section};
use crate::job::{Command, Job, Survey, SurveyChange, SurveyCheck};
use crate::measure::{Gauge, GaugeCheck, GaugePrinciple};
use crate::units::Micrometres;
use eframe::egui::{self, RichText, Ui};

/// How the gauge measures and how exactly.
pub(super) fn gauge_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, "Gauge");
    let gauge = &m.job.gauge;
    let mut set = |gauge: Gauge| out.push(Action::edit(Command::SetGauge(gauge)));
    let principles: Vec<_> = GaugePrinciple::ALL.iter().map(|p| (*p, p.name().to_owned())).collect();
    if let Some(principle) = choice(ui, "Principle", gauge.principle, &principles) {
        set(Gauge { principle, ..gauge.clone() });
    }
    let um = |value: f64| Micrometres::new(value).ok();
    let fixed = number(ui, "Accuracy, fixed part ±", "µm", gauge.accuracy_fixed_um.um(), 1, 0.0..=50.0);
    if let Some(accuracy_fixed_um) = fixed.and_then(um) {
        set(Gauge { accuracy_fixed_um, ..gauge.clone() });
    }
    let share = number(ui, "and of the reading ±", "%", gauge.accuracy_share * 100.0, 1, 0.0..=50.0);
    if let Some(percent) = share {
        set(Gauge { accuracy_share: percent / 100.0, ..gauge.clone() });
    }
    let step = number(ui, "Smallest step shown", "µm", gauge.resolution_um.um(), 2, 0.0..=50.0);
    if let Some(resolution_um) = step.and_then(um) {
        set(Gauge { resolution_um, ..gauge.clone() });
    }
    ui.label(theme::soft(
        "These gauges read everything above the metal. The clear coat is assumed from it, as a range.",
    ));
}

/// The checks of the present survey, and a way to note one.
pub(super) fn checks_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, "Check of the gauge");
    let current = m.job.current_survey() as usize;
    let Some(survey) = m.job.surveys.get(current) else { return };
    standing(ui, m.job, survey);
    for (index, check) in survey.checks.iter().enumerate() {
        check_row(ui, m.job, (current, index), check, out);
    }
    let certified = entry_field(ui, "check", "Certified, 0 for the bare plate", "µm", 0.0..=100_000.0);
    let shown = entry_field(ui, "check", "Gauge shows", "µm", 0.0..=100_000.0);
    let um = |value: Option<f64>| value.and_then(|v| Micrometres::new(v).ok());
    let check = um(certified.value).zip(um(shown.value));
    let note = ui.add_enabled(check.is_some(), egui::Button::new("Note check")).clicked();
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
        _ if doubtful > 0 => {
            let text = format!(
                "{doubtful} readings don't count, because the gauge failed. They stay where they are; read those spots again."
            );
            (text, true)
        }
        None => (
            "Not checked yet. Check on the bare plate and a shim before the first reading and after the last.".into(),
            false,
        ),
        Some(_) if fails => ("The gauge failed. Check it again on the same shim before the next reading.".into(), true),
        Some(check) if check.after_reading == last && last > 0 => {
            ("Passed, also after the last reading.".into(), false)
        }
        Some(_) => ("Passed so far. Check again after the last reading.".into(), false),
    };
    ui.label(RichText::new(text).color(if bad { p.note } else { p.ink }));
}

fn check_row(ui: &mut Ui, job: &Job, (survey, index): (usize, usize), check: &SurveyCheck, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let passes = job.gauge.passes(&check.check());
    ui.horizontal(|ui| {
        let when = match check.after_reading {
            0 => "before the first reading".to_owned(),
            n => format!("after reading {n}"),
        };
        let on = if check.certified_um > Micrometres::ZERO {
            format!("{}", check.certified_um)
        } else {
            "bare plate".to_owned()
        };
        let allowed = job.gauge.allowed_at(check.certified_um);
        let verdict = if passes { "good" } else { "fails" };
        ui.vertical(|ui| {
            ui.set_width(ui.available_width() - 84.0);
            ui.spacing_mut().item_spacing.y = 0.0;
            let text = format!("{on} shown as {}: {verdict}", check.shown_um);
            ui.label(RichText::new(said(ui, &text)).color(if passes { p.ink } else { p.note }));
            ui.label(theme::soft(said(ui, &format!("{when}, ±{allowed:.1} allowed"))));
        });
        let remove = ui.button("Remove").on_hover_text("Take a check away that was noted by mistake");
        if remove.clicked() {
            let change = SurveyChange::RemoveCheck { survey, check: index };
            out.push(Action::edit(Command::Survey(change)));
        }
    });
}
