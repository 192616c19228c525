//! Vibration and noise per worker from the order, against action and limit values, and how to stay below them.

use crate::gui::action::Model;
use crate::gui::theme::{self, Palette};
use crate::gui::widgets::{section, worker_badge};
use crate::insight::{PolishOrder, WorkerExposure, exposure_shared};
use crate::polish::{HAV_ACTION, HAV_LIMIT, NOISE_VALUES_DB, Standing};
use crate::say;
use crate::units::{clock, minutes};
use crate::words::{decimal, shortest};
use eframe::egui::{self, Align2, Color32, FontId, Rect, RichText, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

/// Ends of the scale of noise, dB(A).
const NOISE_SCALE_DB: (f64, f64) = (65.0, 95.0);

/// Draws the bars of everybody, per day, and the advice.
pub(super) fn exposure_ui(ui: &mut Ui, m: &Model<'_>) {
    if m.polishing.work.operations.is_empty() {
        return;
    }
    section(ui, say!("correction-hands-and-ears"));
    let Some(order) = &m.polishing.order else {
        workers(ui, &exposure_shared(m.job, &m.polishing.work));
        return;
    };
    for (number, day) in order.days.iter().enumerate() {
        if order.days.len() > 1 {
            let title = say!("correction-day", number = number + 1, time = minutes(day.at.duration()));
            ui.label(theme::soft(title));
        }
        workers(ui, &day.workers);
    }
    advice(ui, m, order);
    ui.label(theme::soft(say!("correction-exposure-basis")));
    let dose = order.in_one_day.iter().map(|w| w.noise_osha_dose_pct).fold(0.0, f64::max);
    ui.label(theme::soft(say!("correction-osha", dose = decimal(dose, 0))));
}

fn workers(ui: &mut Ui, workers: &[WorkerExposure]) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        bars(ui, workers);
    });
}

fn bars(ui: &mut Ui, workers: &[WorkerExposure]) {
    for (index, worker) in workers.iter().enumerate() {
        ui.horizontal(|ui| {
            ui.spacing_mut().interact_size.y = 20.0;
            let (area, _) = ui.allocate_exact_size(vec2(18.0, 18.0), Sense::hover());
            worker_badge(ui.painter(), area.center(), 7.0, index, "");
            ui.label(&worker.worker);
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                ui.label(theme::soft(say!("correction-machine-on", time = minutes(worker.running_s))));
            });
        });
        let (action, limit) = (HAV_ACTION.ms2(), HAV_LIMIT.ms2());
        let share = |a8: f64| a8 / (limit * 1.1);
        let (vibration, points) = (decimal(worker.hav_a8_ms2, 1), decimal(worker.hav_points, 0));
        let text = say!("correction-vibration-points", vibration = vibration, points = points);
        let marks = [(share(action), shortest(action)), (share(limit), shortest(limit))];
        bar(ui, say!("correction-vibration"), share(worker.hav_a8_ms2), &marks, worker.hav_standing, &text);
        let (low, high) = NOISE_SCALE_DB;
        let share = |db: f64| (db - low) / (high - low);
        let marks = [NOISE_VALUES_DB[0], NOISE_VALUES_DB[2]].map(|db| (share(db), shortest(db)));
        let text = worker
            .noise_lex8h_db
            .map_or_else(|| say!("correction-no-machine").to_owned(), |db| format!("{}\u{202f}dB(A)", decimal(db, 1)));
        bar(
            ui,
            say!("correction-noise"),
            worker.noise_lex8h_db.map_or(0.0, share),
            &marks,
            worker.noise_standing,
            &text,
        );
    }
}

fn ink(p: &Palette, standing: &str) -> Color32 {
    match standing {
        "over limit" => p.stop,
        "action" => p.note,
        _ => p.accent,
    }
}

/// A value on a scale with its action value and limit as ticks.
fn bar(ui: &mut Ui, name: &str, share: f64, marks: &[(f64, String)], standing: &str, text: &str) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 30.0), Sense::hover());
    let standing_words = match standing {
        "below" => say!("correction-below-action"),
        "action" => say!("correction-action-reached"),
        _ => say!("correction-over-limit"),
    };
    response
        .widget_info(|| egui::WidgetInfo::labeled(egui::Role::Meter, true, format!("{name} {text}, {standing_words}")));
    let paint = ui.painter();
    let small = FontId::proportional(12.0);
    let frame =
        Rect::from_min_max(pos2(area.left() + 66.0, area.top() + 3.0), pos2(area.right() - 122.0, area.top() + 13.0));
    let x = |share: f64| frame.left() + frame.width() * share.clamp(0.0, 1.0) as f32;
    paint.text(pos2(area.left(), frame.center().y), Align2::LEFT_CENTER, name, small.clone(), p.ink_soft);
    paint.rect_filled(frame, 2.0, p.paper);
    paint.rect_filled(Rect::from_min_max(frame.min, pos2(x(share), frame.bottom())), 2.0, ink(p, standing));
    paint.rect_stroke(frame, 2.0, Stroke::new(1.0, p.rim), StrokeKind::Inside);
    for (at, label) in marks {
        paint.vline(x(*at), frame.y_range().expand(2.0), Stroke::new(1.5, p.contour));
        paint.text(pos2(x(*at), frame.bottom() + 1.0), Align2::CENTER_TOP, label, small.clone(), p.ink_soft);
    }
    let color = if standing == "below" { p.ink } else { ink(p, standing) };
    paint.text(pos2(area.right(), frame.center().y), Align2::RIGHT_CENTER, text, FontId::proportional(13.0), color);
}

/// What the plan does about it, in plain words.
fn advice(ui: &mut Ui, m: &Model<'_>, order: &PolishOrder) {
    let p = theme::of(ui.ctx());
    let name = |panel: usize| m.template.panels[panel].name(m.view.naming);
    if let Some(sooner) = order.given_up {
        let moves: Vec<String> = order
            .handed
            .iter()
            .map(|h| say!("correction-handed", panel = name(h.panel), who = &m.job.crew[h.to].name))
            .collect();
        let mut text = say!("correction-handed-over", moves = moves.join(", "));
        if sooner > 0 {
            text.push(' ');
            text.push_str(&say!("correction-handed-costs", time = minutes(sooner)));
        }
        ui.label(RichText::new(text).color(p.go));
    }
    let below = |workers: &[WorkerExposure]| workers.iter().all(|w| w.standing() == Standing::Below);
    if below(&order.in_one_day) {
        ui.label(say!("correction-all-below"));
        return;
    }
    let worst = order.in_one_day.iter().max_by(|a, b| a.hav_points.total_cmp(&b.hav_points));
    if let (Some(worst), true) = (worst, order.days.len() > 1) {
        let starts = order.days[1..].iter().map(|d| {
            let row = &order.rows[d.rows.start];
            say!("correction-day-begins", verb = row.kind.verb(), panel = name(row.panel), at = clock(row.at.start))
        });
        let text = say!(
            "correction-spread",
            who = &worst.worker,
            points = decimal(worst.hav_points, 0),
            days = order.days.len(),
            starts = starts.collect::<Vec<_>>().join(say!("polish-then")),
        );
        ui.label(RichText::new(text).color(p.note));
    }
    let last = order.days.iter().flat_map(|d| &d.workers).flat_map(|w| w.advice.iter().map(move |a| (&w.worker, a)));
    for (worker, advice) in last {
        ui.label(RichText::new(format!("{worker}: {advice}")).color(p.note));
    }
}
