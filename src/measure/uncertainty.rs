//! Combining uncertainties: the root of the sum of squares and its effective degrees of freedom.

use super::student::t_quantile;

/// One source of uncertainty, already multiplied by its sensitivity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// Standard uncertainty, zero or more.
    pub standard: f64,
    /// Degrees of freedom; infinite for what is known from a statement such as a data sheet.
    pub degrees_of_freedom: f64,
}

impl Contribution {
    /// A contribution from `n` repeated values whose mean is used: sd/√n with n − 1 degrees of freedom (type A).
    pub fn of_mean(sd: f64, n: usize) -> Self {
        let n = n.max(1) as f64;
        Self { standard: sd / n.sqrt(), degrees_of_freedom: (n - 1.0).max(0.0) }
    }

    /// A contribution that is taken as exactly known (type B).
    pub fn certain(standard: f64) -> Self {
        Self { standard, degrees_of_freedom: f64::INFINITY }
    }
}

/// Several sources combined.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CombinedUncertainty {
    /// Combined standard uncertainty.
    pub standard: f64,
    /// Effective degrees of freedom, not truncated; infinite when every source is certain.
    pub degrees_of_freedom: f64,
}

impl CombinedUncertainty {
    /// Half width of the interval that holds with probability `level` (two-sided, 0.95 for 95 %).
    ///
    /// The degrees of freedom are truncated to a whole number first, as JCGM 100 G.4.1 asks.
    pub fn expanded(self, level: f64) -> f64 {
        let dof = if self.degrees_of_freedom.is_finite() {
            (self.degrees_of_freedom + 1e-9).floor().max(1.0)
        } else {
            self.degrees_of_freedom
        };
        self.standard * t_quantile(0.5 + level / 2.0, dof)
    }
}

/// u_c² = Σ u_i², with the effective degrees of freedom of Welch and Satterthwaite, ν = u_c⁴ / Σ(u_i⁴/ν_i).
///
/// **Source**: JCGM 100:2008, 5.1.2 and G.4.1. An empty list gives zero uncertainty with infinite degrees of freedom.
pub fn combined_uncertainty(contributions: &[Contribution]) -> CombinedUncertainty {
    let variance: f64 = contributions.iter().map(|c| c.standard * c.standard).sum();
    let spent: f64 = contributions
        .iter()
        .filter(|c| c.standard > 0.0 && c.degrees_of_freedom.is_finite())
        .map(|c| c.standard.powi(4) / c.degrees_of_freedom.max(1e-9))
        .sum();
    let degrees_of_freedom = if spent > 0.0 { variance * variance / spent } else { f64::INFINITY };
    CombinedUncertainty { standard: variance.sqrt(), degrees_of_freedom }
}
