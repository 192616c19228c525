//! What follows for one panel.

use super::spots::base;
use crate::job::{Defect, Job, PanelRecord, Spot};
use crate::measure::{self, FilmSummary};
use crate::polish::{
    self, AmbitionPoint, Budget, DefectFacts, Finish, Learned, PanelFacts, PolishPlan, Prospect, Sensor, size_class,
    visible_weight,
};
use crate::units::Micrometres;
use crate::vehicle::{FeatureKind, Panel, Skip, Substrate, Surface, Template};
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
    /// The readings in figures; none without readings.
    pub film: Option<FilmSummary>,
    /// What may be taken off.
    pub budget: Budget,
    /// What will be done.
    pub polish: PolishPlan,
    /// Depth of each defect of the record, in its order.
    pub defects: Vec<DefectFacts>,
    edge: Option<FilmSummary>,
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
    pub(super) fn new(job: &Job, template: &Template, index: usize, learned: &Learned) -> Self {
        let panel = &template.panels[index];
        let blank = PanelRecord::default();
        let record = job.record(&panel.id).map_or(&blank, |r| r);
        let substrate = record.substrate.unwrap_or(panel.substrate);
        let unreadable = job.gauge.principle.refusal(base(substrate)).map(str::to_owned);
        let finish = record.finish.unwrap_or_else(|| usual_finish(panel));
        let film = film(job, record);
        let edge = thinnest_edge(job, record);
        let defects: Vec<_> = record.defects.iter().map(|d| defect_facts(d, learned)).collect();
        let known = Known { film: film.as_ref(), edge: edge.as_ref(), unreadable: unreadable.as_ref(), finish };
        let facts = facts(known, record, template, index, &defects);
        let budget = polish::budget(&facts, &job.policy);
        let prospect = Prospect::new(&facts, &budget, &learned.steps);
        let polish = prospect.plan(&facts, &budget, &learned.steps, job.goal);
        Self {
            substrate,
            finish,
            unreadable,
            film,
            budget,
            polish,
            defects,
            edge,
            prospect: Arc::new(prospect),
            spots: OnceLock::new(),
            ambition: OnceLock::new(),
        }
    }

    /// Plans again after nothing but the goal has changed.
    pub(super) fn replan(&mut self, job: &Job, template: &Template, index: usize, learned: &Learned) {
        let polish = self.with_facts(job, template, index, |facts| {
            self.prospect.plan(facts, &self.budget, &learned.steps, job.goal)
        });
        self.polish = polish;
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
                let budget = |spot: &Spot| Some(polish::budget_at(facts, &place(job, spot)?, &job.policy));
                record.spots.iter().map(budget).collect()
            })
        })
    }

    /// Calls something with the facts of this panel.
    fn with_facts<T>(&self, job: &Job, template: &Template, index: usize, f: impl FnOnce(&PanelFacts<'_>) -> T) -> T {
        let blank = PanelRecord::default();
        let record = job.record(&template.panels[index].id).map_or(&blank, |r| r);
        let (film, edge, unreadable) = (self.film.as_ref(), self.edge.as_ref(), self.unreadable.as_ref());
        f(&facts(Known { film, edge, unreadable, finish: self.finish }, record, template, index, &self.defects))
    }

    /// The most that the plan may take at any place of the panel, extra work at single defects included.
    pub fn removal_upper(&self) -> Micrometres {
        let local = self.polish.local.iter().map(|l| l.removal_upper).max().unwrap_or(Micrometres::ZERO);
        self.polish.removal_upper + local
    }

    /// Depth that would take out every defect that polishing can help.
    pub fn needed(&self) -> Micrometres {
        let by_removal = self.defects.iter().filter(|d| d.kind.treatment().by_removal());
        by_removal.map(|d| d.depth_um.1).max().unwrap_or(Micrometres::ZERO)
    }
}

/// What was worked out of a panel before its budget.
struct Known<'a> {
    film: Option<&'a FilmSummary>,
    edge: Option<&'a FilmSummary>,
    unreadable: Option<&'a String>,
    finish: Finish,
}

fn facts<'a>(
    known: Known<'a>,
    record: &PanelRecord,
    template: &Template,
    index: usize,
    defects: &'a [DefectFacts],
) -> PanelFacts<'a> {
    let panel = &template.panels[index];
    PanelFacts {
        film: known.film,
        edge: known.edge,
        unreadable_reason: known.unreadable.cloned(),
        area: panel.area,
        finish: known.finish,
        history: record.history,
        removed_um: Micrometres::ZERO,
        measured_clear: None,
        sensor: sensor(template, index),
        narrow: is_narrow(panel),
        level_at_most: record.level_at_most,
        defects,
    }
}

/// The readings on the open surface of a panel in figures.
fn film(job: &Job, record: &PanelRecord) -> Option<FilmSummary> {
    let spots = record.spots.iter().filter(|s| !s.edge);
    let spots: Vec<Vec<Micrometres>> = spots.map(|s| s.readings.iter().map(|r| r.thickness_um).collect()).collect();
    let slices: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    measure::summarise(&slices, &job.gauge, job.assurance)
}

/// One place in figures.
fn place(job: &Job, spot: &Spot) -> Option<FilmSummary> {
    let readings: Vec<Micrometres> = spot.readings.iter().map(|r| r.thickness_um).collect();
    measure::summarise_place(&readings, &job.gauge, job.assurance.confidence)
}

/// The thinnest edge that was read, in figures.
fn thinnest_edge(job: &Job, record: &PanelRecord) -> Option<FilmSummary> {
    record.spots.iter().filter(|s| s.edge).filter_map(|s| place(job, s)).min_by_key(|edge| edge.lower)
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
    let usual = defect.kind.depth_range();
    let depth_um = defect.depth_um.unwrap_or_else(|| learned.depth(defect.kind, (usual.low, usual.high)));
    DefectFacts {
        kind: defect.kind,
        depth_um,
        weight: visible_weight(defect.quantity.max(1), size_class(defect.size_mm)),
        local: defect.size_mm.mm() < 150.0 && defect.quantity <= 2,
    }
}
