//! An order while it is laid, played and judged.

use crate::insight::OrderRow;
use crate::practice::{
    CantLay, Exercise, Laid, LongWay, Mark, Played, Score, Wanted, hint, long_ways, marks, play, score, wanted,
};
use crate::say;
use crate::scene::{MapScene, PanelState, PracticeFacts, practice_map};
use crate::units::{Seconds, clock};
use crate::vehicle::{Naming, PanelId};
use std::sync::Arc;

/// How fast an order can be played, in its seconds for one second.
pub(in crate::gui) const SPEEDS: [f32; 5] = [0.5, 1.0, 10.0, 30.0, 60.0];

/// What is shown of an order.
#[derive(Debug)]
pub(in crate::gui) struct Laying {
    pub(in crate::gui) exercise: Arc<Exercise>,
    pub(in crate::gui) laid: Laid,
    pub(in crate::gui) played: Played,
    /// What was found wrong, once it was checked.
    pub(in crate::gui) judged: Option<Judged>,
    /// Whether the planner's order is on screen in place of the learner's.
    pub(in crate::gui) best: bool,
    /// Whether a score of this exercise was kept; the first one counts.
    pub(in crate::gui) kept: bool,
    pub(in crate::gui) hold_s: Seconds,
    pub(in crate::gui) hint: Option<String>,
    /// Why the last click laid nothing.
    pub(in crate::gui) refused: Option<String>,
    pub(in crate::gui) playing: bool,
    pub(in crate::gui) speed: f32,
    /// The moment on screen, on the exercise's clock; none shows everything that was laid.
    pub(in crate::gui) moment: Option<f32>,
    /// The mark that is looked at.
    pub(in crate::gui) mark: Option<usize>,
}

/// What was found.
#[derive(Debug, Clone)]
pub(in crate::gui) struct Judged {
    pub(in crate::gui) marks: Vec<Mark>,
    pub(in crate::gui) ways: Vec<LongWay>,
    pub(in crate::gui) score: Score,
}

impl Laying {
    /// Nothing laid but what is given.
    pub(in crate::gui) fn new(exercise: Exercise) -> Self {
        let laid = Laid::begin(&exercise);
        Self {
            played: play(&exercise, &laid),
            laid,
            exercise: Arc::new(exercise),
            judged: None,
            best: false,
            kept: false,
            hold_s: 0,
            hint: None,
            refused: None,
            playing: false,
            speed: 30.0,
            moment: None,
            mark: None,
        }
    }

    fn changed(&mut self) {
        self.played = play(&self.exercise, &self.laid);
        self.judged = None;
        (self.hint, self.refused, self.playing, self.moment, self.mark) = (None, None, false, None, None);
    }

    /// Whether more can be laid: neither checked nor shown by the planner.
    pub(in crate::gui) fn is_open(&self) -> bool {
        self.judged.is_none() && !self.best
    }

    /// Steps laid and steps in all, the learner's own.
    pub(in crate::gui) fn count(&self) -> (usize, usize) {
        let given = Laid::begin(&self.exercise);
        let left = (0..self.exercise.spec.operations.len()).filter(|&o| !given.has(o)).count();
        (self.laid.own_steps(), left)
    }

    /// Lays what comes next on a panel.
    pub(in crate::gui) fn lay(&mut self, panel: &PanelId) {
        let Some(panel) = self.exercise.template.index_of(panel).filter(|_| self.is_open()) else { return };
        let next = self.laid.next_on(&self.exercise, panel);
        let laid = next.and_then(|(worker, o)| self.laid.lay(&self.exercise, worker, o, self.hold_s));
        match laid {
            Ok(()) => {
                self.changed();
                self.hold_s = 0;
            }
            Err(why) => self.refused = Some(in_words(why)),
        }
    }

    pub(in crate::gui) fn take_back(&mut self) {
        if self.is_open() && self.laid.take_back().is_some() {
            self.changed();
        }
    }

    pub(in crate::gui) fn give_hint(&mut self) {
        if self.is_open() {
            self.hint = hint(&self.exercise, &self.laid).map(|h| h.reason);
        }
    }

    /// The next step of whoever laid last waits until the other has done what is laid.
    pub(in crate::gui) fn hold_for_other(&mut self) {
        let ends = |w: usize| self.played.rows.iter().filter(|r| r.worker == w).map(|r| r.interval.end).max();
        let all: Vec<Seconds> = (0..self.exercise.people()).map(|w| ends(w).unwrap_or(0)).collect();
        if let (Some(first), Some(last)) = (all.iter().min(), all.iter().max()) {
            self.hold_s = last - first;
        }
    }

    /// Judges what was laid, if it is complete; answers the score where it is the first.
    pub(in crate::gui) fn check(&mut self, naming: Naming) -> Option<Score> {
        let marks = marks(&self.exercise, &self.played, naming);
        let score = score(&self.exercise, &self.played, &marks).filter(|_| !self.best)?;
        let ways = long_ways(&self.exercise, &self.played, naming);
        self.judged = Some(Judged { marks, ways, score });
        (self.hint, self.refused) = (None, None);
        (self.playing, self.moment) = (true, Some(0.0));
        let first = !std::mem::replace(&mut self.kept, true);
        first.then_some(score)
    }

    /// Goes on laying.
    pub(in crate::gui) fn change(&mut self) {
        self.best = false;
        self.changed();
    }

    /// The planner's order, to be looked at; after that no score counts any more.
    pub(in crate::gui) fn show_best(&mut self) {
        (self.best, self.kept, self.judged) = (true, true, None);
        self.played = play(&self.exercise, &Laid::best(&self.exercise));
        (self.playing, self.moment, self.mark, self.hint) = (true, Some(0.0), None, None);
    }

    /// Plays on by so much time; says whether anything moves.
    pub(in crate::gui) fn step(&mut self, seconds: f32) -> bool {
        if !self.playing {
            return false;
        }
        let end = self.played.end_s() as f32;
        let moment = (self.moment.unwrap_or(0.0) + seconds * self.speed).min(end);
        self.moment = Some(moment);
        self.playing = moment < end;
        true
    }

    /// The moment on screen in whole seconds.
    pub(in crate::gui) fn moment_s(&self) -> Option<Seconds> {
        self.moment.map(|m| m as Seconds)
    }

    /// Marks that have happened by the moment on screen, with their places in the list.
    pub(in crate::gui) fn marks_so_far(&self) -> impl Iterator<Item = (usize, &Mark)> {
        let now = self.moment_s().unwrap_or(Seconds::MAX);
        let marks = self.judged.iter().flat_map(|j| j.marks.iter().enumerate());
        marks.filter(move |(_, m)| m.at_s <= now)
    }

    /// The rows on screen as rows of an order; what only says where somebody is, is left out.
    pub(in crate::gui) fn rows(&self) -> Vec<OrderRow> {
        let row = |r: &crate::crew::Row| {
            let (panel, role) = (self.exercise.panel_of(r.operation)?, self.exercise.role_of(r.operation)?);
            Some(OrderRow { worker: r.worker, role, panel, layer: 1, at: r.interval })
        };
        self.played.rows.iter().filter_map(row).collect()
    }

    /// The map of the moment.
    pub(in crate::gui) fn map(&self) -> MapScene {
        let now = self.moment_s();
        let rows = self.rows();
        let state = |w: Wanted| match w {
            Wanted::Nothing => PanelState::Out,
            Wanted::Apply => PanelState::ToDo,
            Wanted::Level(closes) => {
                let closes = closes.map(|at| say!("practice-window-closes", time = clock(at)));
                PanelState::Wet(closes.unwrap_or_default())
            }
            Wanted::Done => PanelState::Done,
        };
        let states: Vec<PanelState> = wanted(&self.exercise, &self.played, now).into_iter().map(state).collect();
        let here = |at: Seconds| rows.iter().filter(move |r| r.at.contains(at)).map(|r| (r.worker, r.panel));
        practice_map(&PracticeFacts {
            job: &self.exercise.job,
            template: &self.exercise.template,
            insight: &self.exercise.insight,
            states: &states,
            here: &now.map(|at| here(at).collect::<Vec<_>>()).unwrap_or_default(),
            rows: &rows,
            choices: &[],
        })
    }
}

fn in_words(why: CantLay) -> String {
    format!("{}.", crate::units::capital(&why.to_string()))
}
