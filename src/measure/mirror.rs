//! A panel against its mirror panel on the other side.
//!
//! Both were read with the same gauge, so its bias cancels; only the spread of the spots decides whether a difference is real.

use super::bands::FilmBands;
use super::student::t_quantile;
use super::summary::{ASSUMED_SPREAD, FilmSummary};
use super::uncertainty::{Contribution, combined_uncertainty};
use crate::say;
use crate::words::decimal;

/// How a panel differs from its mirror panel.
#[derive(Debug, Clone, PartialEq)]
pub struct MirrorDifference {
    /// Mean of the first minus mean of the second, in µm.
    pub difference: f64,
    /// Half width of the two-sided 95 % interval of that difference.
    pub half_width: f64,
    /// Whether it is larger than the shop's border and larger than chance explains.
    pub remarkable: bool,
    /// What it means, as a sentence.
    pub text: String,
}

/// Compares two mirror panels (Welch's test; JCGM 100 G.4.1 for the degrees of freedom).
pub fn mirror_difference(first: &FilmSummary, second: &FilmSummary, bands: &FilmBands) -> MirrorDifference {
    let part = |film: &FilmSummary| {
        let (sd, dof) = match film.sd {
            Some(sd) if film.spots > 1 => (sd, (film.spots - 1) as f64),
            _ => (ASSUMED_SPREAD, 2.0),
        };
        Contribution { standard: sd / (film.spots.max(1) as f64).sqrt(), degrees_of_freedom: dof }
    };
    let combined = combined_uncertainty(&[part(first), part(second)]);
    let half_width = combined.standard * t_quantile(0.975, combined.degrees_of_freedom);
    let difference = first.mean - second.mean;
    let remarkable = difference.abs() > bands.mirror_above_um.um() && difference.abs() > half_width;
    let (um, within) = (decimal(difference.abs(), 0), decimal(half_width, 0));
    let text = match (remarkable, difference > 0.0) {
        (true, true) => say!("measure-mirror-thicker", um = um, within = within),
        (true, false) => say!("measure-mirror-thinner", um = um, within = within),
        (false, true) => say!("measure-mirror-alike-thicker", um = um, within = within),
        (false, false) => say!("measure-mirror-alike-thinner", um = um, within = within),
    };
    MirrorDifference { difference, half_width, remarkable, text }
}
