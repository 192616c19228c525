//! Where the next reading belongs.

use crate::geometry::MapPoint;
use crate::gui::action::Model;
use crate::insight::{Stop, spots_at};
use crate::job::Spot;
use crate::measure::READINGS_PER_SPOT;

/// Where the next reading belongs.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::gui) struct NextReading {
    /// Its stop, by its place in the way.
    pub(in crate::gui) stop: usize,
    /// Index of the panel.
    pub(in crate::gui) panel: usize,
    /// The spot of the panel's record that it goes to, or none for a new one.
    pub(in crate::gui) spot: Option<usize>,
    /// Where that is on the map.
    pub(in crate::gui) at: MapPoint,
    /// Readings that the spot has.
    pub(in crate::gui) taken: usize,
}

/// How far the way is gone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::gui) struct Progress {
    /// Stops that have all their readings.
    pub(in crate::gui) full: usize,
    /// Stops that the gauge can read.
    pub(in crate::gui) all: usize,
}

/// Where the next reading belongs: the stop gone to, else the first open one of the chosen panel, else the first of the way.
/// None where the chosen panel wants no more or can't be read, or where everything is read or skipped.
pub(in crate::gui) fn next_reading(m: &Model<'_>) -> Option<NextReading> {
    let entry = &m.view.entry;
    let chosen = m.current().map(|(index, _)| index);
    let on_panel = |stop: &Stop| chosen.is_none_or(|panel| stop.panel == panel);
    if let Some(next) = entry.at.filter(|k| m.way().get(*k).is_some_and(on_panel)).and_then(|k| open(m, k)) {
        return Some(next);
    }
    let here = || (0..m.way().len()).filter(|k| on_panel(&m.way()[*k]));
    let fresh = here().filter(|k| !entry.skipped.contains(k)).find_map(|k| open(m, k));
    // Who chooses a panel wants its skipped spots as well.
    fresh.or_else(|| chosen.and_then(|_| here().find_map(|k| open(m, k))))
}

/// The first open stop after another one, round the whole way; skipped ones are left out.
pub(super) fn after(m: &Model<'_>, stop: usize, forward: bool) -> Option<NextReading> {
    let all = m.way().len();
    let step = |by: usize| if forward { (stop + by) % all } else { (stop + all - by) % all };
    (1..all).map(step).filter(|k| !m.view.entry.skipped.contains(k)).find_map(|k| open(m, k))
}

/// A stop that wants readings; none where it is full or can't be read.
pub(super) fn open(m: &Model<'_>, stop: usize) -> Option<NextReading> {
    let Stop { panel, at } = *m.way().get(stop)?;
    if m.insight.panels[panel].unreadable.is_some() {
        return None;
    }
    let spots = spots_of(m, panel);
    let places = m.wanted_spots(panel);
    let survey = m.job.current_survey();
    let here = spots_at(places, spots, survey);
    let is_full = |spot: &Spot| spot.count_in(survey) >= READINGS_PER_SPOT;
    if spots.iter().filter(|s| is_full(s)).count() >= places.len() {
        return None;
    }
    let place = places.iter().position(|place| *place == at)?;
    let spot = here[place];
    let taken = spot.map_or(0, |s| spots[s].count_in(survey));
    (taken < READINGS_PER_SPOT).then(|| NextReading { stop, panel, spot, at: spot.map_or(at, |s| spots[s].at), taken })
}

/// The spot that was read at a stop.
pub(super) fn spot_of(m: &Model<'_>, stop: usize) -> Option<(usize, usize)> {
    let Stop { panel, at } = *m.way().get(stop)?;
    let places = m.wanted_spots(panel);
    let place = places.iter().position(|place| *place == at)?;
    spots_at(places, spots_of(m, panel), m.job.current_survey())[place].map(|spot| (panel, spot))
}

/// The stop that a place of a panel belongs to.
pub(super) fn stop_at(m: &Model<'_>, panel: usize, at: MapPoint) -> Option<usize> {
    let far = |k: &usize| (m.way()[*k].at - at).length();
    (0..m.way().len()).filter(|k| m.way()[*k].panel == panel).min_by(|a, b| far(a).total_cmp(&far(b)))
}

/// How far the way is gone.
pub(in crate::gui) fn progress(m: &Model<'_>) -> Progress {
    let mut progress = Progress { full: 0, all: 0 };
    for (index, insight) in m.insight.panels.iter().enumerate() {
        if insight.unreadable.is_none() && m.way().iter().any(|s| s.panel == index) {
            let all = m.wanted_spots(index).len();
            let full =
                spots_of(m, index).iter().filter(|s| s.count_in(m.job.current_survey()) >= READINGS_PER_SPOT).count();
            progress.all += all;
            progress.full += full.min(all);
        }
    }
    progress
}

/// The number of a stop among those that the gauge can read, from 1.
pub(in crate::gui) fn number_of(m: &Model<'_>, stop: usize) -> usize {
    let readable = |s: &&Stop| m.insight.panels[s.panel].unreadable.is_none();
    m.way()[..stop].iter().filter(readable).count() + 1
}

fn spots_of<'a>(m: &Model<'a>, panel: usize) -> &'a [Spot] {
    m.job.record(&m.template.panels[panel].id).map(|r| r.spots.as_slice()).unwrap_or_default()
}
