//! Plans that people keep even when they are slower than planned.
//!
//! An order that is best for planned durations uses windows to the last second. Planning with windows that end earlier leaves
//! room; how much is needed is found by planning and measuring ([`simulate`]): the cheapest plan wins whose chance to pass a
//! window, in the problem as it is, is at most the target.

use super::bound;
use super::consts::{ROBUST_NODES, ROBUST_NODES_EACH, ROBUST_ROUNDS};
use super::outcome::{Control, Limits, Outcome};
use super::portfolio::solve;
use super::problem::Problem;
use super::schedule::Schedule;
use super::simulate::{Lateness, simulate};
use std::sync::Mutex;

/// How sure a plan must be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Target {
    /// Highest share of simulated days on which a window may be passed, from 0 to 1.
    pub late_chance: f64,
    /// Simulated days for each measurement.
    pub runs: u32,
}

impl Default for Target {
    /// One day in twenty, measured on 4,000 days (standard error 0.3 % there).
    fn default() -> Self {
        Self { late_chance: 0.05, runs: 4_000 }
    }
}

/// A plan and how sure it is.
#[derive(Debug, Clone, PartialEq)]
pub struct RobustPlan {
    /// A valid plan of the problem as given.
    pub schedule: Schedule,
    /// Measured on days that were not used to choose it.
    pub lateness: Lateness,
    /// Part of each window's room (longest wait less shortest wait less duration) that was left unused, from 0 to 1.
    pub reserve: f64,
    /// Whether the target was met when the plan was chosen.
    pub met: bool,
    /// Proven lower bound of the cost of any valid plan, robust or not.
    pub bound: i64,
}

/// Plans for a target. Limits count for all rounds together; with nodes the answer is the same everywhere. The outside hears of
/// every plan that meets the target and is cheaper than the last one.
///
/// # Errors
/// The [`Outcome`] of plain planning when that has no plan.
pub fn solve_robust(
    problem: &Problem,
    limits: &Limits,
    control: &dyn Control,
    target: Target,
) -> Result<RobustPlan, Outcome> {
    let bound = bound::cost(problem, None);
    let mut search = Robust { problem, limits, control, target, bound, best: None, round: 0 };
    let plain = search.plan(0.0)?;
    if plain > target.late_chance {
        // Reserves between one known to be too small and one known to be enough.
        let (mut small, mut enough) = (0.0, 1.0);
        while search.round < ROBUST_ROUNDS && !control.should_stop() {
            let reserve = f64::midpoint(small, enough);
            match search.plan(reserve) {
                Ok(late) if late > target.late_chance => small = reserve,
                // enough, or more than the problem allows: both ask for less
                Ok(_) | Err(_) => enough = reserve,
            }
        }
    }
    search.finish()
}

struct Robust<'a> {
    problem: &'a Problem,
    limits: &'a Limits,
    control: &'a dyn Control,
    target: Target,
    bound: i64,
    best: Option<Chosen>,
    round: u32,
}

struct Chosen {
    schedule: Schedule,
    late: f64,
    reserve: f64,
}

impl Robust<'_> {
    /// Plans with a reserve, measures, keeps the plan if it is the best so far; its chance to be late, or what planning said.
    fn plan(&mut self, reserve: f64) -> Result<f64, Outcome> {
        let narrowed = self.problem.changed(|spec| {
            for lag in &mut spec.lags {
                let takes = spec.operations.iter().find(|o| o.id == lag.to).map_or(0, |o| o.duration_s);
                if let Some(max) = &mut lag.max_s {
                    *max -= (reserve * (*max - lag.min_s - takes).max(0) as f64).round() as i64;
                }
            }
        });
        let nodes = self.limits.nodes.map_or_else(|| self.round_nodes(), |n| n / u64::from(ROBUST_ROUNDS));
        let limits = Limits { nodes: Some(nodes), seed: self.limits.seed + u64::from(self.round), ..*self.limits };
        self.round += 1;
        let silent = Silent { control: self.control, plans: Mutex::default() };
        let outcome = solve(&narrowed, &limits, &silent);
        let Some(schedule) = outcome.schedule().cloned() else { return Err(outcome) };
        let late = self.measure(&schedule, self.limits.seed).late_chance;
        self.consider(schedule, late, reserve);
        let plans = silent.plans.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
        for plan in plans.into_iter().rev().take(8) {
            let late = self.measure(&plan, self.limits.seed).late_chance;
            self.consider(plan, late, reserve);
        }
        Ok(late)
    }

    fn round_nodes(&self) -> u64 {
        (ROBUST_NODES / self.problem.len() as u64).min(ROBUST_NODES_EACH)
    }

    fn measure(&self, schedule: &Schedule, seed: u64) -> Lateness {
        simulate(self.problem, schedule, self.target.runs, seed)
    }

    /// Meeting the target comes first, then the cost; as long as nothing meets it, the least chance.
    fn consider(&mut self, schedule: Schedule, late: f64, reserve: f64) {
        let target = self.target.late_chance;
        let better = self.best.as_ref().is_none_or(|best| match (late <= target, best.late <= target) {
            (true, true) => schedule.cost() < best.schedule.cost(),
            (met, best_met) if met != best_met => met,
            _ => late < best.late,
        });
        if better {
            if late <= target {
                self.control.improved(&schedule, self.bound);
            }
            self.best = Some(Chosen { schedule, late, reserve });
        }
    }

    fn finish(self) -> Result<RobustPlan, Outcome> {
        let bound = self.bound;
        let Some(best) = &self.best else { return Err(Outcome::Unknown { bound }) };
        let lateness = self.measure(&best.schedule, self.limits.seed ^ 0x0DD_DA75);
        let met = best.late <= self.target.late_chance;
        Ok(RobustPlan { schedule: best.schedule.clone(), lateness, reserve: best.reserve, met, bound })
    }
}

/// Lets the outside stop a round and collects its plans.
struct Silent<'a> {
    control: &'a dyn Control,
    plans: Mutex<Vec<Schedule>>,
}

impl Control for Silent<'_> {
    fn should_stop(&self) -> bool {
        self.control.should_stop()
    }
    fn improved(&self, best: &Schedule, _bound: i64) {
        self.plans.lock().unwrap_or_else(std::sync::PoisonError::into_inner).push(best.clone());
    }
}
