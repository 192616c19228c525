//! Invented vehicles to plan: every painted panel read and marked, the same in every run.

use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::insight::recommended_spots;
use lapwright::job::{Defect, PanelRecord, Reading, Spot};
use lapwright::measure::GaugePrinciple;
use lapwright::polish::{DefectKind, PaintHistory, PolishStep, StepKind};
use lapwright::units::{Micrometres, Millimetres};
use lapwright::vehicle::{Surface, load_embedded};
use std::sync::Arc;

/// A vehicle with `marks` defects on each of its first `panels` painted panels; the rest is bare of readings.
pub(crate) fn vehicle(template: &str, panels: usize, marks: usize) -> Loaded {
    let template = load_embedded(template).expect("an embedded template loads");
    let mut job = (*job_from_text("the sample", SAMPLE).expect("the sample loads").job).clone();
    job.vehicle.template.clone_from(&template.id);
    job.panels.clear();
    // Reads over every base, so that no panel is left out of the plan.
    job.gauge.principle = GaugePrinciple::Ultrasonic;
    let kinds = [DefectKind::Swirl, DefectKind::DeepScratch, DefectKind::Etching, DefectKind::WashMark];
    for (index, panel) in template.panels.iter().filter(|p| p.surface == Surface::Paint).take(panels).enumerate() {
        let film = 108.0 + (index * 37 % 41) as f64;
        let reading = |k: usize| Reading::of(Micrometres::of(film + (k % 5) as f64));
        let spot =
            |(k, at)| Spot { at, edge: false, readings: (0..3).map(|r| reading(k + r)).collect(), note: String::new() };
        let spots: Vec<Spot> = recommended_spots(panel).into_iter().enumerate().map(spot).collect();
        let mark = |k: usize| Defect {
            size_mm: Millimetres::of([400.0, 20.0][usize::from(k > 0)]),
            quantity: if k > 0 { 1 + (k % 2) as u8 } else { 4 },
            ..Defect::new(kinds[(index + k) % kinds.len()], spots[k % spots.len()].at)
        };
        let defects = (0..marks).map(mark).collect();
        let record = PanelRecord { history: PaintHistory::Original, spots, defects, ..PanelRecord::default() };
        job.panels.insert(panel.id.clone(), Arc::new(record));
    }
    Loaded { job: Arc::new(job), template }
}

/// Twelve steps of fifty passes that leave as many sequences as possible in the running: gentle, few marks, slow where sure.
pub(crate) fn hostile_steps(round: u64) -> Vec<PolishStep> {
    let mut state = round;
    let mut between = |low: f64, high: f64| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * ((state >> 33) as f64 / (1_u64 << 31) as f64)
    };
    let (start, finish) = (PolishStep::starting_set(), between(0.0, 1.0));
    let step = |at: usize| {
        let (removal, spread) = (between(0.005, 0.4), between(0.0, 4.0));
        PolishStep {
            name: format!("step {at}"),
            kind: if between(0.0, 1.0) < finish { StepKind::Finish } else { start[at % start.len()].kind },
            removal_um: Micrometres::of(removal),
            removal_spread: spread,
            scratch_left_um: Micrometres::of(between(0.0, 0.3)),
            clears_up_to_um: Micrometres::of(between(0.5, 20.0)),
            seconds_per_m2_pass: 500.0 * removal * (1.0 / (0.1 + spread) + between(0.0, 0.5)),
            setup_s: between(0.0, 60.0) as u32,
            min_passes: 1,
            max_passes: 50,
            ..start[at % start.len()].clone()
        }
    };
    (0..12).map(step).collect()
}
