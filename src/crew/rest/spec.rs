//! What is left of a day as a crew problem.

use super::{Deadline, Rest, SoFar, State, Whereabouts};
use crate::crew::spec::{LagSpec, OperationSpec, ProblemSpec, WetSpec, WorkerSpec};
use crate::units::Seconds;
use std::collections::HashMap;

/// The operation that stands for the present. What somebody does at present without it being an operation of the problem is
/// called `now/` and their name.
pub const NOW: &str = "now";
/// How long [`NOW`] takes on the rest's clock.
pub(super) const NOW_LASTS_S: Seconds = 1;

/// Whether an operation of a rest only says where somebody is or that it is now.
pub fn is_of_the_present(operation: &str) -> bool {
    operation == NOW || operation.starts_with("now/")
}

/// What is left to do.
///
/// `so_far` has an entry for each operation and worker of the problem. Names that begin with `now` must not be in the problem.
pub fn rest_of(problem: &ProblemSpec, so_far: &SoFar) -> Rest {
    let mut writer = Writer::new(problem, so_far);
    for worker in 0..problem.workers.len() {
        writer.present_of(worker);
    }
    writer.not_begun();
    writer.lags();
    writer.wet();
    Rest { spec: writer.spec, origin_s: so_far.now_s - NOW_LASTS_S, deadlines: writer.deadlines }
}

struct Writer<'a> {
    problem: &'a ProblemSpec,
    so_far: &'a SoFar,
    state: HashMap<&'a str, State>,
    spec: ProblemSpec,
    deadlines: Vec<Deadline>,
    /// Stances at which somebody is at work.
    taken: Vec<String>,
}

impl<'a> Writer<'a> {
    fn new(problem: &'a ProblemSpec, so_far: &'a SoFar) -> Self {
        let state = problem.operations.iter().map(|o| o.id.as_str()).zip(so_far.operations.iter().copied()).collect();
        let mut spec = problem.clone();
        (spec.operations, spec.lags, spec.wet) = (Vec::new(), Vec::new(), Vec::new());
        let mut writer = Self { problem, so_far, state, spec, deadlines: Vec::new(), taken: Vec::new() };
        writer.spec.workers.push(WorkerSpec { id: NOW.to_owned(), roles: vec![NOW.to_owned()] });
        let stance = writer.beside(0, NOW);
        writer.operation(NOW, NOW, NOW.to_owned(), NOW_LASTS_S, stance);
        writer
    }

    fn state(&self, operation: &str) -> State {
        self.state.get(operation).copied().unwrap_or(State::ToDo)
    }

    fn operation(&mut self, id: &str, panel: &str, role: String, duration_s: Seconds, stance: String) {
        let panel = panel.to_owned();
        self.spec.operations.push(OperationSpec { id: id.to_owned(), panel, role, duration_s, stance, worker: None });
    }

    /// A place in nobody's way that is as far from everything as a stance is.
    fn beside(&mut self, stance: usize, name: &str) -> String {
        let spec = &mut self.spec;
        for row in &mut spec.walk_s {
            row.push(row[stance]);
        }
        let mut row = spec.walk_s[stance].clone();
        if let Some(own) = row.last_mut() {
            *own = 0;
        }
        spec.walk_s.push(row);
        spec.stances.push(name.to_owned());
        name.to_owned()
    }

    /// What a worker is doing now, as the only thing they can begin with.
    fn present_of(&mut self, worker: usize) {
        let running = self.problem.operations.iter().zip(&self.so_far.operations).find_map(|(o, s)| match *s {
            State::Running { worker: w, end_s, .. } if w == worker => Some((o, end_s)),
            _ => None,
        });
        let role = format!("{NOW}/{}", self.problem.workers[worker].id);
        let now = self.so_far.now_s;
        let (id, lasts) = if let Some((operation, end_s)) = running {
            let mut stance = operation.stance.clone();
            if self.taken.iter().any(|t| self.problem.is_close(t, &stance)) {
                // Two are in each other's way already; that can't be planned away.
                let index = self.problem.stances.iter().position(|s| *s == stance).unwrap_or(0);
                stance = self.beside(index, &role);
            }
            self.taken.push(stance.clone());
            let lasts = (end_s - now).max(1);
            self.operation(&operation.id, &operation.panel, role.clone(), lasts, stance);
            (operation.id.clone(), lasts)
        } else {
            let Whereabouts { stance, away_until_s } = self.so_far.workers[worker];
            if stance.is_none() && away_until_s.is_none() {
                return; // starts wherever the plan wants them
            }
            let lasts = away_until_s.map_or(1, |until| (until - now).max(1));
            let stance = self.beside(stance.unwrap_or(0), &role);
            self.operation(&role.clone(), NOW, role.clone(), lasts, stance);
            (role.clone(), lasts)
        };
        self.spec.workers[worker].roles.push(role);
        self.after_now(&id, 0, Some(lasts));
    }

    fn after_now(&mut self, to: &str, min_s: Seconds, max_s: Option<Seconds>) {
        self.spec.lags.push(LagSpec { from: NOW.to_owned(), to: to.to_owned(), min_s, max_s });
    }

    fn not_begun(&mut self) {
        let to_do = self.problem.operations.iter().filter(|o| self.state(&o.id) == State::ToDo).cloned();
        let to_do: Vec<OperationSpec> = to_do.collect();
        self.spec.operations.extend(to_do);
    }

    fn lags(&mut self) {
        // How long after now each operation may begin at the soonest, for what is done.
        let mut soonest: HashMap<&str, Seconds> = HashMap::new();
        let now = self.so_far.now_s;
        for lag in &self.problem.lags {
            let (from, to) = (self.state(&lag.from), self.state(&lag.to));
            match (from, to) {
                (_, State::Done { .. } | State::Running { .. }) => {}
                (State::Done { end_s, .. } | State::Running { end_s, .. }, State::ToDo) => {
                    let end_s = if matches!(from, State::Done { .. }) { end_s } else { end_s.max(now + 1) };
                    let wait = soonest.entry(lag.to.as_str()).or_insert(0);
                    *wait = (*wait).max(end_s + lag.min_s - now);
                    if let Some(max) = lag.max_s {
                        let by_s = end_s + max - now + NOW_LASTS_S;
                        self.deadlines.push(Deadline { operation: lag.to.clone(), by_s });
                    }
                }
                (State::ToDo, State::ToDo) => self.spec.lags.push(lag.clone()),
            }
        }
        let to_do: Vec<&str> =
            self.problem.operations.iter().map(|o| o.id.as_str()).filter(|o| self.state(o) == State::ToDo).collect();
        for operation in to_do {
            self.after_now(operation, soonest.get(operation).copied().unwrap_or(0), None);
        }
    }

    fn wet(&mut self) {
        for rule in &self.problem.wet {
            let from = self.state(&rule.from);
            if matches!(self.state(&rule.to), State::Done { .. }) {
                continue;
            }
            let blocks = rule.blocks.iter().filter(|&b| match self.state(b) {
                State::ToDo => true,
                State::Running { .. } => from == State::ToDo,
                State::Done { .. } => false,
            });
            let blocks: Vec<String> = blocks.cloned().collect();
            if blocks.is_empty() {
                continue;
            }
            let from = if matches!(from, State::Done { .. }) { NOW.to_owned() } else { rule.from.clone() };
            self.spec.wet.push(WetSpec { from, to: rule.to.clone(), blocks });
        }
    }
}
