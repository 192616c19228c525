//! "How hard to polish?"

use super::{head, result};
use crate::gui::action::{Action, Model};
use crate::gui::practice::{PracticeWish, Quiz};
use crate::gui::theme;
use crate::gui::widgets::{budget_bars, fact, primary, said, section};
use crate::polish::Level;
use crate::practice::{PolishAnswer, PolishRound};
use eframe::egui::{self, RichText, Ui, vec2};

/// Draws the question, or the end.
pub(super) fn polish_ui(ui: &mut Ui, m: &Model<'_>, quiz: &Quiz<PolishRound>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    head(ui, "How hard to polish", out);
    let Some(round) = quiz.now() else {
        return result(ui, m, quiz.score().0, out);
    };
    ui.label(theme::soft(format!("Panel {} of {}", quiz.at + 1, quiz.rounds.len())));
    ui.label(theme::bold(round.name(m.view.naming), 20.0));
    let insight = round.insight();
    if let Some(film) = &insight.film {
        fact(ui, "Mean film", format!("{:.0}\u{202f}µm", film.mean));
        fact(ui, "Thinnest spot", format!("{:.0}\u{202f}µm", film.min));
        fact(ui, "At least, nearly everywhere", format!("{:.0}\u{202f}µm", film.lower.um()));
    }
    for line in round.defects() {
        ui.label(said(ui, &line));
    }
    ui.label(said(ui, &format!("{}.", round.wanted())));
    section(ui, "How hard may and must it be worked?");
    let answer = quiz.answer();
    for (k, level) in Level::ALL.into_iter().enumerate() {
        let chosen = answer == Some(k);
        let button = egui::Button::selectable(chosen, RichText::new(level.to_string()).size(16.0))
            .frame_when_inactive(true)
            .min_size(vec2(ui.available_width(), 32.0));
        if ui.add_enabled(answer.is_none() || chosen, button).clicked() {
            out.push(Action::Practice(PracticeWish::Answer(k)));
        }
    }
    let Some(given) = answer.and_then(|k| Level::ALL.get(k)) else {
        if quiz.hinted {
            ui.label(RichText::new(said(ui, &round.hint())).color(p.accent));
        } else if ui.button("Hint").clicked() {
            out.push(Action::Practice(PracticeWish::Hint));
        }
        return;
    };
    let (text, color) = match round.judge(*given) {
        PolishAnswer::Right => ("Right.".to_owned(), p.go),
        PolishAnswer::TooGentle => (format!("Safe, but {} could be had. Half.", round.level()), p.note),
        PolishAnswer::MuchTooGentle => (format!("Safe, but far from what could be had: {}.", round.level()), p.note),
        PolishAnswer::TooHard => (format!("Too hard: {} is enough, or all that may go.", round.level()), p.note),
    };
    ui.label(theme::bold(text, 16.0).color(color));
    if primary(ui, "Go on").clicked() {
        out.push(Action::Practice(PracticeWish::Next));
    }
    budget_bars(ui, insight);
    for why in &insight.polish.why {
        ui.label(said(ui, why));
    }
    section(ui, "What limits it");
    for limit in &insight.budget.limits {
        ui.label(said(ui, &format!("{:.1}: {}", limit.um, limit.what)));
        ui.label(theme::soft(said(ui, limit.source)));
    }
}
