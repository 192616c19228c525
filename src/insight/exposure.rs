//! What polishing does to hands and ears, per worker.
//!
//! The time of every step is split evenly among the crew: a first estimate, and what two people do who take turns.

use super::Insight;
use crate::job::Job;
use crate::polish::{combine_a8, hav_a8, hav_points, noise_lex8h};
use crate::units::{Decibels, MetresPerSecondSquared, Seconds};
use serde::Serialize;

/// Exposure of one worker over the day of this job.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WorkerExposure {
    /// Name.
    pub worker: String,
    /// Hand-arm vibration, normalised to eight hours, in m/s²; declared value plus its uncertainty.
    pub hav_a8_ms2: f64,
    /// The same in points; 100 is the action value of Directive 2002/44/EC, 400 its limit.
    pub hav_points: f64,
    /// Noise normalised to eight hours, in dB(A); none where no machine runs.
    pub noise_lex8h_db: Option<f64>,
}

/// Exposure of everybody in the crew.
pub fn exposure(job: &Job, insight: &Insight) -> Vec<WorkerExposure> {
    let people = job.crew.len().max(1) as Seconds;
    let times = step_seconds(job, insight);
    let (mut a8, mut points, mut noise) = (Vec::new(), 0.0, Vec::new());
    for (step, seconds) in job.steps.iter().zip(times) {
        let mine = seconds / people;
        let declared = step.vibration_ms2.ms2() + step.vibration_k_ms2.ms2();
        if let Ok(magnitude) = MetresPerSecondSquared::new(declared) {
            a8.push(hav_a8(magnitude, mine));
            points += hav_points(magnitude, mine);
        }
        if step.noise_db > Decibels::ZERO && mine > 0 {
            noise.push((step.noise_db, mine));
        }
    }
    let each = WorkerExposure {
        worker: String::new(),
        hav_a8_ms2: (combine_a8(&a8).ms2() * 100.0).round() / 100.0,
        hav_points: points.round(),
        noise_lex8h_db: noise_lex8h(&noise).map(|d| (d.db() * 10.0).round() / 10.0),
    };
    job.crew.iter().map(|m| WorkerExposure { worker: m.name.clone(), ..each.clone() }).collect()
}

/// Seconds of each of the shop's steps over the whole vehicle.
fn step_seconds(job: &Job, insight: &Insight) -> Vec<Seconds> {
    let mut seconds = vec![0; job.steps.len()];
    for plan in insight.panels.iter().map(|p| &p.polish) {
        for step in plan.steps.iter().chain(plan.local.iter().flat_map(|l| &l.steps)) {
            seconds[step.index] += step.seconds;
        }
    }
    seconds
}
