//! The map of the film: mean and lower bound of each panel, and where it was read.

use super::map::{Fill, LegendRow, LegendSymbol, MapScene, Pin, PinShape};
use crate::insight::{Insight, PanelInsight};
use crate::job::{Extent, Job, Spot, Suspects};
use crate::measure::FilmSummary;
use crate::say;
use crate::vehicle::{Surface, Template};
use crate::words::decimal;

/// Film values at the two ends of the scale, in µm: thin and thick for factory paint (our estimate); what lies beyond looks
/// like the end.
const FILM_SCALE_UM: (f64, f64) = (80.0, 160.0);

/// Shows the latest readings of every panel: those after polishing where there are any.
pub(super) fn show(job: &Job, template: &Template, insight: &Insight, scene: &mut MapScene) {
    let suspects = job.suspects();
    for (index, panel) in template.panels.iter().enumerate() {
        let mark = &mut scene.panels[index];
        if let Some(film) = shown(&insight.panels[index]) {
            let share = (film.mean - FILM_SCALE_UM.0) / (FILM_SCALE_UM.1 - FILM_SCALE_UM.0);
            mark.fill = Fill::Scale(share.clamp(0.0, 1.0) as f32);
            mark.value = decimal(film.mean, 0);
            mark.below = format!("\u{2265}\u{202f}{}", decimal(film.lower.um(), 0));
        } else if panel.surface == Surface::Paint {
            mark.fill = Fill::Unread;
        }
        let spots = job.record(&panel.id).map(|r| r.spots.as_slice()).unwrap_or_default();
        scene.pins.extend(spots.iter().map(|spot| pin(job, spot, index, &suspects)));
    }
    legend(scene);
}

/// The figures to show on a panel: only ones that count.
fn shown(panel: &PanelInsight) -> Option<&FilmSummary> {
    panel.after.as_ref().and_then(|after| after.read.film.as_ref()).or(panel.film.as_ref())
}

/// A spot with the mean of its readings in the latest survey that has any there.
fn pin(job: &Job, spot: &Spot, panel: usize, suspects: &Suspects) -> Pin {
    let survey = (0..=job.current_survey()).rev().find(|s| spot.count_in(*s) > 0).unwrap_or(0);
    let sum: f64 = spot.readings_in(survey).map(|r| r.thickness_um.um()).sum();
    let suspect = spot.readings_in(survey).any(|r| suspects.has(r));
    Pin {
        at: spot.at,
        panel,
        shape: if suspect { PinShape::SuspectSpot } else { PinShape::Spot },
        severity: 0.0,
        value: decimal(sum / spot.count_in(survey).max(1) as f64, 0),
        extent: Extent::Point,
    }
}

fn legend(scene: &mut MapScene) {
    let mut row = |there: bool, symbol, text: &str| {
        if there {
            scene.legend.push(LegendRow { symbol, text: text.to_owned() });
        }
    };
    let read = scene.panels.iter().any(|p| matches!(p.fill, Fill::Scale(_)));
    let (low, high) = FILM_SCALE_UM;
    row(read, LegendSymbol::Ramp, &say!("scene-film-ramp", low = decimal(low, 0), high = decimal(high, 0)));
    for (shape, text) in
        [(PinShape::Spot, say!("scene-spot-mean")), (PinShape::SuspectSpot, say!("scene-spot-suspect"))]
    {
        row(scene.pins.iter().any(|p| p.shape == shape), LegendSymbol::Pin(shape), text);
    }
    let unread = scene.panels.iter().any(|p| p.fill == Fill::Unread);
    row(unread, LegendSymbol::Fill(Fill::Unread), say!("scene-not-read"));
}
