//! Practice: an apprentice lays an order, sees it played and marked; quick questions; progress.

mod below;
mod choose;
mod judged;
mod lanes;
mod lay;
mod marks;
mod next;
mod plot;
mod polish;

pub(in crate::gui) use below::practice_below_ui;
pub(in crate::gui) use marks::practice_marks;

use crate::gui::action::{Action, Model};
use crate::gui::practice::{PracticeWish, Stage};
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::primary;
use crate::say;
use eframe::egui::{Key, Modifiers, RichText, Ui};

/// Draws the right side.
pub(super) fn practice_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    if let Some(trouble) = &m.practice.trouble {
        ui.label(RichText::new(trouble).color(p.note));
    }
    match &m.practice.stage {
        Stage::Choosing => choose::choose_ui(ui, m, out),
        Stage::Making(done, _) => {
            head(ui, done.name(), out);
            ui.label(say!("practice-working-out"));
            ui.spinner();
        }
        Stage::Laying(laying) if laying.judged.is_some() => judged::judged_ui(ui, m, laying, out),
        Stage::Laying(laying) => lay::lay_ui(ui, m, laying, out),
        Stage::Next(quiz) => next::next_ui(ui, m, quiz, out),
        Stage::Polish(quiz) => polish::polish_ui(ui, m, quiz, out),
    }
}

/// Keys while practising: Backspace takes back, H gives a hint.
pub(in crate::gui) fn practice_keys(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    if m.view.workspace != Workspace::Practice || ui.text_edit_focused() {
        return;
    }
    for (key, wish) in [(Key::Backspace, PracticeWish::TakeBack), (Key::H, PracticeWish::Hint)] {
        if ui.input_mut(|i| i.consume_key(Modifiers::NONE, key)) {
            out.push(Action::Practice(wish));
        }
    }
}

/// What is practised, and the way back to the list.
fn head(ui: &mut Ui, name: &str, out: &mut Vec<Action>) {
    ui.horizontal(|ui| {
        ui.label(theme::bold(name, 18.0));
        ui.with_layout(eframe::egui::Layout::right_to_left(eframe::egui::Align::Center), |ui| {
            if ui.button(say!("practice-all-exercises")).clicked() {
                out.push(Action::Practice(PracticeWish::Leave));
            }
        });
    });
}

/// The end of a few questions.
fn result(ui: &mut Ui, m: &Model<'_>, score_pct: u32, out: &mut Vec<Action>) {
    ui.label(theme::bold(format!("{score_pct}\u{202f}%"), 28.0));
    kept(ui, m);
    ui.add_space(8.0);
    if primary(ui, say!("practice-five-more")).clicked()
        && let Some(done) = m.practice.doing()
    {
        out.push(Action::Practice(PracticeWish::Start(done)));
    }
}

/// Under whose name a result is kept.
fn kept(ui: &mut Ui, m: &Model<'_>) {
    if let Some(learner) = m.practice.learner.as_ref().filter(|_| m.practice.trouble.is_none()) {
        ui.label(theme::soft(say!("practice-kept-for", person = learner)));
    }
}
