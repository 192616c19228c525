//! Changing the shop's list of steps without losing what was tested.

use super::command::CommandError;
use super::model::Job;
use crate::polish::{PolishStep, TestSpots};
use crate::say;
use std::sync::Arc;

/// Takes another list of steps. Where a list of the same length gives a step at the same place another name, its test results
/// follow the new name. Results of steps that are not in the list any more stay, and count again when the step comes back.
///
/// # Errors
/// [`CommandError::Range`] where a step has no name or two have the same: results could not be told apart.
pub(super) fn set_steps(job: &mut Job, steps: Vec<PolishStep>) -> Result<(), CommandError> {
    for (at, step) in steps.iter().enumerate() {
        if step.name.trim().is_empty() {
            return Err(CommandError::Range(say!("job-step-without-name").to_owned()));
        }
        if steps[..at].iter().any(|s| s.name == step.name) {
            return Err(CommandError::Range(say!("job-step-twice", name = &step.name)));
        }
    }
    let renamed = |name: &str| {
        let at = job.steps.iter().position(|s| s.name == name)?;
        let now = steps.get(at).filter(|_| steps.len() == job.steps.len())?;
        // Nothing but the name is another one, and the old name is not elsewhere in the list.
        let same = PolishStep { name: name.to_owned(), ..now.clone() } == job.steps[at];
        (same && steps.iter().all(|s| s.name != name)).then(|| now.name.clone())
    };
    let mut tests = TestSpots::clone(&job.test_spots);
    for result in &mut tests.results {
        if let Some(name) = renamed(&result.step) {
            result.step = name;
        }
    }
    if tests != *job.test_spots {
        job.test_spots = Arc::new(tests);
    }
    job.steps = steps;
    Ok(())
}
