//! Ways on the floor round the vehicle.
//!
//! The body is a rectangle, length by width, with a little air around it. The shortest way between two places outside it is
//! straight or bends at its corners; it is found over the six places (two ends, four corners) that can see each other. Being
//! the shortest, these ways keep the triangle inequality, and so do they when rounded up to whole seconds.

use crate::geometry::{FloorPoint, FloorVector};
use crate::units::Seconds;

/// Air kept between a walker's path and the body, mm; less where somebody stands nearer. Our estimate.
const AIR_MM: f64 = 250.0;

type P = (f64, f64);

/// Shortest ways between all places round a body, mm.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Ways {
    mm: Vec<Vec<f64>>,
}

impl Ways {
    /// Works them out. **Domain**: places outside the body; a way from inside leads straight out.
    pub(super) fn new(places: &[FloorPoint], length_mm: f64, width_mm: f64) -> Self {
        let half = 0.5 * width_mm;
        let distance = |p: &FloorPoint| distance_to_body(*p, length_mm, width_mm);
        let air = places.iter().map(distance).fold(AIR_MM, f64::min).max(0.0);
        let low = (-air, -half - air);
        let high = (length_mm + air, half + air);
        let corners = [low, (low.0, high.1), high, (high.0, low.1)];
        let mut nodes: Vec<P> = places.iter().map(|p| (f64::from(p.x), f64::from(p.y))).collect();
        nodes.extend(corners);
        let n = nodes.len();
        let mut mm = vec![vec![f64::INFINITY; n]; n];
        for i in 0..n {
            for j in 0..n {
                if i == j || sees(nodes[i], nodes[j], low, high) {
                    mm[i][j] = (nodes[i].0 - nodes[j].0).hypot(nodes[i].1 - nodes[j].1);
                }
            }
        }
        // Only corners bend a way, so only they are tried in between (Floyd's algorithm).
        for k in places.len()..n {
            for i in 0..n {
                for j in 0..n {
                    mm[i][j] = mm[i][j].min(mm[i][k] + mm[k][j]);
                }
            }
        }
        mm.truncate(places.len());
        for row in &mut mm {
            row.truncate(places.len());
        }
        Self { mm }
    }

    pub(super) fn mm(&self, a: usize, b: usize) -> f64 {
        self.mm.get(a).and_then(|row| row.get(b)).copied().unwrap_or(f64::INFINITY)
    }

    /// Whole seconds at a speed in m/s, rounded up: square, symmetric, zero from a place to itself.
    pub(super) fn seconds(&self, metres_per_second: f64) -> Vec<Vec<Seconds>> {
        let speed = if metres_per_second > 0.01 { metres_per_second } else { 0.01 };
        let whole = |mm: f64| (mm / 1000.0 / speed - 1e-9).ceil().clamp(0.0, 1e9) as Seconds;
        let n = self.mm.len();
        let mut seconds: Vec<Vec<Seconds>> =
            self.mm.iter().map(|row| row.iter().map(|mm| whole(*mm)).collect()).collect();
        // Rounding up keeps the triangle inequality but for the last bits of the division; this makes it certain.
        for k in 0..n {
            for i in 0..n {
                for j in 0..n {
                    seconds[i][j] = seconds[i][j].min(seconds[i][k] + seconds[k][j]);
                }
            }
        }
        seconds
    }
}

/// Distance of a place from the body rectangle, mm; zero inside.
pub(super) fn distance_to_body(p: FloorPoint, length_mm: f64, width_mm: f64) -> f64 {
    let (x, y) = (f64::from(p.x), f64::from(p.y).abs());
    let out = FloorVector::new((x - length_mm).max(-x).max(0.0) as f32, (y - 0.5 * width_mm).max(0.0) as f32);
    f64::from(out.length())
}

/// Whether the straight way from `a` to `b` stays out of the inside of a box (Liang and Barsky's clipping).
fn sees(a: P, b: P, low: P, high: P) -> bool {
    let (mut enter, mut leave) = (0.0_f64, 1.0_f64);
    for (p, q, l, h) in [(a.0, b.0, low.0, high.0), (a.1, b.1, low.1, high.1)] {
        let d = q - p;
        let (l, h) = (l + 1e-6, h - 1e-6);
        if d.abs() < 1e-9 {
            if p <= l || p >= h {
                return true;
            }
        } else {
            let (t0, t1) = ((l - p) / d, (h - p) / d);
            enter = enter.max(t0.min(t1));
            leave = leave.min(t0.max(t1));
        }
    }
    enter >= leave
}
