//! The whole plan as one object, for `plan --json` and for paper.

#![expect(missing_docs, reason = "fields of an output format: the names say it, and units stand in them")]

use super::cautions::cautions;
use super::coating::{coating_amount, order_rows};
use super::exposure::WorkerExposure;
use super::floor::CrewOrder;
use super::polish_report::PolishingReport;
use super::polishing::polish_work;
use super::{Insight, PanelInsight};
use crate::crew::{PlanFile, ProblemSpec};
use crate::finding::Finding;
use crate::job::Job;
use crate::measure::{FilmSummary, MeasuredRemoval, PairedChange, Visibility};
use crate::say;
use crate::vehicle::{Naming, Panel, Template};
use serde::Serialize;

/// Everything planned for a job. Field names are fixed; see README.
#[derive(Debug, Clone, Serialize)]
pub struct PlanReport {
    pub job: String,
    pub vehicle: String,
    pub template: String,
    pub panels: Vec<PanelReport>,
    pub coating: CoatingReport,
    pub polishing: PolishingReport,
    /// Of everybody, all polishing in one day.
    pub exposure: Vec<WorkerExposure>,
    pub polish_minutes: f64,
    pub gauge_findings: Vec<FindingReport>,
    pub removed_um: Option<RemovedReport>,
    pub open_points: Vec<String>,
    pub cautions: Vec<String>,
}

/// One panel.
#[derive(Debug, Clone, Serialize)]
pub struct PanelReport {
    pub id: String,
    pub name: String,
    pub area_m2: f64,
    pub substrate: &'static str,
    pub film_um: Option<FilmReport>,
    pub clear_um: Option<ClearReport>,
    pub budget_um: f64,
    pub limits: Vec<LimitReport>,
    pub refused: Option<String>,
    pub defects: usize,
    pub polish: PolishReport,
    pub findings: Vec<FindingReport>,
    pub earlier_visits_um: f64,
    pub after_um: Option<AfterReport>,
}

/// Something that the readings suggest.
#[derive(Debug, Clone, Serialize)]
pub struct FindingReport {
    pub code: &'static str,
    pub severity: String,
    pub cause: String,
    pub action: String,
}

/// A change with its interval of 95 % confidence.
#[derive(Debug, Clone, Serialize)]
pub struct RemovedReport {
    pub n: usize,
    pub mean: f64,
    pub low: f64,
    pub high: f64,
    pub shown: bool,
}

/// A panel after polishing.
#[derive(Debug, Clone, Serialize)]
#[expect(clippy::struct_field_names, reason = "fields of an output format carry their unit")]
pub struct AfterReport {
    pub film_um: Option<FilmReport>,
    pub removed_um: Option<RemovedReport>,
    pub counts_um: f64,
    pub left_um: f64,
}

/// The readings of a panel.
#[derive(Debug, Clone, Serialize)]
pub struct FilmReport {
    pub n: usize,
    pub mean: f64,
    pub sd: Option<f64>,
    pub lower: f64,
    pub range: f64,
    pub standard_uncertainty: f64,
    pub degrees_of_freedom: Option<f64>,
}

impl FilmReport {
    fn of(film: &FilmSummary) -> Self {
        Self {
            n: film.n,
            mean: rounded(film.mean, 2),
            sd: film.sd.map(|sd| rounded(sd, 2)),
            lower: rounded(film.lower.um(), 2),
            range: rounded(film.range(), 2),
            standard_uncertainty: rounded(film.standard_uncertainty, 2),
            degrees_of_freedom: Some(film.degrees_of_freedom).filter(|dof| dof.is_finite()).map(|dof| rounded(dof, 1)),
        }
    }
}

impl FindingReport {
    fn of(finding: &Finding) -> Self {
        Self {
            code: finding.code.id(),
            severity: finding.severity().to_string(),
            cause: finding.cause.clone(),
            action: finding.action.clone(),
        }
    }
}

impl RemovedReport {
    fn of(removal: &MeasuredRemoval) -> Self {
        let PairedChange { n, mean, low, high, .. } = removal.change;
        let shown = removal.visibility == Visibility::Shown;
        Self { n, mean: rounded(mean, 2), low: rounded(low, 2), high: rounded(high, 2), shown }
    }
}

/// The clear coat of a panel.
#[derive(Debug, Clone, Serialize)]
pub struct ClearReport {
    pub lower: f64,
    pub basis: String,
}

/// One limit of the budget.
#[derive(Debug, Clone, Serialize)]
pub struct LimitReport {
    pub what: String,
    pub um: f64,
    pub source: String,
}

/// What will be done to a panel.
#[derive(Debug, Clone, Serialize)]
pub struct PolishReport {
    pub level: String,
    pub steps: Vec<StepReport>,
    pub removal_um: f64,
    pub removal_upper_um: f64,
    pub minutes: f64,
    pub correction: f64,
    pub held_at_most: Option<String>,
    pub needed_um: f64,
    pub for_customer: String,
    pub why: Vec<String>,
    pub stays: Vec<String>,
}

/// One polishing step.
#[derive(Debug, Clone, Serialize)]
pub struct StepReport {
    pub name: String,
    pub passes: u32,
    pub removal_um: f64,
}

/// The coating.
#[derive(Debug, Clone, Serialize)]
pub struct CoatingReport {
    pub product: String,
    pub go: bool,
    pub stops: Vec<String>,
    pub notices: Vec<String>,
    pub dew_point_c: f64,
    pub surface_margin_c: f64,
    pub window_s: WindowReport,
    pub coating_ml: f64,
    pub crew_problem: ProblemSpec,
    pub crew_plan: Option<PlanFile>,
    pub order: Vec<OrderReport>,
    pub late_chance: Option<f64>,
    pub late_chance_error: Option<f64>,
    pub jumps: Option<u32>,
    pub changes_of_side: Option<u32>,
}

/// Shortest and longest wait before levelling.
#[derive(Debug, Clone, Copy, Serialize)]
pub struct WindowReport {
    pub min: i64,
    pub max: i64,
}

/// One row of the order.
#[derive(Debug, Clone, Serialize)]
pub struct OrderReport {
    pub worker: String,
    pub role: &'static str,
    pub panel: String,
    pub name: String,
    pub layer: u32,
    pub start_s: i64,
    pub end_s: i64,
}

/// Puts everything together; `order` is the order of coating, none where no valid one is known. The order of polishing is added by
/// [`PlanReport::with_polishing`].
pub fn report(
    job: &Job,
    template: &Template,
    insight: &Insight,
    problem: &ProblemSpec,
    order: Option<&CrewOrder>,
) -> PlanReport {
    let work = polish_work(job, template, insight);
    PlanReport {
        job: job.name.clone(),
        vehicle: job.vehicle.description.clone(),
        template: template.id.clone(),
        panels: (0..template.panels.len()).map(|i| panel_report(job, &template.panels[i], insight, i)).collect(),
        coating: coating_report(job, template, insight, problem, order),
        exposure: super::exposure_shared(job, &work),
        polishing: PolishingReport::new(job, template, insight, &work),
        polish_minutes: minutes(insight.polish_seconds()),
        gauge_findings: insight.points.gauge.iter().map(FindingReport::of).collect(),
        removed_um: insight.removal.as_ref().map(RemovedReport::of),
        open_points: open_points(template, insight),
        cautions: cautions(job, template, insight),
    }
}

fn panel_report(job: &Job, panel: &Panel, all: &Insight, index: usize) -> PanelReport {
    let insight = &all.panels[index];
    let PanelInsight { film, budget, polish, .. } = insight;
    let record = job.record(&panel.id);
    let defect_name =
        |index: usize| record.and_then(|r| r.defects.get(index)).map_or(say!("insight-defect"), |d| d.kind.name());
    PanelReport {
        id: panel.id.to_string(),
        name: panel.name(Naming::Uk),
        area_m2: rounded(panel.area.m2(), 3),
        substrate: insight.substrate.name(),
        film_um: film.as_ref().map(FilmReport::of),
        clear_um: budget
            .clear
            .as_ref()
            .map(|c| ClearReport { lower: rounded(c.lower.um(), 2), basis: c.basis.to_string() }),
        budget_um: budget.allowed.um(),
        limits: budget
            .limits
            .iter()
            .map(|l| LimitReport { what: l.what.clone(), um: rounded(l.um.um(), 2), source: l.source.to_owned() })
            .collect(),
        refused: budget.refused.clone(),
        defects: insight.defects.len(),
        polish: PolishReport {
            level: polish.level.to_string(),
            steps: polish
                .steps
                .iter()
                .map(|s| StepReport { name: s.name.clone(), passes: s.passes, removal_um: rounded(s.removal.um(), 2) })
                .collect(),
            removal_um: polish.removal.um(),
            removal_upper_um: insight.removal_upper().um(),
            minutes: minutes(polish.seconds),
            correction: rounded(polish.correction, 3),
            held_at_most: record.and_then(|r| r.level_at_most).map(|level| level.to_string()),
            needed_um: rounded(insight.needed().um(), 2),
            for_customer: polish.for_customer.clone(),
            why: polish.why.clone(),
            stays: polish.stays.iter().map(|s| format!("{}: {}", defect_name(s.defect), s.reason)).collect(),
        },
        findings: all.points.panels[index].iter().map(FindingReport::of).collect(),
        earlier_visits_um: record.map_or(0.0, |r| r.removals.removed().um()),
        after_um: insight.after.as_ref().map(|after| AfterReport {
            film_um: after.read.film.as_ref().map(FilmReport::of),
            removed_um: after.removal.as_ref().map(RemovedReport::of),
            counts_um: rounded(after.went.upper.um(), 2),
            left_um: after.left.um(),
        }),
    }
}

fn coating_report(
    job: &Job,
    template: &Template,
    insight: &Insight,
    problem: &ProblemSpec,
    order: Option<&CrewOrder>,
) -> CoatingReport {
    let air = &insight.air;
    let rows = order.map(|o| order_rows(job, template, problem, &o.plan)).unwrap_or_default();
    let lateness = order.and_then(|o| o.lateness.as_ref());
    CoatingReport {
        product: job.product.name.clone(),
        go: air.go,
        stops: air.stops.clone(),
        notices: air.notices.clone(),
        dew_point_c: rounded(air.dew_point.c(), 2),
        surface_margin_c: rounded(air.margin.k(), 2),
        window_s: WindowReport { min: air.window.min_s, max: air.window.max_s },
        coating_ml: rounded(coating_amount(job, template).ml(), 1),
        crew_problem: problem.clone(),
        crew_plan: order.map(|o| (*o.plan).clone()),
        order: rows
            .iter()
            .map(|row| OrderReport {
                worker: job.crew[row.worker].name.clone(),
                role: row.role.id(),
                panel: template.panels[row.panel].id.to_string(),
                name: template.panels[row.panel].name(Naming::Uk),
                layer: row.layer,
                start_s: row.at.start,
                end_s: row.at.end,
            })
            .collect(),
        late_chance: lateness.map(|l| l.late_chance),
        late_chance_error: lateness.map(|l| l.standard_error),
        jumps: order.and_then(|o| o.habits).map(|h| h.jumps),
        changes_of_side: order.and_then(|o| o.habits).map(|h| h.side_changes),
    }
}

/// What somebody has to look at or to say before polishing begins: contradictory tests, and seams where the finish will differ.
fn open_points(template: &Template, insight: &Insight) -> Vec<String> {
    let name = |at: usize| template.panels[at].name(Naming::Uk);
    let seams = insight.differences.iter().map(|d| {
        let (one, other) = (name(d.panels.0), name(d.panels.1));
        say!("insight-differ", one = one, other = other, why = d.cause.as_str())
    });
    insight.learned.notes.iter().cloned().chain(seams).collect()
}

pub(super) fn minutes(seconds: i64) -> f64 {
    rounded(seconds as f64 / 60.0, 1)
}

pub(super) fn rounded(value: f64, digits: i32) -> f64 {
    let scale = 10f64.powi(digits);
    (value * scale).round() / scale
}
