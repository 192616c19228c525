//! A shape for each worker and each class of defect, as in the window, so that colour is never alone.

use crate::scene::{DefectClass, PinShape};
use crate::sheets::font;
use crate::sheets::page::{Item, Line, PaperPoint, Run, circle, polygon, polyline};
use crate::sheets::palette::{self, CONTOUR, PAPER};

/// A number in the shape of a worker.
pub(super) fn badge(items: &mut Vec<Item>, at: PaperPoint, radius: f32, worker: usize, text: &str) {
    shape(items, at, radius, worker);
    let share = if text.len() > 2 { 0.9 } else { 1.15 };
    let size = radius * share;
    let x = at.x - font::width(text, true, size) / 2.0;
    let y = at.y + size * font::CAPITALS / 2.0;
    let colour = palette::text_on(palette::worker(worker));
    items.push(Item::Text(Run { at: PaperPoint::new(x, y), size, bold: true, colour, text: text.to_owned() }));
}

/// The shape of a worker.
pub(super) fn shape(items: &mut Vec<Item>, at: PaperPoint, radius: f32, worker: usize) {
    let (fill, line) = (Some(palette::worker(worker)), Some(rim(0.2)));
    let quarter = std::f32::consts::FRAC_PI_4;
    items.push(match worker % 4 {
        0 => circle(at, radius, fill, line),
        1 => polygon(&regular(at, radius * 0.9 * std::f32::consts::SQRT_2, 4, quarter), fill, line),
        2 => polygon(&regular(at, radius * 1.1, 6, 0.0), fill, line),
        _ => polygon(&regular(at, radius * 1.2, 4, 0.0), fill, line),
    });
}

/// A pin. Size follows severity.
pub(super) fn pin(items: &mut Vec<Item>, at: PaperPoint, shape: PinShape, severity: f32) {
    let radius = 1.1 + 1.3 * severity;
    let line = rim(0.3);
    let quarter = std::f32::consts::FRAC_PI_4;
    match shape {
        PinShape::Spot => items.push(circle(at, 0.8, Some(PAPER), Some(line))),
        PinShape::WantedSpot => items.push(circle(at, 1.4, None, Some(line))),
        PinShape::SuspectSpot => {
            items.push(circle(at, 1.1, Some(PAPER), Some(line)));
            for side in [-0.75_f32, 0.75] {
                let by = euclid::vec2(0.75, side);
                items.push(polyline(&[at - by, at + by], line));
            }
        }
        PinShape::Defect(class) => {
            let fill = Some(palette::class(class));
            items.push(match class {
                DefectClass::Fine => circle(at, radius, fill, Some(line)),
                DefectClass::Deep => {
                    polygon(&regular(at, radius * 1.3, 3, -std::f32::consts::FRAC_PI_2), fill, Some(line))
                }
                DefectClass::OnTop => polygon(&regular(at, radius * 1.2, 4, 0.0), fill, Some(line)),
                DefectClass::Broken => polygon(&regular(at, radius * 1.2, 4, quarter), fill, Some(line)),
            });
        }
    }
}

fn rim(width: f32) -> Line {
    Line { colour: CONTOUR, width, dash: None }
}

/// A regular polygon; `turn` is the angle of its first corner.
fn regular(at: PaperPoint, radius: f32, corners: usize, turn: f32) -> Vec<PaperPoint> {
    let corner = |k: usize| {
        let angle = turn + std::f32::consts::TAU * k as f32 / corners as f32;
        at + euclid::vec2(angle.cos(), angle.sin()) * radius
    };
    (0..corners).map(corner).collect()
}
