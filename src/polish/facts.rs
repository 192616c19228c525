//! What is known of a panel before anything is decided about it.

use super::clear::ClearEstimate;
use super::defect::DefectKind;
use super::plan::Level;
use crate::measure::FilmSummary;
use crate::say;
use crate::units::{Micrometres, SquareMetres};
use serde::{Deserialize, Serialize};

/// What the surface of a panel is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Finish {
    /// Colour under clear coat.
    #[default]
    ClearCoat,
    /// Colour without clear coat; the pad picks up colour.
    SingleStage,
    /// Matte or satin clear.
    Matte,
    /// Paint under protective film.
    FilmCovered,
    /// Paint under a wrap.
    Wrapped,
    /// Bare metal or plastic, unpainted trim.
    Bare,
    /// Glass.
    Glass,
    /// A plastic lens of a lamp.
    Lens,
}

impl Finish {
    /// Why nothing may be polished on it; `None` where polishing is possible.
    pub fn refusal(self) -> Option<&'static str> {
        match self {
            Self::ClearCoat | Self::SingleStage => None,
            Self::Matte => Some(say!("polish-not-matte")),
            Self::FilmCovered => Some(say!("polish-not-film")),
            Self::Wrapped => Some(say!("polish-not-wrap")),
            Self::Bare => Some(say!("polish-not-bare")),
            Self::Glass => Some(say!("polish-not-glass")),
            Self::Lens => Some(say!("polish-not-lens")),
        }
    }

    /// What to mind where polishing is possible.
    pub fn caution(self) -> Option<&'static str> {
        match self {
            Self::SingleStage => Some(say!("polish-single-stage")),
            _ => None,
        }
    }
}

/// What is known of the past of the paint on a panel.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum PaintHistory {
    /// Nobody knows; half of what may go in a lifetime is taken as spent.
    #[default]
    Unknown,
    /// Factory paint that was never polished.
    Original,
    /// Painted again at some time.
    Refinished,
    /// Painted again a short while ago and still hardening.
    FreshRefinish {
        /// Days since it was painted.
        days: u32,
    },
    /// Polished before, with a known or estimated removal in all.
    PolishedBefore {
        /// What earlier visits took, all together.
        removed_um: Micrometres,
    },
}

/// A sensor that looks through a panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Sensor {
    /// Radar behind a bumper cover.
    Radar,
    /// Parking sensors set into the panel.
    Ultrasonic,
    /// A camera behind glass or set into the panel.
    Camera,
}

/// One defect, as far as it matters for removal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DefectFacts {
    /// What it is.
    pub kind: DefectKind,
    /// Lowest and greatest depth it may have; the two are put in order where they are not.
    pub depth_um: (Micrometres, Micrometres),
    /// How much of the panel's visible trouble it is; zero or more, only the ratios count.
    pub weight: f64,
    /// Whether it sits in one place, so that work there is enough.
    pub local: bool,
}

impl DefectFacts {
    /// A defect of usual depth for its kind.
    pub fn usual(kind: DefectKind, weight: f64, local: bool) -> Self {
        let depth = kind.depth_range();
        Self { kind, depth_um: (depth.low, depth.high), weight, local }
    }

    /// Share of this defect that is gone after lowering the surface by `removal_um`, 0 to 1.
    ///
    /// The depth is taken as evenly spread between its two ends. Kinds that removal does not help stay at 0.
    pub fn share_gone(&self, removal_um: f64) -> f64 {
        if !self.kind.treatment().by_removal() {
            return 0.0;
        }
        let (a, b) = (self.depth_um.0.um(), self.depth_um.1.um());
        let (low, high) = (a.min(b), a.max(b));
        if removal_um >= high {
            1.0
        } else if removal_um <= low {
            0.0
        } else {
            (removal_um - low) / (high - low)
        }
    }

    /// The weight, with what is not a number or negative taken as none.
    pub fn safe_weight(&self) -> f64 {
        if self.weight.is_finite() { self.weight.clamp(0.0, 1e9) } else { 0.0 }
    }
}

/// Everything about one panel that the budget and the plan look at.
#[derive(Debug, Clone)]
pub struct PanelFacts<'a> {
    /// The film; `None` when nothing was read.
    pub film: Option<&'a FilmSummary>,
    /// The thinnest edge or body line, where one was read on its own; `None` otherwise. It does not limit the whole panel.
    pub edge: Option<&'a FilmSummary>,
    /// Why the panel can't be read, as the end of a sentence; `None` when it simply was not read yet.
    pub unreadable_reason: Option<String>,
    /// Real surface.
    pub area: SquareMetres,
    /// What the surface is.
    pub finish: Finish,
    /// What is known of its past.
    pub history: PaintHistory,
    /// What recorded visits took since then, all together; see [`super::Ledger`].
    pub removed_um: Micrometres,
    /// Clear coat measured on its own, where an ultrasonic gauge could; `None` means it is assumed from the film.
    pub measured_clear: Option<ClearEstimate>,
    /// A sensor that looks through the panel.
    pub sensor: Option<Sensor>,
    /// Whether the panel is mostly edges and body lines (pillars, sills, mirror caps).
    pub narrow: bool,
    /// The hardest level that somebody holds it at; `None` leaves it to the plan.
    pub level_at_most: Option<Level>,
    /// What is wrong with it; may be empty.
    pub defects: &'a [DefectFacts],
}

impl<'a> PanelFacts<'a> {
    /// A panel of clear-coated paint of unknown history without defects.
    pub fn new(film: Option<&'a FilmSummary>, area: SquareMetres) -> Self {
        Self {
            film,
            edge: None,
            unreadable_reason: None,
            area,
            finish: Finish::default(),
            history: PaintHistory::default(),
            removed_um: Micrometres::ZERO,
            measured_clear: None,
            sensor: None,
            narrow: false,
            level_at_most: None,
            defects: &[],
        }
    }
}
