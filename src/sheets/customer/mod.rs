//! The customer sheet: what was found, what will be done, what won't and why, and how to look after it. Plain words, no figures of the
//! shop, none of its notes.

mod after;
mod found;
mod stays;

use super::calendar::care;
use super::fit::{Fitting, draw, fit};
use super::input::{SheetInput, job_code};
use super::model::{Block, Figure, Sheet, Table, TextSize};
use crate::coat::DROPPINGS_ADVICE;
use crate::insight::{coated_panels, shop_cost, supplies};
use crate::polish::Level;
use crate::scene::{MapScene, Overlay, map_scene};
use crate::units::capital;
use crate::vehicle::Surface;

/// What they agree to.
const CONSENT: &str = "I have read this sheet and agree to the work described here. I know that polishing takes off a little of the clear \
                       coat for good.";

/// What they sign once the work is done.
const HANDED_OVER: &str = "I have looked at the vehicle and received this sheet.";

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
    let mut scene = map_scene(input.job, input.template, input.insight, overlay, input.order);
    if polished {
        plain_levels(&mut scene);
    }
    (if polished { "How hard each panel is polished" } else { "What was found, and where" }, scene)
}

/// All that the sheet says, round a picture.
fn with(input: &SheetInput<'_>, picture: Figure) -> Sheet {
    let job = input.job;
    let done = input.insight.panels.iter().any(|p| p.after.is_some());
    let title = if done { "Your vehicle: what was done" } else { "Your vehicle: what we found and what we will do" };
    let mut sheet = Sheet::new(title, job_code(job));
    sheet.heading(1, title);
    sheet.facts(vec![
        ("Vehicle", job.vehicle.description.clone()),
        ("Number plate", job.vehicle.plate.clone()),
        ("For", job.customer.name.clone()),
        ("You asked for", job.customer.wishes.clone()),
        ("Date", job.date.map(|d| d.in_words(input.options.dates)).unwrap_or_default()),
    ]);
    sheet.blocks.push(Block::Figure(picture));
    sheet.heading(2, "What we found");
    sheet.list(found::found(input));
    sheet.heading(2, if done { "What was done" } else { "What will be done" });
    sheet.table(work(input));
    stays::stays(input, &mut sheet);
    after::before_and_after(input, &mut sheet);
    if input.options.costs {
        costs(input, &mut sheet);
    }
    look_after(input, &mut sheet);
    sheet.heading(2, "Please mind");
    sheet.list(cautions(input));
    let (heading, words) = if done { ("Handed over", HANDED_OVER) } else { ("Your consent", CONSENT) };
    sheet.heading(2, heading);
    sheet.text(words);
    sheet.blocks.push(Block::FillIn(vec!["Name".to_owned(), "Date".to_owned(), "Signature".to_owned()]));
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
        Level::Gloss => "gloss",
        Level::OneStep => "once",
        Level::TwoStep => "several steps",
        Level::SandAndPolish => "wet sanded",
    }
}

fn in_words(level: Level) -> &'static str {
    match level {
        Level::Leave => "Left as it is",
        Level::Gloss => "Polished gently for gloss",
        Level::OneStep => "Polished once",
        Level::TwoStep => "Polished in several steps",
        Level::SandAndPolish => "Wet sanded, then polished",
    }
}

/// What is done to which panels, hardest first.
fn work(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(TextSize::Normal, &[("Work", false, 0.0), ("Panels", false, 1.0)]);
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
            0 | 1 => "Coated".to_owned(),
            n => format!("Coated in {n} layers"),
        };
        let which = if left.is_empty() { "All panels".to_owned() } else { format!("All but: {}", input.names(&left)) };
        table.row([layers, which]);
    }
    table
}

fn costs(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let used = supplies(input.job, input.template, input.insight);
    let cost = shop_cost(input.job, input.insight, &used, input.polishing.map(|o| o.takes));
    let prices = &input.job.shop.prices;
    let money = |value: f64| format!("{value:.2}\u{202f}{}", prices.currency);
    let mut table = Table::new(TextSize::Normal, &[("Cost of polishing", false, 1.0), ("Amount", true, 0.0)]);
    table.row(["Work".to_owned(), money(cost.labour)]);
    table.row(["Pads, polish and towels".to_owned(), money(cost.pads + cost.polish + cost.towels)]);
    table.row(["Together".to_owned(), money(cost.total())]);
    sheet.heading(2, "Costs");
    sheet.table(table);
}

fn look_after(input: &SheetInput<'_>, sheet: &mut Sheet) {
    if coated_panels(input.job, input.template).is_empty() {
        return;
    }
    sheet.heading(2, "Looking after it");
    match input.done() {
        Some(done) => sheet.text(format!(
            "Counted from {}, when the last panel is finished. If it gets later, all of it moves.",
            done.in_words(input.options.dates)
        )),
        None => sheet.text("Counted from the moment when the last panel is finished."),
    }
    let mut table = Table::new(TextSize::Normal, &[("When", false, 0.0), ("What", false, 1.0)]);
    for same in care(input).chunk_by(|a, b| a.0 == b.0) {
        let when = same.first().map(|(when, _)| when.clone()).unwrap_or_default();
        table.row([when, same.iter().map(|(_, what)| what.as_str()).collect::<Vec<_>>().join(" ")]);
    }
    sheet.table(table);
    sheet.list(vec![
        DROPPINGS_ADVICE.text().to_owned(),
        "Until it is fully hard: no strong cleaners, no washing brushes, and dry water off before it dries by itself."
            .to_owned(),
    ]);
}

/// For somebody who owns the vehicle, not for those who work on it. Common practice, no source.
fn cautions(input: &SheetInput<'_>) -> Vec<String> {
    let coated = coated_panels(input.job, input.template);
    let is = |surface| coated.iter().any(|&i| input.template.panels[i].surface == surface);
    let mut list = vec![
        "Polishing can't fill chips, can't bring back paint that is gone, and can't make failing paint sound.".to_owned(),
        "Our gauge reads all layers above the metal together. How much of that is clear coat we assume, with care; we don't measure it."
            .to_owned(),
    ];
    if !coated.is_empty() {
        list.push(
            "A coating makes washing easier and keeps gloss longer. It doesn't stop stone chips, dents or scratches from \
             keys and brushes, and it still wants washing."
                .to_owned(),
        );
    }
    if is(Surface::Glass) {
        list.push("Coated glass: try the wipers before you drive; if they judder, tell us.".to_owned());
    }
    list.push(format!(
        "{} and the maker's sheet for the coating come before anything said here.",
        capital("local rules")
    ));
    list
}
