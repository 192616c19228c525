//! What the readings of a panel suggest, as findings.

use super::bands::{FilmBand, FilmBands};
use super::mirror::mirror_difference;
use super::summary::FilmSummary;
use crate::finding::{Code, Finding};

/// Everything that the film of one panel suggests; `place` names the panel, `mirror` is the panel on the other side.
pub fn film_findings(place: &str, film: &FilmSummary, mirror: Option<&FilmSummary>, bands: &FilmBands) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut add = |code, cause: String, action: &str| findings.push(Finding::new(code, place, cause, action));
    for spot in &film.suspicious {
        add(
            Code::ReadingStandsOut,
            format!("spot {} is too far from the others to belong to them", spot + 1),
            "read that spot again; keep the reading if it comes out the same",
        );
    }
    match bands.band(film.max) {
        FilmBand::FillerLikely => add(
            Code::FilmFiller,
            format!("{:.0}\u{202f}µm at the thickest spot suggests body filler", film.max),
            "do not polish this panel; look at it from the inside or ask the owner",
        ),
        FilmBand::Refinished | FilmBand::SeveralResprays => add(
            Code::FilmRefinished,
            format!("{:.0}\u{202f}µm at the thickest spot suggests that it was painted again", film.max),
            "note it as refinished, or read again; its layers are not known",
        ),
        _ => {}
    }
    let lowest = bands.band(film.lower.um());
    if lowest < FilmBand::Normal {
        add(
            Code::FilmThin,
            format!("the film may be as thin as {:.0}, which is {}", film.lower, lowest.name()),
            "stay with the finest step, or read more spots to narrow the bound",
        );
    }
    if film.range() > bands.uneven_above_um.um() {
        add(
            Code::FilmUneven,
            format!("the spots differ by {:.0}\u{202f}µm", film.range()),
            "read between the thickest and the thinnest spot to find where it changes",
        );
    }
    if let Some(difference) = mirror.map(|other| mirror_difference(film, other, bands)).filter(|d| d.remarkable) {
        add(
            Code::FilmMirror,
            format!(
                "it is {:.0}\u{202f}µm {} than the mirror panel",
                difference.difference.abs(),
                if difference.difference > 0.0 { "thicker" } else { "thinner" }
            ),
            "compare colour and texture of both; one was probably painted again or rubbed thin",
        );
    }
    findings
}
