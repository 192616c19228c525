//! How a shop works and what it pays: leads, what is used up, prices.

use super::materials::{StepMaterials, UsePolicy};
use crate::units::Seconds;
use crate::units::fields;
use serde::{Deserialize, Serialize};

/// What a shop brings to every job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Shop {
    /// Whether the machines are on leads, so that changing the side of the vehicle costs time.
    pub leads: bool,
    /// What is used up.
    pub uses: UsePolicy,
    /// What it pays.
    pub prices: Prices,
}

impl Default for Shop {
    /// Machines on leads; nothing priced.
    fn default() -> Self {
        Self { leads: true, uses: UsePolicy::default(), prices: Prices::default() }
    }
}

/// What a shop pays, in its own currency. Zero where nothing has been entered; for the shop alone, never for a customer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Prices {
    /// The currency as the shop writes it.
    pub currency: String,
    /// An hour of one person.
    #[serde(deserialize_with = "fields::amount")]
    pub labour_per_hour: f64,
    /// Wear of a pad each time it is taken.
    #[serde(deserialize_with = "fields::amount")]
    pub pad: f64,
    /// A sheet of sandpaper.
    #[serde(deserialize_with = "fields::amount")]
    pub sheet: f64,
    /// A litre of polish.
    #[serde(deserialize_with = "fields::amount")]
    pub polish_per_litre: f64,
    /// Washing and wear of a towel.
    #[serde(deserialize_with = "fields::amount")]
    pub towel: f64,
}

impl Default for Prices {
    fn default() -> Self {
        Self {
            currency: "EUR".to_owned(),
            labour_per_hour: 0.0,
            pad: 0.0,
            sheet: 0.0,
            polish_per_litre: 0.0,
            towel: 0.0,
        }
    }
}

/// What polishing a vehicle costs the shop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cost {
    /// Hours of everybody.
    pub labour: f64,
    /// Pads and sheets of sandpaper.
    pub pads: f64,
    /// Polish.
    pub polish: f64,
    /// Towels.
    pub towels: f64,
}

impl Cost {
    /// All of it.
    pub fn total(self) -> f64 {
        self.labour + self.pads + self.polish + self.towels
    }
}

/// Prices times amounts; `people_seconds` is the time of everybody together.
pub fn cost(used: &[StepMaterials], people_seconds: Seconds, prices: &Prices) -> Cost {
    let sum = |each: &dyn Fn(&StepMaterials) -> f64| used.iter().map(each).sum::<f64>();
    Cost {
        labour: people_seconds.max(0) as f64 / 3600.0 * prices.labour_per_hour,
        pads: sum(&|s| f64::from(s.pads) * prices.pad + f64::from(s.sheets) * prices.sheet),
        polish: sum(&|s| s.polish.ml() / 1000.0 * prices.polish_per_litre),
        towels: sum(&|s| f64::from(s.towels) * prices.towel),
    }
}
