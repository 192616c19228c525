//! Overlaps, gaps, self-crossing outlines, sides that differ.

use crate::finding::{Code, Finding};
use crate::geometry::{MapCurve, crossings};
use crate::vehicle::id::{PanelId, Side};
use crate::vehicle::template::{Seam, Template};

pub(super) fn check(t: &Template, findings: &mut Vec<Finding>) {
    overlaps(t, findings);
    gaps(t, findings);
    sides(t, findings);
}

fn overlaps(t: &Template, findings: &mut Vec<Finding>) {
    let curves: Vec<MapCurve> = t.seams.iter().map(|s| s.curve).collect();
    let found = crossings(&curves);
    let none = found.is_empty();
    for c in found {
        let (a, b) = (&t.seams[c.first], &t.seams[c.second]);
        let at = format!("at x {:.0}, y {:.0} mm", c.at.x, c.at.y);
        let id = |panel: usize| &t.panels[panel].id;
        findings.push(match common(a, b) {
            Some(panel) => Finding::new(
                Code::TemplateOutline,
                format!("panel \"{}\", {at}", id(panel)),
                "its outline crosses itself",
                "move a point or bend a curve so that the outline passes every place once",
            ),
            None => Finding::new(
                Code::TemplateOverlap,
                format!("panels \"{}\" and \"{}\", {at}", id(a.left), id(b.left)),
                "their outlines cross",
                "move a point or bend a curve so that they only meet",
            ),
        });
    }
    if none {
        nested(t, findings);
    }
}

/// Where no curves cross, two panels can only overlap by one lying within the other.
fn nested(t: &Template, findings: &mut Vec<Finding>) {
    for (i, inner) in t.panels.iter().enumerate() {
        let Some(probe) = probe(t, i) else { continue };
        for (_, outer) in t.panels.iter().enumerate().filter(|(j, p)| *j != i && p.outline.contains(probe)) {
            findings.push(Finding::new(
                Code::TemplateOverlap,
                format!("panels \"{}\" and \"{}\"", inner.id, outer.id),
                "one covers the other",
                "let them share the curve between them",
            ));
        }
    }
}

/// A place well inside a panel.
fn probe(t: &Template, panel: usize) -> Option<crate::geometry::MapPoint> {
    let p = &t.panels[panel];
    Some(p.label.centre).filter(|at| p.outline.contains(*at))
}

fn common(a: &Seam, b: &Seam) -> Option<usize> {
    [Some(a.left), a.right].into_iter().flatten().find(|p| *p == b.left || Some(*p) == b.right)
}

fn gaps(t: &Template, findings: &mut Vec<Finding>) {
    for gap in &t.gaps {
        let at = gap.bounds().center();
        findings.push(Finding::new(
            Code::TemplateGap,
            format!("at x {:.0}, y {:.0} mm", at.x, at.y),
            format!("{:.0} mm² inside the contour belong to no panel", gap.map_area_mm2()),
            "let neighbours use the same points, or declare an opening",
        ));
    }
}

fn sides(t: &Template, findings: &mut Vec<Finding>) {
    for panel in t.panels.iter().filter(|p| p.side != Side::Centre) {
        let id = panel.id.as_str();
        let (own, other) = (panel.side.suffix(), panel.side.opposite().suffix());
        let twin = id.strip_suffix(own).map(|stem| PanelId::new(format!("{stem}{other}")));
        if twin.is_none_or(|twin| t.index_of(&twin).is_none()) {
            findings.push(Finding::new(
                Code::TemplateAsymmetric,
                format!("panel \"{id}\""),
                "it has no counterpart on the other side",
                "nothing to do where the vehicle is like this",
            ));
        }
    }
}
