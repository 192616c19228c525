//! Stances one can't stand at, and leaning over in a circle.

use crate::finding::{Code, Finding};
use crate::vehicle::template::Template;
use crate::vehicle::walk::distance_to_body;

/// Least room a person needs beside the body, mm. Our estimate.
const ROOM_MM: f64 = 200.0;
/// Furthest place from which a panel can be worked, mm. Our estimate.
const REACH_MM: f64 = 1_500.0;

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
    cycles(t, findings);
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
