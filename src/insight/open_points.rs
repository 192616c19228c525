//! What the readings suggest: findings per panel, and of the whole survey.

use super::PanelInsight;
use super::common::Common;
use crate::finding::{Code, Finding};
use crate::job::Job;
use crate::measure::film_findings;
use crate::polish::{DefectKind, Finish};
use crate::say;
use crate::vehicle::{Panel, Template};
use std::collections::HashMap;

/// Findings of one job: first those of the gauge, then those of each panel in the order of the template.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct OpenPoints {
    /// What concerns the gauge and so every panel.
    pub gauge: Vec<Finding>,
    /// One list for each panel of the template; may be empty.
    pub panels: Vec<Vec<Finding>>,
}

impl OpenPoints {
    /// All of them, the gauge first.
    pub fn all(&self) -> impl Iterator<Item = &Finding> {
        self.gauge.iter().chain(self.panels.iter().flatten())
    }
}

/// Everything that the readings of a job suggest.
pub(super) fn open_points(job: &Job, template: &Template, panels: &[PanelInsight], common: &Common) -> OpenPoints {
    OpenPoints {
        gauge: failed_checks(job),
        panels: (0..panels.len()).map(|index| of_panel(job, template, panels, index, common)).collect(),
    }
}

/// The panel in the same place on the other side.
pub fn mirror_of(template: &Template, index: usize) -> Option<usize> {
    let other = on_the_other_side(template.panels[index].id.as_str())?;
    template.panels.iter().position(|p| p.id.as_str() == other)
}

/// [`mirror_of`] for every panel, in the order of the template.
pub(super) fn mirrors(template: &Template) -> Vec<Option<usize>> {
    let places: HashMap<&str, usize> = template.panels.iter().enumerate().map(|(i, p)| (p.id.as_str(), i)).collect();
    let mirror = |p: &Panel| on_the_other_side(p.id.as_str()).and_then(|id| places.get(id.as_str()).copied());
    template.panels.iter().map(mirror).collect()
}

fn on_the_other_side(id: &str) -> Option<String> {
    match (id.strip_suffix("-left"), id.strip_suffix("-right")) {
        (Some(part), _) => Some(format!("{part}-right")),
        (_, Some(part)) => Some(format!("{part}-left")),
        _ => None,
    }
}

/// What is suggested for one panel; depends on its own figures and on those of its mirror panel.
pub(super) fn of_panel(
    job: &Job,
    template: &Template,
    panels: &[PanelInsight],
    index: usize,
    common: &Common,
) -> Vec<Finding> {
    let (panel, insight) = (&template.panels[index], &panels[index]);
    let place = panel.id.as_str();
    let mut found = Vec::new();
    if let Some(film) = &insight.film {
        let mirror = common.mirrors[index].and_then(|other| panels[other].film.as_ref());
        found.extend(film_findings(place, film, mirror, &job.policy.bands));
    }
    found.extend(doubtful(place, insight));
    found.extend(single_stage(job, panel));
    found.extend(over_plan(place, insight));
    found
}

/// Readings that don't count.
fn doubtful(place: &str, insight: &PanelInsight) -> Option<Finding> {
    let reads = [insight.read.as_ref(), insight.after.as_ref().map(|a| &a.read)];
    if let (Some(reason), Some(_)) = (&insight.unreadable, &insight.read) {
        let action = say!("insight-means-nothing-do");
        let cause = say!("insight-means-nothing", why = reason);
        return Some(Finding::new(Code::ReadingsImpossible, place, cause, action));
    }
    let suspects: usize = reads.into_iter().flatten().map(|r| r.suspects).sum();
    let cause = match suspects {
        0 => return None,
        count => say!("insight-suspect-count", count = count),
    };
    Some(Finding::new(Code::ReadingsSuspect, place, cause, say!("insight-suspect-do")))
}

/// Signs of paint without clear coat. **Source**: common practice, no source.
fn single_stage(job: &Job, panel: &Panel) -> Option<Finding> {
    let record = job.record(&panel.id)?;
    let oxidised = record.defects.iter().any(|d| d.kind == DefectKind::Oxidation);
    let (cause, action) = match record.finish {
        Some(Finish::SingleStage) => (say!("insight-noted-single-stage"), say!("insight-noted-single-stage-do")),
        None | Some(Finish::ClearCoat) if oxidised => (say!("insight-chalks"), say!("insight-chalks-do")),
        _ => return None,
    };
    Some(Finding::new(Code::FilmSingleStage, panel.id.as_str(), cause, action))
}

/// More went than planned, or may have.
fn over_plan(place: &str, insight: &PanelInsight) -> Option<Finding> {
    let after = insight.after.as_ref()?;
    let planned = insight.removal_upper();
    (after.went.measured && after.went.upper > planned).then(|| {
        let cause =
            say!("insight-over-plan", went = format!("{:.1}", after.went.upper), planned = format!("{planned:.1}"));
        let action = say!("insight-over-plan-do");
        Finding::new(Code::RemovedOverPlan, place, cause, action)
    })
}

/// Checks that the gauge failed.
fn failed_checks(job: &Job) -> Vec<Finding> {
    let failed = job.surveys.iter().enumerate().flat_map(|(s, survey)| {
        let failed = survey.checks.iter().enumerate().filter(|(_, c)| !job.gauge.passes(&c.check()));
        failed.map(move |(c, check)| (s, c, check))
    });
    failed
        .map(|(s, c, check)| {
            let allowed = format!("{:.1}", job.gauge.allowed_at(check.certified_um));
            let shown = check.shown_um.to_string();
            let cause = if check.certified_um.um() > 0.0 {
                say!("insight-on-shim", film = check.certified_um.to_string(), shown = shown, allowed = allowed)
            } else {
                say!("insight-on-plate", shown = shown, allowed = allowed)
            };
            Finding::new(Code::GaugeCheckFailed, format!("surveys[{s}].checks[{c}]"), cause, say!("insight-check-do"))
        })
        .collect()
}
