//! How long a coating may wait between applying and levelling, in the air of the day.
//!
//! t = t_ref · (e_ref/e)^m · exp[(E_a/R)·(1/T − 1/T_ref)], held between 0.4 and 2 times the reference.
//!
//! e is the water vapour in the air, T the temperature of the surface in kelvin, m the humidity exponent and E_a the activation
//! energy of the product. No published rate law for coatings laid by hand was found; this one is our proposal: the direction is
//! published (warmth and moisture speed such films up), the size is not. A window measured on a test patch overrides it: then
//! t_ref and the reference air are those of the patch.
//!
//! Where panels differ in temperature, the window of the vehicle begins when the coldest is ready and ends when the warmest is
//! over.

use super::air::{Air, vapour_pressure};
use super::product::Product;
use crate::say;
use crate::units::{Celsius, RelativeHumidity, Seconds, fields};
use crate::words::{decimal, shortest};
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
    /// That of the warmest panel against the reference air; 1 is equal, 0.5 half as long.
    pub factor: f64,
}

/// A wait measured on a test patch of this product on this vehicle today.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MeasuredWindow {
    /// When the film levelled cleanly at the soonest.
    #[serde(deserialize_with = "fields::seconds")]
    pub min_s: Seconds,
    /// When it still levelled cleanly.
    #[serde(deserialize_with = "fields::seconds")]
    pub max_s: Seconds,
    /// The air it was measured in; the window is carried from there to other air by the model.
    pub air: Air,
}

/// What the windows of a day follow from: the product's own, or the one measured on a patch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindowBasis {
    /// Shortest and longest wait in the air they hold for.
    pub reference_s: (Seconds, Seconds),
    /// That air: temperature, humidity, temperature of the surface.
    at: (Celsius, RelativeHumidity, Celsius),
    activation_kj_per_mol: f64,
    humidity_exponent: f64,
}

impl WindowBasis {
    /// That of a product, or of a patch where one was tried.
    pub fn new(product: &Product, patch: Option<&MeasuredWindow>) -> Self {
        let (reference_s, at) = match patch {
            Some(patch) => {
                ((patch.min_s, patch.max_s), (patch.air.air_temp_c, patch.air.humidity_pct, patch.air.surface_temp_c))
            }
            None => (
                (product.window_min_s, product.window_max_s),
                (product.reference_temp_c, product.reference_humidity_pct, product.reference_temp_c),
            ),
        };
        let Product { activation_kj_per_mol, humidity_exponent, .. } = *product;
        Self { reference_s, at, activation_kj_per_mol, humidity_exponent }
    }

    /// Factor on the reference window for the warmest panel, from 0.4 to 2.
    pub fn factor(&self, air: &Air) -> f64 {
        held(self.raw_factor(air, air.warmest()))
    }

    /// How many times later the coldest panel is ready than the warmest; at least 1.
    pub fn spread(&self, air: &Air) -> f64 {
        held(self.raw_factor(air, air.surface_temp_c)) / self.factor(air)
    }

    /// The window of the vehicle in this air. Rounded inwards: up at its beginning, down at its end.
    pub fn window(&self, air: &Air) -> Window {
        self.window_times(self.factor(air), self.spread(air))
    }

    /// The window for a factor, which is held to its range, and a spread. Where the warmest is over before the coldest is ready,
    /// nothing is left of it but its end.
    pub fn window_times(&self, factor: f64, spread: f64) -> Window {
        let factor = held(factor);
        let (min, max) = (self.reference_s.0.max(0) as f64, self.reference_s.1.max(0) as f64);
        let max_s = (max * factor + 1e-9).floor() as Seconds;
        let min_s = (min * factor * spread.max(1.0) - 1e-9).ceil() as Seconds;
        Window { min_s: min_s.min(max_s), max_s, factor }
    }

    /// Whether the warmest panel is over before the coldest is ready.
    pub fn is_split(&self, air: &Air) -> bool {
        let (min, max) = (self.reference_s.0 as f64, self.reference_s.1 as f64);
        min * self.factor(air) * self.spread(air) > max * self.factor(air) + 1e-9
    }

    /// The model's factor for a surface, not yet held to its range; below 1 means a shorter window.
    fn raw_factor(&self, air: &Air, surface: Celsius) -> f64 {
        let (temp, humidity, reference) = self.at;
        let kelvin = |t: Celsius| t.c() + 273.15;
        let moisture = vapour_pressure(temp, humidity) / vapour_pressure(air.air_temp_c, air.humidity_pct);
        let warmth = self.activation_kj_per_mol / GAS_CONSTANT * (kelvin(surface).recip() - kelvin(reference).recip());
        moisture.powf(self.humidity_exponent) * warmth.exp()
    }
}

/// A factor in its range; what is not a number changes nothing.
pub(super) fn held(factor: f64) -> f64 {
    if factor.is_nan() { 1.0 } else { factor.clamp(FACTOR_RANGE.0, FACTOR_RANGE.1) }
}

/// The rule for people, with its figures.
pub fn window_assumptions(product: &Product, patch: Option<&MeasuredWindow>) -> Vec<String> {
    let basis = if let Some(MeasuredWindow { air, .. }) = patch {
        say!(
            "coat-basis-patch",
            air = format!("{:.1}", air.air_temp_c),
            humidity = format!("{:.0}", air.humidity_pct),
            surface = format!("{:.1}", air.surface_temp_c),
        )
    } else {
        say!(
            "coat-basis-label",
            temp = format!("{:.0}", product.reference_temp_c),
            humidity = format!("{:.0}", product.reference_humidity_pct),
        )
    };
    let ten_kelvin = (product.activation_kj_per_mol / GAS_CONSTANT * (1.0 / 303.15 - 1.0 / 293.15)).exp();
    vec![
        basis,
        say!("coat-by-warmth", times = decimal(ten_kelvin, 2)),
        say!("coat-by-moisture", times = decimal(0.5_f64.powf(product.humidity_exponent), 2)),
        say!("coat-held-between", least = shortest(FACTOR_RANGE.0), most = decimal(FACTOR_RANGE.1, 0)),
        say!("coat-not-published").to_owned(),
    ]
}
