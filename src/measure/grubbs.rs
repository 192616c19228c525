//! Grubbs' test: is the reading furthest from the mean too far away to belong to the others?
//!
//! A reading it points at is measured again and never deleted: on a vehicle the edge of a repair looks exactly like an error.

use super::memo::known_or;
use super::student::t_quantile;

/// What the test says about a set of values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grubbs {
    /// Index of the value furthest from the mean.
    pub index: usize,
    /// Its distance from the mean in standard deviations.
    pub g: f64,
    /// Two-sided critical value at 5 %.
    pub critical: f64,
}

impl Grubbs {
    /// Whether the value stands out.
    pub fn stands_out(&self) -> bool {
        self.g > self.critical
    }
}

/// Two-sided test at 5 % for one outlier.
///
/// `None` with fewer than four values (with three, G can't exceed 1.1547, so there is nothing to test) or when all are equal.
/// **Source**: NIST/SEMATECH e-Handbook 1.3.5.17.
pub fn grubbs(values: &[f64]) -> Option<Grubbs> {
    let n = values.len();
    if n < 4 {
        return None;
    }
    let (mean, sd) = super::mean_and_sd(values);
    let sd = sd?;
    if sd <= f64::EPSILON * mean.abs() {
        return None;
    }
    let (index, g) = values
        .iter()
        .map(|v| (v - mean).abs() / sd)
        .enumerate()
        .max_by(|a, b| a.1.total_cmp(&b.1).then(b.0.cmp(&a.0)))?;
    Some(Grubbs { index, g, critical: grubbs_critical(n, 0.05 / 2.0) })
}

/// Critical value of Grubbs' statistic for `n` ≥ 3 values; `tail` is the significance of one side (α/2 for two-sided).
pub fn grubbs_critical(n: usize, tail: f64) -> f64 {
    let n = n.max(3) as f64;
    known_or("grubbs", [n, tail, 0.0, 0.0], || {
        let t = t_quantile(1.0 - tail / n, n - 2.0);
        (n - 1.0) / n.sqrt() * (t * t / (n - 2.0 + t * t)).sqrt()
    })
}
