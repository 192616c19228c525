//! Stances one can't stand at, and leaning over in a circle.

use crate::finding::{Code, Finding};
use crate::say;
use crate::vehicle::id::Side;
use crate::vehicle::panel::{Panel, Stance};
use crate::vehicle::template::Template;
use crate::vehicle::walk::distance_to_body;

const ROOM_MM: f64 = Stance::ROOM_MM;
const REACH_MM: f64 = Stance::REACH_MM;

pub(super) fn check(t: &Template, findings: &mut Vec<Finding>) {
    for stance in &t.stances {
        let distance = distance_to_body(stance.at, t.length.mm(), t.width.mm());
        let cause = if distance < ROOM_MM {
            say!("vehicle-stance-close", mm = format!("{distance:.0}"), room = format!("{ROOM_MM:.0}"))
        } else if distance > REACH_MM {
            say!("vehicle-stance-far", mm = format!("{distance:.0}"))
        } else {
            continue;
        };
        let place = say!("vehicle-place-stance", id = stance.id.as_str());
        findings.push(Finding::new(Code::TemplateStance, place, cause, say!("vehicle-stance-do")));
    }
    for panel in &t.panels {
        panel_from_stance(t, panel, findings);
    }
    cycles(t, findings);
}

/// A stance far along the vehicle from its panel, or on its other side.
fn panel_from_stance(t: &Template, panel: &Panel, findings: &mut Vec<Finding>) {
    let Some(stance) = t.stances.get(panel.stance) else { return };
    let b = panel.outline.bounds();
    let on_body = |x: f32| f64::from(x).clamp(0.0, t.length.mm());
    let x = f64::from(stance.at.x).clamp(0.0, t.length.mm());
    let away = (on_body(b.min.x) - x).max(x - on_body(b.max.x)).max(0.0);
    let wrong_side = match panel.side {
        Side::Left => stance.at.y < 0.0,
        Side::Right => stance.at.y > 0.0,
        Side::Centre => false,
    };
    if away > REACH_MM || wrong_side {
        let cause = if wrong_side {
            say!("vehicle-other-side", stance = stance.id.as_str())
        } else {
            say!("vehicle-far-along", mm = format!("{away:.0}"), stance = stance.id.as_str())
        };
        let place = say!("vehicle-place-panel", id = panel.id.as_str());
        findings.push(Finding::new(Code::TemplateReach, place, cause, say!("vehicle-reach-do")));
    }
}

/// Reports each circle of panels that lean over one another once, at its first panel.
fn cycles(t: &Template, findings: &mut Vec<Finding>) {
    let mut state = vec![State::New; t.panels.len()];
    for start in 0..t.panels.len() {
        let mut path = Vec::new();
        walk(t, start, &mut state, &mut path, findings);
    }
}

#[derive(Clone, Copy, PartialEq)]
enum State {
    New,
    Open,
    Done,
}

/// Depth first; at most as deep as there are panels, which the reader limits to 1,000.
fn walk(t: &Template, at: usize, state: &mut [State], path: &mut Vec<usize>, findings: &mut Vec<Finding>) {
    if state[at] == State::Open {
        let from = path.iter().position(|p| *p == at).unwrap_or(0);
        let names: Vec<&str> = path[from..].iter().chain([&at]).map(|p| t.panels[*p].id.as_str()).collect();
        findings.push(Finding::new(
            Code::TemplateLean,
            say!("vehicle-place-panel", id = names[0]),
            say!("vehicle-circle", names = names.join(", ")),
            say!("vehicle-circle-do"),
        ));
    }
    if state[at] != State::New {
        return;
    }
    state[at] = State::Open;
    path.push(at);
    for next in t.panels[at].leans_over.iter().filter_map(|id| t.index_of(id)) {
        walk(t, next, state, path, findings);
    }
    path.pop();
    state[at] = State::Done;
}
