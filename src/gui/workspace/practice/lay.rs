//! Laying: what is to do, the next step, hints.

use super::head;
use crate::gui::action::{Action, Model};
use crate::gui::practice::{Laying, PracticeWish};
use crate::gui::theme;
use crate::gui::widgets::{fact, primary, section, worker_badge};
use crate::insight::spoken;
use crate::job::Role;
use crate::practice::Hint;
use crate::say;
use crate::units::{clock, minutes};
use crate::words::decimal;
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
    fact(ui, say!("practice-level-after"), say!("practice-from-to", from = clock(from), to = clock(to)));
    let (done, all) = laying.count();
    fact(ui, say!("practice-laid"), say!("practice-steps-of", done = done, all = all));
    if let Some(refused) = &laying.refused {
        ui.label(RichText::new(refused).color(p.note));
    }
    ui.horizontal_wrapped(|ui| {
        let take_back = eframe::egui::Button::new(say!("practice-take-back"));
        if ui.add_enabled(done > 0, take_back).on_hover_text(say!("practice-key-backspace")).clicked() {
            out.push(Action::Practice(PracticeWish::TakeBack));
        }
        if ui.add_enabled(done < all, eframe::egui::Button::new(say!("practice-hint"))).on_hover_text("H").clicked() {
            out.push(Action::Practice(PracticeWish::Hint));
        }
    });
    match &laying.hint {
        Some(hint) => ui.label(RichText::new(hint).color(p.accent)),
        None => ui.label(theme::soft(Hint::PROMISE.text())),
    };
    if done < all {
        section(ui, say!("practice-next-step"));
        waiting(ui, laying, out);
    }
    ui.add_space(8.0);
    if done == all {
        if primary(ui, say!("practice-check-order")).clicked() {
            out.push(Action::Practice(PracticeWish::Check));
        }
    } else {
        ui.label(theme::soft(say!("practice-first-check-counts")));
    }
    steps(ui, m, laying, out);
    ui.add_space(8.0);
    if ui.button(say!("practice-show-best")).clicked() {
        out.push(Action::Practice(PracticeWish::ShowBest));
    }
    ui.label(theme::soft(say!("practice-no-score-after")));
}

fn how(laying: &Laying) -> String {
    let exercise = &laying.exercise;
    let names: Vec<&str> = exercise.laid_by_learner().iter().map(|&w| exercise.job.crew[w].name.as_str()).collect();
    let roles: Vec<Role> =
        exercise.laid_by_learner().iter().flat_map(|&w| exercise.job.crew[w].roles.clone()).collect();
    match (names.as_slice(), roles.as_slice()) {
        ([one], [Role::Apply]) => say!("practice-how-applies", person = *one),
        ([one], [Role::Level]) => say!("practice-how-levels", person = *one),
        ([_], _) => say!("practice-how-alone").to_owned(),
        ([first, second], _) => say!("practice-how-both", first = *first, second = *second),
        _ => String::new(),
    }
}

/// How long the next step waits on purpose.
fn waiting(ui: &mut Ui, laying: &Laying, out: &mut Vec<Action>) {
    let mut hold = |seconds| out.push(Action::Practice(PracticeWish::Hold(seconds)));
    let now = laying.hold_s;
    ui.label(match now {
        0 => say!("practice-begins-at-once").to_owned(),
        now => say!("practice-waits-first", seconds = now),
    });
    ui.horizontal_wrapped(|ui| {
        for more in [10, 60] {
            if ui.button(say!("practice-wait", seconds = more)).clicked() {
                hold(now + more);
            }
        }
        if now > 0 && ui.button(say!("practice-no-wait")).clicked() {
            hold(0);
        }
    });
    if laying.exercise.people() > 1 && ui.button(say!("practice-wait-for-other")).clicked() {
        out.push(Action::Practice(PracticeWish::HoldForOther));
    }
}

/// What was laid last, newest first.
fn steps(ui: &mut Ui, m: &Model<'_>, laying: &Laying, out: &mut Vec<Action>) {
    let rows = laying.rows();
    if rows.is_empty() {
        return;
    }
    section(ui, say!("practice-laid-so-far"));
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
            let panel = spoken(&laying.exercise.template.panels[row.panel].name(m.view.naming));
            let step = match row.role {
                Role::Apply => say!("practice-step-apply", panel = panel),
                Role::Level => say!("practice-step-level", panel = panel),
            };
            let text = format!("{}  {step}", clock(row.at.start));
            if ui.add(eframe::egui::Label::new(text).sense(Sense::click())).clicked() {
                out.push(Action::Practice(PracticeWish::Moment(row.at.start)));
            }
        });
    }
}

/// The planner's order, to be looked at.
fn best_ui(ui: &mut Ui, laying: &Laying, out: &mut Vec<Action>) {
    let best = &laying.exercise.best;
    ui.label(say!("practice-watch-best"));
    fact(ui, say!("practice-takes"), minutes(best.makespan_s));
    fact(ui, say!("practice-walking-all"), minutes(best.walking_s));
    let most = 100.0 * (best.cost - best.bound) as f64 / best.cost.max(1) as f64;
    fact(ui, say!("practice-better-at-most"), format!("{}\u{202f}%", decimal(most, 0)));
    ui.label(theme::soft(say!("practice-seen-best")));
    ui.add_space(8.0);
    if primary(ui, say!("practice-back-to-mine")).clicked() {
        out.push(Action::Practice(PracticeWish::Change));
    }
}
