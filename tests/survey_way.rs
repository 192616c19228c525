//! Where the film is read, and the way round the vehicle through all the places.

mod support;

use lapwright::geometry::MapPoint;
use lapwright::insight::{SAME_PLACE_MM, metres_walked, recommended_places, recommended_spots, spots_at, survey_stops};
use lapwright::job::{Reading, Spot};
use lapwright::measure::spots_for;
use lapwright::units::Micrometres;
use lapwright::vehicle::{Panel, Surface, Template};
use std::collections::BTreeSet;
use support::templates;

/// Nearest that a spot may lie to an edge, in mm (SSPC-PA 2 and ASTM D7091, from memory).
const EDGE_MM: f32 = 25.0;

fn painted(template: &Template) -> impl Iterator<Item = &Panel> {
    template.panels.iter().filter(|p| p.surface == Surface::Paint)
}

/// Distance of a place from the outline of a panel, mm.
fn from_edge(panel: &Panel, at: MapPoint) -> f32 {
    let edge = panel.outline.flattened(1.0);
    let next = edge.iter().cycle().skip(1);
    let to_leg = |(a, b): (&MapPoint, &MapPoint)| {
        let along = *b - *a;
        let share = if along.square_length() > 0.0 { (at - *a).dot(along) / along.square_length() } else { 0.0 };
        (*a + along * share.clamp(0.0, 1.0) - at).length()
    };
    edge.iter().zip(next).map(to_leg).fold(f32::INFINITY, f32::min)
}

/// Five spots on a panel that is large, none nearer to an edge than 25 mm wherever the panel has a place so far inside.
#[test]
fn every_spot_keeps_away_from_edges_and_a_large_panel_has_five() {
    let mut kept = 0;
    for template in templates() {
        for panel in painted(&template) {
            let spots = recommended_spots(panel);
            assert!(spots.iter().all(|at| panel.outline.contains(*at)), "{}: {}", template.id, panel.id);
            if panel.area.m2() >= 0.4 {
                assert!(spots.len() >= 5, "{}: {} has {}", template.id, panel.id, spots.len());
            }
            let deepest = spots.iter().map(|at| from_edge(panel, *at)).fold(0.0, f32::max);
            if deepest >= 2.0 * EDGE_MM {
                kept += spots.len();
                let nearest = spots.iter().map(|at| from_edge(panel, *at)).fold(f32::INFINITY, f32::min);
                assert!(nearest >= EDGE_MM - 1.0, "{}: {} reads {nearest} mm from an edge", template.id, panel.id);
            }
        }
    }
    assert!(kept > 1_000, "enough spots were looked at: {kept}");
}

#[test]
fn more_places_than_usual_are_found_where_there_is_room() {
    let template = templates().next().unwrap();
    let bonnet = painted(&template).find(|p| p.part == "bonnet").unwrap();
    let places = recommended_places(bonnet, 20);
    assert_eq!(places.len(), 20);
    let apart = |a: &MapPoint| places.iter().filter(|b| (**b - *a).length() < 40.0).count();
    assert!(places.iter().all(|p| apart(p) == 1), "no two lie within the 4 cm of one spot");
}

#[test]
fn the_way_passes_every_spot_once_and_never_leaves_a_panel_half_done() {
    for template in templates() {
        let stops = survey_stops(&template);
        let wanted: usize = painted(&template).map(|p| recommended_spots(p).len()).sum();
        assert_eq!(stops.len(), wanted, "{}", template.id);
        let mut seen = BTreeSet::new();
        for run in stops.chunk_by(|a, b| a.panel == b.panel) {
            let panel = &template.panels[run[0].panel];
            assert!(seen.insert(run[0].panel), "{}: {} comes twice", template.id, panel.id);
            let places: BTreeSet<String> = run.iter().map(|s| format!("{:?}", s.at)).collect();
            assert_eq!(places.len(), spots_for(panel.area).min(run.len()), "{}: {}", template.id, panel.id);
        }
    }
}

/// Walking once round takes no more than the way round a rectangle that holds every place to stand (geometry); the order of
/// the template's file, by which one would go from list to list, takes much more.
#[test]
fn one_walks_once_round_the_vehicle() {
    let mut saved = 0.0;
    for template in templates() {
        let stops = survey_stops(&template);
        let walked = metres_walked(&template, &stops);
        let used: Vec<_> = stops.iter().map(|s| template.stances[template.panels[s.panel].stance].at).collect();
        let span = |of: fn(&lapwright::geometry::FloorPoint) -> f32| {
            let all = || used.iter().map(of);
            f64::from(all().fold(f32::NEG_INFINITY, f32::max) - all().fold(f32::INFINITY, f32::min)) / 1_000.0
        };
        let round = 2.0 * (span(|p| p.x) + span(|p| p.y));
        assert!(walked <= round, "{}: {walked:.1} m on a way round of {round:.1} m", template.id);
        let mut by_file = stops.clone();
        by_file.sort_by_key(|s| s.panel);
        saved += metres_walked(&template, &by_file) / walked;
    }
    let mean = saved / templates().count() as f64;
    assert!(mean > 2.0, "in the order of the file one walks {mean:.1} times as far");
}

#[test]
fn a_spot_counts_for_the_place_it_is_nearest_to_and_for_one_only() {
    let template = templates().next().unwrap();
    let bonnet = painted(&template).find(|p| p.part == "bonnet").unwrap();
    let places = recommended_spots(bonnet);
    let reading = Reading::of(Micrometres::of(100.0));
    let spot = |at, count| Spot { at, edge: false, readings: vec![reading; count], note: String::new() };
    let near = places[2] + lapwright::geometry::MapVector::new(SAME_PLACE_MM / 3.0, 0.0);
    let far = places[3] + lapwright::geometry::MapVector::new(SAME_PLACE_MM * 1.2, 0.0);
    assert_eq!(spots_at(&places, &[spot(near, 1), spot(far, 1)], 0), [None, None, Some(0), None, None]);
    // Of two at one place the one that still wants readings counts.
    assert_eq!(spots_at(&places, &[spot(near, 3), spot(places[2], 1)], 0)[2], Some(1));
    assert_eq!(spots_at(&places, &[spot(near, 2), spot(places[2], 3)], 0)[2], Some(0));
}
