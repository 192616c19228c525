//! What the leveller felt moves the window of the panels still to come.
//!
//! Rule, with w the wait of the panel just levelled, [a, b] the product's window at reference air and f the factor in force:
//!
//! - still wet: w was too early, so the window shall begin no sooner than 1.15·w: f becomes at least 1.15·w / a;
//! - dragging: w was too late, so the window shall end no later than 0.85·w: f becomes at most 0.85·w / b;
//! - right: if w lies outside the window, f moves just so far that w lies on its border.
//!
//! One answer moves f by at most a quarter up or a fifth down, and f stays between 0.4 and 2. An answer that the window in force
//! already explains (wet before it begins, dragging after it ends) changes nothing. The rule is ours; its steps are estimates.

use super::window::held;
use crate::say;
use crate::units::Seconds;
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// How the towel felt on a panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Feel {
    /// Like pushing liquid; the towel gets wet.
    StillWet,
    /// Levels cleanly.
    Right,
    /// Drags, streaks stay.
    Dragging,
}

/// An answer about one panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FeelAt {
    /// What was felt.
    pub feel: Feel,
    /// Seconds from the end of applying to the start of levelling.
    pub waited_s: Seconds,
}

/// Most that one answer lengthens the window.
const UP: f64 = 1.25;
/// Most that one answer shortens it.
const DOWN: f64 = 0.8;
/// How far behind a wet panel the window then begins.
const LATER: f64 = 1.15;
/// How far before a dragging panel it then ends.
const SOONER: f64 = 0.85;

/// Factor after one answer; `reference` is the product's window (shortest, longest) at reference air.
pub fn factor_after(factor: f64, reference: (Seconds, Seconds), answer: FeelAt) -> f64 {
    let factor = held(factor);
    let (min, max) = (reference.0.max(0) as f64, reference.1.max(0) as f64);
    let waited = answer.waited_s.max(0) as f64;
    // A border at zero can't be moved by a factor.
    let to_begin_at = |wait: f64| if min > 0.0 { wait / min } else { factor };
    let to_end_at = |wait: f64| if max > 0.0 { wait / max } else { factor };
    let wanted = match answer.feel {
        Feel::StillWet => factor.max(to_begin_at(LATER * waited)),
        Feel::Dragging => factor.min(to_end_at(SOONER * waited)),
        Feel::Right if waited < min * factor => to_begin_at(waited),
        Feel::Right if waited > max * factor => to_end_at(waited),
        Feel::Right => factor,
    };
    held(wanted.clamp(factor * DOWN, factor * UP))
}

/// The rule for people, with its figures.
pub fn feel_rule() -> String {
    say!("coat-feel-rule", up = decimal(100.0 * (UP - 1.0), 0), down = decimal(100.0 * (1.0 - DOWN), 0),)
}
