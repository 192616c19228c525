//! The test spot: least aggressive first, what it showed, and what follows for this paint.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, fact, number, optional_number, said};
use crate::job::Command;
use crate::polish::{
    DefectKind, FinishSeen, NextTest, PaintHardness, RemovalBasis, Seen, TestRemoval, TestResult, TestSpots, called,
};
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;
use eframe::egui::{self, RichText, Ui};
use std::sync::Arc;

/// What to try, what was tried, what is known by it.
pub(super) fn test_spot_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let before: &TestSpots = &m.job.test_spots;
    let mut tests = before.clone();
    ui.label(theme::soft(say!("correction-test-how")));
    let paints = [
        (PaintHardness::Soft, say!("correction-paint-soft").to_owned()),
        (PaintHardness::Usual, say!("correction-paint-usual").to_owned()),
        (PaintHardness::Hard, say!("correction-paint-hard").to_owned()),
    ];
    if let Some(paint) = choice(ui, say!("correction-this-paint"), tests.paint, &paints) {
        tests.paint = paint;
    }
    next_ui(ui, m, &mut tests);
    let mut gone = None;
    for (at, result) in tests.results.iter_mut().enumerate() {
        ui.push_id(("result", at), |ui| {
            if result_ui(ui, m, at, result) {
                gone = Some(at);
            }
        });
    }
    if let Some(at) = gone {
        tests.results.remove(at);
    }
    learned_ui(ui, m);
    if tests != *before {
        out.push(Action::edit(Command::SetTestSpots(Arc::new(tests))));
    }
}

fn next_ui(ui: &mut Ui, m: &Model<'_>, tests: &mut TestSpots) {
    let steps = &m.job.steps;
    match tests.next(steps, m.job.goal.share()) {
        NextTest::Try(at) => {
            let step = &steps[at];
            ui.label(say!("correction-next", step = step.called(), passes = *step.passes().start()));
            if ui.button(say!("correction-enter-result")).clicked() {
                tests.results.push(TestResult::of(step));
            }
        }
        NextTest::Enough(at) => {
            ui.label(say!("correction-enough", step = steps[at].called()));
            if ui.button(say!("correction-enter-another")).clicked() {
                tests.results.push(TestResult::of(&steps[at]));
            }
        }
        NextTest::NothingHarder => {
            ui.label(say!("correction-none-reaches"));
        }
    }
}

/// One result; answers whether it shall go.
fn result_ui(ui: &mut Ui, m: &Model<'_>, at: usize, result: &mut TestResult) -> bool {
    let p = theme::of(ui.ctx());
    let steps = &m.job.steps;
    let mut remove = false;
    ui.separator();
    ui.horizontal(|ui| {
        ui.label(theme::bold(say!("correction-test", number = at + 1), 14.0));
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            remove = ui.button(say!("correction-remove")).clicked();
        });
    });
    let known = result.index_in(steps);
    let options: Vec<_> = steps.iter().enumerate().map(|(i, s)| (Some(i), s.called().to_owned())).collect();
    if let Some(Some(step)) = choice(ui, say!("correction-test-step"), known, &options) {
        result.step.clone_from(&steps[step].name);
    }
    if known.is_none() {
        let text = say!("correction-step-gone", step = called(&result.step));
        ui.label(RichText::new(text).color(p.note));
    }
    if let Some(v) = number(ui, say!("correction-passes"), "", f64::from(result.passes), 0, 1.0..=50.0) {
        result.passes = v.round() as u32;
    }
    removal_ui(ui, m, result);
    let kinds = DefectKind::ALL.iter().filter(|k| k.treatment().by_removal());
    let kinds: Vec<_> = kinds.map(|k| (*k, k.name().to_owned())).collect();
    let share = result.seen.map(|s| s.share * 100.0);
    if let Some(v) = optional_number(ui, say!("correction-went"), "%", share, 0, 0.0..=100.0) {
        let kind = result.seen.map_or(DefectKind::Swirl, |s| s.kind);
        result.seen = v.map(|v| Seen { kind, share: v / 100.0 });
    }
    if let Some(seen) = &mut result.seen
        && let Some(kind) = choice(ui, say!("correction-went-of"), seen.kind, &kinds)
    {
        seen.kind = kind;
    }
    let finishes = [
        (FinishSeen::NotJudged, say!("correction-finish-not-judged").to_owned()),
        (FinishSeen::CanStay, say!("correction-finish-can-stay").to_owned()),
        (FinishSeen::NeedsFiner, say!("correction-finish-needs-finer").to_owned()),
    ];
    if let Some(finish) = choice(ui, say!("correction-finish"), result.finish, &finishes) {
        result.finish = finish;
    }
    remove
}

fn removal_ui(ui: &mut Ui, m: &Model<'_>, result: &mut TestResult) {
    let um = |v: f64| Micrometres::new(v).unwrap_or(Micrometres::ZERO);
    if let Some(v) =
        optional_number(ui, say!("correction-removed"), "µm", result.removal.map(|r| r.um.um()), 2, 0.0..=50.0)
    {
        let basis = result.removal.map_or(RemovalBasis::Measured, |r| r.basis);
        result.removal = v.map(|v| TestRemoval { um: um(v), give_or_take_um: um(usual_doubt(m, basis, v)), basis });
    }
    let Some(removal) = &mut result.removal else { return };
    let bases = [
        (RemovalBasis::Measured, say!("correction-basis-gauge").to_owned()),
        (RemovalBasis::Estimated, say!("correction-basis-estimated").to_owned()),
    ];
    if let Some(basis) = choice(ui, say!("correction-known"), removal.basis, &bases) {
        removal.basis = basis;
        removal.give_or_take_um = um(usual_doubt(m, basis, removal.um.um()));
    }
    if let Some(v) = number(ui, say!("correction-give-or-take"), "µm", removal.give_or_take_um.um(), 2, 0.02..=50.0) {
        removal.give_or_take_um = um(v);
    }
}

/// Two standard uncertainties until somebody says otherwise: the rounding of a reading before and one after, or half of an estimate.
fn usual_doubt(m: &Model<'_>, basis: RemovalBasis, removal: f64) -> f64 {
    match basis {
        RemovalBasis::Measured => 2.0 * m.job.gauge.resolution_um.um() / 6.0_f64.sqrt(),
        RemovalBasis::Estimated => 0.5 * removal,
    }
    .max(TestRemoval::LEAST_GIVE_OR_TAKE)
}

/// The removal rates of this paint beside those of the shop, and the depths that tests showed.
fn learned_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let learned = &m.insight.learned;
    for note in &learned.notes {
        ui.label(RichText::new(said(ui, note)).color(p.note));
    }
    if m.job.test_spots.results.is_empty() {
        return;
    }
    ui.add_space(4.0);
    ui.label(theme::bold(say!("correction-pass-takes"), 12.0));
    for (shop, here) in m.job.steps.iter().zip(&learned.steps) {
        let spread = here.removal_um.um() * here.removal_spread;
        ui.label(theme::soft(shop.called()));
        let (mean, most) = (format!("{:.2}", here.removal_um), decimal(here.removal_um.um() + spread, 2));
        let value = say!("correction-pass-now", mean = mean, most = most);
        fact(ui, &say!("correction-pass-was", mean = format!("{:.2}", shop.removal_um)), value);
    }
    for (kind, depth) in &learned.depths {
        fact(ui, &say!("correction-deepest", defect = kind.name()), format!("{depth:.1}"));
    }
}
