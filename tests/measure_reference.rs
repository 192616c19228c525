//! Measurement science against published values. The source stands beside each check; "computed" marks values that were worked
//! out once from the named formula by other means than this code.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{
    Assurance, Contribution, Gauge, GaugePrinciple, combined_uncertainty, grubbs, grubbs_critical, noncentral_t_cdf,
    paired_change, pairs_needed, summarise, t_cdf, t_quantile, tolerance_factor,
};
use lapwright::units::Micrometres;
use statrs::distribution::{ContinuousCDF, Normal, StudentsT};

#[track_caller]
fn close(actual: f64, expected: f64, tolerance: f64) {
    assert!((actual - expected).abs() <= tolerance, "{actual} is not within {tolerance} of {expected}");
}

fn films(values: &[f64]) -> Vec<Micrometres> {
    values.iter().map(|v| Micrometres::new(*v).unwrap()).collect()
}

/// Table of the t distribution, e.g. JCGM 100:2008 table G.2 (from memory), one-sided 0.95 and two-sided 95 %.
#[test]
fn t_quantiles_are_those_of_the_tables() {
    for (dof, one_sided, two_sided) in [
        (2.0, 2.920, 4.303),
        (4.0, 2.132, 2.776),
        (5.0, 2.015, 2.571),
        (9.0, 1.833, 2.262),
        (10.0, 1.812, 2.228),
        (14.0, 1.761, 2.145),
        (19.0, 1.729, 2.093),
        (29.0, 1.699, 2.045),
    ] {
        close(t_quantile(0.95, dof), one_sided, 0.0005);
        close(t_quantile(0.975, dof), two_sided, 0.0005);
    }
}

/// A general-purpose statistics library as the oracle: the distribution function itself, over a wide range.
#[test]
fn the_t_distribution_agrees_with_a_general_library() {
    for dof in [0.7, 1.0, 2.0, 3.2, 7.0, 30.0, 250.0, 1e5] {
        let oracle = StudentsT::new(0.0, 1.0, dof).unwrap();
        for t in [-40.0, -6.0, -1.3, -0.1, 0.0, 0.4, 2.1, 5.0, 90.0] {
            close(t_cdf(t, dof), oracle.cdf(t), 1e-11);
        }
        for p in [0.001, 0.05, 0.3, 0.5, 0.8, 0.975, 0.9999] {
            close(oracle.cdf(t_quantile(p, dof)), p, 1e-10);
        }
    }
}

/// With noncentrality zero the noncentral t is Student's; with infinite degrees of freedom it is a shifted normal.
#[test]
fn the_noncentral_t_has_the_right_limits() {
    let normal = Normal::new(0.0, 1.0).unwrap();
    for t in [-3.0, -0.5, 0.0, 0.7, 2.5, 20.0] {
        for dof in [1.0, 2.0, 4.0, 14.0, 60.0] {
            close(noncentral_t_cdf(t, dof, 0.0), StudentsT::new(0.0, 1.0, dof).unwrap().cdf(t), 1e-9);
        }
        close(noncentral_t_cdf(t, 1e7, 1.3), normal.cdf(t - 1.3), 1e-6);
    }
}

/// EN 689, table of U_T (95th percentile, 70 % confidence), n = 6 to 30, as printed in public code that implements it.
#[test]
fn tolerance_factors_are_those_of_en_689() {
    let published = [
        2.187, 2.120, 2.072, 2.035, 2.005, 1.981, 1.961, 1.944, 1.929, 1.917, 1.905, 1.895, 1.886, 1.878, 1.870, 1.863,
        1.857, 1.851, 1.846, 1.841, 1.836, 1.832, 1.828, 1.824, 1.820,
    ];
    for (n, expected) in (6..=30).zip(published) {
        close(tolerance_factor(n, 0.95, 0.70), expected, 0.0006);
    }
}

/// NIST/SEMATECH e-Handbook 7.2.6.3: N = 43, coverage 90 %, confidence 99 %. The approximation there gives 1.8752; the exact
/// value from the noncentral t is 1.87395 (computed).
#[test]
fn the_nist_tolerance_example_comes_out() {
    close(tolerance_factor(43, 0.90, 0.99), 1.87395, 0.000_01);
}

/// Exact one-sided factors k = t'(n−1, z·√n)/√n (computed with another implementation of the noncentral t).
#[test]
fn tolerance_factors_for_few_spots() {
    for (n, factors) in [
        (3, [4.258, 6.155, 7.656, 10.553]),
        (5, [2.742, 3.407, 4.203, 5.741]),
        (6, [2.494, 3.006, 3.708, 5.062]),
        (10, [2.066, 2.355, 2.911, 3.981]),
        (15, [1.867, 2.068, 2.566, 3.520]),
        (20, [1.765, 1.926, 2.396, 3.295]),
        (30, [1.657, 1.777, 2.220, 3.064]),
    ] {
        for ((coverage, confidence), expected) in
            [(0.90, 0.90), (0.90, 0.95), (0.95, 0.95), (0.99, 0.95)].into_iter().zip(factors)
        {
            close(tolerance_factor(n, coverage, confidence), expected, 0.0006);
        }
    }
}

/// Two spots: the factor is defined too. 95 %/95 % for n = 2 is 26.260 in printed tables (from memory).
#[test]
fn the_factor_for_two_values_is_large_but_right() {
    close(tolerance_factor(2, 0.95, 0.95), 26.260, 0.001);
}

/// Spots 118, 113, 121, 116, 110: mean 115.6, s 4.28; lower limit 95/95 97.6 and 90/90 103.9 (computed), for a perfect gauge.
#[test]
fn a_panel_of_five_spots_has_its_bound() {
    let perfect = Gauge {
        principle: GaugePrinciple::MagneticInduction,
        accuracy_fixed_um: Micrometres::ZERO,
        accuracy_share: 0.0,
        resolution_um: Micrometres::ZERO,
    };
    let spots: Vec<Vec<Micrometres>> = [118.0, 113.0, 121.0, 116.0, 110.0].iter().map(|v| films(&[*v])).collect();
    let spots: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    for (level, bound) in [(0.95, 97.6), (0.90, 103.9)] {
        let film = summarise(&spots, &perfect, Assurance { coverage: level, confidence: level }).unwrap();
        close(film.mean, 115.6, 1e-9);
        close(film.sd.unwrap(), 4.28, 0.005);
        close(film.lower.um(), bound, 0.05);
    }
}

/// NIST/SEMATECH e-Handbook 1.3.5.17: eight values, G = 2.4687, critical value 2.032 one-sided and 2.1266 two-sided.
#[test]
fn the_nist_outlier_example_comes_out() {
    let values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
    let found = grubbs(&values).unwrap();
    assert_eq!(found.index, 7);
    close(found.g, 2.46877, 0.00002);
    close(found.critical, 2.1266, 0.0001);
    close(grubbs_critical(8, 0.05), 2.032, 0.0005);
    assert!(found.stands_out());
    assert_eq!(grubbs(&values[..3]), None, "three values can't have an outlier");
}

/// One-sided critical values at 5 %, as in a table of public code, and two-sided ones (computed).
#[test]
fn critical_values_of_grubbs() {
    for (n, one_sided, two_sided) in [
        (3, 1.1531, 1.154),
        (4, 1.4625, 1.481),
        (5, 1.6714, 1.715),
        (6, 1.822, 1.887),
        (7, 1.938, 2.020),
        (9, 2.110, 2.215),
        (10, 2.176, 2.290),
        (15, 2.409, 2.548),
        (20, 2.5566, 2.708),
    ] {
        close(grubbs_critical(n, 0.05), one_sided, 0.0006);
        close(grubbs_critical(n, 0.025), two_sided, 0.0006);
    }
    close(grubbs_critical(5, 0.01), 1.749, 0.0006);
    close(grubbs_critical(10, 0.01), 2.410, 0.0006);
}

/// JCGM 100:2008, example in G.4.1 (from memory): 0.25 %, 0.57 %, 0.82 % with n = 10, 5, 15: u_c 1.03 %, ν_eff 19.0, U95 2.2 %.
#[test]
fn the_example_of_the_guide_to_uncertainty_comes_out() {
    let parts = [(0.25, 9.0), (0.57, 4.0), (0.82, 14.0)]
        .map(|(standard, degrees_of_freedom)| Contribution { standard, degrees_of_freedom });
    let combined = combined_uncertainty(&parts);
    close(combined.standard, 1.03, 0.005);
    close(combined.degrees_of_freedom, 19.0, 0.05);
    close(combined.expanded(0.95), 1.0295 * 2.101, 0.002); // 18.9987 is truncated to 18, t95 = 2.101
    close(t_quantile(0.975, 19.0) * combined.standard, 2.155, 0.001); // with 19, as printed: 2.2 %
}

/// A gauge of ±(1 µm + 1 %) with 1 µm steps, readings 112, 114, 113 (computed from JCGM 100).
#[test]
fn one_spot_with_gauge_and_steps_combined() {
    let gauge = Gauge {
        accuracy_fixed_um: Micrometres::of(1.0),
        accuracy_share: 0.01,
        resolution_um: Micrometres::of(1.0),
        ..Gauge::default()
    };
    let combined = combined_uncertainty(&[
        Contribution::of_mean(1.0, 3),
        gauge.accuracy_contribution(113.0),
        gauge.resolution_contribution(),
    ]);
    close(gauge.accuracy_contribution(113.0).standard, 1.230, 0.0005);
    close(gauge.resolution_contribution().standard, 0.289, 0.0005);
    close(combined.standard, 1.389, 0.0005);
    close(combined.degrees_of_freedom, 66.0, 1.5);
    close(combined.expanded(0.95), 2.77, 0.01);
}

/// Box, Hunter & Hunter 1978, p. 97 ff: wear of two materials on the shoes of ten boys (values from memory; figures computed).
#[test]
fn the_shoes_wear_as_published() {
    let a = [13.2, 8.2, 10.9, 14.3, 10.7, 6.6, 9.5, 10.8, 8.8, 13.3];
    let b = [14.0, 8.8, 11.2, 14.2, 11.8, 6.4, 9.8, 11.3, 9.3, 13.6];
    let change = paired_change(&b, &a, 0.95, 0.0).unwrap();
    assert_eq!(change.n, 10);
    close(change.mean, 0.41, 1e-9);
    close(change.sd, 0.387, 0.0005);
    close(change.t, 3.349, 0.0005);
    close(change.p, 0.0085, 0.00005);
    close(change.low, 0.133, 0.0005);
    close(change.high, 0.687, 0.0005);
    assert!(change.shown());
}

/// Student 1908, hours of sleep gained with two drugs (data from memory; figures computed).
#[test]
fn student_s_sleep_data() {
    let first = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
    let second = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
    let change = paired_change(&first, &second, 0.95, 0.0).unwrap();
    close(change.mean, 1.58, 1e-9);
    close(change.sd, 1.230, 0.0005);
    close(change.t, 4.062, 0.0005);
    close(change.p, 0.00283, 0.000_005);
}

/// Pairs of spots needed for a change, one-sided 5 %, power 90 % (computed with another noncentral t).
#[test]
fn pairs_that_show_a_removal() {
    for (sd, readings, needed) in [
        (0.3, 3, [4, 3, 2, 2]),
        (0.5, 3, [8, 4, 3, 3]),
        (1.0, 1, [70, 19, 6, 4]),
        (1.0, 3, [25, 8, 4, 3]),
        (1.0, 5, [16, 6, 3, 3]),
        (1.5, 3, [53, 15, 5, 4]),
    ] {
        for (change, expected) in [0.5, 1.0, 2.0, 3.0].into_iter().zip(needed) {
            assert_eq!(pairs_needed(sd, readings, change), Some(expected), "sd {sd}, {readings} readings, {change} µm");
        }
    }
}
