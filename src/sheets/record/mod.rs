//! The technical record: all that a later visit needs, by whom it was read and how.

mod coating;
mod panels;
mod work;

use super::input::{SheetInput, job_code};
use super::model::{Sheet, Table, TextSize};
use super::pictures::map_picture;
use crate::job::{Role, Survey};
use crate::measure::Gauge;
use crate::polish::Goal;
use crate::say;
use crate::scene::Overlay;
use crate::units::listed;
use crate::vehicle::template_name;
use crate::words::decimal;

/// The record.
pub fn record(input: &SheetInput<'_>) -> Sheet {
    let job = input.job;
    let mut sheet = Sheet::new(say!("sheet-record"), job_code(job));
    sheet.heading(1, say!("sheet-record"));
    let crew = |m: &crate::job::Member| {
        let roles: Vec<&str> = m.roles.iter().copied().map(Role::verb).collect();
        say!("sheet-member", person = m.name.as_str(), does = listed(&roles), experience = m.experience.name())
    };
    sheet.facts(vec![
        (say!("sheet-job"), job.name.clone()),
        (say!("sheet-job-code"), sheet.code.clone()),
        (
            say!("sheet-date"),
            job.date.map(|d| format!("{} ({d})", d.in_words(input.options.dates))).unwrap_or_default(),
        ),
        (say!("sheet-vehicle"), job.vehicle.description.clone()),
        (say!("sheet-plate"), job.vehicle.plate.clone()),
        (
            say!("sheet-template"),
            format!("{} ({})", template_name(&input.template.id, &input.template.name), input.template.id),
        ),
        (say!("sheet-history"), job.vehicle.history.clone()),
        (say!("sheet-customer"), job.customer.name.clone()),
        (say!("sheet-wishes"), job.customer.wishes.clone()),
        (say!("sheet-goal"), goal(job.goal)),
        (say!("sheet-shop"), input.shop.to_owned()),
        (say!("sheet-crew"), job.crew.iter().map(crew).collect::<Vec<_>>().join(", ")),
    ]);
    sheet.heading(2, say!("sheet-gauge-surveys"));
    sheet
        .facts(vec![(say!("sheet-gauge"), input.said(gauge(&job.gauge))), (say!("sheet-lower-bounds"), bounds(input))]);
    surveys(input, &mut sheet);
    sheet.blocks.push(super::model::Block::Figure(map_picture(input, Overlay::Film)));
    panels::panels(input, &mut sheet);
    work::work(input, &mut sheet);
    coating::coating(input, &mut sheet);
    sheet
}

fn goal(goal: Goal) -> String {
    match goal {
        Goal::Gloss => say!("sheet-goal-gloss").to_owned(),
        Goal::Correct { share } => say!("sheet-goal-share", share = format!("{:.0}\u{202f}%", share * 100.0)),
    }
}

fn gauge(gauge: &Gauge) -> String {
    say!(
        "sheet-gauge-facts",
        principle = gauge.principle.name(),
        fixed = gauge.accuracy_fixed_um.to_string(),
        share = format!("{}\u{202f}%", decimal(gauge.accuracy_share * 100.0, 1)),
        step = gauge.resolution_um.to_string(),
    )
}

fn bounds(input: &SheetInput<'_>) -> String {
    let a = input.job.assurance;
    say!(
        "sheet-bounds",
        coverage = format!("{:.0}\u{202f}%", a.coverage * 100.0),
        confidence = format!("{:.0}\u{202f}%", a.confidence * 100.0),
    )
}

fn surveys(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-survey"), true, 0.0),
            (say!("sheet-date"), false, 0.0),
            (say!("sheet-by"), false, 0.0),
            (say!("sheet-when"), false, 0.0),
            (say!("sheet-gauge-checks"), false, 1.0),
        ],
    );
    for (number, survey) in input.job.surveys.iter().enumerate() {
        let checks = checks(&input.job.gauge, survey);
        let told = |text: &str| if text.is_empty() { "\u{2013}".to_owned() } else { text.to_owned() };
        table.row([
            (number + 1).to_string(),
            told(&survey.date),
            told(&survey.taken_by),
            survey.stage.name().to_owned(),
            if checks.is_empty() { say!("common-none").to_owned() } else { input.said(checks.join("\n")) },
        ]);
    }
    sheet.table(table);
}

fn checks(gauge: &Gauge, survey: &Survey) -> Vec<String> {
    let check = |c: &crate::job::SurveyCheck| {
        let on = match c.certified_um.um() {
            um if um > 0.0 => say!("sheet-shim", film = c.certified_um.to_string()),
            _ => say!("sheet-bare-plate").to_owned(),
        };
        let (reading, shown) = (c.after_reading, c.shown_um.to_string());
        if gauge.passes(&c.check()) {
            say!("sheet-check-passed", reading = reading, on = on, shown = shown)
        } else {
            say!("sheet-check-failed", reading = reading, on = on, shown = shown)
        }
    };
    survey.checks.iter().map(check).collect()
}
