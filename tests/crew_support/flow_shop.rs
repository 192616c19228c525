//! Two-machine flow shops from the literature as crew problems: one applies, one levels, nobody walks, nothing is close.

use lapwright::crew::{FORMAT, LagSpec, ObjectiveSpec, OperationSpec, ProblemSpec, WorkerSpec};

/// A job: first machine, shortest wait, second machine; `no_wait` closes the window at once.
#[derive(Clone, Copy)]
pub(crate) struct Job {
    pub(crate) first: i64,
    pub(crate) wait: i64,
    pub(crate) second: i64,
    pub(crate) no_wait: bool,
}

/// Cost is the last end.
pub(crate) fn flow_shop(jobs: &[Job]) -> ProblemSpec {
    let worker = |id: &str, role: &str| WorkerSpec { id: id.to_owned(), roles: vec![role.to_owned()] };
    let stances: Vec<String> = (0..2 * jobs.len()).map(|s| format!("s{s}")).collect();
    let mut operations = Vec::new();
    let mut lags = Vec::new();
    for (j, job) in jobs.iter().enumerate() {
        let mut operation = |role: &str, duration_s: i64, stance: usize| {
            let id = format!("p{j}/{role}");
            let (panel, role, stance) = (format!("p{j}"), role.to_owned(), format!("s{stance}"));
            operations.push(OperationSpec { id: id.clone(), panel, role, duration_s, stance, worker: None });
            id
        };
        // different places, so that two workers are never too close
        let (from, to) = (operation("apply", job.first, 2 * j), operation("level", job.second, 2 * j + 1));
        lags.push(LagSpec { from, to, min_s: job.wait, max_s: job.no_wait.then_some(job.wait + job.second) });
    }
    ProblemSpec {
        format: FORMAT.to_owned(),
        name: "flow shop".to_owned(),
        workers: vec![worker("A", "apply"), worker("B", "level")],
        walk_s: vec![vec![0; stances.len()]; stances.len()],
        stances,
        close: Vec::new(),
        operations,
        lags,
        wet: Vec::new(),
        objective: ObjectiveSpec { makespan: 1, walking: 0 },
    }
}
