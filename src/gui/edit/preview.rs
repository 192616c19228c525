//! The cut that a click would make, drawn over the map.

use super::Editing;
use crate::geometry::{MapPoint, ScreenPoint};
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::view_state::Tool;
use crate::vehicle::Side;
use eframe::egui::{Painter, Pos2, Rect, Stroke, Ui, pos2};

/// Draws where the cut begins, and the line to where it would end, on both sides.
pub(in crate::gui) fn cut_preview(ui: &Ui, m: &Model<'_>, editing: &Editing, area: Rect) {
    let (Tool::Cut, Some((_, panel)), Some(view)) = (m.view.tool, m.current(), m.view.viewport) else { return };
    let pointer = ui.input(|i| i.pointer.hover_pos()).filter(|at| area.contains(*at));
    let hovered = pointer.map(|at| view.to_map(ScreenPoint::new(at.x, at.y)));
    let Some(from) = editing.first.or(hovered) else { return };
    let to = hovered.unwrap_or(from);
    let Some([from, to]) = m.template.cut_ends(&panel.id, from, to) else { return };
    let paint = ui.painter_at(area);
    let p = theme::of(ui.ctx());
    let screen = |at: MapPoint| {
        let at = view.to_screen(at);
        pos2(at.x, at.y)
    };
    let mirrored = |at: MapPoint| MapPoint::new(at.x, -at.y);
    if panel.side != Side::Centre {
        line(&paint, screen(mirrored(from)), screen(mirrored(to)), Stroke::new(1.5, p.ink_soft), 2.5);
    }
    line(&paint, screen(from), screen(to), Stroke::new(2.5, p.accent), 4.5);
    paint.circle_filled(screen(from), 2.0, p.sheet);
}

fn line(paint: &Painter, from: Pos2, to: Pos2, stroke: Stroke, dot: f32) {
    paint.line_segment([from, to], stroke);
    for end in [from, to] {
        paint.circle_filled(end, dot, stroke.color);
    }
}
