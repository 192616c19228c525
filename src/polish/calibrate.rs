//! What test spots teach about the removal on this paint.
//!
//! Model, with all errors normal: step s takes r_s = m_s·(1 + h + e_s) per pass, where m_s is the shop's figure, h the hardness of
//! this paint, common to all steps, and e_s what is peculiar to the step. Beforehand h ~ N(0, σ_h²) and e_s ~ N(0, σ_s² − σ_h²),
//! all independent; σ_s is the shop's spread divided by 1.645 (the spread is a one-sided 95 % bound), and σ_h² is half of the
//! smallest σ_s² (our estimate). A test spot of n passes shows y = n·r_s + ε with ε ~ N(0, u²), u from the paired readings. The
//! state (h, e_1 … e_k) is updated one result after another (Kalman 1960, the static case), so a test of one step also narrows
//! the others, by way of h.
//!
//! Afterwards a step removes m_s·(1 + E[h + e_s]) with spread 1.645·√Var(h + e_s)/(1 + E[h + e_s]), never below
//! [`LEAST_SPREAD`], because passes differ. A result is called contradictory when it lies further from what was expected than
//! chance explains in one case of twenty.

use super::step::{PolishStep, StepKind};
use crate::measure::thickness;
use crate::say;
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// Spread that remains between passes however well a paint is known (our estimate).
pub const LEAST_SPREAD: f64 = 0.15;
/// A test is not carried further than this many times its own passes (common practice: the abrasive wears).
pub const CARRIED_PASSES: u32 = 2;
/// Quantile of the normal distribution that a one-sided 95 % bound uses.
const Z95: f64 = 1.645;
/// Quantile for one result in twenty, two-sided.
const Z_CONTRADICTION: f64 = 1.96;
/// A paint is taken to be between this much slower and this much faster than the shop's figures.
const FACTOR_RANGE: (f64, f64) = (0.1, 5.0);

/// How hard a paint is known to be, before any test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PaintHardness {
    /// Marks at a touch and gives way to the finest polish.
    Soft,
    /// Not known, or like most.
    #[default]
    Usual,
    /// Takes long to correct.
    Hard,
}

impl PaintHardness {
    /// Removal on such paint against the shop's figures (our estimate).
    pub fn factor(self) -> f64 {
        match self {
            Self::Soft => 1.4,
            Self::Usual => 1.0,
            Self::Hard => 0.7,
        }
    }

    /// The steps as such paint is expected to take them; feed these to [`calibrate`].
    pub fn expected(self, steps: &[PolishStep]) -> Vec<PolishStep> {
        let scaled =
            |s: &PolishStep| PolishStep { removal_um: thickness(s.removal_um.um() * self.factor()), ..s.clone() };
        steps.iter().map(scaled).collect()
    }
}

/// What a test spot showed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TestSpot {
    /// The step, by its place in the list.
    pub step: usize,
    /// Passes; at least one.
    pub passes: u32,
    /// Mean removal in µm and its standard uncertainty, above zero; `None` when the gauge could not tell.
    #[serde(default)]
    pub removal: Option<(f64, f64)>,
    /// Whether the finish it left would do as the last one.
    pub finish_right: bool,
}

/// The steps as this paint takes them.
#[derive(Debug, Clone, PartialEq)]
pub struct Calibration {
    /// The steps in the order given, with removal and spread brought up to date.
    pub steps: Vec<PolishStep>,
    /// For each step the factor on the shop's removal and its standard deviation.
    pub factors: Vec<Factor>,
    /// What to know, as sentences; contradictory results are named here.
    pub notes: Vec<String>,
}

/// Removal on this paint against the shop's figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Factor {
    /// 1 is as the shop's figure says.
    pub mean: f64,
    /// Standard deviation.
    pub sd: f64,
}

/// Brings removal rates up to date with test spots; the order of the spots does not matter to the rates.
///
/// Spots that name no step of the list, or have no usable removal, teach nothing about removal.
pub fn calibrate(steps: &[PolishStep], spots: &[TestSpot]) -> Calibration {
    let mut belief = Belief::before(steps);
    let mut notes = Vec::new();
    for spot in spots {
        let (Some(step), Some((removal, u))) = (steps.get(spot.step), spot.removal) else { continue };
        let (passes, per_pass) = (f64::from(spot.passes.max(1)), step.removal_um.um());
        if !(removal.is_finite() && u.is_finite() && u > 0.0 && per_pass > 0.0) {
            continue;
        }
        let gain = passes * per_pass;
        let surprise = belief.update(spot.step, removal / gain - 1.0, (u / gain).powi(2));
        if surprise.abs() > Z_CONTRADICTION {
            let took = format!("{}\u{202f}µm", decimal(removal, 1));
            notes.push(if surprise > 0.0 {
                say!("polish-note-took-more", step = step.called(), took = took)
            } else {
                say!("polish-note-took-less", step = step.called(), took = took)
            });
        }
    }
    let factors: Vec<Factor> = (0..steps.len()).map(|s| belief.factor(s)).collect();
    let mut updated: Vec<PolishStep> = steps.iter().zip(&factors).map(|(s, f)| with_factor(s, *f)).collect();
    for (index, step) in updated.iter_mut().enumerate() {
        let tested = |spot: &&TestSpot| spot.step == index;
        if let Some(most) = spots.iter().filter(tested).filter(|s| s.removal.is_some()).map(|s| s.passes.max(1)).max() {
            step.max_passes = step.max_passes.min(most.saturating_mul(CARRIED_PASSES).max(step.min_passes));
        }
        if spots.iter().filter(tested).any(|spot| !spot.finish_right) && step.kind.leaves_gloss() {
            notes.push(say!("polish-note-no-gloss", step = step.called()));
            if step.kind == StepKind::Polish {
                step.kind = StepKind::Cut; // no longer allowed as the last step
            }
        }
    }
    Calibration { steps: updated, factors, notes }
}

fn with_factor(step: &PolishStep, factor: Factor) -> PolishStep {
    let spread = (Z95 * factor.sd / factor.mean).max(LEAST_SPREAD.min(step.removal_spread));
    PolishStep { removal_um: thickness(step.removal_um.um() * factor.mean), removal_spread: spread, ..step.clone() }
}

/// Mean and covariance of (h, e_1 … e_k).
struct Belief {
    mean: Vec<f64>,
    covariance: Vec<Vec<f64>>,
}

impl Belief {
    fn before(steps: &[PolishStep]) -> Self {
        let variances: Vec<f64> = steps.iter().map(|s| (s.removal_spread / Z95).powi(2)).collect();
        let common = 0.5 * variances.iter().copied().fold(f64::INFINITY, f64::min).min(1e6);
        let size = steps.len() + 1;
        let mut covariance = vec![vec![0.0; size]; size];
        covariance[0][0] = common;
        for (s, variance) in variances.iter().enumerate() {
            covariance[s + 1][s + 1] = variance - common;
        }
        Self { mean: vec![0.0; size], covariance }
    }

    /// Takes in that h + e_s was seen as `value` with variance `noise`; returns how surprising that was, in standard deviations.
    fn update(&mut self, step: usize, value: f64, noise: f64) -> f64 {
        let s = step + 1;
        let reach: Vec<f64> = self.covariance.iter().map(|row| row[0] + row[s]).collect();
        let expected_variance = reach[0] + reach[s] + noise;
        let innovation = value - self.mean[0] - self.mean[s];
        for (mean, r) in self.mean.iter_mut().zip(&reach) {
            *mean += r * innovation / expected_variance;
        }
        for (row, r) in self.covariance.iter_mut().zip(&reach) {
            for (cell, q) in row.iter_mut().zip(&reach) {
                *cell -= r * q / expected_variance;
            }
        }
        innovation / expected_variance.sqrt()
    }

    fn factor(&self, step: usize) -> Factor {
        let s = step + 1;
        let variance = self.covariance[0][0] + 2.0 * self.covariance[0][s] + self.covariance[s][s];
        Factor {
            mean: (1.0 + self.mean[0] + self.mean[s]).clamp(FACTOR_RANGE.0, FACTOR_RANGE.1),
            sd: variance.max(0.0).sqrt(),
        }
    }
}

/// Greatest depth of a defect kind that explains why a test spot cleared only `share` of it down to `cleared_um`.
///
/// The depths are taken as evenly spread from `low_um`. `None` when the test went no deeper than `low_um` or cleared nothing, so
/// that it tells nothing; `cleared_um` itself when all went.
pub fn depth_from_test(low_um: f64, cleared_um: f64, share: f64) -> Option<f64> {
    (cleared_um > low_um && share > 0.0).then(|| low_um + (cleared_um - low_um) / share.min(1.0))
}

/// Order in which to try steps on a test spot: the least aggressive first, by kind and then by removal.
pub fn test_order(steps: &[PolishStep]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..steps.len()).collect();
    order.sort_by(|&a, &b| {
        steps[b].kind.cmp(&steps[a].kind).then(steps[a].removal_um.cmp(&steps[b].removal_um)).then(a.cmp(&b))
    });
    order
}
