//! What a survey after polishing shows: how much went, and what may still go.

use super::PanelInsight;
use super::film::{SurveyFilm, film_at};
use crate::job::{Job, PanelRecord, Spot, SurveyStage, Suspects};
use crate::measure::{MeasuredRemoval, Visibility, measured_removal, thickness};
use crate::say;
use crate::units::Micrometres;
use crate::vehicle::{Panel, Template};

/// One panel after polishing.
#[derive(Debug, Clone, PartialEq)]
pub struct AfterPolishing {
    /// The readings after polishing.
    pub read: SurveyFilm,
    /// Change at the spots read before and after; none with fewer than two such spots.
    pub removal: Option<MeasuredRemoval>,
    /// What probably went in this visit, and the most that counts for it.
    pub went: Went,
    /// What may still go in this visit.
    pub left: Micrometres,
}

impl AfterPolishing {
    /// What to mind before anybody polishes here again, as a sentence.
    pub(super) fn caution(&self) -> String {
        say!("insight-after", went = format!("{:.1}", self.went.upper), left = format!("{:.1}", self.left))
    }
}

/// What went from a panel in this visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Went {
    /// What probably went.
    pub likely: Micrometres,
    /// The most that may have gone; this counts.
    pub upper: Micrometres,
    /// Whether the readings show it; otherwise the plan is taken.
    pub measured: bool,
}

/// The mean of each spot before and after polishing, from readings that count; no edges, and only spots that have both.
fn pairs(record: &PanelRecord, before: u32, after: u32, suspects: &Suspects) -> (Vec<Micrometres>, Vec<Micrometres>) {
    let mean = |spot: &Spot, survey: u32| {
        let counting = spot.readings_in(survey).filter(|r| !suspects.has(r));
        mean(&counting.map(|r| r.thickness_um).collect::<Vec<_>>())
    };
    let spots = record.spots.iter().filter(|s| !s.edge);
    spots.filter_map(|s| Some((mean(s, before)?, mean(s, after)?))).unzip()
}

fn mean(values: &[Micrometres]) -> Option<Micrometres> {
    let sum: f64 = values.iter().map(|v| v.um()).sum();
    (!values.is_empty()).then(|| thickness(sum / values.len() as f64))
}

fn removal(job: &Job, before: &[Micrometres], after: &[Micrometres]) -> Option<MeasuredRemoval> {
    let slices = |values: &'_ [Micrometres]| -> Vec<Vec<Micrometres>> { values.iter().map(|v| vec![*v]).collect() };
    let (before, after) = (slices(before), slices(after));
    let (before, after): (Vec<_>, Vec<_>) =
        before.iter().zip(&after).map(|(b, a)| (b.as_slice(), a.as_slice())).unzip();
    measured_removal(&before, &after, &job.gauge)
}

/// A panel read before and after; `None` where it was not read after polishing.
///
/// `planned` is what the plan takes, likely and at most.
pub(super) fn after_polishing(
    job: &Job,
    record: &PanelRecord,
    before: Option<&SurveyFilm>,
    planned: (Micrometres, Micrometres),
    suspects: &Suspects,
) -> Option<AfterPolishing> {
    let read = film_at(job, record, SurveyStage::After, suspects)?;
    let removal = before.and_then(|b| {
        let (before, after) = pairs(record, b.survey, read.survey, suspects);
        removal(job, &before, &after)
    });
    let went = went(removal.as_ref(), planned);
    Some(AfterPolishing { read, removal, went, left: Micrometres::ZERO })
}

/// The measured removal where it is shown. Where it is not, the plan's bound is the better one, but never less than the readings say.
fn went(removal: Option<&MeasuredRemoval>, (planned, planned_upper): (Micrometres, Micrometres)) -> Went {
    let Some(removal) = removal else { return Went { likely: planned, upper: planned_upper, measured: false } };
    let mean = thickness(removal.change.mean);
    if removal.visibility == Visibility::Shown {
        Went { likely: mean, upper: removal.upper.max(mean), measured: true }
    } else {
        Went { likely: planned, upper: planned_upper.max(mean).max(planned), measured: false }
    }
}

/// Mean change over the panels read before and after, each of which counts as one: panels are polished differently, so the spots
/// of one are not independent. None with fewer than two such panels.
pub(super) fn over_vehicle(
    job: &Job,
    template: &Template,
    panels: &[PanelInsight],
    suspects: &Suspects,
) -> Option<MeasuredRemoval> {
    let of_panel = |(panel, insight): (&Panel, &PanelInsight)| {
        let (before, after) = (insight.read.as_ref()?, &insight.after.as_ref()?.read);
        let (before, after) = pairs(job.record(&panel.id)?, before.survey, after.survey, suspects);
        Some((mean(&before)?, mean(&after)?))
    };
    let (before, after): (Vec<_>, Vec<_>) = template.panels.iter().zip(panels).filter_map(of_panel).unzip();
    removal(job, &before, &after)
}
