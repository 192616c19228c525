//! From job and template to a crew problem, and from its plan back to panels.
//!
//! Each coated panel and layer becomes two operations, apply and level, at the panel's stance, tied by the window. To reach a
//! panel that one leans over others for, those others must not carry wet coating (a wet rule), and they come after it where
//! both are coated (top before bottom; common practice, no source): a fresh film is not leaned on even when levelled.

use super::Insight;
use super::choices::ask;
use super::floor::{Leads, floor_problem};
use crate::coat;
use crate::crew::{LagSpec, OperationSpec, PlanFile, ProblemSpec, WetSpec};
use crate::job::{Job, Role};
use crate::polish::{DefectKind, StepKind};
use crate::say;
use crate::units::{Interval, Millilitres};
use crate::vehicle::{Naming, Panel, PanelId, Skip, Template};

/// One row of an order.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OrderRow {
    /// Index into the crew of the job.
    pub worker: usize,
    /// What is done.
    pub role: Role,
    /// Index into the panels of the template.
    pub panel: usize,
    /// Which layer, from 1.
    pub layer: u32,
    /// When.
    pub at: Interval,
}

/// Whether a panel will be coated. One that the template switches off is not. One whose clear coat fails is not: it has to be painted first, and coating would be sanded off.
pub fn is_coated(job: &Job, panel: &Panel) -> bool {
    let switched_off = matches!(panel.skip, Some(Skip::Absent | Skip::NotCoated));
    !switched_off
        && !job
            .record(&panel.id)
            .is_some_and(|r| r.left_uncoated || r.defects.iter().any(|d| d.kind == DefectKind::ClearFailure))
}

/// The panels that will be coated: indices into the template, in its order.
pub fn coated_panels(job: &Job, template: &Template) -> Vec<usize> {
    (0..template.panels.len()).filter(|&i| is_coated(job, &template.panels[i])).collect()
}

/// Coating for all coated panels and layers.
pub fn coating_amount(job: &Job, template: &Template) -> Millilitres {
    coated_panels(job, template).into_iter().map(|i| coat::amount(template.panels[i].area, &job.product)).sum()
}

/// The id of an operation in a crew problem, `bonnet-left/apply1`.
pub fn operation_id(panel: &PanelId, role: Role, layer: u32) -> String {
    format!("{panel}/{}{layer}", role.id())
}

/// The crew problem of coating this vehicle in this air, with nothing asked of the order. With nothing to coat it has no operations.
pub fn free_problem(job: &Job, template: &Template, insight: &Insight) -> ProblemSpec {
    let stance = |i: usize| template.stances[i].id.clone();
    let coated = coated_panels(job, template);
    let layers = 1..=job.product.layers.max(1);
    let mut problem = floor_problem(job, template, Leads::None);
    for (worker, member) in problem.workers.iter_mut().zip(&job.crew) {
        worker.roles = member.roles.iter().map(|r| r.id().to_owned()).collect();
    }
    for &index in &coated {
        let panel = &template.panels[index];
        for layer in layers.clone() {
            for (role, duration_s) in [
                (Role::Apply, coat::seconds_to_apply(panel.area, &job.product)),
                (Role::Level, coat::seconds_to_level(panel.area, &job.product)),
            ] {
                problem.operations.push(OperationSpec {
                    id: operation_id(&panel.id, role, layer),
                    panel: panel.id.to_string(),
                    role: role.id().to_owned(),
                    duration_s,
                    stance: stance(panel.stance),
                    worker: None,
                });
            }
            problem.lags.push(LagSpec {
                from: operation_id(&panel.id, Role::Apply, layer),
                to: operation_id(&panel.id, Role::Level, layer),
                min_s: insight.air.window.min_s,
                max_s: Some(insight.air.window.max_s),
            });
            if layer > 1 {
                problem.lags.push(after(panel, layer - 1, panel, layer, job.product.recoat_s));
            }
        }
    }
    for &index in &coated {
        let high = &template.panels[index];
        for under in coated.iter().map(|&i| &template.panels[i]).filter(|p| high.leans_over.contains(&p.id)) {
            for layer in layers.clone() {
                problem.lags.push(after(high, layer, under, layer, 0));
                problem.wet.push(WetSpec {
                    from: operation_id(&under.id, Role::Apply, layer),
                    to: operation_id(&under.id, Role::Level, layer),
                    blocks: layers
                        .clone()
                        .flat_map(|l| [Role::Apply, Role::Level].map(|r| operation_id(&high.id, r, l)))
                        .collect(),
                });
            }
        }
    }
    problem
}

/// The same with what people ask of the order.
pub fn crew_problem(job: &Job, template: &Template, insight: &Insight) -> ProblemSpec {
    let mut problem = free_problem(job, template, insight);
    ask(&mut problem, job, template);
    problem
}

/// A reason of the planner with panels as people call them.
pub fn reason_in_words(problem: &ProblemSpec, template: &Template, naming: Naming, reason: &str) -> String {
    let mut words = reason.to_owned();
    for operation in problem.operations.iter().filter(|o| reason.contains(o.id.as_str())) {
        let panel = template.panel(&PanelId::from(operation.panel.as_str()));
        let name = panel.map_or_else(|| operation.panel.clone(), |p| p.name(naming));
        words = words.replace(&operation.id, &say!("insight-operation", does = does(&operation.role), panel = name));
    }
    words
}

/// What is done in a role of a crew problem, of coating or of polishing, as on a list: "apply", "cut".
fn does(role: &str) -> &str {
    match role {
        role if role == Role::Apply.id() => say!("insight-apply"),
        role if role == Role::Level.id() => say!("insight-level"),
        role => match StepKind::ALL.into_iter().find(|kind| kind.id() == role) {
            Some(kind) => kind.verb(),
            None => role,
        },
    }
}

/// `second` is not begun in its layer before `first` is levelled in its own and `min_s` seconds have passed.
fn after(first: &Panel, first_layer: u32, second: &Panel, second_layer: u32, min_s: i64) -> LagSpec {
    LagSpec {
        from: operation_id(&first.id, Role::Level, first_layer),
        to: operation_id(&second.id, Role::Apply, second_layer),
        min_s,
        max_s: None,
    }
}

/// A plan in terms of the job, by time. Rows that no longer fit the job (a panel or worker that is gone) are left out.
pub fn order_rows(job: &Job, template: &Template, problem: &ProblemSpec, plan: &PlanFile) -> Vec<OrderRow> {
    let mut rows: Vec<OrderRow> = plan
        .operations
        .iter()
        .filter_map(|row| {
            let operation = problem.operations.iter().find(|o| o.id == row.id)?;
            let panel = template.panels.iter().position(|p| p.id.as_str() == operation.panel)?;
            let role = [Role::Apply, Role::Level].into_iter().find(|r| r.id() == operation.role)?;
            let layer = operation.id.rsplit(|c: char| !c.is_ascii_digit()).next()?.parse().ok()?;
            let worker = job.crew.iter().position(|m| m.name == row.worker)?;
            Some(OrderRow { worker, role, panel, layer, at: Interval::lasting(row.start_s, operation.duration_s) })
        })
        .collect();
    rows.sort_by_key(|r| (r.at, r.worker, r.panel));
    rows
}
