//! Readings from elsewhere, put at places of the vehicle.

use super::route::SAME_PLACE_MM;
use super::spots::recommended_places;
use crate::geometry::MapPoint;
use crate::job::{Command, GaugeReading, Job, Reading, Spot};
use crate::measure::READINGS_PER_SPOT;
use crate::vehicle::{Panel, PanelId, Template};
use std::collections::BTreeMap;

/// The one step that adds readings to a job; nothing where there are none.
///
/// Readings that name a spot are kept together under that name. The others are taken by their number: 1 to 3 make a spot, 4 to 6
/// the next. A file says no places, so spots are put at the recommended places that have none yet.
pub fn add_readings(job: &Job, template: &Template, readings: &[GaugeReading]) -> Option<Command> {
    let mut by_panel: BTreeMap<&PanelId, Vec<&GaugeReading>> = BTreeMap::new();
    for reading in readings {
        by_panel.entry(&reading.panel).or_default().push(reading);
    }
    let commands: Vec<Command> = by_panel
        .into_iter()
        .filter_map(|(id, readings)| {
            let panel = template.panel(id)?;
            let groups = groups(readings);
            let known = job.record(id).map(|r| r.spots.as_slice()).unwrap_or_default();
            let places = free_places(panel, known, groups.len());
            let spots = groups.into_iter().zip(places).map(|(group, at)| spot(&group, at)).collect();
            Some(Command::AddSpots(id.clone(), spots))
        })
        .collect();
    (!commands.is_empty()).then_some(Command::All { label: crate::say!("insight-import"), commands })
}

/// The readings of one panel by spot: those without a name first, by their number.
fn groups(mut readings: Vec<&GaugeReading>) -> Vec<Vec<&GaugeReading>> {
    readings.sort_by_key(|r| r.reading);
    let mut spots: BTreeMap<(Option<&str>, u32), Vec<&GaugeReading>> = BTreeMap::new();
    for reading in readings {
        let name = reading.spot.as_deref();
        let number = if name.is_some() { 0 } else { reading.reading.saturating_sub(1) / READINGS_PER_SPOT as u32 };
        spots.entry((name, number)).or_default().push(reading);
    }
    spots.into_values().collect()
}

fn spot(group: &[&GaugeReading], at: MapPoint) -> Spot {
    let mut notes: Vec<&str> = group.iter().map(|r| r.note.as_str()).filter(|n| !n.is_empty()).collect();
    notes.dedup();
    let readings = group.iter().map(|r| Reading::of(r.thickness)).collect();
    Spot { at, edge: false, readings, note: notes.join("\n") }
}

/// So many places on a panel, those without a spot first; where it has no room left they share the middle.
fn free_places(panel: &Panel, known: &[Spot], count: usize) -> Vec<MapPoint> {
    let taken = |place: &MapPoint| known.iter().any(|s| (s.at - *place).length() < SAME_PLACE_MM);
    let usual = recommended_places(panel, crate::measure::spots_for(panel.area));
    let mut places: Vec<MapPoint> = usual.into_iter().filter(|p| !taken(p)).collect();
    if places.len() < count {
        let more = recommended_places(panel, known.len() + count);
        places = more.into_iter().filter(|p| !taken(p)).collect();
    }
    places.truncate(count);
    let middle = panel.outline.label_place(1.0).centre;
    places.resize(count, middle);
    places
}
