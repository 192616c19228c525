//! The map on the last lap: what is still to be looked at, and what was found.

use super::{BayFacts, LapScene, bay_map};
use crate::bay::LapMark;
use crate::insight::{Insight, LapStand};
use crate::job::{Extent, Job};
use crate::say;
use crate::scene::map::{DefectClass, LegendRow, LegendSymbol, MapScene, Pin, PinShape};

/// The map of the last lap: places at the next stand as rings, high spots as marks.
pub fn lap_map(job: &Job, insight: &Insight, facts: &BayFacts<'_>, lap: &LapScene, stands: &[LapStand]) -> MapScene {
    let mut scene = bay_map(job, insight, facts);
    let next = lap.stands.first().map(|s| s.stance);
    for mark in &mut scene.panels {
        mark.value.clear();
    }
    for (stand, spot) in stands.iter().flat_map(|s| s.spots.iter().map(move |p| (s, p))) {
        let found = facts.day.lap().get(&spot.id);
        let shape = match found {
            Some(LapMark::HighSpot | LapMark::ToPolish) => PinShape::Defect(DefectClass::Deep),
            None if Some(stand.stance) == next => PinShape::WantedSpot,
            None => PinShape::Spot,
            Some(LapMark::Fine | LapMark::Saved) => continue,
        };
        let panel = spot.panels.first().copied().unwrap_or(0);
        scene.pins.push(Pin { at: spot.at, panel, shape, severity: 1.0, value: String::new(), extent: Extent::Point });
    }
    for (shape, text) in [
        (PinShape::WantedSpot, say!("scene-look-here")),
        (PinShape::Spot, say!("scene-look-later")),
        (PinShape::Defect(DefectClass::Deep), say!("scene-high-spot")),
    ] {
        if scene.pins.iter().any(|p| p.shape == shape) {
            scene.legend.push(LegendRow { symbol: LegendSymbol::Pin(shape), text: text.to_owned() });
        }
    }
    scene
}
