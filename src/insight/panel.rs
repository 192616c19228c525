//! What follows for one panel.

use super::after::{AfterPolishing, after_polishing};
use super::common::Common;
use super::film::{SurveyFilm, film_at, place};
use crate::job::{Defect, Job, PanelRecord, Spot, SurveyStage, cant_read, substrate_of};
use crate::measure::FilmSummary;
use crate::polish::{
    self, AmbitionPoint, Budget, DefectFacts, Finish, Learned, PaintHardness, PanelFacts, PolishPlan, PolishStep,
    Prospect, RemovalPolicy, Sensor, size_class, visible_weight,
};
use crate::units::Micrometres;
use crate::vehicle::{FeatureKind, Panel, Skip, Substrate, Surface, Template};
use std::borrow::Cow;
use std::sync::{Arc, OnceLock};

/// Film, budget and polish plan of one panel.
#[derive(Debug, Clone)]
pub struct PanelInsight {
    /// What lies under the paint: the job's word before the template's.
    pub substrate: Substrate,
    /// What the surface is: the job's word before the template's.
    pub finish: Finish,
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
    /// To mind beside what the budget says.
    also: Vec<String>,
    /// What was read after polishing, where anything was.
    pub after: Option<AfterPolishing>,
    /// What could be done under any goal.
    prospect: Arc<Prospect>,
    spots: OnceLock<Vec<Option<Budget>>>,
    ambition: OnceLock<Vec<AmbitionPoint>>,
}

/// Panels that are mostly edges: narrower than this on the map at their widest, in mm (our estimate).
const NARROW_MM: f32 = 90.0;

/// Shares of the defects that the price of ambition is worked out for.
pub const AMBITIONS: [f64; 20] =
    [0.0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

impl PanelInsight {
    /// Works one panel out.
    pub(super) fn new(job: &Job, template: &Template, index: usize, common: &Common) -> Self {
        let learned = &*common.learned;
        let panel = &template.panels[index];
        let blank = PanelRecord::default();
        let record = job.record(&panel.id).map_or(&blank, |r| r);
        let substrate = substrate_of(job, panel);
        let unreadable = cant_read(job, panel).map(str::to_owned);
        let possible = |read: SurveyFilm| if unreadable.is_some() { read.impossible() } else { read };
        let read = film_at(job, record, SurveyStage::Before, &common.suspects).map(possible);
        let finish = record.finish.unwrap_or_else(|| usual_finish(panel));
        let defects: Vec<_> = record.defects.iter().map(|d| defect_facts(d, learned)).collect();
        let known = Known { read: read.as_ref(), unreadable: unreadable.as_ref(), finish };
        let facts = facts(known, job, template, index, &defects);
        let budget = polish::budget(&facts, &job.policy);
        let steps = steps(record, learned);
        let prospect = Prospect::new(&facts, &budget, &steps);
        let polish = prospect.plan(&facts, &budget, &steps, job.goal);
        let mut panel = Self {
            substrate,
            finish,
            unreadable,
            film: read.as_ref().and_then(|r| r.film.clone()),
            read,
            budget,
            polish,
            defects,
            also: Vec::new(),
            after: None,
            prospect: Arc::new(prospect),
            spots: OnceLock::new(),
            ambition: OnceLock::new(),
        };
        panel.look_after(job, template, index, common);
        panel
    }

    /// Plans again after nothing but the goal has changed.
    pub(super) fn replan(&mut self, job: &Job, template: &Template, index: usize, common: &Common) {
        let blank = PanelRecord::default();
        let steps = steps(job.record(&template.panels[index].id).map_or(&blank, |r| r), &common.learned);
        let plan = |facts: &PanelFacts<'_>| self.prospect.plan(facts, &self.budget, &steps, job.goal);
        self.polish = self.with_facts(job, template, index, plan);
        self.look_after(job, template, index, common);
    }

    /// What was read after polishing, beside the plan, and what the plan makes worth minding.
    fn look_after(&mut self, job: &Job, template: &Template, index: usize, common: &Common) {
        let Some(record) = job.record(&template.panels[index].id) else { return };
        let planned = (self.polish.removal, removal_upper(&self.polish));
        let after = after_polishing(job, record, self.read.as_ref(), planned, &common.suspects).map(|after| {
            let left = self.with_facts(job, template, index, |f| left_after(&after, f, &self.budget, &job.policy));
            AfterPolishing { left, ..after }
        });
        let worked = !self.polish.steps.is_empty();
        let coating = record.coating.caution(worked).map(str::to_owned);
        self.also = coating.into_iter().chain(after.as_ref().map(AfterPolishing::caution)).collect();
        self.after = after;
    }

    /// Everything to mind while this panel is polished.
    pub fn cautions(&self) -> impl Iterator<Item = &str> {
        self.budget.cautions.iter().chain(&self.also).map(String::as_str)
    }

    /// What each of [`AMBITIONS`] costs on this panel; worked out when first asked for.
    pub(super) fn ambition(&self, job: &Job, template: &Template, index: usize) -> &[AmbitionPoint] {
        self.ambition.get_or_init(|| {
            self.with_facts(job, template, index, |facts| self.prospect.ambition(facts, &self.budget, &AMBITIONS))
        })
    }

    /// What may go at each spot of the record, in its order, from the readings there alone; worked out when first asked for.
    pub(super) fn spot_budgets(&self, job: &Job, template: &Template, index: usize) -> &[Option<Budget>] {
        self.spots.get_or_init(|| {
            let Some(record) = job.record(&template.panels[index].id) else { return Vec::new() };
            self.with_facts(job, template, index, |facts| {
                let survey = self.read.as_ref().map_or(0, |r| r.survey);
                let budget = |spot: &Spot| Some(polish::budget_at(facts, &place(job, spot, survey)?, &job.policy));
                record.spots.iter().map(budget).collect()
            })
        })
    }

    /// Calls something with the facts of this panel.
    fn with_facts<T>(&self, job: &Job, template: &Template, index: usize, f: impl FnOnce(&PanelFacts<'_>) -> T) -> T {
        let known = Known { read: self.read.as_ref(), unreadable: self.unreadable.as_ref(), finish: self.finish };
        f(&facts(known, job, template, index, &self.defects))
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

/// What was worked out of a panel before its budget.
struct Known<'a> {
    read: Option<&'a SurveyFilm>,
    unreadable: Option<&'a String>,
    finish: Finish,
}

fn facts<'a>(
    known: Known<'a>,
    job: &Job,
    template: &Template,
    index: usize,
    defects: &'a [DefectFacts],
) -> PanelFacts<'a> {
    let panel = &template.panels[index];
    let blank = PanelRecord::default();
    let record = job.record(&panel.id).map_or(&blank, |r| r);
    let refusal = known.unreadable.map(String::as_str).or_else(|| known.read?.refusal());
    PanelFacts {
        film: known.read.and_then(|r| r.film.as_ref()),
        edge: known.read.and_then(|r| r.edge.as_ref()),
        unreadable_reason: refusal.map(str::to_owned),
        area: panel.area,
        finish: known.finish,
        history: record.history_on(job.date),
        removed_um: record.removals.removed(),
        measured_clear: None,
        sensor: sensor(template, index),
        narrow: is_narrow(panel),
        level_at_most: record.level_at_most,
        defects,
    }
}

/// The steps of the shop as test spots showed them, for paint of the hardness of this panel.
fn steps<'a>(record: &PanelRecord, learned: &'a Learned) -> Cow<'a, [PolishStep]> {
    match record.hardness {
        PaintHardness::Usual => Cow::Borrowed(&learned.steps),
        other => Cow::Owned(other.expected(&learned.steps)),
    }
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

fn defect_facts(defect: &Defect, learned: &Learned) -> DefectFacts {
    let usual = defect.depth();
    let depth_um = if defect.depth_um.is_some() { usual } else { learned.depth(defect.kind, usual) };
    DefectFacts {
        kind: defect.kind,
        depth_um,
        weight: visible_weight(defect.quantity.max(1), size_class(defect.size_mm)),
        local: defect.size_mm.mm() < 150.0 && defect.quantity <= 2,
    }
}
