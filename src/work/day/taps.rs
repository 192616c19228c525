//! What people tap.

use super::{DayRun, Place};
use crate::bay::{Entry, Event};
use crate::crew::PlanRow;
use crate::file::why;
use crate::say;
use crate::work::writer::Writer;
use std::task::Waker;

impl DayRun {
    /// Begins the day: whoever is first in the planned order begins.
    pub fn begin(&mut self, waker: &Waker) {
        let first = self.planned.iter().min_by_key(|r| r.start_s).cloned();
        if let Some(PlanRow { id, worker, .. }) = first.filter(|_| self.can_begin()) {
            self.tap(Event::Began { worker, operation: id }, waker);
        }
    }

    /// Somebody is done with what they are at. A tap that comes twice, or late, counts once: `operation` is what the button was
    /// shown for.
    pub fn finish(&mut self, worker: usize, operation: usize, waker: &Waker) {
        let name = self.problem.workers[worker].id.clone();
        let mut written = self.writer.as_ref().into_iter().flat_map(Writer::waiting);
        let twice = written.any(|e| e.event == Event::Finished { worker: name.clone() });
        if !twice && self.day.doing(worker).is_some_and(|d| d.0 == operation) {
            self.tap(Event::Finished { worker: name }, waker);
        }
    }

    /// Notes something that happens now.
    pub fn tap(&mut self, event: Event, waker: &Waker) {
        if self.place != Place::Nowhere {
            self.send(Entry { at_s: self.now_s(), event, assumed: false }, waker);
        }
    }

    /// Notes several things that come from one tap; taking it back takes all of them.
    pub fn tap_all(&mut self, events: Vec<Event>, waker: &Waker) {
        if self.place != Place::Nowhere {
            for (index, event) in events.into_iter().enumerate() {
                self.send(Entry { at_s: self.now_s(), event, assumed: index > 0 }, waker);
            }
        }
    }

    /// Sends an entry to the disk; it counts when it is there.
    pub(super) fn send(&mut self, entry: Entry, waker: &Waker) {
        let Place::File(path) = &self.place else { return self.count(entry, waker) };
        if self.writer.is_none() {
            match Writer::start(path.clone(), waker.clone()) {
                Ok(writer) => self.writer = Some(writer),
                Err(error) => {
                    self.failure = Some(say!("work-nothing-written", why = why(&error)));
                    return;
                }
            }
        }
        if self.writer.as_mut().is_some_and(|writer| !writer.write(entry)) {
            self.failure = Some(say!("work-disk-slow").to_owned());
        }
    }

    /// An entry is on the disk: it counts, and what is left is planned again.
    pub(super) fn count(&mut self, entry: Entry, waker: &Waker) {
        let begun_as_planned = entry.assumed && matches!(entry.event, Event::Began { .. });
        let as_planned = begun_as_planned || matches!(entry.event, Event::Agreed { .. });
        self.failure = None;
        self.log.push(entry);
        self.replay();
        if !as_planned {
            self.replan(waker);
        }
    }
}
