//! Undo and redo by snapshot.

use super::command::{Command, CommandError, GaugeStep};
use super::model::Job;
use crate::vehicle::Template;
use std::collections::VecDeque;
use std::sync::Arc;

/// Grows with every change, also with undo and redo: a result computed for one revision is out of date at any other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Revision(pub u64);

/// Commands that belong to one movement of a person (a drag, typing in one field) and are undone together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct GestureId(pub u64);

/// How many steps can be taken back.
const UNDO_STEPS: usize = 1_000;

/// A job being worked on, with what undo needs.
#[derive(Debug, Clone)]
pub struct Document {
    job: Arc<Job>,
    revision: Revision,
    undo: VecDeque<Step>,
    redo: Vec<Step>,
    saved: Option<Arc<Job>>,
    template: Option<Arc<Template>>,
}

/// The job on the other side of a change.
#[derive(Debug, Clone)]
struct Step {
    job: Arc<Job>,
    gesture: Option<GestureId>,
    label: &'static str,
    gauge: GaugeStep,
}

impl Document {
    /// A job as it was read; nothing to undo, nothing to save.
    pub fn opened(job: Arc<Job>) -> Self {
        Self { saved: Some(Arc::clone(&job)), ..Self::unsaved(job) }
    }

    /// A job that exists nowhere else yet.
    pub fn unsaved(job: Arc<Job>) -> Self {
        Self {
            job,
            revision: Revision::default(),
            undo: VecDeque::new(),
            redo: Vec::new(),
            saved: None,
            template: None,
        }
    }

    /// Says which vehicle the job is about, so that a reading that its gauge can't take there is refused.
    pub fn set_template(&mut self, template: Arc<Template>) {
        self.template = Some(template);
    }

    /// The job as it is now.
    pub fn job(&self) -> &Arc<Job> {
        &self.job
    }

    /// Which state this is.
    pub fn revision(&self) -> Revision {
        self.revision
    }

    /// Whether there is something that was not saved.
    pub fn is_dirty(&self) -> bool {
        !self.saved.as_ref().is_some_and(|saved| Arc::ptr_eq(saved, &self.job) || saved == &self.job)
    }

    /// Notes that `job` is now on disk.
    pub fn mark_saved(&mut self, job: Arc<Job>) {
        self.saved = Some(job);
    }

    /// Notes what is on disk, if anything: the job as it is was taken up from elsewhere.
    pub fn set_unsaved(&mut self, saved: Option<Arc<Job>>) {
        self.saved = saved;
    }

    /// Applies one command. Commands of the same gesture share one undo step. A command that changes nothing leaves no step.
    ///
    /// # Errors
    /// [`CommandError`] when the command doesn't fit the job; then nothing has changed.
    pub fn apply(&mut self, command: &Command, gesture: Option<GestureId>) -> Result<Revision, CommandError> {
        if let Some(template) = &self.template {
            super::refusal::admit(command, &self.job, template)?;
        }
        let mut next = (*self.job).clone();
        command.carry_out(&mut next)?;
        if next == *self.job {
            return Ok(self.revision);
        }
        let before = std::mem::replace(&mut self.job, Arc::new(next));
        let same_gesture = gesture.is_some() && self.undo.back().is_some_and(|s| s.gesture == gesture);
        if same_gesture {
            // A gesture that is back where it began has changed nothing.
            self.undo.pop_back_if(|step| step.job == self.job);
        } else {
            self.undo.push_back(Step { job: before, gesture, label: command.label(), gauge: command.gauge_step() });
            if self.undo.len() > UNDO_STEPS {
                self.undo.pop_front();
            }
        }
        self.redo.clear();
        self.revision.0 += 1;
        Ok(self.revision)
    }

    /// Forgets every step, back and forth: they no longer fit what the job stands on.
    pub fn forget_steps(&mut self) {
        self.undo.clear();
        self.redo.clear();
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<&'static str> {
        self.undo.back().map(|s| s.label)
    }

    /// What the step that undo would take back is to somebody with a gauge in hand.
    pub fn undo_gauge_step(&self) -> GaugeStep {
        self.undo.back().map(|s| s.gauge).unwrap_or_default()
    }

    /// What redo would bring again.
    pub fn redo_label(&self) -> Option<&'static str> {
        self.redo.last().map(|s| s.label)
    }

    /// Takes the last step back; says whether there was one.
    pub fn undo(&mut self) -> bool {
        let Some(step) = self.undo.pop_back() else { return false };
        let after = self.go_to(step.job);
        self.redo.push(Step { job: after, gesture: None, label: step.label, gauge: step.gauge });
        true
    }

    /// Brings the last step taken back again; says whether there was one.
    pub fn redo(&mut self) -> bool {
        let Some(step) = self.redo.pop() else { return false };
        let before = self.go_to(step.job);
        self.undo.push_back(Step { job: before, gesture: None, label: step.label, gauge: step.gauge });
        true
    }

    fn go_to(&mut self, job: Arc<Job>) -> Arc<Job> {
        self.revision.0 += 1;
        std::mem::replace(&mut self.job, job)
    }
}
