//! One-sided tolerance bounds: how thin the film may be almost everywhere, from a few spots.

use super::memo::known_or;
use super::special::{normal_quantile, open_unit};
use super::student::{noncentral_t_cdf, root};
use crate::say;
use crate::units::fields;
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// How much of a panel a lower bound shall cover, and how sure one wants to be of that.
///
/// Coverage 0.90 with confidence 0.90 reads: nine times in ten, at least nine tenths of the panel are thicker than the bound.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Assurance {
    /// Share of the panel that lies above the bound, 0.7 to 0.999.
    #[serde(deserialize_with = "fields::assurance")]
    pub coverage: f64,
    /// Probability that the bound keeps its promise, 0.7 to 0.999.
    #[serde(deserialize_with = "fields::assurance")]
    pub confidence: f64,
}

impl Default for Assurance {
    fn default() -> Self {
        Self { coverage: 0.90, confidence: 0.90 }
    }
}

impl Assurance {
    /// What the two numbers promise, for somebody who reads no statistics.
    pub fn in_words(self) -> String {
        let per_cent = |share: f64| decimal(share * 100.0, 0);
        say!("measure-promise", confidence = per_cent(self.confidence), coverage = per_cent(self.coverage))
    }
}

/// Factor k of the one-sided tolerance bound `mean − k·sd` from `n` values of a normal distribution.
///
/// k = t'_γ(n−1, z_p·√n) / √n with the exact noncentral t quantile. **Domain**: `n` ≥ 2 (1 is treated as 2), coverage and
/// confidence inside (0, 1). **Source**: ISO 16269-6; NIST/SEMATECH e-Handbook 7.2.6.3.
pub fn tolerance_factor(n: usize, coverage: f64, confidence: f64) -> f64 {
    let n = n.max(2);
    factor_with_dof(n as f64, (n - 1) as f64, coverage, confidence)
}

/// The factor when the spread has `dof` degrees of freedom and the mean comes from `n` values.
pub(super) fn factor_with_dof(n: f64, dof: f64, coverage: f64, confidence: f64) -> f64 {
    known_or("tolerance", [n, dof, coverage, confidence], || exact_factor(n, dof, coverage, confidence))
}

fn exact_factor(n: f64, dof: f64, coverage: f64, confidence: f64) -> f64 {
    let z = normal_quantile(coverage);
    let confidence = open_unit(confidence);
    let root_n = n.sqrt();
    // Natrella's approximation starts the search close to the root (NIST/SEMATECH e-Handbook 7.2.6.3).
    let z_confidence = normal_quantile(confidence);
    let a = 1.0 - z_confidence * z_confidence / (2.0 * dof);
    let b = z * z - z_confidence * z_confidence / n;
    let start = if a > 0.05 && z * z - a * b > 0.0 { (z + (z * z - a * b).sqrt()) / a } else { z.abs() * 2.0 + 1.0 };
    root(start.max(1e-6) * root_n, confidence, |t| noncentral_t_cdf(t, dof, z * root_n)) / root_n
}
