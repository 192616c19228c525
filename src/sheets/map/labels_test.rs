//! Labels on paper, over every template and overlay.

use super::{MARGIN, MapStyle, View, labels, size};
use crate::geometry::{Orientation, ScreenPoint, ScreenRect, Viewport};
use crate::insight::{Insight, OrderRow, coated_panels};
use crate::job::{Reading, Role, Spot};
use crate::scene::{Overlay, map_scene};
use crate::units::{Interval, Micrometres};
use crate::vehicle;
use std::sync::Arc;

#[test]
fn labels_overlap_nothing_and_stay_on_the_paper_in_every_template() {
    let sample = crate::file::job_from_text("the sample", crate::file::SAMPLE).unwrap();
    for file in vehicle::embedded() {
        let template = vehicle::load_embedded(file.id).unwrap();
        let mut job = (*sample.job).clone();
        job.vehicle.template.clone_from(&template.id);
        job.panels.clear();
        for panel in &template.panels {
            let readings = vec![Reading::of(Micrometres::of(118.0)); 3];
            let spot = Spot { at: panel.label.centre, edge: false, readings, note: String::new() };
            Arc::make_mut(job.panels.entry(panel.id.clone()).or_default()).spots.push(spot);
        }
        let job = Arc::new(job);
        let insight = Insight::new(&job, &template);
        // Two workers one behind the other: as many numbers as any order has.
        let step = |(k, panel): (i64, usize)| {
            [(0, Role::Apply, 0), (1, Role::Level, 90)].map(|(worker, role, later)| {
                let start = 60 * k + later;
                OrderRow { worker, role, panel, layer: 1, at: Interval { start, end: start + 30 } }
            })
        };
        let rows: Vec<OrderRow> = (0..).zip(coated_panels(&job, &template)).flat_map(step).collect();
        for overlay in [Overlay::Film, Overlay::Polish, Overlay::Order] {
            let scene = map_scene(&job, &template, &insight, overlay, &rows);
            let style = MapStyle { title: "", words: "", width: 180.0, most_height: 150.0, badge: 2.9 };
            let size = size(&template, &style);
            let paper = ScreenRect::new(ScreenPoint::zero(), ScreenPoint::new(size.0, size.1));
            let view = View { view: Viewport::fit(template.bounds(), paper, MARGIN, Orientation::FrontLeft), size };
            let placed = labels::draw(&mut Vec::new(), &template, &view, &scene, style.badge);
            let wanted = scene.panels.iter().filter(|p| !p.value.is_empty() || !p.badges.is_empty()).count();
            assert!(
                placed.len() == wanted || template.panels.len() > 60,
                "{} {overlay:?}: a label is missing",
                file.id
            );
            for (k, label) in placed.iter().enumerate() {
                assert!(paper.contains_box(&label.rect), "{} {overlay:?}: {:?} leaves the paper", file.id, label.rect);
                for other in &placed[..k] {
                    let apart = !label.rect.inflate(-0.01, -0.01).intersects(&other.rect);
                    assert!(apart, "{} {overlay:?}: {:?} covers {:?}", file.id, label.rect, other.rect);
                }
            }
        }
    }
}
