//! Whether the air is right for coating.

use super::air::{Air, dew_point};
use super::product::Product;
use super::window::{MeasuredWindow, Window, WindowBasis};
use crate::units::{Celsius, Kelvin, RelativeHumidity};

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
        stops.push(
            "The warmest panel turns before the coldest is ready; let the vehicle stand until it is evenly warm."
                .to_owned(),
        );
    }
    AirVerdict { go: stops.is_empty(), notices: notices(air, &basis, window), stops, dew_point, margin, window }
}

fn stops(air: &Air, product: &Product, margin: Kelvin) -> Vec<String> {
    let mut stops = Vec::new();
    if margin < LEAST_MARGIN {
        let (margin, least) = (margin.k(), LEAST_MARGIN.k());
        stops.push(format!(
            "The surface is only {margin:.1}\u{202f}K above the dew point; at least {least:.0}\u{202f}K is needed, or water may \
             settle under the coating. Warm the vehicle or dry the air."
        ));
    }
    let mut limit = |what: &str, temp: Celsius| {
        if temp < product.min_temp_c {
            stops.push(format!("{what} is {temp:.0}; the product needs at least {:.0}.", product.min_temp_c));
        } else if temp > product.max_temp_c {
            stops.push(format!("{what} is {temp:.0}; the product allows at most {:.0}.", product.max_temp_c));
        }
    };
    limit("The air", air.air_temp_c);
    limit("The surface", air.surface_temp_c);
    if air.warmest() > product.max_temp_c && air.surface_temp_c <= product.max_temp_c {
        stops.push(format!(
            "The warmest surface is {:.0}; the product allows at most {:.0}. Let it cool in the shade.",
            air.warmest(),
            product.max_temp_c
        ));
    }
    let humidity = |rh: RelativeHumidity| format!("{rh:.0}");
    if air.humidity_pct < product.min_humidity_pct {
        stops.push(format!(
            "The air is too dry: {} humidity; the product needs at least {}.",
            humidity(air.humidity_pct),
            humidity(product.min_humidity_pct)
        ));
    } else if air.humidity_pct > product.max_humidity_pct {
        stops.push(format!(
            "The air is too moist: {} humidity; the product allows at most {}.",
            humidity(air.humidity_pct),
            humidity(product.max_humidity_pct)
        ));
    }
    stops
}

fn notices(air: &Air, basis: &WindowBasis, window: Window) -> Vec<String> {
    let mut notices = Vec::new();
    if window.factor < 0.85 {
        notices.push(format!(
            "Warm or moist: the coating turns sooner, so level after {} to {}\u{202f}s.",
            window.min_s, window.max_s
        ));
    } else if window.factor > 1.2 {
        notices.push(format!(
            "Cool or dry: the coating turns later, so level after {} to {}\u{202f}s.",
            window.min_s, window.max_s
        ));
    }
    let (temp, humidity) = (air.air_temp_c.c(), air.humidity_pct.pct());
    if temp < COMFORT_TEMP.0 || temp > COMFORT_TEMP.1 || humidity < COMFORT_HUMIDITY.0 || humidity > COMFORT_HUMIDITY.1
    {
        notices.push(format!(
            "Most coatings are easiest at {:.0} to {:.0}\u{202f}°C and {:.0} to {:.0}\u{202f}% humidity (trade practice); try a small place first.",
            COMFORT_TEMP.0, COMFORT_TEMP.1, COMFORT_HUMIDITY.0, COMFORT_HUMIDITY.1
        ));
    }
    let apart = |t: Celsius| (t - air.air_temp_c).k().abs();
    if apart(air.surface_temp_c).max(apart(air.warmest())) > 5.0 {
        notices.push(
            "Surface and air differ by more than 5\u{202f}K; let the vehicle stand until they are closer.".to_owned(),
        );
    }
    if window.max_s - window.min_s < 30 && basis.reference_s.1 - basis.reference_s.0 >= 30 {
        notices.push("The window is under half a minute wide; take smaller pieces at a time.".to_owned());
    }
    notices
}
