//! What the readings suggest: on one panel, and as a list for the whole vehicle.

use crate::finding::{Finding, Severity};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{said, section};
use crate::say;
use crate::units::capital;
use eframe::egui::{self, RichText, Sense, Ui, vec2};

/// Each finding of a panel: what it is, and what to do.
pub(super) fn panel_points(ui: &mut Ui, m: &Model<'_>, index: usize) {
    for finding in &m.insight.points.panels[index] {
        point(ui, finding, None);
    }
}

/// All open points; a click goes to the panel.
pub(super) fn all_points(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let points = &m.insight.points;
    if points.all().next().is_none() {
        return;
    }
    let count = points.all().count();
    section(ui, &say!("survey-open-points", count = count));
    for finding in &points.gauge {
        point(ui, finding, Some(say!("survey-gauge")));
    }
    for (panel, found) in m.template.panels.iter().zip(&points.panels).filter(|(_, found)| !found.is_empty()) {
        let p = theme::of(ui.ctx());
        let name = panel.name(m.view.naming);
        let button = egui::Button::new(RichText::new(&name).color(p.accent)).frame(false);
        let response = ui.add(button).accessible_name(say!("survey-go-to", panel = name.as_str()));
        if response.on_hover_text(say!("survey-go-hint")).clicked() {
            out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        }
        for finding in found {
            point(ui, finding, None);
        }
    }
    ui.label(theme::soft(say!("survey-borders-practice")));
}

/// One finding with a mark for how much it matters.
fn point(ui: &mut Ui, finding: &Finding, place: Option<&str>) {
    let p = theme::of(ui.ctx());
    let warning = finding.severity() >= Severity::Warning;
    ui.horizontal_top(|ui| {
        let (area, _) = ui.allocate_exact_size(vec2(12.0, 18.0), Sense::hover());
        let colour = if warning { p.note } else { p.rim };
        ui.painter().circle_filled(area.center(), 4.0, colour);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            let cause = sentence(&finding.cause);
            let text = place.map_or_else(
                || cause.clone(),
                |place| say!("survey-place-cause", place = place, cause = finding.cause.as_str()),
            );
            ui.label(RichText::new(said(ui, &text)).color(if warning { p.note } else { p.ink }));
            ui.label(theme::soft(said(ui, &sentence(&finding.action))));
        });
    });
}

/// A cause or an action with a capital and a full stop.
fn sentence(text: &str) -> String {
    format!("{}.", capital(text))
}
