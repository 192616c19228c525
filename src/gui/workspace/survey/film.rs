//! What the readings of a panel say.

use super::{after, points, statistics};
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{film as film_with_unit, said, units_of};
use crate::insight::PanelInsight;
use crate::measure::{FilmBand, film_remarks};
use crate::say;
use crate::units::Micrometres;
use eframe::egui::Ui;

/// The three numbers that matter, what they suggest, and the details one click away.
pub(super) fn film_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let insight = &m.insight.panels[index];
    numbers(ui, insight);
    points::panel_points(ui, m, index);
    if let Some(film) = &insight.film {
        let first = film_remarks(film, &m.job.policy.bands).into_iter().next();
        if let Some(remark) = first.filter(|r| r.band == FilmBand::Normal) {
            ui.label(said(ui, &remark.text));
        }
    }
    after::panel_after(ui, insight);
    if let Some(clear) = &insight.budget.clear {
        ui.label(theme::soft(said(ui, &format!("{}.", clear.in_words()))));
    }
    statistics::statistics_ui(ui, m, index, out);
}

fn numbers(ui: &mut Ui, insight: &PanelInsight) {
    let after = insight.after.as_ref().and_then(|a| Some((a.read.film.as_ref()?, a.left)));
    let now = after.or_else(|| Some((insight.film.as_ref()?, insight.budget.allowed)));
    if let Some((film, allowed)) = now {
        three(ui, film.mean, film.lower, allowed);
        return;
    }
    let shown = insight.read.as_ref().and_then(|r| r.shown());
    match (&insight.unreadable, shown) {
        (Some(reason), _) => ui.label(say!("survey-not-read-why", why = reason)),
        (None, Some(film)) => {
            let mean = film_with_unit(ui, film.mean, 0);
            ui.label(say!("survey-read-undecided", film = mean))
        }
        (None, None) => ui.label(say!("survey-not-read")),
    };
}

fn three(ui: &mut Ui, mean: f64, lower: Micrometres, allowed: Micrometres) {
    let units = units_of(ui.ctx());
    ui.horizontal(|ui| {
        for (um, decimals, name) in [
            (mean, 0, say!("survey-three-mean")),
            (lower.um(), 0, say!("survey-three-least")),
            (allowed.um(), 1, say!("survey-three-may-go")),
        ] {
            let name = format!("{name}, {}", units.name("µm"));
            number_with_name(ui, &units.number(um, "µm", decimals), &name);
        }
    });
}

fn number_with_name(ui: &mut Ui, value: &str, name: &str) {
    ui.vertical(|ui| {
        ui.set_width(92.0);
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.label(theme::bold(value, 28.0));
        ui.label(theme::soft(name));
    });
}
