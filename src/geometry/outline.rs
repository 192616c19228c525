//! A closed curved outline.

use super::curve::MapCurve;
use super::hit::{Rise, rises};
use super::label::{self, LabelPlace};
use super::space::{MapPoint, MapRect};
use crate::say;
use lyon::path::Path;

/// Why curves are no outline.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum OutlineError {
    /// Nothing to go round.
    #[error("{}", say!("vehicle-outline-none"))]
    Empty,
    /// A coordinate is NaN or infinite.
    #[error("{}", say!("vehicle-outline-number", curve = *.0))]
    NotFinite(usize),
    /// A curve does not start where the one before it ends.
    #[error("{}", say!("vehicle-outline-open", curve = *.0))]
    Open(usize),
}

/// A closed outline of straight and cubic curves, with what is needed to test points quickly.
#[derive(Debug, Clone)]
pub struct Outline {
    curves: Vec<MapCurve>,
    path: Path,
    rises: Vec<Rise>,
    bounds: MapRect,
}

impl PartialEq for Outline {
    fn eq(&self, other: &Self) -> bool {
        self.curves == other.curves
    }
}

impl Outline {
    /// Closes a loop of curves, each starting exactly where the one before ends.
    ///
    /// # Errors
    /// [`OutlineError`] when the loop is empty, open or has a coordinate that is not finite.
    pub fn new(curves: Vec<MapCurve>) -> Result<Self, OutlineError> {
        let last = curves.last().ok_or(OutlineError::Empty)?;
        let mut previous = last.to;
        for (i, curve) in curves.iter().enumerate() {
            if !curve.is_finite() {
                return Err(OutlineError::NotFinite(i));
            }
            if curve.from != previous {
                return Err(OutlineError::Open(i));
            }
            previous = curve.to;
        }
        let mut pieces = Vec::new();
        let mut bounds = curves[0].bounds();
        for curve in &curves {
            rises(curve, &mut pieces);
            let b = curve.bounds();
            // Not `Box2D::union`, which leaves out boxes without height, and a level line has none.
            bounds = MapRect::new(bounds.min.min(b.min), bounds.max.max(b.max));
        }
        Ok(Self { path: path_of(&curves), curves, rises: pieces, bounds })
    }

    /// The smallest upright box round it, mm.
    pub fn bounds(&self) -> MapRect {
        self.bounds
    }

    /// Whether a point is inside; exact on the curves. A point on a seam is inside exactly one of the two panels.
    pub fn contains(&self, point: MapPoint) -> bool {
        let b = &self.bounds;
        if point.x < b.min.x || point.x > b.max.x || point.y < b.min.y || point.y > b.max.y {
            return false;
        }
        let (x, y) = (f64::from(point.x), f64::from(point.y));
        self.rises.iter().filter(|r| r.crosses(x, y)).count() % 2 == 1
    }

    /// Area inside on the map, mm²; not the area of the real panel.
    pub fn map_area_mm2(&self) -> f64 {
        self.signed_area_mm2().abs()
    }

    /// Map area, negative when the loop runs clockwise with y upwards.
    pub fn signed_area_mm2(&self) -> f64 {
        self.curves.iter().map(MapCurve::area_share).sum()
    }

    /// The curves in the order of the loop; never empty.
    pub fn curves(&self) -> &[MapCurve] {
        &self.curves
    }

    /// The same as a lyon path, for tessellation.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// The loop as points, straight lines between which stay within `tolerance` mm; the last joins the first.
    pub fn flattened(&self, tolerance: f32) -> Vec<MapPoint> {
        self.curves.iter().flat_map(|c| c.flattened(tolerance)).collect()
    }

    /// The largest upright box of a given `aspect` (width by height) that lies inside, for a label; to about 1 % of the box.
    pub fn label_place(&self, aspect: f32) -> LabelPlace {
        label::place(self, aspect)
    }

    /// The outline with every point sent through `f`, for example to scale or mirror it.
    ///
    /// Where `f` gives a coordinate that is not finite the outline is left as it was.
    #[must_use]
    pub fn map(&self, f: impl Fn(MapPoint) -> MapPoint) -> Self {
        let curves = self.curves.iter().map(|c| c.map(&f)).collect();
        Self::new(curves).unwrap_or_else(|_| self.clone())
    }
}

fn path_of(curves: &[MapCurve]) -> Path {
    let mut builder = Path::builder();
    builder.begin(curves[0].from.cast_unit());
    for curve in curves {
        if curve.is_line() {
            builder.line_to(curve.to.cast_unit());
        } else {
            let [_, c1, c2, to] = curve.points();
            builder.cubic_bezier_to(c1.cast_unit(), c2.cast_unit(), to.cast_unit());
        }
    }
    builder.end(true);
    builder.build()
}
