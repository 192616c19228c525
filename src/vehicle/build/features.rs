//! Features on both sides, and which panels they touch.

use super::mirrored;
use crate::geometry::{Knot, MapCurve, MapPoint, smooth_line};
use crate::vehicle::entries::Number;
use crate::vehicle::feature::{Feature, FeatureShape};
use crate::vehicle::id::Side;
use crate::vehicle::schema::{FeatureEntry, Place, ShapeEntry, Sides, TemplateFile};
use crate::vehicle::template::Template;
use std::collections::BTreeSet;

/// Handle length of a quarter circle of radius one as a Bézier curve: 4/3 (√2 - 1), textbook.
const QUARTER: f32 = 0.552_284_8;

pub(super) fn features(file: &TemplateFile, template: &Template) -> Vec<Feature> {
    let mut features = Vec::new();
    for entry in &file.features {
        let (at, shape) = shape(&entry.shape);
        for (side, mirror) in sides(entry, at, &shape) {
            let turned: Vec<MapCurve> = shape.curves().iter().map(|c| c.map(|p| mirrored(p, *mirror))).collect();
            let closed = matches!(shape, FeatureShape::Loop(_));
            let at = mirrored(at, *mirror);
            features.push(Feature {
                kind: entry.kind,
                side: *side,
                at,
                panels: touched(at, &turned, template),
                shape: if closed { FeatureShape::Loop(turned) } else { FeatureShape::Stroke(turned) },
            });
        }
    }
    features
}

fn sides(entry: &FeatureEntry, at: MapPoint, shape: &FeatureShape) -> &'static [(Side, f32)] {
    let across = at.y == 0.0 && matches!(shape, FeatureShape::Loop(_));
    match entry.side {
        _ if across => &[(Side::Centre, 1.0)],
        Sides::Both => &[(Side::Left, 1.0), (Side::Right, -1.0)],
        Sides::Left => &[(Side::Left, 1.0)],
        Sides::Right => &[(Side::Right, -1.0)],
        Sides::Centre => &[(Side::Centre, 1.0)],
    }
}

fn shape(entry: &ShapeEntry) -> (MapPoint, FeatureShape) {
    match entry {
        ShapeEntry::Line(places) => {
            let mut knots: Vec<Knot> = places.iter().map(|p| Knot { at: point(*p), direction: None }).collect();
            knots.dedup_by(|a, b| a.at == b.at);
            square_to_centreline(&mut knots);
            let middle = knots.get(knots.len() / 2).map_or_else(MapPoint::zero, |k| k.at);
            (middle, FeatureShape::Stroke(smooth_line(&knots)))
        }
        ShapeEntry::Box { at, size, radius, turn } => {
            (point(*at), FeatureShape::Loop(rounded_box(point(*at), *size, *radius, *turn)))
        }
        ShapeEntry::Circle { at, radius } => {
            let size = (Number::of(2.0 * radius.get()), Number::of(2.0 * radius.get()));
            (point(*at), FeatureShape::Loop(rounded_box(point(*at), size, *radius, Number::of(0.0))))
        }
    }
}

/// A line that ends on the centreline meets its mirror image there without a kink.
fn square_to_centreline(knots: &mut [Knot]) {
    let square = std::f64::consts::FRAC_PI_2;
    let inner = knots.len() > 1 && knots[1].at.y != 0.0;
    if let Some(first) = knots.first_mut().filter(|k| inner && k.at.y == 0.0) {
        first.direction = Some(square);
    }
    let inner = knots.len() > 1 && knots[knots.len() - 2].at.y != 0.0;
    if let Some(last) = knots.last_mut().filter(|k| inner && k.at.y == 0.0) {
        last.direction = Some(-square);
    }
}

fn point(p: Place) -> MapPoint {
    MapPoint::new(p.0.f32(), p.1.f32())
}

fn rounded_box(at: MapPoint, size: Place, radius: Number, turn: Number) -> Vec<MapCurve> {
    let (w, h) = (size.0.f32().abs() / 2.0, size.1.f32().abs() / 2.0);
    let r = radius.f32().clamp(0.0, w.min(h));
    let (sin, cos) = (turn.get().to_radians() as f32).sin_cos();
    let place = |x: f32, y: f32| at + euclid::vec2(x * cos - y * sin, x * sin + y * cos);
    let mut curves = Vec::new();
    // Corners in order, each with the direction in and out of it.
    for (cx, cy, ix, iy) in [(w, -h, 1.0, 0.0), (w, h, 0.0, 1.0), (-w, h, -1.0, 0.0), (-w, -h, 0.0, -1.0)] {
        let (ox, oy) = (-iy, ix);
        let start = place(cx - ix * r, cy - iy * r);
        let end = place(cx + ox * r, cy + oy * r);
        let k = r * (1.0 - QUARTER);
        if r > 0.0 {
            curves.push(MapCurve::cubic(start, place(cx - ix * k, cy - iy * k), place(cx + ox * k, cy + oy * k), end));
        }
        let (nx, ny) = if ix == 0.0 { (-cx, cy) } else { (cx, -cy) };
        let next = place(nx - ox * r, ny - oy * r);
        if (next - end).length() > 1e-3 {
            curves.push(MapCurve::line(end, next));
        }
    }
    close(curves)
}

/// Lets every curve start exactly where the one before ends.
fn close(mut curves: Vec<MapCurve>) -> Vec<MapCurve> {
    let Some(mut previous) = curves.last().map(|c| c.to) else { return curves };
    for curve in &mut curves {
        curve.from = previous;
        previous = curve.to;
    }
    curves
}

fn touched(at: MapPoint, curves: &[MapCurve], template: &Template) -> Vec<usize> {
    let along = curves.iter().flat_map(|c| [c.at(0.02), c.at(0.5), c.at(0.98)]);
    let panels: BTreeSet<usize> = std::iter::once(at).chain(along).filter_map(|p| template.panel_at(p)).collect();
    panels.into_iter().collect()
}
