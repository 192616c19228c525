//! A coating as the shop knows it.

use crate::say;
use crate::units::fields;
use crate::units::{Celsius, Millilitres, RelativeHumidity, Seconds, SquareMetres};
use serde::{Deserialize, Serialize};

/// A product in the shop's own words. What its label says always wins over these defaults.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Product {
    /// What the shop calls it.
    pub name: String,
    /// Cautions from its safety data sheet, in the shop's words.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub cautions: String,
    /// Shortest wait between applying and levelling, at the reference air.
    #[serde(deserialize_with = "fields::seconds")]
    pub window_min_s: Seconds,
    /// Longest wait, at the reference air.
    #[serde(deserialize_with = "fields::seconds")]
    pub window_max_s: Seconds,
    /// Temperature the window holds for.
    pub reference_temp_c: Celsius,
    /// Humidity the window holds for.
    pub reference_humidity_pct: RelativeHumidity,
    /// How strongly a warm surface shortens the window (activation energy).
    #[serde(deserialize_with = "fields::activation")]
    pub activation_kj_per_mol: f64,
    /// How strongly moist air shortens the window; 0 not at all, 1 in proportion to the water in the air.
    #[serde(deserialize_with = "fields::exponent")]
    pub humidity_exponent: f64,
    /// Coldest air and surface it may be applied at.
    pub min_temp_c: Celsius,
    /// Warmest air and surface it may be applied at.
    pub max_temp_c: Celsius,
    /// Driest air it may be applied in.
    pub min_humidity_pct: RelativeHumidity,
    /// Moistest air it may be applied in.
    pub max_humidity_pct: RelativeHumidity,
    /// Liquid for one square metre and layer.
    #[serde(deserialize_with = "fields::amount")]
    pub amount_ml_per_m2: f64,
    /// Liquid that loads a fresh applicator.
    pub first_load_ml: Millilitres,
    /// Content of a bottle.
    pub bottle_ml: Millilitres,
    /// Layers, 1 to 10.
    #[serde(deserialize_with = "fields::layers")]
    pub layers: u32,
    /// Wait before the next layer.
    #[serde(deserialize_with = "fields::seconds")]
    pub recoat_s: Seconds,
    /// Time to apply a square metre.
    #[serde(deserialize_with = "fields::amount")]
    pub apply_s_per_m2: f64,
    /// Time to level a square metre.
    #[serde(deserialize_with = "fields::amount")]
    pub level_s_per_m2: f64,
    /// Time a panel costs on top, for each of the two.
    #[serde(deserialize_with = "fields::seconds")]
    pub panel_s: Seconds,
    /// How long a high spot can still be re-wet and levelled.
    #[serde(deserialize_with = "fields::seconds")]
    pub high_spot_s: Seconds,
    /// Time until the vehicle may be driven.
    #[serde(deserialize_with = "fields::seconds")]
    pub drive_s: Seconds,
    /// Time until rain does no harm.
    #[serde(deserialize_with = "fields::seconds")]
    pub rain_s: Seconds,
    /// Time until it may be washed.
    #[serde(deserialize_with = "fields::seconds")]
    pub wash_s: Seconds,
    /// Time until it has its full hardness.
    #[serde(deserialize_with = "fields::seconds")]
    pub full_cure_s: Seconds,
}

const HOUR: Seconds = 3600;
const DAY: Seconds = 24 * HOUR;
/// What a coating is called in a job that gives it no name of its own.
const USUAL_NAME: &str = "Coating";

impl Product {
    /// What the shop calls it, the usual name in the language in use.
    pub fn shown_name(&self) -> &str {
        if self.name == USUAL_NAME { say!("coat-usual-name") } else { &self.name }
    }
}

impl Default for Product {
    /// A plain coating to start from: common practice, no source, except where a field of this list says otherwise.
    ///
    /// The times per square metre and panel are our estimate, set so that two people coat a compact vehicle of two doors, lamps
    /// and glass included, in about twenty minutes (common practice, no source).
    ///
    /// Activation energy and humidity exponent are our estimate; together they halve the window at 30 °C and 60 %.
    fn default() -> Self {
        Self {
            name: USUAL_NAME.to_owned(),
            cautions: String::new(),
            window_min_s: 60,
            window_max_s: 300,
            reference_temp_c: Celsius::of(20.0),
            reference_humidity_pct: RelativeHumidity::of(50.0),
            activation_kj_per_mol: 30.0,
            humidity_exponent: 0.5,
            min_temp_c: Celsius::of(5.0),
            max_temp_c: Celsius::of(30.0),
            min_humidity_pct: RelativeHumidity::of(30.0),
            max_humidity_pct: RelativeHumidity::of(70.0),
            amount_ml_per_m2: 1.5,
            first_load_ml: Millilitres::of(0.5),
            bottle_ml: Millilitres::of(30.0),
            layers: 1,
            recoat_s: HOUR,
            apply_s_per_m2: 52.0,
            level_s_per_m2: 52.0,
            panel_s: 7,
            high_spot_s: HOUR,
            drive_s: HOUR,
            rain_s: HOUR,
            wash_s: 7 * DAY,
            full_cure_s: 7 * DAY,
        }
    }
}

/// Whole seconds to apply one layer on a panel, rounded up; at least one.
pub fn seconds_to_apply(area: SquareMetres, product: &Product) -> Seconds {
    on_panel(area, product.apply_s_per_m2, product.panel_s)
}

/// Whole seconds to level one layer on a panel, rounded up; at least one.
pub fn seconds_to_level(area: SquareMetres, product: &Product) -> Seconds {
    on_panel(area, product.level_s_per_m2, product.panel_s)
}

fn on_panel(area: SquareMetres, per_m2: f64, fixed: Seconds) -> Seconds {
    // The small amount keeps 0.75 m² · 52 s/m² at 39 s, whatever the rounding of the product.
    let work = (area.m2() * per_m2 - 1e-9).ceil() as Seconds;
    (fixed + work).max(1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, within};

    #[test]
    fn only_the_usual_name_is_shown_in_the_language_in_use() {
        let usual = Product::default();
        let own = Product { name: "Blue bottle".to_owned(), ..usual.clone() };
        assert_eq!(usual.shown_name(), "Coating");
        within(Language::German, || {
            assert_eq!((usual.shown_name(), own.shown_name()), ("Versiegelung", "Blue bottle"));
        });
    }
}
