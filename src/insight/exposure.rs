//! What polishing does to hands and ears, per worker: the operations of the polish plan, shared so that nobody gets more
//! vibration than needed.

use super::Insight;
use crate::job::Job;
use crate::polish::{
    PolishOperation, PolishPlan, PolishStep, day_exposure, exposure_advice, polish_operations, share_vibration,
};
use crate::units::{MetresPerSecondSquared, Seconds};
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
    /// Time with a running machine, in seconds.
    pub running_s: Seconds,
    /// What to do where an action value is reached; empty where none is.
    pub advice: Vec<String>,
}

/// Exposure of everybody in the crew.
pub fn exposure(job: &Job, insight: &Insight) -> Vec<WorkerExposure> {
    let plans: Vec<&PolishPlan> = insight.panels.iter().map(|p| &p.polish).collect();
    let operations = polish_operations(&plans, &job.steps);
    let owners = share_vibration(&operations, &job.steps, job.crew.len());
    let worst = job.steps.iter().map(PolishStep::vibration_with_k).max().unwrap_or(MetresPerSecondSquared::ZERO);
    let rounded = |value: f64, per_unit: f64| (value * per_unit).round() / per_unit;
    job.crew
        .iter()
        .enumerate()
        .map(|(worker, member)| {
            let mine = operations.iter().zip(&owners).filter(|(_, owner)| **owner == worker);
            let mine: Vec<&PolishOperation> = mine.map(|(operation, _)| operation).collect();
            let day = day_exposure(mine, &job.steps);
            WorkerExposure {
                worker: member.name.clone(),
                hav_a8_ms2: rounded(day.hav_a8.ms2(), 100.0),
                hav_points: day.hav_points.round(),
                noise_lex8h_db: day.noise_lex8h.map(|d| rounded(d.db(), 10.0)),
                running_s: day.running,
                advice: exposure_advice(&day, worst),
            }
        })
        .collect()
}
