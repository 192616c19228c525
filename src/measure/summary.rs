//! What the readings of one panel say together.
//!
//! A spot is the mean of its readings (about three within 4 cm). The spots of a panel are taken as a sample from a normal
//! distribution with mean μ and spread σ. The bound that counts is
//!
//! lower = mean − √((k·s)² + (z·u_B)²)
//!
//! with s the standard deviation of the spots joined with the step of the display, k the one-sided tolerance factor, u_B the
//! standard uncertainty of the gauge (its bias is the same at every spot, so more spots don't make it smaller), and z the normal
//! quantile of the confidence. With fewer than three spots s can't be trusted; then at least [`ASSUMED_SPREAD`] is taken, with
//! as little weight as a spread from three spots has.
//!
//! Limits: thickness over a panel is not truly normal, it falls towards edges; spots near edges are a matter of their own.

use super::gauge::Gauge;
use super::grubbs::{Grubbs, grubbs};
use super::mean_and_sd;
use super::special::normal_quantile;
use super::student::t_quantile;
use super::tolerance::{Assurance, factor_with_dof};
use super::uncertainty::{Contribution, combined_uncertainty};
use crate::units::Micrometres;

/// Spread between the spots of one panel that is assumed when there are fewer than three, in µm (our estimate).
pub const ASSUMED_SPREAD: f64 = 5.0;
/// Fewest spots from which a spread is computed.
pub const ENOUGH_SPOTS: usize = 3;

/// A spot: readings taken within about 4 cm of each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpotReading<'a> {
    /// The readings, in the order taken; may be empty.
    pub readings: &'a [Micrometres],
}

/// Where the lower bound comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LowerBasis {
    /// One-sided tolerance bound from the spread of three or more spots.
    ToleranceBound,
    /// Fewer than three spots, so that a spread is assumed.
    AssumedSpread,
    /// One place on its own: the bound holds there, not for the panel.
    OnePlace,
}

/// The readings of one panel in a few numbers, in µm.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmSummary {
    /// Readings in all.
    pub n: usize,
    /// Spots with at least one reading.
    pub spots: usize,
    /// Mean of the spots.
    pub mean: f64,
    /// Standard deviation between the spots; with a single spot, between its readings; `None` with a single reading.
    pub sd: Option<f64>,
    /// Thinnest spot.
    pub min: f64,
    /// Thickest spot.
    pub max: f64,
    /// Standard uncertainty of the mean, gauge included.
    pub standard_uncertainty: f64,
    /// Effective degrees of freedom of that uncertainty; infinite when only the gauge matters.
    pub degrees_of_freedom: f64,
    /// The bound that decisions use.
    pub lower: Micrometres,
    /// Where the bound comes from.
    pub basis: LowerBasis,
    /// Indices of spots to measure again (Grubbs, two-sided 5 %), as given to [`summarise`].
    pub suspicious: Vec<usize>,
}

impl FilmSummary {
    /// Thickest minus thinnest spot.
    pub fn range(&self) -> f64 {
        self.max - self.min
    }
}

/// Sums up the readings of one panel; `None` when there is none.
///
/// Spots without readings are skipped. Every figure is finite (the degrees of freedom may be infinite), and neither the order of
/// the readings nor that of the spots matters.
pub fn summarise(spots: &[&[Micrometres]], gauge: &Gauge, assurance: Assurance) -> Option<FilmSummary> {
    let sorted: Vec<(usize, Vec<f64>)> = spots
        .iter()
        .enumerate()
        .filter(|(_, spot)| !spot.is_empty())
        .map(|(index, spot)| {
            let mut readings: Vec<f64> = spot.iter().map(|r| r.um()).collect();
            readings.sort_by(f64::total_cmp); // so that rounding does not depend on the order taken
            (index, readings)
        })
        .collect();
    let mut values: Vec<(usize, f64)> =
        sorted.iter().map(|(i, r)| (*i, r.iter().sum::<f64>() / r.len() as f64)).collect();
    values.sort_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
    let means: Vec<f64> = values.iter().map(|v| v.1).collect();
    let (&min, &max) = (means.first()?, means.last()?);
    let (mean, between) = mean_and_sd(&means);
    let sd = between.or_else(|| mean_and_sd(&sorted.first()?.1).1);

    let step = gauge.resolution_contribution();
    let (basis, spread, spread_dof) = if means.len() >= ENOUGH_SPOTS {
        (LowerBasis::ToleranceBound, between.unwrap_or(0.0), (means.len() - 1) as f64)
    } else {
        (LowerBasis::AssumedSpread, between.unwrap_or(0.0).max(ASSUMED_SPREAD), (ENOUGH_SPOTS - 1) as f64)
    };
    let of_mean = Contribution { standard: spread / (means.len() as f64).sqrt(), degrees_of_freedom: spread_dof };
    let accuracy = gauge.accuracy_contribution(mean);
    let combined = combined_uncertainty(&[of_mean, accuracy, step]);

    let factor = factor_with_dof(means.len() as f64, spread_dof, assurance.coverage, assurance.confidence);
    let sampling = factor * spread.hypot(step.standard);
    let bias = normal_quantile(assurance.confidence) * accuracy.standard;
    let margin = sampling.hypot(bias);
    let suspicious = grubbs(&means).filter(Grubbs::stands_out).map(|g| values[g.index].0).into_iter().collect();
    Some(FilmSummary {
        n: sorted.iter().map(|(_, r)| r.len()).sum(),
        spots: means.len(),
        mean,
        sd,
        min,
        max,
        standard_uncertainty: combined.standard,
        degrees_of_freedom: combined.degrees_of_freedom,
        lower: super::thickness(mean - margin),
        basis,
        suspicious,
    })
}

/// Sums up one place on its own, such as a thin edge; `None` without a reading.
///
/// lower = mean − t·u_c, with u_c from the readings, the gauge and its display, and t for the confidence. With a single reading
/// the spread between readings is taken as one display step, with two degrees of freedom.
pub fn summarise_place(readings: &[Micrometres], gauge: &Gauge, confidence: f64) -> Option<FilmSummary> {
    let mut values: Vec<f64> = readings.iter().map(|r| r.um()).collect();
    values.sort_by(f64::total_cmp);
    let (&min, &max) = (values.first()?, values.last()?);
    let (mean, sd) = mean_and_sd(&values);
    let repeatability = match sd {
        Some(sd) => Contribution::of_mean(sd, values.len()),
        None => Contribution { standard: gauge.resolution_um.um(), degrees_of_freedom: 2.0 },
    };
    let combined =
        combined_uncertainty(&[repeatability, gauge.accuracy_contribution(mean), gauge.resolution_contribution()]);
    let margin = t_quantile(confidence, combined.degrees_of_freedom) * combined.standard;
    Some(FilmSummary {
        n: values.len(),
        spots: 1,
        mean,
        sd,
        min,
        max,
        standard_uncertainty: combined.standard,
        degrees_of_freedom: combined.degrees_of_freedom,
        lower: super::thickness(mean - margin),
        basis: LowerBasis::OnePlace,
        suspicious: Vec::new(),
    })
}
