//! Panels, stances and openings on both sides.

use super::curves::Curves;
use super::{mirrored, mirrors};
use crate::finding::{Code, Finding};
use crate::geometry::{FloorPoint, MapCurve, Outline};
use crate::say;
use crate::vehicle::entries::Name;
use crate::vehicle::id::{PanelId, Side};
use crate::vehicle::panel::{HeightBand, Panel, Stance};
use crate::vehicle::schema::{PanelEntry, Sides, TemplateFile};
use std::collections::{BTreeMap, BTreeSet};

/// Width by height of the box that labels are laid out for.
const LABEL_ASPECT: f32 = 2.2;

/// A corner of a loop: point and side (the centre where the point is on the centreline).
pub(super) type Corner = (usize, Side);

/// A loop of corners with its outline.
pub(super) struct Loop {
    pub(super) corners: Vec<Corner>,
    pub(super) outline: Outline,
}

/// A panel with its loop of corners.
pub(super) struct Drawn {
    pub(super) panel: Panel,
    pub(super) corners: Vec<Corner>,
}

/// Stances on both sides and how to find them by the name in the file.
pub(super) struct Stances {
    pub(super) list: Vec<Stance>,
    by_name: BTreeMap<(String, Side), usize>,
}

impl Stances {
    fn find(&self, name: &str, side: Side) -> Option<usize> {
        let at = |side| self.by_name.get(&(name.to_owned(), side)).copied();
        at(side).or_else(|| at(Side::Centre)).or_else(|| if side == Side::Centre { at(Side::Left) } else { None })
    }
}

pub(super) fn stances(file: &TemplateFile, faults: &mut Vec<Finding>) -> Stances {
    let mut stances = Stances { list: Vec::new(), by_name: BTreeMap::new() };
    for (name, (x, y)) in &file.stances.0 {
        if y.get() < 0.0 {
            faults.push(Finding::new(
                Code::TemplatePoint,
                say!("vehicle-place-stance", id = name.as_str()),
                say!("vehicle-on-right"),
                say!("vehicle-on-right-do"),
            ));
        }
        let sides: &[(Side, f32)] =
            if y.get() == 0.0 { &[(Side::Centre, 1.0)] } else { &[(Side::Left, 1.0), (Side::Right, -1.0)] };
        for (side, mirror) in sides {
            stances.by_name.insert((name.as_str().to_owned(), *side), stances.list.len());
            let id = format!("{}{}", name.as_str(), side.suffix());
            stances.list.push(Stance { id, at: FloorPoint::new(x.f32(), y.f32() * mirror) });
        }
    }
    stances
}

pub(super) fn panels(file: &TemplateFile, curves: &Curves, stances: &Stances, faults: &mut Vec<Finding>) -> Vec<Drawn> {
    let mut ids = BTreeSet::new();
    for (entry, mirror) in both_sides(file) {
        if !ids.insert(full_id(entry.id.as_str(), side_of(entry.side, mirror))) {
            faults.push(Finding::new(
                Code::TemplateUnknown,
                place(entry),
                say!("vehicle-id-twice"),
                say!("vehicle-id-twice-do"),
            ));
        }
    }
    let mut panels = Vec::new();
    for (entry, mirror) in both_sides(file) {
        let loop_ = closed_loop(&entry.outline, entry.side, mirror, curves, &place(entry), faults);
        let side = side_of(entry.side, mirror);
        if let (Some(loop_), Some(rest)) = (loop_, reach(entry, side, stances, &ids, faults)) {
            panels.push(Drawn { panel: panel(entry, side, loop_.outline, rest), corners: loop_.corners });
        }
    }
    if panels.is_empty() && faults.is_empty() {
        faults.push(Finding::new(
            Code::TemplateOutline,
            say!("vehicle-place-panels"),
            say!("vehicle-nothing"),
            say!("vehicle-nothing-do"),
        ));
    }
    panels
}

/// Every entry for each side it stands for.
fn both_sides(file: &TemplateFile) -> impl Iterator<Item = (&PanelEntry, f32)> {
    file.panels.iter().flat_map(|entry| mirrors(entry.side).iter().map(move |mirror| (entry, *mirror)))
}

pub(super) fn openings(file: &TemplateFile, curves: &Curves, faults: &mut Vec<Finding>) -> Vec<Loop> {
    let mut loops = Vec::new();
    for entry in &file.openings {
        for mirror in mirrors(entry.side) {
            let place = say!("vehicle-place-opening", id = entry.id.as_str());
            loops.extend(closed_loop(&entry.outline, entry.side, *mirror, curves, &place, faults));
        }
    }
    loops
}

fn place(entry: &PanelEntry) -> String {
    say!("vehicle-place-panel", id = entry.id.as_str())
}

fn side_of(sides: Sides, mirror: f32) -> Side {
    match sides {
        Sides::Centre => Side::Centre,
        _ if mirror > 0.0 => Side::Left,
        _ => Side::Right,
    }
}

/// Stance and panels leant over.
type Reach = (usize, Vec<PanelId>);

fn reach(
    entry: &PanelEntry,
    side: Side,
    stances: &Stances,
    ids: &BTreeSet<PanelId>,
    faults: &mut Vec<Finding>,
) -> Option<Reach> {
    let mut unknown = |cause: String| {
        faults.push(Finding::new(Code::TemplateUnknown, place(entry), cause, say!("vehicle-correct-name")));
    };
    let stance = stances.find(entry.stance.as_str(), side);
    if stance.is_none() {
        unknown(say!("vehicle-unknown-stance", id = entry.stance.as_str()));
    }
    let sides: &[Side] = match side {
        Side::Left => &[Side::Left, Side::Centre],
        Side::Right => &[Side::Right, Side::Centre],
        Side::Centre => &[Side::Left, Side::Right, Side::Centre],
    };
    let mut over = Vec::new();
    for name in &entry.leans_over {
        let before = over.len();
        over.extend(sides.iter().map(|s| full_id(name.as_str(), *s)).filter(|id| ids.contains(id)));
        // A panel of the other side only, such as a sliding door, is simply not there on this one.
        let other = full_id(name.as_str(), side.opposite());
        if over.len() == before && !ids.contains(&other) {
            unknown(say!("vehicle-unknown-lean", id = name.as_str()));
        }
    }
    over.sort();
    over.dedup();
    Some((stance?, over))
}

fn full_id(name: &str, side: Side) -> PanelId {
    PanelId::new(format!("{name}{}", side.suffix()))
}

fn panel(entry: &PanelEntry, side: Side, outline: Outline, (stance, leans_over): Reach) -> Panel {
    let (a, b) = (entry.height_mm.0.f32(), entry.height_mm.1.f32());
    Panel {
        id: full_id(entry.id.as_str(), side),
        part: entry.part.as_ref().unwrap_or(&entry.id).as_str().to_owned(),
        number: entry.number,
        side,
        label: outline.label_place(LABEL_ASPECT),
        outline,
        area: entry.area_m2,
        substrate: entry.substrate,
        surface: entry.surface,
        skip: entry.skip,
        height: HeightBand { low: a.min(b), high: a.max(b) },
        stance,
        leans_over,
    }
}

/// The outline through the named points, running so that the inside is on the same hand for every panel.
fn closed_loop(
    names: &[Name],
    sides: Sides,
    mirror: f32,
    curves: &Curves,
    place: &str,
    faults: &mut Vec<Finding>,
) -> Option<Loop> {
    let points: Vec<usize> =
        names.iter().map(|n| curves.find(n, place, faults)).collect::<Vec<_>>().into_iter().collect::<Option<_>>()?;
    let mut fault = |cause: &str, action: &str| {
        faults.push(Finding::new(Code::TemplateOutline, place, cause, action));
    };
    let distinct: BTreeSet<usize> = points.iter().copied().collect();
    if points.len() < 2 || distinct.len() != points.len() {
        fault(say!("vehicle-outline-twice"), say!("vehicle-outline-twice-do"));
        return None;
    }
    let side = if mirror > 0.0 { Side::Left } else { Side::Right };
    let corner = |p: usize, side: Side| (p, if curves.is_central(p) { Side::Centre } else { side });
    let mut corners: Vec<Corner> = points.iter().map(|p| corner(*p, side)).collect();
    if sides == Sides::Centre {
        if !curves.is_central(points[0]) || !curves.is_central(points[points.len() - 1]) {
            fault(say!("vehicle-outline-centre"), say!("vehicle-outline-centre-do"));
            return None;
        }
        corners.extend(points[1..points.len() - 1].iter().rev().map(|p| corner(*p, Side::Right)));
    }
    let mut outline = curves_of(&corners, curves)?;
    if outline.map_area_mm2() < 1.0 {
        fault(say!("vehicle-outline-empty"), say!("vehicle-outline-empty-do"));
        return None;
    }
    if outline.signed_area_mm2() < 0.0 {
        corners.reverse();
        outline = curves_of(&corners, curves)?;
    }
    Some(Loop { corners, outline })
}

fn curves_of(corners: &[Corner], curves: &Curves) -> Option<Outline> {
    let next = corners.iter().cycle().skip(1);
    Outline::new(corners.iter().zip(next).map(|(a, b)| side_curve(*a, *b, curves)).collect()).ok()
}

/// The curve between two corners of one side.
pub(super) fn side_curve(a: Corner, b: Corner, curves: &Curves) -> MapCurve {
    let curve = curves.between(a.0, b.0);
    if a.1 == Side::Right || b.1 == Side::Right { curve.map(|p| mirrored(p, -1.0)) } else { curve }
}
