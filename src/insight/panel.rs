//! What follows for one panel.

use crate::job::{Defect, Job, PanelRecord, cant_read, substrate_of};
use crate::measure::{self, FilmSummary};
use crate::polish::{self, Budget, DefectFacts, Finish, PanelFacts, PolishPlan, Sensor};
use crate::units::Micrometres;
use crate::vehicle::{FeatureKind, Panel, Skip, Substrate, Surface, Template};

/// Film, budget and polish plan of one panel.
#[derive(Debug, Clone)]
pub struct PanelInsight {
    /// What lies under the paint: the job's word before the template's.
    pub substrate: Substrate,
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
        let film = film(job, record);
        let edge = thinnest_edge(job, record);
        let defects: Vec<_> = record.defects.iter().map(defect_facts).collect();
        let facts = PanelFacts {
            film: film.as_ref(),
            edge: edge.as_ref(),
            unreadable_reason: unreadable.clone(),
            area: panel.area,
            finish: record.finish.unwrap_or_else(|| usual_finish(panel)),
            history: record.history,
            removed_um: Micrometres::ZERO,
            measured_clear: None,
            sensor: sensor(template, index),
            narrow: is_narrow(panel),
            defects: &defects,
        };
        let budget = polish::budget(&facts, &job.policy);
        let polish = polish::plan(&facts, &budget, &job.steps, job.goal);
        Self { substrate, unreadable, film, budget, polish, defects }
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

/// The readings on the open surface of a panel in figures.
fn film(job: &Job, record: &PanelRecord) -> Option<FilmSummary> {
    let spots = record.spots.iter().filter(|s| !s.edge);
    let spots: Vec<Vec<Micrometres>> = spots.map(|s| s.readings.iter().map(|r| r.thickness_um).collect()).collect();
    let slices: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    measure::summarise(&slices, &job.gauge, job.assurance)
}

/// The thinnest edge that was read, in figures.
fn thinnest_edge(job: &Job, record: &PanelRecord) -> Option<FilmSummary> {
    let edges = record.spots.iter().filter(|s| s.edge).filter_map(|s| {
        let readings: Vec<Micrometres> = s.readings.iter().map(|r| r.thickness_um).collect();
        measure::summarise_place(&readings, &job.gauge, job.assurance.confidence)
    });
    edges.min_by_key(|edge| edge.lower)
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
    let usual = defect.kind.depth_range();
    let depth_um = defect.depth_um.unwrap_or((usual.low, usual.high));
    DefectFacts {
        kind: defect.kind,
        depth_um,
        weight: f64::from(defect.quantity.max(1)) * defect.size_mm.mm().max(1.0).sqrt(),
        local: defect.size_mm.mm() < 150.0 && defect.quantity <= 2,
    }
}
