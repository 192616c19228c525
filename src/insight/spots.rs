//! Where on a panel to read the film.

use crate::geometry::{MapPoint, Outline};
use crate::measure::{EDGE_DISTANCE_MM, spots_for};
use crate::vehicle::Panel;

/// Places to read on a panel, front to rear: spread as far apart as they go while staying away from edges; at least one.
pub fn recommended_spots(panel: &Panel) -> Vec<MapPoint> {
    recommended_places(panel, spots_for(panel.area))
}

/// So many places to read on a panel, front to rear; fewer where the panel has no room for more, at least one.
pub fn recommended_places(panel: &Panel, count: usize) -> Vec<MapPoint> {
    let candidates = inner_points(&panel.outline);
    let middle = panel.outline.label_place(1.0).centre;
    let mut chosen = vec![nearest(&candidates, middle)];
    let mut clearance = vec![f32::INFINITY; candidates.len()];
    while chosen.len() < count.min(candidates.len()) {
        let last = chosen[chosen.len() - 1];
        for (room, candidate) in clearance.iter_mut().zip(&candidates) {
            *room = room.min((*candidate - last).square_length());
        }
        let farthest = (0..candidates.len()).max_by(|a, b| clearance[*a].total_cmp(&clearance[*b]));
        chosen.extend(farthest.map(|index| candidates[index]));
    }
    chosen.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    chosen
}

/// A grid of points inside that keep their distance from the edge: 25 mm, or 0.4 of what the deepest point has where that is
/// more. The grid is counted from the centreline, so that both sides of a vehicle get the same spots.
fn inner_points(outline: &Outline) -> Vec<MapPoint> {
    let bounds = outline.bounds();
    let edge = outline.flattened(1.0);
    let step = (bounds.width().min(bounds.height()) / 10.0).clamp(8.0, 60.0);
    let along = |from: f32, to: f32| {
        let first = (from / step).floor() as i32;
        let last = (to / step).ceil() as i32;
        (first..last).map(|k| (k as f32 + 0.5) * step)
    };
    let points: Vec<(MapPoint, f32)> = along(bounds.min.y, bounds.max.y)
        .flat_map(|y| along(bounds.min.x, bounds.max.x).map(move |x| MapPoint::new(x, y)))
        .filter(|p| outline.contains(*p))
        .map(|p| (p, distance_to_edge(&edge, p)))
        .collect();
    let deepest = points.iter().map(|p| p.1).fold(0.0, f32::max);
    let least = (EDGE_DISTANCE_MM as f32).max(0.4 * deepest).min(deepest);
    points.into_iter().filter(|p| p.1 >= least).map(|p| p.0).collect()
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

/// The candidate nearest to a point; the point itself if there is none.
fn nearest(candidates: &[MapPoint], to: MapPoint) -> MapPoint {
    let distance = |c: &MapPoint| (*c - to).square_length();
    candidates.iter().copied().min_by(|a, b| distance(a).total_cmp(&distance(b))).unwrap_or(to)
}
