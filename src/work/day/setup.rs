//! What a day is made of: the problem, its windows, and where its log lies.

use super::DayRun;
use crate::bay::{Day, Log, with_window};
use crate::coat::{Air, MeasuredWindow, Product, Window, WindowBasis};
use crate::crew::ProblemSpec;
use crate::file::{RealDisk, read_day, write_day};
use crate::say;
use std::path::PathBuf;
use std::sync::Arc;

/// What the job gives to a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// The work, with the windows of the job's own air.
    pub problem: Arc<ProblemSpec>,
    /// What moves the windows; none where nothing waits.
    pub windows: Option<Windows>,
}

/// What the windows follow from.
#[derive(Debug, Clone, PartialEq)]
pub struct Windows {
    /// The window in the job's air.
    pub window: Window,
    /// That air.
    pub air: Air,
    /// The coating.
    pub product: Product,
    /// What was tried on a patch.
    pub patch: Option<MeasuredWindow>,
}

impl Windows {
    /// What they count from.
    pub fn basis(&self) -> WindowBasis {
        WindowBasis::new(&self.product, self.patch.as_ref())
    }
}

/// Where the log of a day lies.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// Nowhere yet: the job has no file.
    Nowhere,
    /// Only here, to try things out; it is gone with the window.
    Memory,
    /// In a file beside the job.
    File(PathBuf),
}

impl DayRun {
    /// Follows a change of the job.
    pub fn follow(&mut self, mut setup: Setup) {
        if *setup.problem == *self.setup.problem {
            setup.problem = Arc::clone(&self.setup.problem);
        }
        if setup != self.setup {
            self.setup = setup;
            self.replay();
            self.plan = None; // made again by the next tick
            self.run = None;
        }
    }

    /// Keeps the log in memory alone.
    pub fn rehearse(&mut self) {
        if self.place == Place::Nowhere {
            self.place = Place::Memory;
        }
    }

    /// The job has another file now; what was tapped goes with it.
    pub fn move_to(&mut self, path: PathBuf) {
        let place = Place::File(path.clone());
        if self.place == place {
            return;
        }
        self.writer = None; // what it was given is still written
        if !self.log.entries().is_empty()
            && let Err(error) = write_day(&RealDisk, &path, &self.log)
        {
            self.failure = Some(say!("work-day-stays", why = error.to_string()));
            return;
        }
        self.place = place;
        if self.log.entries().is_empty() {
            self.read();
        }
    }

    /// Reads what was tapped before.
    pub(super) fn read(&mut self) {
        let Place::File(path) = &self.place else { return };
        match read_day(&RealDisk, path) {
            Ok(file) => (self.log, self.unreadable) = (file.log, file.unreadable),
            Err(error) => {
                self.failure = Some(say!("work-day-unreadable", why = error.to_string()));
                self.place = Place::Nowhere;
            }
        }
        self.replay();
    }

    /// Works out the state of everything from the log.
    pub(super) fn replay(&mut self) {
        let log: &Log = &self.log;
        self.day = Day::replay(&self.setup.problem, log);
        self.window = self.setup.windows.as_ref().map(|w| self.day.window(w.window, &w.air, &w.basis()));
        self.problem = match self.window {
            Some(window) if self.setup.windows.as_ref().is_some_and(|w| w.window != window) => {
                Arc::new(with_window(&self.setup.problem, window))
            }
            _ => Arc::clone(&self.setup.problem),
        };
    }
}
