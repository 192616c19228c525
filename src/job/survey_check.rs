//! What can be wrong with surveys, gloss readings, the ledger and the borders of the film bands.

use super::check::place_of;
use super::model::Job;
use crate::finding::{Code, Finding};
use crate::say;

/// Largest number of a reading: more than any job may hold.
const LARGEST_NUMBER: u32 = 10_000_000;

/// Faults of the surveys and of what belongs to one.
pub(super) fn surveys(job: &Job, found: &mut Vec<Finding>) {
    stages(job, found);
    for (id, record) in &job.panels {
        let path = place_of(id);
        for (s, spot) in record.spots.iter().enumerate() {
            for (r, reading) in spot.readings.iter().enumerate() {
                if reading.survey as usize >= job.surveys.len() {
                    let path = format!("{path}.spots[{s}].readings[{r}].survey");
                    found.push(no_survey(job, path, reading.survey));
                } else if reading.number > LARGEST_NUMBER {
                    let path = format!("{path}.spots[{s}].readings[{r}].number");
                    let cause = say!("check-readings-number", count = reading.number);
                    found.push(Finding::new(Code::JobSurvey, path, cause, say!("check-readings-number-do")));
                }
            }
        }
        for (g, gloss) in record.gloss.iter().enumerate().filter(|(_, g)| g.survey as usize >= job.surveys.len()) {
            found.push(no_survey(job, format!("{path}.gloss[{g}].survey"), gloss.survey));
        }
        let entries = record.removals.entries.iter().enumerate();
        for (e, _) in entries.filter(|(_, entry)| entry.removed_um > entry.upper_um) {
            found.push(Finding::new(
                Code::JobRemoval,
                format!("{path}.removals[{e}].upper_um"),
                say!("check-removal"),
                say!("check-removal-do"),
            ));
        }
    }
    if let Some(cause) = job.policy.bands.disorder() {
        found.push(Finding::new(Code::JobBands, "policy.bands", cause, say!("check-bands-do")));
    }
}

fn no_survey(job: &Job, path: String, number: u32) -> Finding {
    let cause = say!("check-no-survey", number = number, count = job.surveys.len());
    Finding::new(Code::JobSurvey, path, cause, say!("check-no-survey-do"))
}

fn stages(job: &Job, found: &mut Vec<Finding>) {
    if job.surveys.is_empty() {
        found.push(Finding::new(Code::JobSurvey, "surveys", say!("check-surveys-none"), say!("check-surveys-none-do")));
    }
    let backwards = |pair: &[super::survey::Survey]| pair[0].stage > pair[1].stage;
    if let Some(at) = job.surveys.windows(2).position(backwards) {
        found.push(Finding::new(
            Code::JobSurvey,
            format!("surveys[{}].stage", at + 1),
            say!("check-surveys-order"),
            say!("check-surveys-order-do"),
        ));
    }
    for (s, survey) in job.surveys.iter().enumerate() {
        let late = |c: &super::survey::SurveyCheck| c.after_reading > LARGEST_NUMBER;
        if let Some(c) = survey.checks.iter().position(late) {
            found.push(Finding::new(
                Code::JobSurvey,
                format!("surveys[{s}].checks[{c}].after_reading"),
                say!("check-readings-number", count = survey.checks[c].after_reading),
                say!("check-after-reading-do"),
            ));
        }
    }
}
