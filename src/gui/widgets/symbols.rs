//! Symbols that mean something: a shape for each worker and each class of defect, so that colour is never alone.

use crate::gui::theme;
use crate::scene::{DefectClass, PinShape};
use eframe::egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, pos2, vec2};

/// A number in the shape and colour of a worker.
pub(in crate::gui) fn worker_badge(paint: &Painter, at: Pos2, radius: f32, worker: usize, text: &str) {
    worker_shape(paint, at, radius, worker);
    if !text.is_empty() {
        // Three figures are made to fit.
        let share = if text.chars().count() > 2 { 0.95 } else { 1.15 };
        let font = FontId::new((radius * share).clamp(9.0, 16.0), theme::bold_family());
        paint.text(at, Align2::CENTER_CENTER, text, font, theme::text_on(theme::worker(worker)));
    }
}

/// The shape of a worker, without a number.
pub(in crate::gui) fn worker_shape(paint: &Painter, at: Pos2, radius: f32, worker: usize) {
    let p = theme::of(paint.ctx());
    let fill = theme::worker(worker);
    let line = Stroke::new(1.0, p.contour);
    match worker % 4 {
        0 => disc(paint, at, radius, fill, line),
        1 => {
            let side = radius * 0.9;
            let square = [
                pos2(at.x - side, at.y - side),
                pos2(at.x + side, at.y - side),
                pos2(at.x + side, at.y + side),
                pos2(at.x - side, at.y + side),
            ];
            paint.add(Shape::convex_polygon(square.to_vec(), fill, line));
        }
        2 => {
            paint.add(Shape::convex_polygon(regular(at, radius * 1.1, 6, 0.0), fill, line));
        }
        _ => {
            paint.add(Shape::convex_polygon(regular(at, radius * 1.2, 4, 0.0), fill, line));
        }
    }
}

/// A pin. Size follows severity.
pub(in crate::gui) fn pin_symbol(paint: &Painter, at: Pos2, shape: PinShape, severity: f32) {
    let p = theme::of(paint.ctx());
    let radius = 4.0 + 5.0 * severity;
    let line = Stroke::new(1.5, p.contour);
    match shape {
        PinShape::Spot => {
            disc(paint, at, 3.0, p.sheet, line);
        }
        PinShape::SuspectSpot => {
            paint.circle(at, 4.5, p.sheet, Stroke::new(1.5, p.note));
            for side in [-3.0, 3.0] {
                paint.line_segment([at - vec2(3.0, side), at + vec2(3.0, side)], Stroke::new(1.5, p.note));
            }
        }
        PinShape::WantedSpot => {
            paint.circle_stroke(at, 6.0, Stroke::new(1.5, p.accent));
        }
        PinShape::Defect(class) => {
            let fill = theme::defect_class(class as usize);
            match class {
                DefectClass::Fine => disc(paint, at, radius, fill, line),
                DefectClass::Deep => {
                    paint.add(Shape::convex_polygon(
                        regular(at, radius * 1.3, 3, -std::f32::consts::FRAC_PI_2),
                        fill,
                        line,
                    ));
                }
                DefectClass::OnTop => {
                    paint.add(Shape::convex_polygon(regular(at, radius * 1.2, 4, 0.0), fill, line));
                }
                DefectClass::Broken => {
                    let quarter = std::f32::consts::FRAC_PI_4;
                    paint.add(Shape::convex_polygon(regular(at, radius * 1.2, 4, quarter), fill, line));
                }
            }
        }
    }
}

/// A disc with a rim, as one disc on another: each is a picture that is there already, so that hundreds cost next to nothing.
fn disc(paint: &Painter, at: Pos2, radius: f32, fill: Color32, rim: Stroke) {
    paint.circle_filled(at, radius + rim.width / 2.0, rim.color);
    paint.circle_filled(at, radius - rim.width / 2.0, fill);
}

/// A regular polygon; `turn` is the angle of its first corner.
fn regular(at: Pos2, radius: f32, corners: usize, turn: f32) -> Vec<Pos2> {
    (0..corners)
        .map(|k| {
            let angle = turn + std::f32::consts::TAU * k as f32 / corners as f32;
            pos2(at.x + radius * angle.cos(), at.y + radius * angle.sin())
        })
        .collect()
}

/// Hatches a box: the higher the index (0 to 3), the denser, as the levels on the map.
pub(in crate::gui) fn hatched(paint: &Painter, area: Rect, hatch: usize, color: Color32) {
    const DISTANCES: [f32; 4] = [12.0, 8.0, 5.5, 3.5];
    let step = DISTANCES[hatch.min(3)];
    let clipped = paint.with_clip_rect(area.intersect(paint.clip_rect()));
    let mut x = area.left() - area.height() + step / 2.0;
    while x < area.right() {
        let line = [pos2(x, area.top()), pos2(x + area.height(), area.bottom())];
        clipped.line_segment(line, Stroke::new(1.0, color));
        x += step;
    }
}
