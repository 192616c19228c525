//! A panel and the place one stands to work it.

use super::id::{PanelId, Side};
use super::names::{Naming, panel_name};
use crate::geometry::{FloorPoint, LabelPlace, Outline};
use crate::say;
use crate::units::SquareMetres;
use serde::{Deserialize, Serialize};

/// What a panel is made of, which decides by which principle its film can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Substrate {
    /// Carbon steel, plain or galvanized.
    Steel,
    /// Aluminium sheet.
    Aluminium,
    /// Unreinforced plastic, such as a bumper cover.
    Plastic,
    /// Glass.
    Glass,
    /// Fibre-reinforced plastic.
    Composite,
}

impl Substrate {
    /// Every kind.
    pub const ALL: [Self; 5] = [Self::Steel, Self::Aluminium, Self::Plastic, Self::Glass, Self::Composite];

    /// As it stands in a sentence.
    pub fn name(self) -> &'static str {
        match self {
            Self::Steel => say!("vehicle-substrate-steel"),
            Self::Aluminium => say!("vehicle-substrate-aluminium"),
            Self::Plastic => say!("vehicle-substrate-plastic"),
            Self::Glass => say!("vehicle-substrate-glass"),
            Self::Composite => say!("vehicle-substrate-composite"),
        }
    }
}

/// What kind of surface is polished or coated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Surface {
    /// Colour and clear, or single-stage paint.
    #[default]
    Paint,
    /// A window.
    Glass,
    /// The cover of a lamp.
    Lamp,
    /// Bare or textured plastic, cloth, rubber.
    Trim,
}

/// Why a panel is left out of the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Skip {
    /// It is not on this vehicle.
    Absent,
    /// Covered with coloured film: not polished, coated only with what its maker allows.
    Wrapped,
    /// Matte paint: any polishing would shine.
    Matte,
    /// Covered with clear protective film.
    FilmCovered,
    /// It stays as it is, for example glass that is not to be coated.
    NotCoated,
}

impl Skip {
    /// Every reason.
    pub const ALL: [Self; 5] = [Self::Absent, Self::Wrapped, Self::Matte, Self::FilmCovered, Self::NotCoated];

    /// In one or two words, as it stands on the map: "under film".
    pub fn short(self) -> &'static str {
        match self {
            Self::Absent => say!("vehicle-skip-absent"),
            Self::Wrapped => say!("vehicle-skip-wrapped"),
            Self::Matte => say!("vehicle-skip-matte"),
            Self::FilmCovered => say!("vehicle-skip-film-covered"),
            Self::NotCoated => say!("vehicle-skip-not-coated"),
        }
    }

    /// What it means, as printed: "covered with clear film".
    pub fn words(self) -> &'static str {
        match self {
            Self::Absent => say!("vehicle-why-absent"),
            Self::Wrapped => say!("vehicle-why-wrapped"),
            Self::Matte => say!("vehicle-why-matte"),
            Self::FilmCovered => say!("vehicle-why-film-covered"),
            Self::NotCoated => say!("vehicle-why-not-coated"),
        }
    }
}

/// How high a panel sits above the ground, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeightBand {
    /// Lowest point.
    pub low: f32,
    /// Highest point.
    pub high: f32,
}

/// A place on the floor where somebody stands to work.
#[derive(Debug, Clone, PartialEq)]
pub struct Stance {
    /// Name within the template: `door-front-left`.
    pub id: String,
    /// Where.
    pub at: FloorPoint,
}

impl Stance {
    /// Least room a person needs beside the body, mm. Our estimate.
    pub const ROOM_MM: f64 = 200.0;
    /// Furthest place from which a panel can be worked, mm. Our estimate.
    pub const REACH_MM: f64 = 1_500.0;
}

/// One panel of a vehicle.
#[derive(Debug, Clone)]
pub struct Panel {
    /// Name within the template.
    pub id: PanelId,
    /// Key into the table of names.
    pub part: String,
    /// Number, where a vehicle has several of one part on one side.
    pub number: Option<u32>,
    /// Side as seen from the seat facing forward.
    pub side: Side,
    /// Outline on the map.
    pub outline: Outline,
    /// Real surface, an estimate for the class of vehicle; not the area on the map.
    pub area: SquareMetres,
    /// What it is made of.
    pub substrate: Substrate,
    /// What kind of surface it has.
    pub surface: Surface,
    /// Why it is left out of the work; `None` when it takes part.
    pub skip: Option<Skip>,
    /// How high it sits.
    pub height: HeightBand,
    /// Index of the place one stands at to work it.
    pub stance: usize,
    /// Panels that are leant over meanwhile, in order of their ids.
    pub leans_over: Vec<PanelId>,
    /// Where a label fits best.
    pub label: LabelPlace,
}

impl Panel {
    /// What the panel is called: `Bonnet, left` or `Hood, left`.
    pub fn name(&self, naming: Naming) -> String {
        panel_name(&self.part, self.number, self.side, naming)
    }

    /// The same without its side.
    pub fn name_without_side(&self, naming: Naming) -> String {
        panel_name(&self.part, self.number, Side::Centre, naming)
    }
}
