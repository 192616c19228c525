//! Student's t distribution and its noncentral relative.

use super::special::{incomplete_beta, ln_gamma, normal_cdf, normal_quantile, open_unit};

/// From here on the t distribution is taken as normal; the difference is below 1e-6.
const NORMAL_FROM_DOF: f64 = 1e6;

/// Distribution function of Student's t with `dof` degrees of freedom (any real number above 0).
pub fn t_cdf(t: f64, dof: f64) -> f64 {
    if dof >= NORMAL_FROM_DOF {
        return normal_cdf(t);
    }
    let tail = 0.5 * incomplete_beta(dof / 2.0, 0.5, dof / (dof + t * t));
    if t > 0.0 { 1.0 - tail } else { tail }
}

/// Quantile of Student's t: the value that is not exceeded with probability `p`.
///
/// **Domain**: `p` is clamped into the open unit interval, `dof` to at least 1e-3; infinite `dof` gives the normal
/// quantile. Always finite.
pub fn t_quantile(p: f64, dof: f64) -> f64 {
    let p = open_unit(p);
    let dof = if dof.is_nan() { 1.0 } else { dof.max(1e-3) };
    if dof >= NORMAL_FROM_DOF {
        return normal_quantile(p);
    }
    if p < 0.5 {
        return -t_quantile(1.0 - p, dof);
    }
    root(normal_quantile(p).max(1e-9), p, |t| t_cdf(t, dof))
}

/// Distribution function of the noncentral t with `dof` ≥ 1 and noncentrality `delta`.
///
/// P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds, where s = √(χ²_ν / ν) has the density f. The integral is taken by Gauss-Legendre
/// panels split where the integrand turns, which stays exact for large δ where the usual series underflows.
/// **Source**: definition of the distribution (Johnson, Kotz & Balakrishnan, *Continuous Univariate Distributions* 2).
pub fn noncentral_t_cdf(t: f64, dof: f64, delta: f64) -> f64 {
    let ln_scale = std::f64::consts::LN_2 + 0.5 * dof * (0.5 * dof).ln() - ln_gamma(0.5 * dof);
    let integrand = |s: f64| {
        if s <= 0.0 {
            return 0.0;
        }
        (ln_scale + (dof - 1.0) * s.ln() - 0.5 * dof * s * s).exp() * normal_cdf(t * s - delta)
    };
    let spread = dof.sqrt().recip();
    let (low, high) = ((1.0 - 7.0 * spread).max(0.0), 1.0 + 7.0 * spread);
    let turn = if t == 0.0 { 1.0 } else { delta / t };
    let width = t.abs().max(1e-9).recip();
    let mut cuts =
        [low, 1.0 - 2.0 * spread, 1.0, 1.0 + 2.0 * spread, high, turn - 5.0 * width, turn, turn + 5.0 * width];
    for cut in &mut cuts {
        *cut = cut.clamp(low, high);
    }
    cuts.sort_by(f64::total_cmp);
    cuts.windows(2).map(|ends| gauss_legendre(ends[0], ends[1], integrand)).sum()
}

/// Sixteen-point Gauss-Legendre rule over one panel.
fn gauss_legendre(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
    const NODES: [(f64, f64); 8] = [
        (0.095_012_509_837_637_44, 0.189_450_610_455_068_5),
        (0.281_603_550_779_258_9, 0.182_603_415_044_923_58),
        (0.458_016_777_657_227_4, 0.169_156_519_395_002_54),
        (0.617_876_244_402_643_7, 0.149_595_988_816_576_73),
        (0.755_404_408_355_003, 0.124_628_971_255_533_88),
        (0.865_631_202_387_831_7, 0.095_158_511_682_492_78),
        (0.944_575_023_073_232_6, 0.062_253_523_938_647_89),
        (0.989_400_934_991_649_9, 0.027_152_459_411_754_095),
    ];
    if high <= low {
        return 0.0;
    }
    let (centre, half) = (0.5 * (low + high), 0.5 * (high - low));
    half * NODES.iter().map(|(x, w)| w * (f(centre - half * x) + f(centre + half * x))).sum::<f64>()
}

/// Solves `cdf(x) = p` for a rising `cdf`, from a start below or near the root and at or above zero.
///
/// Bracketing, then regula falsi with the Illinois rule; ends at a relative width of 1e-12.
pub(super) fn root(start: f64, p: f64, cdf: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (start, start);
    let (mut f_low, mut f_high) = (cdf(start) - p, 0.0);
    let mut factor = 1.25;
    if f_low < 0.0 {
        for _ in 0..200 {
            high = high * factor + 1e-6;
            f_high = cdf(high) - p;
            if f_high >= 0.0 || high > 1e30 {
                break;
            }
            (low, f_low) = (high, f_high);
            factor = (factor * 1.5).min(1e3);
        }
    } else {
        f_high = f_low;
        for _ in 0..200 {
            low = low / factor - 1e-6;
            f_low = cdf(low) - p;
            if f_low <= 0.0 {
                break;
            }
            (high, f_high) = (low, f_low);
            factor = (factor * 1.5).min(1e3);
        }
    }
    let mut side = 0;
    for _ in 0..200 {
        if (high - low).abs() <= 1e-12 * (1.0 + high.abs()) || f_high <= f_low {
            break;
        }
        let mut middle = (low * f_high - high * f_low) / (f_high - f_low);
        if !(middle > low && middle < high) {
            middle = 0.5 * (low + high);
        }
        let f_middle = cdf(middle) - p;
        if f_middle == 0.0 {
            return middle;
        }
        if f_middle > 0.0 {
            (high, f_high) = (middle, f_middle);
            if side == 1 {
                f_low *= 0.5;
            }
            side = 1;
        } else {
            (low, f_low) = (middle, f_middle);
            if side == -1 {
                f_high *= 0.5;
            }
            side = -1;
        }
        if f_middle.abs() < 1e-13 {
            return middle;
        }
    }
    0.5 * (low + high)
}
