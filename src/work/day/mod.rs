//! A day in the bay while it runs: taps go to the disk, then count; what is left is planned again from what really happened.
//!
//! Nothing here waits: writing and planning have threads of their own, and [`DayRun::listen`] takes in what they bring.

mod setup;
mod taps;

pub use setup::{Place, Setup, Windows};

use super::clock::Clock;
use super::rest::{RestAnswer, RestRun};
use super::writer::Writer;
use crate::bay::{Board, Day, Entry, Event, Hold, Log, NextUp};
use crate::coat::Window;
use crate::crew::{Late, PlanRow, ProblemSpec, Replanned};
use crate::file::why;
use crate::say;
use crate::units::Seconds;
use std::sync::Arc;
use std::task::Waker;
use std::time::Duration;

/// How long a plan stands before it is made again because somebody is later than it says.
const AGAIN_S: Seconds = 8;

/// A day of one kind of work.
#[derive(Debug)]
pub struct DayRun {
    clock: Arc<dyn Clock>,
    setup: Setup,
    place: Place,
    /// The problem with the windows in force.
    problem: Arc<ProblemSpec>,
    window: Option<Window>,
    log: Log,
    day: Day,
    /// The order that was planned beforehand.
    planned: Vec<PlanRow>,
    plan: Option<Replanned>,
    run: Option<RestRun>,
    writer: Option<Writer>,
    took: Option<Duration>,
    /// Lines of the file that could not be read.
    pub unreadable: usize,
    /// What went wrong last, as a sentence.
    pub failure: Option<String>,
}

impl DayRun {
    /// A day as its log leaves it, or one that has not begun.
    pub fn open(clock: Arc<dyn Clock>, setup: Setup, place: Place) -> Self {
        let problem = Arc::clone(&setup.problem);
        let day = Day::replay(&problem, &Log::default());
        let mut run = Self {
            clock,
            setup,
            place,
            problem,
            window: None,
            log: Log::default(),
            day,
            planned: Vec::new(),
            plan: None,
            run: None,
            writer: None,
            took: None,
            unreadable: 0,
            failure: None,
        };
        run.read();
        run
    }

    /// The present of the day, never before its last entry.
    pub fn now_s(&self) -> Seconds {
        self.clock.now_s().max(self.log.last_s().unwrap_or(Seconds::MIN))
    }

    /// The problem with the windows in force.
    pub fn problem(&self) -> &Arc<ProblemSpec> {
        &self.problem
    }

    /// The window in force, where the work has one.
    pub fn window(&self) -> Option<Window> {
        self.window
    }

    /// What the job gives it.
    pub fn setup(&self) -> &Setup {
        &self.setup
    }

    /// What happened so far.
    pub fn day(&self) -> &Day {
        &self.day
    }

    /// Everything that was tapped.
    pub fn log(&self) -> &Log {
        &self.log
    }

    /// Where the log is kept.
    pub fn place(&self) -> &Place {
        &self.place
    }

    /// The plan of what is left.
    pub fn plan(&self) -> Option<&Replanned> {
        self.plan.as_ref()
    }

    /// What the last search took.
    pub fn took(&self) -> Option<Duration> {
        self.took
    }

    /// Windows that can't be met any more.
    pub fn late(&self) -> &[Late] {
        self.plan.as_ref().map_or(&[], |p| p.late.as_slice())
    }

    /// Whether it has begun.
    pub fn is_begun(&self) -> bool {
        self.log.began_s().is_some()
    }

    /// Whether every operation is done.
    pub fn is_over(&self) -> bool {
        self.is_begun() && self.day.is_over()
    }

    /// Whether something is being written or planned.
    pub fn is_busy(&self) -> bool {
        self.run.is_some() || self.is_writing()
    }

    fn is_writing(&self) -> bool {
        self.writer.as_ref().is_some_and(|w| !w.waiting().is_empty())
    }

    /// Who does what now and next.
    pub fn board(&self) -> Board {
        Board::new(&self.problem, &self.day, self.plan.as_ref(), self.now_s())
    }

    /// What stands against somebody beginning something now.
    pub fn holds(&self, worker: usize, operation: usize) -> Vec<Hold> {
        self.day.holds(&self.problem, worker, operation, self.now_s())
    }

    /// The order that was planned beforehand; what was agreed on during the day goes before it.
    pub fn plan_ahead(&mut self, rows: &[PlanRow]) {
        if self.planned != rows {
            self.planned = rows.to_vec();
        }
    }

    /// Whether there is an order to begin with.
    pub fn can_begin(&self) -> bool {
        !self.planned.is_empty() && !self.is_begun() && self.place != Place::Nowhere
    }

    fn known(&self) -> &[PlanRow] {
        if self.day.agreed().is_empty() { &self.planned } else { self.day.agreed() }
    }

    /// Takes in what the threads bring; true if something changed.
    pub fn listen(&mut self, waker: &Waker) -> bool {
        let mut changed = false;
        while let Some((entry, result)) = self.writer.as_mut().and_then(Writer::done) {
            changed = true;
            match result {
                Ok(()) => self.count(entry, waker),
                Err(error) => {
                    self.failure = Some(say!("work-tap-unwritten", why = why(&error)));
                }
            }
        }
        if let Some(answer) = self.run.as_ref().and_then(RestRun::answer) {
            changed = true;
            self.run = None;
            match answer {
                RestAnswer::Planned(plan, took) => {
                    self.took = Some(took);
                    self.take(*plan, waker);
                }
                RestAnswer::None(reason) => self.failure = Some(say!("work-rest-unplanned", why = reason)),
            }
        }
        changed
    }

    /// Takes a plan; another order than the one people know is written down, so that it is there again after a crash.
    fn take(&mut self, plan: Replanned, waker: &Waker) {
        if !plan.same_order || self.day.agreed().is_empty() {
            let order = plan.plan.operations.iter().filter(|r| self.is_ours(&r.id));
            let mut rows: Vec<&PlanRow> = order.collect();
            rows.sort_by_key(|r| r.start_s);
            let order = rows.into_iter().map(|r| (r.id.clone(), r.worker.clone())).collect();
            self.send(Entry { at_s: self.now_s(), event: Event::Agreed { order }, assumed: true }, waker);
        }
        self.plan = Some(plan);
    }

    fn is_ours(&self, id: &str) -> bool {
        self.problem.operations.iter().any(|o| o.id == id)
    }

    /// Lets the clock do its part: what the plan says begins, and a plan that people are behind is made again.
    pub fn tick(&mut self, waker: &Waker) {
        if !self.is_begun() || self.is_over() || self.is_busy() {
            return;
        }
        let Some(made_s) = self.plan.as_ref().map(|p| p.origin_s) else { return self.replan(waker) };
        let now_s = self.now_s();
        let board = self.board();
        let mut behind = self.day.is_behind(&self.problem, now_s);
        for (worker, its) in board.workers.iter().enumerate() {
            let free = its.current.is_none() && its.away_until_s.is_none();
            let Some(next) = its.next.first().filter(|n| free && n.start_s <= now_s) else { continue };
            if self.holds(worker, next.operation).is_empty() {
                return self.assume(worker, *next, waker);
            }
            behind = true;
        }
        if behind && now_s >= made_s + AGAIN_S {
            self.replan(waker);
        }
    }

    /// Notes that somebody began what the plan says, at the moment that it says.
    fn assume(&mut self, worker: usize, next: NextUp, waker: &Waker) {
        let event = Event::Began {
            worker: self.problem.workers[worker].id.clone(),
            operation: self.problem.operations[next.operation].id.clone(),
        };
        let at_s = next.start_s.max(self.log.last_s().unwrap_or(next.start_s));
        self.send(Entry { at_s, event, assumed: true }, waker);
    }

    fn replan(&mut self, waker: &Waker) {
        self.run = None; // it stops
        if !self.is_begun() || self.day.is_over() {
            self.plan = None;
            return;
        }
        let so_far = self.day.so_far(&self.problem, self.now_s());
        match RestRun::start(Arc::clone(&self.problem), so_far, self.known().to_vec(), waker.clone()) {
            Ok(run) => self.run = Some(run),
            Err(error) => self.failure = Some(say!("work-rest-unplanned", why = error.to_string())),
        }
    }
}
