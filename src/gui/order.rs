//! The order of coating while the job changes: asked for in the background, shown until a newer one is there.

use crate::crew::ProblemSpec;
use crate::insight::CoatingOrder;
use crate::job::Revision;
use crate::work::{Effort, Progress, SolveRun};
use eframe::egui;
use std::sync::Arc;
use std::task::{Wake, Waker};

/// What is known of the order.
#[derive(Debug)]
pub(super) struct OrderState {
    wanted: Arc<ProblemSpec>,
    run: Option<SolveRun>,
    found: Option<CoatingOrder>,
    /// Why there is no order, if that is known.
    pub(super) conflicts: Vec<String>,
    effort: Effort,
}

impl OrderState {
    /// Nothing known yet, and nobody looking.
    pub(super) fn new(wanted: ProblemSpec, effort: Effort) -> Self {
        Self { wanted: Arc::new(wanted), run: None, found: None, conflicts: Vec::new(), effort }
    }

    /// Starts looking if nothing is known and nobody is.
    pub(super) fn start_if_idle(&mut self, ctx: &egui::Context) {
        if self.run.is_none() && self.found.is_none() && self.conflicts.is_empty() {
            self.start(Revision::default(), ctx);
        }
    }

    /// Asks for the order of another problem. The present order stays on screen, marked out of date.
    pub(super) fn want(&mut self, wanted: ProblemSpec, revision: Revision, ctx: &egui::Context) {
        if *self.wanted != wanted {
            self.wanted = Arc::new(wanted);
            self.start(revision, ctx);
        }
    }

    fn start(&mut self, revision: Revision, ctx: &egui::Context) {
        self.conflicts.clear();
        match SolveRun::start(Arc::clone(&self.wanted), revision, self.effort, waker(ctx)) {
            Ok(run) => self.run = Some(run),
            Err(error) => {
                self.run = None;
                self.conflicts = vec![format!("the planner could not be started: {error}")];
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

    /// The best order known, perhaps of an earlier problem.
    pub(super) fn order(&self) -> Option<&CoatingOrder> {
        self.found.as_ref()
    }

    /// Whether the order shown is for the job as it is.
    pub(super) fn is_current(&self) -> bool {
        self.found.as_ref().is_some_and(|f| Arc::ptr_eq(&f.problem, &self.wanted))
    }

    /// Whether a better one is being looked for.
    pub(super) fn is_working(&self) -> bool {
        self.run.is_some()
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
