//! What can be wrong with surveys, gloss readings, the ledger and the borders of the film bands.

use super::check::place_of;
use super::model::Job;
use crate::finding::{Code, Finding};

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
                    let cause = format!("nobody takes {} readings", reading.number);
                    found.push(Finding::new(Code::JobSurvey, path, cause, "leave the number out"));
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
                "the most that may have gone is below what probably went",
                "give the most that may have gone; it is what counts",
            ));
        }
    }
    if let Some(cause) = job.policy.bands.disorder() {
        found.push(Finding::new(Code::JobBands, "policy.bands", cause, "write the borders from thin to thick"));
    }
}

fn no_survey(job: &Job, path: String, number: u32) -> Finding {
    let cause = format!("there is no survey {number}, the job has {}", job.surveys.len());
    Finding::new(Code::JobSurvey, path, cause, "count surveys from 0, or leave the number out for the first")
}

fn stages(job: &Job, found: &mut Vec<Finding>) {
    if job.surveys.is_empty() {
        found.push(Finding::new(Code::JobSurvey, "surveys", "there is no survey", "leave the list out, or write one"));
    }
    let backwards = |pair: &[super::survey::Survey]| pair[0].stage > pair[1].stage;
    if let Some(at) = job.surveys.windows(2).position(backwards) {
        found.push(Finding::new(
            Code::JobSurvey,
            format!("surveys[{}].stage", at + 1),
            "a survey before polishing comes after one taken after it",
            "put the surveys in the order they were taken",
        ));
    }
    for (s, survey) in job.surveys.iter().enumerate() {
        let late = |c: &super::survey::SurveyCheck| c.after_reading > LARGEST_NUMBER;
        if let Some(c) = survey.checks.iter().position(late) {
            found.push(Finding::new(
                Code::JobSurvey,
                format!("surveys[{s}].checks[{c}].after_reading"),
                format!("nobody takes {} readings", survey.checks[c].after_reading),
                "give the number of the last reading before the check",
            ));
        }
    }
}
