//! What counts for every panel of a job and is worked out once for all of them.

use super::open_points::mirrors;
use crate::job::{Job, Suspects};
use crate::polish::{Learned, learn};
use crate::vehicle::Template;
use std::sync::Arc;

/// What the figures of every panel rest on beside its own record.
#[derive(Debug, Clone)]
pub(super) struct Common {
    /// What test spots teach about this paint.
    pub learned: Arc<Learned>,
    /// Readings that don't count.
    pub suspects: Suspects,
    /// The panel in the same place on the other side, for each panel.
    pub mirrors: Vec<Option<usize>>,
}

impl Common {
    /// Works it out.
    pub(super) fn new(job: &Job, template: &Template) -> Self {
        let learned = Arc::new(learn(&job.steps, &job.test_spots));
        Self { learned, suspects: job.suspects(), mirrors: mirrors(template) }
    }
}
