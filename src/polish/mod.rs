//! What may go from a panel, what must go, and what will be done.
//!
//! The budget is the smallest of several named limits on the removal and rests on lower bounds of what was read. The planner then
//! finds the least work within it. Nothing is planned on a panel without a budget.
//!
//! The model of removal: each pass of a step takes a mean thickness r, and on this paint perhaps up to r·(1 + spread), the same
//! way in every pass. A defect of depth d goes when the surface around it is lowered to its bottom, so removal = depth; it must
//! also be within reach of one of the steps. A panel's defects of one kind have depths spread evenly between two ends, so lowering
//! the surface part of the way makes part of them go.
//!
//! It knows numbers and the summary of the film. It must not know vehicles, jobs, workers or clocks.

mod ambition;
mod budget;
mod calibrate;
mod choose;
mod clear;
mod customer;
mod defect;
mod dose;
mod equipment;
mod exposure;
mod facts;
mod learned;
mod ledger;
mod local;
mod materials;
mod neighbour;
mod outcome;
mod pair;
mod plan;
mod policy;
mod preston;
mod prospect;
mod search;
mod severity;
mod shop;
mod sieve;
mod starting;
mod step;
mod test_spot;
mod ultraviolet;
mod within;
mod words;

pub use ambition::{AmbitionPoint, ambition};
pub use budget::{Budget, LEAST_USEFUL_UM, Limit, budget, budget_at};
pub use calibrate::{
    CARRIED_PASSES, Calibration, Factor, LEAST_SPREAD, PaintHardness, TestSpot, calibrate, depth_from_test, test_order,
};
pub use choose::LOCAL_WORTH;
pub use clear::{ClearBasis, ClearEstimate};
pub use defect::{DefectKind, DepthRange, ETCH_REFINISH_METALLIC_UM, FINGERNAIL_CATCHES_UM, Treatment};
pub use dose::{Dose, split_days, swap_panels};
pub use equipment::{Drive, Equipment};
pub use exposure::{
    HAV_ACTION, HAV_LIMIT, NOISE_VALUES_DB, Standing, combine_a8, hav_a8, hav_points, hav_standing, hav_time_until,
    noise_lex8h, noise_standing, osha_allowed_hours, osha_dose_pct, osha_twa,
};
pub use facts::{DefectFacts, Finish, PaintHistory, PanelFacts, Sensor};
pub use learned::{Learned, SHARES_APART, learn};
pub use ledger::{Ledger, LedgerEntry, RemovalSource};
pub use local::{LOCAL_AREA_M2, LocalWork};
pub use materials::{Mixture, RatioReading, StepMaterials, UsePolicy, materials, mix};
pub use neighbour::{Beside, SEEN_CORRECTION, SeamDifference, neighbour_findings, seam_differences};
pub use outcome::Outcome;
pub use pair::{DayExposure, PolishOperation, day_exposure, exposure_advice, polish_operations, share_vibration};
pub use plan::{Goal, Level, PlannedStep, PolishPlan, Stays, plan};
pub use policy::RemovalPolicy;
pub use preston::{Working, orbital_speed, rotary_speed};
pub use prospect::Prospect;
pub use severity::{Fingernail, depth_by_fingernail, size_class, visible_weight};
pub use shop::{Cost, Prices, Shop, cost};
pub use starting::called;
pub use step::{PolishStep, StepKind};
pub use test_spot::{FinishSeen, NextTest, RemovalBasis, Seen, TestRemoval, TestResult, TestSpots};
pub use ultraviolet::ultraviolet_factor;
