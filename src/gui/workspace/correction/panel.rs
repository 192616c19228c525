//! The plan of the chosen panel.

use super::open_points::beside_ui;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{budget_bars, choice, fact, said, section};
use crate::job::{Command, PanelFact};
use crate::polish::{Level, Limit, ultraviolet_factor};
use crate::say;
use crate::units::{Micrometres, minutes};
use crate::vehicle::FeatureKind;
use crate::words::decimal;
use eframe::egui::{self, Ui};

/// Absorbance of a usual clear in the ultraviolet, between 1.5 and 3 (from memory).
const USUAL_ABSORBANCE: f64 = 2.0;

/// Level, limits, steps, reasons.
pub(super) fn panel_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let insight = &m.insight.panels[index];
    let (polish, budget) = (&insight.polish, &insight.budget);
    ui.label(theme::bold(polish.level.to_string(), 20.0));
    ui.label(said(ui, &polish.for_customer));
    if budget.refused.is_none() {
        budget_bars(ui, insight);
        fact(ui, say!("correction-may-go"), format!("{:.1}", budget.allowed));
        let (low, high) = (decimal(polish.removal.um(), 1), format!("{:.1}", insight.removal_upper()));
        fact(ui, say!("correction-will-go"), say!("correction-from-to", low = low, high = high));
        if !insight.defects.is_empty() {
            fact(ui, say!("correction-defects-go"), format!("{:.0}\u{202f}%", polish.correction * 100.0));
        }
        fact(ui, say!("correction-time"), minutes(polish.seconds));
        hold(ui, m, index, out);
    }
    beside_ui(ui, m, index);
    if !polish.steps.is_empty() {
        section(ui, say!("correction-steps"));
        for step in &polish.steps {
            ui.label(say!("correction-step", step = &step.name, passes = step.passes));
        }
        for local in &polish.local {
            let names: Vec<_> = local.steps.iter().map(|s| s.name.as_str()).collect();
            ui.label(say!("correction-at-defect", steps = names.join(say!("polish-then"))));
        }
    }
    section(ui, say!("correction-why"));
    for why in polish.why.iter().filter(|why| **why != polish.for_customer) {
        ui.label(said(ui, why));
    }
    for caution in insight.cautions() {
        if !polish.why.iter().any(|why| why == caution) {
            ui.label(egui::RichText::new(said(ui, caution)).color(p.note));
        }
    }
    let features = m.template.cautions(index);
    if !polish.steps.is_empty() && !features.is_empty() {
        section(ui, say!("correction-mind"));
        for caution in features.into_iter().filter_map(FeatureKind::caution) {
            ui.label(caution);
        }
    }
    if !polish.stays.is_empty() {
        section(ui, say!("correction-what-stays"));
        for stays in &polish.stays {
            ui.label(said(ui, &stays.reason));
        }
    }
    limits(ui, &budget.limits);
    spots(ui, m, index);
    if let Some(clear) = &budget.clear {
        ui.label(theme::soft(said(ui, &format!("{}.", clear.in_words()))));
        let (most, clear) = (insight.removal_upper(), clear.lower);
        if most > Micrometres::ZERO && clear > Micrometres::ZERO {
            let factor = ultraviolet_factor(USUAL_ABSORBANCE, most.um(), clear.um());
            let text = say!(
                "correction-ultraviolet",
                gone = format!("{most:.1}"),
                factor = decimal(factor, 1),
                absorbance = decimal(USUAL_ABSORBANCE, 0),
            );
            ui.label(theme::soft(said(ui, &text)));
        }
    }
}

/// A level held by hand, never above what the budget allows.
fn hold(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let panel = &m.template.panels[index].id;
    let held = m.job.record(panel).and_then(|r| r.level_at_most);
    let levels = Level::ALL.map(|level| (Some(level), level.to_string()));
    let options: Vec<_> = std::iter::once((None, say!("correction-as-planned").to_owned())).chain(levels).collect();
    if let Some(level) = choice(ui, say!("correction-at-most"), held, &options) {
        out.push(Action::edit(Command::SetFact(panel.clone(), PanelFact::LevelAtMost(level))));
    }
}

/// Every limit, smallest first, with where it comes from.
fn limits(ui: &mut Ui, limits: &[Limit]) {
    if limits.is_empty() {
        return;
    }
    section(ui, say!("correction-limits"));
    for (at, limit) in limits.iter().enumerate() {
        ui.horizontal_top(|ui| {
            let value = said(ui, &format!("{:.1}", limit.um));
            let value = if at == 0 { theme::bold(value, 14.0) } else { egui::RichText::new(value) };
            ui.add_sized([60.0, 18.0], egui::Label::new(value).halign(egui::Align::RIGHT));
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                ui.add(egui::Label::new(said(ui, &limit.what)).wrap());
                ui.add(egui::Label::new(theme::soft(said(ui, limit.source))).wrap());
            });
        });
    }
}

/// What may go at each spot, by the readings there alone.
fn spots(ui: &mut Ui, m: &Model<'_>, index: usize) {
    let budgets = m.insight.spot_budgets(index);
    if budgets.is_empty() || m.insight.panels[index].film.is_none() {
        return;
    }
    section(ui, say!("correction-at-spots"));
    let spots = m.job.record(&m.template.panels[index].id).map(|r| r.spots.as_slice()).unwrap_or_default();
    for (at, (budget, spot)) in budgets.iter().zip(spots).enumerate() {
        let Some(budget) = budget else { continue };
        let edge = if spot.edge { "yes" } else { "no" };
        let value = if budget.refused.is_some() {
            say!("correction-nothing").to_owned()
        } else {
            format!("{:.1}", budget.allowed)
        };
        fact(ui, &say!("correction-spot", number = at + 1, edge = edge), value);
    }
    ui.label(theme::soft(say!("correction-spots-alone")));
}
