//! What follows for one panel.

use super::after::{AfterPolishing, after_polishing};
use super::film::{SurveyFilm, film_at};
use crate::job::{Defect, Job, PanelRecord, SurveyStage, cant_read, substrate_of};
use crate::measure::FilmSummary;
use crate::polish::{self, Budget, DefectFacts, Finish, PanelFacts, PolishPlan, RemovalPolicy, Sensor};
use crate::units::Micrometres;
use crate::vehicle::{FeatureKind, Panel, Skip, Substrate, Surface, Template};

/// Film, budget and polish plan of one panel.
#[derive(Debug, Clone)]
pub struct PanelInsight {
    /// What lies under the paint: the job's word before the template's.
    pub substrate: Substrate,
    /// Why the gauge of the job can't read this panel, if it can't.
    pub unreadable: Option<String>,
    /// The readings that the plan rests on, in figures; none without readings that count.
    pub film: Option<FilmSummary>,
    /// The readings before polishing, those that don't count too; none without any.
    pub read: Option<SurveyFilm>,
    /// What may be taken off.
    pub budget: Budget,
    /// What will be done.
    pub polish: PolishPlan,
    /// Depth of each defect of the record, in its order.
    pub defects: Vec<DefectFacts>,
    /// What was read after polishing, where anything was.
    pub after: Option<AfterPolishing>,
}

/// Panels that are mostly edges: narrower than this on the map at their widest, in mm (our estimate).
const NARROW_MM: f32 = 90.0;

impl PanelInsight {
    /// Works one panel out.
    pub fn new(job: &Job, template: &Template, index: usize) -> Self {
        let panel = &template.panels[index];
        let blank = PanelRecord::default();
        let record = job.record(&panel.id).map_or(&blank, |r| r);
        let substrate = substrate_of(job, panel);
        let unreadable = cant_read(job, panel).map(str::to_owned);
        let suspects = job.suspects();
        let possible = |read: SurveyFilm| if unreadable.is_some() { read.impossible() } else { read };
        let read = film_at(job, record, SurveyStage::Before, &suspects).map(possible);
        let film = read.as_ref().and_then(|r| r.film.clone());
        let defects: Vec<_> = record.defects.iter().map(defect_facts).collect();
        let reason = unreadable.as_deref().or_else(|| read.as_ref()?.refusal());
        let facts = PanelFacts {
            film: film.as_ref(),
            edge: read.as_ref().and_then(|r| r.edge.as_ref()),
            unreadable_reason: reason.map(str::to_owned),
            area: panel.area,
            finish: record.finish.unwrap_or_else(|| usual_finish(panel)),
            history: record.history_on(job.date),
            removed_um: record.removals.removed(),
            measured_clear: None,
            sensor: sensor(template, index),
            narrow: is_narrow(panel),
            defects: &defects,
        };
        let mut budget = polish::budget(&facts, &job.policy);
        let polish = polish::plan(&facts, &budget, &record.hardness.expected(&job.steps), job.goal);
        budget.cautions.extend(record.coating.caution(!polish.steps.is_empty()).map(str::to_owned));
        let planned = (polish.removal, removal_upper(&polish));
        let after = after_polishing(job, record, read.as_ref(), planned, &suspects).map(|after| {
            let left = left_after(&after, &facts, &budget, &job.policy);
            AfterPolishing { left, ..after }
        });
        budget.cautions.extend(after.as_ref().map(AfterPolishing::caution));
        Self { substrate, unreadable, film, read, budget, polish, defects, after }
    }

    /// The most that the plan may take at any place of the panel, extra work at single defects included.
    pub fn removal_upper(&self) -> Micrometres {
        removal_upper(&self.polish)
    }

    /// Depth that would take out every defect that polishing can help.
    pub fn needed(&self) -> Micrometres {
        let by_removal = self.defects.iter().filter(|d| d.kind.treatment().by_removal());
        by_removal.map(|d| d.depth_um.1).max().unwrap_or(Micrometres::ZERO)
    }
}

/// The most that a plan may take at any place of its panel.
fn removal_upper(polish: &PolishPlan) -> Micrometres {
    let local = polish.local.iter().map(|l| l.removal_upper).max().unwrap_or(Micrometres::ZERO);
    polish.removal_upper + local
}

/// What may still go after a survey that followed the polishing: never more than the budget less what went, and never more than
/// the new readings allow. Nothing where none of them counts.
fn left_after(after: &AfterPolishing, facts: &PanelFacts<'_>, budget: &Budget, policy: &RemovalPolicy) -> Micrometres {
    let gone = facts.removed_um + after.went.upper;
    let edge = after.read.edge.as_ref().or(facts.edge);
    let now = PanelFacts { film: after.read.film.as_ref(), edge, removed_um: gone, ..facts.clone() };
    polish::budget(&now, policy).allowed.min(budget.allowed.saturating_sub(after.went.upper))
}

/// Whether a panel is mostly edges and body lines.
fn is_narrow(panel: &Panel) -> bool {
    panel.label.width.min(panel.label.height) < NARROW_MM
}

/// The sensor that looks through a panel, if the template has one there.
fn sensor(template: &Template, index: usize) -> Option<Sensor> {
    let of = |kind| match kind {
        FeatureKind::Radar => Some(Sensor::Radar),
        FeatureKind::Ultrasonic => Some(Sensor::Ultrasonic),
        FeatureKind::Camera => Some(Sensor::Camera),
        _ => None,
    };
    template.features.iter().filter(|f| f.panels.contains(&index)).find_map(|f| of(f.kind))
}

/// What a surface is unless the job says otherwise.
fn usual_finish(panel: &Panel) -> Finish {
    match (panel.skip, panel.surface) {
        (Some(Skip::Wrapped), _) => Finish::Wrapped,
        (Some(Skip::Matte), _) => Finish::Matte,
        (Some(Skip::FilmCovered), _) => Finish::FilmCovered,
        (Some(Skip::Absent), _) | (_, Surface::Trim) => Finish::Bare,
        (_, Surface::Paint) => Finish::ClearCoat,
        (_, Surface::Glass) => Finish::Glass,
        (_, Surface::Lamp) => Finish::Lens,
    }
}

fn defect_facts(defect: &Defect) -> DefectFacts {
    DefectFacts {
        kind: defect.kind,
        depth_um: defect.depth(),
        weight: f64::from(defect.quantity.max(1)) * defect.size_mm.mm().max(1.0).sqrt(),
        local: defect.size_mm.mm() < 150.0 && defect.quantity <= 2,
    }
}
