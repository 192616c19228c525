//! Marks on the map and in the chart: a triangle with the number of the mark in the list.

use crate::geometry::Viewport;
use crate::gui::action::Model;
use crate::gui::theme;
use eframe::egui::{Align2, FontId, Painter, Pos2, Shape, Stroke, pos2, vec2};

/// Half the width of a sign.
const HALF: f32 = 10.5;
/// How long after it happened a mark still shows which two panels it is about, in seconds of the day.
const FRESH_S: i64 = 60;

/// A triangle with a number.
pub(super) fn sign(paint: &Painter, at: Pos2, number: usize) {
    let p = theme::of(paint.ctx());
    let corners = vec![at + vec2(0.0, -HALF), at + vec2(HALF, 0.75 * HALF), at + vec2(-HALF, 0.75 * HALF)];
    paint.add(Shape::convex_polygon(corners, p.sheet, Stroke::new(1.5, p.note)));
    let font = FontId::new(if number > 9 { 8.5 } else { 10.0 }, theme::bold_family());
    paint.text(at + vec2(0.0, 1.8), Align2::CENTER_CENTER, number.to_string(), font, p.note);
}

/// Draws the marks that have happened by the moment on screen, where they happen; with one that is looked at, only that.
pub(in crate::gui) fn practice_marks(paint: &Painter, m: &Model<'_>, view: &Viewport) {
    let p = theme::of(paint.ctx());
    let Some(laying) = m.practice.laying() else { return };
    let place = |panel: usize| {
        let at = view.to_screen(m.template.panels[panel].label.centre);
        pos2(at.x, at.y)
    };
    let now = laying.moment_s().unwrap_or(i64::MAX);
    let mut on_panel = vec![0_u8; m.template.panels.len()];
    for (k, mark) in laying.marks_so_far().filter(|(k, _)| laying.mark.is_none_or(|open| open == *k)) {
        if let [first, .., last] = mark.panels[..]
            && (laying.mark.is_some() || now - mark.at_s <= FRESH_S)
        {
            let ends = [place(first), place(last)];
            paint.extend(Shape::dashed_line(&ends, Stroke::new(2.5, p.note), 6.0, 4.0));
        }
        let Some(&panel) = mark.panels.last() else { continue };
        // Above the numbers of the order; several on one panel stand beside one another.
        let along = f32::from(on_panel[panel]) * (2.0 * HALF - 3.0);
        on_panel[panel] = on_panel[panel].saturating_add(1);
        sign(paint, place(panel) + vec2(along - HALF, -24.0), k + 1);
    }
}
