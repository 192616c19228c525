//! Below the map: windows of wet panels as running bars, and on the last lap how long each place can be saved.

use super::lap::SOON_S;
use super::parts::fitting;
use crate::coat::feel_rule;
use crate::gui::action::{Action, Model};
use crate::gui::bay::Trade;
use crate::gui::theme;
use crate::gui::widgets::{hatched, one_line_at};
use crate::say;
use crate::scene::{BayScene, LapScene, WindowPhase, WindowRow};
use crate::units::{clock, minutes};
use eframe::egui::text::LayoutJob;
use eframe::egui::{Align, Align2, Color32, FontId, Painter, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

/// Height of a bar with its gap.
const ROW: f32 = 32.0;
const HEAD: f32 = 24.0;
const FOOT: f32 = 16.0;

/// Draws what runs.
pub(in crate::gui) fn bay_below_ui(ui: &mut Ui, m: &Model<'_>, _: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let area = ui.max_rect();
    let paint = ui.painter_at(area);
    let inner = area.shrink2(vec2(16.0, 4.0));
    let soft = FontId::proportional(14.0);
    let Some(scene) = &m.bay.scene else {
        let text = say!("bay-nothing-runs").to_owned();
        let mut words = LayoutJob::simple(text, soft, p.ink_soft, inner.width());
        words.halign = Align::Center;
        let words = paint.layout_job(words);
        paint.galley(area.center() - vec2(0.0, words.size().y / 2.0), words, p.ink_soft);
        return;
    };
    let head = head(m, scene);
    let at = inner.left_top() + vec2(0.0, 2.0);
    let place = paint.text(at, Align2::LEFT_TOP, &head, FontId::proportional(16.0), p.ink_soft);
    let response = ui.interact(place, ui.unique_id().with("head"), eframe::egui::Sense::hover());
    response.widget_info(|| eframe::egui::WidgetInfo::labeled(eframe::egui::Role::Status, true, &head));
    if m.view.bay.trade == Trade::Coating {
        let small = (FontId::proportional(12.0), p.ink_soft);
        one_line_at(&paint, inner.left_bottom(), Align2::LEFT_BOTTOM, &feel_rule(), small, inner.width());
    }
    let rows = Rect::from_min_max(inner.min + vec2(0.0, HEAD), inner.max - vec2(0.0, FOOT));
    let room = (rows.height() / ROW).floor().max(1.0) as usize;
    let place =
        |k: usize| Rect::from_min_size(pos2(rows.left(), rows.top() + ROW * k as f32), vec2(rows.width(), ROW - 3.0));
    let count = if let Some(lap) = &m.bay.lap {
        let mut stands: Vec<_> = lap.stands.iter().collect();
        stands.sort_by_key(|s| s.left_s);
        for (k, stand) in stands.iter().take(room).enumerate() {
            lap_row(&paint, place(k), &stand.name, stand.passed, stand.left_s);
        }
        stands.len()
    } else {
        for (k, row) in scene.windows.iter().take(room).enumerate() {
            window_row(ui, &paint, place(k), row);
        }
        scene.windows.len()
    };
    if count > room {
        let text = say!("bay-more-rows", count = count - room);
        paint.text(inner.right_top() + vec2(0.0, 2.0), Align2::RIGHT_TOP, text, soft, p.ink_soft);
    }
}

fn head(m: &Model<'_>, scene: &BayScene) -> String {
    let (done, all) = scene.done;
    if let Some(LapScene { saved_for_s, .. }) = &m.bay.lap {
        return say!("bay-saved-for", time = minutes(*saved_for_s));
    }
    let mut parts = vec![say!("bay-so-far", done = done, all = all, left = minutes(scene.left_s))];
    if let Some(window) = m.day_run().window() {
        parts.push(say!("bay-level-between", from = clock(window.min_s), to = clock(window.max_s)));
    }
    // What people had in their heads does not hold any more.
    if m.day_run().plan().is_some_and(|p| !p.same_order) {
        parts.push(say!("bay-order-changed").to_owned());
    }
    parts.join(", ")
}

fn bold(size: f32) -> FontId {
    FontId::new(size, theme::bold_family())
}

/// Share of the width for names, and points for the time.
const NAMES: f32 = 0.3;
const TIME: f32 = 168.0;

fn parts(place: Rect) -> (Rect, Rect) {
    let left = place.left() + (place.width() * NAMES).clamp(150.0, 320.0);
    let bar = Rect::from_min_max(pos2(left, place.top() + 3.0), pos2(place.right() - TIME, place.bottom() - 3.0));
    let name = Rect::from_min_max(place.min, pos2(left - 8.0, place.bottom()));
    (name, bar)
}

fn name_in(paint: &Painter, place: Rect, text: &str, ink: Color32) {
    let size = fitting(paint, text, place.width(), &[20.0, 17.0, 14.0, 12.0]);
    paint.with_clip_rect(place).text(place.left_center(), Align2::LEFT_CENTER, text, bold(size), ink);
}

fn window_row(ui: &Ui, paint: &Painter, place: Rect, row: &WindowRow) {
    let p = theme::of(ui.ctx());
    let (name, bar) = parts(place);
    name_in(paint, name, &row.doing.name, p.ink);
    let x = |share: f32| bar.left() + bar.width() * share;
    paint.rect_filled(bar, 3.0, p.sheet);
    let early = Rect::from_min_max(bar.min, pos2(x(row.try_at), bar.bottom()));
    paint.rect_filled(early, 3.0, p.hairline);
    hatched(paint, early, 1, p.hatch());
    let (fill, ink) = match row.phase {
        WindowPhase::Early => (p.rim, p.ink),
        WindowPhase::Open | WindowPhase::Levelling => (p.go, p.go),
        WindowPhase::Closing | WindowPhase::Missed => (p.note, p.note),
    };
    let passed = Rect::from_min_max(bar.min, pos2(x(row.passed), bar.bottom()));
    paint.rect_filled(passed, 3.0, fill);
    paint.rect_stroke(bar, 3.0, Stroke::new(1.5, p.contour), StrokeKind::Inside);
    paint.vline(x(row.try_at), bar.y_range().expand(3.0), Stroke::new(3.0, p.contour));
    if let Some(planned) = row.planned_at.filter(|_| row.phase != WindowPhase::Levelling) {
        let tip = pos2(x(planned), bar.bottom() - 8.0);
        let corners = vec![tip, tip + vec2(-6.0, 10.0), tip + vec2(6.0, 10.0)];
        paint.add(eframe::egui::Shape::convex_polygon(corners, p.accent, Stroke::new(1.0, p.sheet)));
    }
    let text = match row.phase {
        WindowPhase::Early => say!("bay-try-in", time = clock(row.try_s)),
        WindowPhase::Open | WindowPhase::Closing => say!("bay-left", time = clock(row.left_s)),
        WindowPhase::Missed => say!("bay-late", time = clock(-row.left_s)),
        WindowPhase::Levelling => say!("bay-being-levelled").to_owned(),
    };
    let sizes: &[f32] = if row.phase == WindowPhase::Levelling { &[20.0, 17.0, 14.0] } else { &[26.0, 22.0, 18.0] };
    let size = fitting(paint, &text, TIME - 8.0, sizes);
    let at = pos2(place.right(), place.center().y);
    paint.text(at, Align2::RIGHT_CENTER, &text, bold(size), ink);
    let id = ui.unique_id().with(("window", row.doing.operation));
    let said = format!("{}, {text}", row.doing.name);
    let response = ui.interact(place, id, eframe::egui::Sense::hover());
    response.widget_info(|| eframe::egui::WidgetInfo::labeled(eframe::egui::Role::ProgressIndicator, true, &said));
}

fn lap_row(paint: &Painter, place: Rect, name: &str, passed: f32, left_s: i64) {
    let p = theme::of(paint.ctx());
    let (words, bar) = parts(place);
    name_in(paint, words, name, p.ink);
    paint.rect_filled(bar, 3.0, p.sheet);
    let filled = Rect::from_min_max(bar.min, pos2(bar.left() + bar.width() * passed, bar.bottom()));
    let (fill, ink) = if left_s < SOON_S { (p.note, p.note) } else { (p.rim, p.ink) };
    paint.rect_filled(filled, 3.0, fill);
    paint.rect_stroke(bar, 3.0, Stroke::new(1.5, p.contour), StrokeKind::Inside);
    let text = if left_s >= 0 { say!("bay-left", time = clock(left_s)) } else { say!("bay-polish-it").to_owned() };
    paint.text(pos2(place.right(), place.center().y), Align2::RIGHT_CENTER, text, bold(22.0), ink);
}
