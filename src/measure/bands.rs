//! What a total film thickness suggests about the past of a panel. Trade practice, not knowledge: it points, it proves nothing.

use super::summary::FilmSummary;
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// Borders between the bands of total film on metal, in rising order; a shop may change them.
///
/// The lower three and 200 µm are repeated on trade pages without a traceable measurement; 300 and 1000 µm are common
/// practice, no source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct FilmBands {
    /// Below this nothing is cut.
    pub no_cut_below_um: Micrometres,
    /// Below this only the finest polish.
    pub finest_only_below_um: Micrometres,
    /// Below this the film is thin and nothing strong is done.
    pub thin_below_um: Micrometres,
    /// Above this a panel was painted again.
    pub refinished_above_um: Micrometres,
    /// Above this it was painted again more than once.
    pub several_above_um: Micrometres,
    /// Above this there is body filler.
    pub filler_above_um: Micrometres,
    /// Two spots of one panel that differ by more than this are worth a look (our estimate).
    pub uneven_above_um: Micrometres,
    /// A panel that differs from its mirror panel by more than this is worth a look (our estimate).
    pub mirror_above_um: Micrometres,
}

impl Default for FilmBands {
    fn default() -> Self {
        Self {
            no_cut_below_um: Micrometres::of(70.0),
            finest_only_below_um: Micrometres::of(80.0),
            thin_below_um: Micrometres::of(100.0),
            refinished_above_um: Micrometres::of(200.0),
            several_above_um: Micrometres::of(300.0),
            filler_above_um: Micrometres::of(1000.0),
            uneven_above_um: Micrometres::of(40.0),
            mirror_above_um: Micrometres::of(30.0),
        }
    }
}

/// Which band a thickness falls into, from thin to thick.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FilmBand {
    /// So thin that nothing is cut.
    NoCut,
    /// The finest polish only.
    FinestOnly,
    /// Thin; nothing strong.
    Thin,
    /// As from the factory.
    Normal,
    /// Painted again once.
    Refinished,
    /// Painted again several times.
    SeveralResprays,
    /// Body filler under the paint.
    FillerLikely,
}

impl FilmBand {
    /// The band in a few words.
    pub fn name(self) -> &'static str {
        match self {
            Self::NoCut => say!("measure-band-no-cut"),
            Self::FinestOnly => say!("measure-band-finest-only"),
            Self::Thin => say!("measure-band-thin"),
            Self::Normal => say!("measure-band-normal"),
            Self::Refinished => say!("measure-band-refinished"),
            Self::SeveralResprays => say!("measure-band-several"),
            Self::FillerLikely => say!("measure-band-filler"),
        }
    }
}

impl FilmBands {
    /// What is out of order among the borders, as the start of a sentence; none where they rise from thin to thick.
    pub fn disorder(&self) -> Option<&'static str> {
        let borders = [
            self.no_cut_below_um,
            self.finest_only_below_um,
            self.thin_below_um,
            self.refinished_above_um,
            self.several_above_um,
            self.filler_above_um,
        ];
        (!borders.is_sorted()).then(|| say!("measure-bands-do-not-rise"))
    }

    /// Band of one thickness, in µm.
    pub fn band(&self, um: f64) -> FilmBand {
        match um {
            t if t < self.no_cut_below_um.um() => FilmBand::NoCut,
            t if t < self.finest_only_below_um.um() => FilmBand::FinestOnly,
            t if t < self.thin_below_um.um() => FilmBand::Thin,
            t if t <= self.refinished_above_um.um() => FilmBand::Normal,
            t if t <= self.several_above_um.um() => FilmBand::Refinished,
            t if t <= self.filler_above_um.um() => FilmBand::SeveralResprays,
            _ => FilmBand::FillerLikely,
        }
    }
}

/// Something that the film of a panel suggests.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmRemark {
    /// The band it belongs to.
    pub band: FilmBand,
    /// Why, as a sentence with its figures.
    pub text: String,
}

/// What a panel's film suggests: always its band, thick spots that the mean hides, and unevenness.
///
/// Thick bands are judged by the thickest spot (filler hides in one place), thin ones by the thinnest.
pub fn film_remarks(film: &FilmSummary, bands: &FilmBands) -> Vec<FilmRemark> {
    let (thick, thin, middle) = (bands.band(film.max), bands.band(film.min), bands.band(film.mean));
    let um = |um: f64| decimal(um, 0);
    let mean = say!("measure-film-mean", um = um(film.mean), meaning = meaning(middle));
    let mut remarks = vec![FilmRemark { band: middle, text: mean }];
    if thick > FilmBand::Normal && thick != middle {
        let text = say!("measure-film-thickest", um = um(film.max), meaning = meaning(thick));
        remarks.push(FilmRemark { band: thick, text });
    }
    if thin < FilmBand::Normal && thin != middle {
        let text = say!("measure-film-thinnest", um = um(film.min), meaning = meaning(thin));
        remarks.push(FilmRemark { band: thin, text });
    }
    if film.range() > bands.uneven_above_um.um() {
        remarks.push(FilmRemark { band: middle, text: say!("measure-film-uneven", um = um(film.range())) });
    }
    remarks
}

/// What a band suggests, as the second half of a sentence.
fn meaning(band: FilmBand) -> &'static str {
    match band {
        FilmBand::NoCut => say!("measure-means-no-cut"),
        FilmBand::FinestOnly => say!("measure-means-finest-only"),
        FilmBand::Thin => say!("measure-means-thin"),
        FilmBand::Normal => say!("measure-means-normal"),
        FilmBand::Refinished => say!("measure-means-refinished"),
        FilmBand::SeveralResprays => say!("measure-means-several"),
        FilmBand::FillerLikely => say!("measure-means-filler"),
    }
}
