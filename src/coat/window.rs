//! How long a coating may wait between applying and levelling, in the air of the day.
//!
//! t = t_ref · (e_ref/e)^m · exp[(E_a/R)·(1/T − 1/T_ref)], held between 0.4 and 2 times the reference.
//!
//! e is the water vapour in the air, T the temperature of the surface in kelvin, m the humidity exponent and E_a the activation
//! energy of the product. No published rate law for coatings laid by hand was found; this one is our proposal: the direction is
//! published (warmth and moisture speed such films up), the size is not. A window measured on a test patch overrides it.

use super::air::{Air, vapour_pressure};
use super::product::Product;
use crate::units::{Celsius, RelativeHumidity, Seconds};
use serde::{Deserialize, Serialize};

/// Gas constant in kJ/(mol·K). **Source**: SI 2019, exact.
const GAS_CONSTANT: f64 = 8.314_462_618e-3;
/// The window is never taken shorter than this share of the reference, nor longer than the next.
const FACTOR_RANGE: (f64, f64) = (0.4, 2.0);

/// Shortest and longest wait.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// Levelling starts no sooner than this after the end of applying.
    pub min_s: Seconds,
    /// And no later than this; never before `min_s`.
    pub max_s: Seconds,
    /// Against the reference air; 1 is equal, 0.5 half as long.
    pub factor: f64,
}

/// A wait measured on a test patch of this product on this vehicle today.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MeasuredWindow {
    /// When the film levelled cleanly at the soonest.
    pub min_s: Seconds,
    /// When it still levelled cleanly.
    pub max_s: Seconds,
    /// The air it was measured in; the window is carried from there to other air by the model.
    pub air: Air,
}

/// The model's factor between two states, not yet held to its range; below 1 means a shorter window.
fn raw_factor(air: &Air, reference: (Celsius, RelativeHumidity, Celsius), product: &Product) -> f64 {
    let (temp, humidity, surface) = reference;
    let kelvin = |t: Celsius| t.c() + 273.15;
    let moisture = vapour_pressure(temp, humidity) / vapour_pressure(air.air_temp_c, air.humidity_pct);
    let warmth =
        product.activation_kj_per_mol / GAS_CONSTANT * (kelvin(air.surface_temp_c).recip() - kelvin(surface).recip());
    moisture.powf(product.humidity_exponent) * warmth.exp()
}

/// Factor on the reference window for this air, from 0.4 to 2.
pub fn window_factor(air: &Air, product: &Product) -> f64 {
    let reference = (product.reference_temp_c, product.reference_humidity_pct, product.reference_temp_c);
    held(raw_factor(air, reference, product))
}

pub(super) fn held(factor: f64) -> f64 {
    if factor.is_nan() { 1.0 } else { factor.clamp(FACTOR_RANGE.0, FACTOR_RANGE.1) }
}

/// The window of a product in this air. Rounded inwards: up at its beginning, down at its end.
pub fn window(air: &Air, product: &Product) -> Window {
    scaled(product.window_min_s, product.window_max_s, window_factor(air, product))
}

/// The window carried from a test patch to this air.
pub fn window_from_patch(air: &Air, product: &Product, patch: &MeasuredWindow) -> Window {
    let reference = (patch.air.air_temp_c, patch.air.humidity_pct, patch.air.surface_temp_c);
    scaled(patch.min_s, patch.max_s, held(raw_factor(air, reference, product)))
}

/// The window that holds for every panel from the coldest to the warmest: it begins when the coldest is ready and ends when the
/// warmest is over.
///
/// `None` when the warmest is over before the coldest is ready; then the vehicle must even out first. The factor is that of the
/// warmest.
pub fn window_over(coldest: &Air, warmest_surface: Celsius, product: &Product) -> Option<Window> {
    let warm = window(&Air { surface_temp_c: warmest_surface.max(coldest.surface_temp_c), ..*coldest }, product);
    let cold = window(coldest, product);
    (cold.min_s <= warm.max_s).then_some(Window { min_s: cold.min_s, ..warm })
}

/// The window of a product (shortest, longest) times a factor, which is held to its range.
pub fn window_times(reference: (Seconds, Seconds), factor: f64) -> Window {
    scaled(reference.0, reference.1, held(factor))
}

pub(super) fn scaled(min_s: Seconds, max_s: Seconds, factor: f64) -> Window {
    let (min_s, max_s) = (min_s.max(0) as f64 * factor, max_s.max(0) as f64 * factor);
    let min_s = (min_s - 1e-9).ceil() as Seconds;
    Window { min_s, max_s: ((max_s + 1e-9).floor() as Seconds).max(min_s), factor }
}
