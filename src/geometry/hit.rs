//! What is inside a closed curve: a ray to the right, counted exactly on the curves.
//!
//! Every curve is cut where it turns back in y. A ray at height y then meets a piece once or not at all, and where its box
//! does not decide, bisection does. Curves are cut in a direction of their own, not in that of the loop, so that two panels
//! on either side of a seam do the same arithmetic: a point belongs to exactly one of them.

use super::curve::MapCurve;
use super::space::MapPoint;

/// A piece of a curve that only rises in y.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Rise {
    x: [f64; 4],
    y: [f64; 4],
    x_min: f64,
    x_max: f64,
}

impl Rise {
    /// Whether a ray from the point to the right crosses this piece; half-open at the upper end.
    pub(crate) fn crosses(&self, px: f64, py: f64) -> bool {
        if py < self.y[0] || py >= self.y[3] || px >= self.x_max {
            return false;
        }
        px < self.x_min || px < self.x_at(py)
    }

    /// x where the piece has height `y`, by bisection to the last bit that matters (2^-40 of the piece).
    fn x_at(&self, y: f64) -> f64 {
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..40 {
            let mid = 0.5 * (low + high);
            if bezier(&self.y, mid) <= y {
                low = mid;
            } else {
                high = mid;
            }
        }
        bezier(&self.x, low)
    }
}

/// The rising pieces of a curve; level pieces have none, as a ray does not cross them.
pub(crate) fn rises(curve: &MapCurve, out: &mut Vec<Rise>) {
    let key = |p: MapPoint| (p.x, p.y);
    let own = if key(curve.from) > key(curve.to) { curve.reversed() } else { *curve };
    let points = own.points();
    let x = points.map(|p| f64::from(p.x));
    let y = points.map(|p| f64::from(p.y));
    let mut cuts = vec![0.0];
    if !own.is_line() {
        cuts.extend(turning_points(&y));
    }
    cuts.push(1.0);
    for pair in cuts.windows(2) {
        let (mut px, mut py) = (part(&x, pair[0], pair[1]), part(&y, pair[0], pair[1]));
        if py[0] > py[3] {
            px.reverse();
            py.reverse();
        }
        if py[0] < py[3] {
            let x_min = px.iter().copied().fold(f64::INFINITY, f64::min);
            let x_max = px.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            out.push(Rise { x: px, y: py, x_min, x_max });
        }
    }
}

/// Where the curve turns back: the roots of its derivative inside 0..1, in order.
fn turning_points(y: &[f64; 4]) -> Vec<f64> {
    let [d0, d1, d2] = [y[1] - y[0], y[2] - y[1], y[3] - y[2]];
    let (a, b, c) = (d0 - 2.0 * d1 + d2, 2.0 * (d1 - d0), d0);
    let mut roots = Vec::new();
    if a.abs() < 1e-12 {
        if b.abs() > 1e-12 {
            roots.push(-c / b);
        }
    } else {
        let disc = b * b - 4.0 * a * c;
        if disc > 0.0 {
            let q = -0.5 * (b + b.signum() * disc.sqrt());
            roots.push(q / a);
            if q.abs() > 1e-300 {
                roots.push(c / q);
            }
        }
    }
    roots.retain(|t| *t > 0.0 && *t < 1.0);
    roots.sort_by(f64::total_cmp);
    roots
}

/// The part of a Bézier curve between two parameters, by blossoming.
fn part(p: &[f64; 4], a: f64, b: f64) -> [f64; 4] {
    [blossom(p, a, a, a), blossom(p, a, a, b), blossom(p, a, b, b), blossom(p, b, b, b)]
}

fn blossom(p: &[f64; 4], r: f64, s: f64, t: f64) -> f64 {
    let mix = |a: f64, b: f64, u: f64| a + (b - a) * u;
    let one = [mix(p[0], p[1], r), mix(p[1], p[2], r), mix(p[2], p[3], r)];
    let two = [mix(one[0], one[1], s), mix(one[1], one[2], s)];
    mix(two[0], two[1], t)
}

fn bezier(p: &[f64; 4], t: f64) -> f64 {
    blossom(p, t, t, t)
}
