//! What to mind, said only where the plan makes it matter. Local rules and the makers' sheets come first. Common practice, no
//! source, unless said otherwise.

use super::{Insight, is_coated};
use crate::job::Job;
use crate::polish::{DefectKind, Finish, StepKind};
use crate::vehicle::{FeatureKind, Panel, Surface, Template};
use crate::words::Message;
use crate::{message, say};

/// A panel that begins above the first height or reaches above the second is worked from a step, in mm: our estimate.
const STEP_FROM_MM: (f32, f32) = (1_200.0, 1_900.0);

/// What comes before everything that the program says.
pub const FIRST_CAUTION: Message = message!("insight-first-caution");
const HIGH: Message = message!("insight-high");

fn is_high(panel: &Panel) -> bool {
    panel.height.low > STEP_FROM_MM.0 || panel.height.high > STEP_FROM_MM.1
}

/// Everything to mind in this job, each once.
pub fn cautions(job: &Job, template: &Template, insight: &Insight) -> Vec<String> {
    let mut list = vec![FIRST_CAUTION.text().to_owned()];
    for caution in polish_cautions(job, template, insight).into_iter().chain(coating_cautions(job, template)) {
        if !list.contains(&caution) {
            list.push(caution);
        }
    }
    list
}

/// What to mind while polishing; empty when nothing is polished and nothing is left for its paint.
pub fn polish_cautions(job: &Job, template: &Template, insight: &Insight) -> Vec<String> {
    let worked: Vec<usize> = (0..template.panels.len())
        .filter(|&i| !insight.panels[i].polish.steps.is_empty() || !insight.panels[i].polish.local.is_empty())
        .collect();
    let planned = || {
        let of = |i: &usize| {
            let polish = &insight.panels[*i].polish;
            polish.local.iter().flat_map(|l| &l.steps).chain(&polish.steps).collect::<Vec<_>>()
        };
        worked.iter().flat_map(of)
    };
    let machine = planned().filter_map(|s| job.steps.get(s.index)).any(|s| s.noise_db.db() > 0.0);
    let sanded = planned().any(|s| s.kind == StepKind::Sand);
    let has = |kind| template.features.iter().any(|f| f.kind == kind && f.panels.iter().any(|p| worked.contains(p)));
    let finish =
        |wanted: Finish| template.panels.iter().any(|p| job.record(&p.id).is_some_and(|r| r.finish == Some(wanted)));
    let mut list = Vec::new();
    let mut tell = |when: bool, text: &str| {
        if when {
            list.push(text.to_owned());
        }
    };
    tell(machine, say!("insight-machine"));
    tell(machine && job.shop.leads, say!("insight-mains"));
    tell(machine && !job.shop.leads, say!("insight-cordless"));
    tell(sanded, say!("insight-sand"));
    tell(!worked.is_empty(), say!("insight-air-bay"));
    tell(worked.iter().any(|&i| is_high(&template.panels[i])), HIGH.text());
    tell(has(FeatureKind::Lamp), say!("insight-lenses-polish"));
    tell(
        [FeatureKind::Radar, FeatureKind::Camera, FeatureKind::Ultrasonic].into_iter().any(has),
        say!("insight-sensors"),
    );
    tell(finish(Finish::Matte), say!("insight-matte"));
    tell(finish(Finish::SingleStage), say!("insight-single-stage"));
    tell(!worked.is_empty(), say!("insight-gauges"));
    tell(!worked.is_empty(), say!("insight-edges"));
    let failing =
        |p: &&Panel| job.record(&p.id).is_some_and(|r| r.defects.iter().any(|d| d.kind == DefectKind::ClearFailure));
    tell(template.panels.iter().any(|p| failing(&p)), say!("insight-failing"));
    list
}

/// What to mind while coating; empty when nothing is coated.
pub fn coating_cautions(job: &Job, template: &Template) -> Vec<String> {
    let coated = || template.panels.iter().filter(|p| is_coated(job, p));
    let sheet = job.product.cautions.trim();
    let known = coated().next().is_some() && !sheet.is_empty();
    let mut list: Vec<String> = known.then(|| sheet.to_owned()).into_iter().collect();
    let mut tell = |when: bool, text: &str| {
        if when {
            list.push(text.to_owned());
        }
    };
    tell(coated().next().is_some(), say!("insight-solvents"));
    tell(coated().any(is_high), HIGH.text());
    tell(coated().any(|p| p.surface == Surface::Lamp), say!("insight-lenses-coat"));
    tell(coated().any(|p| p.surface == Surface::Glass), say!("insight-glass"));
    list
}
