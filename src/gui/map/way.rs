//! The way round the vehicle while readings are entered: where one is, and what comes next.

use super::paint::to_screen;
use crate::geometry::{MapPoint, Viewport};
use crate::gui::action::Model;
use crate::gui::entry::{NextReading, next_reading};
use crate::gui::theme;
use crate::gui::view_state::{Tool, Workspace};
use crate::measure::READINGS_PER_SPOT;
use crate::scene::Overlay;
use eframe::egui::{Align2, FontId, Painter, Pos2, Stroke, vec2};

/// Spots ahead that the way is drawn clearly for.
const AHEAD: usize = 10;

/// Where the next reading goes, while the film is being read.
pub(super) fn next_place(m: &Model<'_>) -> Option<MapPoint> {
    next(m).map(|next| next.at)
}

/// The next reading, while the film is being read.
fn next(m: &Model<'_>) -> Option<NextReading> {
    let reading =
        m.view.workspace == Workspace::Survey && m.view.overlay == Overlay::Film && m.view.tool == Tool::Choose;
    if reading && m.view.chosen.len() < 2 { next_reading(m) } else { None }
}

/// Draws the way from the next spot on, fading, and the spots that were skipped.
pub(super) fn draw(paint: &Painter, m: &Model<'_>, view: &Viewport) {
    let Some(next) = next(m) else { return };
    let p = theme::of(paint.ctx());
    let readable: Vec<usize> =
        (0..m.way().len()).filter(|k| m.insight.panels[m.way()[*k].panel].unreadable.is_none()).collect();
    let place = |k: &usize| to_screen(view, m.way()[*k].at);
    let from = readable.iter().position(|k| *k == next.stop).unwrap_or(0);
    let ahead: Vec<Pos2> = readable[from..].iter().take(AHEAD + 1).map(place).collect();
    for (leg, ends) in ahead.windows(2).enumerate() {
        let strength = 1.0 - leg as f32 / AHEAD as f32;
        let stroke = Stroke::new(1.0 + 1.5 * strength, p.accent.gamma_multiply(0.25 + 0.75 * strength));
        paint.line_segment([ends[0], ends[1]], stroke);
    }
    for skipped in &m.view.entry.skipped {
        if let Some(stop) = m.way().get(*skipped) {
            let at = to_screen(view, stop.at);
            let line = Stroke::new(2.0, p.note);
            paint.line_segment([at + vec2(-4.0, -4.0), at + vec2(4.0, 4.0)], line);
            paint.line_segment([at + vec2(-4.0, 4.0), at + vec2(4.0, -4.0)], line);
        }
    }
}

/// Draws the next spot as a filled mark with the number of its reading.
pub(super) fn mark(paint: &Painter, m: &Model<'_>, view: &Viewport) {
    let Some(next) = next(m) else { return };
    let p = theme::of(paint.ctx());
    let at = to_screen(view, next.at);
    paint.circle(at, 11.0, p.accent, Stroke::new(2.0, p.on_accent));
    paint.circle_stroke(at, 14.0, Stroke::new(2.0, p.accent));
    let number = (next.taken + 1).min(READINGS_PER_SPOT).to_string();
    paint.text(at, Align2::CENTER_CENTER, number, FontId::new(14.0, theme::bold_family()), p.on_accent);
}
