//! The order in figures and in words, and step by step.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, one_line_at, primary, section, worker_badge};
use crate::insight::{CrewOrder, OrderRow, reason_in_words};
use crate::job::{Command, Role};
use crate::say;
use crate::units::{clock, minutes};
use crate::words::decimal;
use eframe::egui::{self, RichText, Sense, Ui, vec2};
use std::sync::Arc;

/// What the order takes and costs, and the button that accepts it.
pub(super) fn order_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    for conflict in &m.order.conflicts {
        ui.label(RichText::new(conflict).color(p.note));
    }
    let Some(order) = m.order.order() else {
        ui.label(if m.order.is_working() { say!("coating-planning") } else { say!("coating-no-order") });
        return;
    };
    if !m.order.is_current() {
        ui.label(RichText::new(say!("coating-out-of-date")).color(p.note));
    } else if m.order.is_working() {
        ui.label(theme::soft(say!("coating-still-looking")));
    }
    let plan = &order.plan;
    fact(ui, say!("coating-takes"), minutes(plan.makespan_s));
    fact(ui, say!("coating-walking"), minutes(plan.walking_s));
    if let Some(lateness) = &order.lateness {
        let share = decimal(lateness.late_chance * 100.0, 0);
        fact(ui, say!("coating-late-on"), say!("coating-of-days", share = share));
    }
    if let Some(habits) = order.habits {
        fact(ui, say!("coating-long-walks"), habits.jumps.to_string());
        fact(ui, say!("coating-side-changes"), habits.side_changes.to_string());
    }
    for sentence in against_the_best(order) {
        ui.label(sentence);
    }
    let accepted = m.job.order.as_deref() == Some(&**plan);
    if accepted {
        ui.label(RichText::new(say!("coating-order-accepted")).color(p.go));
    } else if m.order.is_current() && !m.order.is_working() && primary(ui, say!("coating-accept-order")).clicked() {
        out.push(Action::edit(Command::SetOrder(Some(Arc::clone(plan)))));
    }
}

/// What the order costs against the best there can be, and what the wishes cost, as sentences.
fn against_the_best(order: &CrewOrder) -> Vec<String> {
    let plan = &order.plan;
    let weight = order.problem.objective.makespan.max(1);
    let seconds = (plan.cost - plan.bound) / weight;
    let share = 100.0 * (plan.cost - plan.bound) as f64 / plan.cost.max(1) as f64;
    let mut sentences = vec![if seconds <= 0 {
        say!("coating-proven-best").to_owned()
    } else {
        say!("coating-proven-within", time = minutes(seconds), share = decimal(share, 0))
    }];
    if let Some(free) = &order.free {
        let longer = plan.makespan_s - free.makespan_s;
        sentences.push(if longer <= 0 {
            say!("coating-wishes-cost-nothing").to_owned()
        } else {
            say!("coating-wishes-cost", longer = minutes(longer), free = minutes(free.makespan_s))
        });
    }
    sentences
}

/// Why the chosen panel comes where it does.
pub(super) fn reasons_ui(ui: &mut Ui, m: &Model<'_>) {
    let Some((order, (_, panel))) = m.order.order().zip(m.current()) else { return };
    let operations = order.problem.operations.iter().zip(order.reasons.iter());
    let mine: Vec<&String> = operations.filter(|(o, _)| o.panel == panel.id.as_str()).map(|(_, r)| r).collect();
    if mine.is_empty() {
        return;
    }
    section(ui, &say!("coating-why-here", panel = panel.name(m.view.naming)));
    for reason in mine {
        ui.label(reason_in_words(&order.problem, m.template, m.view.naming, reason));
    }
}

/// Every step with its time.
pub(super) fn rows_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
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
    let (time, person, name) = (clock(row.at.start), &m.job.crew[row.worker].name, panel.name(m.view.naming));
    let text = match row.role {
        Role::Apply => say!("coating-row-apply", time = &time, person = person, panel = &name),
        Role::Level => say!("coating-row-level", time = &time, person = person, panel = &name),
    };
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
    let at = egui::pos2(area.left() + 40.0, y);
    paint.text(at, egui::Align2::RIGHT_CENTER, time, font.clone(), p.ink_soft);
    worker_badge(paint, egui::pos2(area.left() + 58.0, y), 9.0, row.worker, &count.to_string());
    let words = match row.role {
        Role::Apply => say!("coating-apply-panel", panel = name),
        Role::Level => say!("coating-level-panel", panel = name),
    };
    let at = egui::pos2(area.left() + 76.0, y);
    one_line_at(paint, at, left, &words, (font, p.ink), area.right() - at.x);
    if response.clicked() {
        out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        out.push(Action::View(ViewChange::Moment(Some(row.at.start))));
    }
}
