//! Air, window and amounts against published values and common practice. The source stands beside each check.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::coat::{
    Air, Product, WindowBasis, amount, assess, bottles, dew_point, saturation_pressure, seconds_to_apply,
    seconds_to_level, vapour_pressure,
};
use lapwright::units::{Celsius, Kelvin, RelativeHumidity, SquareMetres};

#[track_caller]
fn close(actual: f64, expected: f64, tolerance: f64) {
    assert!((actual - expected).abs() <= tolerance, "{actual} is not within {tolerance} of {expected}");
}

fn dew(temp: f64, rh: f64) -> f64 {
    dew_point(Celsius::new(temp).unwrap(), RelativeHumidity::new(rh).unwrap()).c()
}

fn air(temp: f64, rh: f64) -> Air {
    let temp = Celsius::new(temp).unwrap();
    Air {
        air_temp_c: temp,
        humidity_pct: RelativeHumidity::new(rh).unwrap(),
        surface_temp_c: temp,
        warmest_surface_temp_c: None,
    }
}

/// Dew point table of a marine paint maker's technical bulletin, June 2013 (excerpt seen), printed to 0.1 °C, and the values
/// of a general-purpose psychrometric library (PsychroLib, after ASHRAE 2017).
#[test]
fn dew_points_are_those_of_the_table() {
    for (temp, rh, table, library) in [
        (10.0, 60.0, 2.6, 2.60),
        (15.0, 80.0, 11.5, 11.58),
        (20.0, 50.0, 9.3, 9.27),
        (20.0, 60.0, 12.0, 12.01),
        (20.0, 65.0, 13.3, 13.23),
        (23.0, 60.0, 14.8, 14.82),
        (25.0, 50.0, 13.8, 13.86),
        (25.0, 60.0, 16.7, 16.70),
        (30.0, 50.0, 18.4, 18.45),
        (30.0, 60.0, 21.4, 21.39),
        (10.0, 85.0, 7.6, 7.60),
        (10.0, 90.0, 8.4, 8.44),
    ] {
        close(dew(temp, rh), table, 0.1);
        close(dew(temp, rh), library, 0.05);
    }
}

/// Same table and library below freezing: both are over ice. Over water it would be −4.58.
#[test]
fn below_freezing_the_dew_point_is_that_of_frost() {
    close(dew(5.0, 50.0), -4.1, 0.1);
    close(dew(5.0, 50.0), -4.03, 0.05);
}

/// Paint application guides (excerpts seen): 16 °C at 71 % gives 11 °C; a chart has 57 °F for 70 °F at 65 % (it truncates).
#[test]
fn dew_points_of_application_guides() {
    close(dew(16.0, 71.0), 11.0, 0.5);
    let fahrenheit = dew((70.0 - 32.0) / 1.8, 65.0) * 1.8 + 32.0;
    assert!((57.0..58.0).contains(&fahrenheit), "{fahrenheit}");
}

/// Saturated air has its dew point at its own temperature, on both branches where they meet.
#[test]
fn saturated_air_dews_at_once() {
    for temp in [0.0, 0.5, 12.0, 35.0] {
        close(dew(temp, 100.0), temp, 1e-9);
    }
    // Just below freezing the two curves part only slowly.
    close(dew(-0.5, 100.0), -0.5, 0.06);
}

/// ASHRAE Handbook Fundamentals 2017, chapter 1, table 3 (values as used by PsychroLib's tests): 5, 25, 50 °C.
#[test]
fn saturation_pressures_are_those_of_ashrae() {
    for (temp, pascal) in [(5.0, 872.6), (25.0, 3169.7), (50.0, 12351.3)] {
        let actual = saturation_pressure(Celsius::of(temp));
        close(actual / pascal, 1.0, 0.004);
    }
    close(saturation_pressure(Celsius::of(20.0)) / 2338.8, 1.0, 0.004);
}

/// Vapour in air of 50 %, from a general-purpose psychrometric library (PsychroLib); the short formula runs up to 0.4 % lower.
#[test]
fn vapour_in_half_saturated_air() {
    for (temp, pascal) in [(10.0, 614.0), (15.0, 853.0), (20.0, 1169.0), (25.0, 1585.0), (30.0, 2123.0), (35.0, 2814.0)]
    {
        close(vapour_pressure(Celsius::of(temp), RelativeHumidity::of(50.0)) / pascal, 1.0, 0.004);
    }
}

/// Arrhenius' law with 50 kJ/mol against 20 °C (computed): 2.064 at 10 °C, 1.428, 0.709, 0.508 and 0.368 at 35 °C, which the
/// model holds at 0.4; and at 10 °C it holds at 2.
#[test]
fn warmth_alone_follows_arrhenius() {
    let product = Product { activation_kj_per_mol: 50.0, humidity_exponent: 0.0, ..Product::default() };
    for (temp, factor) in [(15.0, 1.428), (20.0, 1.0), (25.0, 0.709), (30.0, 0.508), (35.0, 0.4), (10.0, 2.0)] {
        close(WindowBasis::new(&product, None).factor(&air(temp, 50.0)), factor, 0.001);
    }
}

/// A doubling every 10 K between 20 and 30 °C is 51.2 kJ/mol (computed from Arrhenius' law).
#[test]
fn q10_of_two_is_an_energy_of_51_kilojoules() {
    let product = Product { activation_kj_per_mol: 51.2, humidity_exponent: 0.0, ..Product::default() };
    close(WindowBasis::new(&product, None).factor(&air(30.0, 50.0)), 0.5, 0.001);
}

/// Moisture in proportion: e(30 °C, 70 %)/e(20 °C, 50 %) = 2.54 (computed), so the window would be 0.394 and is held at 0.4.
#[test]
fn moisture_alone_follows_the_water_in_the_air() {
    let product = Product { activation_kj_per_mol: 0.0, humidity_exponent: 1.0, ..Product::default() };
    close(WindowBasis::new(&product, None).factor(&air(30.0, 60.0)), 1.0 / (2.54 * 60.0 / 70.0), 0.002);
    close(WindowBasis::new(&product, None).factor(&air(30.0, 70.0)), 0.4, 1e-12);
}

/// Common practice, no source: up to about five minutes at usual indoor air; humid or hot means sooner, never later.
#[test]
fn hot_air_shortens_the_window_and_never_lengthens_it() {
    let product = Product::default();
    assert_eq!(WindowBasis::new(&product, None).window(&air(20.0, 50.0)).max_s, 300);
    for rh in [30.0, 50.0, 70.0] {
        let mut before = i64::MAX;
        for temp in 5..=45 {
            let now = WindowBasis::new(&product, None).window(&air(f64::from(temp), rh));
            assert!(now.max_s <= before && now.min_s <= now.max_s, "at {temp} °C and {rh} %");
            before = now.max_s;
        }
    }
}

/// The surface must be 3 °C above the dew point (ISO 8502-4 and ISO 12944-7, as quoted by application guides).
#[test]
fn a_cold_surface_stops_the_work() {
    let product = Product::default();
    let fine = assess(&air(20.0, 60.0), &product, None);
    assert!(fine.go && fine.stops.is_empty(), "{fine:?}");
    close(fine.margin.k(), 8.0, 0.05);
    let cold = Air { surface_temp_c: Celsius::of(14.9), ..air(20.0, 60.0) };
    let verdict = assess(&cold, &product, None);
    assert!(!verdict.go && verdict.margin < Kelvin::of(3.0));
    assert!(verdict.stops[0].contains("dew point"), "{:?}", verdict.stops);
}

/// Common practice, no source: a compact two-door with lamps and glass (about 17.5 m², 33 panels) takes a practised pair 17 to
/// 24 min. Applying and levelling run side by side, so the longer of the two, the first wait and the last panel are a lower
/// bound that must leave room for walking and waiting.
#[test]
fn a_compact_vehicle_takes_about_twenty_minutes() {
    let product = Product::default();
    let panel = SquareMetres::of(17.5 / 33.0);
    let apply = 33 * seconds_to_apply(panel, &product);
    let level = 33 * seconds_to_level(panel, &product);
    let least = apply.max(level) + product.window_min_s + seconds_to_level(panel, &product);
    assert!((14 * 60..=21 * 60).contains(&least), "{least} s");
}

/// Common practice, no source: a bottle of 30 ml does two small vehicles (about 9 m² of paint each) or one large one (18 m²).
#[test]
fn a_bottle_does_two_small_vehicles_or_one_large() {
    let product = Product::default();
    let two_small = amount(SquareMetres::of(2.0 * 9.0), &product);
    assert_eq!(bottles(two_small, &product), 1);
    assert_eq!(bottles(amount(SquareMetres::of(18.0), &product), &product), 1);
    assert_eq!(bottles(amount(SquareMetres::of(25.0), &product), &product), 2);
}
