//! The plan of the whole vehicle.

use super::people;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{fact, section, slider};
use crate::job::Command;
use crate::polish::{Goal, Level};
use crate::units::minutes;
use crate::vehicle::Surface;
use eframe::egui::{self, Sense, Ui, vec2};

/// Goal, time, exposure and the panels by level.
pub(super) fn whole_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    ui.label(theme::bold("Correction", 20.0));
    let share = m.job.goal.share() * 100.0;
    if let Some((share, gesture)) = slider(ui, "Share of the defects that shall go", "%", share, 0.0..=95.0, 5.0) {
        let goal = if share < 2.5 { Goal::Gloss } else { Goal::Correct { share: share / 100.0 } };
        out.push(Action::Edit(Command::SetGoal(goal), Some(gesture)));
    }
    let panels = || m.template.panels.iter().zip(&m.insight.panels).filter(|(p, _)| p.surface == Surface::Paint);
    let (mut weighted, mut area) = (0.0, 0.0);
    for (panel, insight) in panels() {
        weighted += insight.polish.removal.um() * panel.area.m2();
        area += panel.area.m2();
    }
    fact(ui, "Time at the machine", minutes(m.insight.polish_seconds()));
    fact(ui, "Taken off on average", format!("{:.1}\u{202f}µm", weighted / f64::max(area, 1e-9)));
    people::order_ui(ui, m, out);
    section(ui, "Panels");
    for level in [Level::SandAndPolish, Level::TwoStep, Level::OneStep, Level::Gloss, Level::Leave] {
        let mine: Vec<_> = (0..m.template.panels.len())
            .filter(|&i| m.template.panels[i].surface == Surface::Paint && m.insight.panels[i].polish.level == level)
            .collect();
        if mine.is_empty() {
            continue;
        }
        ui.horizontal(|ui| {
            let (swatch, _) = ui.allocate_exact_size(vec2(18.0, 12.0), Sense::hover());
            let line = egui::Stroke::new(1.0, p.seam);
            ui.painter().rect(swatch, 2.0, p.level(level as usize), line, egui::StrokeKind::Inside);
            ui.label(theme::bold(level.to_string(), 14.0));
        });
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing = vec2(4.0, 0.0);
            ui.spacing_mut().button_padding = vec2(4.0, 2.0);
            ui.spacing_mut().interact_size.y = 24.0;
            for index in mine {
                let panel = &m.template.panels[index];
                let name = egui::RichText::new(panel.name(m.view.naming)).color(p.accent);
                if ui.add(egui::Button::new(name).frame(false)).clicked() {
                    out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
                }
            }
        });
    }
    people::shop_ui(ui, m, out);
}
