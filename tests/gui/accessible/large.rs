//! Everything at twice the size in a window of 1280 by 800 (1.4.4): what does not fit is scrolled to.

use super::keys::round;
use super::nothing_in;
use super::scenes::{SIZE, every_scene};
use eframe::egui::{Modifiers, Pos2, Rect, Vec2};

/// A window in points, as it is at 200 %.
const TWICE: [f32; 2] = [SIZE[0] / 2.0, SIZE[1] / 2.0];

#[test]
fn at_twice_the_size_everything_is_reached_and_seen() {
    let mut found = Vec::new();
    every_scene(TWICE, &mut |scene, window| {
        let Some(reached) = round(window, Modifiers::NONE) else {
            found.push(format!("{scene}: Tab does not come round"));
            return;
        };
        let screen = Rect::from_min_size(Pos2::ZERO, Vec2::from(TWICE));
        for target in reached {
            let seen = target.area.intersect(screen);
            // All of it, or of something that is larger than the window at least a part.
            let is_seen = seen.is_positive() && (seen.height() >= target.area.height().min(24.0));
            if !is_seen {
                found.push(format!("{scene}: {:?} “{}” at {:?}", target.role, target.name, target.area));
            }
        }
    });
    nothing_in(found);
}
