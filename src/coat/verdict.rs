//! Whether the air is right for coating.

use super::air::{Air, dew_point};
use super::product::Product;
use super::window::{MeasuredWindow, Window, WindowBasis};
use crate::say;
use crate::units::{Celsius, Kelvin, RelativeHumidity};
use crate::words::decimal;

/// The surface must be this much warmer than the dew point.
///
/// **Source**: ISO 8502-4 and ISO 12944-7 as quoted by several guides; a rule of steel painting, used here as a sensible floor.
pub const LEAST_MARGIN: Kelvin = Kelvin::of(3.0);

/// Air from here to there is comfortable for most products (trade pages).
const COMFORT_TEMP: (f64, f64) = (15.0, 27.0);
const COMFORT_HUMIDITY: (f64, f64) = (40.0, 60.0);

/// Go or stop, with the reasons.
#[derive(Debug, Clone, PartialEq)]
pub struct AirVerdict {
    /// Whether coating may start; true exactly when `stops` is empty.
    pub go: bool,
    /// What stands against it, as sentences.
    pub stops: Vec<String>,
    /// What to mind, as sentences.
    pub notices: Vec<String>,
    /// Dew point of the air.
    pub dew_point: Celsius,
    /// Surface minus dew point.
    pub margin: Kelvin,
    /// The window of the product in this air.
    pub window: Window,
}

/// Judges the air for a product, with the window of the label or of a patch tried today. Dew is looked for on the coldest panel;
/// limits are held against the coldest and the warmest.
pub fn assess(air: &Air, product: &Product, patch: Option<&MeasuredWindow>) -> AirVerdict {
    let dew_point = dew_point(air.air_temp_c, air.humidity_pct);
    let margin = air.surface_temp_c - dew_point;
    let basis = WindowBasis::new(product, patch);
    let window = basis.window(air);
    let mut stops = stops(air, product, margin);
    if basis.is_split(air) {
        stops.push(say!("coat-split").to_owned());
    }
    AirVerdict { go: stops.is_empty(), notices: notices(air, &basis, window), stops, dew_point, margin, window }
}

fn stops(air: &Air, product: &Product, margin: Kelvin) -> Vec<String> {
    let mut stops = Vec::new();
    if margin < LEAST_MARGIN {
        let (margin, least) = (decimal(margin.k(), 1), decimal(LEAST_MARGIN.k(), 0));
        stops.push(say!("coat-dew-near", margin = margin, least = least));
    }
    let shown = |t: Celsius| format!("{t:.0}");
    let (coldest, warmest) = (product.min_temp_c, product.max_temp_c);
    if air.air_temp_c < coldest {
        stops.push(say!("coat-air-too-cold", temp = shown(air.air_temp_c), least = shown(coldest)));
    } else if air.air_temp_c > warmest {
        stops.push(say!("coat-air-too-warm", temp = shown(air.air_temp_c), most = shown(warmest)));
    }
    if air.surface_temp_c < coldest {
        stops.push(say!("coat-surface-too-cold", temp = shown(air.surface_temp_c), least = shown(coldest)));
    } else if air.surface_temp_c > warmest {
        stops.push(say!("coat-surface-too-warm", temp = shown(air.surface_temp_c), most = shown(warmest)));
    }
    if air.warmest() > warmest && air.surface_temp_c <= warmest {
        stops.push(say!("coat-warmest-too-warm", temp = shown(air.warmest()), most = shown(warmest)));
    }
    let shown = |rh: RelativeHumidity| format!("{rh:.0}");
    let humidity = air.humidity_pct;
    if humidity < product.min_humidity_pct {
        stops.push(say!("coat-too-dry", humidity = shown(humidity), least = shown(product.min_humidity_pct)));
    } else if humidity > product.max_humidity_pct {
        stops.push(say!("coat-too-moist", humidity = shown(humidity), most = shown(product.max_humidity_pct)));
    }
    stops
}

fn notices(air: &Air, basis: &WindowBasis, window: Window) -> Vec<String> {
    let mut notices = Vec::new();
    if window.factor < 0.85 {
        notices.push(say!("coat-turns-sooner", from = window.min_s, to = window.max_s));
    } else if window.factor > 1.2 {
        notices.push(say!("coat-turns-later", from = window.min_s, to = window.max_s));
    }
    let (temp, humidity) = (air.air_temp_c.c(), air.humidity_pct.pct());
    if temp < COMFORT_TEMP.0 || temp > COMFORT_TEMP.1 || humidity < COMFORT_HUMIDITY.0 || humidity > COMFORT_HUMIDITY.1
    {
        notices.push(say!(
            "coat-comfort",
            cold = decimal(COMFORT_TEMP.0, 0),
            warm = decimal(COMFORT_TEMP.1, 0),
            dry = decimal(COMFORT_HUMIDITY.0, 0),
            moist = decimal(COMFORT_HUMIDITY.1, 0),
        ));
    }
    let apart = |t: Celsius| (t - air.air_temp_c).k().abs();
    if apart(air.surface_temp_c).max(apart(air.warmest())) > 5.0 {
        notices.push(say!("coat-surface-apart").to_owned());
    }
    if window.max_s - window.min_s < 30 && basis.reference_s.1 - basis.reference_s.0 >= 30 {
        notices.push(say!("coat-window-narrow").to_owned());
    }
    notices
}
