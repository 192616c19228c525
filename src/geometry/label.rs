//! The best place for a label inside an outline.
//!
//! A box of fixed aspect fits inside a polygon when no edge comes nearer to its centre than the box reaches. With x divided by
//! the aspect the box is a square and "nearer" is the larger of the two coordinate distances. The largest square is searched
//! by halving cells, best bound first; the idea for round distances is known as the pole of inaccessibility by quadtree.

use super::outline::Outline;
use super::space::MapPoint;
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// Where a label fits: an upright box inside the outline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LabelPlace {
    /// Middle of the box.
    pub centre: MapPoint,
    /// Width along map x, mm.
    pub width: f32,
    /// Height along map y, mm.
    pub height: f32,
}

struct Cell {
    x: f64,
    y: f64,
    half: f64,
    inside: f64,
}

impl Cell {
    fn bound(&self) -> f64 {
        self.inside + self.half
    }
}
impl PartialEq for Cell {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}
impl Eq for Cell {}
impl PartialOrd for Cell {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Cell {
    fn cmp(&self, other: &Self) -> Ordering {
        self.bound().total_cmp(&other.bound())
    }
}

pub(super) fn place(outline: &Outline, aspect: f32) -> LabelPlace {
    let aspect = if aspect.is_finite() { f64::from(aspect).clamp(0.05, 20.0) } else { 1.0 };
    let b = outline.bounds();
    let size = f64::from(b.width().max(b.height()));
    let tolerance = (size / 1000.0).max(0.05);
    let polygon: Vec<(f64, f64)> =
        outline.flattened((tolerance * 0.5) as f32).iter().map(|p| (f64::from(p.x) / aspect, f64::from(p.y))).collect();
    let (x0, x1) = (f64::from(b.min.x) / aspect, f64::from(b.max.x) / aspect);
    let (y0, y1) = (f64::from(b.min.y), f64::from(b.max.y));
    let step = (x1 - x0).min(y1 - y0).max(size / 200.0);
    let new = |x: f64, y: f64, half: f64| Cell { x, y, half, inside: depth(&polygon, x, y) };
    let mut best = new(0.5 * (x0 + x1), 0.5 * (y0 + y1), 0.0);
    let mut queue = BinaryHeap::new();
    for i in 0..((x1 - x0) / step).ceil().max(1.0) as usize {
        for j in 0..((y1 - y0) / step).ceil().max(1.0) as usize {
            queue.push(new(x0 + (i as f64 + 0.5) * step, y0 + (j as f64 + 0.5) * step, 0.5 * step));
        }
    }
    while let Some(cell) = queue.pop() {
        if cell.bound() <= best.inside + tolerance {
            break;
        }
        let half = 0.5 * cell.half;
        for (dx, dy) in [(-half, -half), (half, -half), (-half, half), (half, half)] {
            queue.push(new(cell.x + dx, cell.y + dy, half));
        }
        if cell.inside > best.inside {
            best = cell;
        }
    }
    let reach = (best.inside - tolerance * 0.5).max(0.0);
    LabelPlace {
        centre: MapPoint::new((best.x * aspect) as f32, best.y as f32),
        width: (2.0 * reach * aspect) as f32,
        height: (2.0 * reach) as f32,
    }
}

/// Half the side of the largest upright square round the point inside the polygon; negative outside.
fn depth(polygon: &[(f64, f64)], x: f64, y: f64) -> f64 {
    let mut inside = false;
    let mut least = f64::INFINITY;
    let mut previous = polygon[polygon.len() - 1];
    for &point in polygon {
        let ((ax, ay), (bx, by)) = (previous, point);
        if (ay > y) != (by > y) && x < ax + (bx - ax) * (y - ay) / (by - ay) {
            inside = !inside;
        }
        least = least.min(square_distance((ax - x, ay - y), (bx - x, by - y)));
        previous = point;
    }
    if inside { least } else { -least }
}

/// The larger of the two coordinate distances from the origin to the nearest point of a line from `a` to `b`.
fn square_distance(a: (f64, f64), b: (f64, f64)) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let at = |t: f64| (a.0 + t * dx).abs().max((a.1 + t * dy).abs());
    // A convex function, linear between the places where a coordinate or their difference or sum passes zero.
    let breaks = [(-a.0, dx), (-a.1, dy), (a.1 - a.0, dx - dy), (-a.0 - a.1, dx + dy)];
    let inner = breaks.iter().filter(|(_, d)| d.abs() > 1e-12).map(|(n, d)| n / d).filter(|t| *t > 0.0 && *t < 1.0);
    inner.map(at).fold(at(0.0).min(at(1.0)), f64::min)
}
