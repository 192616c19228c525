//! The surprise: half is done by the best order, then somebody leaves. What is left is the exercise.

use super::exercise::{Exercise, PrepareError, best_of};
use super::laid::{Laid, Step};
use super::words::panel_words;
use crate::crew::{Control, Limits, Random, Schedule, SoFar, State, Whereabouts, is_of_the_present, replan, rest_of};
use crate::job::Role;
use crate::say;
use crate::units::{Seconds, clock};
use crate::vehicle::Naming;
use std::sync::Arc;

/// When the operation that stands for the present ends, on the clock of a rest.
pub(super) const NOW_ENDS_S: Seconds = 1;
/// How long somebody is away.
pub(super) const AWAY_S: Seconds = 240;

/// How far an order has come at a moment, everything going as planned.
pub(super) fn so_far(exercise: &Exercise, schedule: &Schedule, now_s: Seconds) -> SoFar {
    let mut so_far = SoFar::beginning(&exercise.spec, now_s);
    for row in schedule.rows() {
        let (worker, start_s, end_s) = (row.worker, row.interval.start, row.interval.end);
        let stance = &exercise.spec.operations[row.operation].stance;
        if end_s <= now_s {
            so_far.operations[row.operation] = State::Done { worker, start_s, end_s };
            so_far.workers[worker].stance = exercise.spec.stances.iter().position(|s| s == stance);
        } else if start_s < now_s {
            so_far.operations[row.operation] = State::Running { worker, start_s, end_s };
        }
    }
    so_far
}

/// The same exercise in its middle, just after somebody has left.
pub(super) fn happens(plain: Exercise, limits: &Limits, control: &dyn Control) -> Result<Exercise, PrepareError> {
    let mut random = Random::new(plain.setup.seed, 2);
    let leaves = random.below(plain.people());
    let share = 0.35 + 0.25 * random.unit();
    let wanted = (plain.best_schedule.makespan_s() as f64 * share) as Seconds;
    // Somebody finishes a panel before leaving.
    let ends = plain.best_schedule.rows_of(leaves).map(|r| r.interval.end);
    let now_s = ends.min_by_key(|end| (end - wanted).abs()).unwrap_or(wanted);
    let mut past = so_far(&plain, &plain.best_schedule, now_s);
    past.workers[leaves] = Whereabouts { away_until_s: Some(now_s + AWAY_S), ..past.workers[leaves] };
    let rest = rest_of(&plain.spec, &past);
    let planned = replan(&rest, &plain.best.operations, limits, control)
        .map_err(|e| PrepareError::Impossible(e.to_string()))?
        .ok_or(PrepareError::NotFound)?;
    let (problem, found, bound) = best_of(&planned.problem, limits, control)?;
    let kept = Schedule::from_plan(&problem, &planned.plan).map_err(|e| PrepareError::Impossible(e.to_string()))?;
    let best = if kept.cost() < found.cost() { kept } else { found };

    let name = &plain.job.crew[leaves].name;
    let mut news = vec![say!("practice-has-left", person = name, time = clock(AWAY_S + 1))];
    news.extend(planned.late.iter().map(|late| {
        let operation = plain.spec.operations.iter().position(|o| o.id == late.operation);
        let panel = operation.and_then(|o| plain.panel_of(o));
        let panel = panel.map_or_else(String::new, |p| panel_words(&plain, p, Naming::Uk));
        say!("practice-window-lost", panel = panel)
    }));
    let state = |panel: usize, role: Role| plain.operation(panel, role).map(|o| past.operations[o]);
    let is_done = |s: Option<State>| matches!(s, Some(State::Done { .. }));
    let panels = 0..plain.template.panels.len();
    let (done, applied): (Vec<usize>, Vec<usize>) =
        panels.filter(|&p| is_done(state(p, Role::Apply))).partition(|&p| is_done(state(p, Role::Level)));

    let mut exercise = Exercise {
        spec: Arc::clone(&planned.problem),
        best: best.to_plan(&problem, bound.min(best.cost())),
        best_schedule: best,
        given: vec![Vec::new(); planned.problem.workers.len()],
        problem,
        done,
        wet: applied,
        news,
        ..plain
    };
    // What somebody does at the moment is no choice.
    let laid = Laid::of_plan(&exercise, &exercise.best_schedule);
    for worker in 0..exercise.spec.workers.len() {
        let forced = |s: &&Step| is_of_the_present(&exercise.spec.operations[s.operation].role);
        exercise.given[worker] = laid.lane(worker).iter().take_while(forced).copied().collect();
    }
    Ok(exercise)
}
