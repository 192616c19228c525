//! Three ways of working.

use crate::coating::Unlimited;
use lapwright::crew::{Limits, PlanFile, PlanRow, ProblemSpec, SoFar, State, replan, rest_of};

/// How people decide what comes next.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Way {
    /// The program looks at what happened after every change and says what comes next.
    Advice,
    /// Everybody keeps their own row of the plan, whatever happens.
    FixedOrder,
    /// No plan: the nearest panel that is not coated; whatever has waited longest is levelled.
    RoundTheCar,
}

impl Way {
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Advice => "advice, planned again",
            Self::FixedOrder => "the plan as a fixed order",
            Self::RoundTheCar => "round the car, no plan",
        }
    }
}

/// Orders tried each time something happened.
const NODES: u64 = 600;

/// What comes next for each person.
pub(crate) struct Choice<'a> {
    spec: &'a ProblemSpec,
    way: Way,
    known: Vec<PlanRow>,
    /// By worker: (operation, from when).
    rows: Vec<Vec<(usize, i64)>>,
    /// By worker: what they set their mind on.
    insists: Vec<Option<usize>>,
}

impl<'a> Choice<'a> {
    pub(crate) fn new(spec: &'a ProblemSpec, plan: &PlanFile, way: Way) -> Self {
        let mut choice = Self {
            spec,
            way,
            known: plan.operations.clone(),
            rows: Vec::new(),
            insists: vec![None; spec.workers.len()],
        };
        choice.take(&plan.operations, 0);
        choice
    }

    fn take(&mut self, plan: &[PlanRow], origin: i64) {
        self.rows = vec![Vec::new(); self.spec.workers.len()];
        let mut sorted: Vec<&PlanRow> = plan.iter().collect();
        sorted.sort_by_key(|r| r.start_s);
        for row in sorted {
            let worker = self.spec.workers.iter().position(|w| w.id == row.worker);
            let operation = self.spec.operations.iter().position(|o| o.id == row.id);
            if let (Some(worker), Some(operation)) = (worker, operation) {
                self.rows[worker].push((operation, origin + row.start_s));
            }
        }
    }

    /// Something happened.
    pub(crate) fn look(&mut self, so_far: &SoFar) {
        if self.way != Way::Advice || so_far.operations.iter().all(|s| *s != State::ToDo) {
            return;
        }
        let limits = Limits { nodes: Some(NODES), threads: 1, seed: 1 };
        if let Ok(Some(plan)) = replan(&rest_of(self.spec, so_far), &self.known, &limits, &Unlimited) {
            self.take(&plan.plan.operations, plan.origin_s);
            self.known = plan.plan.operations;
        }
    }

    /// What somebody who is free goes for now.
    pub(crate) fn next(&self, worker: usize, so_far: &SoFar) -> Option<usize> {
        let open = |o: usize| so_far.operations[o] == State::ToDo;
        if let Some(own) = self.insists[worker].filter(|&o| open(o)) {
            return Some(own);
        }
        match self.way {
            Way::Advice | Way::FixedOrder => {
                let row = self.rows[worker].iter().find(|(o, _)| open(*o))?;
                // Advice says when as well; a fixed order only says what comes next.
                (self.way == Way::FixedOrder || row.1 <= so_far.now_s + self.walk(worker, row.0, so_far))
                    .then_some(row.0)
            }
            Way::RoundTheCar => self.nearest(worker, so_far),
        }
    }

    fn walk(&self, worker: usize, operation: usize, so_far: &SoFar) -> i64 {
        let to = self.spec.stances.iter().position(|s| *s == self.spec.operations[operation].stance);
        match (so_far.workers[worker].stance, to) {
            (Some(from), Some(to)) => self.spec.walk_s[from][to],
            _ => 0,
        }
    }

    /// Levelling: what has waited longest. Applying: the nearest panel, as long as not more than two wait.
    fn nearest(&self, worker: usize, so_far: &SoFar) -> Option<usize> {
        let roles = &self.spec.workers[worker].roles;
        let ready = |o: usize| {
            let id = &self.spec.operations[o].id;
            self.spec.lags.iter().filter(|l| l.to == *id).all(|l| {
                let from = self.spec.operations.iter().position(|x| x.id == l.from);
                matches!(from.map(|f| so_far.operations[f]), Some(State::Done { end_s, .. }) if end_s + l.min_s <= so_far.now_s)
            })
        };
        let reachable = |o: usize| {
            let id = &self.spec.operations[o].id;
            self.spec.wet.iter().filter(|r| r.blocks.contains(id)).all(|r| {
                let state = |x: &String| {
                    self.spec.operations.iter().position(|p| p.id == *x).map_or(State::ToDo, |p| so_far.operations[p])
                };
                state(&r.from) == State::ToDo || matches!(state(&r.to), State::Done { .. })
            })
        };
        let open: Vec<usize> = (0..self.spec.operations.len())
            .filter(|&o| so_far.operations[o] == State::ToDo && roles.contains(&self.spec.operations[o].role))
            .filter(|&o| ready(o) && reachable(o))
            .collect();
        let waiting = self.spec.lags.iter().filter(|l| l.max_s.is_some()).filter_map(|l| {
            let at = |id: &str| self.spec.operations.iter().position(|o| o.id == id);
            let (from, to) = (at(&l.from)?, at(&l.to)?);
            match (so_far.operations[from], so_far.operations[to]) {
                (State::Done { end_s, .. }, State::ToDo) => Some((end_s, to)),
                _ => None,
            }
        });
        let waiting: Vec<(i64, usize)> = waiting.collect();
        if let Some((_, level)) = waiting.iter().filter(|(_, to)| open.contains(to)).min() {
            return Some(*level);
        }
        if waiting.len() >= 2 {
            return None;
        }
        let applying = open.into_iter().filter(|o| self.spec.operations[*o].role == "apply");
        applying.min_by_key(|&o| (self.walk(worker, o, so_far), o))
    }

    pub(crate) fn insist(&mut self, worker: usize, operation: usize) {
        self.insists[worker] = Some(operation);
    }

    pub(crate) fn began(&mut self, worker: usize, _operation: usize) {
        self.insists[worker] = None;
    }
}
