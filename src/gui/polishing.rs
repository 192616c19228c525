//! The order of polishing while the job changes, and what follows from it.

use super::order::OrderState;
use crate::insight::{Insight, PolishOrder, PolishWork, polish_order, polish_work};
use crate::job::{Job, Revision};
use crate::vehicle::Template;
use crate::work::{Effort, Task};
use eframe::egui;
use std::sync::Arc;
use std::time::Duration;

/// A slider that is being dragged changes the work many times a second; the planner waits for it to rest.
const REST: Duration = Duration::from_millis(250);

/// What is known of polishing in a team.
#[derive(Debug)]
pub(super) struct Polishing {
    /// The search.
    pub(super) state: OrderState,
    /// The work as the job is now.
    pub(super) work: PolishWork,
    /// What the order shown is of.
    shown: PolishWork,
    /// The order shown, read for this job; none while none is known. Another one is another allocation.
    pub(super) order: Option<Arc<PolishOrder>>,
}

impl Polishing {
    /// Nothing known yet.
    pub(super) fn new(job: &Job, template: &Template, insight: &Insight, effort: Effort) -> Self {
        let work = polish_work(job, template, insight);
        let state = OrderState::new(task(&work), effort).resting(REST);
        Self { state, shown: work.clone(), work, order: None }
    }

    /// Follows a change of the job.
    pub(super) fn follow(
        &mut self,
        job: &Job,
        template: &Template,
        insight: &Insight,
        now: Revision,
        ctx: &egui::Context,
    ) {
        let mut work = polish_work(job, template, insight);
        if work.problem == self.work.problem {
            // The same question, even if a step has another name now.
            work.problem = Arc::clone(&self.work.problem);
        }
        if Arc::ptr_eq(&work.problem, &self.shown.problem) {
            self.shown = work.clone();
        }
        self.work = work;
        self.state.want(task(&self.work), now, ctx);
    }

    /// Reads the order anew; called when a better one came and when the job changed.
    pub(super) fn read(&mut self, job: &Job, template: &Template) {
        let found = self.state.order();
        if let Some(found) = found
            && Arc::ptr_eq(&found.problem, &self.work.problem)
            && !Arc::ptr_eq(&found.problem, &self.shown.problem)
        {
            self.shown = self.work.clone();
        }
        let fits = found.filter(|f| Arc::ptr_eq(&f.problem, &self.shown.problem));
        self.order = fits.map(|f| Arc::new(polish_order(job, template, &self.shown, f)));
    }

    /// Forgets the order shown, as after another vehicle was taken.
    pub(super) fn clear(&mut self) {
        self.order = None;
    }

    /// Whether what is shown is for the job as it is, and none better is being looked for.
    pub(super) fn is_settled(&self) -> bool {
        self.state.is_current() && !self.state.is_working()
    }
}

fn task(work: &PolishWork) -> Task {
    Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses))
}
