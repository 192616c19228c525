//! What the work does to the worker: vibration at the hand and noise, over a working day of eight hours.
//!
//! a magnitude (m/s²), T duration, L level (dB(A)). Figures from declarations are a start; local rules and the makers' sheets
//! come first.

use crate::units::{Decibels, MetresPerSecondSquared, Seconds};

/// Reference duration of both daily exposures.
const DAY_HOURS: f64 = 8.0;

/// Daily vibration at which action is due: 2.5 m/s². **Source**: Directive 2002/44/EC, article 3.
pub const HAV_ACTION: MetresPerSecondSquared = MetresPerSecondSquared::of(2.5);
/// Daily vibration that must not be exceeded: 5 m/s². **Source**: Directive 2002/44/EC, article 3.
pub const HAV_LIMIT: MetresPerSecondSquared = MetresPerSecondSquared::of(5.0);
/// Lower, upper action value and limit of daily noise, dB(A). **Source**: Directive 2003/10/EC, from memory.
pub const NOISE_VALUES_DB: [f64; 3] = [80.0, 85.0, 87.0];

fn hours(seconds: Seconds) -> f64 {
    seconds.max(0) as f64 / 3600.0
}

/// Daily vibration exposure A(8) = a·√(T/8 h).
///
/// **Source**: Directive 2002/44/EC with ISO 5349-1. Use the declared magnitude plus its uncertainty K.
pub fn hav_a8(magnitude: MetresPerSecondSquared, seconds: Seconds) -> MetresPerSecondSquared {
    of_square(magnitude.ms2().powi(2) * hours(seconds) / DAY_HOURS)
}

/// Exposure points 2·a²·T: 100 at the action value, 400 at the limit. **Source**: HSE ready-reckoner for hand-arm vibration.
pub fn hav_points(magnitude: MetresPerSecondSquared, seconds: Seconds) -> f64 {
    2.0 * magnitude.ms2().powi(2) * hours(seconds)
}

/// Several partial exposures of one day: root of the sum of squares. **Source**: ISO 5349-1.
pub fn combine_a8(parts: &[MetresPerSecondSquared]) -> MetresPerSecondSquared {
    of_square(parts.iter().map(|a| a.ms2().powi(2)).sum())
}

fn of_square(square: f64) -> MetresPerSecondSquared {
    MetresPerSecondSquared::new(square.sqrt()).unwrap_or(MetresPerSecondSquared::of(100.0))
}

/// Longest time at a magnitude until the daily exposure reaches `until`; `None` where there is no vibration.
pub fn hav_time_until(magnitude: MetresPerSecondSquared, until: MetresPerSecondSquared) -> Option<Seconds> {
    let a = magnitude.ms2();
    (a > 0.0).then(|| (DAY_HOURS * 3600.0 * (until.ms2() / a).powi(2)).min(1e9) as Seconds)
}

/// Daily noise exposure L_EX,8h = 10·lg(Σ T/8 h · 10^(L/10)) of stretches at a level each; `None` without any noise.
///
/// **Source**: ISO 9612 (from memory).
pub fn noise_lex8h(parts: &[(Decibels, Seconds)]) -> Option<Decibels> {
    let energy: f64 = parts
        .iter()
        .filter(|(level, seconds)| level.db() > 0.0 && *seconds > 0)
        .map(|(level, seconds)| hours(*seconds) / DAY_HOURS * 10.0_f64.powf(level.db() / 10.0))
        .sum();
    (energy > 0.0).then(|| Decibels::new((10.0 * energy.log10()).clamp(0.0, 200.0)).unwrap_or(Decibels::ZERO))
}

/// Noise dose by the rule of the United States, in per cent: 100·Σ C/T with T = 8/2^((L−90)/5) hours.
///
/// **Source**: 29 CFR 1910.95, appendix A. Levels under 80 dB(A) are not counted.
pub fn osha_dose_pct(parts: &[(Decibels, Seconds)]) -> f64 {
    100.0
        * parts
            .iter()
            .filter(|(level, _)| level.db() >= 80.0)
            .map(|(level, seconds)| hours(*seconds) / osha_allowed_hours(*level))
            .sum::<f64>()
}

/// Hours allowed at a level by that rule.
pub fn osha_allowed_hours(level: Decibels) -> f64 {
    DAY_HOURS / 2.0_f64.powf((level.db() - 90.0) / 5.0)
}

/// Time-weighted average that belongs to a dose: 16.61·lg(D/100) + 90. **Source**: as [`osha_dose_pct`].
pub fn osha_twa(dose_pct: f64) -> Option<Decibels> {
    (dose_pct > 0.0).then(|| Decibels::new(16.61 * (dose_pct / 100.0).log10() + 90.0).unwrap_or(Decibels::ZERO))
}

/// How a day stands against an action value and a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Standing {
    /// Below the action value.
    Below,
    /// At the action value or above it.
    Action,
    /// Above the limit.
    OverLimit,
}

/// Standing of a daily vibration exposure.
pub fn hav_standing(a8: MetresPerSecondSquared) -> Standing {
    match a8 {
        a if a > HAV_LIMIT => Standing::OverLimit,
        a if a >= HAV_ACTION => Standing::Action,
        _ => Standing::Below,
    }
}

/// Standing of a daily noise exposure: action from 80 dB(A), limit above 87 dB(A).
pub fn noise_standing(level: Decibels) -> Standing {
    match level.db() {
        l if l > NOISE_VALUES_DB[2] => Standing::OverLimit,
        l if l >= NOISE_VALUES_DB[0] => Standing::Action,
        _ => Standing::Below,
    }
}
