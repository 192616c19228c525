//! What the map is made of on its way to the screen, cached per template and zoom step: triangles of the fills, lines of the
//! seams, hatches, label boxes. All in map millimetres, so panning costs nothing.

use super::picture::{Memo, Picture};
use crate::geometry::{LabelPlace, MapCurve, MapPoint, Outline, hatch_lines};
use crate::scene::{HATCH_MM, SeamKind, inside_of};
use crate::vehicle::{Feature, FeatureKind, Template};
use eframe::egui::Vec2;
use lyon::lyon_tessellation::{BuffersBuilder, FillOptions, FillTessellator, FillVertex, VertexBuffers};
use std::cell::OnceCell;
use std::sync::Arc;

/// Shapes of one template at one zoom step.
#[derive(Debug, Default)]
pub struct MapCache {
    key: Option<(Arc<Template>, i32)>,
    pub(super) panels: Vec<PanelShape>,
    pub(super) seams: Vec<SeamShape>,
    pub(super) decor: Vec<Decor>,
    /// What is shown, and how it was drawn last.
    pub(super) memo: Option<Memo>,
    pub(super) picture: Option<Picture>,
    /// How far that picture has to be moved on the screen.
    pub(super) shift: Vec2,
}

/// One panel.
#[derive(Debug, Default)]
pub(super) struct PanelShape {
    pub(super) vertices: Vec<MapPoint>,
    pub(super) indices: Vec<u32>,
    pub(super) outline: Vec<MapPoint>,
    /// Hatch lines, sparse to dense, for the levels above "Leave".
    pub(super) hatches: [Vec<(MapPoint, MapPoint)>; 4],
    source: Option<Outline>,
    /// The largest box for text of each aspect in [`ASPECTS`], found when first asked for.
    boxes: [OnceCell<LabelPlace>; ASPECTS.len()],
}

impl PanelShape {
    /// The largest box inside for something of nearly this aspect (width by height); none before the shape is prepared.
    pub(super) fn room(&self, aspect: f32) -> Option<LabelPlace> {
        let distance = |a: f32| (a / aspect).ln().abs();
        let nearest = |a: &usize, b: &usize| distance(ASPECTS[*a]).total_cmp(&distance(ASPECTS[*b]));
        let best = (0..ASPECTS.len()).min_by(nearest)?;
        let outline = self.source.as_ref()?;
        Some(*self.boxes[best].get_or_init(|| outline.label_place(ASPECTS[best])))
    }
}

/// One seam or piece of the contour.
#[derive(Debug)]
pub(super) struct SeamShape {
    pub(super) points: Vec<MapPoint>,
    pub(super) kind: SeamKind,
}

/// What is drawn on panels.
#[derive(Debug)]
pub(super) struct Decor {
    pub(super) kind: FeatureKind,
    pub(super) points: Vec<MapPoint>,
    /// Its inside, where it has one that is drawn.
    pub(super) vertices: Vec<MapPoint>,
    pub(super) indices: Vec<u32>,
}

/// Width by height of label boxes that are looked up.
const ASPECTS: [f32; 7] = [0.18, 0.31, 0.56, 1.0, 1.8, 3.2, 5.5];

impl MapCache {
    /// Makes the cache fit a template at a scale in points per mm.
    pub fn prepare(&mut self, template: &Arc<Template>, scale: f32) {
        let step = scale.max(1e-6).log2().ceil() as i32;
        if self.key.as_ref().is_some_and(|(drawn, at)| Arc::ptr_eq(drawn, template) && *at == step) {
            return;
        }
        // A fifth of a point at the far end of the step.
        let tolerance = 0.2 / (step as f32).exp2();
        let mut fill = FillTessellator::new();
        self.panels = template
            .panels
            .iter()
            .map(|panel| {
                let (vertices, indices) = triangles(&mut fill, &panel.outline, tolerance);
                PanelShape {
                    vertices,
                    indices,
                    outline: panel.outline.flattened(tolerance),
                    hatches: HATCH_MM.map(|distance| hatch_lines(&panel.outline, distance)),
                    source: Some(panel.outline.clone()),
                    boxes: Default::default(),
                }
            })
            .collect();
        self.seams = template
            .seams
            .iter()
            .map(|seam| SeamShape { points: polyline(&[seam.curve], tolerance), kind: SeamKind::of(seam, template) })
            .collect();
        self.decor = template.features.iter().map(|feature| decor(&mut fill, feature, tolerance)).collect();
        self.key = Some((Arc::clone(template), step));
    }
}

/// The inside of an outline.
fn triangles(fill: &mut FillTessellator, outline: &Outline, tolerance: f32) -> (Vec<MapPoint>, Vec<u32>) {
    let mut buffers: VertexBuffers<MapPoint, u32> = VertexBuffers::new();
    let vertex = |v: FillVertex<'_>| MapPoint::new(v.position().x, v.position().y);
    let mut sink = BuffersBuilder::new(&mut buffers, vertex);
    let filled = fill.tessellate_path(outline.path(), &FillOptions::tolerance(tolerance), &mut sink);
    debug_assert!(filled.is_ok(), "outlines of a template are finite and closed");
    (buffers.vertices, buffers.indices)
}

fn decor(fill: &mut FillTessellator, feature: &Feature, tolerance: f32) -> Decor {
    let curves = feature.shape.curves();
    let inside = inside_of(feature);
    let (vertices, indices) = inside.map(|o| triangles(fill, &o, tolerance)).unwrap_or_default();
    Decor { kind: feature.kind, points: polyline(curves, tolerance), vertices, indices }
}

/// Curves that join as points, both ends included.
fn polyline(curves: &[MapCurve], tolerance: f32) -> Vec<MapPoint> {
    let start = curves.first().map(|c| c.from);
    start.into_iter().chain(curves.iter().flat_map(|c| c.flattened(tolerance))).collect()
}
