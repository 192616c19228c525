//! Where on a panel to read the film, and whether the gauge can read it at all.

use crate::geometry::{MapPoint, Outline};
use crate::measure::GaugePrinciple;
use crate::units::SquareMetres;
use crate::vehicle::{Panel, Substrate};

/// Readings stay at least this far from edges and seams: 25 mm, from memory of SSPC-PA 2 and ASTM D7091, where the gauge
/// was not verified for edges. The map is near enough to scale for that.
const FROM_EDGE_MM: f32 = 25.0;

/// Says why a gauge can't read a substrate, if it can't.
///
/// # Errors
/// The reason, as a sentence for a person. Source: ISO 2178 (magnetic induction on magnetic steel), ISO 2360 (eddy current on
/// conductors that are not magnetic).
pub fn gauge_reads(principle: GaugePrinciple, substrate: Substrate) -> Result<(), String> {
    use {GaugePrinciple as G, Substrate as S};
    match (principle, substrate) {
        (_, S::Glass) => Err("there is no paint on glass".to_owned()),
        (G::MagneticInduction, S::Steel) | (G::EddyCurrent, S::Aluminium) | (G::Ultrasonic, _) => Ok(()),
        (G::MagneticInduction, other) => Err(format!("a magnetic gauge reads on steel only, this is {}", other.name())),
        (G::EddyCurrent, S::Steel) => Err("an eddy-current gauge reads on aluminium only, this is steel".to_owned()),
        (G::EddyCurrent, other) => Err(format!("an eddy-current gauge reads on aluminium only, this is {}", other.name())),
    }
}

/// How many spots a panel wants: five on a large panel (our own rule, after the five spots an area of SSPC-PA 2), fewer on a
/// small one.
pub fn spot_count(area: SquareMetres) -> usize {
    match area.m2() {
        a if a < 0.05 => 1,
        a if a < 0.15 => 2,
        a if a < 0.4 => 3,
        _ => 5,
    }
}

/// Places to read on a panel, front to rear: spread as far apart as they go, away from edges. Empty on a panel too narrow
/// for any.
pub fn recommended_spots(panel: &Panel) -> Vec<MapPoint> {
    let mut candidates = inner_points(&panel.outline);
    if candidates.is_empty() {
        candidates.push(panel.outline.label_place(1.0).centre);
    }
    let mut chosen = vec![farthest_from(&candidates, &[panel.outline.label_place(1.0).centre], false)];
    while chosen.len() < spot_count(panel.area).min(candidates.len()) {
        chosen.push(farthest_from(&candidates, &chosen, true));
    }
    chosen.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    chosen
}

/// A grid of points inside that keep their distance from the edge.
fn inner_points(outline: &Outline) -> Vec<MapPoint> {
    let bounds = outline.bounds();
    let edge = outline.flattened(5.0);
    let step = (bounds.width().max(bounds.height()) / 24.0).max(10.0);
    let mut points = Vec::new();
    let mut y = bounds.min.y + step / 2.0;
    while y < bounds.max.y {
        let mut x = bounds.min.x + step / 2.0;
        while x < bounds.max.x {
            let point = MapPoint::new(x, y);
            if outline.contains(point) && distance_to_edge(&edge, point) >= FROM_EDGE_MM {
                points.push(point);
            }
            x += step;
        }
        y += step;
    }
    points
}

fn distance_to_edge(edge: &[MapPoint], point: MapPoint) -> f32 {
    let next = edge.iter().cycle().skip(1);
    edge.iter().zip(next).map(|(a, b)| distance_to_segment(*a, *b, point)).fold(f32::INFINITY, f32::min)
}

fn distance_to_segment(a: MapPoint, b: MapPoint, point: MapPoint) -> f32 {
    let along = b - a;
    let t = if along.square_length() > 0.0 { (point - a).dot(along) / along.square_length() } else { 0.0 };
    (a + along * t.clamp(0.0, 1.0) - point).length()
}

/// The candidate farthest from (or nearest to) a set of points.
fn farthest_from(candidates: &[MapPoint], points: &[MapPoint], farthest: bool) -> MapPoint {
    let distance = |c: &MapPoint| points.iter().map(|p| (*p - *c).square_length()).fold(f32::INFINITY, f32::min);
    let by_distance = |a: &&MapPoint, b: &&MapPoint| distance(a).total_cmp(&distance(b));
    let found = if farthest { candidates.iter().max_by(by_distance) } else { candidates.iter().min_by(by_distance) };
    found.copied().unwrap_or_else(MapPoint::origin)
}
