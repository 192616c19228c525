//! Marks on the map and in the chart: a triangle with the number of the mark in the list.

use crate::geometry::Viewport;
use crate::gui::action::Model;
use crate::gui::theme;
use eframe::egui::{Align2, FontId, Painter, Pos2, Shape, Stroke, pos2, vec2};

/// A triangle with a number.
pub(super) fn sign(paint: &Painter, at: Pos2, number: usize) {
    let p = theme::of(paint.ctx());
    let corners = vec![at + vec2(0.0, -12.0), at + vec2(12.5, 9.0), at + vec2(-12.5, 9.0)];
    paint.add(Shape::convex_polygon(corners, p.sheet, Stroke::new(2.0, p.note)));
    let font = FontId::new(if number > 9 { 9.0 } else { 11.0 }, theme::bold_family());
    paint.text(at + vec2(0.0, 2.5), Align2::CENTER_CENTER, number.to_string(), font, p.note);
}

/// Draws the marks that have happened by the moment on screen, where they happen; with one that is looked at, only that.
pub(in crate::gui) fn practice_marks(paint: &Painter, m: &Model<'_>, view: &Viewport) {
    let p = theme::of(paint.ctx());
    let Some(laying) = m.practice.laying() else { return };
    let place = |panel: usize| {
        let at = view.to_screen(m.template.panels[panel].label.centre);
        pos2(at.x, at.y)
    };
    let mut on_panel = vec![0_u8; m.template.panels.len()];
    for (k, mark) in laying.marks_so_far().filter(|(k, _)| laying.mark.is_none_or(|open| open == *k)) {
        if let [first, .., last] = mark.panels[..] {
            let ends = [place(first), place(last)];
            paint.extend(Shape::dashed_line(&ends, Stroke::new(2.0, p.note), 5.0, 4.0));
        }
        let Some(&panel) = mark.panels.last() else { continue };
        // Several on one panel stand beside one another.
        let along = f32::from(on_panel[panel]) * 20.0;
        on_panel[panel] = on_panel[panel].saturating_add(1);
        sign(paint, place(panel) + vec2(along - 14.0, -18.0), k + 1);
    }
}
