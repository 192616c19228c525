//! Coating: the air, the window, the order.

use crate::coat::Air;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, number, primary, section, slider, worker_badge};
use crate::insight::{OrderRow, coating_amount, reason_in_words};
use crate::job::Command;
use crate::units::{Celsius, RelativeHumidity, clock, minutes};
use eframe::egui::{self, RichText, Sense, Ui, vec2};
use std::sync::Arc;

/// Draws the coating sheet.
pub(super) fn coating_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    verdict(ui, m);
    section(ui, "Order");
    order(ui, m, out);
    reasons(ui, m);
    section(ui, "Air");
    air(ui, m, out);
    section(ui, &m.job.product.name);
    product(ui, m, out);
    section(ui, "Step by step");
    rows(ui, m, out);
}

fn verdict(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let air = &m.insight.air;
    let (text, color) = if air.go { ("The air is right", p.go) } else { ("Stop", p.stop) };
    ui.label(theme::bold(text, 20.0).color(color));
    for stop in &air.stops {
        ui.label(RichText::new(stop).color(p.stop));
    }
    for notice in &air.notices {
        ui.label(RichText::new(notice).color(p.note));
    }
    fact(ui, "Dew point", format!("{:.1}", air.dew_point));
    fact(ui, "Surface above it", format!("{:.1}", air.margin));
    fact(ui, "Level after", format!("{} to {}", clock(air.window.min_s), clock(air.window.max_s)));
}

fn air(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let air = m.job.air;
    let mut set = |air: Air, gesture| out.push(Action::Edit(Command::SetAir(air), Some(gesture)));
    let temperature = |value: f64| Celsius::new(value).unwrap_or(air.air_temp_c);
    if let Some((value, gesture)) = slider(ui, "Air", "°C", air.air_temp_c.c(), 0.0..=40.0, 0.5) {
        set(Air { air_temp_c: temperature(value), ..air }, gesture);
    }
    if let Some((value, gesture)) = slider(ui, "Humidity", "%", air.humidity_pct.pct(), 5.0..=100.0, 1.0) {
        let humidity_pct = RelativeHumidity::new(value).unwrap_or(air.humidity_pct);
        set(Air { humidity_pct, ..air }, gesture);
    }
    if let Some((value, gesture)) = slider(ui, "Coldest panel", "°C", air.surface_temp_c.c(), 0.0..=60.0, 0.5) {
        set(Air { surface_temp_c: temperature(value), ..air }, gesture);
    }
}

fn product(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let product = &m.job.product;
    let mut changed = product.clone();
    if let Some(seconds) = number(ui, "Level no sooner than", "s", product.window_min_s as f64, 0, 0.0..=3600.0) {
        changed.window_min_s = seconds as i64;
    }
    if let Some(seconds) = number(ui, "and no later than", "s", product.window_max_s as f64, 0, 10.0..=7200.0) {
        changed.window_max_s = seconds as i64;
    }
    if let Some(seconds) = number(ui, "Apply a square metre in", "s", product.apply_s_per_m2, 0, 5.0..=600.0) {
        changed.apply_s_per_m2 = seconds;
    }
    if let Some(seconds) = number(ui, "Level a square metre in", "s", product.level_s_per_m2, 0, 5.0..=600.0) {
        changed.level_s_per_m2 = seconds;
    }
    if changed != *product && changed.window_max_s >= changed.window_min_s {
        out.push(Action::edit(Command::SetProduct(Box::new(changed))));
    }
    ui.label(theme::soft(format!(
        "Window at {:.0} and {:.0} humidity; the model moves it with air and surface. The label of the product comes first.",
        product.reference_temp_c, product.reference_humidity_pct
    )));
    fact(ui, "Coating for the vehicle", format!("{:.0}", coating_amount(m.job, m.template)));
}

fn order(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    for conflict in &m.order.conflicts {
        ui.label(RichText::new(conflict).color(p.note));
    }
    let Some(order) = m.order.order() else {
        ui.label(if m.order.is_working() { "Planning…" } else { "There is no order." });
        return;
    };
    if !m.order.is_current() {
        ui.label(RichText::new("Out of date: a new order is being planned.").color(p.note));
    } else if m.order.is_working() {
        ui.label(theme::soft("Still looking for a better one…"));
    }
    let plan = &order.plan;
    fact(ui, "Takes", minutes(plan.makespan_s));
    fact(ui, "Walking, all together", minutes(plan.walking_s));
    let most = 100.0 * (plan.cost - plan.bound) as f64 / plan.cost.max(1) as f64;
    fact(ui, "Could be better by at most", format!("{most:.0}\u{202f}%"));
    if let Some(lateness) = &order.lateness {
        fact(ui, "A panel late on", format!("{:.0}\u{202f}% of days", lateness.late_chance * 100.0));
    }
    if let Some(habits) = order.habits {
        fact(ui, "Long walks", habits.jumps.to_string());
        fact(ui, "Changes of side", habits.side_changes.to_string());
    }
    let accepted = m.job.order.as_deref() == Some(&**plan);
    if accepted {
        ui.label(RichText::new("This order is accepted and saved with the job.").color(p.go));
    } else if m.order.is_current() && !m.order.is_working() && primary(ui, "Accept this order").clicked() {
        out.push(Action::edit(Command::SetOrder(Some(Arc::clone(plan)))));
    }
}

/// Why the chosen panel comes where it does.
fn reasons(ui: &mut Ui, m: &Model<'_>) {
    let Some((order, (_, panel))) = m.order.order().zip(m.current()) else { return };
    let operations = order.problem.operations.iter().zip(order.reasons.iter());
    let mine: Vec<&String> = operations.filter(|(o, _)| o.panel == panel.id.as_str()).map(|(_, r)| r).collect();
    if mine.is_empty() {
        return;
    }
    section(ui, &format!("Why {} here", panel.name(m.view.naming)));
    for reason in mine {
        ui.label(reason_in_words(&order.problem, m.template, m.view.naming, reason));
    }
}

/// Every step with its time.
fn rows(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.spacing_mut().item_spacing.y = 0.0;
    let mut numbers = vec![0; m.job.crew.len()];
    for row in m.rows {
        numbers[row.worker] += 1;
        one_row(ui, m, row, numbers[row.worker], out);
    }
}

fn one_row(ui: &mut Ui, m: &Model<'_>, row: &OrderRow, count: usize, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let panel = &m.template.panels[row.panel];
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 24.0), Sense::click());
    let text = format!(
        "{} {} {} {}",
        clock(row.at.start),
        m.job.crew[row.worker].name,
        row.role.verb(),
        panel.name(m.view.naming)
    );
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &text));
    if !ui.is_rect_visible(area) {
        return;
    }
    let paint = ui.painter();
    if m.view.chosen.contains(&panel.id) {
        paint.rect_filled(area, 4.0, p.accent_wash);
    } else if response.hovered() {
        paint.rect_filled(area, 4.0, p.paper);
    }
    let y = area.center().y;
    let font = egui::FontId::proportional(14.0);
    let left = egui::Align2::LEFT_CENTER;
    paint.text(
        egui::pos2(area.left() + 40.0, y),
        egui::Align2::RIGHT_CENTER,
        clock(row.at.start),
        font.clone(),
        p.ink_soft,
    );
    worker_badge(paint, egui::pos2(area.left() + 58.0, y), 9.0, row.worker, &count.to_string());
    let words = format!(
        "{} {}",
        if row.role == crate::job::Role::Apply { "apply" } else { "level" },
        panel.name(m.view.naming)
    );
    paint.text(egui::pos2(area.left() + 76.0, y), left, words, font, p.ink);
    if response.clicked() {
        out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        out.push(Action::View(ViewChange::Moment(Some(row.at.start))));
    }
}
