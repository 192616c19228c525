//! The readings of a panel in full: figures with what they mean, a dot for each reading, and which spot to measure again.

use super::dots;
use crate::geometry::{MapRect, MapVector};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{entry_field, fact, said, units_of};
use crate::insight::place;
use crate::job::{Command, Job, Spot, Suspects};
use crate::measure::{FilmSummary, LowerBasis};
use crate::say;
use crate::units::Micrometres;
use crate::vehicle::Panel;
use crate::words::decimal;
use eframe::egui::{self, RichText, Ui};

/// What is shown round a spot that one goes to, in mm on the map.
const ROUND_SPOT_MM: f32 = 350.0;

/// Figures, dots and spots, closed at first; above them the spot to measure again, if there is one.
pub(super) fn statistics_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let insight = &m.insight.panels[index];
    let latest = insight.after.as_ref().map(|a| &a.read).or(insight.read.as_ref());
    let panel = &m.template.panels[index];
    let Some((read, film)) = latest.and_then(|read| Some((read, read.shown()?))) else { return };
    let Some(record) = m.job.record(&panel.id) else { return };
    for spot in film.suspicious.iter().filter_map(|i| Some((*i, record.spots.get(*i)?))) {
        again(ui, m, panel, spot, out);
    }
    egui::CollapsingHeader::new(say!("survey-details")).id_salt("details").show(ui, |ui| {
        figures(ui, m.job, film);
        dots::dots_ui(ui, m.job, &record.spots, read.survey, film);
        let suspects = m.job.suspects();
        for (number, spot) in record.spots.iter().enumerate() {
            one_spot(ui, m.job, number, spot, read.survey, &suspects);
        }
        if read.suspects > 0 {
            ui.label(theme::soft(say!("survey-struck")));
        }
    });
}

fn figures(ui: &mut Ui, job: &Job, film: &FilmSummary) {
    let um = |value: f64| format!("{}\u{202f}µm", decimal(value, 1));
    fact(ui, say!("survey-readings"), say!("survey-at-spots", count = film.n, spots = film.spots));
    fact(
        ui,
        say!("survey-thin-thick"),
        say!("survey-from-to", low = format!("{:.0}", film.min), high = format!("{:.0}", film.max)),
    );
    fact(ui, say!("survey-range"), um(film.range()));
    if let Some(sd) = film.sd {
        fact(ui, say!("survey-sd"), um(sd));
    }
    fact(ui, say!("survey-uncertainty"), um(film.standard_uncertainty));
    let dof = film.degrees_of_freedom;
    let shown = if dof.is_finite() && dof < 1_000.0 {
        format!("{:.0}", dof.floor())
    } else {
        say!("survey-very-many").to_owned()
    };
    fact(ui, say!("survey-dof"), shown);
    ui.label(theme::soft(say!("survey-uncertainty-of")));
    let meaning = match film.basis {
        LowerBasis::ToleranceBound => say!("survey-basis-bound"),
        LowerBasis::AssumedSpread => say!("survey-basis-assumed"),
        LowerBasis::OnePlace => say!("survey-basis-one"),
    };
    let (least, sure) = (format!("{:.0}", film.lower), job.assurance.in_words());
    let text = say!("survey-at-least-basis", film = least, sure = sure, basis = meaning);
    ui.label(theme::soft(said(ui, &text)));
}

/// The readings of one spot with their mean, spread and uncertainty.
fn one_spot(ui: &mut Ui, job: &Job, number: usize, spot: &Spot, survey: u32, suspects: &Suspects) {
    let Some(figures) = place(job, spot, survey) else { return };
    let units = units_of(ui.ctx());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = egui::vec2(6.0, 0.0);
        ui.label(theme::soft(if spot.edge {
            say!("survey-spot-edge", number = number + 1)
        } else {
            say!("survey-spot", number = number + 1)
        }));
        for reading in spot.readings_in(survey) {
            let text = RichText::new(units.as_read(reading.thickness_um));
            ui.label(if suspects.has(reading) { text.strikethrough() } else { text });
        }
        let um = |um: f64| units.number(um, "µm", 1);
        let uncertainty = units.with_unit(figures.standard_uncertainty, "µm", 1);
        let mean = um(figures.mean);
        ui.label(theme::soft(if let Some(sd) = figures.sd {
            say!("survey-spot-spread", mean = mean, sd = um(sd), uncertainty = uncertainty)
        } else {
            say!("survey-spot-figures", mean = mean, uncertainty = uncertainty)
        }));
    });
}

/// Asks for a spot to be measured again, with a field for it and a way there.
fn again(ui: &mut Ui, m: &Model<'_>, panel: &Panel, (index, spot): (usize, &Spot), out: &mut Vec<Action>) {
    let name = say!("survey-spot-again", number = index + 1);
    let typed = entry_field(ui, (panel.id.as_str(), index), &name, "µm", 0.0..=100_000.0);
    if typed.entered
        && let Some(thickness) = typed.value.and_then(|um| Micrometres::new(um).ok())
    {
        typed.clear(ui);
        out.push(Action::edit(Command::AddReading { panel: panel.id.clone(), spot: index, thickness }));
    }
    if ui.button(say!("survey-go-to-spot", number = index + 1)).on_hover_text(say!("survey-show-large")).clicked()
        && let Some(mut view) = m.view.viewport
    {
        let half = MapVector::new(ROUND_SPOT_MM, ROUND_SPOT_MM);
        view.fit_part(MapRect::new(spot.at - half, spot.at + half));
        out.push(Action::View(ViewChange::Viewport(view)));
    }
}
