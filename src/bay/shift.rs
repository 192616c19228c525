//! What moves the window while the day goes on: answers of the towel, and the air.

use crate::coat::{Air, FeelAt, Product, Window, factor_after, window_factor, window_times};

/// One thing that moved the window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Shift {
    /// An answer about a panel.
    Felt(FeelAt),
    /// The air is this from then on.
    Air(Air),
}

/// The window after a row of shifts, oldest first. `before` is the window that `air` gives `product`.
pub(super) fn window_after_shifts(before: Window, air: &Air, product: &Product, shifts: &[Shift]) -> Window {
    if shifts.is_empty() {
        return before;
    }
    let reference = (product.window_min_s, product.window_max_s);
    let (mut factor, mut air) = (before.factor, *air);
    for shift in shifts {
        match shift {
            Shift::Felt(answer) => factor = factor_after(factor, reference, *answer),
            Shift::Air(next) => {
                factor *= window_factor(next, product) / window_factor(&air, product);
                air = *next;
            }
        }
    }
    window_times(reference, factor)
}
