//! What the map is made of on its way to the screen, cached per template and zoom step: triangles of the fills, lines of the
//! seams, hatches, label boxes. All in map millimetres, so panning costs nothing.

use super::picture::{Memo, Picture};
use crate::geometry::{LabelPlace, MapCurve, MapPoint, Outline, hatch_lines};
use crate::vehicle::Template;
use lyon::lyon_tessellation::{BuffersBuilder, FillOptions, FillTessellator, FillVertex, VertexBuffers};
use eframe::egui::Vec2;
use std::cell::OnceCell;

/// Shapes of one template at one zoom step.
#[derive(Debug, Default)]
pub struct MapCache {
    key: Option<(String, i32)>,
    pub(super) panels: Vec<PanelShape>,
    pub(super) seams: Vec<SeamShape>,
    pub(super) decor: Vec<Vec<MapPoint>>,
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
    pub(super) is_contour: bool,
}

/// Width by height of label boxes that are looked up.
const ASPECTS: [f32; 4] = [1.0, 1.8, 3.2, 5.5];

/// Hatch distances in mm for the levels above "Leave": the denser, the harder the work.
const HATCH_MM: [f32; 4] = [110.0, 66.0, 40.0, 24.0];

impl MapCache {
    /// Makes the cache fit a template at a scale in points per mm.
    pub fn prepare(&mut self, template: &Template, scale: f32) {
        let step = scale.max(1e-6).log2().ceil() as i32;
        let key = Some((format!("{}/{}", template.id, template.panels.len()), step));
        if self.key == key {
            return;
        }
        // A fifth of a point at the far end of the step.
        let tolerance = 0.2 / (step as f32).exp2();
        let mut fill = FillTessellator::new();
        self.panels = template
            .panels
            .iter()
            .map(|panel| {
                let mut buffers: VertexBuffers<MapPoint, u32> = VertexBuffers::new();
                let mut sink = BuffersBuilder::new(&mut buffers, |v: FillVertex<'_>| {
                    MapPoint::new(v.position().x, v.position().y)
                });
                let filled = fill.tessellate_path(panel.outline.path(), &FillOptions::tolerance(tolerance), &mut sink);
                debug_assert!(filled.is_ok(), "outlines of a template are finite and closed");
                PanelShape {
                    vertices: buffers.vertices,
                    indices: buffers.indices,
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
            .map(|seam| SeamShape { points: polyline(&seam.curve, tolerance), is_contour: seam.right.is_none() })
            .collect();
        let drawn = template.features.iter().flat_map(|f| f.shape.curves());
        self.decor = drawn.map(|curve| polyline(curve, tolerance)).collect();
        self.key = key;
    }
}

/// A curve as points, both ends included.
fn polyline(curve: &MapCurve, tolerance: f32) -> Vec<MapPoint> {
    std::iter::once(curve.from).chain(curve.flattened(tolerance)).collect()
}
