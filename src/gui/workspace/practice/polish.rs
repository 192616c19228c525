//! "How hard to polish?"

use super::{head, result};
use crate::gui::action::{Action, Model};
use crate::gui::practice::{PracticeWish, Quiz};
use crate::gui::theme;
use crate::gui::widgets::{budget_bars, fact, film, primary, said, section};
use crate::polish::Level;
use crate::practice::{Done, PolishAnswer, PolishRound};
use crate::say;
use eframe::egui::{self, RichText, Ui, vec2};

/// Draws the question, or the end.
pub(super) fn polish_ui(ui: &mut Ui, m: &Model<'_>, quiz: &Quiz<PolishRound>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    head(ui, Done::Polishing.name(), out);
    let Some(round) = quiz.now() else {
        return result(ui, m, quiz.score().0, out);
    };
    ui.label(theme::soft(say!("practice-panel-of", number = quiz.at + 1, all = quiz.rounds.len())));
    ui.label(theme::bold(round.name(m.view.naming), 20.0));
    let insight = round.insight();
    if let Some(paint) = &insight.film {
        fact(ui, say!("practice-mean-film"), film(ui, paint.mean, 0));
        fact(ui, say!("practice-thinnest"), film(ui, paint.min, 0));
        fact(ui, say!("practice-lower"), film(ui, paint.lower.um(), 0));
    }
    for line in round.defects() {
        ui.label(said(ui, &line));
    }
    ui.label(said(ui, &round.wanted()));
    section(ui, say!("practice-hard-question"));
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
        } else if ui.button(say!("practice-hint")).clicked() {
            out.push(Action::Practice(PracticeWish::Hint));
        }
        return;
    };
    let level = round.level().to_string();
    let (text, color) = match round.judge(*given) {
        PolishAnswer::Right => (say!("practice-right").to_owned(), p.go),
        PolishAnswer::TooGentle => (say!("practice-too-gentle", level = level), p.note),
        PolishAnswer::MuchTooGentle => (say!("practice-much-too-gentle", level = level), p.note),
        PolishAnswer::TooHard => (say!("practice-too-hard", level = level), p.note),
    };
    ui.label(theme::bold(text, 16.0).color(color));
    if primary(ui, say!("practice-go-on")).clicked() {
        out.push(Action::Practice(PracticeWish::Next));
    }
    budget_bars(ui, insight);
    for why in &insight.polish.why {
        ui.label(said(ui, why));
    }
    section(ui, say!("practice-what-limits"));
    for limit in &insight.budget.limits {
        ui.label(said(ui, &format!("{:.1}: {}", limit.um, limit.what)));
        ui.label(theme::soft(said(ui, limit.source)));
    }
}
