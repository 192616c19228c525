//! The customer sheet: what was found, what will be done, what won't and why, and how to look after it. Plain words, no figures of the
//! shop, none of its notes.

mod after;
mod found;
mod stays;

use super::calendar::care;
use super::fit::{Fitting, draw, fit};
use super::input::{SheetInput, job_code};
use super::model::{Block, Figure, Sheet, Table, TextSize};
use super::pictures::scene;
use crate::coat::DROPPINGS_ADVICE;
use crate::insight::{coated_panels, shop_cost, supplies};
use crate::polish::Level;
use crate::say;
use crate::scene::{MapScene, Overlay};
use crate::vehicle::Surface;
use crate::words::decimal;

/// The sheet for the customer: two pages, in smaller type where there is much to say, unless even that is too much.
pub fn customer(input: &SheetInput<'_>) -> Sheet {
    let (title, scene) = picture(input);
    let mut sheet = with(input, Figure::default());
    let mut fitting = Fitting { scene: &scene, title, badge: 2.7, heights: (64, 124), pages: 2 };
    let mut height = fit(&mut sheet, input, &fitting);
    if height.is_none() {
        sheet.dense = true;
        fitting.heights.0 = 52;
        height = fit(&mut sheet, input, &fitting);
    }
    draw(&mut sheet, input, &fitting, height);
    sheet
}

/// The picture of their vehicle: what is polished, or where nothing is, what was found.
fn picture(input: &SheetInput<'_>) -> (&'static str, MapScene) {
    let polished = input.insight.panels.iter().any(|p| !p.polish.steps.is_empty());
    let overlay = if polished { Overlay::Polish } else { Overlay::Defects };
    let mut scene = scene(input, overlay);
    if polished {
        plain_levels(&mut scene);
    }
    (if polished { say!("sheet-title-picture-polish") } else { say!("sheet-title-picture-found") }, scene)
}

/// All that the sheet says, round a picture.
fn with(input: &SheetInput<'_>, picture: Figure) -> Sheet {
    let job = input.job;
    let done = input.insight.panels.iter().any(|p| p.after.is_some());
    let title = if done { say!("sheet-title-done") } else { say!("sheet-title") };
    let mut sheet = Sheet::new(title, job_code(job));
    sheet.heading(1, title);
    sheet.facts(vec![
        (say!("sheet-vehicle"), job.vehicle.description.clone()),
        (say!("sheet-plate"), job.vehicle.plate.clone()),
        (say!("sheet-for"), job.customer.name.clone()),
        (say!("sheet-asked"), job.customer.wishes.clone()),
        (say!("sheet-date"), job.date.map(|d| d.in_words(input.options.dates)).unwrap_or_default()),
        (say!("sheet-shop"), input.shop.to_owned()),
    ]);
    sheet.blocks.push(Block::Figure(picture));
    sheet.heading(2, say!("sheet-found"));
    sheet.list(found::found(input));
    sheet.heading(2, if done { say!("sheet-was-done") } else { say!("sheet-will-be-done") });
    sheet.table(work(input));
    stays::stays(input, &mut sheet);
    after::before_and_after(input, &mut sheet);
    if input.options.costs {
        costs(input, &mut sheet);
    }
    look_after(input, &mut sheet);
    sheet.heading(2, say!("sheet-please-mind"));
    sheet.list(cautions(input));
    let (heading, words) = if done {
        (say!("sheet-handed-over"), say!("sheet-received"))
    } else {
        (say!("sheet-your-consent"), say!("sheet-consent"))
    };
    sheet.heading(2, heading);
    sheet.text(words);
    sheet.blocks.push(Block::FillIn(vec![
        say!("sheet-name").to_owned(),
        say!("sheet-date").to_owned(),
        say!("sheet-signature").to_owned(),
    ]));
    sheet
}

/// Levels in words that need no explanation; no bars of budgets.
fn plain_levels(scene: &mut MapScene) {
    use crate::scene::{Fill, LegendSymbol};
    for mark in &mut scene.panels {
        mark.budget_used = None;
        if let Fill::Level(level) = mark.fill {
            short(level).clone_into(&mut mark.value);
        }
    }
    scene.pins.clear();
    scene.legend.retain(|row| row.symbol != LegendSymbol::Budget);
    for row in &mut scene.legend {
        if let LegendSymbol::Fill(Fill::Level(level)) = row.symbol {
            in_words(level).clone_into(&mut row.text);
        }
    }
}

/// On a map.
fn short(level: Level) -> &'static str {
    match level {
        Level::Leave => "", // white says it, and there are often many
        Level::Gloss => say!("sheet-short-gloss"),
        Level::OneStep => say!("sheet-short-once"),
        Level::TwoStep => say!("sheet-short-several"),
        Level::SandAndPolish => say!("sheet-short-sanded"),
    }
}

fn in_words(level: Level) -> &'static str {
    match level {
        Level::Leave => say!("sheet-left"),
        Level::Gloss => say!("sheet-gently"),
        Level::OneStep => say!("sheet-once"),
        Level::TwoStep => say!("sheet-several"),
        Level::SandAndPolish => say!("sheet-sanded"),
    }
}

/// What is done to which panels, hardest first.
fn work(input: &SheetInput<'_>) -> Table {
    let mut table =
        Table::new(TextSize::Normal, &[(say!("sheet-work"), false, 0.0), (say!("sheet-panels"), false, 1.0)]);
    let panels = || input.template.panels.iter().zip(&input.insight.panels).enumerate();
    for level in Level::ALL.into_iter().rev() {
        let mine: Vec<usize> = panels()
            .filter(|(_, (p, i))| p.surface == Surface::Paint && i.polish.level == level)
            .map(|(k, _)| k)
            .collect();
        if !mine.is_empty() {
            table.row([in_words(level).to_owned(), input.names(&mine)]);
        }
    }
    let coated = coated_panels(input.job, input.template);
    if !coated.is_empty() {
        let left: Vec<usize> = (0..input.template.panels.len()).filter(|i| !coated.contains(i)).collect();
        let layers = match input.job.product.layers {
            0 | 1 => say!("sheet-coated").to_owned(),
            n => say!("sheet-coated-layers", count = n),
        };
        let which = if left.is_empty() {
            say!("sheet-all-panels").to_owned()
        } else {
            say!("sheet-all-but", panels = input.names(&left))
        };
        table.row([layers, which]);
    }
    table
}

fn costs(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let used = supplies(input.job, input.template, input.insight);
    let cost = shop_cost(input.job, input.insight, &used, input.polishing.map(|o| o.takes));
    let prices = &input.job.shop.prices;
    let money = |value: f64| format!("{}\u{202f}{}", decimal(value, 2), prices.currency);
    let mut table =
        Table::new(TextSize::Normal, &[(say!("sheet-cost-polishing"), false, 1.0), (say!("sheet-amount"), true, 0.0)]);
    table.row([say!("sheet-work").to_owned(), money(cost.labour)]);
    table.row([say!("sheet-supplies").to_owned(), money(cost.pads + cost.polish + cost.towels)]);
    table.row([say!("sheet-together").to_owned(), money(cost.total())]);
    sheet.heading(2, say!("sheet-costs"));
    sheet.table(table);
}

fn look_after(input: &SheetInput<'_>, sheet: &mut Sheet) {
    if coated_panels(input.job, input.template).is_empty() {
        return;
    }
    sheet.heading(2, say!("sheet-look-after"));
    match input.done() {
        Some(done) => sheet.text(say!("sheet-counted-from", moment = done.in_words(input.options.dates))),
        None => sheet.text(say!("sheet-counted")),
    }
    let mut table = Table::new(TextSize::Normal, &[(say!("sheet-when"), false, 0.0), (say!("sheet-what"), false, 1.0)]);
    for same in care(input).chunk_by(|a, b| a.0 == b.0) {
        let when = same.first().map(|(when, _)| when.clone()).unwrap_or_default();
        table.row([when, same.iter().map(|(_, what)| what.as_str()).collect::<Vec<_>>().join(" ")]);
    }
    sheet.table(table);
    sheet.list(vec![DROPPINGS_ADVICE.text().to_owned(), say!("sheet-until-hard").to_owned()]);
}

/// For somebody who owns the vehicle, not for those who work on it. Common practice, no source.
fn cautions(input: &SheetInput<'_>) -> Vec<String> {
    let coated = coated_panels(input.job, input.template);
    let is = |surface| coated.iter().any(|&i| input.template.panels[i].surface == surface);
    let mut list = vec![say!("sheet-polishing-cannot").to_owned(), say!("sheet-gauge-reads-all").to_owned()];
    if !coated.is_empty() {
        list.push(say!("sheet-coating-does").to_owned());
    }
    if is(Surface::Glass) {
        list.push(say!("sheet-wipers").to_owned());
    }
    list.push(say!("sheet-rules-first").to_owned());
    list
}
