//! An order while the job changes: asked for in the background, shown until a newer one is there.

use crate::insight::CrewOrder;
use crate::job::Revision;
use crate::say;
use crate::work::{Effort, Progress, SolveRun, Task};
use eframe::egui;
use std::sync::Arc;
use std::task::{Wake, Waker};
use std::time::{Duration, Instant};

/// What is known of an order.
#[derive(Debug)]
pub(super) struct OrderState {
    wanted: Task,
    revision: Revision,
    /// When to start looking; none while somebody is, or when all is known.
    due: Option<Instant>,
    run: Option<SolveRun>,
    found: Option<CrewOrder>,
    /// Why there is no order, if that is known.
    pub(super) conflicts: Vec<String>,
    effort: Effort,
    /// How long the job has to rest before anybody starts looking.
    rest: Duration,
}

impl OrderState {
    /// Nothing known yet, and nobody looking. A change is followed at once.
    pub(super) fn new(wanted: Task, effort: Effort) -> Self {
        let due = Some(Instant::now());
        let (revision, conflicts) = (Revision::default(), Vec::new());
        Self { wanted, revision, due, run: None, found: None, conflicts, effort, rest: Duration::ZERO }
    }

    /// The same, but a change is followed only after the job has rested for so long.
    pub(super) fn resting(self, rest: Duration) -> Self {
        Self { rest, ..self }
    }

    /// Starts looking if that is due.
    pub(super) fn start_if_due(&mut self, ctx: &egui::Context) {
        let Some(due) = self.due else { return };
        match due.checked_duration_since(Instant::now()) {
            Some(left) if left > Duration::ZERO => ctx.request_repaint_after(left),
            _ => self.start(ctx),
        }
    }

    /// Asks for the order of another task. The present order stays on screen, marked out of date.
    pub(super) fn want(&mut self, wanted: Task, revision: Revision, ctx: &egui::Context) {
        if self.wanted == wanted {
            return;
        }
        (self.wanted, self.revision) = (wanted, revision);
        self.run = None; // it stops
        self.due = Some(Instant::now() + self.rest);
        if self.rest.is_zero() {
            self.start(ctx);
        } else {
            ctx.request_repaint_after(self.rest);
        }
    }

    fn start(&mut self, ctx: &egui::Context) {
        self.due = None;
        self.conflicts.clear();
        if self.is_empty() {
            self.found = None;
            return;
        }
        match SolveRun::start(self.wanted.clone(), self.revision, self.effort, waker(ctx)) {
            Ok(run) => self.run = Some(run),
            Err(error) => {
                self.run = None;
                self.conflicts = vec![say!("window-planner-not-started", error = error.to_string())];
            }
        }
    }

    /// Takes in what the run has to say; true if something changed.
    pub(super) fn listen(&mut self) -> bool {
        let mut changed = false;
        while let Some(message) = self.run.as_mut().and_then(SolveRun::next_message) {
            changed = true;
            match message {
                Progress::Improved(order) => self.found = Some(order),
                Progress::Done(order) => {
                    self.found = Some(order);
                    self.run = None;
                }
                Progress::Impossible(reasons) => {
                    self.conflicts = reasons;
                    self.run = None;
                }
                Progress::Failed(reason) => {
                    self.conflicts = vec![reason];
                    self.run = None;
                }
            }
        }
        changed
    }

    /// The work that an order is wanted for.
    pub(super) fn problem(&self) -> &Arc<crate::crew::ProblemSpec> {
        self.wanted.problem()
    }

    /// The best order known, perhaps of an earlier problem.
    pub(super) fn order(&self) -> Option<&CrewOrder> {
        self.found.as_ref()
    }

    /// Whether there is nothing to put into an order of polishing. An empty coating is asked of the planner, which says what is wrong.
    pub(super) fn is_empty(&self) -> bool {
        matches!(&self.wanted, Task::Polishing(problem, _) if problem.operations.is_empty())
    }

    /// Whether what is shown is for the job as it is.
    pub(super) fn is_current(&self) -> bool {
        match &self.found {
            Some(found) => Arc::ptr_eq(&found.problem, self.wanted.problem()),
            None => self.is_empty(),
        }
    }

    /// Whether a better one is being looked for, or soon will be.
    pub(super) fn is_working(&self) -> bool {
        self.run.is_some() || self.due.is_some()
    }
}

/// Lets a background thread wake the window.
pub(super) fn waker(ctx: &egui::Context) -> Waker {
    Waker::from(Arc::new(Repaint(ctx.clone())))
}

/// Wakes the window from a background thread.
struct Repaint(egui::Context);

impl Wake for Repaint {
    fn wake(self: Arc<Self>) {
        self.0.request_repaint();
    }
}
