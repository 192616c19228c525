//! What the polishing of a vehicle uses up, and what it costs the shop.

use super::Insight;
use crate::job::Job;
use crate::polish::{Cost, PolishPlan, StepMaterials, cost, materials};
use crate::units::{Seconds, SquareMetres};
use crate::vehicle::Template;

/// Pads, sheets, polish and towels per step over the whole vehicle, in the order of the shop's steps.
pub fn supplies(job: &Job, template: &Template, insight: &Insight) -> Vec<StepMaterials> {
    let panels: Vec<(&PolishPlan, SquareMetres)> =
        insight.panels.iter().zip(&template.panels).map(|(i, p)| (&i.polish, p.area)).collect();
    materials(&panels, &job.shop.uses)
}

/// Time of everybody together: with an order the crew is there until the last one is done, without one the work alone counts.
pub fn people_seconds(job: &Job, insight: &Insight, takes: Option<Seconds>) -> Seconds {
    takes.map_or_else(|| insight.polish_seconds(), |takes| takes * job.crew.len() as i64)
}

/// What it costs the shop.
pub fn shop_cost(job: &Job, insight: &Insight, used: &[StepMaterials], takes: Option<Seconds>) -> Cost {
    cost(used, people_seconds(job, insight, takes), &job.shop.prices)
}
