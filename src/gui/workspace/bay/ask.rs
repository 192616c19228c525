//! What is asked of everybody.

use super::parts::{Look, row};
use crate::bay::Event;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::bay::{Asking, BayWish, Trade};
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use eframe::egui::Ui;

/// For how long everybody stops.
pub(super) fn pause_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold("Everybody stops for", 20.0));
    let run = m.day_run();
    for minutes in [1, 2, 5, 15] {
        if row(ui, &format!("{minutes}\u{202f}min"), Look::Plain) {
            let there = (0..run.problem().workers.len()).filter(|&w| run.day().away_until(w, run.now_s()).is_none());
            let left = |w: usize| Event::Left { worker: run.problem().workers[w].id.clone(), for_s: minutes * 60 };
            out.push(Action::Bay(BayWish::NoteAll(there.map(left).collect())));
        }
    }
    ui.label("Windows of wet panels run on. What comes first afterwards is planned for the time you say.");
}

/// What is seldom wanted.
pub(super) fn more_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold("More", 20.0));
    let view = m.view.bay;
    if view.trade == Trade::Coating && !m.day_run().is_over() {
        let text = if view.lap { "Back to the work" } else { "Last lap now" };
        if row(ui, text, Look::Plain) {
            out.push(Action::Bay(BayWish::Lap(!view.lap)));
        }
    }
    if view.trade == Trade::Polishing && row(ui, "Enter a test spot", Look::Plain) {
        out.push(Action::View(ViewChange::Choose(None)));
        out.push(Action::View(ViewChange::Workspace(Workspace::Correction)));
    }
    for trade in Trade::ALL.into_iter().filter(|t| *t != view.trade) {
        if row(ui, &format!("Show the {} day", trade.name().to_lowercase()), Look::Plain) {
            out.push(Action::Bay(BayWish::Show(trade)));
        }
    }
    if row(ui, "Begin another day", Look::Plain) {
        out.push(Action::Bay(BayWish::Ask(Some(Asking::StartOver))));
    }
    let run = m.day_run();
    if let Some(took) = run.took() {
        let text = format!("The last change was planned in {:.2}\u{202f}s.", took.as_secs_f64());
        ui.label(theme::soft(text));
    }
}

/// Whether a new day shall begin.
pub(super) fn start_over_ui(ui: &mut Ui, out: &mut Vec<Action>) {
    ui.label(theme::bold("Begin another day?", 20.0));
    ui.label(
        "Everything counts as not done again. What was tapped so far stays in the file of the day, but counts no more.",
    );
    if row(ui, "Begin another day", Look::Plain) {
        out.push(Action::Bay(BayWish::Note(Event::StartedOver)));
    }
    if row(ui, "Go on with this one", Look::Plain) {
        out.push(Action::Bay(BayWish::Ask(None)));
    }
}
