//! One curve between two points: straight, or a cubic Bézier curve.

use super::space::{MapPoint, MapRect};
use lyon::geom::CubicBezierSegment;

/// A curve from one point to another: a straight line when it has no control points, else a cubic Bézier curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MapCurve {
    /// Start.
    pub from: MapPoint,
    /// First control point; `None` on a straight line.
    pub ctrl1: Option<MapPoint>,
    /// Second control point; `None` on a straight line.
    pub ctrl2: Option<MapPoint>,
    /// End.
    pub to: MapPoint,
}

impl MapCurve {
    /// The straight line between two points.
    pub fn line(from: MapPoint, to: MapPoint) -> Self {
        Self { from, ctrl1: None, ctrl2: None, to }
    }

    /// A cubic Bézier curve.
    pub fn cubic(from: MapPoint, ctrl1: MapPoint, ctrl2: MapPoint, to: MapPoint) -> Self {
        Self { from, ctrl1: Some(ctrl1), ctrl2: Some(ctrl2), to }
    }

    /// Whether it has no control points.
    pub fn is_line(&self) -> bool {
        self.ctrl1.is_none() && self.ctrl2.is_none()
    }

    /// The four points of the same curve as a cubic; a missing control point stands at its third of the straight line.
    pub fn points(&self) -> [MapPoint; 4] {
        let ctrl1 = self.ctrl1.unwrap_or_else(|| self.from.lerp(self.to, 1.0 / 3.0));
        let ctrl2 = self.ctrl2.unwrap_or_else(|| self.from.lerp(self.to, 2.0 / 3.0));
        [self.from, ctrl1, ctrl2, self.to]
    }

    /// The same curve run backwards.
    #[must_use]
    pub fn reversed(&self) -> Self {
        Self { from: self.to, ctrl1: self.ctrl2, ctrl2: self.ctrl1, to: self.from }
    }

    /// The curve with every point sent through `f`.
    #[must_use]
    pub fn map(&self, f: impl Fn(MapPoint) -> MapPoint) -> Self {
        Self { from: f(self.from), ctrl1: self.ctrl1.map(&f), ctrl2: self.ctrl2.map(&f), to: f(self.to) }
    }

    /// The point at `t` in 0..=1.
    pub fn at(&self, t: f32) -> MapPoint {
        if self.is_line() {
            return self.from.lerp(self.to, t);
        }
        self.segment().sample(t).cast_unit()
    }

    /// The two parts before and after `t`, by de Casteljau's construction.
    pub fn split(&self, t: f32) -> (Self, Self) {
        if self.is_line() {
            let mid = self.at(t);
            return (Self::line(self.from, mid), Self::line(mid, self.to));
        }
        let (a, b) = self.segment().split(t);
        (Self::from_segment(&a), Self::from_segment(&b))
    }

    /// Points along the curve so that straight lines between them stay within `tolerance` mm; the start is left out.
    pub fn flattened(&self, tolerance: f32) -> Vec<MapPoint> {
        if self.is_line() {
            return vec![self.to];
        }
        let mut points = Vec::new();
        self.segment().for_each_flattened(tolerance.max(1e-3), &mut |line| points.push(line.to.cast_unit()));
        points
    }

    /// The smallest upright box round the curve.
    pub fn bounds(&self) -> MapRect {
        let b = self.segment().bounding_box();
        MapRect::new(b.min.cast_unit(), b.max.cast_unit())
    }

    /// Length in mm, to about 0.01 mm.
    pub fn length(&self) -> f32 {
        self.segment().approximate_length(0.01)
    }

    /// Signed area between the curve and the origin, mm², exact for the cubic by Green's theorem; summed round a closed loop
    /// it is the area inside.
    pub fn area_share(&self) -> f64 {
        let [a, b, c, d] = self.points().map(|p| (f64::from(p.x), f64::from(p.y)));
        let cross = |p: (f64, f64), q: (f64, f64)| p.0 * q.1 - p.1 * q.0;
        if self.is_line() {
            return cross(a, d) / 2.0;
        }
        let outer = 6.0 * cross(a, b) + 3.0 * cross(a, c) + cross(a, d);
        let inner = 3.0 * cross(b, c) + 3.0 * cross(b, d) + 6.0 * cross(c, d);
        (outer + inner) / 20.0
    }

    /// Whether every coordinate is a finite number.
    pub fn is_finite(&self) -> bool {
        self.points().iter().all(|p| p.x.is_finite() && p.y.is_finite())
    }

    pub(crate) fn segment(&self) -> CubicBezierSegment<f32> {
        let [from, ctrl1, ctrl2, to] = self.points().map(euclid::Point2D::cast_unit);
        CubicBezierSegment { from, ctrl1, ctrl2, to }
    }

    fn from_segment(s: &CubicBezierSegment<f32>) -> Self {
        Self::cubic(s.from.cast_unit(), s.ctrl1.cast_unit(), s.ctrl2.cast_unit(), s.to.cast_unit())
    }
}
