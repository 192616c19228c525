//! What both benches of the bay begin with.

use lapwright::crew::{Control, ProblemSpec, Schedule};
use lapwright::file::{SAMPLE, job_from_text};
use lapwright::insight::{Insight, crew_problem};
use lapwright::job::{Job, Vehicle};
use lapwright::vehicle::load_embedded;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Lets a search go on to its limit of nodes.
pub(crate) struct Unlimited;

impl Control for Unlimited {
    fn should_stop(&self) -> bool {
        false
    }
    fn improved(&self, _: &Schedule, _: i64) {}
}

/// The coating of the sample job on another body.
pub(crate) fn coating(template: &str) -> ProblemSpec {
    let sample = job_from_text("the sample", SAMPLE).unwrap();
    let template = load_embedded(template).unwrap();
    let vehicle = Vehicle { template: template.id.clone(), ..sample.job.vehicle.clone() };
    let job = Arc::new(Job { vehicle, panels: BTreeMap::new(), ..(*sample.job).clone() });
    let insight = Insight::new(&job, &template);
    crew_problem(&job, &template, &insight)
}
