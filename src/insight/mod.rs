//! Everything that follows from a job: film, budget and polish plan per panel, the air, the crew problem, exposure.
//!
//! Pure functions of a job and its template; nothing here is ever saved. [`Insight`] keeps the results per panel and works out
//! again only the panels whose record, or a setting that counts for all of them, has changed.

mod cautions;
mod coating;
mod exposure;
mod floor;
mod panel;
mod polish_report;
mod polishing;
mod report;
mod spots;
mod supplies;

pub use cautions::{cautions, polish_cautions};
pub use coating::{
    OrderRow, coated_panels, coating_amount, crew_problem, is_coated, operation_id, order_rows, reason_in_words,
};
pub use exposure::{WorkerExposure, exposure_shared};
pub use floor::{CrewOrder, LEAD_S};
pub use panel::PanelInsight;
pub use polish_report::PolishingReport;
pub use polishing::{Handed, PolishDay, PolishOrder, PolishRow, PolishWork, WIPE_S, polish_order, polish_work};
pub use report::{PlanReport, report};
pub use spots::recommended_spots;
pub use supplies::{people_seconds, shop_cost, supplies};

use crate::coat::{self, AirVerdict};
use crate::job::{Job, PanelRecord};
use crate::vehicle::Template;
use std::sync::Arc;

/// What was worked out from one job.
#[derive(Debug, Clone)]
pub struct Insight {
    /// One per panel of the template, in its order.
    pub panels: Vec<PanelInsight>,
    /// What the air allows.
    pub air: AirVerdict,
    job: Arc<Job>,
    template: Arc<Template>,
    worked_out: usize,
}

impl Insight {
    /// Works everything out.
    pub fn new(job: &Arc<Job>, template: &Arc<Template>) -> Self {
        let panels: Vec<_> = (0..template.panels.len()).map(|i| PanelInsight::new(job, template, i)).collect();
        Self {
            worked_out: panels.len(),
            panels,
            air: coat::assess(&job.air, &job.product),
            job: Arc::clone(job),
            template: Arc::clone(template),
        }
    }

    /// Brings the results up to a changed job; says how many panels were worked out anew.
    pub fn refresh(&mut self, job: &Arc<Job>, template: &Arc<Template>) -> usize {
        if Arc::ptr_eq(&self.job, job) && Arc::ptr_eq(&self.template, template) {
            return 0;
        }
        if !Arc::ptr_eq(&self.template, template) || !same_settings(&self.job, job) {
            *self = Self::new(job, template);
            return self.worked_out;
        }
        let mut anew = 0;
        for (index, (panel, insight)) in template.panels.iter().zip(&mut self.panels).enumerate() {
            if !same_record(self.job.record(&panel.id), job.record(&panel.id)) {
                *insight = PanelInsight::new(job, template, index);
                anew += 1;
            }
        }
        if self.job.air != job.air || self.job.product != job.product {
            self.air = coat::assess(&job.air, &job.product);
        }
        self.job = Arc::clone(job);
        self.worked_out = anew;
        anew
    }

    /// Seconds of polishing over all panels.
    pub fn polish_seconds(&self) -> i64 {
        self.panels.iter().map(|p| p.polish.seconds).sum()
    }
}

fn same_record(before: Option<&Arc<PanelRecord>>, now: Option<&Arc<PanelRecord>>) -> bool {
    match (before, now) {
        (Some(a), Some(b)) => Arc::ptr_eq(a, b),
        (None, None) => true,
        _ => false,
    }
}

/// Whether all that counts for every panel is unchanged.
fn same_settings(a: &Job, b: &Job) -> bool {
    a.goal == b.goal && a.gauge == b.gauge && a.assurance == b.assurance && a.policy == b.policy && a.steps == b.steps
}
