//! Undo and redo while the vehicle is changed: templates never change, so a step is the one before it.

use crate::vehicle::Template;
use std::sync::Arc;

/// The template as it is now, with what led to it.
#[derive(Debug)]
pub(in crate::gui) struct History {
    now: Arc<Template>,
    done: Vec<Step>,
    undone: Vec<Step>,
}

/// The template on the other side of a change.
#[derive(Debug)]
struct Step {
    template: Arc<Template>,
    what: String,
    movement: Option<String>,
}

impl History {
    /// Nothing changed yet.
    pub(super) fn new(template: Arc<Template>) -> Self {
        Self { now: template, done: Vec::new(), undone: Vec::new() }
    }

    /// The template as it is now.
    pub(in crate::gui) fn now(&self) -> &Arc<Template> {
        &self.now
    }

    /// Whether something was changed.
    pub(in crate::gui) fn is_changed(&self) -> bool {
        !self.done.is_empty()
    }

    /// Takes a changed template. Changes of one movement, such as a stance pushed along by keys, are one step.
    pub(super) fn push(&mut self, template: Template, what: String, movement: Option<String>) {
        let before = std::mem::replace(&mut self.now, Arc::new(template));
        self.undone.clear();
        match self.done.last_mut().filter(|step| movement.is_some() && step.movement == movement) {
            Some(step) => step.what = what,
            None => self.done.push(Step { template: before, what, movement }),
        }
    }

    /// What was done, first to last.
    pub(super) fn what_was_done(&self) -> impl DoubleEndedIterator<Item = &str> {
        self.done.iter().map(|step| step.what.as_str())
    }

    /// What redo would do again.
    pub(super) fn what_was_undone(&self) -> Option<&str> {
        self.undone.last().map(|step| step.what.as_str())
    }

    /// Takes the last change back; says whether there was one.
    pub(super) fn undo(&mut self) -> bool {
        Self::step(&mut self.now, &mut self.done, &mut self.undone)
    }

    /// Makes the last change taken back again; says whether there was one.
    pub(super) fn redo(&mut self) -> bool {
        Self::step(&mut self.now, &mut self.undone, &mut self.done)
    }

    fn step(now: &mut Arc<Template>, from: &mut Vec<Step>, to: &mut Vec<Step>) -> bool {
        let Some(step) = from.pop() else { return false };
        let other = std::mem::replace(now, step.template);
        to.push(Step { template: other, what: step.what, movement: None });
        true
    }
}
