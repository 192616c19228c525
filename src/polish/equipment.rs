//! What a step is done with: machine, pad, abrasive. For people and for the speed under the pad; the plan rests on the removal.

use super::preston::{orbital_speed, rotary_speed};
use crate::say;
use crate::units::fields;
use serde::{Deserialize, Serialize};
use std::fmt;

/// How the pad is moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Drive {
    /// Nobody said.
    #[default]
    NotSaid,
    /// By hand.
    Hand,
    /// An orbital machine: the pad orbits and turns freely.
    Orbital,
    /// A rotary machine: the pad turns about its middle.
    Rotary,
}

impl Drive {
    /// All of them, in the order of a list to choose from.
    pub const ALL: [Self; 4] = [Self::NotSaid, Self::Hand, Self::Orbital, Self::Rotary];
}

impl fmt::Display for Drive {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotSaid => say!("polish-drive-not-said"),
            Self::Hand => say!("polish-drive-hand"),
            Self::Orbital => say!("polish-drive-orbital"),
            Self::Rotary => say!("polish-drive-rotary"),
        })
    }
}

/// What a step is done with, and what it uses up.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Equipment {
    /// How the pad is moved.
    pub drive: Drive,
    /// Diameter of the orbit (its throw), in mm; of no meaning without an orbital machine.
    #[serde(deserialize_with = "fields::amount")]
    pub orbit_mm: f64,
    /// Orbits or turns per minute.
    #[serde(deserialize_with = "fields::amount")]
    pub per_minute: f64,
    /// Diameter of the pad, in mm.
    #[serde(deserialize_with = "fields::amount")]
    pub pad_mm: f64,
    /// The pad in plain words.
    pub pad: String,
    /// The abrasive in plain words.
    pub abrasive: String,
    /// Surface after which the pad is changed for a clean one, in m²; zero leaves it to the shop's usual figure.
    #[serde(deserialize_with = "fields::amount")]
    pub m2_per_pad: f64,
    /// Polish for a square metre, in ml; zero leaves it to the shop's usual figure.
    #[serde(deserialize_with = "fields::amount")]
    pub polish_ml_per_m2: f64,
}

impl Equipment {
    /// Whether nothing was said of it.
    pub fn is_unsaid(&self) -> bool {
        *self == Self::default()
    }

    /// Mean speed under the pad, in m/s; none by hand or where the figures for it are missing.
    pub fn pad_speed(&self) -> Option<f64> {
        let speed = match self.drive {
            Drive::Orbital => orbital_speed(self.orbit_mm, self.per_minute),
            Drive::Rotary => rotary_speed(self.pad_mm, self.per_minute),
            Drive::Hand | Drive::NotSaid => 0.0,
        };
        (speed > 0.0 && speed.is_finite()).then_some(speed)
    }
}
