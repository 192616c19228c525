//! The order of polishing in figures and words.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, section, worker_badge};
use crate::insight::{PolishOrder, reason_in_words};
use crate::scene::Work;
use crate::units::{clock, minutes};
use eframe::egui::{self, RichText, Sense, Ui, vec2};

/// How long it takes, and what that is against the best possible.
pub(super) fn whole_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let state = &m.polishing.state;
    let people = m.job.crew.len();
    section(ui, &if people == 1 { "One person polishing".to_owned() } else { format!("{people} people polishing") });
    for conflict in &state.conflicts {
        ui.label(RichText::new(conflict).color(p.note));
    }
    if state.is_empty() && !state.is_working() {
        ui.label("Nothing is polished.");
        return;
    }
    let Some(order) = &m.polishing.order else {
        ui.label(if state.is_working() { "Planning…" } else { "There is no order." });
        return;
    };
    if !state.is_current() {
        ui.label(RichText::new("Out of date: a new order is being planned.").color(p.note));
    } else if state.is_working() {
        ui.label(theme::soft("Still looking for a better one…"));
    }
    fact(ui, "Takes", minutes(order.takes));
    fact(ui, if m.job.shop.leads { "Walking and laying leads" } else { "Walking" }, minutes(order.walking));
    if people > 1 {
        fact(ui, "One person alone", minutes(order.alone));
    }
    ui.label(against_the_best(order));
}

fn against_the_best(order: &PolishOrder) -> String {
    let most = 100.0 * order.could_be_better;
    if most < 0.5 {
        "No other order of this work is better: that is proven.".to_owned()
    } else {
        format!("No other order could save more than {most:.0}\u{202f}%: that is proven.")
    }
}

/// Who does what when at the chosen panel, and why then.
pub(in super::super) fn panel_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let Some(order) = &m.polishing.order else { return };
    let rows: Vec<_> = order.rows.iter().filter(|r| r.panel == index).collect();
    if rows.is_empty() {
        return;
    }
    section(ui, "Who and when");
    if !m.polishing.state.is_current() {
        let p = theme::of(ui.ctx());
        ui.label(RichText::new("Out of date: a new order is being planned.").color(p.note));
    }
    let found = m.polishing.state.order();
    for row in rows {
        let name = &m.job.crew[row.worker].name;
        let place = if row.local { " one place" } else { "" };
        let text = format!("{} {name} {}{place}", clock(row.at.start), Work::Polish(row.kind).verb());
        ui.horizontal(|ui| {
            let (area, _) = ui.allocate_exact_size(vec2(20.0, 20.0), Sense::hover());
            worker_badge(ui.painter(), area.center(), 9.0, row.worker, &row.stop.to_string());
            if ui.add(egui::Button::new(text).frame(false)).on_hover_text(&row.name).clicked() {
                out.push(Action::View(ViewChange::Moment(Some(row.at.start))));
            }
        });
        if let Some((found, reason)) = found.and_then(|f| Some((f, f.reasons.get(row.operation)?))) {
            let words = reason_in_words(&found.problem, m.template, m.view.naming, reason);
            ui.label(theme::soft(words));
        }
    }
}
