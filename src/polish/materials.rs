//! Pads, polish, towels and mixtures.

use super::local::LOCAL_AREA_M2;
use super::plan::PolishPlan;
use super::step::StepKind;
use crate::units::fields;
use crate::units::{Millilitres, SquareMetres};
use serde::{Deserialize, Serialize};

/// How a ratio such as "1:10" is meant. It is ambiguous, so both readings are spelled out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RatioReading {
    /// One part of concentrate to that many parts of water: 1 + 10.
    PartsWater,
    /// One part of concentrate in that many parts of the mixture: 1 + 9.
    PartsInAll,
}

/// A mixture of concentrate and water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixture {
    /// Concentrate.
    pub concentrate: Millilitres,
    /// Water.
    pub water: Millilitres,
    /// Concentrate as a share of the whole, 0 to 1.
    pub share: f64,
}

/// Mixes `whole` at a ratio of 1 to `parts`; `parts` at least 1.
pub fn mix(whole: Millilitres, parts: f64, reading: RatioReading) -> Mixture {
    let parts = if parts.is_finite() { parts.max(1.0) } else { 1.0 };
    let share = match reading {
        RatioReading::PartsWater => 1.0 / (parts + 1.0),
        RatioReading::PartsInAll => 1.0 / parts,
    };
    let concentrate = whole.ml() * share;
    let of = |ml: f64| Millilitres::new(ml.max(0.0)).unwrap_or(Millilitres::ZERO);
    Mixture { concentrate: of(concentrate), water: of(whole.ml() - concentrate), share }
}

/// How much a shop uses. Common practice, no source, unless said otherwise; editable.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct UsePolicy {
    /// Surface after which a pad is changed for a clean one.
    pub m2_per_pad: SquareMetres,
    /// Polish for a square metre and step.
    #[serde(deserialize_with = "fields::amount")]
    pub polish_ml_per_m2: f64,
    /// Surface that a wiping towel serves.
    pub m2_per_towel: SquareMetres,
    /// Sheets of sandpaper for a square metre.
    #[serde(deserialize_with = "fields::amount")]
    pub sheets_per_m2: f64,
}

impl Default for UsePolicy {
    /// A clean pad every one to two panels, that is 5 to 8 a vehicle and step; amounts are our estimate.
    fn default() -> Self {
        Self {
            m2_per_pad: SquareMetres::of(2.0),
            polish_ml_per_m2: 5.0,
            m2_per_towel: SquareMetres::of(2.5),
            sheets_per_m2: 1.0,
        }
    }
}

/// What one step uses up over the whole vehicle.
#[derive(Debug, Clone, PartialEq)]
pub struct StepMaterials {
    /// The step, by its place in the shop's list.
    pub step: usize,
    /// Its name.
    pub name: String,
    /// Surface worked with it, each panel and each single place once.
    pub area: SquareMetres,
    /// Pads; none for sanding.
    pub pads: u32,
    /// Sheets of sandpaper; none for machines.
    pub sheets: u32,
    /// Polish; none for sanding.
    pub polish: Millilitres,
    /// Towels.
    pub towels: u32,
}

/// Materials per step over all panels, in the order of the shop's list.
pub fn materials(panels: &[(&PolishPlan, SquareMetres)], policy: &UsePolicy) -> Vec<StepMaterials> {
    let mut worked: Vec<(usize, String, StepKind, f64)> = Vec::new();
    for (plan, area) in panels {
        let local = plan.local.iter().flat_map(|l| &l.steps).map(|s| (s, LOCAL_AREA_M2.min(area.m2())));
        for (step, area) in plan.steps.iter().map(|s| (s, area.m2())).chain(local) {
            match worked.iter_mut().find(|w| w.0 == step.index) {
                Some(known) => known.3 += area,
                None => worked.push((step.index, step.name.clone(), step.kind, area)),
            }
        }
    }
    worked.sort_by_key(|w| w.0);
    let per = |area: f64, each: SquareMetres| {
        if each.m2() > 0.0 { (area / each.m2() - 1e-9).ceil().max(0.0) as u32 } else { 0 }
    };
    let material = |(step, name, kind, area): (usize, String, StepKind, f64)| {
        let sanding = kind == StepKind::Sand;
        StepMaterials {
            step,
            name,
            area: SquareMetres::new(area.min(1_000.0)).unwrap_or(SquareMetres::ZERO),
            pads: if sanding { 0 } else { per(area, policy.m2_per_pad) },
            sheets: if sanding { (area * policy.sheets_per_m2 - 1e-9).ceil().max(0.0) as u32 } else { 0 },
            polish: if sanding { Millilitres::ZERO } else { liquid(area * policy.polish_ml_per_m2) },
            towels: per(area, policy.m2_per_towel),
        }
    };
    worked.into_iter().map(material).collect()
}

fn liquid(ml: f64) -> Millilitres {
    Millilitres::new(ml.clamp(0.0, 1e6)).unwrap_or(Millilitres::ZERO)
}
