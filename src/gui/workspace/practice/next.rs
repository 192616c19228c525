//! "Which panel next?"

use super::{head, result};
use crate::gui::action::{Action, Model};
use crate::gui::practice::{PracticeWish, Quiz};
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::insight::spoken;
use crate::job::Role;
use crate::practice::{MARGIN, NextRound};
use crate::units::clock;
use eframe::egui::{self, RichText, Ui, vec2};

/// Draws the question, or the end.
pub(super) fn next_ui(ui: &mut Ui, m: &Model<'_>, quiz: &Quiz<NextRound>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    head(ui, "Which panel next", out);
    let Some(round) = quiz.now() else {
        return result(ui, m, quiz.score().0, out);
    };
    ui.label(theme::soft(format!("Question {} of {}", quiz.at + 1, quiz.rounds.len())));
    ui.label(situation(m, round));
    ui.label(theme::bold(question(round), 16.0));
    let answer = quiz.answer();
    for (k, candidate) in round.candidates.iter().enumerate() {
        let letter = char::from(b'A' + k as u8);
        let text = format!("{letter}   {}", m.template.panels[candidate.panel].name(m.view.naming));
        let chosen = answer == Some(k);
        let button = egui::Button::selectable(chosen, RichText::new(&text).size(16.0))
            .frame_when_inactive(true)
            .min_size(vec2(ui.available_width(), 36.0));
        if ui.add_enabled(answer.is_none() || chosen, button).clicked() {
            out.push(Action::Practice(PracticeWish::Answer(k)));
        }
        if answer.is_some() {
            let color = if candidate.right { p.go } else { p.note };
            ui.label(RichText::new(&candidate.why).color(color));
        }
    }
    match answer {
        None if quiz.hinted => {
            ui.label(RichText::new(hint(round)).color(p.accent));
        }
        None => {
            if ui.button("Hint").clicked() {
                out.push(Action::Practice(PracticeWish::Hint));
            }
        }
        Some(_) => {
            let percent = MARGIN * 100.0;
            ui.label(theme::soft(format!(
                "Right is every panel with which the rest of the day costs at most {percent:.0}\u{202f}% more than with the best."
            )));
            if primary(ui, "Go on").clicked() {
                out.push(Action::Practice(PracticeWish::Next));
            }
        }
    }
}

fn situation(m: &Model<'_>, round: &NextRound) -> String {
    let crew = &round.exercise.job.crew;
    let name = |panel: usize| spoken(&m.template.panels[panel].name(m.view.naming));
    let from = round.from.map_or_else(String::new, |p| format!(" comes from {}", name(p)));
    let others: Vec<String> =
        round.others.iter().map(|&(w, p)| format!("{} is at {}", crew[w].name, name(p))).collect();
    let wet = match round.wet.iter().map(|(_, left)| *left).min() {
        Some(left) => format!("{} panels are wet, the first window closes in {}.", round.wet.len(), clock(left)),
        None => "Nothing is wet.".to_owned(),
    };
    let others = if others.is_empty() { String::new() } else { format!("; {}", others.join(", ")) };
    format!("{} into the day. {}{from}{others}. {wet}", clock(round.now_s), crew[round.worker].name)
}

fn question(round: &NextRound) -> String {
    let verb = if round.role == Role::Apply { "apply" } else { "level" };
    format!("Which panel does {} {verb} next?", round.exercise.job.crew[round.worker].name)
}

/// A reason, no answer.
fn hint(round: &NextRound) -> &'static str {
    match round.role {
        Role::Level => "Think of the windows first, then of the way, and stay out of your partner's place.",
        Role::Apply => "From the top down, never over something wet, out of your partner's place, and no long way.",
    }
}
