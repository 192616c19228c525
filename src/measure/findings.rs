//! What the readings of a panel suggest, as findings.

use super::bands::{FilmBand, FilmBands};
use super::mirror::mirror_difference;
use super::summary::FilmSummary;
use crate::finding::{Code, Finding};
use crate::say;
use crate::words::decimal;

/// Everything that the film of one panel suggests; `place` names the panel, `mirror` is the panel on the other side.
pub fn film_findings(place: &str, film: &FilmSummary, mirror: Option<&FilmSummary>, bands: &FilmBands) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut add = |code, cause: String, action: &str| findings.push(Finding::new(code, place, cause, action));
    for spot in &film.suspicious {
        add(Code::ReadingStandsOut, say!("measure-stands-out", spot = spot + 1), say!("measure-stands-out-do"));
    }
    match bands.band(film.max) {
        FilmBand::FillerLikely => {
            add(Code::FilmFiller, say!("measure-filler", um = decimal(film.max, 0)), say!("measure-filler-do"));
        }
        FilmBand::Refinished | FilmBand::SeveralResprays => add(
            Code::FilmRefinished,
            say!("measure-refinished", um = decimal(film.max, 0)),
            say!("measure-refinished-do"),
        ),
        _ => {}
    }
    let lowest = bands.band(film.lower.um());
    if lowest < FilmBand::Normal {
        add(
            Code::FilmThin,
            say!("measure-thin", film = format!("{:.0}", film.lower), band = lowest.name()),
            say!("measure-thin-do"),
        );
    }
    if film.range() > bands.uneven_above_um.um() {
        add(Code::FilmUneven, say!("measure-uneven", um = decimal(film.range(), 0)), say!("measure-uneven-do"));
    }
    if let Some(difference) = mirror.map(|other| mirror_difference(film, other, bands)).filter(|d| d.remarkable) {
        let um = decimal(difference.difference.abs(), 0);
        let cause = if difference.difference > 0.0 {
            say!("measure-thicker-than-mirror", um = um)
        } else {
            say!("measure-thinner-than-mirror", um = um)
        };
        add(Code::FilmMirror, cause, say!("measure-mirror-do"));
    }
    findings
}
