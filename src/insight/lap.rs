//! Where high spots gather on a vehicle, from its template: the places of the last lap.
//!
//! Seams between painted panels, lamps and mirrors; handles, lamps and plates set into panels; feet of spoilers; body lines and
//! edges that cross from panel to panel; corners where three panels meet. Common practice, no source. Each belongs to a place to
//! stand, so that one look takes in all that is reached from there.

use super::coating::is_coated;
use crate::geometry::MapPoint;
use crate::job::Job;
use crate::say;
use crate::units::listed;
use crate::vehicle::{FeatureKind, Naming, Surface, Template};
use crate::words::{Language, language};
use std::collections::{BTreeMap, BTreeSet};

/// A place where a high spot may be.
#[derive(Debug, Clone, PartialEq)]
pub struct LapSpot {
    /// Its name in a log: `seam bonnet-left wing-left`.
    pub id: String,
    /// What it is.
    pub kind: LapKind,
    /// Indices of the panels it touches, ascending.
    pub panels: Vec<usize>,
    /// Where on the map.
    pub at: MapPoint,
}

/// What a place of the last lap is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LapKind {
    /// Two panels meet.
    Seam,
    /// Three or more panels meet.
    Corner,
    /// Something on a panel.
    Feature(FeatureKind),
}

/// All that is looked at from one place to stand.
#[derive(Debug, Clone, PartialEq)]
pub struct LapStand {
    /// Index of the place to stand.
    pub stance: usize,
    /// Never empty.
    pub spots: Vec<LapSpot>,
}

impl LapSpot {
    /// As a person says it: `Seam of bonnet left and wing left`.
    pub fn name(&self, template: &Template, naming: Naming) -> String {
        let names: Vec<String> = self.panels.iter().map(|&i| spoken(&template.panels[i].name(naming))).collect();
        let panels = names.join(", ");
        match self.kind {
            LapKind::Seam => say!("insight-lap-seam", panels = listed(&names)),
            LapKind::Corner => say!("insight-lap-corner", panels = panels),
            LapKind::Feature(FeatureKind::Handle) => say!("insight-lap-handle", panels = panels),
            LapKind::Feature(FeatureKind::Mirror) => say!("insight-lap-mirror", panels = panels),
            LapKind::Feature(FeatureKind::Lamp) => say!("insight-lap-lamp", panels = panels),
            LapKind::Feature(FeatureKind::Plate) => say!("insight-lap-plate", panels = panels),
            LapKind::Feature(FeatureKind::SpoilerFoot) => say!("insight-lap-spoiler", panels = panels),
            LapKind::Feature(FeatureKind::BodyLine) => say!("insight-lap-body-line", panels = panels),
            LapKind::Feature(_) => say!("insight-lap-edge", panels = panels),
        }
    }
}

/// The name of a panel inside a sentence: `Bonnet, left` becomes `bonnet left`, and `A-pillar, left` stays large, as German nouns do.
pub fn spoken(name: &str) -> String {
    let plain = name.replace(", ", say!("insight-before-side"));
    if language() == Language::German {
        return plain;
    }
    let mut letters = plain.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() => first.to_lowercase().chain(letters).collect(),
        _ => plain,
    }
}

/// Shortest seam that is looked along, in mm: our own estimate.
const SHORTEST_MM: f32 = 150.0;

/// Every place of the last lap, by place to stand, in the order of the template's stances.
pub fn lap_stands(job: &Job, template: &Template) -> Vec<LapStand> {
    let mut stands: BTreeMap<usize, Vec<LapSpot>> = BTreeMap::new();
    let spots = seams(job, template).into_iter().chain(corners(job, template)).chain(features(job, template));
    for spot in spots {
        let Some(&first) = spot.panels.first() else { continue };
        stands.entry(template.panels[first].stance).or_default().push(spot);
    }
    stands.into_iter().map(|(stance, spots)| LapStand { stance, spots }).collect()
}

/// Whether a film there can run into its neighbour: rubber stands between glass and paint.
fn looked_at(job: &Job, template: &Template, panel: usize) -> bool {
    let panel = &template.panels[panel];
    is_coated(job, panel) && matches!(panel.surface, Surface::Paint | Surface::Lamp)
}

fn seams(job: &Job, template: &Template) -> Vec<LapSpot> {
    let mut pairs: BTreeMap<(usize, usize), (f32, Option<MapPoint>, f32)> = BTreeMap::new();
    for seam in &template.seams {
        let Some(right) = seam.right else { continue };
        let paint = [seam.left, right].iter().any(|&i| template.panels[i].surface == Surface::Paint);
        if paint && looked_at(job, template, seam.left) && looked_at(job, template, right) {
            let pair = pairs.entry((seam.left.min(right), seam.left.max(right))).or_insert((0.0, None, 0.0));
            let length = seam.curve.length();
            pair.0 += length;
            if length > pair.2 {
                (pair.1, pair.2) = (Some(seam.curve.at(0.5)), length);
            }
        }
    }
    let long = pairs.into_iter().filter(|(_, (length, ..))| *length >= SHORTEST_MM);
    long.filter_map(|((a, b), (_, at, _))| {
        let id = format!("seam {} {}", template.panels[a].id, template.panels[b].id);
        Some(LapSpot { id, kind: LapKind::Seam, panels: vec![a, b], at: at? })
    })
    .collect()
}

/// Where three or more panels meet in a point.
fn corners(job: &Job, template: &Template) -> Vec<LapSpot> {
    let mut points: BTreeMap<(i64, i64), (BTreeSet<usize>, MapPoint)> = BTreeMap::new();
    for seam in &template.seams {
        for end in [seam.curve.from, seam.curve.to] {
            let key = (f64::from(end.x).round() as i64, f64::from(end.y).round() as i64);
            let entry = points.entry(key).or_insert_with(|| (BTreeSet::new(), end));
            entry.0.extend([Some(seam.left), seam.right].into_iter().flatten());
        }
    }
    let mut seen = BTreeSet::new();
    let mut spots = Vec::new();
    for (panels, at) in points.into_values() {
        let panels: Vec<usize> = panels.into_iter().filter(|&i| looked_at(job, template, i)).collect();
        let paint = panels.iter().filter(|&&i| template.panels[i].surface == Surface::Paint).count();
        if panels.len() >= 3 && paint >= 2 && seen.insert(panels.clone()) {
            let ids: Vec<String> = panels.iter().map(|&i| template.panels[i].id.to_string()).collect();
            spots.push(LapSpot { id: format!("corner {}", ids.join(" ")), kind: LapKind::Corner, panels, at });
        }
    }
    spots
}

fn features(job: &Job, template: &Template) -> Vec<LapSpot> {
    use FeatureKind as K;
    let mut count: BTreeMap<String, usize> = BTreeMap::new();
    let mut spots = Vec::new();
    for feature in &template.features {
        let panels: Vec<usize> = feature.panels.iter().copied().filter(|&i| looked_at(job, template, i)).collect();
        let wanted = match feature.kind {
            K::Handle | K::Mirror | K::Lamp | K::Plate | K::SpoilerFoot => !panels.is_empty(),
            K::BodyLine | K::Edge => panels.len() > 1,
            _ => false,
        };
        if !wanted {
            continue;
        }
        let word = format!("{:?} {}", feature.kind, template.panels[panels[0]].id).to_lowercase();
        let number = count.entry(word.clone()).or_insert(0);
        *number += 1;
        let id = if *number == 1 { word } else { format!("{word} {number}") };
        spots.push(LapSpot { id, kind: LapKind::Feature(feature.kind), panels, at: feature.at });
    }
    spots
}
