//! Everything that follows from a job: film, budget and polish plan per panel, the air, the crew problem, exposure.
//!
//! Pure functions of a job and its template; nothing here is ever saved. [`Insight`] keeps the results per panel and works out
//! again only the panels whose record, or a setting that counts for all of them, has changed.

mod after;
mod ambition;
mod cautions;
mod choices;
mod coating;
mod common;
mod exposure;
mod film;
mod floor;
mod lap;
mod neighbours;
mod open_points;
mod panel;
mod polish_report;
mod polishing;
mod readings;
mod report;
mod route;
mod spots;
mod supplies;
mod visit;

pub use after::{AfterPolishing, Went};
pub use ambition::CarAmbition;
pub use cautions::{FIRST_CAUTION, cautions, coating_cautions, polish_cautions};
pub use choices::{choice_notes, levelling_note, roles_by_experience};
pub use coating::{
    OrderRow, coated_panels, coating_amount, crew_problem, free_problem, is_coated, operation_id, order_rows,
    reason_in_words,
};
pub use exposure::{WorkerExposure, exposure_shared, standing_in_words};
pub use film::{SurveyFilm, place};
pub use floor::{CrewOrder, LEAD_S};
pub use lap::{LapKind, LapSpot, LapStand, lap_stands, spoken};
pub use open_points::{OpenPoints, mirror_of};
pub use panel::{AMBITIONS, PanelInsight};
pub use polish_report::PolishingReport;
pub use polishing::{Handed, PolishDay, PolishOrder, PolishRow, PolishWork, WIPE_S, polish_order, polish_work};
pub use readings::add_readings;
pub use report::{PlanReport, report};
pub use route::{SAME_PLACE_MM, Stop, metres_walked, spots_at, survey_stops};
pub use spots::{recommended_places, recommended_spots};
pub use supplies::{people_seconds, shop_cost, supplies};
pub use visit::{EarlierVisit, earlier_visits, next_visit};

use crate::coat::{self, AirVerdict};
use crate::job::{Job, PanelRecord};
use crate::measure::MeasuredRemoval;
use crate::polish::{Budget, Learned, SeamDifference};
use crate::vehicle::Template;
use crate::words::{Language, language};
use after::over_vehicle;
use common::Common;
use neighbours::differences;
use open_points::{of_panel, open_points};
use std::sync::Arc;

/// What was worked out from one job.
#[derive(Debug, Clone)]
pub struct Insight {
    /// One per panel of the template, in its order.
    pub panels: Vec<PanelInsight>,
    /// What the readings suggest.
    pub points: OpenPoints,
    /// Mean change over the panels read before and after polishing; none with fewer than two.
    pub removal: Option<MeasuredRemoval>,
    /// What test spots teach about this paint.
    pub learned: Arc<Learned>,
    /// Seams across which the finish would visibly differ, by the places of their panels.
    pub differences: Vec<SeamDifference>,
    /// What the air allows.
    pub air: AirVerdict,
    common: Common,
    job: Arc<Job>,
    template: Arc<Template>,
    /// The language of its texts.
    language: Language,
    worked_out: usize,
}

impl Insight {
    /// Works everything out.
    pub fn new(job: &Arc<Job>, template: &Arc<Template>) -> Self {
        let common = Common::new(job, template);
        let panels: Vec<_> = (0..template.panels.len()).map(|i| PanelInsight::new(job, template, i, &common)).collect();
        Self {
            worked_out: panels.len(),
            language: language(),
            points: open_points(job, template, &panels, &common),
            removal: over_vehicle(job, template, &panels, &common.suspects),
            differences: differences(template, &panels),
            panels,
            learned: Arc::clone(&common.learned),
            common,
            air: coat::assess(&job.air, &job.product, job.patch.as_ref()),
            job: Arc::clone(job),
            template: Arc::clone(template),
        }
    }

    /// Brings the results up to a changed job; says how many panels were worked out anew.
    pub fn refresh(&mut self, job: &Arc<Job>, template: &Arc<Template>) -> usize {
        let same_language = self.language == language();
        if Arc::ptr_eq(&self.job, job) && Arc::ptr_eq(&self.template, template) && same_language {
            return 0;
        }
        if !Arc::ptr_eq(&self.template, template) || !same_settings(&self.job, job) || !same_language {
            *self = Self::new(job, template);
            return self.worked_out;
        }
        let mut changed = Vec::new();
        let mut read_after = false;
        let other_goal = self.job.goal != job.goal;
        for (index, (panel, insight)) in template.panels.iter().zip(&mut self.panels).enumerate() {
            if !same_record(self.job.record(&panel.id), job.record(&panel.id)) {
                read_after |= insight.after.is_some();
                *insight = PanelInsight::new(job, template, index, &self.common);
                read_after |= insight.after.is_some();
                changed.push(index);
            } else if other_goal {
                insight.replan(job, template, index, &self.common);
                changed.push(index);
            }
        }
        if !changed.is_empty() {
            self.differences = differences(template, &self.panels);
        }
        if self.job.air != job.air || self.job.product != job.product || self.job.patch != job.patch {
            self.air = coat::assess(&job.air, &job.product, job.patch.as_ref());
        }
        for &index in &changed {
            for at in std::iter::once(index).chain(self.common.mirrors[index]) {
                self.points.panels[at] = of_panel(job, template, &self.panels, at, &self.common);
            }
        }
        if read_after {
            self.removal = over_vehicle(job, template, &self.panels, &self.common.suspects);
        }
        self.job = Arc::clone(job);
        self.worked_out = changed.len();
        self.worked_out
    }

    /// Seconds of polishing over all panels.
    pub fn polish_seconds(&self) -> i64 {
        self.panels.iter().map(|p| p.polish.seconds).sum()
    }

    /// What may go at each spot of a panel, in the order of its record; none where a spot has no reading.
    pub fn spot_budgets(&self, index: usize) -> &[Option<Budget>] {
        self.panels[index].spot_budgets(&self.job, &self.template, index)
    }

    /// What more ambition costs over the whole vehicle.
    pub fn ambition(&self) -> Vec<CarAmbition> {
        ambition::over_all(&self.job, &self.template, &self.panels)
    }

    /// The same for the goal of the job.
    pub fn ambition_now(&self) -> CarAmbition {
        ambition::now(&self.job, &self.template, &self.panels)
    }
}

fn same_record(before: Option<&Arc<PanelRecord>>, now: Option<&Arc<PanelRecord>>) -> bool {
    match (before, now) {
        (Some(a), Some(b)) => Arc::ptr_eq(a, b),
        (None, None) => true,
        _ => false,
    }
}

/// Whether all that counts for every panel is unchanged; the goal counts for the plan alone and is looked at apart.
fn same_settings(a: &Job, b: &Job) -> bool {
    let checks = |job: &Job| job.surveys.iter().map(|s| (s.stage, s.checks.clone())).collect::<Vec<_>>();
    a.date == b.date
        && a.gauge == b.gauge
        && a.assurance == b.assurance
        && a.policy == b.policy
        && a.steps == b.steps
        && a.test_spots == b.test_spots
        && checks(a) == checks(b)
}
