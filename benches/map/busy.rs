//! A job with many readings and defects, invented, the same in every run.

use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::geometry::MapPoint;
use lapwright::job::{Defect, PanelRecord, Reading, Spot};
use lapwright::polish::DefectKind;
use lapwright::units::{Micrometres, Millimetres};
use lapwright::vehicle::{Panel, PanelId, Surface, Template};
use std::collections::BTreeMap;
use std::sync::Arc;

const KINDS: [DefectKind; 5] =
    [DefectKind::Swirl, DefectKind::WashMark, DefectKind::DeepScratch, DefectKind::WaterSpot, DefectKind::StoneChip];

/// The sample's shop with another vehicle, `readings` spots of one reading each and `defects` defects spread over its paint.
pub(crate) fn job(template: &Arc<Template>, readings: usize, defects: usize) -> Loaded {
    let mut job = (*job_from_text("the sample", SAMPLE).expect("the sample is sound").job).clone();
    job.vehicle.template.clone_from(&template.id);
    let painted: Vec<&Panel> = template.panels.iter().filter(|p| p.surface == Surface::Paint).collect();
    let mut records: BTreeMap<PanelId, PanelRecord> = BTreeMap::new();
    for index in 0..readings {
        let panel = painted[index % painted.len()];
        let thickness_um = Micrometres::of(90.0 + (index * 37 % 61) as f64);
        let at = place(panel, index / painted.len());
        let spot = Spot { at, edge: false, readings: vec![Reading::of(thickness_um)], note: String::new() };
        records.entry(panel.id.clone()).or_default().spots.push(spot);
    }
    for index in 0..defects {
        let panel = painted[index % painted.len()];
        let defect = Defect {
            size_mm: Millimetres::of(60.0),
            quantity: 1 + (index % 5) as u8,
            ..Defect::new(KINDS[index % KINDS.len()], place(panel, index / painted.len() + 1))
        };
        records.entry(panel.id.clone()).or_default().defects.push(defect);
    }
    job.panels = records.into_iter().map(|(id, record)| (id, Arc::new(record))).collect();
    Loaded { job: Arc::new(job), template: Arc::clone(template) }
}

/// The `n`th of many places on a panel: those of a grid that lie inside, round and round.
fn place(panel: &Panel, n: usize) -> MapPoint {
    let b = panel.outline.bounds();
    let at = |k: usize| {
        let (x, y) = ((k % 7) as f32 + 0.5, (k / 7) as f32 + 0.5);
        MapPoint::new(b.min.x + b.width() * x / 7.0, b.min.y + b.height() * y / 7.0)
    };
    let inside: Vec<MapPoint> = (0..49).map(at).filter(|p| panel.outline.contains(*p)).collect();
    inside[n * 5 % inside.len()]
}
