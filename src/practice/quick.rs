//! "Which panel next?": a position in the middle of a day, and a few places to go.
//!
//! The day goes by the planner's order up to a moment. Every candidate is put first for its worker, and the planner works out the
//! best that can still come of it. Right are all whose rest costs at most [`MARGIN`] more than the best found.

use super::exercise::{Exercise, PrepareError, Setup, best_of, prepare};
use super::lesson::{Lesson, Part};
use super::play::walk_s;
use super::surprise::so_far;
use super::words::panel_words;
use crate::crew::{Control, LagSpec, Limits, ProblemSpec, Random, SoFar, State, rest_of};
use crate::job::{Job, Role};
use crate::say;
use crate::units::Seconds;
use crate::vehicle::{Naming, Template};
use crate::words::decimal;
use std::sync::Arc;

/// How much dearer than the best the rest of the day may become with a right answer, as a share.
pub const MARGIN: f64 = 0.02;
/// Places to choose from.
const CANDIDATES: usize = 4;
/// Moments tried for each round.
const TRIES: usize = 12;

/// One question.
#[derive(Debug, Clone)]
pub struct NextRound {
    /// The day it is from.
    pub exercise: Arc<Exercise>,
    /// The moment on its clock.
    pub now_s: Seconds,
    /// Who asks where to go, by worker.
    pub worker: usize,
    /// What they have to do there.
    pub role: Role,
    /// Where everybody else is at work: worker and panel.
    pub others: Vec<(usize, usize)>,
    /// The panel they come from, by index.
    pub from: Option<usize>,
    /// Panels that are done, and those that are wet, with how long their windows are still open.
    pub done: Vec<usize>,
    /// As `done`.
    pub wet: Vec<(usize, Seconds)>,
    /// Where they could go, in the order of the vehicle; at least one is right and one is not.
    pub candidates: Vec<Candidate>,
}

/// A place to go.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// The panel, by index.
    pub panel: usize,
    /// What the day costs more than with the best candidate, in seconds of the whole job; none where a rule would be broken.
    pub extra_s: Option<f64>,
    /// Whether it is as good as the best, within [`MARGIN`].
    pub right: bool,
    /// Why, in a sentence.
    pub why: String,
}

/// Makes a few questions on a vehicle.
///
/// # Errors
/// [`PrepareError`]; [`PrepareError::NotFound`] where no position has both right and wrong places to go.
pub fn next_rounds(
    base: &Job,
    template: &Arc<Template>,
    (seed, count): (u64, usize),
    naming: Naming,
    limits: &Limits,
    control: &dyn Control,
) -> Result<Vec<NextRound>, PrepareError> {
    let setup = Setup { lesson: Lesson::Partner, part: Part::Both, air: Lesson::Partner.air(), seed };
    let exercise = Arc::new(prepare(base, template, &setup, limits, control)?);
    let mut random = Random::new(seed, 3);
    let mut rounds: Vec<NextRound> = Vec::new();
    for _ in 0..TRIES * count {
        if rounds.len() == count || control.should_stop() {
            break;
        }
        let worker = rounds.len() % exercise.people();
        let rows: Vec<_> = exercise.best_schedule.rows_of(worker).copied().collect();
        let place = rows.len() / 8 + random.below((rows.len() * 5 / 8).max(1));
        let Some(row) = rows.get(place).filter(|r| rounds.iter().all(|q| q.now_s != r.interval.end)) else { continue };
        let asked = Asked { exercise: &exercise, worker, now_s: row.interval.end, naming };
        rounds.extend(asked.round(&mut random, limits, control));
    }
    if rounds.len() == count { Ok(rounds) } else { Err(PrepareError::NotFound) }
}

struct Asked<'a> {
    exercise: &'a Arc<Exercise>,
    worker: usize,
    now_s: Seconds,
    naming: Naming,
}

impl Asked<'_> {
    fn round(&self, random: &mut Random, limits: &Limits, control: &dyn Control) -> Option<NextRound> {
        let exercise = self.exercise;
        let past = so_far(exercise, &exercise.best_schedule, self.now_s);
        let planned = exercise.best_schedule.rows_of(self.worker).find(|r| r.interval.start >= self.now_s)?.operation;
        let role = exercise.role_of(planned)?;
        let from =
            exercise.best_schedule.rows_of(self.worker).filter(|r| r.interval.end <= self.now_s).last()?.operation;
        let choice = self.choice(&past, role, planned, from, random)?;
        let rest = rest_of(&exercise.spec, &past);
        let spec = rest.strict(&|_| 0);
        let costs: Vec<Option<i64>> = choice.iter().map(|&o| self.cost_with(&spec, o, role, limits, control)).collect();
        let best = costs.iter().flatten().min().copied()?;
        let weight = exercise.spec.objective.makespan as f64;
        let candidates: Vec<Candidate> = choice
            .iter()
            .zip(&costs)
            .filter_map(|(&operation, cost)| {
                let extra = cost.map(|c| (c - best) as f64);
                let right = extra.is_some_and(|e| e <= MARGIN * best as f64);
                let extra_s = extra.map(|e| e / weight);
                let why = if right { Self::praise(extra_s) } else { self.blame(&past, operation, from, extra_s) };
                Some(Candidate { panel: exercise.panel_of(operation)?, extra_s, right, why })
            })
            .collect();
        let right = candidates.iter().filter(|c| c.right).count();
        if right == 0 || right == candidates.len() {
            return None; // nothing to learn from
        }
        let running = |o: usize| match past.operations[o] {
            State::Running { worker, .. } if worker != self.worker => Some((worker, exercise.panel_of(o)?)),
            _ => None,
        };
        let over = |panel: usize, role| {
            let state = exercise.operation(panel, role).map(|o| past.operations[o]);
            if let Some(State::Done { end_s, .. }) = state { Some(end_s) } else { None }
        };
        let panels = 0..exercise.template.panels.len();
        let max_s = exercise.window_s().1;
        Some(NextRound {
            now_s: self.now_s,
            worker: self.worker,
            role,
            others: (0..past.operations.len()).filter_map(running).collect(),
            from: exercise.panel_of(from),
            done: panels.clone().filter(|&p| over(p, Role::Level).is_some()).collect(),
            wet: panels
                .filter(|&p| over(p, Role::Level).is_none())
                .filter_map(|p| over(p, Role::Apply).map(|end| (p, end + max_s - self.now_s)))
                .collect(),
            candidates,
            exercise: Arc::clone(exercise),
        })
    }

    /// The planned one and others: the nearest, and some by chance.
    fn choice(&self, past: &SoFar, role: Role, planned: usize, from: usize, random: &mut Random) -> Option<Vec<usize>> {
        let exercise = self.exercise;
        let can = |&o: &usize| {
            let applied = exercise.panel_of(o).and_then(|p| exercise.operation(p, Role::Apply));
            let is_wet = applied.is_some_and(|a| matches!(past.operations[a], State::Done { .. }));
            exercise.role_of(o) == Some(role) && past.operations[o] == State::ToDo && (role == Role::Apply || is_wet)
        };
        let mut left: Vec<usize> = (0..past.operations.len()).filter(can).filter(|&o| o != planned).collect();
        left.sort_by_key(|&o| (walk_s(exercise, from, o), o));
        if left.len() + 1 < CANDIDATES || !can(&planned) {
            return None;
        }
        let mut choice = vec![planned, left.remove(0)];
        while choice.len() < CANDIDATES {
            choice.push(left.remove(random.below(left.len())));
        }
        choice.sort_by_key(|&o| exercise.panel_of(o));
        Some(choice)
    }

    /// The cost of the best rest that begins with an operation; none where every rest breaks a rule.
    fn cost_with(
        &self,
        rest: &ProblemSpec,
        first: usize,
        role: Role,
        limits: &Limits,
        control: &dyn Control,
    ) -> Option<i64> {
        let first = &self.exercise.spec.operations[first].id;
        let mut spec = rest.clone();
        let others: Vec<String> =
            spec.operations.iter().filter(|o| o.role == role.id() && o.id != *first).map(|o| o.id.clone()).collect();
        let after = |to: String| LagSpec { from: first.clone(), to, min_s: 0, max_s: None };
        spec.lags.extend(others.into_iter().map(after));
        best_of(&spec, limits, control).ok().map(|(_, best, _)| best.cost())
    }

    fn praise(extra_s: Option<f64>) -> String {
        match extra_s {
            Some(s) if s >= 1.0 => say!("practice-good", seconds = decimal(s, 0)),
            _ => say!("practice-the-best").to_owned(),
        }
    }

    fn blame(&self, past: &SoFar, operation: usize, from: usize, extra_s: Option<f64>) -> String {
        let exercise = self.exercise;
        let spec = &exercise.spec;
        let id = &spec.operations[operation].id;
        let index = |id: &String| spec.operations.iter().position(|o| o.id == *id);
        let name = |o: usize| exercise.panel_of(o).map_or_else(String::new, |p| panel_words(exercise, p, self.naming));
        let is_over = |o: usize| matches!(past.operations[o], State::Done { .. });
        for wet in spec.wet.iter().filter(|w| w.blocks.contains(id)) {
            if let Some((from, to)) = index(&wet.from).zip(index(&wet.to))
                && past.operations[from] != State::ToDo
                && !is_over(to)
            {
                return say!("practice-would-lean", panel = name(to));
            }
        }
        for lag in spec.lags.iter().filter(|l| l.to == *id) {
            if let Some(above) = index(&lag.from).filter(|&o| !is_over(o))
                && spec.operations[above].panel != spec.operations[operation].panel
            {
                return say!("practice-above-first", panel = name(above));
            }
        }
        let stance = &spec.operations[operation].stance;
        for (o, state) in past.operations.iter().enumerate() {
            if let State::Running { worker, .. } = state
                && *worker != self.worker
                && spec.is_close(stance, &spec.operations[o].stance)
            {
                return say!("practice-still-at-work", person = &spec.workers[*worker].id);
            }
        }
        let walk = walk_s(exercise, from, operation);
        match extra_s {
            None => say!("practice-window-elsewhere").to_owned(),
            Some(s) if walk > 5 => say!("practice-long-way", seconds = decimal(s, 0)),
            Some(s) => say!("practice-long-wait", seconds = decimal(s, 0)),
        }
    }
}
