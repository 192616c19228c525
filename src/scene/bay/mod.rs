//! The bay as it is at a moment: a card for each worker, the windows that run, what to call out, what is wrong.

mod call;
mod cards;
mod lap;
mod lap_map;
mod map;
mod windows;

pub use cards::{Card, CardState};
pub use lap::{LapPlaceRow, LapRow, LapScene, lap_scene};
pub use lap_map::lap_map;
pub use map::bay_map;
pub use windows::{WindowPhase, WindowRow};

use crate::bay::{Board, Day, Hold};
use crate::crew::{Late, ProblemSpec};
use crate::insight::spoken;
use crate::job::Role;
use crate::say;
use crate::units::{Seconds, capital};
use crate::vehicle::{Naming, PanelId, Template};
use crate::words::text_if_any;

/// What the bay is drawn from.
#[derive(Debug, Clone, Copy)]
pub struct BayFacts<'a> {
    /// The vehicle.
    pub template: &'a Template,
    /// Which names panels have.
    pub naming: Naming,
    /// The work, with the windows in force.
    pub problem: &'a ProblemSpec,
    /// What happened.
    pub day: &'a Day,
    /// Who does what now and next.
    pub board: &'a Board,
    /// What can't be in time any more.
    pub late: &'a [Late],
    /// The present.
    pub now_s: Seconds,
}

/// The bay.
#[derive(Debug, Clone, PartialEq)]
pub struct BayScene {
    /// One per worker of the problem.
    pub cards: Vec<Card>,
    /// Panels that wait, the most urgent first.
    pub windows: Vec<WindowRow>,
    /// What to say aloud now.
    pub call: Option<String>,
    /// What can't be done right any more, and what to do.
    pub warnings: Vec<String>,
    /// Until everything is expected to be over.
    pub left_s: Seconds,
    /// Operations that are over, and all of them.
    pub done: (usize, usize),
}

/// Something to be done, in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Doing {
    /// Index into the operations of the problem.
    pub operation: usize,
    /// Index into the panels of the template.
    pub panel: Option<usize>,
    /// What: `Apply`.
    pub verb: String,
    /// Where: `Bonnet, left`.
    pub name: String,
    /// Whether it is a part of coating.
    pub coats: bool,
}

impl Doing {
    /// As it is said: `roof left`, and with what is done where people do several things, `polish roof left`.
    pub fn in_short(&self) -> String {
        let name = spoken(&self.name);
        if self.coats { name } else { say!("scene-in-short", does = self.verb.to_lowercase(), panel = name) }
    }
}

impl BayFacts<'_> {
    /// An operation in words.
    pub fn doing(&self, operation: usize) -> Doing {
        let spec = &self.problem.operations[operation];
        let panel = self.template.index_of(&PanelId::from(spec.panel.as_str()));
        let name = panel.map_or_else(|| spec.panel.clone(), |i| self.template.panels[i].name(self.naming));
        let verb = text_if_any(&format!("scene-role-{}", spec.role)).map_or_else(|| capital(&spec.role), str::to_owned);
        let coats = [Role::Apply, Role::Level].iter().any(|r| r.id() == spec.role);
        Doing { operation, panel, verb, name, coats }
    }

    /// What stands against something, as a sentence.
    pub fn hold(&self, hold: Hold) -> String {
        let name = |operation| self.doing(operation).name;
        match hold {
            Hold::First { operation } => {
                let first = self.doing(operation);
                say!("scene-hold-first", does = first.verb, panel = spoken(&first.name))
            }
            Hold::Until { at_s } => say!("scene-hold-early", seconds = at_s - self.now_s),
            Hold::Wet { operation } => say!("scene-hold-wet", panel = name(operation)),
            Hold::InTheWay { worker } => say!("scene-hold-near", who = &self.problem.workers[worker].id),
        }
    }
}

/// Puts everything together.
pub fn bay_scene(facts: &BayFacts<'_>) -> BayScene {
    BayScene {
        cards: (0..facts.problem.workers.len()).map(|w| cards::card(facts, w)).collect(),
        windows: windows::rows(facts),
        call: call::call(facts),
        warnings: call::warnings(facts),
        left_s: (facts.board.finish_s - facts.now_s).max(0),
        done: facts.day.done(),
    }
}
