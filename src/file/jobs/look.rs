//! Looking through a list of jobs.

use super::JobHead;
use super::head::squeezed;
use std::cmp::Reverse;

/// Newest first; those without a day by when their file was changed, after all others.
pub fn sort_by_date(jobs: &mut [JobHead]) {
    jobs.sort_by(|a, b| {
        let key = |job: &JobHead| (Reverse(job.date), Reverse(job.stamp.changed_ns));
        key(a).cmp(&key(b)).then_with(|| a.file.cmp(&b.file))
    });
}

/// Places of the jobs that have every word of a question somewhere: in plate, owner, vehicle, name, day, open points or file.
pub fn matching(jobs: &[JobHead], question: &str) -> Vec<usize> {
    let question = question.to_lowercase();
    let words: Vec<&str> = question.split_whitespace().collect();
    let mark = squeezed(&question);
    let has = |job: &JobHead| {
        words.iter().all(|word| job.words.contains(word))
            || (mark.len() > 3 && words.len() > 1 && job.mark.contains(mark.as_str()))
    };
    (0..jobs.len()).filter(|at| has(&jobs[*at])).collect()
}

/// Places of the jobs of one vehicle, the first visit first; none where the mark is empty.
pub fn history_of(jobs: &[JobHead], plate: &str) -> Vec<usize> {
    let mark = squeezed(plate);
    let mut visits: Vec<usize> = (0..jobs.len()).filter(|at| !mark.is_empty() && jobs[*at].mark == mark).collect();
    visits.sort_by_key(|at| (jobs[*at].date, jobs[*at].stamp.changed_ns));
    visits
}
