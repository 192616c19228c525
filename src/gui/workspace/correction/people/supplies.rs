//! What polishing uses up, and what it costs the shop.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{fact, number, said, text};
use crate::insight::{people_seconds, shop_cost, supplies};
use crate::job::Command;
use crate::polish::{Prices, Shop, UsePolicy};
use crate::say;
use crate::units::{SquareMetres, minutes};
use crate::words::decimal;
use eframe::egui::Ui;

/// Amounts per step, and how much a shop uses.
pub(super) fn supplies_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let used = supplies(m.job, m.template, m.insight);
    if used.is_empty() {
        ui.label(say!("correction-nothing-used"));
    }
    for step in &used {
        ui.label(&step.name);
        let (area, towels) = (format!("{:.1}", step.area), step.towels);
        let uses = match (step.pads, step.sheets) {
            (0, sheets) => say!("correction-uses-sheets", area = area, sheets = sheets, towels = towels),
            (pads, _) => {
                let polish = format!("{:.0}", step.polish);
                say!("correction-uses-pads", area = area, pads = pads, polish = polish, towels = towels)
            }
        };
        ui.label(theme::soft(said(ui, &uses)));
    }
    let mut shop = m.job.shop.clone();
    let uses = &mut shop.uses;
    ui.add_space(4.0);
    ui.label(theme::soft(say!("correction-shop-uses")));
    let area = |m2: f64| SquareMetres::new(m2).unwrap_or(SquareMetres::ZERO);
    if let Some(m2) = number(ui, say!("correction-pad-serves"), "m²", uses.m2_per_pad.m2(), 1, 0.1..=100.0) {
        uses.m2_per_pad = area(m2);
    }
    if let Some(ml) = number(ui, say!("correction-polish-for-area"), "ml", uses.polish_ml_per_m2, 1, 0.0..=200.0) {
        uses.polish_ml_per_m2 = ml;
    }
    if let Some(m2) = number(ui, say!("correction-towel-serves"), "m²", uses.m2_per_towel.m2(), 1, 0.1..=100.0) {
        uses.m2_per_towel = area(m2);
    }
    if let Some(sheets) =
        number(ui, say!("correction-sandpaper-for-area"), say!("correction-sheets"), uses.sheets_per_m2, 1, 0.0..=50.0)
    {
        uses.sheets_per_m2 = sheets;
    }
    if ui.checkbox(&mut shop.leads, say!("correction-on-leads")).changed() || shop.uses != m.job.shop.uses {
        out.push(Action::edit(Command::SetShop(Box::new(shop.clone()))));
    }
    ui.label(theme::soft(say!("correction-leads-cost", seconds = crate::insight::LEAD_S)));
    if shop.uses != UsePolicy::default() && ui.button(say!("correction-back-to-usual")).clicked() {
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
    fact(ui, say!("correction-people-time"), minutes(people_seconds(m.job, m.insight, takes)));
    if cost.total() > 0.0 {
        let money = |value: f64| format!("{}\u{202f}{currency}", decimal(value, 2));
        fact(ui, say!("correction-cost-labour"), money(cost.labour));
        fact(ui, say!("correction-cost-pads"), money(cost.pads));
        fact(ui, say!("correction-cost-polish"), money(cost.polish));
        fact(ui, say!("correction-cost-towels"), money(cost.towels));
        fact(ui, say!("correction-cost-total"), theme::bold(money(cost.total()), 14.0));
    } else {
        ui.label(say!("correction-no-prices"));
    }
    let mut prices = m.job.shop.prices.clone();
    if let Some((currency, gesture)) = text(ui, say!("correction-currency"), &prices.currency, 1) {
        let shop = Shop { prices: Prices { currency, ..prices }, ..m.job.shop.clone() };
        out.push(Action::Edit(Command::SetShop(Box::new(shop)), Some(gesture)));
        return;
    }
    let unit: String = prices.currency.chars().take(4).collect();
    for (label, price) in [
        (say!("correction-price-hour"), &mut prices.labour_per_hour),
        (say!("correction-price-pad"), &mut prices.pad),
        (say!("correction-price-sheet"), &mut prices.sheet),
        (say!("correction-price-litre"), &mut prices.polish_per_litre),
        (say!("correction-price-towel"), &mut prices.towel),
    ] {
        if let Some(value) = number(ui, label, &unit, *price, 2, 0.0..=100_000.0) {
            *price = value;
        }
    }
    if prices != m.job.shop.prices {
        out.push(Action::edit(Command::SetShop(Box::new(Shop { prices, ..m.job.shop.clone() }))));
    }
    ui.label(theme::soft(say!("correction-prices-private")));
}
