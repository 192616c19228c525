//! What is wrong with the surface: kind, place, extent, depth, pictures.

use super::photo::PhotoId;
use crate::geometry::MapPoint;
use crate::polish::{DefectKind, Fingernail, depth_by_fingernail};
use crate::units::{Micrometres, Millimetres};
use serde::{Deserialize, Serialize};

/// Something wrong with the surface.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Defect {
    /// What it is.
    pub kind: DefectKind,
    /// Where on the map: the place of a point, the middle of a line or an area.
    pub at: MapPoint,
    /// How far it reaches on the map.
    #[serde(default, skip_serializing_if = "Extent::is_point")]
    pub extent: Extent,
    /// How large across, or how long.
    pub size_mm: Millimetres,
    /// How many, 0 (none) to 5 (dense), after the idea of ISO 4628-1.
    pub quantity: u8,
    /// Whether a fingernail catches in it.
    #[serde(default, skip_serializing_if = "is_not_tried")]
    pub fingernail: Fingernail,
    /// Estimated depth, least and most; without it the usual range of the kind, narrowed by the fingernail.
    #[serde(default)]
    pub depth_um: Option<(Micrometres, Micrometres)>,
    /// Pictures of it, kept beside the job.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<PhotoId>,
    /// Anything else.
    #[serde(default)]
    pub note: String,
}

/// How far a defect reaches on the map.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Extent {
    /// One place.
    #[default]
    Point,
    /// Along these points, in their order; at least two.
    Line(Vec<MapPoint>),
    /// Inside these corners, the last joined to the first; at least three.
    Area(Vec<MapPoint>),
}

impl Extent {
    /// Whether it is one place only.
    pub fn is_point(&self) -> bool {
        matches!(self, Self::Point)
    }

    /// The points it was drawn with; none for one place.
    pub fn points(&self) -> &[MapPoint] {
        match self {
            Self::Point => &[],
            Self::Line(points) | Self::Area(points) => points,
        }
    }

    /// The fewest points that make one.
    pub fn least_points(&self) -> usize {
        match self {
            Self::Point => 0,
            Self::Line(_) => 2,
            Self::Area(_) => 3,
        }
    }

    /// The middle of what was drawn, where there are points.
    pub fn middle(&self) -> Option<MapPoint> {
        let points = self.points();
        if matches!(self, Self::Line(_)) {
            return half_way(points);
        }
        let sum = points.iter().fold(MapPoint::origin(), |sum, p| sum + p.to_vector());
        (!points.is_empty()).then(|| sum / points.len() as f32)
    }

    /// Length of a line, or the longest way across an area, in mm on the map; none for one place.
    pub fn size(&self) -> Option<Millimetres> {
        let points = self.points();
        let mm = match self {
            Self::Point => return None,
            Self::Line(_) => points.windows(2).map(|leg| (leg[1] - leg[0]).length()).sum(),
            Self::Area(_) => {
                let across = |a: &MapPoint| points.iter().map(|b| (*b - *a).length()).fold(0.0, f32::max);
                points.iter().map(across).fold(0.0, f32::max)
            }
        };
        Millimetres::new(f64::from(mm.round())).ok()
    }
}

impl Defect {
    /// A defect of usual depth at one place, 30 mm across, very few of them.
    pub fn new(kind: DefectKind, at: MapPoint) -> Self {
        Self {
            kind,
            at,
            extent: Extent::Point,
            size_mm: Millimetres::of(30.0),
            quantity: 1,
            fingernail: Fingernail::NotTried,
            depth_um: None,
            photos: Vec::new(),
            note: String::new(),
        }
    }

    /// A defect as it was drawn; its place and size follow from the drawing.
    pub fn drawn(kind: DefectKind, at: MapPoint, extent: Extent) -> Self {
        let plain = Self::new(kind, extent.middle().unwrap_or(at));
        Self { size_mm: extent.size().unwrap_or(plain.size_mm), extent, ..plain }
    }

    /// Depth, least and most: as estimated, else the usual one of the kind, narrowed by the fingernail.
    pub fn depth(&self) -> (Micrometres, Micrometres) {
        self.depth_um.unwrap_or_else(|| depth_by_fingernail(self.kind, self.fingernail))
    }
}

/// The point half of the way along.
fn half_way(points: &[MapPoint]) -> Option<MapPoint> {
    let mut left = points.windows(2).map(|leg| (leg[1] - leg[0]).length()).sum::<f32>() / 2.0;
    for leg in points.windows(2) {
        let length = (leg[1] - leg[0]).length();
        if length >= left && length > 0.0 {
            return Some(leg[0] + (leg[1] - leg[0]) * (left / length));
        }
        left -= length;
    }
    points.first().copied()
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde hands over a reference")]
fn is_not_tried(fingernail: &Fingernail) -> bool {
    *fingernail == Fingernail::NotTried
}
