//! How a vehicle is drawn wherever it is drawn, without colours: which lines weigh what, which hatch means what.

use super::map::Fill;
use crate::geometry::{MapCurve, Outline};
use crate::polish::Level;
use crate::vehicle::{Feature, FeatureKind, FeatureShape, Panel, Seam, Surface, Template};

/// Hatch distances in mm on the map for the levels above "Leave": the denser, the harder the work.
pub const HATCH_MM: [f32; 4] = [110.0, 66.0, 40.0, 24.0];

/// Which hatch a fill has, an index into [`HATCH_MM`].
pub fn hatch_of(fill: Fill) -> Option<usize> {
    match fill {
        Fill::Level(Level::Leave) => None,
        Fill::Level(level) => Some((level as usize).saturating_sub(1).min(HATCH_MM.len() - 1)),
        Fill::Wet => Some(0),
        _ => None,
    }
}

/// What a line between panels is on the vehicle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeamKind {
    /// The outer edge.
    Contour,
    /// A gap between two panels.
    Gap,
    /// The middle of one piece that is worked in two halves.
    Middle,
}

impl SeamKind {
    /// Every kind, in the order of drawing.
    pub const ALL: [Self; 3] = [Self::Middle, Self::Gap, Self::Contour];

    /// The kind of a seam of a template.
    pub fn of(seam: &Seam, template: &Template) -> Self {
        let Some(right) = seam.right else { return Self::Contour };
        let (a, b) = (&template.panels[seam.left], &template.panels[right]);
        let halves = a.part == b.part && a.number == b.number && a.side == b.side.opposite() && a.side != b.side;
        if halves { Self::Middle } else { Self::Gap }
    }
}

/// Whether a feature is only a shape of the sheet metal, drawn more quietly than what one can take hold of.
pub fn is_shape_only(kind: FeatureKind) -> bool {
    matches!(kind, FeatureKind::BodyLine | FeatureKind::Edge | FeatureKind::Trim)
}

/// The inside of a feature, where it has one that is drawn.
pub fn inside_of(feature: &Feature) -> Option<Outline> {
    let curves = feature.shape.curves();
    let filled = matches!(
        feature.kind,
        FeatureKind::Grille | FeatureKind::Plate | FeatureKind::Lamp | FeatureKind::Mirror | FeatureKind::Emblem
    );
    let mut closed = curves.to_vec();
    if let (FeatureShape::Stroke(_), Some(first), Some(last)) = (&feature.shape, curves.first(), curves.last()) {
        // A line from the centreline to the centreline is half of a loop; its mirror image is the other half.
        if first.from.y == 0.0 && last.to.y == 0.0 {
            closed.push(MapCurve::line(last.to, first.from));
        } else {
            closed.clear();
        }
    }
    Some(closed).filter(|c| filled && !c.is_empty()).and_then(|curves| Outline::new(curves).ok())
}

/// Whether a lamp is one of the rear, which are red.
pub fn is_rear_lamp(panel: &Panel, template: &Template) -> bool {
    panel.surface == Surface::Lamp && panel.label.centre.x > template.length.mm() as f32 / 2.0
}
