//! Laying: what is to do, the next step, hints.

use super::head;
use crate::gui::action::{Action, Model};
use crate::gui::practice::{Laying, PracticeWish};
use crate::gui::theme;
use crate::gui::widgets::{fact, primary, section, worker_badge};
use crate::insight::spoken;
use crate::job::Role;
use crate::practice::Hint;
use crate::units::{clock, minutes};
use eframe::egui::{RichText, Sense, Ui, vec2};

/// Draws the sheet.
pub(super) fn lay_ui(ui: &mut Ui, m: &Model<'_>, laying: &Laying, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    head(ui, laying.exercise.setup.lesson.name(), out);
    if laying.best {
        return best_ui(ui, laying, out);
    }
    for news in &laying.exercise.news {
        ui.label(RichText::new(news).color(p.note));
    }
    ui.label(how(laying));
    let (from, to) = laying.exercise.window_s();
    fact(ui, "Level after", format!("{} to {}", clock(from), clock(to)));
    let (done, all) = laying.count();
    fact(ui, "Laid", format!("{done} of {all} steps"));
    if let Some(refused) = &laying.refused {
        ui.label(RichText::new(refused).color(p.note));
    }
    ui.horizontal_wrapped(|ui| {
        if ui.add_enabled(done > 0, eframe::egui::Button::new("Take back")).on_hover_text("Backspace").clicked() {
            out.push(Action::Practice(PracticeWish::TakeBack));
        }
        if ui.add_enabled(done < all, eframe::egui::Button::new("Hint")).on_hover_text("H").clicked() {
            out.push(Action::Practice(PracticeWish::Hint));
        }
    });
    match &laying.hint {
        Some(hint) => ui.label(RichText::new(hint).color(p.accent)),
        None => ui.label(theme::soft(Hint::PROMISE)),
    };
    if done < all {
        section(ui, "Next step");
        waiting(ui, laying, out);
    }
    ui.add_space(8.0);
    if done == all {
        if primary(ui, "Check this order").clicked() {
            out.push(Action::Practice(PracticeWish::Check));
        }
    } else {
        ui.label(theme::soft("Once everything is laid, you can check it. The first check counts."));
    }
    steps(ui, m, laying, out);
    ui.add_space(8.0);
    if ui.button("Show the best order").clicked() {
        out.push(Action::Practice(PracticeWish::ShowBest));
    }
    ui.label(theme::soft("After that this exercise has no score."));
}

fn how(laying: &Laying) -> String {
    let exercise = &laying.exercise;
    let names: Vec<&str> = exercise.laid_by_learner().iter().map(|&w| exercise.job.crew[w].name.as_str()).collect();
    let roles: Vec<Role> =
        exercise.laid_by_learner().iter().flat_map(|&w| exercise.job.crew[w].roles.clone()).collect();
    match (names.as_slice(), roles.as_slice()) {
        ([one], [Role::Apply]) => {
            format!("Click panels in the order in which {one} applies. How your partner levels is laid below.")
        }
        ([one], [Role::Level]) => {
            format!("Click panels in the order in which {one} levels. How your partner applies is laid below.")
        }
        ([_], _) => {
            "Click a panel to apply it; click it again to level it. Arrow keys and Enter do the same.".to_owned()
        }
        ([first, second], _) => format!(
            "Click a panel and {first} applies it; click it again and {second} levels it. Arrow keys and Enter do the same."
        ),
        _ => String::new(),
    }
}

/// How long the next step waits on purpose.
fn waiting(ui: &mut Ui, laying: &Laying, out: &mut Vec<Action>) {
    let mut hold = |seconds| out.push(Action::Practice(PracticeWish::Hold(seconds)));
    let now = laying.hold_s;
    let text = if now == 0 { "begins as soon as it can".to_owned() } else { format!("waits for {now}\u{202f}s first") };
    ui.label(format!("It {text}."));
    ui.horizontal_wrapped(|ui| {
        for (text, seconds) in [("Wait 10\u{202f}s", now + 10), ("Wait 60\u{202f}s", now + 60)] {
            if ui.button(text).clicked() {
                hold(seconds);
            }
        }
        if now > 0 && ui.button("No wait").clicked() {
            hold(0);
        }
    });
    if laying.exercise.people() > 1 && ui.button("Wait for the other").clicked() {
        out.push(Action::Practice(PracticeWish::HoldForOther));
    }
}

/// What was laid last, newest first.
fn steps(ui: &mut Ui, m: &Model<'_>, laying: &Laying, out: &mut Vec<Action>) {
    let rows = laying.rows();
    if rows.is_empty() {
        return;
    }
    section(ui, "Laid so far");
    let mut numbers = vec![0; laying.exercise.people()];
    let mut lines: Vec<_> = rows
        .iter()
        .map(|row| {
            numbers[row.worker] += 1;
            (row, numbers[row.worker])
        })
        .collect();
    lines.reverse();
    ui.spacing_mut().item_spacing.y = 0.0;
    for (row, number) in lines {
        ui.horizontal(|ui| {
            let (place, _) = ui.allocate_exact_size(vec2(24.0, 24.0), Sense::hover());
            worker_badge(ui.painter(), place.center(), 9.0, row.worker, &number.to_string());
            let panel = &laying.exercise.template.panels[row.panel];
            let verb = if row.role == Role::Apply { "apply" } else { "level" };
            let text = format!("{}  {verb} {}", clock(row.at.start), spoken(&panel.name(m.view.naming)));
            if ui.add(eframe::egui::Label::new(text).sense(Sense::click())).clicked() {
                out.push(Action::Practice(PracticeWish::Moment(row.at.start)));
            }
        });
    }
}

/// The planner's order, to be looked at.
fn best_ui(ui: &mut Ui, laying: &Laying, out: &mut Vec<Action>) {
    let best = &laying.exercise.best;
    ui.label("This is the best order the planner found. Watch where each of you goes, and where one of you waits.");
    fact(ui, "Takes", minutes(best.makespan_s));
    fact(ui, "Walking, all together", minutes(best.walking_s));
    let most = 100.0 * (best.cost - best.bound) as f64 / best.cost.max(1) as f64;
    fact(ui, "Could be better by at most", format!("{most:.0}\u{202f}%"));
    ui.label(theme::soft("Having seen it, this exercise has no score any more; begin a new one for that."));
    ui.add_space(8.0);
    if primary(ui, "Back to my order").clicked() {
        out.push(Action::Practice(PracticeWish::Change));
    }
}
