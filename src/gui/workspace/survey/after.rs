//! Before and after: what a later survey shows of one panel and of the whole vehicle.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{fact, said, section};
use crate::insight::PanelInsight;
use crate::measure::{MOST_PAIRS, MeasuredRemoval, Visibility};
use crate::say;
use crate::words::decimal;
use eframe::egui::Ui;

/// What went from a panel, and how sure that is.
pub(super) fn panel_after(ui: &mut Ui, insight: &PanelInsight) {
    let Some(after) = &insight.after else { return };
    section(ui, say!("survey-before-after"));
    match &after.removal {
        Some(removal) => ui.label(said(ui, &removal.text)),
        None => ui.label(say!("survey-few-pairs")),
    };
    fact(ui, say!("survey-counts-visit"), say!("survey-at-most", film = format!("{:.1}", after.went.upper)));
    ui.label(theme::soft(if after.went.measured {
        say!("survey-taken-measured")
    } else {
        say!("survey-taken-planned")
    }));
}

/// The mean change over the panels read before and after.
pub(super) fn vehicle_after(ui: &mut Ui, m: &Model<'_>) {
    let panels = m.insight.panels.iter().filter(|p| p.after.as_ref().is_some_and(|a| a.removal.is_some())).count();
    if panels == 0 {
        return;
    }
    section(ui, say!("survey-before-after"));
    match &m.insight.removal {
        Some(removal) => ui.label(said(ui, &in_words(removal))),
        None => ui.label(say!("survey-one-pair")),
    };
}

/// As a sentence; every panel counts as one.
fn in_words(removal: &MeasuredRemoval) -> String {
    let change = &removal.change;
    let (mean, low, high) = (change.mean, change.low, change.high);
    let [mean, low, high] = [mean, low, high].map(|um| decimal(um, 1));
    let text = say!("survey-thinner", count = change.n, mean = mean, low = low, high = high);
    match removal.visibility {
        Visibility::Shown => text,
        Visibility::MoreSpots { pairs } => say!("survey-more-panels", change = text, count = pairs),
        Visibility::NotMeasurable => say!("survey-not-measurable", change = text, most = MOST_PAIRS),
    }
}
