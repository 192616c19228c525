//! Laws that hold for every set of readings.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{
    Assurance, FilmSummary, Gauge, GaugePrinciple, combined_uncertainty, grubbs, paired_change, summarise,
    tolerance_factor,
};
use lapwright::measure::{Contribution, FilmBands, film_remarks};
use lapwright::units::Micrometres;
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

fn um(value: f64) -> Micrometres {
    Micrometres::new(value).unwrap()
}

fn gauge(fixed: f64, share: f64, step: f64) -> Gauge {
    Gauge {
        principle: GaugePrinciple::MagneticInduction,
        accuracy_fixed_um: um(fixed),
        accuracy_share: share,
        resolution_um: um(step),
    }
}

fn sum_up(spots: &[Vec<f64>], gauge: &Gauge, assurance: Assurance) -> Option<FilmSummary> {
    let spots: Vec<Vec<Micrometres>> = spots.iter().map(|s| s.iter().map(|v| um(*v)).collect()).collect();
    let spots: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    summarise(&spots, gauge, assurance)
}

fn any_spots() -> impl Strategy<Value = Vec<Vec<f64>>> {
    prop::collection::vec(prop::collection::vec(40.0..400.0_f64, 0..5), 0..9)
}

fn any_assurance() -> impl Strategy<Value = Assurance> {
    (0.7..0.999_f64, 0.7..0.999_f64).prop_map(|(coverage, confidence)| Assurance { coverage, confidence })
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-6 * (1.0 + a.abs().max(b.abs()))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1_000, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    /// Every figure is finite for every input that the units accept, however odd.
    #[test]
    fn every_figure_is_finite(
        spots in prop::collection::vec(prop::collection::vec(0.0..100_000.0_f64, 0..4), 0..40),
        assurance in any_assurance(),
        fixed in 0.0..50.0_f64,
        share in 0.0..1.0_f64,
    ) {
        let any = spots.iter().any(|s| !s.is_empty());
        let film = sum_up(&spots, &gauge(fixed, share, 1.0), assurance);
        prop_assert_eq!(film.is_some(), any);
        if let Some(film) = film {
            for figure in [film.mean, film.min, film.max, film.standard_uncertainty, film.lower.um(), film.range()] {
                prop_assert!(figure.is_finite());
            }
            prop_assert!(film.sd.is_none_or(f64::is_finite));
            prop_assert!(film.degrees_of_freedom > 0.0);
            prop_assert!(film.lower.um() <= film.mean);
            prop_assert!(film.min <= film.mean + 1e-9 && film.mean <= film.max + 1e-9);
            prop_assert!(!film_remarks(&film, &FilmBands::default()).is_empty());
            prop_assert!(film.suspicious.iter().all(|i| !spots[*i].is_empty()));
        }
    }

    /// Neither the order of the readings in a spot nor that of the spots changes anything but the numbering.
    #[test]
    fn order_never_matters(spots in any_spots(), assurance in any_assurance(), turn in 0..9_usize) {
        let gauge = Gauge::default();
        let mut other: Vec<Vec<f64>> = spots.iter().map(|s| s.iter().rev().copied().collect()).collect();
        if !other.is_empty() {
            let turn = turn % other.len();
            other.rotate_left(turn);
        }
        let (a, b) = (sum_up(&spots, &gauge, assurance), sum_up(&other, &gauge, assurance));
        prop_assert_eq!(a.is_some(), b.is_some());
        if let (Some(a), Some(b)) = (a, b) {
            prop_assert_eq!(a.mean.to_bits(), b.mean.to_bits());
            prop_assert_eq!(a.lower, b.lower);
            prop_assert_eq!(a.standard_uncertainty.to_bits(), b.standard_uncertainty.to_bits());
            let values = |spots: &[Vec<f64>], film: &FilmSummary| -> Vec<f64> {
                film.suspicious.iter().map(|i| spots[*i].iter().sum::<f64>() / spots[*i].len() as f64).collect()
            };
            let (x, y) = (values(&spots, &a), values(&other, &b));
            prop_assert!(x.len() == y.len() && x.iter().zip(&y).all(|(x, y)| near(*x, *y)));
        }
    }

    /// Adding the same to all readings moves mean and bound by it, for a gauge whose accuracy does not depend on the reading.
    #[test]
    fn shifting_the_readings_shifts_the_bound(
        spots in prop::collection::vec(prop::collection::vec(300.0..400.0_f64, 1..4), 3..9),
        shift in 0.0..500.0_f64,
    ) {
        let gauge = gauge(2.0, 0.0, 1.0);
        let shifted: Vec<Vec<f64>> = spots.iter().map(|s| s.iter().map(|v| v + shift).collect()).collect();
        let a = sum_up(&spots, &gauge, Assurance::default()).unwrap();
        let b = sum_up(&shifted, &gauge, Assurance::default()).unwrap();
        prop_assert!(near(b.mean - a.mean, shift));
        prop_assert!(a.lower == Micrometres::ZERO || near(b.lower.um() - a.lower.um(), shift));
        prop_assert!(near(b.sd.unwrap(), a.sd.unwrap()));
        prop_assert!(near(b.standard_uncertainty, a.standard_uncertainty));
    }

    /// Measured in another unit, everything comes out in that unit (with the gauge's data in it too).
    #[test]
    fn scaling_the_readings_scales_the_result(
        spots in prop::collection::vec(prop::collection::vec(40.0..400.0_f64, 1..4), 3..9),
        scale in 0.05..20.0_f64,
        assurance in any_assurance(),
    ) {
        let scaled: Vec<Vec<f64>> = spots.iter().map(|s| s.iter().map(|v| v * scale).collect()).collect();
        let a = sum_up(&spots, &gauge(2.0, 0.03, 1.0), assurance).unwrap();
        let b = sum_up(&scaled, &gauge(2.0 * scale, 0.03, scale), assurance).unwrap();
        prop_assert!(near(b.mean, a.mean * scale));
        prop_assert!(near(b.lower.um(), a.lower.um() * scale), "{} {}", b.lower.um(), a.lower.um() * scale);
        prop_assert!(near(b.standard_uncertainty, a.standard_uncertainty * scale));
    }

    /// With the same mean and the same standard deviation, more spots never loosen the bound.
    #[test]
    fn more_spots_never_loosen_the_bound(mean in 80.0..300.0_f64, sd in 0.0..20.0_f64, assurance in any_assurance()) {
        let mut before = -1.0;
        for n in 1..=30 {
            // Half the spots above and half below the mean (one in the middle for odd n), scaled to the wanted deviation.
            let pairs = n / 2;
            let step = if pairs == 0 { 0.0 } else { sd * f64::from(n - 1).sqrt() / f64::from(2 * pairs).sqrt() };
            let mut spots: Vec<Vec<f64>> = (0..pairs).flat_map(|_| [vec![mean - step], vec![mean + step]]).collect();
            if n % 2 == 1 {
                spots.push(vec![mean]);
            }
            prop_assume!(mean - step >= 0.0);
            let film = sum_up(&spots, &Gauge::default(), assurance).unwrap();
            if n >= 2 {
                prop_assert!(near(film.sd.unwrap(), sd), "{:?} {}", film.sd, sd);
            }
            // From one spot to two a spread becomes known at all, which may be larger than the assumed one.
            if n != 2 {
                prop_assert!(film.lower.um() >= before - 1e-6, "{} spots: {} < {}", n, film.lower.um(), before);
            }
            before = film.lower.um();
        }
    }

    /// A worse gauge never raises the bound, and its bias does not go away with more readings.
    #[test]
    fn a_worse_gauge_never_raises_the_bound(spots in any_spots(), fixed in 0.0..10.0_f64, more in 0.1..10.0_f64) {
        let with = |fixed: f64| sum_up(&spots, &gauge(fixed, 0.03, 1.0), Assurance::default());
        if let (Some(good), Some(bad)) = (with(fixed), with(fixed + more)) {
            prop_assert!(bad.lower == Micrometres::ZERO || bad.lower < good.lower);
            prop_assert!(bad.standard_uncertainty > good.standard_uncertainty);
            // 1.2816 is the normal quantile of 0.9, a rectangle's standard deviation is its half width over √3.
            let bias = 1.2816 * (fixed + 0.03 * good.mean) / 3.0_f64.sqrt();
            prop_assert!(good.mean - good.lower.um() >= bias.min(good.mean) - 1e-3);
        }
    }

    /// More coverage or more confidence never raises the bound; more values never raise the factor.
    #[test]
    fn the_factor_is_monotone(n in 2..60_usize, coverage in 0.7..0.99_f64, confidence in 0.7..0.99_f64, more in 0.0..0.009_f64) {
        let k = tolerance_factor(n, coverage, confidence);
        prop_assert!(k.is_finite() && k >= -1e-6);
        prop_assert!(tolerance_factor(n, coverage + more, confidence) >= k - 1e-9);
        prop_assert!(tolerance_factor(n, coverage, confidence + more) >= k - 1e-9);
        prop_assert!(tolerance_factor(n + 1, coverage, confidence) <= k + 1e-9);
    }

    /// Effective degrees of freedom lie between the smallest and the sum (JCGM 100 G.4.1).
    #[test]
    fn effective_degrees_of_freedom_stay_in_their_range(parts in prop::collection::vec((0.01..5.0_f64, 1..40_u32), 1..6)) {
        let parts: Vec<Contribution> = parts
            .into_iter()
            .map(|(standard, dof)| Contribution { standard, degrees_of_freedom: f64::from(dof) })
            .collect();
        let combined = combined_uncertainty(&parts);
        let smallest = parts.iter().map(|p| p.degrees_of_freedom).fold(f64::INFINITY, f64::min);
        let sum: f64 = parts.iter().map(|p| p.degrees_of_freedom).sum();
        prop_assert!(combined.degrees_of_freedom >= smallest - 1e-9 && combined.degrees_of_freedom <= sum + 1e-9);
        prop_assert!(parts.iter().all(|p| combined.standard >= p.standard));
    }

    /// An outlier stays one when everything is shifted or scaled.
    #[test]
    fn an_outlier_does_not_depend_on_the_unit(values in prop::collection::vec(50.0..200.0_f64, 4..12), shift in -40.0..40.0_f64, scale in 0.1..10.0_f64) {
        let moved: Vec<f64> = values.iter().map(|v| (v + shift) * scale).collect();
        let (a, b) = (grubbs(&values).unwrap(), grubbs(&moved).unwrap());
        prop_assert!(near(a.g, b.g));
        prop_assert!(a.g <= (values.len() as f64 - 1.0) / (values.len() as f64).sqrt() + 1e-9);
    }

    /// A bias of the gauge that is the same before and after cancels in the removal.
    #[test]
    fn a_common_bias_cancels_in_the_change(pairs in prop::collection::vec((80.0..160.0_f64, 0.0..6.0_f64), 2..12), bias in -5.0..5.0_f64) {
        let before: Vec<f64> = pairs.iter().map(|p| p.0).collect();
        let after: Vec<f64> = pairs.iter().map(|p| p.0 - p.1).collect();
        let biased = |values: &[f64]| -> Vec<f64> { values.iter().map(|v| v + bias).collect() };
        let a = paired_change(&before, &after, 0.95, 1.0).unwrap();
        let b = paired_change(&biased(&before), &biased(&after), 0.95, 1.0).unwrap();
        prop_assert!(near(a.mean, b.mean) && near(a.low, b.low) && near(a.high, b.high));
        prop_assert!(a.low <= a.mean && a.mean <= a.high);
    }
}
