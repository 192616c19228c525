//! What lost clear means for the colour under it.

use crate::measure::thickness;

/// How much more ultraviolet light reaches the colour when `removed_um` of clear goes: 10^(A·r/h).
///
/// `absorbance` is that of the whole clear, `clear_um` its thickness. It explains why limits near 8 µm are prudent; it proves none.
/// **Source**: Beer-Lambert law; absorbances of real clears, 1.5 to 3, from memory.
pub fn ultraviolet_factor(absorbance: f64, removed_um: f64, clear_um: f64) -> f64 {
    let (removed, clear) = (thickness(removed_um).um(), thickness(clear_um).um());
    if clear > 0.0 { 10.0_f64.powf(absorbance.clamp(0.0, 10.0) * (removed / clear).min(1.0)) } else { 1.0 }
}
