//! What is wrong with an order that was laid: the crew checker's violations, one for one, in sentences.

use super::exercise::Exercise;
use super::play::Played;
use super::words::{does, doing, of_operation};
use crate::crew::{Rule, Schedule, Violation, long_walks, violations};
use crate::job::Role;
use crate::units::{Seconds, clock};
use crate::vehicle::Naming;
use crate::words::Message;
use crate::{message, say};

/// A kind of broken rule, as a person sees it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Trouble {
    /// Somebody leans over a panel that is wet.
    Lean,
    /// A panel is applied before one above it that one leans over it for.
    TopLast,
    /// Two are in each other's place.
    Place,
    /// A panel was levelled after its window.
    Window,
    /// Anything else that the checker knows; nothing that is laid and played by the rules here breaks one of those.
    Other,
}

impl Trouble {
    /// The kinds that a learner can meet, in the order of a list.
    pub const ALL: [Self; 4] = [Self::Lean, Self::TopLast, Self::Place, Self::Window];

    /// In a few words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Lean => say!("practice-lean"),
            Self::TopLast => say!("practice-top-last"),
            Self::Place => say!("practice-place"),
            Self::Window => say!("practice-window"),
            Self::Other => say!("practice-other"),
        }
    }

    /// The rule and its reason in a sentence. Common practice, no source.
    pub fn rule(self) -> &'static str {
        match self {
            Self::Lean => say!("practice-lean-rule"),
            Self::TopLast => say!("practice-top-last-rule"),
            Self::Place => say!("practice-place-rule"),
            Self::Window => say!("practice-window-rule"),
            Self::Other => say!("practice-other-rule"),
        }
    }

    fn of(rule: Rule, exercise: &Exercise, operations: &[usize]) -> Self {
        match rule {
            Rule::Wet => Self::Lean,
            Rule::Close => Self::Place,
            Rule::MaxLag => Self::Window,
            // Waits within a panel are kept by whoever plays; the others are between panels above one another.
            Rule::MinLag if operations.iter().all(|&o| exercise.panel_of(o).is_some()) => Self::TopLast,
            _ => Self::Other,
        }
    }
}

/// A wrong choice, marked where it happens.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// What the checker says.
    pub violation: Violation,
    /// What kind it is.
    pub trouble: Trouble,
    /// When it begins.
    pub at_s: Seconds,
    /// Whose step it is, by worker of the problem.
    pub worker: usize,
    /// The step that is wrong, by operation of the exercise's problem.
    pub operation: usize,
    /// Panels it is about, by index; the one that is worked last.
    pub panels: Vec<usize>,
    /// What happens, in a sentence.
    pub happens: String,
    /// What a good order does there.
    pub better: String,
}

/// Everything that the checker finds in what was played, each once, by time.
pub fn marks(exercise: &Exercise, played: &Played, naming: Naming) -> Vec<Mark> {
    let found = violations(&played.problem, &played.plan);
    let mut marks: Vec<Mark> = found.into_iter().map(|v| mark(exercise, played, v, naming)).collect();
    marks.sort_by_key(|m| (m.at_s, m.trouble, m.operation));
    marks
}

fn mark(exercise: &Exercise, played: &Played, violation: Violation, naming: Naming) -> Mark {
    let index = |id: &String| exercise.spec.operations.iter().position(|o| o.id == *id);
    let operations: Vec<usize> = violation.operations.iter().filter_map(index).collect();
    let trouble = Trouble::of(violation.rule, exercise, &operations);
    let first = operations.first().copied().unwrap_or(0);
    let last = operations.last().copied().unwrap_or(0);
    let row = |o: usize| played.row(o).copied();
    let (a, b) = (row(first), row(last));
    let at_s = match (trouble, a, b) {
        (Trouble::Window, _, Some(b)) => (b.interval.end - violation.amount).max(0),
        (_, Some(a), Some(b)) => a.interval.start.max(b.interval.start),
        _ => 0,
    };
    let worker = b.map_or(0, |r| r.worker);
    let mut panels: Vec<usize> = operations.iter().filter_map(|&o| exercise.panel_of(o)).collect();
    panels.dedup();
    let who = |o: usize| row(o).map_or("", |r| exercise.spec.workers[r.worker].id.as_str());
    let for_s = violation.amount;
    let happens = match trouble {
        Trouble::Lean => {
            let wet = if first == last { first } else { wet_one(exercise, first, last) };
            let (wet, doing) = (of_operation(exercise, wet, naming), doing(exercise, last, naming));
            say!("practice-leans", person = who(last), wet = wet, doing = doing, seconds = for_s)
        }
        Trouble::TopLast => {
            let above = of_operation(exercise, first, naming);
            say!("practice-above-not-level", person = who(last), does = does(exercise, last, naming), above = above)
        }
        Trouble::Place => say!(
            "practice-same-place",
            person = who(last),
            does = does(exercise, last, naming),
            partner = who(first),
            other = does(exercise, first, naming),
            seconds = for_s,
        ),
        Trouble::Window => {
            say!("practice-window-closed", person = who(last), does = does(exercise, last, naming), seconds = for_s)
        }
        Trouble::Other => format!("{violation}."),
    };
    let better = better(exercise, trouble, (first, last), naming);
    Mark { violation, trouble, at_s, worker, operation: last, panels, happens, better }
}

/// The panel that is wet: the operation after which it is, or after a surprise the one that makes it level.
fn wet_one(exercise: &Exercise, from: usize, blocked: usize) -> usize {
    if exercise.panel_of(from).is_some() {
        return from;
    }
    let spec = &exercise.spec;
    let blocks = |id: &String| *id == spec.operations[blocked].id;
    let rule = spec.wet.iter().find(|w| w.from == spec.operations[from].id && w.blocks.iter().any(blocks));
    rule.and_then(|w| spec.operations.iter().position(|o| o.id == w.to)).unwrap_or(from)
}

/// What the planner's order does in that place.
fn better(exercise: &Exercise, trouble: Trouble, (first, last): (usize, usize), naming: Naming) -> String {
    let best = &exercise.best_schedule;
    let place = |o: usize| place_in(best, o);
    let name = |o: usize| of_operation(exercise, o, naming);
    let Some((worker, number, at_s, before)) = place(last) else { return String::new() };
    let who = &exercise.spec.workers[worker].id;
    let (does_this, at) = (does(exercise, last, naming), clock(at_s));
    let comes = if let Some(before) = before.filter(|&o| exercise.panel_of(o).is_some()).map(name) {
        say!("practice-comes-after", person = who, does = does_this, number = number, before = before, at = at)
    } else {
        say!("practice-comes-first", person = who, does = does_this, number = number, at = at)
    };
    match trouble {
        Trouble::Window => {
            let waits = best.rows().iter().find(|r| r.operation == first).map(|r| at_s - r.interval.end);
            if let Some(seconds) = waits {
                return say!("practice-better-window", comes = comes, seconds = seconds);
            }
        }
        Trouble::Place => {
            if let Some((other, _, start, _)) = place(first) {
                let (person, does) = (&exercise.spec.workers[other].id, does(exercise, first, naming));
                let time = clock(start);
                return say!("practice-better-meanwhile", comes = comes, person = person, does = does, time = time);
            }
        }
        Trouble::Lean | Trouble::TopLast => {
            let wet = wet_one(exercise, first, last);
            let level = exercise.panel_of(wet).and_then(|p| exercise.operation(p, Role::Apply)).and_then(place);
            if let Some((_, _, start, _)) = level {
                return say!("practice-better-then", comes = comes, panel = name(wet), time = clock(start));
            }
        }
        Trouble::Other => {}
    }
    say!("practice-better", comes = comes)
}

/// Worker, number in their lane, start, and what they do before.
fn place_in(best: &Schedule, operation: usize) -> Option<(usize, usize, Seconds, Option<usize>)> {
    let row = best.rows().iter().find(|r| r.operation == operation)?;
    let mine: Vec<usize> = best.rows_of(row.worker).map(|r| r.operation).collect();
    let at = mine.iter().position(|&o| o == operation)?;
    Some((row.worker, at + 1, row.interval.start, at.checked_sub(1).map(|k| mine[k])))
}

/// A long walk: no broken rule, but time that nobody gets back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LongWay {
    /// Whose, by worker of the problem.
    pub worker: usize,
    /// The step it leads to, by operation of the exercise's problem.
    pub operation: usize,
    /// When it begins.
    pub at_s: Seconds,
    /// How long it takes.
    pub walk_s: Seconds,
    /// What happens, in a sentence.
    pub happens: String,
}

impl LongWay {
    /// Why it matters. Common practice, no source.
    pub const RULE: Message = message!("practice-long-walks-rule");
}

/// The long walks of what was played, by time.
pub fn long_ways(exercise: &Exercise, played: &Played, naming: Naming) -> Vec<LongWay> {
    let Ok(schedule) = Schedule::from_plan(&played.problem, &played.plan) else { return Vec::new() };
    let of_exercise = |o: usize| {
        let id = &played.problem.spec().operations[o].id;
        exercise.spec.operations.iter().position(|o| o.id == *id)
    };
    let way = |walk: &crate::crew::LongWalk| {
        let (from, to) = (of_exercise(walk.from)?, of_exercise(walk.to)?);
        let at_s = played.row(from)?.interval.end;
        let who = &exercise.spec.workers[walk.worker].id;
        let name = |o| of_operation(exercise, o, naming);
        let happens = say!("practice-walks", person = who, seconds = walk.walk_s, from = name(from), to = name(to));
        exercise.panel_of(from)?; // coming back from a break is no choice
        Some(LongWay { worker: walk.worker, operation: to, at_s, walk_s: walk.walk_s, happens })
    };
    let mut ways: Vec<LongWay> = long_walks(&played.problem, &schedule).iter().filter_map(way).collect();
    ways.sort_by_key(|w| (w.at_s, w.worker));
    ways
}
