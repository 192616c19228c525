//! Before the day: who begins with what, whether the air allows it, where the log will be.

use super::parts::{GAP, Look, TARGET, press, row, side_by_side};
use crate::gui::action::{Action, Effect, Model};
use crate::gui::bay::{BayWish, Trade};
use crate::gui::theme;
use crate::gui::widgets::said;
use crate::insight::spoken;
use crate::job::Role;
use crate::say;
use crate::units::minutes;
use crate::work::Place;
use eframe::egui::{RichText, Sense, Ui, vec2};

/// Draws the sheet.
pub(super) fn start_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let trade = m.view.bay.trade;
    let (place, _) = ui.allocate_exact_size(vec2(ui.available_width(), TARGET), Sense::hover());
    let look = |t: Trade| if t == trade { Look::Chosen } else { Look::Plain };
    let buttons = Trade::ALL.map(|t| (t.name(), look(t), t.day().to_owned()));
    if let Some(index) = side_by_side(ui, place, &buttons, &[18.0, 16.0]) {
        out.push(Action::Bay(BayWish::Show(Trade::ALL[index])));
    }
    ui.add_space(GAP);
    let run = m.day_run();
    if let Some(failure) = &run.failure {
        ui.label(RichText::new(failure).size(16.0).color(p.stop));
    }
    if run.problem().operations.is_empty() {
        ui.label(RichText::new(say!("bay-nothing-to-polish")).size(16.0));
        return;
    }
    if trade == Trade::Coating && !m.insight.air.go {
        ui.label(theme::bold(say!("bay-stop"), 20.0).color(p.stop));
        for stop in &m.insight.air.stops {
            ui.label(RichText::new(said(ui, stop)).size(16.0).color(p.stop));
        }
    }
    first_steps(ui, m);
    ui.add_space(GAP);
    match run.place() {
        Place::Nowhere if run.failure.is_some() => save_elsewhere(ui, out),
        Place::Nowhere => {
            ui.label(RichText::new(say!("bay-why-save")).size(16.0));
            if row(ui, say!("bay-save-first"), Look::Filled(p.accent)) {
                out.push(Action::Effect(Effect::AskSaveAs));
            }
            if row(ui, say!("bay-try-unsaved"), Look::Plain) {
                out.push(Action::Bay(BayWish::Rehearse));
            }
        }
        place => {
            if *place == Place::Memory {
                ui.label(RichText::new(say!("bay-only-to-try")).size(16.0).color(p.note));
            }
            let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), 112.0), Sense::hover());
            let start = say!("bay-start-day");
            if !run.can_begin() {
                ui.label(say!("bay-no-order-yet"));
            } else if press(ui, area, start, &[32.0, 28.0], Look::Filled(p.accent), start) {
                out.push(Action::Bay(BayWish::Begin));
            }
            if run.failure.is_some() && *place != Place::Memory {
                ui.add_space(GAP);
                save_elsewhere(ui, out);
            }
        }
    }
}

/// Where the log can't be kept beside this file.
fn save_elsewhere(ui: &mut Ui, out: &mut Vec<Action>) {
    ui.label(RichText::new(say!("bay-elsewhere")).size(16.0));
    if row(ui, say!("keep-save-as"), Look::Plain) {
        out.push(Action::Effect(Effect::AskSaveAs));
    }
}

/// Who begins with what, and how long it takes.
fn first_steps(ui: &mut Ui, m: &Model<'_>) {
    let (rows, all) = match m.view.bay.trade {
        Trade::Coating => (first_of_coating(m), m.order.order().map(|o| o.plan.makespan_s)),
        Trade::Polishing => (first_of_polishing(m), m.polishing.order.as_ref().map(|o| o.takes)),
    };
    for (worker, text) in rows {
        ui.horizontal(|ui| {
            let (place, _) = ui.allocate_exact_size(vec2(28.0, 28.0), Sense::hover());
            crate::gui::widgets::worker_badge(ui.painter(), place.center(), 11.0, worker, "");
            ui.add(eframe::egui::Label::new(RichText::new(text).size(16.0)).wrap());
        });
    }
    if let Some(all) = all {
        ui.label(RichText::new(say!("bay-crew-takes", time = minutes(all))).size(16.0));
    }
}

fn first_of_coating(m: &Model<'_>) -> Vec<(usize, String)> {
    let first = |worker: usize| {
        let row = m.rows.iter().find(|r| r.worker == worker)?;
        let panel = spoken(&m.template.panels[row.panel].name(m.view.naming));
        let person = &m.job.crew[worker].name;
        let text = match row.role {
            Role::Apply => say!("bay-first-apply", person = person, panel = panel),
            Role::Level => say!("bay-first-level", person = person, panel = panel),
        };
        Some((worker, text))
    };
    (0..m.job.crew.len()).filter_map(first).collect()
}

fn first_of_polishing(m: &Model<'_>) -> Vec<(usize, String)> {
    let Some(order) = &m.polishing.order else { return Vec::new() };
    let first = |worker: usize| {
        let row = order.rows.iter().find(|r| r.worker == worker)?;
        let panel = spoken(&m.template.panels[row.panel].name(m.view.naming));
        let person = &m.job.crew[worker].name;
        Some((worker, say!("bay-first-polish", person = person, step = &row.name, panel = panel)))
    };
    (0..m.job.crew.len()).filter_map(first).collect()
}
