//! Text on panels: never larger than the panel has room for, never over its edge.

use super::layout::{ASPECTS, MapCache, PanelShape};
use super::paint::{fill_color, to_screen};
use crate::geometry::Viewport;
use crate::gui::theme;
use crate::gui::widgets::worker_badge;
use crate::scene::{Fill, MapScene, PanelMark};
use eframe::egui::{Align2, FontId, Painter, Pos2, Rect, Stroke, StrokeKind, pos2, vec2};

/// Smallest and largest size of a value.
const SIZES: (f32, f32) = (10.0, 22.0);
/// Height of the budget bar under a value, with its gap.
const BAR: f32 = 9.0;

/// Values, budget bars and numbers of the order.
pub(super) fn draw(paint: &Painter, cache: &MapCache, view: &Viewport, scene: &MapScene) {
    for (shape, mark) in cache.panels.iter().zip(&scene.panels) {
        if !mark.badges.is_empty() {
            badges(paint, view, shape, mark);
        } else if !mark.value.is_empty() {
            value(paint, view, shape, mark);
        }
    }
}

/// The box on the screen for something of an aspect.
fn room(view: &Viewport, shape: &PanelShape, aspect: f32) -> (Pos2, f32, f32) {
    let distance = |a: f32| (a / aspect).ln().abs();
    let best = (0..ASPECTS.len()).min_by(|&a, &b| distance(ASPECTS[a]).total_cmp(&distance(ASPECTS[b]))).unwrap_or(0);
    let place = shape.boxes[best];
    (to_screen(view, place.centre), place.width * view.scale(), place.height * view.scale())
}

fn value(paint: &Painter, view: &Viewport, shape: &PanelShape, mark: &PanelMark) {
    let fill = fill_color(mark.fill);
    let ink = theme::text_on(fill);
    let probe = paint.layout_no_wrap(mark.value.clone(), FontId::new(SIZES.1, theme::bold_family()), ink);
    let extra = if mark.budget_used.is_some() { BAR } else { 0.0 };
    let (at, width, height) = room(view, shape, probe.size().x / (probe.size().y + extra));
    let fits = (width * 0.92 / probe.size().x).min((height * 0.92 - extra) / probe.size().y);
    let size = (SIZES.1 * fits).min(SIZES.1);
    if size < SIZES.0 {
        return;
    }
    let galley = paint.layout_no_wrap(mark.value.clone(), FontId::new(size, theme::bold_family()), ink);
    let text = Align2::CENTER_CENTER.anchor_size(at - vec2(0.0, extra / 2.0), galley.size());
    if matches!(mark.fill, Fill::Level(_)) {
        // The hatch must not run through the words.
        paint.rect_filled(text.expand2(vec2(3.0, -2.0)), 3.0, fill);
    }
    paint.galley(text.min, galley, ink);
    if let Some(used) = mark.budget_used {
        bar(paint, text, used);
    }
}

/// How much of the budget the plan uses at most.
fn bar(paint: &Painter, text: Rect, used: f32) {
    let width = text.width().clamp(28.0, 64.0);
    let frame = Rect::from_center_size(pos2(text.center().x, text.bottom() + BAR / 2.0 - 1.0), vec2(width, 5.0));
    paint.rect_filled(frame, 1.0, theme::SHEET);
    let filled = Rect::from_min_size(frame.min, vec2(frame.width() * used, frame.height()));
    paint.rect_filled(filled, 1.0, theme::ACCENT);
    paint.rect_stroke(frame, 1.0, Stroke::new(0.8, theme::CONTOUR), StrokeKind::Outside);
}

fn badges(paint: &Painter, view: &Viewport, shape: &PanelShape, mark: &PanelMark) {
    let shown = mark.badges.len().min(2);
    let (at, width, height) = room(view, shape, shown as f32 * 1.1);
    let radius = (width / (2.2 * shown as f32)).min(height / 2.2).clamp(5.5, 11.0);
    let step = radius * 2.2;
    let left = at.x - step * (shown as f32 - 1.0) / 2.0;
    for (k, badge) in mark.badges.iter().take(shown).enumerate() {
        let text = if radius >= 7.5 { badge.number.to_string() } else { String::new() };
        worker_badge(paint, pos2(left + step * k as f32, at.y), radius, badge.worker, &text);
    }
}
