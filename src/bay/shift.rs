//! What moves the window while the day goes on: answers of the towel, and the air.

use crate::coat::{Air, FeelAt, Window, WindowBasis, factor_after};

/// One thing that moved the window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Shift {
    /// An answer about a panel.
    Felt(FeelAt),
    /// The air is this from then on.
    Air(Air),
}

/// The window after a row of shifts, oldest first. `before` is the window that `air` gives on that basis.
pub(super) fn window_after_shifts(before: Window, air: &Air, basis: &WindowBasis, shifts: &[Shift]) -> Window {
    if shifts.is_empty() {
        return before;
    }
    let (mut factor, mut air) = (before.factor, *air);
    for shift in shifts {
        match shift {
            Shift::Felt(answer) => factor = factor_after(factor, basis.reference_s, *answer),
            Shift::Air(next) => {
                factor *= basis.factor(next) / basis.factor(&air);
                air = *next;
            }
        }
    }
    basis.window_times(factor, basis.spread(&air))
}
