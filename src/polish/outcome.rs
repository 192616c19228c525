//! What becomes of each defect.

use super::choose::Choice;
use super::facts::PanelFacts;

/// What becomes of one defect.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Outcome {
    /// It goes, even at its greatest depth.
    Goes,
    /// Part of it goes.
    Fades {
        /// Share that goes, between 0 and 1.
        share: f64,
    },
    /// It stays as it is.
    Stays,
}

impl Outcome {
    /// Share that goes.
    pub fn share(self) -> f64 {
        match self {
            Self::Goes => 1.0,
            Self::Fades { share } => share,
            Self::Stays => 0.0,
        }
    }
}

/// Weighted share of all defects that polishing can help and that goes; 1 when there are none.
pub(super) fn correction(facts: &PanelFacts<'_>, outcomes: &[Outcome]) -> f64 {
    let (mut gone, mut all) = (0.0, 0.0);
    for (defect, outcome) in facts.defects.iter().zip(outcomes).filter(|(d, _)| d.kind.treatment().by_removal()) {
        all += defect.safe_weight();
        gone += defect.safe_weight() * outcome.share();
    }
    if all > 0.0 { (gone / all).clamp(0.0, 1.0) } else { 1.0 }
}

/// Outcome of every defect, in the order given.
pub(super) fn outcomes(facts: &PanelFacts<'_>, choice: &Choice) -> Vec<Outcome> {
    let outcome = |index: usize| {
        let extra = choice.local.iter().find(|(defect, _)| *defect == index);
        let depth =
            extra.map_or_else(|| choice.whole.depth_cleared(), |(_, found)| choice.whole.depth_cleared_with(found));
        match facts.defects[index].share_gone(depth) {
            share if share >= 1.0 => Outcome::Goes,
            share if share > 0.0 => Outcome::Fades { share },
            _ => Outcome::Stays,
        }
    };
    if choice.whole.passes.is_empty() {
        return vec![Outcome::Stays; facts.defects.len()];
    }
    (0..facts.defects.len()).map(outcome).collect()
}
