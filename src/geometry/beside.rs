//! A place beside something for a label that has no room on it.

use super::space::{ScreenPoint, ScreenRect, ScreenVector};

/// Directions that are tried.
const TURNS: u8 = 24;
/// Distances that are tried, as shares of the first.
const STEPS: [f32; 9] = [1.0, 1.45, 2.0, 2.67, 3.45, 4.33, 5.33, 6.45, 7.8];

/// The nearest place round `from` for a label of a size inside `area`, at least `nearest` away, for which `is_free` holds. `cost`
/// says what else there is against a place, in the unit of distances.
pub fn free_place(
    from: ScreenPoint,
    size: ScreenVector,
    area: ScreenRect,
    nearest: f32,
    is_free: impl Fn(ScreenRect) -> bool,
    cost: impl Fn(ScreenRect) -> f32,
) -> Option<ScreenRect> {
    let mut best: Option<(f32, ScreenRect)> = None;
    for distance in STEPS.map(|step| step * nearest) {
        if best.is_some_and(|(least, _)| distance >= least) {
            break; // the distance alone costs as much already
        }
        for turn in 0..TURNS {
            let angle = std::f32::consts::TAU * f32::from(turn) / f32::from(TURNS);
            let reach = euclid::vec2(angle.cos() * (distance + size.x / 2.0), angle.sin() * (distance + size.y / 2.0));
            let middle = from + reach;
            let rect = ScreenRect::new(middle - size / 2.0, middle + size / 2.0);
            if !area.contains_box(&rect) || !is_free(rect) {
                continue;
            }
            let cost = distance + cost(rect);
            if best.is_none_or(|(least, _)| cost < least) {
                best = Some((cost, rect));
            }
        }
    }
    best.map(|(_, rect)| rect)
}
