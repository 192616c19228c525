//! Hints: a reason that leads to a good next panel, never the panel itself.

use super::exercise::Exercise;
use super::laid::{Laid, Step};
use super::marks::marks;
use super::play::{Played, play, walk_s};
use super::wants::deadline;
use crate::job::Role;
use crate::units::{Seconds, clock};
use crate::vehicle::Naming;
use crate::words::Message;
use crate::{message, say};

/// A hint for somebody's next step.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Hint {
    /// For whom, by worker.
    pub worker: usize,
    /// Why a good next step is good, without naming it.
    pub reason: String,
    /// The step that the reason is for, by operation; not to be shown.
    pub operation: usize,
    /// How long a good order waits before it, in seconds.
    pub hold_s: Seconds,
}

/// A hint for the step that a good order takes next. None where nothing is left to lay.
pub fn hint(exercise: &Exercise, laid: &Laid) -> Option<Hint> {
    let best = Laid::best(exercise);
    let next = |w: usize| next_good(exercise, &best, laid, w).map(|step| (w, step));
    let start = |o: usize| exercise.best_schedule.rows().iter().position(|r| r.operation == o);
    let all = exercise.laid_by_learner().into_iter().filter_map(next);
    let (worker, step) = all.min_by_key(|(_, step)| start(step.operation))?;
    let played = play(exercise, laid);
    let mut reason = reason(exercise, laid, &played, worker, step.operation);
    if step.hold_s > 0 {
        reason = format!("{reason} {}", say!("practice-hint-wait"));
    }
    Some(Hint { worker, reason, operation: step.operation, hold_s: step.hold_s })
}

/// What the best order does next of what somebody has left: the first that breaks no rule here, otherwise the first.
fn next_good(exercise: &Exercise, best: &Laid, laid: &Laid, worker: usize) -> Option<Step> {
    let is_left = |s: &&Step| exercise.panel_of(s.operation).is_some() && !laid.has(s.operation);
    let left: Vec<Step> = best.lane(worker).iter().filter(is_left).copied().collect();
    let before = marks(exercise, &play(exercise, laid), Naming::Uk).len();
    let with = |s: &Step| {
        let mut more = laid.clone();
        more.lay(exercise, worker, s.operation, s.hold_s).ok().map(|()| more)
    };
    let breaks_nothing =
        |s: &&Step| with(s).is_some_and(|more| marks(exercise, &play(exercise, &more), Naming::Uk).len() == before);
    let can = |s: &&Step| with(s).is_some();
    left.iter().filter(can).take(6).find(breaks_nothing).or_else(|| left.iter().find(can)).copied()
}

fn reason(exercise: &Exercise, laid: &Laid, played: &Played, worker: usize, operation: usize) -> String {
    let who = &exercise.spec.workers[worker].id;
    let before = laid.lane(worker).last().map(|s| s.operation).filter(|&o| exercise.panel_of(o).is_some());
    let now = before.and_then(|o| played.row(o)).map_or(0, |r| r.interval.end);
    let walk = before.map(|o| walk_s(exercise, o, operation));
    let panel = exercise.panel_of(operation);
    if exercise.role_of(operation) == Some(Role::Level) {
        let closes = panel.and_then(|p| closes_s(exercise, played, p));
        let oldest = open_windows(exercise, laid, played).into_iter().min();
        return match (closes, oldest) {
            (Some(closes), Some(oldest)) if closes == oldest => {
                say!("practice-hint-window-first", person = who, time = clock(closes))
            }
            (_, Some(oldest)) => say!("practice-hint-window-later", person = who, time = clock(oldest)),
            _ => say!("practice-hint-level-nearest", person = who),
        };
    }
    let below = panel.map(|p| &exercise.template.panels[p].leans_over).is_some_and(|under| {
        under.iter().filter_map(|id| exercise.template.index_of(id)).any(|p| exercise.is_in_play(p))
    });
    if exercise.people() == 1 && !open_windows(exercise, laid, played).is_empty() {
        return say!("practice-hint-apply-meanwhile", person = who);
    }
    match (before, walk) {
        (None, _) if below => say!("practice-hint-begin-top", person = who),
        (None, _) => say!("practice-hint-begin-end", person = who),
        (Some(_), Some(0)) => say!("practice-hint-no-step", person = who),
        (Some(_), Some(s)) if below => say!("practice-hint-top-down", person = who, seconds = s),
        (Some(_), Some(s)) => {
            let near = nearest_s(exercise, laid, operation, before);
            if s <= near {
                say!("practice-hint-nearest", person = who, seconds = s)
            } else if exercise.people() > 1 && now > 0 {
                say!("practice-hint-further-apart", person = who, seconds = s)
            } else {
                say!("practice-hint-further", person = who, seconds = s)
            }
        }
        (Some(_), None) => say!("practice-hint-one-direction", person = who),
    }
}

/// Shortest walk to anything that could be laid with the same role.
fn nearest_s(exercise: &Exercise, laid: &Laid, operation: usize, before: Option<usize>) -> Seconds {
    let Some(before) = before else { return 0 };
    let role = exercise.role_of(operation);
    let left = (0..exercise.spec.operations.len()).filter(|&o| exercise.role_of(o) == role && !laid.has(o));
    left.map(|o| walk_s(exercise, before, o)).min().unwrap_or(0)
}

/// When the window of a panel closes, if it is wet.
fn closes_s(exercise: &Exercise, played: &Played, panel: usize) -> Option<Seconds> {
    if exercise.wet.contains(&panel) {
        return deadline(exercise, panel);
    }
    let applied = exercise.operation(panel, Role::Apply).and_then(|o| played.row(o))?;
    Some(applied.interval.end + exercise.window_s().1)
}

/// When the windows close of all panels that are laid to be applied and not yet to be levelled.
fn open_windows(exercise: &Exercise, laid: &Laid, played: &Played) -> Vec<Seconds> {
    let open = |&panel: &usize| exercise.operation(panel, Role::Level).is_some_and(|o| !laid.has(o));
    (0..exercise.template.panels.len()).filter(open).filter_map(|p| closes_s(exercise, played, p)).collect()
}

impl Hint {
    /// What stands beside the button.
    pub const PROMISE: Message = message!("practice-hint-promise");
}
