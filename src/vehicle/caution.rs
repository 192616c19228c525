//! What features ask for: care near edges and sensors, and the places where coating gathers.

use super::feature::{Feature, FeatureKind};
use super::template::Template;
use crate::say;
use crate::units::Micrometres;

impl FeatureKind {
    /// What to mind when working near it, as a sentence without a full stop; `None` where there is nothing to mind.
    ///
    /// Source: edges and body lines, trade pages, repeated widely and rarely measured; the rest common practice, no source,
    /// but for the film limits of [`FeatureKind::film_limit`].
    pub fn caution(self) -> Option<&'static str> {
        match self {
            Self::BodyLine => Some(say!("vehicle-mind-body-line")),
            Self::Edge => Some(say!("vehicle-mind-edge")),
            Self::Radar => Some(say!("vehicle-mind-radar")),
            Self::Camera => Some(say!("vehicle-mind-camera")),
            Self::Ultrasonic => Some(say!("vehicle-mind-ultrasonic")),
            Self::Lamp => Some(say!("vehicle-mind-lamp")),
            Self::Emblem => Some(say!("vehicle-mind-emblem")),
            _ => None,
        }
    }

    /// The thickest film that a vehicle maker allows over a sensor, as far as one is published.
    ///
    /// Source: radar behind a bumper 300 µm, a vehicle maker's repair guideline quoted by a collision-industry training body;
    /// ultrasonic sensors 120 µm, a vehicle maker's workshop note. Other makers allow less: the maker's own figure counts.
    pub fn film_limit(self) -> Option<Micrometres> {
        match self {
            Self::Radar => Some(Micrometres::of(300.0)),
            Self::Ultrasonic => Some(Micrometres::of(120.0)),
            _ => None,
        }
    }

    /// Whether coating gathers there and has to be looked for in the last walk-round. Common practice, no source.
    pub fn gathers_coating(self) -> bool {
        matches!(
            self,
            Self::BodyLine
                | Self::Edge
                | Self::Handle
                | Self::Mirror
                | Self::Lamp
                | Self::Plate
                | Self::Emblem
                | Self::SpoilerFoot
                | Self::FillerFlap
        )
    }
}

impl Template {
    /// The features that touch a panel, in the order of the file.
    pub fn features_on(&self, panel: usize) -> impl Iterator<Item = &Feature> {
        self.features.iter().filter(move |f| f.panels.binary_search(&panel).is_ok())
    }

    /// What to mind on a panel, each kind once, in the order of [`FeatureKind`]; empty where there is nothing.
    pub fn cautions(&self, panel: usize) -> Vec<FeatureKind> {
        let mut kinds: Vec<FeatureKind> =
            self.features_on(panel).map(|f| f.kind).filter(|k| k.caution().is_some()).collect();
        kinds.sort_unstable();
        kinds.dedup();
        kinds
    }
}
