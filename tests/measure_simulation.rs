//! Do the statistics keep their promises? Simulated surveys with a known truth, many times over.
//!
//! A promise of 90 % must hold in 90 % of the runs, within four standard errors of the simulation. Seeds are fixed.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{
    Assurance, Gauge, GaugePrinciple, grubbs, paired_change, pairs_needed, summarise, t_quantile, tolerance_factor,
};
use lapwright::polish::{PolishStep, TestSpot, calibrate};
use lapwright::units::Micrometres;
use statrs::distribution::{ContinuousCDF, Normal};

/// Normal numbers from a small generator (SplitMix64, Steele et al. 2014) and the library's quantile.
struct Dice {
    state: u64,
    normal: Normal,
}

impl Dice {
    fn new(seed: u64) -> Self {
        Self { state: seed, normal: Normal::new(0.0, 1.0).unwrap() }
    }

    fn uniform(&mut self) -> f64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        let u = self.uniform().clamp(1e-12, 1.0 - 1e-12);
        self.normal.inverse_cdf(u)
    }

    fn sample(&mut self, n: usize) -> Vec<f64> {
        (0..n).map(|_| self.normal()).collect()
    }
}

fn mean_and_sd(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    (mean, (values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt())
}

#[track_caller]
fn promised(kept: usize, runs: usize, promise: f64) {
    let share = kept as f64 / runs as f64;
    let error = (promise * (1.0 - promise) / runs as f64).sqrt();
    assert!((share - promise).abs() <= 4.0 * error, "{share} instead of {promise} ± {error}");
}

/// With confidence 90 % at least 90 % of the panel lies above mean − k·sd, whatever the number of spots.
#[test]
fn tolerance_bounds_cover_what_they_promise() {
    let runs = 20_000;
    for (n, coverage, confidence) in [(3, 0.90, 0.90), (5, 0.90, 0.90), (5, 0.95, 0.75), (12, 0.99, 0.95)] {
        let k = tolerance_factor(n, coverage, confidence);
        let mut dice = Dice::new(n as u64);
        let kept = (0..runs)
            .filter(|_| {
                let (mean, sd) = mean_and_sd(&dice.sample(n));
                // Share of a standard normal population above the bound.
                dice.normal.cdf(-(mean - k * sd)) >= coverage
            })
            .count();
        promised(kept, runs, confidence);
    }
}

/// The whole summary, with a biased gauge that rounds to whole micrometres, promises no less than it says.
#[test]
fn the_lower_bound_holds_with_a_biased_gauge() {
    let gauge = Gauge {
        principle: GaugePrinciple::MagneticInduction,
        accuracy_fixed_um: Micrometres::of(2.0),
        accuracy_share: 0.01,
        resolution_um: Micrometres::of(1.0),
    };
    let (mean, sd, runs) = (115.0, 4.0, 4_000);
    let mut dice = Dice::new(11);
    let kept = (0..runs)
        .filter(|_| {
            // The bias is anywhere within the stated accuracy, the same for all spots; a reading repeats within 1 µm.
            let bias = (2.0 * dice.uniform() - 1.0) * gauge.accuracy_at(mean);
            let spots: Vec<Vec<Micrometres>> = (0..5)
                .map(|_| {
                    let truth = mean + sd * dice.normal();
                    (0..3).map(|_| Micrometres::new((truth + bias + dice.normal()).round()).unwrap()).collect()
                })
                .collect();
            let spots: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
            let film = summarise(&spots, &gauge, Assurance::default()).unwrap();
            dice.normal.cdf((mean - film.lower.um()) / sd) >= 0.90
        })
        .count();
    let share = kept as f64 / f64::from(runs);
    assert!((0.90..0.97).contains(&share), "{share}: it must keep 90 % and not be needlessly cautious");
}

/// Grubbs' test cries wolf in one clean set of twenty.
#[test]
fn clean_readings_stand_out_one_time_in_twenty() {
    let (runs, mut dice) = (20_000, Dice::new(3));
    for n in [5, 8] {
        let alarms = (0..runs).filter(|_| grubbs(&dice.sample(n)).unwrap().stands_out()).count();
        promised(alarms, runs, 0.05);
    }
}

/// The interval of a paired change covers the true change in 95 % of the surveys.
#[test]
fn paired_intervals_cover_the_true_change() {
    let (runs, mut dice) = (20_000, Dice::new(5));
    let kept = (0..runs)
        .filter(|_| {
            let (before, noise) = (dice.sample(5), dice.sample(5));
            let after: Vec<f64> = before.iter().zip(&noise).map(|(b, e)| b - 2.0 + 0.7 * e).collect();
            let change = paired_change(&before, &after, 0.95, 0.0).unwrap();
            change.low <= 2.0 && 2.0 <= change.high
        })
        .count();
    promised(kept, runs, 0.95);
}

/// With as many pairs as are said to be needed, nine surveys in ten show the change; with one pair less, fewer do.
#[test]
fn the_number_of_pairs_gives_the_power() {
    let (sd, change, runs) = (0.5, 1.0, 20_000);
    let pairs = pairs_needed(sd, 1, change).unwrap();
    let shown = |n: usize| {
        let mut dice = Dice::new(n as u64);
        let critical = t_quantile(0.95, (n - 1) as f64);
        let one = |dice: &mut Dice| {
            let differences: Vec<f64> = (0..n).map(|_| change + sd * dice.normal() - sd * dice.normal()).collect();
            let (mean, spread) = mean_and_sd(&differences);
            mean / spread * (n as f64).sqrt() > critical
        };
        (0..runs).filter(|_| one(&mut dice)).count() as f64 / f64::from(runs)
    };
    assert!(shown(pairs) >= 0.89 && shown(pairs - 1) < 0.90, "{pairs} pairs: {} {}", shown(pairs), shown(pairs - 1));
}

/// After a test spot the upper bound of the removal holds for 95 % of the paints, for the tested step and for the others, when
/// paints differ as the model says.
#[test]
fn removal_after_a_test_spot_stays_under_its_bound() {
    let steps = PolishStep::starting_set();
    let sigma = 0.5 / 1.645;
    let (common, own) = (sigma * 0.5_f64.sqrt(), sigma * 0.5_f64.sqrt());
    let (runs, mut dice) = (8_000, Dice::new(9));
    let mut kept = [0_usize; 2];
    for _ in 0..runs {
        let hardness = common * dice.normal();
        let truth: Vec<f64> =
            steps.iter().map(|s| s.removal_um.um() * (1.0 + hardness + own * dice.normal())).collect();
        let measured = 4.0 * truth[3] + 0.4 * dice.normal();
        let spot = TestSpot { step: 3, passes: 4, removal: Some((measured, 0.4)), finish_right: true };
        let after = calibrate(&steps, &[spot]).steps;
        for (kept, step) in kept.iter_mut().zip([3, 2]) {
            *kept += usize::from(truth[step] <= after[step].removal_upper(1));
        }
    }
    for kept in kept {
        promised(kept, runs, 0.95);
    }
}
