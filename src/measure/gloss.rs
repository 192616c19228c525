//! Gloss readings: which geometry to use, what is possible, and whether a change is one.
//!
//! A gloss unit is a hundredth of the light that polished glass of refractive index 1.567 reflects at the same angle. A perfect
//! clear coat of lower index can't reach 100, and light from the colour coat adds to the reading; so 100 is not "perfect", and
//! readings are compared on one panel, at one spot, in one orientation only.

use crate::say;
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// Angle at which a gloss meter looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GlossGeometry {
    /// For high gloss.
    Deg20,
    /// For everything between; always read first.
    Deg60,
    /// For matte.
    Deg85,
}

impl GlossGeometry {
    /// Every geometry, for high gloss first.
    pub const ALL: [Self; 3] = [Self::Deg20, Self::Deg60, Self::Deg85];

    /// Angle from the perpendicular, in degrees.
    pub fn degrees(self) -> f64 {
        match self {
            Self::Deg20 => 20.0,
            Self::Deg60 => 60.0,
            Self::Deg85 => 85.0,
        }
    }

    /// Geometry to use, after a first reading at 60°: 20° above 70 units, 85° below 10.
    ///
    /// **Source**: ASTM D523 and ISO 2813, as given on a summary page.
    pub fn after_reading_at_60(units: f64) -> Self {
        match units {
            u if u > 70.0 => Self::Deg20,
            u if u < 10.0 => Self::Deg85,
            _ => Self::Deg60,
        }
    }
}

/// Refractive index of the reference glass at 587.6 nm. **Source**: ISO 2813:2014, 3.3.
pub const REFERENCE_INDEX: f64 = 1.567;

/// A change smaller than this is not taken as one (our estimate; repeatability of a good meter is about 1 unit).
pub const LEAST_GLOSS_CHANGE: f64 = 2.0;

/// Share of unpolarised light that a smooth surface of refractive index `index` reflects at `degrees` from the perpendicular.
///
/// Mean of R_s and R_p by Fresnel's equations. **Domain**: `index` ≥ 1, angle 0 to below 90.
pub fn reflectance(index: f64, degrees: f64) -> f64 {
    let (sin, cos) = degrees.to_radians().sin_cos();
    let inner = (1.0 - (sin / index).powi(2)).max(0.0).sqrt();
    let s = (cos - index * inner) / (cos + index * inner);
    let p = (index * cos - inner) / (index * cos + inner);
    f64::midpoint(s * s, p * p)
}

/// Gloss units of a perfectly smooth surface of refractive index `index`; 100 for the reference glass.
pub fn smooth_gloss(index: f64, geometry: GlossGeometry) -> f64 {
    100.0 * reflectance(index, geometry.degrees()) / reflectance(REFERENCE_INDEX, geometry.degrees())
}

/// Haze index: reading at 60° minus reading at 20°; higher is hazier. **Source**: ASTM D4039.
pub fn haze_index(at_60: f64, at_20: f64) -> f64 {
    at_60 - at_20
}

/// What two gloss readings of one spot in one geometry say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum GlossChange {
    /// Less than two units apart: no change shown.
    NotShown,
    /// Glossier than before.
    Higher,
    /// Duller than before.
    Lower,
}

/// Compares two readings of one spot in one geometry.
pub fn gloss_change(before: f64, after: f64) -> GlossChange {
    match after - before {
        d if d >= LEAST_GLOSS_CHANGE => GlossChange::Higher,
        d if d <= -LEAST_GLOSS_CHANGE => GlossChange::Lower,
        _ => GlossChange::NotShown,
    }
}

/// The geometry to read next, and why, from what was read so far: 60° first, then the one that the last reading at 60° asks for.
///
/// **Source**: ASTM D523 and ISO 2813, as given on a summary page.
pub fn next_gloss_geometry(read: &[(GlossGeometry, f64)]) -> (GlossGeometry, &'static str) {
    let at_60 = read.iter().rev().find(|(geometry, _)| *geometry == GlossGeometry::Deg60);
    match at_60.map(|(_, units)| GlossGeometry::after_reading_at_60(*units)) {
        None => (GlossGeometry::Deg60, say!("measure-gloss-60-first")),
        Some(GlossGeometry::Deg20) => (GlossGeometry::Deg20, say!("measure-gloss-use-20")),
        Some(GlossGeometry::Deg85) => (GlossGeometry::Deg85, say!("measure-gloss-use-85")),
        Some(GlossGeometry::Deg60) => (GlossGeometry::Deg60, say!("measure-gloss-stay-60")),
    }
}

/// Gloss before and after polishing in one geometry.
#[derive(Debug, Clone, PartialEq)]
pub struct GlossComparison {
    /// The geometry.
    pub geometry: GlossGeometry,
    /// Mean before, mean after.
    pub means: (f64, f64),
    /// Whether that is a change.
    pub change: GlossChange,
    /// As a sentence.
    pub text: String,
}

/// Compares the readings of one panel before and after; `None` where one of the two is missing.
pub fn compare_gloss(geometry: GlossGeometry, before: &[f64], after: &[f64]) -> Option<GlossComparison> {
    let mean = |values: &[f64]| (!values.is_empty()).then(|| super::mean_and_sd(values).0);
    let (first, second) = (mean(before)?, mean(after)?);
    let change = gloss_change(first, second);
    let (before, after, degrees) = (decimal(first, 1), decimal(second, 1), decimal(geometry.degrees(), 0));
    let text = match change {
        GlossChange::Higher => say!("measure-gloss-higher", before = before, after = after, degrees = degrees),
        GlossChange::Lower => say!("measure-gloss-lower", before = before, after = after, degrees = degrees),
        GlossChange::NotShown => say!("measure-gloss-alike", before = before, after = after, degrees = degrees),
    };
    Some(GlossComparison { geometry, means: (first, second), change, text })
}
