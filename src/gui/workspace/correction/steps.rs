//! The steps of the shop: machine, pad and abrasive together, and what each does to paint, hands and ears.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{choice, name, number, text};
use crate::job::Command;
use crate::polish::{Drive, PolishStep, StepKind, called};
use crate::say;
use crate::units::{Decibels, MetresPerSecondSquared, Micrometres};
use crate::words::decimal;
use eframe::egui::{self, Ui};

/// More steps than a job may hold can't be added.
const MOST: usize = 12;

/// The list, with the open one in full.
pub(super) fn steps_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let steps = &m.job.steps;
    let mut changed = steps.clone();
    let mut open = m.view.open_step.filter(|at| *at < steps.len());
    for (at, step) in steps.iter().enumerate() {
        ui.push_id(("step", at), |ui| {
            let is_open = open == Some(at);
            let title = format!("{} {}", at + 1, step.called());
            if ui.add(egui::Button::selectable(is_open, title).wrap()).clicked() {
                open = if is_open { None } else { Some(at) };
            }
            if is_open {
                step_ui(ui, &mut changed[at]);
                open = order_ui(ui, &mut changed, at).or(open).filter(|at| *at < changed.len());
            }
        });
    }
    ui.horizontal(|ui| {
        if ui.add_enabled(steps.len() < MOST, egui::Button::new(say!("correction-add-step"))).clicked() {
            changed.push(fresh(steps));
            open = Some(changed.len() - 1);
        }
        let start = PolishStep::starting_set();
        if ui.add_enabled(*steps != start, egui::Button::new(say!("correction-back-to-start"))).clicked() {
            changed = start;
            open = None;
        }
    });
    ui.label(theme::soft(say!("correction-start-estimates")));
    if changed != *steps {
        out.push(Action::edit(Command::SetSteps(changed)));
    }
    if open != m.view.open_step {
        out.push(Action::View(ViewChange::OpenStep(open)));
    }
}

/// Copy, move, remove; answers the place that shall be open then, the end of the list for none.
fn order_ui(ui: &mut Ui, steps: &mut Vec<PolishStep>, at: usize) -> Option<usize> {
    let mut open = None;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        ui.spacing_mut().button_padding.x = 8.0;
        if ui.add_enabled(steps.len() < MOST, egui::Button::new(say!("correction-copy"))).clicked() {
            let copy = PolishStep { name: free_name(steps, steps[at].called()), ..steps[at].clone() };
            steps.insert(at + 1, copy);
            open = Some(at + 1);
        }
        if ui.add_enabled(at > 0, egui::Button::new(say!("correction-up"))).clicked() {
            steps.swap(at, at - 1);
            open = Some(at - 1);
        }
        if ui.add_enabled(at + 1 < steps.len(), egui::Button::new(say!("correction-down"))).clicked() {
            steps.swap(at, at + 1);
            open = Some(at + 1);
        }
        if ui.button(say!("correction-remove")).clicked() {
            steps.remove(at);
            open = Some(usize::MAX);
        }
    });
    open
}

/// A name that no step has yet.
fn free_name(steps: &[PolishStep], like: &str) -> String {
    let taken = |name: &String| steps.iter().any(|s| s.name == *name);
    (2..=MOST + 2).map(|n| format!("{like} ({n})")).find(|name| !taken(name)).unwrap_or_default()
}

/// A gentle step to start from.
fn fresh(steps: &[PolishStep]) -> PolishStep {
    let gentle = PolishStep::starting_set().pop();
    let named = |step: PolishStep| PolishStep { name: free_name(steps, say!("correction-new-step")), ..step };
    gentle.or_else(|| steps.last().cloned()).map_or_else(|| steps[0].clone(), named)
}

/// Everything about one step.
fn step_ui(ui: &mut Ui, step: &mut PolishStep) {
    if let Some(called) = name(ui, say!("correction-step-name"), step.called()) {
        step.name = called;
    }
    let kinds = [
        (StepKind::Sand, say!("correction-kind-sand").to_owned()),
        (StepKind::Cut, say!("correction-kind-cut").to_owned()),
        (StepKind::Polish, say!("correction-kind-polish").to_owned()),
        (StepKind::Finish, say!("correction-kind-finish").to_owned()),
    ];
    if let Some(kind) = choice(ui, say!("correction-kind"), step.kind, &kinds) {
        step.kind = kind;
    }
    let um = |value: f64, before| Micrometres::new(value).unwrap_or(before);
    if let Some(v) = number(ui, say!("correction-pass-removal"), "µm", step.removal_um.um(), 2, 0.01..=20.0) {
        step.removal_um = um(v, step.removal_um);
    }
    if let Some(v) = number(ui, say!("correction-pass-spread"), "%", step.removal_spread * 100.0, 0, 0.0..=400.0) {
        step.removal_spread = v / 100.0;
    }
    if let Some(v) = number(ui, say!("correction-marks-left"), "µm", step.scratch_left_um.um(), 2, 0.0..=20.0) {
        step.scratch_left_um = um(v, step.scratch_left_um);
    }
    if let Some(v) = number(ui, say!("correction-clears-to"), "µm", step.clears_up_to_um.um(), 1, 0.0..=100.0) {
        step.clears_up_to_um = um(v, step.clears_up_to_um);
    }
    if let Some(v) = number(ui, say!("correction-pass-time"), "s", step.seconds_per_m2_pass, 0, 1.0..=7_200.0) {
        step.seconds_per_m2_pass = v;
    }
    if let Some(v) = number(ui, say!("correction-setup"), "s", f64::from(step.setup_s), 0, 0.0..=3_600.0) {
        step.setup_s = v.round() as u32;
    }
    if let Some(v) = number(ui, say!("correction-passes-fewest"), "", f64::from(step.min_passes), 0, 1.0..=50.0) {
        step.min_passes = v.round() as u32;
        step.max_passes = step.max_passes.max(step.min_passes);
    }
    if let Some(v) = number(ui, say!("correction-passes-most"), "", f64::from(step.max_passes), 0, 1.0..=50.0) {
        step.max_passes = v.round() as u32;
        step.min_passes = step.min_passes.min(step.max_passes);
    }
    machine_ui(ui, step);
}

fn machine_ui(ui: &mut Ui, step: &mut PolishStep) {
    let drives = Drive::ALL.map(|d| (d, d.to_string()));
    if let Some(drive) = choice(ui, say!("correction-machine"), step.equipment.drive, &drives) {
        step.equipment.drive = drive;
    }
    let drive = step.equipment.drive;
    if drive == Drive::Orbital
        && let Some(v) = number(ui, say!("correction-orbit"), "mm", step.equipment.orbit_mm, 0, 0.0..=100.0)
    {
        step.equipment.orbit_mm = v;
    }
    if matches!(drive, Drive::Orbital | Drive::Rotary) {
        if let Some(v) = number(ui, say!("correction-turns"), "", step.equipment.per_minute, 0, 0.0..=20_000.0) {
            step.equipment.per_minute = v;
        }
        if let Some(v) = number(ui, say!("correction-pad-across"), "mm", step.equipment.pad_mm, 0, 0.0..=500.0) {
            step.equipment.pad_mm = v;
        }
        if let Some(speed) = step.equipment.pad_speed() {
            ui.label(theme::soft(say!("correction-pad-speed", speed = decimal(speed, 1))));
        }
    }
    if let Some((pad, _)) = text(ui, say!("correction-pad"), called(&step.equipment.pad), 1) {
        step.equipment.pad = pad;
    }
    if let Some((abrasive, _)) = text(ui, say!("correction-abrasive"), called(&step.equipment.abrasive), 1) {
        step.equipment.abrasive = abrasive;
    }
    let vibration = |v: f64, before| MetresPerSecondSquared::new(v).unwrap_or(before);
    if let Some(v) = number(ui, say!("correction-vibration-declared"), "m/s²", step.vibration_ms2.ms2(), 1, 0.0..=100.0)
    {
        step.vibration_ms2 = vibration(v, step.vibration_ms2);
    }
    if let Some(v) = number(ui, say!("correction-vibration-k"), "m/s²", step.vibration_k_ms2.ms2(), 1, 0.0..=100.0) {
        step.vibration_k_ms2 = vibration(v, step.vibration_k_ms2);
    }
    if let Some(v) = number(ui, say!("correction-noise-declared"), "dB(A)", step.noise_db.db(), 0, 0.0..=140.0) {
        step.noise_db = Decibels::new(v).unwrap_or(step.noise_db);
    }
    if let Some(v) = number(ui, say!("correction-clean-pad-after"), "m²", step.equipment.m2_per_pad, 1, 0.0..=100.0) {
        step.equipment.m2_per_pad = v;
    }
    if let Some(v) =
        number(ui, say!("correction-polish-per-area"), "ml", step.equipment.polish_ml_per_m2, 1, 0.0..=500.0)
    {
        step.equipment.polish_ml_per_m2 = v;
    }
    ui.label(theme::soft(say!("correction-zero-is-usual")));
}
