//! "Which panel next?"

use super::{head, result};
use crate::gui::action::{Action, Model};
use crate::gui::practice::{PracticeWish, Quiz};
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::insight::spoken;
use crate::job::Role;
use crate::practice::{Done, MARGIN, NextRound};
use crate::say;
use crate::units::clock;
use crate::words::decimal;
use eframe::egui::{self, RichText, Ui, vec2};

/// Draws the question, or the end.
pub(super) fn next_ui(ui: &mut Ui, m: &Model<'_>, quiz: &Quiz<NextRound>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    head(ui, Done::NextPanel.name(), out);
    let Some(round) = quiz.now() else {
        return result(ui, m, quiz.score().0, out);
    };
    ui.label(theme::soft(say!("practice-question-of", number = quiz.at + 1, all = quiz.rounds.len())));
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
            if ui.button(say!("practice-hint")).clicked() {
                out.push(Action::Practice(PracticeWish::Hint));
            }
        }
        Some(_) => {
            ui.label(theme::soft(say!("practice-what-is-right", percent = decimal(MARGIN * 100.0, 0))));
            if primary(ui, say!("practice-go-on")).clicked() {
                out.push(Action::Practice(PracticeWish::Next));
            }
        }
    }
}

fn situation(m: &Model<'_>, round: &NextRound) -> String {
    let crew = &round.exercise.job.crew;
    let name = |panel: usize| spoken(&m.template.panels[panel].name(m.view.naming));
    let person = &crew[round.worker].name;
    let mut places = match round.from {
        Some(from) => say!("practice-comes-from", person = person, panel = name(from)),
        None => person.clone(),
    };
    for (k, &(worker, panel)) in round.others.iter().enumerate() {
        places.push_str(if k == 0 { "; " } else { ", " });
        places.push_str(&say!("practice-is-at", person = &crew[worker].name, panel = name(panel)));
    }
    let wet = match round.wet.iter().map(|(_, left)| *left).min() {
        Some(left) => say!("practice-are-wet", count = round.wet.len(), time = clock(left)),
        None => say!("practice-nothing-wet").to_owned(),
    };
    format!("{} {places}. {wet}", say!("practice-into-day", time = clock(round.now_s)))
}

fn question(round: &NextRound) -> String {
    let person = &round.exercise.job.crew[round.worker].name;
    match round.role {
        Role::Apply => say!("practice-which-apply", person = person),
        Role::Level => say!("practice-which-level", person = person),
    }
}

/// A reason, no answer.
fn hint(round: &NextRound) -> &'static str {
    match round.role {
        Role::Level => say!("practice-next-hint-level"),
        Role::Apply => say!("practice-next-hint-apply"),
    }
}
