//! The curve between each two points, stored once.

use crate::finding::{Code, Finding};
use crate::geometry::{Knot, MapCurve, MapPoint, smooth_line};
use crate::say;
use crate::vehicle::entries::Name;
use crate::vehicle::schema::{LineEntry, TemplateFile};
use std::collections::{BTreeMap, HashMap};

/// Places and curves of the left half.
pub(in crate::vehicle) struct Curves {
    /// Places in the order of the file.
    pub(in crate::vehicle) places: Vec<MapPoint>,
    names: HashMap<String, usize>,
    /// Curves by their two points, the lower index first and the curve running that way.
    table: BTreeMap<(usize, usize), MapCurve>,
}

impl Curves {
    pub(in crate::vehicle) fn new(file: &TemplateFile, faults: &mut Vec<Finding>) -> Self {
        let places: Vec<MapPoint> = file.points.0.iter().map(|(_, p)| MapPoint::new(p.0.f32(), p.1.f32())).collect();
        let names = file.points.0.iter().enumerate().map(|(i, (n, _))| (n.as_str().to_owned(), i)).collect();
        let mut curves = Self { places, names, table: BTreeMap::new() };
        for ((name, _), place) in file.points.0.iter().zip(&curves.places) {
            if place.y < 0.0 {
                faults.push(Finding::new(
                    Code::TemplatePoint,
                    say!("vehicle-place-point", id = name.as_str()),
                    say!("vehicle-on-right"),
                    say!("vehicle-on-right-do"),
                ));
            }
        }
        for (i, line) in file.lines.iter().enumerate() {
            curves.add_line(i, line, faults);
        }
        for (i, entry) in file.curves.iter().enumerate() {
            let place = format!("curves[{i}]");
            let (Some(a), Some(b)) = (curves.find(&entry.from, &place, faults), curves.find(&entry.to, &place, faults))
            else {
                continue;
            };
            let [c1, c2] = [entry.ctrl1, entry.ctrl2].map(|p| MapPoint::new(p.0.f32(), p.1.f32()));
            let curve = MapCurve::cubic(curves.places[a], c1, c2, curves.places[b]);
            curves.add(a, b, curve, &place, faults);
        }
        curves
    }

    /// Index of a point; an unknown one is a fault at `place`.
    pub(in crate::vehicle) fn find(&self, name: &Name, place: &str, faults: &mut Vec<Finding>) -> Option<usize> {
        let found = self.index(name);
        if found.is_none() {
            faults.push(Finding::new(
                Code::TemplateUnknown,
                place,
                say!("vehicle-unknown-point", id = name.as_str()),
                say!("vehicle-unknown-point-do"),
            ));
        }
        found
    }

    /// Index of a point, if there is one of this name.
    pub(in crate::vehicle) fn index(&self, name: &Name) -> Option<usize> {
        self.names.get(name.as_str()).copied()
    }

    /// The curve from one point to another: the stored one, or a straight line.
    pub(in crate::vehicle) fn between(&self, a: usize, b: usize) -> MapCurve {
        match self.table.get(&(a.min(b), a.max(b))) {
            Some(curve) if a < b => *curve,
            Some(curve) => curve.reversed(),
            None => MapCurve::line(self.places[a], self.places[b]),
        }
    }

    /// Whether a point lies on the centreline, where both sides share it.
    pub(in crate::vehicle) fn is_central(&self, point: usize) -> bool {
        self.places[point].y == 0.0
    }

    fn add_line(&mut self, i: usize, line: &LineEntry, faults: &mut Vec<Finding>) {
        let place = format!("lines[{i}]");
        let found: Vec<Option<usize>> = line.through.iter().map(|n| self.find(n, &place, faults)).collect();
        let Some(points) = found.into_iter().collect::<Option<Vec<usize>>>() else { return };
        if points.len() < 2 || points.windows(2).any(|p| self.places[p[0]] == self.places[p[1]]) {
            faults.push(Finding::new(
                Code::TemplatePoint,
                place,
                say!("vehicle-line-short"),
                say!("vehicle-line-short-do"),
            ));
            return;
        }
        let mut knots: Vec<Knot> = points.iter().map(|p| Knot { at: self.places[*p], direction: None }).collect();
        for (name, degrees) in &line.along.0 {
            match line.through.iter().position(|n| n == name) {
                Some(k) => knots[k].direction = Some(degrees.get().to_radians()),
                None => faults.push(Finding::new(
                    Code::TemplateUnknown,
                    place.clone(),
                    say!("vehicle-direction-stray", id = name.as_str()),
                    say!("vehicle-direction-stray-do"),
                )),
            }
        }
        let square = std::f64::consts::FRAC_PI_2;
        let last = points.len() - 1;
        // A line that ends on the centreline meets its mirror image there, so it runs square to it.
        for (end, next, direction) in [(0, 1, square), (last, last - 1, -square)] {
            let leaves = self.is_central(points[end]) && !self.is_central(points[next]);
            if leaves && knots[end].direction.is_none() {
                knots[end].direction = Some(direction);
            }
        }
        for (pair, curve) in points.windows(2).zip(smooth_line(&knots)) {
            self.add(pair[0], pair[1], curve, &place, faults);
        }
    }

    fn add(&mut self, a: usize, b: usize, curve: MapCurve, place: &str, faults: &mut Vec<Finding>) {
        let key = (a.min(b), a.max(b));
        let curve = if a < b { curve } else { curve.reversed() };
        let central = self.is_central(a) && self.is_central(b) && curve.points().iter().any(|p| p.y != 0.0);
        if a == b || central || self.table.insert(key, curve).is_some() {
            let cause = if central {
                say!("vehicle-curve-centre")
            } else if a == b {
                say!("vehicle-curve-points")
            } else {
                say!("vehicle-curve-twice")
            };
            let names = [a, b].map(|p| self.name(p));
            faults.push(Finding::new(
                Code::TemplatePoint,
                say!("vehicle-place-curve-between", place = place, from = names[0], to = names[1]),
                cause,
                say!("vehicle-curve-do"),
            ));
        }
    }

    /// Name of a point, for messages.
    pub(in crate::vehicle) fn name(&self, point: usize) -> &str {
        self.names.iter().find(|(_, i)| **i == point).map_or("", |(n, _)| n)
    }
}
