//! What more ambition costs over the whole vehicle.

use super::panel::{AMBITIONS, PanelInsight};
use crate::job::Job;
use crate::units::Seconds;
use crate::vehicle::{Surface, Template};

/// What one goal costs over all panels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CarAmbition {
    /// Share of the defects that is wanted, 0 to 1.
    pub wanted: f64,
    /// Time at all panels together.
    pub seconds: Seconds,
    /// Mean removal in µm, averaged over the painted surface.
    pub mean_um: f64,
    /// The most that may go at any place, in µm.
    pub most_um: f64,
    /// Share of the defects that goes, averaged over the surface of the panels that have some, 0 to 1.
    pub correction: f64,
}

/// What each of [`AMBITIONS`] costs.
pub(super) fn over_all(job: &Job, template: &Template, panels: &[PanelInsight]) -> Vec<CarAmbition> {
    let curves: Vec<_> = panels.iter().enumerate().map(|(index, panel)| panel.ambition(job, template, index)).collect();
    let at = |k: usize| {
        let point = |index: usize| {
            let p = curves[index][k];
            (p.seconds, p.removal.um(), p.removal_upper.um(), p.correction)
        };
        sum(AMBITIONS[k], template, panels, point)
    };
    (0..AMBITIONS.len()).map(at).collect()
}

/// What the goal of the job costs.
pub(super) fn now(job: &Job, template: &Template, panels: &[PanelInsight]) -> CarAmbition {
    let point = |index: usize| {
        let plan = &panels[index].polish;
        let gone = if plan.steps.is_empty() { 0.0 } else { plan.correction };
        (plan.seconds, plan.removal.um(), plan.removal_upper.um(), gone)
    };
    sum(job.goal.share(), template, panels, point)
}

/// Seconds, mean removal, upper bound and correction of every panel, put together.
fn sum(
    wanted: f64,
    template: &Template,
    panels: &[PanelInsight],
    point: impl Fn(usize) -> (Seconds, f64, f64, f64),
) -> CarAmbition {
    let mut all = CarAmbition { wanted, seconds: 0, mean_um: 0.0, most_um: 0.0, correction: 0.0 };
    let (mut painted, mut marked) = (0.0, 0.0);
    for (index, panel) in template.panels.iter().enumerate().filter(|(_, p)| p.surface == Surface::Paint) {
        let (seconds, mean, most, correction) = point(index);
        let area = panel.area.m2();
        all.seconds += seconds;
        all.mean_um += mean * area;
        all.most_um = all.most_um.max(most);
        painted += area;
        if panels[index].defects.iter().any(|d| d.kind.treatment().by_removal()) {
            all.correction += correction * area;
            marked += area;
        }
    }
    all.mean_um /= f64::max(painted, 1e-9);
    all.correction = if marked > 0.0 { all.correction / marked } else { 1.0 };
    all
}
