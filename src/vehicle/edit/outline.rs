//! Outlines in the file: as directed loops of the left half, and with a new point put on a curve.

use crate::geometry::{MapCurve, MapPoint};
use crate::vehicle::build::Curves;
use crate::vehicle::entries::{Name, Number};
use crate::vehicle::schema::{CurveEntry, PanelEntry, Place, Sides, TemplateFile};

/// Points of an outline as indices, turned so that every loop runs the same way round; empty where a point is unknown.
pub(super) fn directed(entry: &PanelEntry, curves: &Curves) -> Vec<usize> {
    let mut points: Vec<usize> = entry.outline.iter().filter_map(|n| curves.index(n)).collect();
    if points.len() != entry.outline.len() {
        return Vec::new();
    }
    let area: f64 = edges(&points).map(|(a, b)| curves.between(a, b).area_share()).sum();
    if area < 0.0 {
        points.reverse();
    }
    points
}

/// The edges of a closed loop.
pub(super) fn edges(points: &[usize]) -> impl Iterator<Item = (usize, usize)> + '_ {
    points.iter().copied().zip(points.iter().copied().cycle().skip(1))
}

/// The place on a loop of curves that is nearest to a point: which curve, and where along it.
pub(super) fn nearest(curves: impl Iterator<Item = MapCurve>, to: MapPoint) -> Option<(usize, f32)> {
    let mut best: Option<(f32, usize, f32)> = None;
    for (i, curve) in curves.enumerate() {
        let (distance, t) = nearest_on(&curve, to);
        if best.is_none_or(|(d, _, _)| distance < d) {
            best = Some((distance, i, t));
        }
    }
    best.map(|(_, i, t)| (i, t))
}

/// Distance and parameter of the nearest place on a curve: sampled, then narrowed by thirds.
fn nearest_on(curve: &MapCurve, to: MapPoint) -> (f32, f32) {
    const STEPS: u16 = 48;
    let distance = |t: f32| (curve.at(t) - to).length();
    let sampled = (0..=STEPS).map(|i| f32::from(i) / f32::from(STEPS));
    let start = sampled.min_by(|a, b| distance(*a).total_cmp(&distance(*b))).unwrap_or(0.0);
    let step = 1.0 / f32::from(STEPS);
    let (mut low, mut high) = ((start - step).max(0.0), (start + step).min(1.0));
    for _ in 0..40 {
        let (a, b) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
        if distance(a) < distance(b) {
            high = b;
        } else {
            low = a;
        }
    }
    let t = 0.5 * (low + high);
    (distance(t), t)
}

/// Puts a new point on the curve from one point to another, for all who use that curve; gives its name.
pub(super) fn insert_point(file: &mut TemplateFile, curves: &Curves, from: usize, to: usize, t: f32) -> Name {
    let name = fresh_point(file);
    let curve = curves.between(from, to);
    let (before, after) = curve.split(t);
    let mut at = place(before.to);
    if curves.is_central(from) && curves.is_central(to) {
        at.1 = Number::of(0.0);
    }
    let ends = [from, to].map(|p| file.points.0[p].0.clone());
    file.points.0.push((name.clone(), at));
    if !curve.is_line() {
        to_single_curves(file, curves, &ends);
        file.curves.retain(|c| !joins(c, &ends));
        file.curves.push(entry(&before, &ends[0], &name));
        file.curves.push(entry(&after, &name, &ends[1]));
    }
    for panel in &mut file.panels {
        insert_between(&mut panel.outline, &ends, &name, panel.side);
    }
    for opening in &mut file.openings {
        insert_between(&mut opening.outline, &ends, &name, opening.side);
    }
    name
}

/// Turns the smooth line that has this curve into single curves of the same shape.
fn to_single_curves(file: &mut TemplateFile, curves: &Curves, ends: &[Name; 2]) {
    let has = |through: &[Name]| through.windows(2).any(|w| same_pair(&w[0], &w[1], ends));
    let (with, without): (Vec<_>, Vec<_>) = file.lines.drain(..).partition(|line| has(&line.through));
    file.lines = without;
    for line in with {
        for pair in line.through.windows(2) {
            if let (Some(a), Some(b)) = (curves.index(&pair[0]), curves.index(&pair[1])) {
                let curve = curves.between(a, b);
                if !curve.is_line() {
                    file.curves.push(entry(&curve, &pair[0], &pair[1]));
                }
            }
        }
    }
}

fn entry(curve: &MapCurve, from: &Name, to: &Name) -> CurveEntry {
    let [_, ctrl1, ctrl2, _] = curve.points();
    CurveEntry { from: from.clone(), ctrl1: place(ctrl1), ctrl2: place(ctrl2), to: to.clone() }
}

fn place(p: MapPoint) -> Place {
    (Number::rounded(f64::from(p.x)), Number::rounded(f64::from(p.y)))
}

fn joins(curve: &CurveEntry, ends: &[Name; 2]) -> bool {
    same_pair(&curve.from, &curve.to, ends)
}

fn same_pair(a: &Name, b: &Name, ends: &[Name; 2]) -> bool {
    (a == &ends[0] && b == &ends[1]) || (a == &ends[1] && b == &ends[0])
}

fn insert_between(outline: &mut Vec<Name>, ends: &[Name; 2], name: &Name, side: Sides) {
    // The half of a panel across the centreline is an open line: its last point does not lead to its first.
    let closing = usize::from(side != Sides::Centre);
    let n = outline.len();
    let found = (0..n.saturating_sub(1) + closing).find(|i| same_pair(&outline[*i], &outline[(i + 1) % n], ends));
    if let Some(i) = found {
        outline.insert(i + 1, name.clone());
    }
}

fn fresh_point(file: &TemplateFile) -> Name {
    let free = |i: &usize| !file.points.has(&format!("cut-{i}"));
    // One more number than there are points, so one of them is free.
    let number = (1..=file.points.0.len() + 1).find(free).unwrap_or(0);
    Name::made(&format!("cut-{number}"))
}
