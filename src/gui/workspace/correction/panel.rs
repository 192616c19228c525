//! The plan of the chosen panel.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{budget_bar, fact, section};
use crate::units::minutes;
use crate::vehicle::FeatureKind;
use eframe::egui::{self, Ui};

/// Level, limits, steps, reasons.
pub(super) fn panel_ui(ui: &mut Ui, m: &Model<'_>, index: usize) {
    let p = theme::of(ui.ctx());
    let insight = &m.insight.panels[index];
    let (polish, budget) = (&insight.polish, &insight.budget);
    ui.label(theme::bold(polish.level.to_string(), 20.0));
    if budget.refused.is_none() {
        budget_bar(ui, insight);
        fact(ui, "May go", format!("{:.1}", budget.allowed));
        fact(ui, "Will go", format!("{:.1} to {:.1}", polish.removal, insight.removal_upper()));
        if !insight.defects.is_empty() {
            fact(ui, "Defects that go", format!("{:.0}\u{202f}%", polish.correction * 100.0));
        }
        fact(ui, "Time", minutes(polish.seconds));
    }
    if !polish.steps.is_empty() {
        section(ui, "Steps");
        for step in &polish.steps {
            ui.label(format!("{}, {} passes", step.name, step.passes));
        }
        for local in &polish.local {
            let names: Vec<_> = local.steps.iter().map(|s| s.name.as_str()).collect();
            ui.label(format!("At one defect first: {}", names.join(", then ")));
        }
    }
    section(ui, "Why");
    for why in &polish.why {
        ui.label(why);
    }
    for caution in &budget.cautions {
        ui.label(egui::RichText::new(caution).color(p.note));
    }
    let features = m.template.cautions(index);
    if !polish.steps.is_empty() && !features.is_empty() {
        section(ui, "Mind");
        for caution in features.into_iter().filter_map(FeatureKind::caution) {
            ui.label(caution);
        }
    }
    if !polish.stays.is_empty() {
        section(ui, "What stays");
        for stays in &polish.stays {
            ui.label(&stays.reason);
        }
    }
    if !budget.limits.is_empty() {
        egui::CollapsingHeader::new("All limits").id_salt("limits").show(ui, |ui| {
            for limit in &budget.limits {
                fact(ui, "", format!("{:.1}", limit.um));
                ui.label(&limit.what);
                ui.label(theme::soft(limit.source));
            }
        });
    }
    if let Some(clear) = &budget.clear {
        ui.label(theme::soft(format!(
            "Clear coat {} as {:.0} to {:.0}: the gauge reads everything above the metal and can't see it.",
            clear.basis, clear.lower, clear.upper
        )));
    }
}
