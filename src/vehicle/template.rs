//! A vehicle template, ready to be asked.

use super::feature::Feature;
use super::id::PanelId;
use super::panel::{Panel, Stance};
use super::schema::{BodyClass, TemplateFile};
use super::walk::Ways;
use crate::finding::Finding;
use crate::geometry::{MapCurve, MapPoint, MapRect, Outline};
use crate::units::{Millimetres, Seconds};
use std::collections::BTreeMap;

/// A curve between two panels, or between a panel and the outside.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seam {
    /// The curve; its direction has no meaning.
    pub curve: MapCurve,
    /// Index of a panel along it.
    pub left: usize,
    /// Index of the other panel; `None` on the outer contour and round openings.
    pub right: Option<usize>,
}

/// A wheel, drawn quietly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wheel {
    /// Middle of the hub.
    pub centre: MapPoint,
    /// Radius of the tyre, mm.
    pub radius: f32,
}

/// A vehicle as panels on a map, with what a plan needs to know of each.
#[derive(Debug, Clone)]
pub struct Template {
    /// Id, the same as the file name without its ending.
    pub id: String,
    /// Name for people: "Four-door saloon".
    pub name: String,
    /// Class of body.
    pub body: BodyClass,
    /// Length over all.
    pub length: Millimetres,
    /// Width without mirrors.
    pub width: Millimetres,
    /// Height.
    pub height: Millimetres,
    /// Panels in the order of the file, left before right.
    pub panels: Vec<Panel>,
    /// Places to stand at, in the order of the file, left before right.
    pub stances: Vec<Stance>,
    /// Every curve of the drawing once.
    pub seams: Vec<Seam>,
    /// Wheels, left before right.
    pub wheels: Vec<Wheel>,
    /// Handles, body lines, plates and the like.
    pub features: Vec<Feature>,
    /// Surface inside the contour that is no panel.
    pub openings: Vec<Outline>,
    pub(super) contour: Vec<Outline>,
    pub(super) gaps: Vec<Outline>,
    pub(super) index: BTreeMap<PanelId, usize>,
    pub(super) neighbours: Vec<Vec<usize>>,
    pub(super) arrows: super::navigate::Arrows,
    pub(super) ways: Ways,
    pub(super) faults: Vec<Finding>,
    pub(super) file: TemplateFile,
}

impl Template {
    /// The panel of an id.
    pub fn panel(&self, id: &PanelId) -> Option<&Panel> {
        self.index_of(id).and_then(|i| self.panels.get(i))
    }

    /// The index of a panel in [`Template::panels`].
    pub fn index_of(&self, id: &PanelId) -> Option<usize> {
        self.index.get(id).copied()
    }

    /// The index of the panel at a place of the map; exact on curves, and never more than one.
    pub fn panel_at(&self, at: MapPoint) -> Option<usize> {
        self.panels.iter().position(|p| p.outline.contains(at))
    }

    /// Indices of the panels that share a seam with this one, ascending; empty for an index that does not exist.
    pub fn neighbours(&self, index: usize) -> &[usize] {
        self.neighbours.get(index).map_or(&[], Vec::as_slice)
    }

    /// The outer contour: one loop, or several where parts lie apart.
    pub fn contour(&self) -> &[Outline] {
        &self.contour
    }

    /// Whether a place is on the body or on a wheel.
    pub fn covers(&self, place: MapPoint) -> bool {
        self.contour.iter().any(|c| c.contains(place))
            || self.wheels.iter().any(|w| (place - w.centre).length() <= w.radius)
    }

    /// The smallest upright box round panels and wheels.
    pub fn bounds(&self) -> MapRect {
        let panels = self.panels.iter().map(|p| p.outline.bounds());
        let wheels = self.wheels.iter().map(|w| {
            let reach = euclid::vec2(w.radius, w.radius);
            MapRect::new(w.centre - reach, w.centre + reach)
        });
        panels.chain(wheels).reduce(|a, b| a.union(&b)).unwrap_or_else(MapRect::zero)
    }

    /// Shortest way on the floor round the body between two stances, mm; infinite for indices that do not exist.
    pub fn walk_mm(&self, stance_a: usize, stance_b: usize) -> f64 {
        self.ways.mm(stance_a, stance_b)
    }

    /// Whole seconds to walk from stance to stance at a speed in m/s, rounded up.
    ///
    /// **Shape**: square, in the order of [`Template::stances`], symmetric, zero on the diagonal, triangle inequality holds.
    /// **Domain**: speeds under 0.01 m/s count as 0.01.
    pub fn walk_seconds(&self, metres_per_second: f64) -> Vec<Vec<Seconds>> {
        self.ways.seconds(metres_per_second)
    }

    /// Pairs of different stances nearer to each other than `min_mm` along the floor, each pair once, ascending.
    pub fn close_pairs(&self, min_mm: f64) -> Vec<(usize, usize)> {
        let n = self.stances.len();
        (0..n).flat_map(|a| (a + 1..n).map(move |b| (a, b))).filter(|(a, b)| self.walk_mm(*a, *b) < min_mm).collect()
    }
}
