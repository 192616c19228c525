//! Panels side by side that the eye would tell apart.

use super::plan::{Level, PolishPlan};
use crate::finding::{Code, Finding};
use crate::say;
use crate::units::listed;
use crate::words::decimal;

/// Difference in the share of defects gone that is seen across a seam (our estimate).
pub const SEEN_CORRECTION: f64 = 0.35;

/// A panel of which at least this share of the defects goes looks clear (our estimate).
const CLEAR: f64 = 0.9;

/// A panel beside others: its name, its plan, and whether it is painted alike (glass and bare trim are not compared).
#[derive(Debug, Clone, Copy)]
pub struct Beside<'a> {
    /// What a person calls it.
    pub name: &'a str,
    /// Its plan.
    pub plan: &'a PolishPlan,
    /// Whether it carries the vehicle's paint.
    pub painted: bool,
}

/// A seam across which the finish would visibly differ.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SeamDifference {
    /// The two panels, by their places in the list given.
    pub panels: (usize, usize),
    /// How they differ, as the end of a sentence.
    pub cause: String,
}

/// Every seam across which the finish would visibly differ. `seams` are pairs of indices into `panels`.
///
/// It differs when one side is left and the other corrected, when the levels are two or more apart and the gentler side is not
/// clear afterwards (or the harder one is sanded), or when much more of the defects goes on one side ([`SEEN_CORRECTION`]). Pairs with an index outside the list are skipped.
pub fn seam_differences(panels: &[Beside<'_>], seams: &[(usize, usize)]) -> Vec<SeamDifference> {
    let painted = |at: usize| panels.get(at).filter(|p| p.painted);
    seams
        .iter()
        .filter_map(|&(a, b)| {
            Some(SeamDifference { panels: (a, b), cause: difference(painted(a)?.plan, painted(b)?.plan)? })
        })
        .collect()
}

/// The same as findings.
pub fn neighbour_findings(panels: &[Beside<'_>], seams: &[(usize, usize)]) -> Vec<Finding> {
    let finding = |found: SeamDifference| {
        let (a, b) = found.panels;
        let place = listed(&[panels[a].name, panels[b].name]);
        Finding::new(Code::FinishDiffers, place, found.cause, say!("polish-seam-advice"))
    };
    seam_differences(panels, seams).into_iter().map(finding).collect()
}

/// How two finishes differ visibly; `None` when they do not.
fn difference(a: &PolishPlan, b: &PolishPlan) -> Option<String> {
    let left = (a.level == Level::Leave) != (b.level == Level::Leave);
    let (gentle, hard) = if a.level <= b.level { (a, b) } else { (b, a) };
    // A panel that needed nothing but gloss is as clear as one that was corrected; only sanding changes the surface itself.
    let apart = hard.level as i32 - gentle.level as i32 >= 2;
    let seen = gentle.correction < CLEAR || hard.level == Level::SandAndPolish;
    if left && hard.level > Level::Gloss || !left && apart && seen {
        return Some(say!("polish-seam-levels", one = a.level.name(), other = b.level.name()));
    }
    let share = |plan: &PolishPlan| if plan.level == Level::Leave { 0.0 } else { plan.correction };
    let gap = (share(a) - share(b)).abs();
    (!left && gap > SEEN_CORRECTION).then(|| say!("polish-seam-share", more = decimal(gap * 100.0, 0)))
}
