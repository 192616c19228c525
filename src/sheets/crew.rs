//! Crew cards: for each person, large, their own order of coating and of polishing with the map, and what to watch for.

use super::fit::{Fitting, draw, fit};
use super::input::{SheetInput, job_code};
use super::model::{Block, Figure, Sheet, Table, TextSize};
use super::pictures::{own_order, own_polishing};
use crate::insight::{FIRST_CAUTION, OrderRow, PolishRow, coating_amount, coating_cautions, polish_cautions};
use crate::job::Role;
use crate::say;
use crate::units::clock;
use crate::units::listed;

/// A card for every person of the crew, each from a page of its own.
pub fn crew(input: &SheetInput<'_>) -> Sheet {
    let mut sheet = Sheet::new(say!("sheet-crew-cards"), job_code(input.job));
    for worker in 0..input.job.crew.len() {
        sheet.blocks.push(Block::NewPage);
        card(input, worker, &mut sheet);
    }
    sheet
}

fn card(input: &SheetInput<'_>, worker: usize, sheet: &mut Sheet) {
    let coating: Vec<&OrderRow> = input.order.iter().filter(|r| r.worker == worker).collect();
    let polishing: Vec<&PolishRow> =
        input.polishing.map(|o| o.rows.iter().filter(|r| r.worker == worker).collect()).unwrap_or_default();
    let mut first = Sheet::new("", String::new());
    head(input, worker, &mut first);
    if coating.is_empty() && polishing.is_empty() {
        first.text(say!("sheet-nothing-planned"));
    }
    if !polishing.is_empty() {
        first.heading(2, say!("sheet-polishing"));
        first.blocks.push(Block::Figure(Figure::default()));
        first.table(polish_list(input, &polishing));
        watch_for(input, &mut first, polish_cautions(input.job, input.template, input.insight));
        let (scene, title) = own_polishing(input, worker);
        let fitting = Fitting { scene: &scene, title: &title, badge: 3.6, heights: (52, 96), pages: 1 };
        let height = fit(&mut first, input, &fitting);
        draw(&mut first, input, &fitting, height);
    }
    sheet.blocks.append(&mut first.blocks);
    if !coating.is_empty() {
        coat(input, worker, &coating, sheet);
    }
}

/// Whose card it is, and for which vehicle.
fn head(input: &SheetInput<'_>, worker: usize, sheet: &mut Sheet) {
    let job = input.job;
    let member = &job.crew[worker];
    sheet.heading(1, member.name.clone());
    let roles: Vec<&str> = member.roles.iter().map(|r| r.verb()).collect();
    sheet.facts(vec![
        (say!("sheet-vehicle"), job.vehicle.description.clone()),
        (say!("sheet-plate"), job.vehicle.plate.clone()),
        (say!("sheet-date"), job.date.map(|d| d.in_words(input.options.dates)).unwrap_or_default()),
        (say!("sheet-coating"), say!("sheet-does", person = member.name.as_str(), does = listed(&roles))),
    ]);
}

/// The order of coating, from a page of its own.
fn coat(input: &SheetInput<'_>, worker: usize, rows: &[&OrderRow], sheet: &mut Sheet) {
    let member = &input.job.crew[worker];
    sheet.blocks.push(Block::NewPage);
    sheet.heading(2, say!("sheet-coating-of", person = member.name.as_str()));
    sheet.blocks.push(Block::Figure(own_order(input, worker, 95.0)));
    sheet.facts(coating_facts(input));
    sheet.small(say!("sheet-times-guide"));
    sheet.table(coat_list(input, rows, member.roles.len() > 1));
    watch_for(input, sheet, coating_cautions(input.job, input.template));
}

/// What to mind at this work; each part of a card can be carried on its own.
fn watch_for(input: &SheetInput<'_>, sheet: &mut Sheet, cautions: Vec<String>) {
    sheet.heading(2, say!("sheet-watch-for"));
    let cautions = cautions.iter().map(|caution| input.said(caution));
    sheet.list(std::iter::once(FIRST_CAUTION.text().to_owned()).chain(cautions).collect());
}

fn coating_facts(input: &SheetInput<'_>) -> Vec<(&'static str, String)> {
    let air = &input.insight.air;
    let window = say!("sheet-window", from = clock(air.window.min_s), to = clock(air.window.max_s));
    let mut facts = vec![
        (say!("sheet-product"), input.job.product.shown_name().to_owned()),
        (say!("sheet-level"), window),
        (
            say!("sheet-quantity"),
            input.said(say!("sheet-in-all", amount = format!("{:.0}", coating_amount(input.job, input.template)))),
        ),
    ];
    facts.extend(air.stops.iter().map(|stop| (say!("sheet-stop-air"), input.said(stop))));
    facts.extend(air.notices.iter().map(|notice| (say!("sheet-mind"), input.said(notice))));
    facts
}

/// Number, panel, time: to be read from two metres.
fn coat_list(input: &SheetInput<'_>, rows: &[&OrderRow], both_roles: bool) -> Table {
    let layers = rows.iter().any(|r| r.layer > 1);
    let mut table = Table::new(
        TextSize::Large,
        &[(say!("sheet-number"), true, 0.0), (say!("sheet-panel"), false, 1.0), (say!("sheet-from"), true, 0.0)],
    );
    for (place, row) in rows.iter().enumerate() {
        let mut panel = input.short_name(row.panel);
        if both_roles {
            panel = match row.role {
                Role::Apply => say!("sheet-apply-panel", panel = panel),
                Role::Level => say!("sheet-level-panel", panel = panel),
            };
        }
        if layers {
            panel = say!("sheet-panel-layer", panel = panel, layer = row.layer);
        }
        table.row([(place + 1).to_string(), panel, clock(row.at.start)]);
    }
    table
}

/// Stops with their steps and passes, a day after the other.
fn polish_list(input: &SheetInput<'_>, rows: &[&PolishRow]) -> Table {
    let mut table = Table::new(
        TextSize::Normal,
        &[
            (say!("sheet-stop"), true, 0.0),
            (say!("sheet-panel"), false, 0.8),
            (say!("sheet-steps"), false, 1.4),
            (say!("sheet-from"), true, 0.0),
        ],
    );
    for stop in rows.chunk_by(|a, b| a.stop == b.stop) {
        let Some(first) = stop.first() else { continue };
        let steps: Vec<String> = stop.iter().map(|row| step(input, row)).collect();
        let name = input.short_name(first.panel);
        table.row([first.stop.to_string(), name, steps.join("\n"), clock(first.at.start)]);
    }
    table
}

/// A step with its passes.
fn step(input: &SheetInput<'_>, row: &PolishRow) -> String {
    let plan = &input.insight.panels[row.panel].polish;
    if row.local {
        return say!("sheet-step-local", step = row.name.as_str());
    }
    match plan.steps.iter().find(|s| s.name == row.name && s.kind == row.kind) {
        Some(step) => say!("sheet-step-passes", step = row.name.as_str(), count = step.passes),
        None => row.name.clone(),
    }
}
