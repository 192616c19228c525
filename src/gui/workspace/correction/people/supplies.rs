//! What polishing uses up, and what it costs the shop.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{fact, number, said, text};
use crate::insight::{people_seconds, shop_cost, supplies};
use crate::job::Command;
use crate::polish::{Prices, Shop, UsePolicy};
use crate::units::{SquareMetres, minutes};
use eframe::egui::Ui;

/// Amounts per step, and how much a shop uses.
pub(super) fn supplies_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let used = supplies(m.job, m.template, m.insight);
    if used.is_empty() {
        ui.label("Nothing is polished, so nothing is used.");
    }
    for step in &used {
        ui.label(&step.name);
        let tools = match (step.pads, step.sheets) {
            (0, sheets) => format!("{sheets} sheets"),
            (pads, _) => format!("{pads} pads, {:.0} polish", step.polish),
        };
        ui.label(theme::soft(said(ui, &format!("{:.1}: {tools}, {} towels", step.area, step.towels))));
    }
    let mut shop = m.job.shop.clone();
    let uses = &mut shop.uses;
    ui.add_space(4.0);
    ui.label(theme::soft("How much this shop uses (common practice and our estimates to start from)"));
    let area = |m2: f64| SquareMetres::new(m2).unwrap_or(SquareMetres::ZERO);
    if let Some(m2) = number(ui, "A pad serves", "m²", uses.m2_per_pad.m2(), 1, 0.1..=100.0) {
        uses.m2_per_pad = area(m2);
    }
    if let Some(ml) = number(ui, "Polish for a square metre", "ml", uses.polish_ml_per_m2, 1, 0.0..=200.0) {
        uses.polish_ml_per_m2 = ml;
    }
    if let Some(m2) = number(ui, "A towel serves", "m²", uses.m2_per_towel.m2(), 1, 0.1..=100.0) {
        uses.m2_per_towel = area(m2);
    }
    if let Some(sheets) = number(ui, "Sandpaper for a square metre", "sheets", uses.sheets_per_m2, 1, 0.0..=50.0) {
        uses.sheets_per_m2 = sheets;
    }
    if ui.checkbox(&mut shop.leads, "Machines are on leads").changed() || shop.uses != m.job.shop.uses {
        out.push(Action::edit(Command::SetShop(Box::new(shop.clone()))));
    }
    ui.label(theme::soft(format!(
        "With leads every change of side counts {}\u{202f}s for laying the lead round, so everybody tends to keep to a side. \
         Where the sockets are is not known.",
        crate::insight::LEAD_S
    )));
    if shop.uses != UsePolicy::default() && ui.button("Back to the usual amounts").clicked() {
        let usual = Shop { uses: UsePolicy::default(), ..m.job.shop.clone() };
        out.push(Action::edit(Command::SetShop(Box::new(usual))));
    }
}

/// Time and money.
pub(super) fn cost_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let used = supplies(m.job, m.template, m.insight);
    let takes = m.polishing.order.as_ref().map(|o| o.takes);
    let cost = shop_cost(m.job, m.insight, &used, takes);
    let Prices { currency, .. } = &m.job.shop.prices;
    fact(ui, "Time of everybody together", minutes(people_seconds(m.job, m.insight, takes)));
    if cost.total() > 0.0 {
        let money = |value: f64| format!("{value:.2}\u{202f}{currency}");
        fact(ui, "Labour", money(cost.labour));
        fact(ui, "Pads and sandpaper", money(cost.pads));
        fact(ui, "Polish", money(cost.polish));
        fact(ui, "Towels", money(cost.towels));
        fact(ui, "Polishing costs", theme::bold(money(cost.total()), 14.0));
    } else {
        ui.label("No prices yet: enter what the shop pays to see what polishing costs.");
    }
    let mut prices = m.job.shop.prices.clone();
    if let Some((currency, gesture)) = text(ui, "Currency", &prices.currency, 1) {
        let shop = Shop { prices: Prices { currency, ..prices }, ..m.job.shop.clone() };
        out.push(Action::Edit(Command::SetShop(Box::new(shop)), Some(gesture)));
        return;
    }
    let unit: String = prices.currency.chars().take(4).collect();
    for (label, price) in [
        ("An hour of one person", &mut prices.labour_per_hour),
        ("A pad, each time", &mut prices.pad),
        ("A sheet of sandpaper", &mut prices.sheet),
        ("A litre of polish", &mut prices.polish_per_litre),
        ("A towel, each time", &mut prices.towel),
    ] {
        if let Some(value) = number(ui, label, &unit, *price, 2, 0.0..=100_000.0) {
            *price = value;
        }
    }
    if prices != m.job.shop.prices {
        out.push(Action::edit(Command::SetShop(Box::new(Shop { prices, ..m.job.shop.clone() }))));
    }
    ui.label(theme::soft("Saved with the job. On no sheet for the customer."));
}
