//! What follows from a log.

use super::log::{Event, Log};
use super::shift::{Shift, window_after_shifts};
use crate::coat::{Air, Feel, FeelAt, Window, WindowBasis};
use crate::crew::{PlanRow, ProblemSpec, SoFar, State, Whereabouts};
use crate::say;
use crate::units::Seconds;
use std::collections::{BTreeMap, HashMap};

/// An entry that doesn't fit what had happened before it; it was left out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Odd {
    /// Its number in [`Log::standing`], from 0.
    pub entry: usize,
    /// Why, as a sentence.
    pub cause: String,
}

/// What the last lap found at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LapMark {
    /// Looked at, fine.
    Fine,
    /// A high spot that still waits.
    HighSpot,
    /// It was saved.
    Saved,
    /// It has to be polished.
    ToPolish,
}

/// The state of everything at the last entry of a log.
#[derive(Debug, Clone, PartialEq)]
pub struct Day {
    operations: Vec<Progress>,
    workers: Vec<Person>,
    shifts: Vec<Shift>,
    agreed: Vec<PlanRow>,
    felt: BTreeMap<usize, Feel>,
    lap: BTreeMap<String, LapMark>,
    last: Option<usize>,
    /// Entries that were left out.
    pub odd: Vec<Odd>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Progress {
    ToDo,
    /// `worked` seconds before `since`; nothing adds to it while the worker is away.
    Running {
        worker: usize,
        start: Seconds,
        since: Seconds,
        worked: Seconds,
    },
    Done {
        worker: usize,
        start: Seconds,
        end: Seconds,
    },
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
struct Person {
    doing: Option<usize>,
    stance: Option<usize>,
    away: Option<Away>,
    last_done: Option<usize>,
    pads: u32,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Away {
    since: Seconds,
    for_s: Seconds,
}

/// Somebody who is later than they said is expected back after this many seconds.
const BACK_SOON_S: Seconds = 60;
/// Somebody who takes longer than planned is expected to need this many seconds more.
const NEARLY_DONE_S: Seconds = 8;

impl Day {
    /// Goes through a log from its beginning. Entries that don't fit are left out and listed in [`Day::odd`].
    pub fn replay(problem: &ProblemSpec, log: &Log) -> Self {
        let mut day = Self {
            operations: vec![Progress::ToDo; problem.operations.len()],
            workers: vec![Person::default(); problem.workers.len()],
            shifts: Vec::new(),
            agreed: Vec::new(),
            felt: BTreeMap::new(),
            lap: BTreeMap::new(),
            last: None,
            odd: Vec::new(),
        };
        let names = Names::of(problem);
        for (index, entry) in log.standing().into_iter().enumerate() {
            let taken = day.take(problem, &names, entry.at_s, &entry.event);
            // What the program assumed and what no longer fits was never tapped by anybody.
            if let Err(cause) = taken.or_else(|cause| if entry.assumed { Ok(()) } else { Err(cause) }) {
                day.odd.push(Odd { entry: index, cause });
            }
        }
        day
    }

    fn take(&mut self, problem: &ProblemSpec, names: &Names<'_>, at: Seconds, event: &Event) -> Result<(), String> {
        match event {
            Event::Began { worker, operation } => {
                let (w, o) = (names.worker(worker)?, names.operation(operation)?);
                self.begin(problem, w, o, at)
            }
            Event::Finished { worker } => {
                let w = names.worker(worker)?;
                let o = self.put_down(w, worker)?;
                if let Progress::Running { start, .. } = self.operations[o] {
                    self.operations[o] = Progress::Done { worker: w, start, end: at.max(start + 1) };
                }
                self.workers[w].away = None;
                self.workers[w].last_done = Some(o);
                self.last = Some(w);
                Ok(())
            }
            Event::PutBack { worker } => {
                let w = names.worker(worker)?;
                let o = self.put_down(w, worker)?;
                self.operations[o] = Progress::ToDo;
                Ok(())
            }
            Event::Left { worker, for_s } => {
                let w = names.worker(worker)?;
                self.pause(w, at);
                self.workers[w].away = Some(Away { since: at, for_s: (*for_s).max(1) });
                Ok(())
            }
            Event::Returned { worker } => {
                let w = names.worker(worker)?;
                self.workers[w].away.take().ok_or_else(|| say!("bay-was-not-away", person = worker))?;
                self.go_on(w, at);
                Ok(())
            }
            Event::Felt { operation, feel } => {
                let o = names.operation(operation)?;
                let not_levelled = || say!("bay-was-not-levelled", operation = operation);
                let waited_s = self.waited(problem, o).ok_or_else(not_levelled)?;
                self.shifts.push(Shift::Felt(FeelAt { feel: *feel, waited_s }));
                self.felt.insert(o, *feel);
                Ok(())
            }
            Event::Looked { place } => {
                self.mark(place, LapMark::Fine);
                Ok(())
            }
            Event::FoundHighSpot { place } => {
                self.mark(place, LapMark::HighSpot);
                Ok(())
            }
            Event::SavedHighSpot { place } => {
                self.mark(place, LapMark::Saved);
                Ok(())
            }
            Event::LeftForPolishing { place } => {
                self.mark(place, LapMark::ToPolish);
                Ok(())
            }
            Event::AirChanged { air } => {
                self.shifts.push(Shift::Air(*air));
                Ok(())
            }
            Event::PadChanged { worker } => {
                self.workers[names.worker(worker)?].pads += 1;
                Ok(())
            }
            Event::Agreed { order } => {
                let row = |(start, (id, worker)): (usize, &(String, String))| PlanRow {
                    id: id.clone(),
                    worker: worker.clone(),
                    start_s: start as Seconds,
                };
                self.agreed = order.iter().enumerate().map(row).collect();
                Ok(())
            }
            Event::TakenBack | Event::StartedOver => Ok(()), // a log leaves these out
        }
    }

    /// What somebody was at, which they are no longer.
    fn put_down(&mut self, worker: usize, name: &str) -> Result<usize, String> {
        self.workers[worker].doing.take().ok_or_else(|| say!("bay-not-at-anything", person = name))
    }

    fn mark(&mut self, place: &str, mark: LapMark) {
        self.lap.insert(place.to_owned(), mark);
    }

    fn begin(&mut self, problem: &ProblemSpec, worker: usize, operation: usize, at: Seconds) -> Result<(), String> {
        let spec = &problem.operations[operation];
        match self.operations[operation] {
            Progress::Done { .. } => return Err(say!("bay-was-done", operation = &spec.id)),
            Progress::Running { worker: other, .. } if other != worker => {
                return Err(say!("bay-done-by-other", operation = &spec.id, person = &problem.workers[other].id));
            }
            Progress::Running { .. } => return Ok(()),
            Progress::ToDo => {}
        }
        let open = |from: &str| problem.operations.iter().position(|o| o.id == from);
        let not_yet = |from: &str| open(from).is_some_and(|o| !matches!(self.operations[o], Progress::Done { .. }));
        if let Some(lag) = problem.lags.iter().find(|l| l.to == spec.id && l.max_s.is_some() && not_yet(&l.from)) {
            return Err(say!("bay-not-before", operation = &spec.id, first = &lag.from));
        }
        if !problem.workers[worker].roles.contains(&spec.role) {
            return Err(say!("bay-not-their-work", person = &problem.workers[worker].id, role = &spec.role));
        }
        let person = &mut self.workers[worker];
        person.away = None;
        person.stance = problem.stances.iter().position(|s| *s == spec.stance);
        if let Some(before) = person.doing.replace(operation) {
            self.operations[before] = Progress::ToDo;
        }
        self.operations[operation] = Progress::Running { worker, start: at, since: at, worked: 0 };
        Ok(())
    }

    /// Whether an entry that somebody began this would count.
    pub fn can_begin(&self, problem: &ProblemSpec, worker: usize, operation: usize) -> bool {
        self.clone().begin(problem, worker, operation, Seconds::MAX).is_ok()
    }

    /// Counts what was worked until now.
    fn pause(&mut self, worker: usize, at: Seconds) {
        if self.workers[worker].away.is_some() {
            return; // nothing was worked meanwhile
        }
        if let Some(Progress::Running { since, worked, .. }) =
            self.workers[worker].doing.map(|o| &mut self.operations[o])
        {
            *worked += at - *since;
            *since = at;
        }
    }

    fn go_on(&mut self, worker: usize, at: Seconds) {
        if let Some(Progress::Running { since, .. }) = self.workers[worker].doing.map(|o| &mut self.operations[o]) {
            *since = at;
        }
    }

    /// Seconds from the end of what a levelled operation waited for to its start.
    fn waited(&self, problem: &ProblemSpec, operation: usize) -> Option<Seconds> {
        let Progress::Done { start, .. } = self.operations[operation] else { return None };
        let id = &problem.operations[operation].id;
        let before = problem.lags.iter().find(|l| l.to == *id && l.max_s.is_some())?;
        let before = problem.operations.iter().position(|o| o.id == before.from)?;
        let Progress::Done { end, .. } = self.operations[before] else { return None };
        Some(start - end)
    }

    /// How far the day has come at a moment not before the last entry.
    pub fn so_far(&self, problem: &ProblemSpec, now_s: Seconds) -> SoFar {
        let operations = self.operations.iter().enumerate().map(|(o, progress)| match *progress {
            Progress::ToDo => State::ToDo,
            Progress::Done { worker, start, end } => State::Done { worker, start_s: start, end_s: end },
            Progress::Running { worker, start, since, worked } => {
                let lasts = problem.operations[o].duration_s;
                let left = (lasts - worked).max(1);
                let end_s = match self.away_until(worker, now_s) {
                    Some(back) => back + left,
                    None if since + left <= now_s => now_s + NEARLY_DONE_S.min(lasts),
                    None => since + left,
                };
                State::Running { worker, start_s: start, end_s }
            }
        });
        let workers = (0..self.workers.len())
            .map(|w| Whereabouts { stance: self.workers[w].stance, away_until_s: self.away_until(w, now_s) });
        SoFar { now_s, operations: operations.collect(), workers: workers.collect() }
    }

    /// When somebody who is away is expected back; none for somebody who is there.
    pub fn away_until(&self, worker: usize, now_s: Seconds) -> Option<Seconds> {
        self.workers[worker].away.map(|away| {
            let back = away.since + away.for_s;
            if back > now_s { back } else { now_s + BACK_SOON_S }
        })
    }

    /// Whether somebody is at something for longer than it should take, or away for longer than they said.
    pub fn is_behind(&self, problem: &ProblemSpec, now_s: Seconds) -> bool {
        self.workers.iter().any(|person| {
            let longer = person.doing.is_some_and(|o| match self.operations[o] {
                Progress::Running { since, worked, .. } => {
                    person.away.is_none() && since + problem.operations[o].duration_s - worked <= now_s
                }
                _ => false,
            });
            longer || person.away.is_some_and(|a| a.since + a.for_s <= now_s)
        })
    }

    /// What somebody is at, and since when, by index.
    pub fn doing(&self, worker: usize) -> Option<(usize, Seconds)> {
        let operation = self.workers[worker].doing?;
        let Progress::Running { start, .. } = self.operations[operation] else { return None };
        Some((operation, start))
    }

    /// How many operations are over, and how many there are.
    pub fn done(&self) -> (usize, usize) {
        let over = self.operations.iter().filter(|o| matches!(o, Progress::Done { .. })).count();
        (over, self.operations.len())
    }

    /// Whether an operation is over, and when; by index.
    pub fn done_at(&self, operation: usize) -> Option<Seconds> {
        let Progress::Done { end, .. } = self.operations[operation] else { return None };
        Some(end)
    }

    /// The window after what was felt and after changes of the air, from the one that the job's own `air` gave on that basis.
    ///
    /// Answers move it by the rule of [`crate::coat::factor_after`]; another air moves it as the model says, so that what was learned
    /// from the towel stays learned.
    pub fn window(&self, before: Window, air: &Air, basis: &WindowBasis) -> Window {
        window_after_shifts(before, air, basis, &self.shifts)
    }

    /// The air that was noted last, if it changed at all.
    pub fn air(&self) -> Option<Air> {
        self.shifts.iter().rev().find_map(|s| if let Shift::Air(air) = s { Some(*air) } else { None })
    }

    /// The order that people go by, as rows whose starts only count up; empty before one was agreed on.
    pub fn agreed(&self) -> &[PlanRow] {
        &self.agreed
    }

    /// What somebody finished last, by index.
    pub fn last_done(&self, worker: usize) -> Option<usize> {
        self.workers[worker].last_done
    }

    /// Who finished something last, by index.
    pub fn last_to_finish(&self) -> Option<usize> {
        self.last
    }

    /// Fresh pads that somebody took.
    pub fn pads(&self, worker: usize) -> u32 {
        self.workers[worker].pads
    }

    /// What was said of a levelled operation, by index.
    pub fn felt(&self, operation: usize) -> Option<Feel> {
        self.felt.get(&operation).copied()
    }

    /// What the last lap found, by name of the place.
    pub fn lap(&self) -> &BTreeMap<String, LapMark> {
        &self.lap
    }

    /// Whether every operation is over.
    pub fn is_over(&self) -> bool {
        self.operations.iter().all(|p| matches!(p, Progress::Done { .. }))
    }
}

/// The problem with another window wherever something has a longest wait.
pub fn with_window(problem: &ProblemSpec, window: Window) -> ProblemSpec {
    let mut changed = problem.clone();
    for lag in changed.lags.iter_mut().filter(|l| l.max_s.is_some()) {
        lag.min_s = window.min_s;
        lag.max_s = Some(window.max_s);
    }
    changed
}

struct Names<'a> {
    workers: HashMap<&'a str, usize>,
    operations: HashMap<&'a str, usize>,
}

impl<'a> Names<'a> {
    fn of(problem: &'a ProblemSpec) -> Self {
        Self {
            workers: problem.workers.iter().enumerate().map(|(i, w)| (w.id.as_str(), i)).collect(),
            operations: problem.operations.iter().enumerate().map(|(i, o)| (o.id.as_str(), i)).collect(),
        }
    }

    fn worker(&self, name: &str) -> Result<usize, String> {
        self.workers.get(name).copied().ok_or_else(|| say!("bay-nobody-called", person = name))
    }

    fn operation(&self, name: &str) -> Result<usize, String> {
        self.operations.get(name).copied().ok_or_else(|| say!("bay-nothing-called", operation = name))
    }
}
