//! Windows of coated panels as running bars.

use super::{BayFacts, Doing};
use crate::units::Seconds;

/// A coated panel that waits.
#[derive(Debug, Clone, PartialEq)]
pub struct WindowRow {
    /// The levelling that ends the wait.
    pub doing: Doing,
    /// How far it is.
    pub phase: WindowPhase,
    /// Share of the whole wait that has passed, 0 to 1.
    pub passed: f32,
    /// Where on that scale the moment to try lies.
    pub try_at: f32,
    /// Where the plan has it begin, if it has.
    pub planned_at: Option<f32>,
    /// Until the moment to try; below zero after it.
    pub try_s: Seconds,
    /// Until the latest moment to begin; below zero after it.
    pub left_s: Seconds,
}

/// How far a window is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WindowPhase {
    /// Too early.
    Early,
    /// To be levelled now or soon.
    Open,
    /// Nearly over.
    Closing,
    /// Over.
    Missed,
    /// Somebody is levelling.
    Levelling,
}

/// A window counts as closing from so many seconds before its end.
const CLOSING_S: Seconds = 30;

pub(super) fn rows(facts: &BayFacts<'_>) -> Vec<WindowRow> {
    let now = facts.now_s;
    let row = |w: &crate::bay::OpenWindow| {
        let all = (w.latest_s - w.since_s).max(1) as f32;
        let at = |moment: Seconds| ((moment - w.since_s) as f32 / all).clamp(0.0, 1.0);
        let (try_s, left_s) = (w.try_s - now, w.latest_s - now);
        let phase = match () {
            () if w.running => WindowPhase::Levelling,
            () if left_s < 0 => WindowPhase::Missed,
            () if try_s > 0 => WindowPhase::Early,
            () if left_s <= CLOSING_S => WindowPhase::Closing,
            () => WindowPhase::Open,
        };
        WindowRow {
            doing: facts.doing(w.operation),
            phase,
            passed: at(now),
            try_at: at(w.try_s),
            planned_at: w.planned_s.map(at),
            try_s,
            left_s,
        }
    };
    facts.board.windows.iter().map(row).collect()
}
