//! Seams: curves that two loops share, and the rim that only one has.

use super::curves::Curves;
use super::panels::{Corner, Drawn, Loop, side_curve};
use crate::finding::{Code, Finding};
use crate::geometry::MapCurve;
use crate::say;
use crate::units::listed;
use crate::vehicle::id::Side;
use crate::vehicle::template::Seam;
use std::collections::BTreeMap;

/// What the loops say about each other.
pub(super) struct Seams {
    pub(super) list: Vec<Seam>,
    /// Curves with nothing on their outer side, from corner to corner, the inside on the same hand for all.
    pub(super) rim: Vec<(Corner, Corner, MapCurve)>,
    pub(super) neighbours: Vec<Vec<usize>>,
    pub(super) faults: Vec<Finding>,
}

#[derive(Clone, Copy, PartialEq)]
struct User {
    /// Index of the panel; `None` for an opening.
    panel: Option<usize>,
    forward: bool,
}

pub(super) fn seams(drawn: &[Drawn], openings: &[Loop], curves: &Curves) -> Seams {
    let panels = drawn.iter().enumerate().map(|(i, d)| (Some(i), &d.corners));
    let loops = panels.chain(openings.iter().map(|o| (None, &o.corners)));
    let mut edges: BTreeMap<(Corner, Corner), Vec<User>> = BTreeMap::new();
    for (panel, corners) in loops {
        for (a, b) in corners.iter().zip(corners.iter().cycle().skip(1)) {
            edges.entry(((*a).min(*b), (*a).max(*b))).or_default().push(User { panel, forward: a < b });
        }
    }
    let mut out =
        Seams { list: Vec::new(), rim: Vec::new(), neighbours: vec![Vec::new(); drawn.len()], faults: Vec::new() };
    for ((a, b), users) in edges {
        let curve = side_curve(a, b, curves);
        let mut panels = users.iter().filter_map(|u| u.panel);
        if let Some(left) = panels.next() {
            let right = panels.next();
            out.list.push(Seam { curve, left, right });
            if let Some(right) = right {
                out.neighbours[left].push(right);
                out.neighbours[right].push(left);
            }
        }
        if let [only] = users[..] {
            out.rim.push(if only.forward { (a, b, curve) } else { (b, a, curve.reversed()) });
        } else if users.len() > 2 || users[0].forward == users[1].forward {
            out.faults.push(doubled(a, b, &users, drawn, curves));
        }
    }
    for list in &mut out.neighbours {
        list.sort_unstable();
        list.dedup();
    }
    out
}

fn doubled(a: Corner, b: Corner, users: &[User], drawn: &[Drawn], curves: &Curves) -> Finding {
    let names: Vec<&str> =
        users.iter().map(|u| u.panel.map_or(say!("vehicle-an-opening"), |i| drawn[i].panel.id.as_str())).collect();
    let side = match (a.1, b.1) {
        (Side::Right, _) | (_, Side::Right) => say!("common-right"),
        (Side::Centre, Side::Centre) => say!("vehicle-centre"),
        _ => say!("common-left"),
    };
    Finding::new(
        Code::TemplateOverlap,
        say!("vehicle-place-curve", from = curves.name(a.0), to = curves.name(b.0), side = side),
        say!("vehicle-same-side", names = listed(&names)),
        say!("vehicle-same-side-do"),
    )
}
