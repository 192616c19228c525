//! The few functions of probability that the rest of the module stands on.
//!
//! All are checked against a general-purpose statistics library in `tests/measure_reference.rs`.

use std::f64::consts::PI;

/// ln Γ(x) for x > 0. **Source**: Lanczos 1964 with g = 7 and nine terms; relative error about 1e-15.
pub(crate) fn ln_gamma(x: f64) -> f64 {
    const TERMS: [f64; 9] = [
        0.999_999_999_999_809_9,
        676.520_368_121_885_1,
        -1_259.139_216_722_402_8,
        771.323_428_777_653_1,
        -176.615_029_162_140_6,
        12.507_343_278_686_905,
        -0.138_571_095_265_720_12,
        9.984_369_578_019_572e-6,
        1.505_632_735_149_311_6e-7,
    ];
    if x < 0.5 {
        // Reflection keeps the series where it converges.
        return (PI / (PI * x).sin()).ln() - ln_gamma(1.0 - x);
    }
    let x = x - 1.0;
    let base = x + 7.5;
    let sum = TERMS.iter().enumerate().skip(1).fold(TERMS[0], |sum, (i, c)| sum + c / (x + i as f64));
    0.5 * (2.0 * PI).ln() + (x + 0.5) * base.ln() - base + sum.ln()
}

/// Standard normal distribution function, absolute error below 1e-14.
///
/// **Source**: Hart 1968, algorithm 5666, in the form given by West 2005, "Better approximations to cumulative normal
/// functions".
pub(crate) fn normal_cdf(z: f64) -> f64 {
    let x = z.abs();
    let upper_tail = if x > 37.0 {
        0.0
    } else {
        let density = (-x * x / 2.0).exp();
        if x < 7.071_067_811_865_47 {
            let top = [
                3.526_249_659_989_11e-2,
                0.700_383_064_443_688,
                6.373_962_203_531_65,
                33.912_866_078_383,
                112.079_291_497_871,
                221.213_596_169_931,
                220.206_867_912_376,
            ];
            let bottom = [
                8.838_834_764_831_84e-2,
                1.755_667_163_182_64,
                16.064_177_579_207,
                86.780_732_202_946_1,
                296.564_248_779_674,
                637.333_633_378_831,
                793.826_512_519_948,
                440.413_735_824_752,
            ];
            density * horner(&top, x) / horner(&bottom, x)
        } else {
            let fraction = [4.0, 3.0, 2.0, 1.0].iter().fold(x + 0.65, |rest, k| x + k / rest);
            density / fraction / (2.0 * PI).sqrt()
        }
    };
    if z > 0.0 { 1.0 - upper_tail } else { upper_tail }
}

/// Quantile of the standard normal distribution; `p` in (0, 1), clamped away from the ends.
///
/// **Source**: rational start by Acklam (2003), then one Halley step on [`normal_cdf`].
pub(crate) fn normal_quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 6] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
        1.0,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 5] =
        [7.784_695_709_041_462e-3, 3.224_671_290_700_398e-1, 2.445_134_137_142_996, 3.754_408_661_907_416, 1.0];
    let p = open_unit(p);
    let tail = |p: f64| {
        let q = (-2.0 * p.ln()).sqrt();
        horner(&C, q) / horner(&D, q)
    };
    let start = if p < 0.024_25 {
        tail(p)
    } else if p > 1.0 - 0.024_25 {
        -tail(1.0 - p)
    } else {
        let q = p - 0.5;
        q * horner(&A, q * q) / horner(&B, q * q)
    };
    let error = normal_cdf(start) - p;
    let step = error * (2.0 * PI).sqrt() * (start * start / 2.0).exp();
    start - step / (1.0 + start * step / 2.0)
}

/// Regularised incomplete beta function I_x(a, b), continued fraction evaluated by Lentz's method.
///
/// **Source**: Abramowitz & Stegun 26.5.8, in the arrangement of Press et al., *Numerical Recipes*, 6.4.
pub(crate) fn incomplete_beta(a: f64, b: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    let front = (ln_gamma(a + b) - ln_gamma(a) - ln_gamma(b) + a * x.ln() + b * (-x).ln_1p()).exp();
    if x < (a + 1.0) / (a + b + 2.0) {
        front * beta_fraction(a, b, x) / a
    } else {
        1.0 - front * beta_fraction(b, a, 1.0 - x) / b
    }
}

fn beta_fraction(a: f64, b: f64, x: f64) -> f64 {
    const TINY: f64 = 1e-300;
    let away_from_zero = |v: f64| if v.abs() < TINY { TINY } else { v };
    let mut c = 1.0;
    let mut d = 1.0 / away_from_zero(1.0 - (a + b) * x / (a + 1.0));
    let mut value = d;
    for m in 1..2_000 {
        let m = f64::from(m);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / away_from_zero(1.0 + even * d);
        c = away_from_zero(1.0 + even / c);
        value *= d * c;
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / away_from_zero(1.0 + odd * d);
        c = away_from_zero(1.0 + odd / c);
        value *= d * c;
        if (d * c - 1.0).abs() < 1e-15 {
            break;
        }
    }
    value
}

/// A probability that is inside (0, 1); what is not a number becomes one half.
pub(crate) fn open_unit(p: f64) -> f64 {
    if p.is_nan() { 0.5 } else { p.clamp(1e-12, 1.0 - 1e-12) }
}

/// Polynomial with the highest power first.
fn horner(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().fold(0.0, |sum, c| sum * x + c)
}
