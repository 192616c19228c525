//! Smooth lines through named places, as a draughtsman would draw them with a spline.
//!
//! Source: J. D. Hobby, Smooth, Easy to Compute Interpolating Splines, Discrete & Computational Geometry 1 (1986) 123-140, in
//! the form of D. E. Knuth, The METAFONTbook (1986), sections 275-277 (formulas from memory; checked against circles and by
//! continuity in the tests). Tension is 1 everywhere and free ends have curl 1. Three points of a half circle give a half
//! circle to within 0.1 %.

use super::curve::MapCurve;
use super::space::MapPoint;
use euclid::Vector2D;

/// A place that a smooth line runs through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Knot {
    /// The place.
    pub at: MapPoint,
    /// The direction in which the line runs there, in radians from +x towards +y; free when `None`.
    pub direction: Option<f64>,
}

type Vector = Vector2D<f64, ()>;

/// The smooth line through the knots, one curve between each two: tangents agree at every knot, curvature nearly so.
///
/// **Domain**: at least two knots, neighbours apart; of fewer it is empty. Two knots without directions give a straight line.
pub fn smooth_line(knots: &[Knot]) -> Vec<MapCurve> {
    let mut curves = Vec::new();
    let mut first = 0;
    for last in 1..knots.len() {
        if knots[last].direction.is_some() || last + 1 == knots.len() {
            stretch(&knots[first..=last], &mut curves);
            first = last;
        }
    }
    curves
}

/// One stretch whose inner knots are all free.
fn stretch(knots: &[Knot], curves: &mut Vec<MapCurve>) {
    let chords: Vec<Vector> = knots
        .windows(2)
        .map(|k| Vector::new(f64::from(k[1].at.x - k[0].at.x), f64::from(k[1].at.y - k[0].at.y)))
        .collect();
    let ends = (knots[0].direction, knots[knots.len() - 1].direction);
    if chords.len() == 1 && ends == (None, None) {
        curves.push(MapCurve::line(knots[0].at, knots[1].at));
        return;
    }
    let (theta, turn) = angles(&chords, ends);
    for (k, chord) in chords.iter().enumerate() {
        let leave = theta[k];
        let arrive = -turn[k + 1] - theta[k + 1];
        let out = rotated(*chord, leave) * velocity(leave, arrive);
        let back = rotated(*chord, -arrive) * velocity(arrive, leave);
        let (from, to) = (knots[k].at, knots[k + 1].at);
        curves.push(MapCurve::cubic(from, from + out.cast().cast_unit(), to - back.cast().cast_unit(), to));
    }
}

/// Angle between the line and the chord after each knot, and the turn of the chords at each knot.
fn angles(chords: &[Vector], ends: (Option<f64>, Option<f64>)) -> (Vec<f64>, Vec<f64>) {
    let n = chords.len();
    let heading: Vec<f64> = chords.iter().map(|c| c.y.atan2(c.x)).collect();
    let length: Vec<f64> = chords.iter().map(|c| c.length().max(1e-9)).collect();
    let mut turn = vec![0.0; n + 1];
    for k in 1..n {
        turn[k] = wrapped(heading[k] - heading[k - 1]);
    }
    // A tridiagonal system: below * x[k-1] + middle * x[k] + above * x[k+1] = right.
    let mut below = vec![0.0; n + 1];
    let mut middle = vec![1.0; n + 1];
    let mut above = vec![0.0; n + 1];
    let mut right = vec![0.0; n + 1];
    if let Some(direction) = ends.0 {
        right[0] = wrapped(direction - heading[0]);
    } else {
        above[0] = 1.0;
        right[0] = -turn[1];
    }
    for k in 1..n {
        below[k] = 1.0 / length[k - 1];
        middle[k] = 2.0 / length[k - 1] + 2.0 / length[k];
        above[k] = 1.0 / length[k];
        right[k] = -2.0 * turn[k] / length[k - 1] - turn[k + 1] / length[k];
    }
    if let Some(direction) = ends.1 {
        right[n] = wrapped(direction - heading[n - 1]);
    } else {
        below[n] = 1.0;
    }
    (solve_tridiagonal(&below, &mut middle, &above, &mut right), turn)
}

/// Thomas's elimination; the rows of a spline are diagonally dominant but for free ends, where one step keeps them so.
fn solve_tridiagonal(below: &[f64], middle: &mut [f64], above: &[f64], right: &mut [f64]) -> Vec<f64> {
    let n = right.len();
    for k in 1..n {
        let factor = below[k] / middle[k - 1];
        middle[k] -= factor * above[k - 1];
        right[k] -= factor * right[k - 1];
    }
    let mut x = vec![0.0; n];
    for k in (0..n).rev() {
        let next = if k + 1 < n { above[k] * x[k + 1] } else { 0.0 };
        x[k] = (right[k] - next) / middle[k];
    }
    x
}

/// Share of the chord length that the control handle takes, by the angles at its own and at the far end.
fn velocity(own: f64, far: f64) -> f64 {
    let root5 = 5.0_f64.sqrt();
    let bend =
        2.0_f64.sqrt() * (own.sin() - far.sin() / 16.0) * (far.sin() - own.sin() / 16.0) * (own.cos() - far.cos());
    (2.0 + bend) / (3.0 * (1.0 + (root5 - 1.0) / 2.0 * own.cos() + (3.0 - root5) / 2.0 * far.cos()))
}

fn rotated(v: Vector, angle: f64) -> Vector {
    let (sin, cos) = angle.sin_cos();
    Vector::new(v.x * cos - v.y * sin, v.x * sin + v.y * cos)
}

/// The angle brought into -π..=π.
fn wrapped(angle: f64) -> f64 {
    let full = std::f64::consts::TAU;
    angle - full * (angle / full).round()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn knot(x: f32, y: f32) -> Knot {
        Knot { at: MapPoint::new(x, y), direction: None }
    }

    #[test]
    fn three_points_of_a_half_circle_give_a_half_circle() {
        let up = Some(std::f64::consts::FRAC_PI_2);
        let down = Some(-std::f64::consts::FRAC_PI_2);
        let mut knots = [knot(-1000.0, 0.0), knot(0.0, 1000.0), knot(1000.0, 0.0)];
        knots[0].direction = up;
        knots[2].direction = down;
        for curve in smooth_line(&knots) {
            for i in 0..=20 {
                let radius = curve.at(i as f32 / 20.0).to_vector().length();
                assert!((radius - 1000.0).abs() < 1.0, "{radius}");
            }
        }
    }

    #[test]
    fn tangents_agree_at_every_knot() {
        let curves = smooth_line(&[knot(0.0, 0.0), knot(300.0, 40.0), knot(500.0, 300.0), knot(1400.0, 350.0)]);
        for pair in curves.windows(2) {
            let before = pair[0].to - pair[0].points()[2];
            let after = pair[1].points()[1] - pair[1].from;
            assert!(before.angle_to(after).radians.abs() < 1e-3);
        }
    }

    #[test]
    fn points_on_a_straight_line_stay_straight() {
        for curve in smooth_line(&[knot(0.0, 0.0), knot(100.0, 0.0), knot(900.0, 0.0)]) {
            assert!(curve.points().iter().all(|p| p.y.abs() < 1e-3));
        }
    }
}
