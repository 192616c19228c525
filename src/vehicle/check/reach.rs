//! Stances one can't stand at, and leaning over in a circle.

use crate::finding::{Code, Finding};
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
            format!("it is {distance:.0} mm from the body, and a person needs {ROOM_MM:.0} mm")
        } else if distance > REACH_MM {
            format!("it is {distance:.0} mm from the body, too far to reach anything")
        } else {
            continue;
        };
        let place = format!("stance \"{}\"", stance.id);
        findings.push(Finding::new(
            Code::TemplateStance,
            place,
            cause,
            "move it beside the vehicle, about 450 mm away",
        ));
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
            format!("it is worked from \"{}\" on the other side", stance.id)
        } else {
            format!("it is {away:.0} mm along the vehicle from its stance \"{}\"", stance.id)
        };
        let place = format!("panel \"{}\"", panel.id);
        findings.push(Finding::new(
            Code::TemplateReach,
            place,
            cause,
            "give it a stance beside it, or move that stance",
        ));
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
            format!("panel \"{}\"", names[0]),
            format!("panels lean over one another in a circle: {}", names.join(", ")),
            "let the lower panel lean over nothing",
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
