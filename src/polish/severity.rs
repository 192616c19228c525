//! From what a person sees of a defect to a weight and a depth.

use super::defect::{DefectKind, FINGERNAIL_CATCHES_UM};
use crate::units::{Micrometres, Millimetres};
use serde::{Deserialize, Serialize};

/// Size class of a defect, 2 to 5: 2 just visible, 3 under 0.5 mm, 4 up to 5 mm, 5 above.
///
/// **Source**: the idea of ISO 4628-1, its borders from memory. A defect somebody has noted is at least just visible.
pub fn size_class(size: Millimetres) -> u8 {
    match size.mm() {
        mm if mm <= 0.0 => 2,
        mm if mm < 0.5 => 3,
        mm if mm <= 5.0 => 4,
        _ => 5,
    }
}

/// How much of the visible trouble a defect is, from its quantity (0 none to 5 dense) and its size class.
///
/// Each step of either counts one and a half times the one before (our estimate); quantity 0 weighs nothing.
pub fn visible_weight(quantity: u8, size_class: u8) -> f64 {
    match quantity.min(5) {
        0 => 0.0,
        q => 1.5_f64.powi(i32::from(q) - 1 + i32::from(size_class.clamp(2, 5)) - 2),
    }
}

/// Whether a fingernail catches in a defect.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Fingernail {
    /// Nobody tried.
    #[default]
    NotTried,
    /// It catches.
    Catches,
    /// It slides over.
    Slides,
}

/// Depth range of a kind, narrowed by the fingernail: where it catches, the defect is at least as deep as nails feel; where it
/// slides, at most (our estimate of the bench rule, about 4.5 µm).
///
/// The answer is in order; a kind that is always deeper or shallower keeps at least the border itself.
pub fn depth_by_fingernail(kind: DefectKind, fingernail: Fingernail) -> (Micrometres, Micrometres) {
    let usual = kind.depth_range();
    match fingernail {
        Fingernail::NotTried => (usual.low, usual.high),
        Fingernail::Catches => (usual.low.max(FINGERNAIL_CATCHES_UM), usual.high.max(FINGERNAIL_CATCHES_UM)),
        Fingernail::Slides => (usual.low.min(FINGERNAIL_CATCHES_UM), usual.high.min(FINGERNAIL_CATCHES_UM)),
    }
}
