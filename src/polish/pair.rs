//! Polishing by two people: the plan of all panels as operations, and what each of them does to the one who carries it out.

use super::exposure::{HAV_ACTION, NOISE_VALUES_DB};
use super::exposure::{combine_a8, hav_a8, hav_points, hav_time_until, noise_lex8h};
use super::plan::{PlannedStep, PolishPlan};
use super::step::{PolishStep, StepKind};
use crate::say;
use crate::units::{Decibels, MetresPerSecondSquared, Seconds, minutes};

/// One stretch of polishing at one panel, for a crew problem.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishOperation {
    /// The panel, by its place in the list given.
    pub panel: usize,
    /// The step, by its place in the shop's list.
    pub step: usize,
    /// A name to show.
    pub name: String,
    /// How hard it is.
    pub kind: StepKind,
    /// Time at the panel, setting up included.
    pub seconds: Seconds,
    /// Time the machine runs.
    pub running: Seconds,
    /// The operation on the same panel that must be done before, by its place in the answer.
    pub after: Option<usize>,
    /// Whether it throws dust or spatter, so that nobody should finish or coat beside it.
    pub dusty: bool,
    /// Whether it is work at a single defect instead of the whole panel.
    pub local: bool,
}

/// All operations of a polishing plan, panel after panel; at each panel local work first, then the steps in order.
///
/// Steps of the same kind are not merged across panels: who does which, and when, is for the crew planner.
pub fn polish_operations(plans: &[&PolishPlan], steps: &[PolishStep]) -> Vec<PolishOperation> {
    let mut operations: Vec<PolishOperation> = Vec::new();
    for (panel, plan) in plans.iter().enumerate() {
        let mut after = None;
        let local = plan.local.iter().flat_map(|l| &l.steps).map(|s| (s, true));
        for (planned, local) in local.chain(plan.steps.iter().map(|s| (s, false))) {
            operations.push(PolishOperation {
                panel,
                step: planned.index,
                name: planned.name.clone(),
                kind: planned.kind,
                seconds: planned.seconds,
                running: running(planned, steps),
                after,
                dusty: planned.kind <= StepKind::Cut,
                local,
            });
            after = Some(operations.len() - 1);
        }
    }
    operations
}

fn running(planned: &PlannedStep, steps: &[PolishStep]) -> Seconds {
    let setup = steps.get(planned.index).map_or(0, |s| Seconds::from(s.setup_s));
    (planned.seconds - setup).max(0)
}

/// What a day of polishing does to one worker.
#[derive(Debug, Clone, PartialEq)]
pub struct DayExposure {
    /// Daily vibration, declared magnitude plus its uncertainty.
    pub hav_a8: MetresPerSecondSquared,
    /// The same as points.
    pub hav_points: f64,
    /// Daily noise; `None` without a machine.
    pub noise_lex8h: Option<Decibels>,
    /// Time with a running machine.
    pub running: Seconds,
}

/// Exposure of one worker from the operations that are theirs.
pub fn day_exposure<'a>(
    operations: impl IntoIterator<Item = &'a PolishOperation>,
    steps: &[PolishStep],
) -> DayExposure {
    let parts: Vec<(&PolishStep, Seconds)> =
        operations.into_iter().filter_map(|o| Some((steps.get(o.step)?, o.running))).collect();
    let vibration: Vec<MetresPerSecondSquared> =
        parts.iter().map(|(step, running)| hav_a8(step.vibration_with_k(), *running)).collect();
    let noise: Vec<(Decibels, Seconds)> = parts.iter().map(|(step, running)| (step.noise_db, *running)).collect();
    DayExposure {
        hav_a8: combine_a8(&vibration),
        hav_points: parts.iter().map(|(step, running)| hav_points(step.vibration_with_k(), *running)).sum(),
        noise_lex8h: noise_lex8h(&noise),
        running: parts.iter().map(|(_, running)| running).sum(),
    }
}

/// Shares operations between workers so that the one with most vibration points has as few as possible.
///
/// Largest first to whoever has least so far (Graham 1969: at most 4/3 of the best possible), then swaps and moves until none
/// lowers the highest. Answers the worker of each operation, in the order given; `workers` at least 1.
pub fn share_vibration(operations: &[PolishOperation], steps: &[PolishStep], workers: usize) -> Vec<usize> {
    let workers = workers.max(1);
    let load = |o: &PolishOperation| steps.get(o.step).map_or(0.0, |s| hav_points(s.vibration_with_k(), o.running));
    let loads: Vec<f64> = operations.iter().map(load).collect();
    let mut order: Vec<usize> = (0..loads.len()).collect();
    order.sort_by(|&a, &b| loads[b].total_cmp(&loads[a]).then(a.cmp(&b)));
    let mut totals = vec![0.0_f64; workers];
    let mut owner = vec![0; loads.len()];
    for index in order {
        let least = (0..workers).min_by(|&a, &b| totals[a].total_cmp(&totals[b])).unwrap_or(0);
        owner[index] = least;
        totals[least] += loads[index];
    }
    while let Some((index, to)) = better_move(&loads, &owner, &totals) {
        totals[owner[index]] -= loads[index];
        totals[to] += loads[index];
        owner[index] = to;
    }
    owner
}

/// A move of one operation off the most loaded worker that lowers the highest load.
fn better_move(loads: &[f64], owner: &[usize], totals: &[f64]) -> Option<(usize, usize)> {
    let most = (0..totals.len()).max_by(|&a, &b| totals[a].total_cmp(&totals[b]))?;
    let to = (0..totals.len()).min_by(|&a, &b| totals[a].total_cmp(&totals[b]))?;
    let fits = |&i: &usize| owner[i] == most && loads[i] > 1e-9 && totals[to] + loads[i] < totals[most] - 1e-9;
    (0..loads.len()).filter(fits).max_by(|&a, &b| loads[a].total_cmp(&loads[b])).map(|index| (index, to))
}

/// Advice where a day is over an action value; empty when it is not.
pub fn exposure_advice(day: &DayExposure, worst: MetresPerSecondSquared) -> Vec<String> {
    let mut advice = Vec::new();
    if day.hav_a8 >= HAV_ACTION {
        let until = hav_time_until(worst, HAV_ACTION).map(minutes).unwrap_or_default();
        let (now, action) = (format!("{:.1}", day.hav_a8), format!("{HAV_ACTION:.1}"));
        advice.push(say!("polish-advice-vibration", now = now, action = action, until = until));
    }
    if let Some(level) = day.noise_lex8h.filter(|l| l.db() >= NOISE_VALUES_DB[0]) {
        advice.push(say!("polish-advice-noise", now = format!("{level:.0}")));
    }
    advice
}
