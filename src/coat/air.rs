//! Moist air: saturation pressure and dew point.
//!
//! e = e₀·exp(a·T/(b + T)), over water above freezing and over ice below. Inverted, the dew point is T_d = b·γ/(a − γ) with
//! γ = ln(e/e₀). Relative humidity is always over water, as hygrometers show it.

use crate::units::{Celsius, RelativeHumidity};
use serde::{Deserialize, Serialize};

/// Air in the bay and surface of the vehicle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Air {
    /// Temperature of the air.
    pub air_temp_c: Celsius,
    /// Relative humidity of the air.
    pub humidity_pct: RelativeHumidity,
    /// Temperature of the coldest surface that is coated.
    pub surface_temp_c: Celsius,
    /// Temperature of the warmest, as on the sunny side, where it was measured; else all are as warm as the coldest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub warmest_surface_temp_c: Option<Celsius>,
}

impl Air {
    /// Temperature of the warmest surface; never below that of the coldest.
    pub fn warmest(&self) -> Celsius {
        self.warmest_surface_temp_c.map_or(self.surface_temp_c, |t| t.max(self.surface_temp_c))
    }
}

impl Default for Air {
    /// 20 °C, 50 %, surface as warm as the air.
    fn default() -> Self {
        Self {
            air_temp_c: Celsius::of(20.0),
            humidity_pct: RelativeHumidity::of(50.0),
            surface_temp_c: Celsius::of(20.0),
            warmest_surface_temp_c: None,
        }
    }
}

/// Factors of the Magnus formula.
struct Magnus {
    a: f64,
    b: f64,
}

/// Pressure at 0 °C in hPa.
const E0: f64 = 6.112;
/// Over water, −45 to 60 °C. **Source**: Sonntag 1990, WMO-No. 8.
const WATER: Magnus = Magnus { a: 17.62, b: 243.12 };
/// Over ice, −65 to 0 °C. **Source**: WMO-No. 8, from memory.
const ICE: Magnus = Magnus { a: 22.46, b: 272.62 };

impl Magnus {
    fn pressure(&self, t: f64) -> f64 {
        E0 * (self.a * t / (self.b + t)).exp()
    }

    fn temperature(&self, pressure: f64) -> f64 {
        let gamma = (pressure / E0).ln();
        self.b * gamma / (self.a - gamma)
    }
}

/// Saturation pressure of water vapour over water, in Pa. **Domain**: −45 to 60 °C within 0.4 %.
pub fn saturation_pressure(temperature: Celsius) -> f64 {
    100.0 * WATER.pressure(temperature.c())
}

/// Pressure of the water vapour that is in the air, in Pa.
pub fn vapour_pressure(temperature: Celsius, humidity: RelativeHumidity) -> f64 {
    saturation_pressure(temperature) * humidity.pct() / 100.0
}

/// Temperature at which the air begins to leave water on a surface: dew, or frost below freezing.
///
/// Very dry and cold air ends at −40 °C, the lowest temperature that is told apart.
pub fn dew_point(temperature: Celsius, humidity: RelativeHumidity) -> Celsius {
    let pressure = WATER.pressure(temperature.c()) * humidity.pct() / 100.0;
    let branch = if pressure < E0 { ICE } else { WATER };
    Celsius::new(branch.temperature(pressure).max(-40.0)).unwrap_or(temperature)
}
