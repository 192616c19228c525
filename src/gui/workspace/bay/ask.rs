//! What is asked of everybody.

use super::parts::{Look, row};
use crate::bay::Event;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::bay::{Asking, BayWish, Trade};
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::say;
use crate::words::decimal;
use eframe::egui::Ui;

/// For how long everybody stops.
pub(super) fn pause_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("bay-all-stop-for"), 20.0));
    let run = m.day_run();
    for minutes in [1, 2, 5, 15] {
        if row(ui, &format!("{minutes}\u{202f}min"), Look::Plain) {
            let there = (0..run.problem().workers.len()).filter(|&w| run.day().away_until(w, run.now_s()).is_none());
            let left = |w: usize| Event::Left { worker: run.problem().workers[w].id.clone(), for_s: minutes * 60 };
            out.push(Action::Bay(BayWish::NoteAll(there.map(left).collect())));
        }
    }
    ui.label(say!("bay-windows-run-on"));
}

/// What is seldom wanted.
pub(super) fn more_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("bay-more"), 20.0));
    let view = m.view.bay;
    if view.trade == Trade::Coating && !m.day_run().is_over() {
        let text = if view.lap { say!("bay-back-to-work") } else { say!("bay-last-lap-now") };
        if row(ui, text, Look::Plain) {
            out.push(Action::Bay(BayWish::Lap(!view.lap)));
        }
    }
    if view.trade == Trade::Polishing && row(ui, say!("bay-enter-test-spot"), Look::Plain) {
        out.push(Action::View(ViewChange::Choose(None)));
        out.push(Action::View(ViewChange::Workspace(Workspace::Correction)));
    }
    for trade in Trade::ALL.into_iter().filter(|t| *t != view.trade) {
        let text = match trade {
            Trade::Coating => say!("bay-show-coating"),
            Trade::Polishing => say!("bay-show-polishing"),
        };
        if row(ui, text, Look::Plain) {
            out.push(Action::Bay(BayWish::Show(trade)));
        }
    }
    if row(ui, say!("bay-another-day"), Look::Plain) {
        out.push(Action::Bay(BayWish::Ask(Some(Asking::StartOver))));
    }
    let run = m.day_run();
    if let Some(took) = run.took() {
        let text = say!("bay-planned-in", seconds = decimal(took.as_secs_f64(), 2));
        ui.label(theme::soft(text));
    }
}

/// Whether a new day shall begin.
pub(super) fn start_over_ui(ui: &mut Ui, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("bay-another-day-question"), 20.0));
    ui.label(say!("bay-another-day-means"));
    if row(ui, say!("bay-another-day"), Look::Plain) {
        out.push(Action::Bay(BayWish::Note(Event::StartedOver)));
    }
    if row(ui, say!("bay-keep-this-day"), Look::Plain) {
        out.push(Action::Bay(BayWish::Ask(None)));
    }
}
