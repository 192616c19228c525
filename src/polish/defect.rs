//! Kinds of defects: how deep they usually are, and what helps.

use crate::say;
use crate::units::Micrometres;
use serde::{Deserialize, Serialize};
use std::fmt;

/// What helps against a kind of defect.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Treatment {
    /// Polishing takes it out.
    Polish,
    /// Polishing makes it less; it goes only if the budget reaches its bottom.
    Reduce,
    /// It lies on top: it is dissolved, clayed or wiped off, not polished.
    Decontaminate,
    /// It needs new clear or new paint.
    Refinish,
    /// Paint is missing: touch up, or refinish.
    TouchUp,
    /// It stands proud: it is levelled in its place only.
    LevelLocally,
}

impl Treatment {
    /// Whether taking clear off the panel helps.
    pub fn by_removal(self) -> bool {
        matches!(self, Self::Polish | Self::Reduce)
    }

    /// What helps, as the end of a sentence.
    pub fn in_words(self) -> &'static str {
        match self {
            Self::Polish => say!("polish-helps-polish"),
            Self::Reduce => say!("polish-helps-reduce"),
            Self::Decontaminate => say!("polish-helps-decontaminate"),
            Self::Refinish => say!("polish-helps-refinish"),
            Self::TouchUp => say!("polish-helps-touch-up"),
            Self::LevelLocally => say!("polish-helps-level-locally"),
        }
    }
}

/// Depth of a defect below the surface: the lowest, the likely and the greatest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DepthRange {
    /// Shallowest usual depth.
    pub low: Micrometres,
    /// Likely depth.
    pub likely: Micrometres,
    /// Greatest usual depth.
    pub high: Micrometres,
}

macro_rules! kinds {
    ($($(#[$doc:meta])* $kind:ident, $name:literal, $low:literal, $likely:literal, $high:literal, $treatment:ident;)*) => {
        /// What is wrong with the paint at a place.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        pub enum DefectKind {
            $($(#[$doc])* $kind,)*
        }

        impl DefectKind {
            /// Every kind, in the order of a list to choose from.
            pub const ALL: &'static [Self] = &[$(Self::$kind,)*];

            /// The words of the trade for it.
            pub fn name(self) -> &'static str {
                match self { $(Self::$kind => say!($name),)* }
            }

            /// Usual depth below the surface (our estimates; no measured depths were found).
            pub fn depth_range(self) -> DepthRange {
                let (low, likely, high) = match self { $(Self::$kind => ($low, $likely, $high),)* };
                DepthRange { low: Micrometres::of(low), likely: Micrometres::of(likely), high: Micrometres::of(high) }
            }

            /// What helps.
            pub fn treatment(self) -> Treatment {
                match self { $(Self::$kind => Treatment::$treatment,)* }
            }
        }
    };
}

kinds! {
    /// Fine round scratches seen around a lamp.
    Swirl, "polish-defect-swirl", 0.3, 1.2, 2.0, Polish;
    /// Fine scratches from washing, mostly straight.
    WashMark, "polish-defect-wash-mark", 0.3, 1.2, 2.0, Polish;
    /// A milky veil.
    Haze, "polish-defect-haze", 0.1, 0.3, 0.5, Polish;
    /// Trails of a machine that move with the light.
    Hologram, "polish-defect-hologram", 0.1, 0.3, 0.5, Polish;
    /// Marks left by sanding.
    SandScratch, "polish-defect-sand-scratch", 1.0, 2.0, 3.0, Polish;
    /// A single scratch, deeper than those around it.
    DeepScratch, "polish-defect-deep-scratch", 2.0, 6.0, 12.0, Reduce;
    /// Minerals left by drying water; they lie on top.
    WaterSpot, "polish-defect-water-spot", 0.0, 0.0, 1.0, Decontaminate;
    /// A mark that water or insects ate into the clear.
    Etching, "polish-defect-etching", 1.0, 3.0, 10.0, Reduce;
    /// A mark that a bird dropping left in the clear.
    BirdEtching, "polish-defect-bird-etching", 1.0, 4.0, 10.0, Reduce;
    /// Dull, weathered single-stage paint.
    Oxidation, "polish-defect-oxidation", 1.0, 3.0, 5.0, Polish;
    /// Waviness of the surface from spraying.
    OrangePeel, "polish-defect-orange-peel", 1.0, 3.0, 5.0, Reduce;
    /// Dried paint mist on top.
    Overspray, "polish-defect-overspray", 0.0, 0.0, 0.0, Decontaminate;
    /// Tar on top.
    Tar, "polish-defect-tar", 0.0, 0.0, 0.0, Decontaminate;
    /// Iron particles that stick in the surface.
    RailDust, "polish-defect-rail-dust", 0.0, 0.0, 2.0, Decontaminate;
    /// A hole through the clear, often to the primer.
    StoneChip, "polish-defect-stone-chip", 50.0, 100.0, 200.0, TouchUp;
    /// Clear that cracks, peels or has lost its hold.
    ClearFailure, "polish-defect-clear-failure", 30.0, 40.0, 50.0, Refinish;
    /// Small holes from solvent that boiled out.
    SolventPop, "polish-defect-solvent-pop", 10.0, 20.0, 40.0, Refinish;
    /// Round pits that the paint drew back from.
    Crater, "polish-defect-crater", 5.0, 15.0, 40.0, Refinish;
    /// A grain of dust under or in the clear.
    Nib, "polish-defect-nib", 5.0, 20.0, 50.0, LevelLocally;
    /// A run or sag of the clear.
    Run, "polish-defect-run", 10.0, 40.0, 100.0, LevelLocally;
}

impl fmt::Display for DefectKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

/// Etching deeper than this is sanded and painted on metallic paint: 0.5 mil.
///
/// **Source**: a vehicle maker's technical service bulletin on acid rain, 1992 (excerpt seen).
pub const ETCH_REFINISH_METALLIC_UM: Micrometres = Micrometres::of(12.7);

/// Depth from which a fingernail catches (our estimate: the bench rule says about 4 to 5 µm).
pub const FINGERNAIL_CATCHES_UM: Micrometres = Micrometres::of(4.5);
