//! Features: what sits on panels beside paint. They are drawn as quiet strokes, and some of them ask for care.

use super::id::Side;
use crate::geometry::{MapCurve, MapPoint};
use serde::{Deserialize, Serialize};

/// What a feature is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FeatureKind {
    /// A crease in the bodywork; paint is thin on it.
    BodyLine,
    /// A rim or fold at the end of a panel; paint is thin on it.
    Edge,
    /// A door or boot handle.
    Handle,
    /// A door mirror that is not a panel of its own.
    Mirror,
    /// A lamp set into another panel.
    Lamp,
    /// The number plate.
    Plate,
    /// A badge.
    Emblem,
    /// Where a spoiler stands on the panel.
    SpoilerFoot,
    /// The flap over the filler neck or the charging socket.
    FillerFlap,
    /// A radar behind a cover.
    Radar,
    /// A camera or its window in the glass.
    Camera,
    /// An ultrasonic parking sensor.
    Ultrasonic,
    /// An aerial.
    Aerial,
    /// A bar or slat of a grille.
    Grille,
    /// A wiper arm.
    Wiper,
    /// A gap, rail or strip that only makes the drawing readable.
    Trim,
}

/// How a feature lies on the map.
#[derive(Debug, Clone, PartialEq)]
pub enum FeatureShape {
    /// An open line.
    Stroke(Vec<MapCurve>),
    /// A closed loop.
    Loop(Vec<MapCurve>),
}

impl FeatureShape {
    /// The curves of either.
    pub fn curves(&self) -> &[MapCurve] {
        match self {
            Self::Stroke(c) | Self::Loop(c) => c,
        }
    }
}

/// Something on the vehicle that is drawn and may need care.
#[derive(Debug, Clone, PartialEq)]
pub struct Feature {
    /// What it is.
    pub kind: FeatureKind,
    /// On which side.
    pub side: Side,
    /// Its middle on the map.
    pub at: MapPoint,
    /// How it is drawn.
    pub shape: FeatureShape,
    /// Indices of the panels it touches, ascending; empty where it lies on none.
    pub panels: Vec<usize>,
}
