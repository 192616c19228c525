//! What follows for one panel.

use super::spots::gauge_reads;
use crate::job::{Defect, Job, PanelRecord};
use crate::measure::{self, FilmSummary};
use crate::polish::{self, Budget, DefectFacts, Finish, PanelFacts, PolishPlan};
use crate::units::Micrometres;
use crate::vehicle::{Panel, Substrate, Surface};

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

impl PanelInsight {
    /// Works one panel out.
    pub fn new(job: &Job, panel: &Panel) -> Self {
        let blank = PanelRecord::default();
        let record = job.record(&panel.id).map_or(&blank, |r| r);
        let substrate = record.substrate.unwrap_or(panel.substrate);
        let unreadable = gauge_reads(job.gauge.principle, substrate).err();
        let film = film(job, record);
        let defects: Vec<_> = record.defects.iter().map(defect_facts).collect();
        let facts = PanelFacts {
            film: film.as_ref(),
            unreadable_reason: unreadable.clone(),
            area: panel.area,
            finish: record.finish.unwrap_or_else(|| usual_finish(panel.surface)),
            history: record.history,
            defects: &defects,
        };
        let budget = polish::budget(&facts, &job.policy);
        let polish = polish::plan(&facts, &budget, &job.steps, job.goal);
        Self { substrate, unreadable, film, budget, polish, defects }
    }
}

fn film(job: &Job, record: &PanelRecord) -> Option<FilmSummary> {
    let spots: Vec<Vec<Micrometres>> =
        record.spots.iter().map(|s| s.readings.iter().map(|r| r.thickness_um).collect()).collect();
    let slices: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    measure::summarise(&slices, &job.gauge, job.assurance)
}

/// What a surface is unless the job says otherwise.
fn usual_finish(surface: Surface) -> Finish {
    match surface {
        Surface::Paint => Finish::ClearCoat,
        Surface::Glass => Finish::Glass,
        Surface::Lamp => Finish::Lamp,
        Surface::Trim => Finish::Bare,
    }
}

fn defect_facts(defect: &Defect) -> DefectFacts {
    let usual = defect.kind.depth_range();
    let depth_um = defect.depth_um.unwrap_or((usual.0, usual.2));
    DefectFacts {
        kind: defect.kind,
        depth_um,
        weight: f64::from(defect.quantity.max(1)) * defect.size_mm.mm().max(1.0).sqrt(),
        local: defect.size_mm.mm() < 150.0 && defect.quantity <= 2,
    }
}
