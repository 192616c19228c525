//! The template format as it stands in a file.
//!
//! Lengths are in mm and the left side is given; what is not on the centreline is mirrored to the right.

use super::entries::{Entries, Name, Number};
use super::feature::FeatureKind;
use super::panel::{Skip, Substrate, Surface};
use crate::units::SquareMetres;
use serde::{Deserialize, Serialize};

/// The only format this program reads.
pub(super) const FORMAT: &str = "vehicle-template/1";

/// Class of body, for plausible areas and for choosing a template.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BodyClass {
    /// Closed, fixed roof, two doors, separate boot.
    Coupe,
    /// Open, with a folding roof.
    Convertible,
    /// Short, with a tailgate.
    Hatch,
    /// Four doors and a separate boot.
    Saloon,
    /// Long roof and a tailgate.
    Estate,
    /// High, long travel, wide arches.
    OffRoader,
    /// One tall box for people.
    PeopleCarrier,
    /// Cab and an open load bed.
    Pickup,
    /// A closed box for goods.
    Van,
    /// A large vehicle for many passengers.
    Coach,
}

pub(super) type Place = (Number, Number);

/// A whole template file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TemplateFile {
    pub(super) format: String,
    pub(super) id: Name,
    pub(super) name: String,
    pub(super) body: BodyClass,
    pub(super) length_mm: Number,
    pub(super) width_mm: Number,
    pub(super) height_mm: Number,
    pub(super) points: Entries<Place>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) lines: Vec<LineEntry>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) curves: Vec<CurveEntry>,
    pub(super) stances: Entries<Place>,
    pub(super) panels: Vec<PanelEntry>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) openings: Vec<OpeningEntry>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) wheels: Vec<WheelEntry>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) features: Vec<FeatureEntry>,
}

/// A smooth line through points: one curve between each two.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LineEntry {
    pub(super) through: Vec<Name>,
    /// Directions in degrees at some of the points: 0 rearward, 90 outward.
    #[serde(default, skip_serializing_if = "is_empty")]
    pub(super) along: Entries<Number>,
}

/// One curve with its own control points.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CurveEntry {
    pub(super) from: Name,
    pub(super) ctrl1: Place,
    pub(super) ctrl2: Place,
    pub(super) to: Name,
}

/// On which sides something exists.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Sides {
    /// Left as given, right mirrored.
    #[default]
    Both,
    /// Left only.
    Left,
    /// Right only; still given as if it were on the left.
    Right,
    /// One piece across the centreline; its left half is given, from centreline to centreline.
    Centre,
}

/// A panel.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PanelEntry {
    pub(super) id: Name,
    /// Key into the table of names; the id where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) part: Option<Name>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) number: Option<u32>,
    #[serde(default, skip_serializing_if = "is_default")]
    pub(super) side: Sides,
    pub(super) outline: Vec<Name>,
    pub(super) area_m2: SquareMetres,
    pub(super) substrate: Substrate,
    #[serde(default, skip_serializing_if = "is_default")]
    pub(super) surface: Surface,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) skip: Option<Skip>,
    pub(super) height_mm: (Number, Number),
    pub(super) stance: Name,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) leans_over: Vec<Name>,
}

/// Surface inside the contour that is no panel: an open cockpit, a load bed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct OpeningEntry {
    pub(super) id: Name,
    /// As the outline of a panel with side `centre` or `both`.
    pub(super) outline: Vec<Name>,
    #[serde(default, skip_serializing_if = "is_default")]
    pub(super) side: Sides,
}

/// A wheel on each side.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct WheelEntry {
    pub(super) centre: Place,
    pub(super) radius_mm: Number,
}

/// A feature: something on a panel that is drawn and may need care.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FeatureEntry {
    pub(super) kind: FeatureKind,
    pub(super) shape: ShapeEntry,
    #[serde(default, skip_serializing_if = "is_default")]
    pub(super) side: Sides,
}

/// How a feature is drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum ShapeEntry {
    /// A smooth line through places.
    Line(Vec<Place>),
    /// A box with rounded corners, turned by some degrees.
    Box {
        at: Place,
        size: Place,
        #[serde(default = "zero")]
        radius: Number,
        #[serde(default = "zero")]
        turn: Number,
    },
    /// A circle.
    Circle { at: Place, radius: Number },
}

fn zero() -> Number {
    Number::of(0.0)
}

fn is_empty<V>(entries: &Entries<V>) -> bool {
    entries.0.is_empty()
}

fn is_default<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}
