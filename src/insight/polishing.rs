//! From the polish plans of all panels to a crew problem, and from its plan back to panels, people and days.
//!
//! Every step at a panel is an operation at the panel's stance that anybody in the crew can do; local work at single defects comes
//! first, then the steps in their order. Preparing the pad and wiping the panel are part of each operation. What keeps people
//! out of each other's way is the rule of the crew planner: nobody works in a stance close to another's.
//!
//! Dust: a panel's last step leaves the surface as it stays, so nothing may fall on it. It begins only when all wet sanding on
//! panels that share a seam with it is over and [`WIPE_S`] have passed for wiping, and it never runs while one of them is cut.
//! Common practice, no source: the coarse work round about comes first. Leads: see `floor.rs`.

use super::Insight;
use super::exposure::{WorkerExposure, worker_exposure};
use super::floor::{CrewOrder, Leads, floor_problem};
use crate::crew::{LagSpec, OperationSpec, PlanFile, ProblemSpec, WetSpec};
use crate::job::Job;
use crate::polish::{Dose, PolishOperation, PolishPlan, StepKind, polish_operations, split_days};
use crate::units::{Interval, Seconds};
use crate::vehicle::{PanelId, Template};
use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::Arc;

/// Time for wiping a panel after sanding beside it, in s: our own estimate.
pub const WIPE_S: Seconds = 60;

/// All polishing of a job, as a crew problem and as what each of its operations is.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishWork {
    /// The problem; without operations when nothing is polished.
    pub problem: Arc<ProblemSpec>,
    /// One per operation of the problem, in its order; `panel` is an index into the panels of the template.
    pub operations: Vec<PolishOperation>,
    /// What each adds to somebody's day.
    pub doses: Arc<[Dose]>,
}

/// Puts the polishing of all panels together.
pub fn polish_work(job: &Job, template: &Template, insight: &Insight) -> PolishWork {
    let plans: Vec<&PolishPlan> = insight.panels.iter().map(|p| &p.polish).collect();
    let operations = polish_operations(&plans, &job.steps);
    let mut problem = floor_problem(job, template, if job.shop.leads { Leads::Laid } else { Leads::None });
    for worker in &mut problem.workers {
        worker.roles = StepKind::ALL.map(|k| k.id().to_owned()).to_vec();
    }
    let mut last: BTreeMap<usize, usize> = BTreeMap::new();
    for (index, operation) in operations.iter().enumerate() {
        let panel = &template.panels[operation.panel];
        let place = index - first_on_panel(&operations, index);
        let id = format!("{}/step{:02}", panel.id, place + 1);
        if let Some(before) = operation.after {
            let from = problem.operations[before].id.clone();
            problem.lags.push(LagSpec { from, to: id.clone(), min_s: 0, max_s: None });
        }
        problem.operations.push(OperationSpec {
            id,
            panel: panel.id.to_string(),
            role: operation.kind.id().to_owned(),
            duration_s: operation.seconds.max(1),
            stance: template.stances[panel.stance].id.clone(),
            worker: None,
        });
        last.insert(operation.panel, index);
    }
    keep_dust_off(&mut problem, template, &operations, &last);
    let doses = operations.iter().map(|o| Dose::of(o, &job.steps)).collect();
    PolishWork { problem: Arc::new(problem), operations, doses }
}

/// Index of the first operation of the same panel.
fn first_on_panel(operations: &[PolishOperation], index: usize) -> usize {
    let panel = operations[index].panel;
    operations[..index].iter().rposition(|o| o.panel != panel).map_or(0, |i| i + 1)
}

/// The rules about dust, for every dusty operation and the last steps of the panels beside it.
fn keep_dust_off(
    problem: &mut ProblemSpec,
    template: &Template,
    operations: &[PolishOperation],
    last: &BTreeMap<usize, usize>,
) {
    for (index, dusty) in operations.iter().enumerate().filter(|(_, o)| o.dusty) {
        let beside = template.neighbours(dusty.panel).iter().filter_map(|n| last.get(n).copied());
        let finishing = beside.filter(|&l| operations[l].kind.leaves_gloss());
        let blocks: Vec<String> = finishing.map(|l| problem.operations[l].id.clone()).collect();
        let from = problem.operations[index].id.clone();
        if dusty.kind == StepKind::Sand {
            let after = |to| LagSpec { from: from.clone(), to, min_s: WIPE_S, max_s: None };
            problem.lags.extend(blocks.into_iter().map(after));
        } else if !blocks.is_empty() {
            problem.wet.push(WetSpec { to: from.clone(), from, blocks });
        }
    }
}

/// One operation where the plan puts it.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishRow {
    /// Index into the crew of the job.
    pub worker: usize,
    /// Index into the operations of the work.
    pub operation: usize,
    /// Index into the panels of the template.
    pub panel: usize,
    /// Name of the step.
    pub name: String,
    /// How hard it is.
    pub kind: StepKind,
    /// Whether it is work at a single defect.
    pub local: bool,
    /// Which stop of this worker it is, from 1: what somebody does at one panel without leaving it is one stop.
    pub stop: usize,
    /// When.
    pub at: Interval,
}

/// A day's part of the order.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishDay {
    /// Which rows of the order.
    pub rows: Range<usize>,
    /// From the first start to the last end, on the clock of the order.
    pub at: Interval,
    /// What it does to each of the crew, in its order.
    pub workers: Vec<WorkerExposure>,
}

/// A panel that was handed to somebody else than in the fastest order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Handed {
    /// Index into the panels of the template.
    pub panel: usize,
    /// Index into the crew of the job.
    pub to: usize,
}

/// Who polishes what when, and what it does to them.
#[derive(Debug, Clone, PartialEq)]
pub struct PolishOrder {
    /// Every operation, by start.
    pub rows: Vec<PolishRow>,
    /// Time of the whole crew.
    pub takes: Seconds,
    /// Walking and laying of leads, all together.
    pub walking: Seconds,
    /// By how much any order of the same work could be better at most, as a share of the cost.
    pub could_be_better: f64,
    /// Time of one person doing all of it, walking left out.
    pub alone: Seconds,
    /// All of it in one day, per person of the crew.
    pub in_one_day: Vec<WorkerExposure>,
    /// The work over as few days as keep everybody below the action values; one where one is enough.
    pub days: Vec<PolishDay>,
    /// How much sooner the fastest order would be done, where it was given up for somebody's sake.
    pub given_up: Option<Seconds>,
    /// The panels that changed hands for it.
    pub handed: Vec<Handed>,
}

/// Reads a plan of this work. Rows that no longer fit the job (a panel or worker that is gone) are
/// left out.
pub fn polish_order(job: &Job, template: &Template, work: &PolishWork, order: &CrewOrder) -> PolishOrder {
    let rows = rows(job, template, work, &order.plan);
    let doses: Vec<(usize, Dose)> = rows.iter().map(|r| (r.worker, work.doses[r.operation])).collect();
    let starts = split_days(&doses);
    let ends = starts.iter().skip(1).copied().chain([rows.len()]);
    let exposure = |rows: &[PolishRow]| -> Vec<WorkerExposure> {
        let of = |worker| rows.iter().filter(move |r| r.worker == worker).map(|r| &work.operations[r.operation]);
        job.crew.iter().enumerate().map(|(worker, m)| worker_exposure(&m.name, of(worker), &job.steps)).collect()
    };
    let days = starts.iter().zip(ends).map(|(&start, end)| {
        let part = &rows[start..end];
        let until = part.iter().map(|r| r.at.end).max().unwrap_or(0);
        let at = Interval { start: part.first().map_or(0, |r| r.at.start), end: until };
        PolishDay { rows: start..end, at, workers: exposure(part) }
    });
    let plan = &order.plan;
    let mut handed: Vec<Handed> = Vec::new();
    if let Some(faster) = &order.faster {
        let before = rows_by_operation(job, template, work, faster);
        for row in rows.iter().filter(|r| before.get(&r.operation).is_some_and(|w| *w != r.worker)) {
            let one = Handed { panel: row.panel, to: row.worker };
            if !handed.contains(&one) {
                handed.push(one);
            }
        }
    }
    PolishOrder {
        takes: plan.makespan_s,
        walking: plan.walking_s,
        could_be_better: (plan.cost - plan.bound).max(0) as f64 / plan.cost.max(1) as f64,
        alone: work.operations.iter().map(|o| o.seconds).sum(),
        in_one_day: exposure(&rows),
        days: days.collect(),
        given_up: order.faster.as_ref().map(|f| plan.makespan_s - f.makespan_s),
        handed,
        rows,
    }
}

fn rows_by_operation(job: &Job, template: &Template, work: &PolishWork, plan: &PlanFile) -> BTreeMap<usize, usize> {
    rows(job, template, work, plan).into_iter().map(|r| (r.operation, r.worker)).collect()
}

fn rows(job: &Job, template: &Template, work: &PolishWork, plan: &PlanFile) -> Vec<PolishRow> {
    let index: BTreeMap<&str, usize> =
        work.problem.operations.iter().enumerate().map(|(i, o)| (o.id.as_str(), i)).collect();
    let row = |row: &crate::crew::PlanRow| {
        let operation = *index.get(row.id.as_str())?;
        let worker = job.crew.iter().position(|m| m.name == row.worker)?;
        let panel = template.index_of(&PanelId::from(work.problem.operations[operation].panel.as_str()))?;
        let PolishOperation { name, kind, local, seconds, .. } = &work.operations[operation];
        let at = Interval::lasting(row.start_s, (*seconds).max(1));
        let (name, kind, local) = (name.clone(), *kind, *local);
        Some(PolishRow { worker, operation, panel, name, kind, local, stop: 0, at })
    };
    let mut rows: Vec<PolishRow> = plan.operations.iter().filter_map(row).collect();
    rows.sort_by_key(|r| (r.at, r.worker, r.operation));
    let mut stops: Vec<(usize, Option<usize>)> = vec![(0, None); job.crew.len()];
    for row in &mut rows {
        let (count, panel) = &mut stops[row.worker];
        *count += usize::from(*panel != Some(row.panel));
        *panel = Some(row.panel);
        row.stop = *count;
    }
    rows
}
