//! The way round the vehicle on which the film is read.
//!
//! The places where one stands are taken in the order of their bearing from the middle of the vehicle, so that one walks round it
//! once and never back; the walk begins after its longest leg, which is then not walked. At each place the panels follow one
//! another by nearness on the map, and the spots of a panel by a short way through them.

use super::spots::recommended_spots;
use crate::geometry::MapPoint;
use crate::job::Spot;
use crate::measure::{Place, READINGS_PER_SPOT, route_length, survey_route};
use crate::vehicle::{Skip, Surface, Template};

/// A recommended place of readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stop {
    /// Index of the panel.
    pub panel: usize,
    /// Where on the map.
    pub at: MapPoint,
}

/// A spot this near to a recommended place counts as read there, in mm on the map.
pub const SAME_PLACE_MM: f32 = 60.0;

/// Every recommended place of every painted panel, in the order of one walk round the vehicle.
pub fn survey_stops(template: &Template) -> Vec<Stop> {
    let mut stops: Vec<Stop> = Vec::new();
    for stance in stances_round(template) {
        let mut left: Vec<usize> = read_from(template, stance).collect();
        while let Some(index) = nearest_panel(template, &left, stops.last().map(|s| s.at)) {
            let panel = left.swap_remove(index);
            let spots = recommended_spots(&template.panels[panel]);
            let way = through(spots, stops.last().map(|s| s.at));
            stops.extend(way.into_iter().map(|at| Stop { panel, at }));
        }
    }
    stops
}

/// Metres walked on the floor from the first stop to the last.
pub fn metres_walked(template: &Template, stops: &[Stop]) -> f64 {
    let stance = |stop: &Stop| template.panels[stop.panel].stance;
    stops.windows(2).map(|two| template.walk_mm(stance(&two[0]), stance(&two[1]))).sum::<f64>() / 1000.0
}

/// For each place, in order, the spot that was read there; a spot counts for the nearest place only, and at most one for each.
pub fn spots_at(places: &[MapPoint], spots: &[Spot], survey: u32) -> Vec<Option<usize>> {
    let mut at = vec![None; places.len()];
    for (index, spot) in spots.iter().enumerate() {
        let near = |p: &MapPoint| (*p - spot.at).length();
        let place = (0..places.len()).min_by(|a, b| near(&places[*a]).total_cmp(&near(&places[*b])));
        if let Some(place) = place.filter(|p| near(&places[*p]) < SAME_PLACE_MM) {
            // Of two spots at one place the one that still wants readings in this survey counts.
            let wants = |index: &usize| spots[*index].count_in(survey) < READINGS_PER_SPOT;
            if at[place].as_ref().is_none_or(|before| !wants(before)) {
                at[place] = Some(index);
            }
        }
    }
    at
}

fn read_from(template: &Template, stance: usize) -> impl Iterator<Item = usize> {
    let panels = template.panels.iter().enumerate();
    panels
        .filter(move |(_, p)| p.stance == stance && p.surface == Surface::Paint && p.skip != Some(Skip::Absent))
        .map(|(index, _)| index)
}

/// Places to stand that are needed, in the order of a walk round the vehicle.
fn stances_round(template: &Template) -> Vec<usize> {
    let mut needed: Vec<usize> =
        (0..template.stances.len()).filter(|s| read_from(template, *s).next().is_some()).collect();
    let middle = template.length.mm() as f32 / 2.0;
    let bearing = |stance: &usize| {
        let at = template.stances[*stance].at;
        at.y.atan2(at.x - middle)
    };
    needed.sort_by(|a, b| bearing(b).total_cmp(&bearing(a)));
    let leg = |k: usize| template.walk_mm(needed[k], needed[(k + 1) % needed.len()]);
    let longest = (0..needed.len()).max_by(|a, b| leg(*a).total_cmp(&leg(*b)));
    if let Some(longest) = longest {
        let all = needed.len();
        needed.rotate_left((longest + 1) % all);
    }
    needed
}

/// Position in a list of panels of the one that is nearest to a place; the foremost where there is no place yet.
fn nearest_panel(template: &Template, panels: &[usize], from: Option<MapPoint>) -> Option<usize> {
    let far = |index: usize| {
        let centre = template.panels[panels[index]].label.centre;
        from.map_or(centre.x, |from| (centre - from).length())
    };
    (0..panels.len()).min_by(|a, b| far(*a).total_cmp(&far(*b)))
}

/// Places in the order of a short way, reached from where one is; every place is tried as the first.
fn through(places: Vec<MapPoint>, from: Option<MapPoint>) -> Vec<MapPoint> {
    let ways = (0..places.len()).map(|first| {
        let mut places = places.clone();
        places.swap(0, first);
        let plane: Vec<Place> = places.iter().map(|p| Place { x: f64::from(p.x), y: f64::from(p.y) }).collect();
        let order = survey_route(&plane);
        let reach = from.map_or(0.0, |from| f64::from((places[0] - from).length()));
        let length = reach + route_length(&plane, &order);
        (length, order.into_iter().map(|index| places[index]).collect())
    });
    let best = ways.min_by(|a: &(f64, Vec<MapPoint>), b| a.0.total_cmp(&b.0));
    best.map_or(places.clone(), |(_, way)| way)
}
