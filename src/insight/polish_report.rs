//! The order of polishing, its days and its materials, for `plan --json` and for paper. No prices: they are for the shop only.

#![expect(missing_docs, reason = "fields of an output format: the names say it, and units stand in them")]

use super::exposure::WorkerExposure;
use super::floor::CrewOrder;
use super::polishing::{PolishWork, polish_order};
use super::report::{PlanReport, minutes, rounded};
use super::{Insight, supplies};
use crate::crew::{PlanFile, ProblemSpec};
use crate::job::Job;
use crate::vehicle::{Naming, Template};
use serde::Serialize;

/// Who polishes what when.
#[derive(Debug, Clone, Serialize)]
pub struct PolishingReport {
    pub crew_problem: ProblemSpec,
    pub crew_plan: Option<PlanFile>,
    pub order: Vec<PolishRowReport>,
    pub days: Vec<DayReport>,
    pub handed: Vec<HandedReport>,
    pub materials: Vec<MaterialsReport>,
}

/// One row of the order.
#[derive(Debug, Clone, Serialize)]
pub struct PolishRowReport {
    pub worker: String,
    pub panel: String,
    pub name: String,
    pub step: String,
    pub local: bool,
    pub day: usize,
    pub start_s: i64,
    pub end_s: i64,
}

/// One day of it.
#[derive(Debug, Clone, Serialize)]
pub struct DayReport {
    pub minutes: f64,
    pub exposure: Vec<WorkerExposure>,
}

/// A panel handed over so that nobody passes an action value.
#[derive(Debug, Clone, Serialize)]
pub struct HandedReport {
    pub panel: String,
    pub to: String,
}

/// What one step uses up.
#[derive(Debug, Clone, Serialize)]
pub struct MaterialsReport {
    pub step: String,
    pub area_m2: f64,
    pub pads: u32,
    pub sheets: u32,
    pub polish_ml: f64,
    pub towels: u32,
}

impl PolishingReport {
    /// Without an order.
    pub(super) fn new(job: &Job, template: &Template, insight: &Insight, work: &PolishWork) -> Self {
        let used = supplies(job, template, insight);
        let material = |s: crate::polish::StepMaterials| MaterialsReport {
            step: s.name,
            area_m2: rounded(s.area.m2(), 2),
            pads: s.pads,
            sheets: s.sheets,
            polish_ml: rounded(s.polish.ml(), 0),
            towels: s.towels,
        };
        Self {
            crew_problem: (*work.problem).clone(),
            crew_plan: None,
            order: Vec::new(),
            days: Vec::new(),
            handed: Vec::new(),
            materials: used.into_iter().map(material).collect(),
        }
    }
}

impl PlanReport {
    /// Adds the order of polishing; the exposure is then that of the people who really hold the machines.
    #[must_use]
    pub fn with_polishing(mut self, job: &Job, template: &Template, work: &PolishWork, found: &CrewOrder) -> Self {
        let order = polish_order(job, template, work, found);
        let name = |panel: usize| template.panels[panel].name(Naming::Uk);
        let row = |(index, row): (usize, &super::PolishRow)| PolishRowReport {
            worker: job.crew[row.worker].name.clone(),
            panel: template.panels[row.panel].id.to_string(),
            name: name(row.panel),
            step: row.name.clone(),
            local: row.local,
            day: 1 + order.days.iter().position(|d| d.rows.contains(&index)).unwrap_or(0),
            start_s: row.at.start,
            end_s: row.at.end,
        };
        self.polishing = PolishingReport {
            crew_plan: Some((*found.plan).clone()),
            order: order.rows.iter().enumerate().map(row).collect(),
            days: order
                .days
                .iter()
                .map(|d| DayReport { minutes: minutes(d.at.duration()), exposure: d.workers.clone() })
                .collect(),
            handed: order
                .handed
                .iter()
                .map(|h| HandedReport { panel: name(h.panel), to: job.crew[h.to].name.clone() })
                .collect(),
            ..self.polishing
        };
        self.exposure = order.in_one_day;
        self
    }
}
