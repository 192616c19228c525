//! Overlaps, gaps, self-crossing outlines, sides that differ.

use crate::finding::{Code, Finding};
use crate::geometry::{MapCurve, MapPoint, MapVector, Outline, crossings};
use crate::say;
use crate::vehicle::id::{PanelId, Side};
use crate::vehicle::template::{Seam, Template};

/// A slit narrower than this between two panels is a mistake in the drawing and not the shape of the vehicle, mm. Our estimate.
const SLIT_MM: f32 = 15.0;

pub(super) fn check(t: &Template, findings: &mut Vec<Finding>) {
    overlaps(t, findings);
    gaps(t, findings);
    slits(t, findings);
    sides(t, findings);
}

fn overlaps(t: &Template, findings: &mut Vec<Finding>) {
    let mut curves: Vec<MapCurve> = t.seams.iter().map(|s| s.curve).collect();
    // Curves of openings that no panel has.
    let known = |c: &MapCurve| t.seams.iter().any(|s| s.curve == *c || s.curve == c.reversed());
    curves.extend(t.openings.iter().flat_map(Outline::curves).filter(|c| !known(c)));
    let found = crossings(&curves);
    let none = found.is_empty();
    for c in found {
        let at = near(c.at);
        let users = [c.first, c.second].map(|i| t.seams.get(i));
        let name = |seam: Option<&Seam>| match seam {
            Some(seam) => say!("vehicle-place-panel", id = t.panels[seam.left].id.as_str()),
            None => say!("vehicle-an-opening").to_owned(),
        };
        findings.push(match users {
            [Some(a), Some(b)] if common(a, b).is_some() => Finding::new(
                Code::TemplateOutline,
                say!("vehicle-place-panel-at", id = t.panels[common(a, b).unwrap_or(a.left)].id.as_str(), at = at),
                say!("vehicle-crosses-itself"),
                say!("vehicle-crosses-itself-do"),
            ),
            [a, b] => Finding::new(
                Code::TemplateOverlap,
                say!("vehicle-place-both", one = name(a), other = name(b), at = at),
                say!("vehicle-cross"),
                say!("vehicle-cross-do"),
            ),
        });
    }
    if none {
        nested(t, findings);
    }
}

/// Where no curves cross, two panels can only overlap by one lying within the other.
fn nested(t: &Template, findings: &mut Vec<Finding>) {
    for opening in &t.openings {
        let probe = opening.label_place(1.0).centre;
        if let Some(panel) = t.panel_at(probe) {
            findings.push(Finding::new(
                Code::TemplateOverlap,
                say!("vehicle-place-panel-opening", id = t.panels[panel].id.as_str(), at = near(probe)),
                say!("vehicle-covers"),
                say!("vehicle-covers-do"),
            ));
        }
    }
    for (i, inner) in t.panels.iter().enumerate() {
        let Some(probe) = probe(t, i) else { continue };
        for (_, outer) in t.panels.iter().enumerate().filter(|(j, p)| *j != i && p.outline.contains(probe)) {
            findings.push(Finding::new(
                Code::TemplateOverlap,
                say!("vehicle-place-two-panels", one = inner.id.as_str(), other = outer.id.as_str(), at = near(probe)),
                say!("vehicle-covers"),
                say!("vehicle-covers-do"),
            ));
        }
    }
}

/// Slits between panels that reach the outside, where one panel lies right across the rim of another.
fn slits(t: &Template, findings: &mut Vec<Finding>) {
    for seam in t.seams.iter().filter(|s| s.right.is_none() && s.curve.length() > 4.0 * SLIT_MM) {
        let own = &t.panels[seam.left];
        let across = [0.25_f32, 0.5, 0.75].into_iter().find_map(|u| {
            let at = seam.curve.at(u);
            let along = (seam.curve.at(u + 0.01) - seam.curve.at(u - 0.01)).try_normalize()?;
            let mut out = MapVector::new(along.y, -along.x);
            if own.outline.contains(at + out * 0.5) {
                out = -out;
            }
            // Where another panel begins at once the two overlap, which is reported elsewhere.
            if t.panel_at(at + out * 0.06).is_some() {
                return None;
            }
            let steps = (1..=6).map(|k| at + out * (SLIT_MM * k as f32 / 6.0));
            let other = steps.filter_map(|p| t.panel_at(p)).find(|i| *i != seam.left)?;
            Some((at, other))
        });
        if let Some((at, other)) = across {
            findings.push(Finding::new(
                Code::TemplateGap,
                say!(
                    "vehicle-place-two-panels",
                    one = own.id.as_str(),
                    other = t.panels[other].id.as_str(),
                    at = near(at)
                ),
                say!("vehicle-slit"),
                say!("vehicle-slit-do"),
            ));
        }
    }
}

/// A place of the map in words.
fn near(at: MapPoint) -> String {
    say!("vehicle-at", x = format!("{:.0}", at.x), y = format!("{:.0}", at.y))
}

/// A place well inside a panel.
fn probe(t: &Template, panel: usize) -> Option<MapPoint> {
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
            near(at),
            say!("vehicle-gap", area = format!("{:.0}", gap.map_area_mm2())),
            say!("vehicle-gap-do"),
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
                say!("vehicle-place-panel", id = id),
                say!("vehicle-no-twin"),
                say!("vehicle-no-twin-do"),
            ));
        }
    }
}
