//! Film gauges: what they can read, and how far off a reading may be.

use super::uncertainty::Contribution;
use crate::say;
use crate::units::Micrometres;
use crate::units::fields;
use serde::{Deserialize, Serialize};

/// How a gauge finds the thickness.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GaugePrinciple {
    /// Reads the distance to steel (ISO 2178).
    MagneticInduction,
    /// Reads the distance to a conductor that is not magnetic, such as aluminium (ISO 2360).
    EddyCurrent,
    /// Both in one, as most gauges for vehicles do: steel by induction, aluminium by eddy current.
    MagneticAndEddyCurrent,
    /// Reads an echo, so it works on plastic too (ASTM D6132, ISO 2808).
    Ultrasonic,
}

/// What lies under the paint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Base {
    /// Carbon steel, galvanised or not.
    Steel,
    /// Aluminium sheet.
    Aluminium,
    /// Plastic or glass-fibre composite.
    Plastic,
    /// Carbon-fibre composite.
    CarbonFibre,
    /// Glass.
    Glass,
}

impl GaugePrinciple {
    /// Every principle.
    pub const ALL: [Self; 4] =
        [Self::MagneticInduction, Self::EddyCurrent, Self::MagneticAndEddyCurrent, Self::Ultrasonic];

    /// As it stands in a sentence.
    pub fn name(self) -> &'static str {
        match self {
            Self::MagneticInduction => say!("measure-magnetic-induction"),
            Self::EddyCurrent => say!("measure-eddy-current"),
            Self::MagneticAndEddyCurrent => say!("measure-induction-and-eddy-current"),
            Self::Ultrasonic => say!("measure-ultrasonic"),
        }
    }

    /// Why this principle gives no thickness on `base`; `None` where it does.
    ///
    /// **Source**: scopes of ISO 2178 and ISO 2360; for carbon fibre from memory (it conducts, so an eddy current reading is
    /// meaningless).
    pub fn refusal(self, base: Base) -> Option<&'static str> {
        match (self, base) {
            (_, Base::Glass) => Some(say!("measure-no-glass")),
            (Self::MagneticInduction | Self::MagneticAndEddyCurrent, Base::Steel)
            | (Self::EddyCurrent | Self::MagneticAndEddyCurrent, Base::Aluminium)
            | (Self::Ultrasonic, Base::Steel | Base::Aluminium | Base::Plastic | Base::CarbonFibre) => None,
            (Self::MagneticInduction, Base::Aluminium) => Some(say!("measure-magnetic-on-aluminium")),
            (Self::MagneticInduction, _) => Some(say!("measure-magnetic-on-no-metal")),
            (Self::EddyCurrent, Base::Steel) => Some(say!("measure-eddy-on-steel")),
            (Self::EddyCurrent | Self::MagneticAndEddyCurrent, Base::CarbonFibre) => {
                Some(say!("measure-eddy-on-carbon"))
            }
            (Self::EddyCurrent | Self::MagneticAndEddyCurrent, _) => Some(say!("measure-no-metal")),
        }
    }
}

/// A film gauge. Its maker states the accuracy as ±(fixed part + share of the reading).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Gauge {
    /// How it measures.
    pub principle: GaugePrinciple,
    /// Fixed part of the stated accuracy.
    pub accuracy_fixed_um: Micrometres,
    /// Proportional part of the stated accuracy, as a share of the reading: 0.03 is 3 %.
    #[serde(deserialize_with = "fields::share")]
    pub accuracy_share: f64,
    /// Smallest step of the display.
    pub resolution_um: Micrometres,
}

impl Default for Gauge {
    /// An ordinary hand gauge for steel: ±(2 µm + 3 %), 1 µm steps (from memory; typical of hand gauges).
    fn default() -> Self {
        Self {
            principle: GaugePrinciple::MagneticInduction,
            accuracy_fixed_um: Micrometres::of(2.0),
            accuracy_share: 0.03,
            resolution_um: Micrometres::of(1.0),
        }
    }
}

impl Gauge {
    /// Half width of the stated accuracy at a reading, in µm.
    pub fn accuracy_at(&self, reading: f64) -> f64 {
        self.accuracy_fixed_um.um() + self.accuracy_share * reading.abs()
    }

    /// Standard uncertainty from the stated accuracy, taken as a rectangle (JCGM 100, 4.3.7): half width / √3.
    pub fn accuracy_contribution(&self, reading: f64) -> Contribution {
        Contribution::certain(self.accuracy_at(reading) / 3.0_f64.sqrt())
    }

    /// Standard uncertainty from the steps of the display: step / √12 (JCGM 100, F.2.2.1).
    pub fn resolution_contribution(&self) -> Contribution {
        Contribution::certain(self.resolution_um.um() / 12.0_f64.sqrt())
    }
}

/// One reading on a shim or a bare plate of known thickness.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GaugeCheck {
    /// What is certified; 0 for the bare plate.
    pub certified_um: Micrometres,
    /// What the gauge showed.
    pub shown_um: Micrometres,
}

impl Gauge {
    /// Whether a check reading lies within the stated accuracy plus half a display step.
    ///
    /// **Source**: the idea of verifying before and after use is ASTM D7091; readings since the last good check are suspect
    /// when one fails (from memory).
    pub fn passes(&self, check: &GaugeCheck) -> bool {
        let off = (check.shown_um.um() - check.certified_um.um()).abs();
        off <= self.allowed_at(check.certified_um).um() + 1e-9
    }

    /// How far a check reading may lie from what is certified: the stated accuracy plus half a display step.
    pub fn allowed_at(&self, certified: Micrometres) -> Micrometres {
        super::thickness(self.accuracy_at(certified.um()) + self.resolution_um.um() / 2.0)
    }
}
