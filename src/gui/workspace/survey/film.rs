//! What the readings of a panel say.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::insight::PanelInsight;
use crate::measure::{FilmBand, film_remarks};
use eframe::egui::{self, Ui};

/// The three numbers that matter.
pub(super) fn film_ui(ui: &mut Ui, m: &Model<'_>, insight: &PanelInsight) {
    let p = theme::of(ui.ctx());
    let Some(film) = &insight.film else {
        match &insight.unreadable {
            Some(reason) => ui.label(format!("Not read: {reason}.")),
            None => ui.label("Not read yet."),
        };
        return;
    };
    ui.horizontal(|ui| {
        number_with_name(ui, &format!("{:.0}", film.mean), "mean, µm");
        number_with_name(ui, &format!("{:.0}", film.lower.um()), "at least, µm");
        number_with_name(ui, &format!("{:.1}", insight.budget.allowed.um()), "may go, µm");
    });
    for remark in film_remarks(film, &m.job.policy.bands) {
        let ink = if remark.band == FilmBand::Normal { p.ink } else { p.note };
        ui.label(egui::RichText::new(remark.text).color(ink));
    }
    ui.label(theme::soft(format!(
        "{} readings at {} spots. At least: {}.",
        film.n,
        film.spots,
        m.job.assurance.in_words()
    )));
}

fn number_with_name(ui: &mut Ui, value: &str, name: &str) {
    ui.vertical(|ui| {
        ui.set_width(92.0);
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.label(theme::bold(value, 28.0));
        ui.label(theme::soft(name));
    });
}
