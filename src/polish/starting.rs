//! The steps that a shop starts from, and what they are called.
//!
//! In a job they have their British names, so that a job is the same one whatever language it is opened in. [`called`] gives those
//! names in the language in use.

use super::equipment::{Drive, Equipment};
use super::step::{PolishStep, StepKind};
use crate::message;
use crate::units::{Decibels, MetresPerSecondSquared, Micrometres};
use crate::words::{Language, Message, language, text_in};

const WET_2500: Message = message!("polish-start-wet-2500");
const WET_3000: Message = message!("polish-start-wet-3000");
const CUTTING: Message = message!("polish-start-cutting");
const MEDIUM: Message = message!("polish-start-medium");
const FINE: Message = message!("polish-start-fine");
const BLOCK: Message = message!("polish-start-block");
const FIRM: Message = message!("polish-start-firm");
const MIDDLE: Message = message!("polish-start-middle");
const SOFT: Message = message!("polish-start-soft");
const PAPER_2500: Message = message!("polish-start-paper-2500");
const PAPER_3000: Message = message!("polish-start-paper-3000");
const CUTTING_POLISH: Message = message!("polish-start-cutting-polish");
const MEDIUM_POLISH: Message = message!("polish-start-medium-polish");
const FINE_POLISH: Message = message!("polish-start-fine-polish");

/// Every word of the starting set.
const WORDS: [Message; 14] = [
    WET_2500,
    WET_3000,
    CUTTING,
    MEDIUM,
    FINE,
    BLOCK,
    FIRM,
    MIDDLE,
    SOFT,
    PAPER_2500,
    PAPER_3000,
    CUTTING_POLISH,
    MEDIUM_POLISH,
    FINE_POLISH,
];

fn british(word: Message) -> &'static str {
    text_in(Language::British, word.0).unwrap_or(word.0)
}

/// A name of a step, a pad or an abrasive as a person reads it: one of the starting set in the language in use, any other as the
/// shop wrote it.
pub fn called(name: &str) -> &str {
    if language() == Language::British {
        return name;
    }
    match WORDS.into_iter().find(|word| british(*word) == name) {
        Some(word) => word.text(),
        None => name,
    }
}

impl PolishStep {
    /// A set of steps to start from. Every number is our estimate inside what trade pages give per step; a test spot replaces it.
    pub fn starting_set() -> Vec<Self> {
        let step = |name, kind, removal, left, clears, seconds, passes: (u32, u32)| Self {
            name: british(name).to_owned(),
            kind,
            removal_um: Micrometres::of(removal),
            removal_spread: 0.5,
            scratch_left_um: Micrometres::of(left),
            clears_up_to_um: Micrometres::of(clears),
            seconds_per_m2_pass: seconds,
            setup_s: 60,
            min_passes: passes.0,
            max_passes: passes.1,
            vibration_ms2: MetresPerSecondSquared::ZERO,
            vibration_k_ms2: MetresPerSecondSquared::ZERO,
            noise_db: Decibels::ZERO,
            equipment: Equipment::default(),
        };
        let by_hand = |abrasive, step: Self| {
            let (pad, abrasive) = (british(BLOCK).to_owned(), british(abrasive).to_owned());
            Self { equipment: Equipment { drive: Drive::Hand, pad, abrasive, ..Equipment::default() }, ..step }
        };
        let orbital = |pad, abrasive, step: Self| Self {
            vibration_ms2: MetresPerSecondSquared::of(4.0),
            vibration_k_ms2: MetresPerSecondSquared::of(1.5),
            noise_db: Decibels::of(82.0),
            equipment: Equipment {
                drive: Drive::Orbital,
                orbit_mm: 15.0,
                per_minute: 4_000.0,
                pad_mm: 125.0,
                pad: british(pad).to_owned(),
                abrasive: british(abrasive).to_owned(),
                ..Equipment::default()
            },
            ..step
        };
        vec![
            by_hand(PAPER_2500, step(WET_2500, StepKind::Sand, 1.0, 1.7, 8.0, 300.0, (1, 4))),
            by_hand(PAPER_3000, step(WET_3000, StepKind::Sand, 0.6, 1.3, 6.0, 300.0, (1, 4))),
            orbital(FIRM, CUTTING_POLISH, step(CUTTING, StepKind::Cut, 0.8, 0.5, 6.0, 240.0, (2, 6))),
            orbital(MIDDLE, MEDIUM_POLISH, step(MEDIUM, StepKind::Polish, 0.4, 0.25, 3.0, 240.0, (2, 6))),
            orbital(SOFT, FINE_POLISH, step(FINE, StepKind::Finish, 0.12, 0.05, 1.0, 200.0, (2, 6))),
        ]
    }
}
