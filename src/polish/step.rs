//! The steps a shop works with.

use super::equipment::Equipment;
use super::starting::called;
use crate::say;
use crate::units::fields;
use crate::units::{Decibels, MetresPerSecondSquared, Micrometres};
use serde::{Deserialize, Serialize};
use std::fmt;

/// How hard a step is, from hardest to gentlest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StepKind {
    /// Wet sanding.
    Sand,
    /// Cutting with an aggressive polish; leaves marks of its own.
    Cut,
    /// Polishing that corrects and leaves gloss.
    Polish,
    /// Finest polishing, for gloss.
    Finish,
}

impl StepKind {
    /// Every kind, from hardest to gentlest.
    pub const ALL: [Self; 4] = [Self::Sand, Self::Cut, Self::Polish, Self::Finish];

    /// As a crew problem calls it.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Sand => "sand",
            Self::Cut => "cut",
            Self::Polish => "polish",
            Self::Finish => "finish",
        }
    }

    /// What somebody does, as on a list: "cut".
    pub fn verb(self) -> &'static str {
        match self {
            Self::Sand => say!("polish-verb-sand"),
            Self::Cut => say!("polish-verb-cut"),
            Self::Polish => say!("polish-verb-polish"),
            Self::Finish => say!("polish-verb-finish"),
        }
    }

    /// Whether paint may be left as this step leaves it.
    pub fn leaves_gloss(self) -> bool {
        matches!(self, Self::Polish | Self::Finish)
    }
}

impl fmt::Display for StepKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Sand => say!("polish-kind-sanding"),
            Self::Cut => say!("polish-kind-cutting"),
            Self::Polish => say!("polish-kind-polishing"),
            Self::Finish => say!("polish-kind-finishing"),
        })
    }
}

/// One way of working: a machine, a pad and an abrasive together.
///
/// A pass is going once over the whole surface, crosswise overlaps included.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PolishStep {
    /// What the shop calls it.
    pub name: String,
    /// How hard it is.
    pub kind: StepKind,
    /// Mean removal of one pass.
    pub removal_um: Micrometres,
    /// Share by which the removal may be higher on this paint: 0.5 means up to one and a half times the mean.
    #[serde(deserialize_with = "fields::amount")]
    pub removal_spread: f64,
    /// Depth of the marks it leaves behind, worst case; the next step must take them out.
    pub scratch_left_um: Micrometres,
    /// Deepest defect it can work out, however many passes.
    pub clears_up_to_um: Micrometres,
    /// Time of one pass over a square metre.
    #[serde(deserialize_with = "fields::amount")]
    pub seconds_per_m2_pass: f64,
    /// Time to prepare pad and panel and to wipe after the step, per panel.
    pub setup_s: u32,
    /// Fewest passes that give an even result, 1 to 50.
    #[serde(deserialize_with = "fields::passes")]
    pub min_passes: u32,
    /// Most passes before the abrasive is spent, 1 to 50; where it is below the fewest, the step is never planned.
    #[serde(deserialize_with = "fields::passes")]
    pub max_passes: u32,
    /// Vibration the machine's maker declares; zero for work by hand.
    pub vibration_ms2: MetresPerSecondSquared,
    /// Uncertainty K of that declaration; the sum of both is used.
    pub vibration_k_ms2: MetresPerSecondSquared,
    /// Sound level at the ear while the machine runs; zero for work by hand.
    pub noise_db: Decibels,
    /// What it is done with.
    #[serde(default, skip_serializing_if = "Equipment::is_unsaid")]
    pub equipment: Equipment,
}

/// More passes than this are never planned.
const MOST_PASSES: u32 = 50;

impl PolishStep {
    /// Its name as a person reads it: that of a step of the starting set in the language in use, else as the shop wrote it.
    pub fn called(&self) -> &str {
        called(&self.name)
    }

    /// The numbers of passes that may be planned.
    pub fn passes(&self) -> std::ops::RangeInclusive<u32> {
        self.min_passes.max(1)..=self.max_passes.min(MOST_PASSES)
    }

    /// Mean removal of a number of passes, in µm.
    pub fn removal(&self, passes: u32) -> f64 {
        f64::from(passes) * self.removal_um.um()
    }

    /// Upper bound of the removal of a number of passes, in µm. Passes on one paint err in the same direction, so it is linear.
    pub fn removal_upper(&self, passes: u32) -> f64 {
        self.removal(passes) * (1.0 + self.removal_spread.max(0.0))
    }

    /// Whole seconds for a number of passes over `area_m2`, rounded up; the setup is included.
    pub fn seconds(&self, passes: u32, area_m2: f64) -> i64 {
        i64::from(self.setup_s) + (f64::from(passes) * self.seconds_per_m2_pass * area_m2 - 1e-9).ceil().max(0.0) as i64
    }

    /// Vibration to reckon with: as declared, plus its uncertainty.
    pub fn vibration_with_k(&self) -> MetresPerSecondSquared {
        let sum = self.vibration_ms2.ms2() + self.vibration_k_ms2.ms2();
        MetresPerSecondSquared::new(sum.min(100.0)).unwrap_or(MetresPerSecondSquared::ZERO)
    }
}
