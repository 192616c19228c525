//! The way of each worker round the vehicle, from badge to badge.
//!
//! Everybody keeps to a side of the way, so that two who go together are two lines and not one; a gentle bow, the dash and the
//! colour tell them apart, arrows show which way they go. Lines lie under the badges and have a light edge where they cross.

use super::labels::Labels;
use super::layout::MapCache;
use super::paint::to_screen;
use crate::geometry::Viewport;
use crate::gui::theme::{self, Palette};
use crate::scene::{MapScene, Overlay, Waypoint};
use crate::units::Seconds;
use eframe::egui::{Color32, Painter, Pos2, Shape, Stroke, Vec2};

/// How ways are drawn; lengths in points.
struct Manner {
    /// How far from the middle of the way everybody keeps.
    aside: f32,
    /// How much a leg bows to that side: a share of its length, and at most so much.
    bow: (f32, f32),
    width: f32,
    /// What a line is wider with its light edge.
    edge: f32,
    /// Shorter legs have no arrow.
    arrow_from: f32,
}

/// Where every panel has room for its numbers, or a place beside the vehicle.
const CLEAR: Manner = Manner { aside: 1.7, bow: (0.05, 9.0), width: 1.3, edge: 1.6, arrow_from: 46.0 };
/// Where there are so many that small ones have none: close together, as one cord of two colours.
const CROWDED: Manner = Manner { aside: 0.75, bow: (0.0, 0.0), width: 1.1, edge: 1.0, arrow_from: 64.0 };

impl Manner {
    fn of(labels: &Labels) -> &'static Self {
        if labels.left_out == 0 { &CLEAR } else { &CROWDED }
    }
}

/// How far a bow may be from its straight pieces, in points; as for the curves of the vehicle.
const TOLERANCE: f32 = 0.2;

/// The straight pieces of a leg whose control point is this far from its chord, in points: an even number, so that there is a middle.
///
/// A quadratic Bézier curve is half of that from its chord, and the n-th part of it that part squared.
fn pieces(bend: f32) -> u8 {
    2 * ((0.5 * bend / TOLERANCE).sqrt() / 2.0).ceil().max(1.0) as u8
}

/// How many legs of a way are shown behind somebody.
const LEGS: usize = 4;

/// Draws the way of every worker as a thin path.
pub(super) fn draw(paint: &Painter, view: &Viewport, scene: &MapScene, labels: &Labels) {
    if scene.overlay != Overlay::Order {
        return;
    }
    let p = theme::of(paint.ctx());
    let manner = Manner::of(labels);
    let legs_of = |(worker, way): (usize, &Vec<Waypoint>)| -> Vec<([Pos2; 2], Vec<Pos2>)> {
        let mut stops: Vec<Pos2> = way.iter().map(|w| stop(view, scene, (labels, Vec2::ZERO), worker, w)).collect();
        stops.dedup();
        stops.windows(2).map(|leg| ([leg[0], leg[1]], bowed([leg[0], leg[1]], worker, manner))).collect()
    };
    let ways: Vec<_> = scene.ways.iter().enumerate().map(legs_of).collect();
    let edge = Stroke::new(manner.width * p.line + manner.edge, p.paint.gamma_multiply(0.8));
    paint.extend(ways.iter().flatten().map(|(_, points)| Shape::line(points.clone(), edge)));
    for (worker, way) in ways.iter().enumerate() {
        let color = color(p, worker);
        for (leg, points) in way {
            paint.extend(path(points, Stroke::new(manner.width * p.line, color), worker));
            paint.extend(arrow(*leg, points, manner, color));
        }
    }
}

/// Where everybody is at the moment of the chart's cursor: the panel being worked, and the way that led there. `shift` is how
/// far the labels are moved.
pub(super) fn at_moment(
    paint: &Painter,
    cache: &MapCache,
    view: &Viewport,
    scene: &MapScene,
    (labels, shift): (&Labels, Vec2),
    moment: Seconds,
) {
    let p = theme::of(paint.ctx());
    for (worker, way) in scene.ways.iter().enumerate() {
        let reached = way.iter().take_while(|w| w.from <= moment).count();
        let first = reached.saturating_sub(LEGS);
        let points: Vec<Pos2> =
            way[first..reached].iter().map(|w| stop(view, scene, (labels, shift), worker, w)).collect();
        for (age, leg) in points.windows(2).rev().enumerate() {
            let strength = 1.0 - age as f32 / LEGS as f32;
            let stroke = Stroke::new(1.5 + 2.5 * strength, color(p, worker).gamma_multiply(0.4 + 0.6 * strength));
            paint.add(Shape::line(bowed([leg[0], leg[1]], worker, Manner::of(labels)), stroke));
        }
        let Some(here) = reached.checked_sub(1).map(|i| &way[i]).filter(|w| moment < w.until) else { continue };
        let outline: Vec<Pos2> = cache.panels[here.panel].outline.iter().map(|p| to_screen(view, *p)).collect();
        paint.add(Shape::closed_line(outline, Stroke::new(4.0, theme::worker(worker))));
    }
}

/// The badge of a stop, labels being moved by `shift`; the middle of its panel where that has none.
fn stop(view: &Viewport, scene: &MapScene, (labels, shift): (&Labels, Vec2), worker: usize, way: &Waypoint) -> Pos2 {
    labels.badge(scene, worker, way).map_or_else(|| to_screen(view, way.at), |at| at + shift)
}

/// The colour of a worker's line, strong enough for a thin one.
fn color(p: &Palette, worker: usize) -> Color32 {
    theme::worker(worker).lerp_to_gamma(p.contour, 0.2)
}

/// A leg on the side of a worker. The side is one of the sheet and not of the direction, so two who meet keep apart as well.
fn bowed([from, to]: [Pos2; 2], worker: usize, manner: &Manner) -> Vec<Pos2> {
    let along = to - from;
    let length = along.length();
    if length < 1.0 {
        return vec![from, to];
    }
    let across = Vec2::new(-along.y, along.x) / length;
    let forward = if along.x.abs() > 0.01 { along.x > 0.0 } else { along.y > 0.0 };
    let side = if forward == worker.is_multiple_of(2) { -1.0 } else { 1.0 };
    let lane = 1.0 + (worker / 2) as f32;
    let out = across * side;
    let (from, to) = (from + out * manner.aside * lane, to + out * manner.aside * lane);
    let aside = (length * manner.bow.0).min(manner.bow.1) * lane;
    let bend = from.lerp(to, 0.5) + out * aside;
    let at = |t: f32| from.lerp(bend, t).lerp(bend.lerp(to, t), t);
    let pieces = pieces(aside);
    (0..=pieces).map(|k| at(f32::from(k) / f32::from(pieces))).collect()
}

/// A small head in the middle of a leg that is long enough.
fn arrow([from, to]: [Pos2; 2], points: &[Pos2], manner: &Manner, color: Color32) -> Option<Shape> {
    let along = to - from;
    let length = along.length();
    if length < manner.arrow_from || points.len() < 3 {
        return None;
    }
    let along = along / length;
    let across = Vec2::new(-along.y, along.x);
    let middle = points[points.len() / 2];
    let back = middle - along * 4.0;
    let corners = vec![middle + along * 4.0, back + across * 3.2, back - across * 3.2];
    Some(Shape::convex_polygon(corners, color, Stroke::NONE))
}

/// A path in the manner of a worker: whole, short dashes, long dashes, dots.
pub(super) fn path(points: &[Pos2], stroke: Stroke, worker: usize) -> Vec<Shape> {
    match worker % 4 {
        0 => vec![Shape::line(points.to_vec(), stroke)],
        1 => Shape::dashed_line(points, stroke, 7.0, 4.0),
        2 => Shape::dashed_line(points, stroke, 16.0, 4.0),
        _ => Shape::dashed_line(points, stroke, 2.0, 4.0),
    }
}
