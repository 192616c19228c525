//! How much of the defects shall go, and what that costs.

use super::curve::curves;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{fact, film, slider};
use crate::job::Command;
use crate::polish::Goal;
use crate::say;
use crate::units::minutes;
use eframe::egui::{self, Ui};

/// The usual goals, the slider between them, and the price.
pub(super) fn goal_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let share = m.job.goal.share() * 100.0;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        for (name, percent) in
            [(say!("correction-gloss-only"), 0.0), ("50\u{202f}%", 50.0), ("80\u{202f}%", 80.0), ("95\u{202f}%", 95.0)]
        {
            let chosen = (share - percent).abs() < 0.5;
            if ui.add(egui::Button::selectable(chosen, name)).clicked() && !chosen {
                out.push(Action::edit(Command::SetGoal(goal(percent))));
            }
        }
    });
    if let Some((share, gesture)) = slider(ui, say!("correction-goal-share"), "%", share, 0.0..=95.0, 5.0) {
        out.push(Action::Edit(Command::SetGoal(goal(share)), Some(gesture)));
    }
    let now = m.insight.ambition_now();
    fact(ui, say!("correction-machine-time"), minutes(now.seconds));
    let mean = film(ui, now.mean_um, 1);
    fact(ui, say!("correction-taken-off-mean"), mean);
    fact(ui, say!("correction-defects-go"), format!("{:.0}\u{202f}%", now.correction * 100.0));
    curves(ui, &m.insight.ambition(), now);
    ui.label(theme::soft(say!("correction-more-costs")));
}

fn goal(percent: f64) -> Goal {
    if percent < 2.5 { Goal::Gloss } else { Goal::Correct { share: percent / 100.0 } }
}
