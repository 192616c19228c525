//! Before and after at the same spots: how much is gone, and could this gauge have seen it at all.
//!
//! The bias of a gauge is the same before and after, so it cancels in the difference. It does not cancel in "how much is left".

use super::mean_and_sd;
use super::student::{noncentral_t_cdf, t_cdf, t_quantile};

/// Change between two surveys of the same spots (first minus second, so a removal is positive).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairedChange {
    /// Pairs used.
    pub n: usize,
    /// Mean difference.
    pub mean: f64,
    /// Standard deviation of the differences.
    pub sd: f64,
    /// Student's t of the mean difference against none; infinite when all differences are equal and not zero.
    pub t: f64,
    /// Two-sided probability of such a t if nothing had changed.
    pub p: f64,
    /// Lower end of the two-sided confidence interval.
    pub low: f64,
    /// Upper end of that interval.
    pub high: f64,
}

impl PairedChange {
    /// Whether the interval excludes no change.
    pub fn shown(&self) -> bool {
        self.low > 0.0 || self.high < 0.0
    }
}

/// Paired change with a two-sided interval at `level` (0.95 for 95 %); `None` with fewer than two pairs.
///
/// `resolution` is the step of the display in the unit of the values: the interval is never narrower than what rounding to
/// such steps leaves open (standard uncertainty step/√6 for a difference, spread over n pairs). 0 switches this off.
/// Only the first `min(len)` values of both lists are paired. **Source**: Student's paired test, t = d̄ / (s_d/√n).
pub fn paired_change(first: &[f64], second: &[f64], level: f64, resolution: f64) -> Option<PairedChange> {
    let differences: Vec<f64> = first.iter().zip(second).map(|(a, b)| a - b).collect();
    let n = differences.len();
    let (mean, sd) = mean_and_sd(&differences);
    let sd = sd?;
    let standard = sd / (n as f64).sqrt();
    let dof = (n - 1) as f64;
    let (t, p) = if standard > 0.0 {
        let t = mean / standard;
        (t, 2.0 * t_cdf(-t.abs(), dof))
    } else if mean == 0.0 {
        (0.0, 1.0)
    } else {
        (f64::INFINITY.copysign(mean), 0.0)
    };
    let rounding = resolution / 6.0_f64.sqrt() / (n as f64).sqrt();
    let half = t_quantile(0.5 + level / 2.0, dof) * standard.max(rounding);
    Some(PairedChange { n, mean, sd, t, p, low: mean - half, high: mean + half })
}

/// Fewest pairs of spots that show a change of `change` with 90 % power at one-sided 5 %; `None` above 1,000.
///
/// `sd_reading` is the repeatability of one reading including re-positioning, `readings` how many are averaged per spot; the
/// difference of two spots then has sd √2·sd_reading/√readings. Exact, with the noncentral t distribution. At least two.
pub fn pairs_needed(sd_reading: f64, readings: usize, change: f64) -> Option<usize> {
    let sd = std::f64::consts::SQRT_2 * sd_reading / (readings.max(1) as f64).sqrt();
    if sd <= 0.0 && change > 0.0 {
        return Some(2);
    }
    if change.is_nan() || sd.is_nan() || change <= 0.0 {
        return None;
    }
    let effect = change / sd;
    let enough = |n: usize| {
        let dof = (n - 1) as f64;
        1.0 - noncentral_t_cdf(t_quantile(0.95, dof), dof, effect * (n as f64).sqrt()) >= 0.90
    };
    let mut high = 2;
    while !enough(high) {
        high *= 2;
        if high > 1_024 {
            return None;
        }
    }
    let mut low = high / 2;
    while high - low > 1 {
        let middle = low.midpoint(high);
        if middle >= 2 && enough(middle) {
            high = middle;
        } else {
            low = middle;
        }
    }
    Some(high).filter(|&n| n <= 1_000)
}
