//! Numbers of the order on a panel, each in the shape of its worker. Where two come to it as the same number, one number stands on
//! both shapes, one on the other.

use crate::gui::widgets::{worker_badge, worker_shape};
use crate::scene::Badge;
use eframe::egui::{Painter, Pos2, Rect, Vec2, pos2, vec2};

/// Most badges beside one another.
const MOST: usize = 2;
/// From one badge to the next, in radii.
const STEP: f32 = 2.2;
/// How far two shapes on one another are moved apart, in radii either way.
const APART: f32 = 0.24;

/// Whether one number stands for two workers.
fn together(badges: &[Badge]) -> bool {
    matches!(badges, [a, b] if a.worker != b.worker && a.number == b.number)
}

/// The room that badges of a radius take.
pub(super) fn size(badges: &[Badge], radius: f32) -> Vec2 {
    if together(badges) {
        Vec2::splat(radius * (STEP + 2.0 * APART))
    } else {
        vec2(radius * STEP * badges.len().min(MOST) as f32, radius * STEP)
    }
}

/// Draws badges round a place; answers the room they take.
pub(super) fn draw(paint: &Painter, at: Pos2, radius: f32, badges: &[Badge]) -> Rect {
    let area = Rect::from_center_size(at, size(badges, radius));
    if let ([first, second], true) = (badges, together(badges)) {
        let apart = Vec2::splat(APART * radius);
        worker_shape(paint, at + apart, radius, second.worker);
        worker_badge(paint, at - apart, radius, first.worker, &first.number.to_string());
    } else {
        for (place, badge) in badges.iter().take(MOST).enumerate() {
            worker_badge(paint, middle(area, badges, place), radius, badge.worker, &badge.number.to_string());
        }
    }
    area
}

/// The middle of the badge at a place of the row that takes an area.
pub(super) fn middle(area: Rect, badges: &[Badge], place: usize) -> Pos2 {
    if together(badges) {
        return area.center();
    }
    let step = area.width() / badges.len().clamp(1, MOST) as f32;
    pos2(area.left() + step * (place.min(MOST - 1) as f32 + 0.5), area.center().y)
}
