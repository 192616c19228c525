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
use crate::scene::Overlay;

/// The record.
pub fn record(input: &SheetInput<'_>) -> Sheet {
    let job = input.job;
    let mut sheet = Sheet::new("Technical record", job_code(job));
    sheet.heading(1, "Technical record");
    let crew = |m: &crate::job::Member| {
        let roles: Vec<&str> = m.roles.iter().copied().map(Role::verb).collect();
        format!("{} ({}; {})", m.name, roles.join(" and "), m.experience.name())
    };
    sheet.facts(vec![
        ("Job", job.name.clone()),
        ("Job code", sheet.code.clone()),
        ("Date", job.date.map(|d| format!("{} ({d})", d.in_words(input.options.dates))).unwrap_or_default()),
        ("Vehicle", job.vehicle.description.clone()),
        ("Number plate", job.vehicle.plate.clone()),
        ("Vehicle template", format!("{} ({})", input.template.name, input.template.id)),
        ("History", job.vehicle.history.clone()),
        ("Customer", job.customer.name.clone()),
        ("Wishes", job.customer.wishes.clone()),
        ("Goal", goal(job.goal)),
        ("Crew", job.crew.iter().map(crew).collect::<Vec<_>>().join(", ")),
    ]);
    sheet.heading(2, "Gauge and surveys");
    sheet.facts(vec![("Gauge", gauge(&job.gauge)), ("Lower bounds", bounds(input))]);
    surveys(input, &mut sheet);
    sheet.blocks.push(super::model::Block::Figure(map_picture(input, Overlay::Film)));
    panels::panels(input, &mut sheet);
    work::work(input, &mut sheet);
    coating::coating(input, &mut sheet);
    sheet
}

fn goal(goal: Goal) -> String {
    match goal {
        Goal::Gloss => "Gloss only".to_owned(),
        Goal::Correct { share } => format!("{:.0}\u{202f}% of the defects gone", share * 100.0),
    }
}

fn gauge(gauge: &Gauge) -> String {
    format!(
        "{}; accuracy ±({} + {:.1}\u{202f}%), display steps of {}",
        gauge.principle.name(),
        gauge.accuracy_fixed_um,
        gauge.accuracy_share * 100.0,
        gauge.resolution_um
    )
}

fn bounds(input: &SheetInput<'_>) -> String {
    let a = input.job.assurance;
    format!(
        "hold for {:.0}\u{202f}% of a panel with {:.0}\u{202f}% confidence",
        a.coverage * 100.0,
        a.confidence * 100.0
    )
}

fn surveys(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let mut table = Table::new(
        TextSize::Small,
        &[
            ("Survey", true, 0.0),
            ("Date", false, 0.0),
            ("By", false, 0.0),
            ("When", false, 0.0),
            ("Checks of the gauge", false, 1.0),
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
            if checks.is_empty() { "none".to_owned() } else { checks.join("\n") },
        ]);
    }
    sheet.table(table);
}

fn checks(gauge: &Gauge, survey: &Survey) -> Vec<String> {
    let check = |c: &crate::job::SurveyCheck| {
        let verdict = if gauge.passes(&c.check()) { "passed" } else { "failed" };
        let on = match c.certified_um.um() {
            um if um > 0.0 => format!("shim of {}", c.certified_um),
            _ => "bare plate".to_owned(),
        };
        format!("after reading {}: {on} shown as {}, {verdict}", c.after_reading, c.shown_um)
    };
    survey.checks.iter().map(check).collect()
}
