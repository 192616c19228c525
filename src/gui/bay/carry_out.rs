//! Carrying out what is wished in the bay.

use super::{BayState, BayWish, Given};
use crate::gui::action::Effect;
use crate::gui::app::App;
use crate::gui::order::waker;
use crate::gui::view_state::ViewState;
use crate::work::Place;
use eframe::egui;

impl App {
    /// Carries out a wish; answers what else is to be done.
    pub(in crate::gui) fn work(&mut self, wish: BayWish, ctx: &egui::Context) -> Option<Effect> {
        let view = &mut self.view.bay;
        let trade = view.trade;
        let waker = waker(ctx);
        match wish {
            BayWish::Begin => {
                self.bay.run_mut(trade).begin(&waker);
                // What the day is worked by must be on the disk as well.
                let saved = matches!(self.bay.run(trade).place(), Place::File(_));
                return (saved && self.document.is_dirty()).then_some(Effect::Save);
            }
            BayWish::Rehearse => self.bay.run_mut(trade).rehearse(),
            BayWish::Finish { worker, operation } => self.bay.run_mut(trade).finish(worker, operation, &waker),
            BayWish::Note(event) => {
                view.asking = None;
                self.bay.run_mut(trade).tap(event, &waker);
            }
            BayWish::NoteAll(events) => {
                view.asking = None;
                self.bay.run_mut(trade).tap_all(events, &waker);
            }
            BayWish::Ask(asking) => view.asking = asking,
            BayWish::Show(trade) => (view.trade, view.asking, view.lap) = (trade, None, false),
            BayWish::Lap(lap) => (view.lap, view.asking) = (lap, None),
        }
        None
    }

    /// What the job gives to the bay.
    pub(in crate::gui) fn given(&self) -> Given<'_> {
        Given {
            job: self.document.job(),
            insight: &self.insight,
            polishing: &self.polishing.work,
            coating: self.order.problem(),
        }
    }

    /// Brings the bay up to the moment.
    pub(in crate::gui) fn step_bay(&mut self, is_open: bool, ctx: &egui::Context) {
        let job = self.document.job();
        let coating = job.order.as_ref().or(self.order.order().map(|o| &o.plan));
        let polishing = self.polishing.state.order().map(|o| &o.plan);
        let planned = [coating, polishing].map(|p| p.map_or(&[][..], |p| p.operations.as_slice()));
        if let Some(again) = self.bay.step(planned, is_open, &waker(ctx)) {
            ctx.request_repaint_after(again);
        }
        self.awake.keep(self.bay.is_running());
        if is_open {
            self.bay.bring_up(job, &self.template, &self.insight, (&self.view.bay, self.view.naming));
        }
    }

    /// The same window with another clock, and the days as that clock finds them.
    #[must_use]
    pub fn with_clock(mut self, clock: std::sync::Arc<dyn crate::work::Clock>) -> Self {
        self.bay = BayState::open(clock, self.path.as_deref(), self.given());
        self.view = ViewState::on(&self.bay);
        self
    }

    /// The day of coating in the bay.
    pub fn coating_day(&self) -> &crate::work::DayRun {
        &self.bay.coating
    }

    /// The day of polishing in the bay.
    pub fn polishing_day(&self) -> &crate::work::DayRun {
        &self.bay.polishing
    }
}
