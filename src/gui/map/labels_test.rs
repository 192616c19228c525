//! Labels over every template and overlay, at the size of the map in a window of 1280 by 800.

use super::labels::{self, Labels};
use super::{MARGIN, MapCache};
use crate::file::{Loaded, SAMPLE, job_from_text};
use crate::geometry::{Orientation, ScreenPoint, ScreenRect, Viewport};
use crate::gui::{App, install_theme};
use crate::insight::{Insight, crew_problem, order_rows};
use crate::job::{Reading, Spot};
use crate::scene::{MapScene, Overlay, map_scene};
use crate::units::Micrometres;
use crate::vehicle::{self, Template};
use crate::work::{Effort, find_order};
use eframe::egui::{Pos2, RawInput, Rect};
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

/// The map between rail, right side, bar and chart.
const MAP: Rect = Rect { min: Pos2 { x: 164.0, y: 48.0 }, max: Pos2 { x: 952.0, y: 652.0 } };

/// The sample's shop with another vehicle, a reading on every panel.
fn read_everywhere(template: Arc<Template>) -> Loaded {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    job.vehicle.template.clone_from(&template.id);
    job.panels.clear();
    for panel in &template.panels {
        let reading = Reading::of(Micrometres::of(118.0));
        let spot = Spot { at: panel.label.centre, edge: false, readings: vec![reading; 3], note: String::new() };
        Arc::make_mut(job.panels.entry(panel.id.clone()).or_default()).spots.push(spot);
    }
    Loaded { job: Arc::new(job), template }
}

/// Draws the labels and answers what is on the map, how it lies, and where they stand.
fn drawn(loaded: &Loaded, overlay: Overlay, front: Orientation) -> (MapScene, Viewport, Labels) {
    let mut app = App::new(loaded.clone(), None);
    let problem = Arc::new(crew_problem(&loaded.job, &loaded.template, &Insight::new(&loaded.job, &loaded.template)));
    let effort = Effort { seconds: 60.0, nodes: Some(300), threads: 1, seed: 1 };
    let order = find_order(&problem, effort, &AtomicBool::new(false), &|_| ()).unwrap();
    app.rows = order_rows(&loaded.job, &loaded.template, &problem, &order.plan);
    let screen =
        ScreenRect::new(ScreenPoint::new(MAP.min.x, MAP.min.y + 24.0), ScreenPoint::new(MAP.max.x, MAP.max.y - 24.0));
    let view = Viewport::fit(loaded.template.bounds(), screen, MARGIN, front);
    let scene = map_scene(&loaded.job, &loaded.template, &app.insight, overlay, &app.rows);
    let mut cache = MapCache::default();
    cache.prepare(&loaded.template, view.scale());
    let ctx = eframe::egui::Context::default();
    install_theme(&ctx);
    let mut drawn = Labels::default();
    let input =
        RawInput { screen_rect: Some(Rect::from_min_size(Pos2::ZERO, [1280.0, 800.0].into())), ..Default::default() };
    let mut frame = |ui: &mut eframe::egui::Ui| {
        drawn = labels::draw(&ui.painter_at(MAP), &app.model(), &cache, &view, &scene, None);
    };
    ctx.run_ui(input, &mut frame).textures_delta.clear();
    (scene, view, drawn)
}

#[test]
fn labels_overlap_nothing_and_stay_on_their_panels_in_every_template() {
    for file in vehicle::embedded() {
        let loaded = read_everywhere(vehicle::load_embedded(file.id).unwrap());
        let overlays = [Overlay::Film, Overlay::Polish, Overlay::Order];
        let ways = [Orientation::FrontLeft, Orientation::FrontUp];
        for (overlay, front) in overlays.into_iter().flat_map(|overlay| ways.map(|front| (overlay, front))) {
            let (scene, view, Labels { placed, left_out }) = drawn(&loaded, overlay, front);
            let place = |p: Pos2| view.to_map(ScreenPoint::new(p.x, p.y));
            for (k, label) in placed.iter().enumerate() {
                let name = &loaded.template.panels[label.panel].id;
                assert!(MAP.contains_rect(label.rect), "{} {overlay:?}: {name} leaves the map", file.id);
                for other in &placed[..k] {
                    let clash = &loaded.template.panels[other.panel].id;
                    let apart = !label.rect.shrink(0.01).intersects(other.rect);
                    assert!(apart, "{} {overlay:?}: {name} covers {clash}", file.id);
                }
                let corners = [
                    label.rect.left_top(),
                    label.rect.right_top(),
                    label.rect.left_bottom(),
                    label.rect.right_bottom(),
                ];
                let on_panel = corners.iter().all(|c| loaded.template.panel_at(place(*c)) == Some(label.panel));
                assert!(!label.inside || on_panel, "{} {overlay:?}: {name} runs over its edge", file.id);
            }
            let wanted = scene.panels.iter().filter(|p| !p.value.is_empty() || !p.badges.is_empty()).count();
            assert_eq!(placed.len() + left_out, wanted, "{} {overlay:?}: a label found no place", file.id);
            let coach = loaded.template.panels.len() > 60;
            // With the front up the vehicle is smaller, so the smallest panels may have to wait for a closer look.
            assert!(
                left_out == 0 || coach || front == Orientation::FrontUp,
                "{} {overlay:?}: a car has room for all labels",
                file.id
            );
        }
    }
}
