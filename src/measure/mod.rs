//! How thick the film is, and how sure that is.
//!
//! A gauge reads everything above the base; it can't see the clear coat on its own. This module turns readings into a summary
//! per panel with a lower bound that decisions may rest on, points at readings to take again, and compares two surveys.
//!
//! It knows numbers and gauges. It must not know vehicles, jobs, or what polishing will be done with the answer.
//!
//! Letters: n count, s standard deviation, u standard uncertainty, ν degrees of freedom, k tolerance factor, p coverage,
//! γ confidence, δ noncentrality.

mod bands;
mod findings;
mod gauge;
mod gloss;
mod grubbs;
mod memo;
mod mirror;
mod paired;
mod removal;
mod route;
mod special;
mod spots;
mod student;
mod summary;
mod tolerance;
mod uncertainty;

pub use bands::{FilmBand, FilmBands, FilmRemark, film_remarks};
pub use findings::film_findings;
pub use gauge::{Base, Gauge, GaugeCheck, GaugePrinciple};
pub use gloss::{
    GlossChange, GlossComparison, GlossGeometry, LEAST_GLOSS_CHANGE, REFERENCE_INDEX, compare_gloss, gloss_change,
    haze_index, next_gloss_geometry, reflectance, smooth_gloss,
};
pub use grubbs::{Grubbs, grubbs, grubbs_critical};
pub use mirror::{MirrorDifference, mirror_difference};
pub use paired::{PairedChange, paired_change, pairs_needed};
pub use removal::{MOST_PAIRS, MeasuredRemoval, Visibility, measured_removal};
pub use route::{route_length, survey_route};
pub use spots::{CheckAt, EDGE_DISTANCE_MM, READINGS_PER_SPOT, spots_for, suspect_readings};
pub use student::{noncentral_t_cdf, t_cdf, t_quantile};
pub use summary::{ASSUMED_SPREAD, ENOUGH_SPOTS, FilmSummary, LowerBasis, SpotReading, summarise, summarise_place};
pub use tolerance::{Assurance, tolerance_factor};
pub use uncertainty::{CombinedUncertainty, Contribution, combined_uncertainty};

use crate::units::Micrometres;

/// A place on a plane, such as the map or the floor; the unit is the caller's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// First coordinate.
    pub x: f64,
    /// Second coordinate.
    pub y: f64,
}

/// Mean, and standard deviation with n − 1; no standard deviation for fewer than two values, mean 0 for none.
pub(crate) fn mean_and_sd(values: &[f64]) -> (f64, Option<f64>) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n.max(1.0);
    let squares: f64 = values.iter().map(|v| (v - mean).powi(2)).sum();
    (mean, (values.len() > 1).then(|| (squares / (n - 1.0)).sqrt()))
}

/// The nearest thickness that can be: below zero becomes zero, and what is not a number too.
pub(crate) fn thickness(um: f64) -> Micrometres {
    Micrometres::new(um.clamp(0.0, 100_000.0)).unwrap_or(Micrometres::ZERO)
}
