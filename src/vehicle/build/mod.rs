//! From the file to a template: curves, panels on both sides, seams, contour.

mod contour;
mod curves;
mod features;
mod panels;
mod seams;

use super::navigate::arrows;
use super::panel::Panel;
use super::read::TemplateError;
use super::schema::{Sides, TemplateFile};
use super::size::Size;
use super::template::{Template, Wheel};
use super::walk::Ways;
use crate::finding::Finding;
use crate::geometry::{FloorPoint, MapPoint};
use crate::say;
use crate::units::Millimetres;
use crate::words::shortest;
pub(super) use curves::Curves;
use std::collections::BTreeSet;
use std::ops::RangeInclusive;

/// Builds the template, or says everything that keeps it from being built.
pub(super) fn build(file: &TemplateFile) -> Result<Template, TemplateError> {
    let mut faults: Vec<Finding> = Vec::new();
    let curves = Curves::new(file, &mut faults);
    let stances = panels::stances(file, &mut faults);
    let drawn = panels::panels(file, &curves, &stances, &mut faults);
    let openings = panels::openings(file, &curves, &mut faults);
    let size = size(file, &mut faults);
    let (Some([length, width, height]), true) = (size, faults.is_empty()) else {
        // What is written once for both sides is said once.
        let mut said = BTreeSet::new();
        faults.retain(|f| said.insert((f.place.clone(), f.cause.clone())));
        return Err(TemplateError::Findings(faults));
    };
    let seams::Seams { list: seams, rim, neighbours, faults } = seams::seams(&drawn, &openings, &curves);
    let (contour, gaps) = contour::loops(&rim);
    let index = drawn.iter().enumerate().map(|(i, d)| (d.panel.id.clone(), i)).collect();
    let places: Vec<FloorPoint> = stances.list.iter().map(|s| s.at).collect();
    let panels: Vec<Panel> = drawn.into_iter().map(|d| d.panel).collect();
    let mut template = Template {
        id: file.id.as_str().to_owned(),
        name: file.name.clone(),
        body: file.body,
        length,
        width,
        height,
        arrows: arrows(&panels, &seams),
        panels,
        stances: stances.list,
        seams,
        wheels: wheels(file),
        features: Vec::new(),
        openings: openings.into_iter().map(|o| o.outline).collect(),
        contour,
        gaps,
        index,
        neighbours,
        ways: Ways::new(&places, length.mm(), width.mm()),
        faults,
        file: file.clone(),
    };
    template.features = features::features(file, &template);
    Ok(template)
}

/// Half of the sides an entry stands for: +1 as given, -1 mirrored.
fn mirrors(sides: Sides) -> &'static [f32] {
    match sides {
        Sides::Both => &[1.0, -1.0],
        Sides::Left | Sides::Centre => &[1.0],
        Sides::Right => &[-1.0],
    }
}

fn mirrored(p: MapPoint, mirror: f32) -> MapPoint {
    MapPoint::new(p.x, p.y * mirror)
}

fn wheels(file: &TemplateFile) -> Vec<Wheel> {
    let one = |w: &super::schema::WheelEntry, m: f32| Wheel {
        centre: mirrored(MapPoint::new(w.centre.0.f32(), w.centre.1.f32()), m),
        radius: w.radius_mm.f32().abs(),
    };
    file.wheels.iter().flat_map(|w| [one(w, 1.0), one(w, -1.0)]).collect()
}

/// Length, width, height, where a vehicle can be of that size.
fn size(file: &TemplateFile, faults: &mut Vec<Finding>) -> Option<[Millimetres; 3]> {
    let mut take = |what: &'static str, n: super::entries::Number, range: RangeInclusive<f64>| {
        let fits = range.contains(&n.get());
        if !fits {
            faults.push(Finding::new(
                crate::finding::Code::TemplateSize,
                what,
                say!("vehicle-no-size", mm = shortest(n.get())),
                say!("vehicle-no-size-do", low = shortest(*range.start()), high = shortest(*range.end())),
            ));
        }
        Millimetres::new(n.get()).ok().filter(|_| fits)
    };
    let length = take("length_mm", file.length_mm, Size::LENGTH_MM);
    let width = take("width_mm", file.width_mm, Size::WIDTH_MM);
    let height = take("height_mm", file.height_mm, Size::HEIGHT_MM);
    Some([length?, width?, height?])
}
