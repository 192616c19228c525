//! The last lap: what to look at next, how long each place can still be saved.

use super::BayFacts;
use crate::bay::LapMark;
use crate::coat::{LapPace, last_lap};
use crate::insight::LapStand;
use crate::job::Role;
use crate::say;
use crate::units::{Seconds, capital};
use crate::words::text_if_any;

/// Walking with a towel and a lamp, in mm per second: our own estimate.
const WALK_MM_S: f64 = 900.0;
/// Looking at one place, in s: our own estimate.
const LOOK_S: Seconds = 4;

/// The last lap at a moment.
#[derive(Debug, Clone, PartialEq)]
pub struct LapScene {
    /// What is still to be looked at, in the order of a short way round.
    pub stands: Vec<LapRow>,
    /// Places that are through, and all of them.
    pub done: (usize, usize),
    /// Of the places that are through, those that have to be polished.
    pub to_polish: Vec<String>,
    /// How long after applying a high spot can be saved in this air.
    pub saved_for_s: Seconds,
}

/// A place to stand.
#[derive(Debug, Clone, PartialEq)]
pub struct LapRow {
    /// Index of the place to stand.
    pub stance: usize,
    /// Where it is, in words.
    pub name: String,
    /// Seconds left to save a high spot on the panel that was coated first.
    pub left_s: Seconds,
    /// Share of the time that has passed, 0 to 1.
    pub passed: f32,
    /// What is looked at.
    pub spots: Vec<LapPlaceRow>,
}

/// One place.
#[derive(Debug, Clone, PartialEq)]
pub struct LapPlaceRow {
    /// Its name in the log.
    pub id: String,
    /// What it is, in words.
    pub name: String,
    /// What was found.
    pub mark: Option<LapMark>,
    /// Seconds left to save it.
    pub left_s: Seconds,
}

/// Lays the last lap out. `saved_for_s` is how long a high spot can be saved; `from` is the place to stand where the walk begins.
pub fn lap_scene(facts: &BayFacts<'_>, stands: &[LapStand], saved_for_s: Seconds, from: Option<usize>) -> LapScene {
    let mut rows = Vec::new();
    let mut applied = Vec::new();
    let (mut through, mut all, mut to_polish) = (0, 0, Vec::new());
    for stand in stands {
        let mut first = Seconds::MAX;
        let spots = stand.spots.iter().map(|spot| {
            let on = spot.panels.iter().filter_map(|&p| applied_s(facts, p)).min().unwrap_or(facts.now_s);
            first = first.min(on);
            LapPlaceRow {
                id: spot.id.clone(),
                name: spot.name(facts.template, facts.naming),
                mark: facts.day.lap().get(&spot.id).copied(),
                left_s: on + saved_for_s - facts.now_s,
            }
        });
        let spots: Vec<LapPlaceRow> = spots.collect();
        all += spots.len();
        through += spots.iter().filter(|s| is_through(s.mark)).count();
        to_polish.extend(spots.iter().filter(|s| s.mark == Some(LapMark::ToPolish)).map(|s| s.name.clone()));
        if spots.iter().all(|s| is_through(s.mark)) {
            continue;
        }
        let passed = (facts.now_s - first) as f32 / saved_for_s.max(1) as f32;
        rows.push(LapRow {
            stance: stand.stance,
            name: in_words(&facts.template.stances[stand.stance].id),
            left_s: first + saved_for_s - facts.now_s,
            passed: passed.clamp(0.0, 1.0),
            spots,
        });
        applied.push(first);
    }
    let looks = rows.iter().map(|r| r.spots.len() as Seconds).sum::<Seconds>() * LOOK_S;
    let look_s = looks / (rows.len() as Seconds).max(1);
    let pace = LapPace { walk_mm_s: WALK_MM_S, look_s, high_spot_s: saved_for_s };
    let walk = |a: Option<usize>, b: usize| match a.map(|a| rows[a].stance).or(from) {
        Some(a) if a != rows[b].stance => facts.template.walk_mm(a, rows[b].stance),
        _ => 0.0,
    };
    let order = last_lap(&applied, &walk, facts.now_s, &pace);
    let stands = order.iter().map(|stop| rows[stop.place].clone()).collect();
    LapScene { stands, done: (through, all), to_polish, saved_for_s }
}

fn is_through(mark: Option<LapMark>) -> bool {
    matches!(mark, Some(LapMark::Fine | LapMark::Saved | LapMark::ToPolish))
}

/// When the last layer on a panel was applied.
fn applied_s(facts: &BayFacts<'_>, panel: usize) -> Option<Seconds> {
    let id = facts.template.panels[panel].id.as_str();
    let operations = facts.problem.operations.iter().enumerate();
    let applied = operations.filter(|(_, o)| o.panel == id && o.role == Role::Apply.id());
    applied.filter_map(|(o, _)| facts.day.done_at(o)).max()
}

/// `door-front-left` as `Door front left`; places of one's own vehicles by their names.
fn in_words(id: &str) -> String {
    let side = [("-left", "left"), ("-right", "right")]
        .into_iter()
        .find_map(|(end, side)| Some((id.strip_suffix(end)?, side)));
    let place = side.map_or(id, |(place, _)| place);
    let (name, number) = match place.rsplit_once('-') {
        Some((name, number)) if number.parse::<u32>().is_ok() => (name, Some(number)),
        _ => (place, None),
    };
    let name =
        text_if_any(&format!("scene-stance-{name}")).map_or_else(|| capital(&name.replace('-', " ")), str::to_owned);
    let place = number.map_or(name.clone(), |number| format!("{name} {number}"));
    match side {
        None => place,
        Some((_, "left")) => say!("scene-stance-at-left", place = place),
        Some(_) => say!("scene-stance-at-right", place = place),
    }
}
