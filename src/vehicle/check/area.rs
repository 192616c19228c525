//! Areas that can't be right.

use crate::finding::{Code, Finding};
use crate::say;
use crate::vehicle::names;
use crate::vehicle::panel::Surface;
use crate::vehicle::schema::BodyClass;
use crate::vehicle::template::Template;
use crate::words::{decimal, shortest};

/// Least and largest sum of painted areas of a class of body, m². Our estimates, not measurements: for the hatch, saloon,
/// off-roader, van and pickup they are the usual figures for visible outside paint; the others are drawn between them.
pub(super) fn plausible_m2(body: BodyClass) -> (f64, f64) {
    match body {
        BodyClass::Hatch => (9.0, 11.0),
        BodyClass::Coupe => (10.0, 13.0),
        BodyClass::Convertible => (9.0, 12.0),
        BodyClass::Saloon => (12.0, 14.0),
        BodyClass::Estate => (12.5, 15.0),
        BodyClass::OffRoader | BodyClass::PeopleCarrier => (14.0, 18.0),
        BodyClass::Pickup | BodyClass::Van => (18.0, 25.0),
        BodyClass::Coach => (60.0, 130.0),
    }
}

/// Real area by map area of a panel: folding stretches, but not by more than this either way. Our estimate.
const STRETCH: (f64, f64) = (0.4, 2.5);

pub(super) fn check(t: &Template, findings: &mut Vec<Finding>) {
    for panel in &t.panels {
        let stretch = panel.area.m2() * 1e6 / panel.outline.map_area_mm2().max(1.0);
        if !(STRETCH.0..=STRETCH.1).contains(&stretch) {
            findings.push(Finding::new(
                Code::TemplateArea,
                say!("vehicle-place-panel", id = panel.id.as_str()),
                say!("vehicle-area-off", area = decimal(panel.area.m2(), 2), times = decimal(stretch, 2)),
                say!("vehicle-area-off-do"),
            ));
        }
        if !names::is_known(&panel.part) {
            findings.push(Finding::new(
                Code::TemplateName,
                say!("vehicle-place-panel", id = panel.id.as_str()),
                say!("vehicle-no-part", part = panel.part.as_str()),
                say!("vehicle-no-part-do"),
            ));
        }
    }
    let painted: f64 = t.panels.iter().filter(|p| p.surface == Surface::Paint).map(|p| p.area.m2()).sum();
    let (least, largest) = plausible_m2(t.body);
    if painted < least || painted > largest {
        findings.push(Finding::new(
            Code::TemplateArea,
            say!("vehicle-place-whole"),
            say!("vehicle-paint-off", area = decimal(painted, 1), least = shortest(least), most = shortest(largest)),
            say!("vehicle-paint-off-do"),
        ));
    }
}
