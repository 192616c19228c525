//! The steps a shop works with.

use super::equipment::{Drive, Equipment};
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

    /// What somebody does: "cut", as on a list and in a crew problem.
    pub fn verb(self) -> &'static str {
        match self {
            Self::Sand => "sand",
            Self::Cut => "cut",
            Self::Polish => "polish",
            Self::Finish => "finish",
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
            Self::Sand => "sanding",
            Self::Cut => "cutting",
            Self::Polish => "polishing",
            Self::Finish => "finishing",
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

    /// A set of steps to start from. Every number is our estimate inside what trade pages give per step; a test spot replaces it.
    pub fn starting_set() -> Vec<Self> {
        let step = |name: &str, kind, removal, left, clears, seconds, passes: (u32, u32)| Self {
            name: name.to_owned(),
            kind,
            removal_um: Micrometres::of(removal),
            removal_spread: 0.5,
            scratch_left_um: Micrometres::of(left),
            clears_up_to_um: Micrometres::of(clears),
            seconds_per_m2_pass: seconds,
            setup_s: 60,
            min_passes: passes.0,
            max_passes: passes.1,
            vibration_ms2: MetresPerSecondSquared::ZERO,
            vibration_k_ms2: MetresPerSecondSquared::ZERO,
            noise_db: Decibels::ZERO,
            equipment: Equipment::default(),
        };
        let by_hand = |abrasive: &str, step: Self| {
            let (pad, abrasive) = ("sanding block".to_owned(), abrasive.to_owned());
            Self { equipment: Equipment { drive: Drive::Hand, pad, abrasive, ..Equipment::default() }, ..step }
        };
        let orbital = |pad: &str, abrasive: &str, step: Self| Self {
            vibration_ms2: MetresPerSecondSquared::of(4.0),
            vibration_k_ms2: MetresPerSecondSquared::of(1.5),
            noise_db: Decibels::of(82.0),
            equipment: Equipment {
                drive: Drive::Orbital,
                orbit_mm: 15.0,
                per_minute: 4_000.0,
                pad_mm: 125.0,
                pad: pad.to_owned(),
                abrasive: abrasive.to_owned(),
                ..Equipment::default()
            },
            ..step
        };
        vec![
            by_hand("P2500, wet", step("Wet sanding by hand, P2500", StepKind::Sand, 1.0, 1.7, 8.0, 300.0, (1, 4))),
            by_hand("P3000, wet", step("Wet sanding by hand, P3000", StepKind::Sand, 0.6, 1.3, 6.0, 300.0, (1, 4))),
            orbital(
                "firm",
                "cutting polish",
                step("Cutting polish, firm pad", StepKind::Cut, 0.8, 0.5, 6.0, 240.0, (2, 6)),
            ),
            orbital(
                "medium",
                "medium polish",
                step("Medium polish, medium pad", StepKind::Polish, 0.4, 0.25, 3.0, 240.0, (2, 6)),
            ),
            orbital(
                "soft",
                "fine polish",
                step("Fine polish, soft pad", StepKind::Finish, 0.12, 0.05, 1.0, 200.0, (2, 6)),
            ),
        ]
    }
}
