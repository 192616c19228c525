//! A new order for the rest of a day that stays near the one people have in their heads.
//!
//! The old order is kept where it still works: it changes only when a window would be missed, when another order is late on
//! clearly fewer simulated days, or when it saves more than a few per cent. People who have an order in their heads lose
//! more by a change than a planner sees.

use super::keep::Mender;
use super::{Rest, is_of_the_present};
use crate::crew::construct::{self, First};
use crate::crew::model::Model;
use crate::crew::outcome::{Control, Limits, Outcome};
use crate::crew::portfolio::improve;
use crate::crew::problem::{Problem, ProblemErrors};
use crate::crew::random::Random;
use crate::crew::schedule::{PlanFile, PlanRow, Schedule};
use crate::crew::simulate::simulate;
use crate::crew::spec::ProblemSpec;
use crate::units::Seconds;
use std::sync::Arc;

/// A window that began in the past and can't be met any more.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Late {
    /// Name of the operation that comes too late.
    pub operation: String,
    /// By how many seconds.
    pub by_s: Seconds,
}

/// The answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Replanned {
    /// The problem it solves: the rest, with windows that can't be met made just long enough.
    pub problem: Arc<ProblemSpec>,
    /// The plan, on the rest's clock; what somebody does at present is in it.
    pub plan: PlanFile,
    /// The moment of the day at which that clock shows 0.
    pub origin_s: Seconds,
    /// Windows that can't be met.
    pub late: Vec<Late>,
    /// Whether people can go on in the order they know.
    pub same_order: bool,
    /// Share of simulated days on which a window that can be met is missed.
    pub late_chance: f64,
}

/// Simulated days for each comparison.
const RUNS: u32 = 400;
/// What another order must save, as a share of the cost of what is left.
const WORTH_A_CHANGE: f64 = 0.03;
/// How much less often it must be late to be worth a change.
const SURER_BY: f64 = 0.05;
/// Part of each window's room that the second search leaves unused.
const RESERVE: f64 = 0.35;

/// Plans what is left. `known` is the order people go by; its times don't matter. None where no order keeps the rules however
/// late it is, which happens only when people lean over each other's wet panels in a circle.
///
/// # Errors
/// [`ProblemErrors`] when the rest is no crew problem.
pub fn replan(
    rest: &Rest,
    known: &[PlanRow],
    limits: &Limits,
    control: &dyn Control,
) -> Result<Option<Replanned>, ProblemErrors> {
    let soft = Problem::try_from(rest.spec.clone())?;
    let model = Model::new(&soft);
    let mender = Mender::new(rest, &soft, &model);
    let as_planned = mender.as_planned(known);
    let start = if let Some(kept) = &as_planned {
        Some(kept.clone())
    } else {
        let found = construct::first(&soft, &model, &mut Random::new(limits.seed, 0));
        let orders = if let First::Found(orders) = found { orders } else { Vec::new() };
        orders.into_iter().next().map(|order| mender.kept(order))
    };
    let Some(start) = start.map(|kept| mender.mended(kept)) else { return Ok(None) };
    let reached = start.order.schedule(&model, &soft).to_plan(&soft, 0);
    let end = |id: &str| {
        let lasts = rest.spec.operations.iter().find(|o| o.id == id).map_or(0, |o| o.duration_s);
        reached.operations.iter().find(|r| r.id == id).map_or(0, |r| r.start_s + lasts)
    };
    let late = rest.deadlines.iter().filter(|d| end(&d.operation) > d.by_s);
    let late: Vec<Late> =
        late.map(|d| Late { operation: d.operation.clone(), by_s: end(&d.operation) - d.by_s }).collect();

    let spec = rest.strict(&end);
    let problem = Problem::try_from(spec.clone())?;
    let choice = Choice::new(&problem, &reached, as_planned.is_some_and(|k| k.late == start.late), limits, control);
    Ok(choice.map(|choice| Replanned {
        same_order: choice.same_order,
        late_chance: choice.late_chance,
        plan: choice.schedule.to_plan(&problem, choice.bound),
        problem: Arc::new(spec),
        origin_s: rest.origin_s,
        late,
    }))
}

struct Choice {
    schedule: Schedule,
    same_order: bool,
    late_chance: f64,
    bound: i64,
}

impl Choice {
    /// The known order, or one that is worth a change.
    fn new(problem: &Problem, start: &PlanFile, known: bool, limits: &Limits, control: &dyn Control) -> Option<Self> {
        let kept = Schedule::from_plan(problem, start).ok()?;
        let half = Limits { nodes: limits.nodes.map(|n| n / 2), ..*limits };
        let wide = improve(problem, start, &half, control);
        let bound = wide.as_ref().and_then(Outcome::bound).unwrap_or(0);
        let narrow = problem.changed(|spec| {
            for lag in spec.lags.iter_mut().filter(|l| !is_of_the_present(&l.from)) {
                if let Some(max) = &mut lag.max_s {
                    *max -= (RESERVE * (*max - lag.min_s) as f64).max(0.0) as Seconds;
                }
            }
        });
        let sure = improve(&narrow, start, &half, control);
        let choice = |schedule: &Schedule, same_order| {
            let late_chance = simulate(problem, schedule, RUNS, limits.seed).late_chance;
            Self { schedule: schedule.clone(), same_order, late_chance, bound }
        };
        let mut best = choice(&kept, known);
        for found in [wide, sure].iter().flatten().filter_map(Outcome::schedule) {
            let found = choice(found, false);
            let surer = found.late_chance + SURER_BY < best.late_chance;
            let as_sure = found.late_chance <= best.late_chance + 0.01;
            let worth = if best.same_order { WORTH_A_CHANGE } else { 0.0 };
            let cheaper = (best.schedule.cost() - found.schedule.cost()) as f64 > worth * best.schedule.cost() as f64;
            if surer || (as_sure && cheaper) {
                best = found;
            }
        }
        Some(best)
    }
}
