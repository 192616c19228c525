//! How fast a solvent leaves a surface in still air.
//!
//! Rate = 1464·P·M, in µg/(m²·h), with P the vapour pressure in Pa and M the molar mass in g/mol.
//! **Source**: Mackay & van Wesenbeeck, Environ. Sci. Technol. (abstract seen; year about 2014 from memory).

use crate::units::{Celsius, RelativeHumidity, Seconds};

/// A liquid used in the bay.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Solvent {
    /// Isopropyl alcohol of a panel wipe.
    IsopropylAlcohol,
    /// Water, in air of a humidity.
    Water {
        /// Humidity of the air.
        humidity: RelativeHumidity,
    },
}

impl Solvent {
    /// Evaporation in g/(m²·h) at a surface of this temperature.
    pub fn rate(self, temperature: Celsius) -> f64 {
        let (pressure, molar_mass) = match self {
            Self::IsopropylAlcohol => (isopropanol_pressure(temperature), 60.1),
            Self::Water { humidity } => {
                (super::air::saturation_pressure(temperature) * (1.0 - humidity.pct() / 100.0), 18.015)
            }
        };
        1464.0 * pressure * molar_mass * 1e-6
    }

    /// Seconds until a film of `grams_per_m2` is gone, rounded up; `None` where nothing evaporates (saturated air).
    pub fn gone_after(self, temperature: Celsius, grams_per_m2: f64) -> Option<Seconds> {
        let rate = self.rate(temperature);
        let seconds = grams_per_m2.max(0.0) / rate * 3600.0;
        (rate > 0.0 && seconds < 1e9).then(|| (seconds - 1e-9).ceil() as Seconds)
    }
}

/// Vapour pressure of isopropyl alcohol in Pa. **Source**: Antoine equation, coefficients (mmHg, °C) from memory.
fn isopropanol_pressure(temperature: Celsius) -> f64 {
    133.322 * 10.0_f64.powf(8.117_78 - 1_580.92 / (219.61 + temperature.c()))
}

/// Solvent vapour in the air of a bay when `millilitres` of a liquid of `density` (g/ml) have evaporated, in mg/m³.
///
/// Without any ventilation, so an upper bound. **Domain**: volume above zero.
pub fn vapour_in_bay(millilitres: f64, density: f64, bay_m3: f64) -> f64 {
    if bay_m3 > 0.0 { millilitres.max(0.0) * density * 1000.0 / bay_m3 } else { f64::MAX }
}

/// Parts per million of a vapour from mg/m³ at 25 °C: 24.45 l/mol (NIOSH convention, from memory).
pub fn parts_per_million(mg_per_m3: f64, molar_mass: f64) -> f64 {
    mg_per_m3 * 24.45 / molar_mass
}
