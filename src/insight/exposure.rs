//! What polishing does to hands and ears, per worker.

use super::polishing::PolishWork;
use crate::job::Job;
use crate::polish::{
    DayExposure, PolishOperation, PolishStep, Standing, day_exposure, exposure_advice, hav_standing, noise_standing,
    osha_dose_pct, share_vibration,
};
use crate::say;
use crate::units::{Decibels, MetresPerSecondSquared, Seconds};
use serde::Serialize;

/// Exposure of one worker over a day.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WorkerExposure {
    /// Name.
    pub worker: String,
    /// Hand-arm vibration, normalised to eight hours, in m/s²; declared value plus its uncertainty.
    pub hav_a8_ms2: f64,
    /// The same in points; 100 is the action value of Directive 2002/44/EC, 400 its limit.
    pub hav_points: f64,
    /// How that stands: "below", "action", "over limit".
    pub hav_standing: &'static str,
    /// Noise normalised to eight hours, in dB(A); none where no machine runs.
    pub noise_lex8h_db: Option<f64>,
    /// How that stands against the lower action value and the limit of Directive 2003/10/EC.
    pub noise_standing: &'static str,
    /// Noise dose by 29 CFR 1910.95 of the United States, in per cent; 50 calls for a hearing conservation programme, 100 is most
    /// that is allowed. For information: which rule counts depends on the place.
    pub noise_osha_dose_pct: f64,
    /// Time with a running machine, in seconds.
    pub running_s: Seconds,
    /// What to do where an action value is reached; empty where none is.
    pub advice: Vec<String>,
}

impl WorkerExposure {
    /// The worse of both standings.
    pub fn standing(&self) -> Standing {
        let of = |word| STANDINGS.into_iter().find(|(_, w)| *w == word).map_or(Standing::Below, |(s, _)| s);
        of(self.hav_standing).max(of(self.noise_standing))
    }
}

const STANDINGS: [(Standing, &str); 3] =
    [(Standing::Below, "below"), (Standing::Action, "action"), (Standing::OverLimit, "over limit")];

fn word(standing: Standing) -> &'static str {
    STANDINGS.into_iter().find(|(s, _)| *s == standing).map_or("below", |(_, w)| w)
}

/// A standing as a person reads it; the fields of [`WorkerExposure`] hold it for other programs.
pub fn standing_in_words(standing: &str) -> &'static str {
    match standing {
        "over limit" => say!("insight-standing-over-limit"),
        "action" => say!("insight-standing-action"),
        _ => say!("insight-standing-below"),
    }
}

/// Exposure of somebody who does these operations in one day.
pub(super) fn worker_exposure<'a>(
    name: &str,
    operations: impl Iterator<Item = &'a PolishOperation>,
    steps: &[PolishStep],
) -> WorkerExposure {
    let mine: Vec<&PolishOperation> = operations.collect();
    let held = || mine.iter().filter_map(|o| Some((steps.get(o.step)?, o.running)));
    let worst = held().map(|(s, _)| s.vibration_with_k()).max().unwrap_or(MetresPerSecondSquared::ZERO);
    let noise: Vec<(Decibels, Seconds)> = held().map(|(s, running)| (s.noise_db, running)).collect();
    let day: DayExposure = day_exposure(mine.iter().copied(), steps);
    let rounded = |value: f64, per_unit: f64| (value * per_unit).round() / per_unit;
    WorkerExposure {
        worker: name.to_owned(),
        hav_a8_ms2: rounded(day.hav_a8.ms2(), 100.0),
        hav_points: day.hav_points.round(),
        hav_standing: word(hav_standing(day.hav_a8)),
        noise_lex8h_db: day.noise_lex8h.map(|d| rounded(d.db(), 10.0)),
        noise_standing: word(day.noise_lex8h.map_or(Standing::Below, noise_standing)),
        noise_osha_dose_pct: rounded(osha_dose_pct(&noise), 10.0),
        running_s: day.running,
        advice: exposure_advice(&day, worst),
    }
}

/// Exposure of everybody in the crew while no order is known: shared so that nobody gets more vibration than needed.
pub fn exposure_shared(job: &Job, work: &PolishWork) -> Vec<WorkerExposure> {
    let owners = share_vibration(&work.operations, &job.steps, job.crew.len());
    let of = |worker| work.operations.iter().zip(&owners).filter(move |(_, o)| **o == worker).map(|(op, _)| op);
    job.crew.iter().enumerate().map(|(worker, m)| worker_exposure(&m.name, of(worker), &job.steps)).collect()
}
