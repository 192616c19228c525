//! The order of polishing in figures and words.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, section, worker_badge};
use crate::insight::{PolishOrder, reason_in_words};
use crate::say;
use crate::scene::Work;
use crate::units::{clock, minutes};
use crate::words::decimal;
use eframe::egui::{self, RichText, Sense, Ui, vec2};

/// How long it takes, and what that is against the best possible.
pub(super) fn whole_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let state = &m.polishing.state;
    let people = m.job.crew.len();
    section(ui, &say!("correction-people", people = people));
    for conflict in &state.conflicts {
        ui.label(RichText::new(conflict).color(p.note));
    }
    if state.is_empty() && !state.is_working() {
        ui.label(say!("correction-nothing-polished"));
        return;
    }
    let Some(order) = &m.polishing.order else {
        ui.label(if state.is_working() { say!("correction-planning") } else { say!("correction-no-order") });
        return;
    };
    if !state.is_current() {
        ui.label(RichText::new(say!("correction-out-of-date")).color(p.note));
    } else if state.is_working() {
        ui.label(theme::soft(say!("correction-looking")));
    }
    fact(ui, say!("correction-takes"), minutes(order.takes));
    fact(
        ui,
        if m.job.shop.leads { say!("correction-walking-leads") } else { say!("correction-walking") },
        minutes(order.walking),
    );
    if people > 1 {
        fact(ui, say!("correction-alone"), minutes(order.alone));
    }
    ui.label(against_the_best(order));
}

fn against_the_best(order: &PolishOrder) -> String {
    let most = 100.0 * order.could_be_better;
    if most < 0.5 {
        say!("correction-is-best").to_owned()
    } else {
        say!("correction-could-save", most = decimal(most, 0))
    }
}

/// Who does what when at the chosen panel, and why then.
pub(in super::super) fn panel_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let Some(order) = &m.polishing.order else { return };
    let rows: Vec<_> = order.rows.iter().filter(|r| r.panel == index).collect();
    if rows.is_empty() {
        return;
    }
    section(ui, say!("correction-who-and-when"));
    if !m.polishing.state.is_current() {
        let p = theme::of(ui.ctx());
        ui.label(RichText::new(say!("correction-out-of-date")).color(p.note));
    }
    let found = m.polishing.state.order();
    for row in rows {
        let name = &m.job.crew[row.worker].name;
        let local = if row.local { "yes" } else { "no" };
        let (at, does) = (clock(row.at.start), Work::Polish(row.kind).verb());
        let text = say!("correction-row", at = at, who = name, does = does, local = local);
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
