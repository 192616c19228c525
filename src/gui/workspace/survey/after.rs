//! Before and after: what a later survey shows of one panel and of the whole vehicle.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{fact, said, section};
use crate::insight::PanelInsight;
use crate::measure::{MOST_PAIRS, MeasuredRemoval, Visibility};
use eframe::egui::Ui;

/// What went from a panel, and how sure that is.
pub(super) fn panel_after(ui: &mut Ui, insight: &PanelInsight) {
    let Some(after) = &insight.after else { return };
    section(ui, "Before and after");
    match &after.removal {
        Some(removal) => ui.label(said(ui, &removal.text)),
        None => ui.label("Fewer than two spots were read both before and after, so the change is not known."),
    };
    let source = if after.went.measured { "as measured" } else { "as planned, since the readings don't show it" };
    fact(ui, "Counts for this visit", format!("{:.1} at most", after.went.upper));
    ui.label(theme::soft(format!("Taken {source}. The readings have to be taken with the same gauge.")));
}

/// The mean change over the panels read before and after.
pub(super) fn vehicle_after(ui: &mut Ui, m: &Model<'_>) {
    let panels = m.insight.panels.iter().filter(|p| p.after.as_ref().is_some_and(|a| a.removal.is_some())).count();
    if panels == 0 {
        return;
    }
    section(ui, "Before and after");
    match &m.insight.removal {
        Some(removal) => ui.label(said(ui, &in_words(removal))),
        None => {
            ui.label("One panel was read before and after; with two or more, a mean over the vehicle can be given.")
        }
    };
}

/// As a sentence; every panel counts as one.
fn in_words(removal: &MeasuredRemoval) -> String {
    let change = &removal.change;
    let (mean, low, high) = (change.mean, change.low, change.high);
    let text = format!(
        "Over {} panels the film is {mean:.1}\u{202f}µm thinner on average, with 95\u{202f}% confidence between {low:.1} and \
         {high:.1}\u{202f}µm.",
        change.n
    );
    match removal.visibility {
        Visibility::Shown => text,
        Visibility::MoreSpots { pairs } => format!("{text} That does not show a removal; about {pairs} panels would."),
        Visibility::NotMeasurable => format!(
            "{text} A removal this small is not measurable with this gauge: it would take more than {MOST_PAIRS} panels."
        ),
    }
}
