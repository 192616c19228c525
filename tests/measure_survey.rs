//! A survey as it is used: mirror panels, before and after, gauge checks, the way through the spots, what is said about it.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::finding::Code;
use lapwright::measure::{
    Assurance, Base, CheckAt, Contribution, FilmBand, FilmBands, FilmSummary, Gauge, GaugeCheck, GaugePrinciple, Place,
    Visibility, combined_uncertainty, film_findings, film_remarks, measured_removal, mirror_difference, route_length,
    spots_for, summarise, survey_route, suspect_readings, t_quantile,
};
use lapwright::units::{Micrometres, SquareMetres};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

fn um(value: f64) -> Micrometres {
    Micrometres::new(value).unwrap()
}

fn spots(values: &[[f64; 3]]) -> Vec<Vec<Micrometres>> {
    values.iter().map(|spot| spot.iter().map(|v| um(*v)).collect()).collect()
}

fn refs(spots: &[Vec<Micrometres>]) -> Vec<&[Micrometres]> {
    spots.iter().map(Vec::as_slice).collect()
}

fn film(means: &[f64]) -> FilmSummary {
    let spots: Vec<Vec<Micrometres>> = means.iter().map(|m| vec![um(*m)]).collect();
    summarise(&refs(&spots), &Gauge::default(), Assurance::default()).unwrap()
}

fn fine_gauge() -> Gauge {
    Gauge { accuracy_fixed_um: um(1.0), accuracy_share: 0.01, resolution_um: um(0.1), ..Gauge::default() }
}

/// Three readings before and after at one place, 112 114 113 and 109 110 109: 3.67 µm, u 0.667, ν 3.2, lower 95 % bound 2.10 µm
/// (computed by JCGM 100; the gauge's bias is common and cancels).
#[test]
fn removal_at_one_place() {
    let combined = combined_uncertainty(&[Contribution::of_mean(1.0, 3), Contribution::of_mean(0.577_35, 3)]);
    let removed = 113.0 - 328.0 / 3.0;
    assert!((removed - 3.667_f64).abs() < 0.001);
    assert!((combined.standard - 0.667).abs() < 0.001);
    assert!((combined.degrees_of_freedom - 3.2).abs() < 0.01);
    let lower = removed - combined.standard * t_quantile(0.95, combined.degrees_of_freedom.floor()); // truncated, as G.4.1 asks
    assert!((lower - 2.10).abs() < 0.005, "{lower}");
}

#[test]
fn a_clear_removal_is_shown_with_its_interval() {
    let before = spots(&[[112.1, 112.3, 112.2], [115.0, 115.2, 115.1], [109.9, 110.1, 110.0], [113.0, 113.1, 113.2]]);
    let after = spots(&[[108.9, 109.1, 109.0], [112.1, 112.0, 112.2], [106.8, 107.0, 106.9], [110.1, 110.0, 110.2]]);
    let removal = measured_removal(&refs(&before), &refs(&after), &fine_gauge()).unwrap();
    assert_eq!(removal.visibility, Visibility::Shown);
    assert!((removal.change.mean - 3.075).abs() < 0.01, "{:?}", removal.change);
    assert!(removal.upper.um() >= removal.change.mean);
    assert!(removal.text.starts_with("Removed"), "{}", removal.text);
}

/// A gauge that shows whole micrometres can't prove a finishing cut of half a micrometre.
#[test]
fn a_finishing_cut_is_not_measurable_with_a_coarse_gauge() {
    let before = spots(&[[112.0, 113.0, 112.0], [115.0, 115.0, 114.0], [110.0, 110.0, 111.0]]);
    let after = spots(&[[112.0, 112.0, 112.0], [115.0, 114.0, 115.0], [110.0, 111.0, 110.0]]);
    let removal = measured_removal(&refs(&before), &refs(&after), &Gauge::default()).unwrap();
    assert_ne!(removal.visibility, Visibility::Shown);
    assert!(removal.change.low <= 0.0);
    assert!(removal.text.contains("not measurable") || removal.text.contains("would"), "{}", removal.text);
}

/// All readings the same on a coarse display do not make the removal exactly known.
#[test]
fn equal_readings_leave_the_rounding_of_the_display_open() {
    let before = spots(&[[112.0; 3], [115.0; 3]]);
    let after = spots(&[[111.0; 3], [114.0; 3]]);
    let removal = measured_removal(&refs(&before), &refs(&after), &Gauge::default()).unwrap();
    assert!(removal.change.sd == 0.0 && removal.change.high > 1.5, "{:?}", removal.change);
    assert!(measured_removal(&refs(&before[..1]), &refs(&after[..1]), &Gauge::default()).is_none());
}

#[test]
fn a_repainted_panel_differs_from_its_mirror_panel() {
    let bands = FilmBands::default();
    let (left, right) = (film(&[112.0, 115.0, 110.0, 113.0, 114.0]), film(&[228.0, 240.0, 233.0, 236.0, 231.0]));
    let difference = mirror_difference(&right, &left, &bands);
    assert!(difference.remarkable && difference.text.contains("thicker"), "{difference:?}");
    assert!(!mirror_difference(&left, &film(&[116.0, 119.0, 114.0]), &bands).remarkable);
    // A large difference that a wild spread explains is not remarked on.
    assert!(!mirror_difference(&film(&[60.0, 200.0]), &film(&[70.0, 100.0]), &bands).remarkable);
}

/// Bands of trade practice: under 70 no cut, 100 to 200 normal, above 200 refinished, above 300 several, above 1000 filler.
#[test]
fn bands_and_what_is_said_of_them() {
    let bands = FilmBands::default();
    for (um, band) in [
        (69.0, FilmBand::NoCut),
        (75.0, FilmBand::FinestOnly),
        (90.0, FilmBand::Thin),
        (130.0, FilmBand::Normal),
        (260.0, FilmBand::Refinished),
        (500.0, FilmBand::SeveralResprays),
        (1_500.0, FilmBand::FillerLikely),
    ] {
        assert_eq!(bands.band(um), band);
        let remarks = film_remarks(&film(&[um, um, um]), &bands);
        assert_eq!(remarks[0].band, band);
        assert!(remarks[0].text.contains("trade practice"));
    }
    // Filler hides in one place; the mean would not show it.
    let patched = film(&[120.0, 125.0, 118.0, 1_300.0, 122.0]);
    assert!(film_remarks(&patched, &bands).iter().any(|r| r.band == FilmBand::FillerLikely));
}

#[test]
fn findings_name_what_the_readings_suggest() {
    let bands = FilmBands::default();
    let codes = |film: &FilmSummary, mirror: Option<&FilmSummary>| -> Vec<Code> {
        film_findings("wing-left", film, mirror, &bands).iter().map(|f| f.code).collect()
    };
    let sound = film(&[118.0, 121.0, 117.0, 120.0, 119.0]);
    assert_eq!(codes(&sound, Some(&sound)), []);
    assert_eq!(codes(&film(&[88.0, 90.0, 89.0]), None), [Code::FilmThin]);
    assert_eq!(
        codes(&film(&[228.0, 240.0, 233.0, 236.0, 231.0]), Some(&sound)),
        [Code::FilmRefinished, Code::FilmMirror]
    );
    let patched = codes(&film(&[120.0, 121.0, 118.0, 1_300.0, 122.0, 119.0]), None);
    assert!(patched.contains(&Code::ReadingStandsOut) && patched.contains(&Code::FilmFiller), "{patched:?}");
}

/// Scopes of ISO 2178 (steel) and ISO 2360 (conductors that are not magnetic); plastic needs ultrasound.
#[test]
fn a_principle_that_cannot_read_a_base_says_why() {
    use GaugePrinciple::{EddyCurrent, MagneticInduction, Ultrasonic};
    for (principle, base) in
        [(MagneticInduction, Base::Steel), (EddyCurrent, Base::Aluminium), (Ultrasonic, Base::Plastic)]
    {
        assert_eq!(principle.refusal(base), None);
    }
    assert!(MagneticInduction.refusal(Base::Plastic).unwrap().contains("steel only"));
    assert!(MagneticInduction.refusal(Base::Aluminium).unwrap().contains("eddy"));
    assert!(EddyCurrent.refusal(Base::CarbonFibre).unwrap().contains("conducts"));
    assert!(Ultrasonic.refusal(Base::Glass).is_some());
}

/// ASTM D7091 (from memory): when a check fails, readings since the last good check are suspect.
#[test]
fn a_failed_check_makes_the_readings_before_it_suspect() {
    let gauge = Gauge::default();
    let check = |after_readings, shown| CheckAt {
        after_readings,
        check: GaugeCheck { certified_um: um(100.0), shown_um: um(shown) },
    };
    // ±(2 + 3 %) of 100 is ±5, plus half a step of the display.
    assert_eq!(suspect_readings(&gauge, &[check(0, 101.0), check(60, 105.4)]), []);
    let suspect = suspect_readings(&gauge, &[check(90, 108.0), check(0, 100.0), check(60, 99.0), check(90, 101.0)]);
    assert_eq!(suspect, vec![60..90], "adjusted and checked again, what follows counts");
}

/// A gauge that failed is not trusted again until that very plate or shim has passed, and one failing shim is enough.
#[test]
fn a_gauge_that_failed_has_to_pass_again() {
    let gauge = Gauge::default();
    let check = |after_readings, certified, shown| CheckAt {
        after_readings,
        check: GaugeCheck { certified_um: um(certified), shown_um: um(shown) },
    };
    let end = usize::MAX;
    assert_eq!(suspect_readings(&gauge, &[check(0, 100.0, 108.0)]), vec![0..end], "it failed before the first reading");
    assert_eq!(suspect_readings(&gauge, &[check(0, 100.0, 108.0), check(0, 100.0, 100.0)]), []);
    let plate_and_shim = [check(0, 0.0, 0.0), check(0, 100.0, 100.0), check(30, 0.0, 0.0), check(30, 100.0, 92.0)];
    assert_eq!(suspect_readings(&gauge, &plate_and_shim), vec![0..end]);
    let only_the_plate_again = [&plate_and_shim[..], &[check(50, 0.0, 1.0)]].concat();
    assert_eq!(suspect_readings(&gauge, &only_the_plate_again), vec![0..end], "the shim has not passed again");
    let the_shim_too = [&plate_and_shim[..], &[check(50, 100.0, 101.0)]].concat();
    assert_eq!(suspect_readings(&gauge, &the_shim_too), vec![0..50]);
    assert_eq!(suspect_readings(&gauge, &[]), []);
}

/// At least five spots of three on a large panel; the number never falls as panels grow.
#[test]
fn larger_panels_get_more_spots() {
    assert_eq!(spots_for(SquareMetres::of(0.02)), 1);
    assert_eq!(spots_for(SquareMetres::of(0.95)), 5);
    assert_eq!(spots_for(SquareMetres::of(2.0)), 7);
    let counts: Vec<usize> = (0..400).map(|i| spots_for(SquareMetres::new(f64::from(i) / 100.0).unwrap())).collect();
    assert!(counts.is_sorted());
}

/// Shortest way through all places from the first, by trying every order.
fn shortest(places: &[Place]) -> f64 {
    fn visit(places: &[Place], route: &mut Vec<usize>, best: &mut f64) {
        if route.len() == places.len() {
            *best = best.min(route_length(places, route));
            return;
        }
        for next in 1..places.len() {
            if !route.contains(&next) {
                route.push(next);
                visit(places, route, best);
                route.pop();
            }
        }
    }
    let mut best = f64::INFINITY;
    visit(places, &mut vec![0], &mut best);
    best
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    /// Every spot once, starting at the first, and close to the shortest way.
    #[test]
    fn the_way_through_the_spots_is_short(points in prop::collection::vec((0.0..5_000.0_f64, 0.0..2_000.0_f64), 1..8)) {
        let places: Vec<Place> = points.into_iter().map(|(x, y)| Place { x, y }).collect();
        let route = survey_route(&places);
        let mut sorted = route.clone();
        sorted.sort_unstable();
        prop_assert_eq!(sorted, (0..places.len()).collect::<Vec<_>>());
        prop_assert_eq!(route[0], 0);
        prop_assert!(route_length(&places, &route) <= 1.25 * shortest(&places) + 1e-6);
    }
}
