//! Text on one line; what has no room ends in three dots.

use eframe::egui::text::{LayoutJob, TextWrapping};
use eframe::egui::{Align2, Color32, FontId, Painter, Pos2, Rect};

/// A text on one line of a width.
pub(in crate::gui) fn one_line(text: &str, font: FontId, ink: Color32, width: f32) -> LayoutJob {
    let mut job = LayoutJob::simple_singleline(text.to_owned(), font, ink);
    job.wrap = TextWrapping::truncate_at_width(width);
    job
}

/// Writes it at a place; answers the room that it takes.
pub(in crate::gui) fn one_line_at(
    paint: &Painter,
    at: Pos2,
    align: Align2,
    text: &str,
    (font, ink): (FontId, Color32),
    width: f32,
) -> Rect {
    let galley = paint.layout_job(one_line(text, font, ink, width.max(0.0)));
    let room = align.anchor_size(at, galley.size());
    paint.galley(room.min, galley, ink);
    room
}
