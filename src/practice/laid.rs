//! What the learner has laid: a lane of steps for each worker.

use super::exercise::Exercise;
use super::play::{Lanes, release_s};
use crate::crew::Schedule;
use crate::job::Role;
use crate::say;
use crate::units::Seconds;

/// One step of a lane.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Step {
    /// Index of the operation in the exercise's problem.
    pub operation: usize,
    /// Seconds that the worker waits on purpose before it, once everything else would let it begin. Never negative.
    pub hold_s: Seconds,
}

/// Lanes by worker of the problem; what is given comes first in each.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Laid {
    lanes: Lanes,
    /// The learner's own steps, by worker, in the order they were laid.
    own: Vec<usize>,
}

/// Why a step can't be laid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum CantLay {
    /// There is nothing to do there in this exercise.
    #[error("{}", say!("practice-not-in-play"))]
    NotInPlay,
    /// It is laid already.
    #[error("{}", say!("practice-laid-already"))]
    Already,
    /// Nothing can be levelled before it is applied.
    #[error("{}", say!("practice-not-applied"))]
    NotApplied,
    /// The lane belongs to somebody else.
    #[error("{}", say!("practice-laid-by-partner"))]
    NotYours,
}

impl Laid {
    /// Nothing but what is given.
    pub fn begin(exercise: &Exercise) -> Self {
        Self { lanes: exercise.given.clone(), own: Vec::new() }
    }

    /// A plan as lanes that play to exactly its times. It must keep the shortest waits and the ways.
    pub fn of_plan(exercise: &Exercise, plan: &Schedule) -> Self {
        let mut ends = vec![None; exercise.spec.operations.len()];
        for row in plan.rows() {
            ends[row.operation] = Some(row.interval.end);
        }
        let mut lanes = vec![Vec::new(); exercise.spec.workers.len()];
        for (worker, lane) in lanes.iter_mut().enumerate() {
            let mut before: Option<usize> = None;
            for row in plan.rows_of(worker) {
                let released = release_s(exercise, &ends, before, row.operation).unwrap_or(0);
                lane.push(Step { operation: row.operation, hold_s: (row.interval.start - released).max(0) });
                before = Some(row.operation);
            }
        }
        Self { lanes, own: Vec::new() }
    }

    /// The best order of an exercise, laid.
    pub fn best(exercise: &Exercise) -> Self {
        Self::of_plan(exercise, &exercise.best_schedule)
    }

    /// The steps of a worker.
    pub fn lane(&self, worker: usize) -> &[Step] {
        &self.lanes[worker]
    }

    pub(super) fn lanes(&self) -> &Lanes {
        &self.lanes
    }

    /// Whether an operation is laid.
    pub fn has(&self, operation: usize) -> bool {
        self.lanes.iter().flatten().any(|s| s.operation == operation)
    }

    /// Steps that the learner laid.
    pub fn own_steps(&self) -> usize {
        self.own.len()
    }

    /// Whether every operation is laid.
    pub fn is_complete(&self, exercise: &Exercise) -> bool {
        (0..exercise.spec.operations.len()).all(|o| self.has(o))
    }

    /// What a click on a panel lays next: applying first, then levelling, as far as that is the learner's.
    ///
    /// # Errors
    /// [`CantLay`]
    pub fn next_on(&self, exercise: &Exercise, panel: usize) -> Result<(usize, usize), CantLay> {
        let mine = exercise.laid_by_learner();
        let mut why = CantLay::NotInPlay;
        for role in [Role::Apply, Role::Level] {
            let Some(operation) = exercise.operation(panel, role) else { continue };
            if self.has(operation) {
                why = if why == CantLay::NotInPlay { CantLay::Already } else { why };
                continue;
            }
            let Some(worker) = exercise.worker_for(role).filter(|w| mine.contains(w)) else {
                why = CantLay::NotYours;
                continue;
            };
            let applied = exercise.operation(panel, Role::Apply).is_none_or(|o| self.has(o));
            return if role == Role::Apply || applied { Ok((worker, operation)) } else { Err(CantLay::NotApplied) };
        }
        Err(why)
    }

    /// Lays an operation at the end of a lane, after waiting `hold_s` on purpose.
    ///
    /// # Errors
    /// [`CantLay`]; nothing has then changed.
    pub fn lay(
        &mut self,
        exercise: &Exercise,
        worker: usize,
        operation: usize,
        hold_s: Seconds,
    ) -> Result<(), CantLay> {
        let panel = exercise.panel_of(operation).ok_or(CantLay::NotInPlay)?;
        if self.has(operation) {
            return Err(CantLay::Already);
        }
        let role = exercise.role_of(operation).ok_or(CantLay::NotInPlay)?;
        let able = worker < exercise.people() && exercise.job.crew[worker].roles.contains(&role);
        if !able || !exercise.laid_by_learner().contains(&worker) {
            return Err(CantLay::NotYours);
        }
        if role == Role::Level && exercise.operation(panel, Role::Apply).is_some_and(|o| !self.has(o)) {
            return Err(CantLay::NotApplied);
        }
        self.lanes[worker].push(Step { operation, hold_s: hold_s.max(0) });
        self.own.push(worker);
        Ok(())
    }

    /// Takes the learner's last step back; answers it.
    pub fn take_back(&mut self) -> Option<Step> {
        let worker = self.own.pop()?;
        self.lanes[worker].pop()
    }
}
