//! What to mind, said only where the plan makes it matter. Local rules and the makers' sheets come first. Common practice, no
//! source, unless said otherwise.

use super::{Insight, is_coated};
use crate::job::Job;
use crate::polish::{DefectKind, Finish, StepKind};
use crate::vehicle::{FeatureKind, Panel, Surface, Template};

/// A panel that begins above the first height or reaches above the second is worked from a step, in mm: our estimate.
const STEP_FROM_MM: (f32, f32) = (1_200.0, 1_900.0);

/// What comes before everything that the program says.
pub const FIRST_CAUTION: &str =
    "Local rules, the makers' data sheets and licensed practice come before anything this program says.";
const HIGH: &str = "Reach the roof from a step or platform, not from a sill or tyre; one keeps the floor clear.";

fn is_high(panel: &Panel) -> bool {
    panel.height.low > STEP_FROM_MM.0 || panel.height.high > STEP_FROM_MM.1
}

/// Everything to mind in this job, each once.
pub fn cautions(job: &Job, template: &Template, insight: &Insight) -> Vec<String> {
    let mut list = vec![FIRST_CAUTION.to_owned()];
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
    let mut say = |when: bool, text: &str| {
        if when {
            list.push(text.to_owned());
        }
    };
    say(
        machine,
        "Machine polishing: eye and hearing protection, gloves that keep hands warm and dry, a grip no tighter than needed.",
    );
    say(
        machine && job.shop.leads,
        "Mains machines: behind a residual-current device (30\u{202f}mA, or a ground-fault interrupter), leads off the wet floor and over the shoulder, never in the wet bay.",
    );
    say(
        machine && !job.shop.leads,
        "Cordless machines: keep battery packs out of spray and charge them away from solvents.",
    );
    say(
        sanded,
        "Sand wet and wipe the slurry off before it dries: sanding dust is not to be breathed. No mains machine where it is wet.",
    );
    say(
        !worked.is_empty(),
        "Air the bay while polishing and wiping; polish residue and wipes carry solvents. Nitrile gloves for wipes, changed when wetted.",
    );
    say(worked.iter().any(|&i| is_high(&template.panels[i])), HIGH);
    say(
        has(FeatureKind::Lamp),
        "Tape lamp lenses off: polishing one takes off its hard coat against sunlight, which must then be renewed; do not alter approved optics.",
    );
    say(
        [FeatureKind::Radar, FeatureKind::Camera, FeatureKind::Ultrasonic].into_iter().any(has),
        "Panels with a radar, camera or parking sensor: the vehicle maker's rules for the sensor come first; do not press on it and do not sand it.",
    );
    say(
        finish(Finish::Matte),
        "Matte paint stays as it is: every rubbed place turns shiny and can't be made matte again.",
    );
    say(
        finish(Finish::SingleStage),
        "Single-stage paint: colour on the pad is the paint itself. Keep its pads and towels apart, and stay with the finest step that works.",
    );
    say(
        !worked.is_empty(),
        "Gauges of this kind read everything above the metal; the clear coat is assumed as a share of it, not measured.",
    );
    say(!worked.is_empty(), "Stay off edges and body lines: the film is thinner there than where it was read.");
    let failing =
        |p: &&Panel| job.record(&p.id).is_some_and(|r| r.defects.iter().any(|d| d.kind == DefectKind::ClearFailure));
    say(template.panels.iter().any(|p| failing(&p)), "Failing clear coat is left alone: polishing lifts it further.");
    list
}

/// What to mind while coating; empty when nothing is coated.
pub fn coating_cautions(job: &Job, template: &Template) -> Vec<String> {
    let coated = || template.panels.iter().filter(|p| is_coated(job, p));
    let sheet = job.product.cautions.trim();
    let known = coated().next().is_some() && !sheet.is_empty();
    let mut list: Vec<String> = known.then(|| sheet.to_owned()).into_iter().collect();
    let mut say = |when: bool, text: &str| {
        if when {
            list.push(text.to_owned());
        }
    };
    say(
        coated().next().is_some(),
        "Solvents in wipes and coating: air the bay, keep flames, sparks and heaters away, wear nitrile gloves and change \
         them when wetted, put used cloths into a closed metal bin.",
    );
    say(coated().any(is_high), HIGH);
    say(
        coated().any(|p| p.surface == Surface::Lamp),
        "Lamp lenses carry a hard coat against sunlight: they are coated, not polished; do not alter approved optics.",
    );
    say(
        coated().any(|p| p.surface == Surface::Glass),
        "Glass: keep coating off the area in front of cameras, and try the wipers before the vehicle leaves.",
    );
    list
}
