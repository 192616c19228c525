//! Gloss against Fresnel's equations and published rules. The source stands beside each check.

use lapwright::measure::{
    GlossChange, GlossGeometry, REFERENCE_INDEX, compare_gloss, gloss_change, haze_index, reflectance, smooth_gloss,
};

#[track_caller]
fn close(actual: f64, expected: f64, tolerance: f64) {
    assert!((actual - expected).abs() <= tolerance, "{actual} is not within {tolerance} of {expected}");
}

/// Reflectance of the reference glass, n = 1.567 (computed; the same figures from memory of NIST SP 250-70).
#[test]
fn the_reference_glass_reflects_as_fresnel_says() {
    for (degrees, expected) in [(20.0, 0.049_078), (60.0, 0.100_056), (85.0, 0.619_148)] {
        close(reflectance(REFERENCE_INDEX, degrees), expected, 5e-7);
    }
}

/// At 0° the reflectance is ((n−1)/(n+1))² (textbook), and a surface of index 1 reflects nothing.
#[test]
fn reflectance_has_the_right_limits() {
    for n in [1.3, 1.5, 1.567, 2.4] {
        close(reflectance(n, 0.0), ((n - 1.0) / (n + 1.0_f64)).powi(2), 1e-12);
    }
    close(reflectance(1.0, 45.0), 0.0, 1e-12);
}

/// At Brewster's angle, tan θ = n, only light across the plane of incidence is reflected: R = ((n² − 1)/(n² + 1))²/2 (textbook).
#[test]
fn at_brewsters_angle_half_the_light_is_lost() {
    for n in [1.4, 1.52, 1.567_f64] {
        let expected = ((n * n - 1.0) / (n * n + 1.0)).powi(2) / 2.0;
        close(reflectance(n, n.atan().to_degrees()), expected, 1e-12);
    }
}

/// Gloss of smooth surfaces against the reference (computed from Fresnel's equations): a perfect clear of n = 1.50 to 1.53 can't
/// reach 100.
#[test]
fn a_perfect_clear_coat_does_not_reach_a_hundred() {
    for (n, at_20, at_60, at_85) in [
        (1.4585, 71.37, 82.15, 98.14),
        (1.500, 82.05, 89.14, 98.97),
        (1.520, 87.32, 92.43, 99.32),
        (1.540, 92.67, 95.68, 99.63),
        (1.567, 100.0, 100.0, 100.0),
        (1.600, 109.12, 105.18, 100.39),
    ] {
        close(smooth_gloss(n, GlossGeometry::Deg20), at_20, 0.006);
        close(smooth_gloss(n, GlossGeometry::Deg60), at_60, 0.006);
        close(smooth_gloss(n, GlossGeometry::Deg85), at_85, 0.006);
    }
}

/// ASTM D523 as given on a summary page: 20° above 70 units at 60°, 85° below 10. D4039: haze index is G60 − G20.
#[test]
fn the_geometry_follows_the_first_reading() {
    assert_eq!(GlossGeometry::after_reading_at_60(88.0), GlossGeometry::Deg20);
    assert_eq!(GlossGeometry::after_reading_at_60(70.0), GlossGeometry::Deg60);
    assert_eq!(GlossGeometry::after_reading_at_60(10.0), GlossGeometry::Deg60);
    assert_eq!(GlossGeometry::after_reading_at_60(9.9), GlossGeometry::Deg85);
    close(haze_index(92.0, 84.5), 7.5, 1e-12);
}

/// Our rule: less than two units is no change.
#[test]
fn a_small_change_of_gloss_is_none() {
    assert_eq!(gloss_change(84.0, 85.9), GlossChange::NotShown);
    assert_eq!(gloss_change(84.0, 86.0), GlossChange::Higher);
    assert_eq!(gloss_change(84.0, 81.5), GlossChange::Lower);
}

#[test]
fn readings_before_and_after_are_compared_by_their_means_in_one_geometry() {
    let geometry = GlossGeometry::Deg20;
    let up = compare_gloss(geometry, &[80.0, 84.0], &[88.0, 90.0, 92.0]).expect("both were read");
    assert_eq!((up.geometry, up.change), (geometry, GlossChange::Higher));
    close(up.means.0, 82.0, 1e-12);
    close(up.means.1, 90.0, 1e-12);
    assert_eq!(up.text, "82.0 before, 90.0 after at 20°: glossier than before.");
    let down = compare_gloss(geometry, &[90.0], &[85.0]).expect("both were read");
    assert!(down.text.ends_with("duller than before."), "{}", down.text);
    assert_eq!(compare_gloss(geometry, &[90.0], &[91.0]).expect("read").change, GlossChange::NotShown);
    assert_eq!(compare_gloss(geometry, &[], &[91.0]), None);
    assert_eq!(compare_gloss(geometry, &[90.0], &[]), None);
}
