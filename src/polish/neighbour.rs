//! Panels side by side that the eye would tell apart.

use super::plan::{Level, PolishPlan};
use crate::finding::{Code, Finding};

/// Difference in the share of defects gone that is seen across a seam (our estimate).
pub const SEEN_CORRECTION: f64 = 0.35;

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

/// Findings for every seam across which the finish would visibly differ. `seams` are pairs of indices into `panels`.
///
/// It differs when one side is left and the other corrected, when the levels are two or more apart, or when much more of the
/// defects goes on one side ([`SEEN_CORRECTION`]). Pairs with an index outside the list are skipped.
pub fn neighbour_findings(panels: &[Beside<'_>], seams: &[(usize, usize)]) -> Vec<Finding> {
    seams
        .iter()
        .filter_map(|&(a, b)| Some((panels.get(a)?, panels.get(b)?)))
        .filter(|(a, b)| a.painted && b.painted)
        .filter_map(|(a, b)| {
            let cause = difference(a.plan, b.plan)?;
            Some(Finding::new(
                Code::FinishDiffers,
                format!("{} and {}", a.name, b.name),
                cause,
                "work the better one less, the other more where its budget allows, or tell the customer",
            ))
        })
        .collect()
}

/// How two finishes differ visibly; `None` when they do not.
fn difference(a: &PolishPlan, b: &PolishPlan) -> Option<String> {
    let apart = (a.level as i32 - b.level as i32).abs();
    let left = (a.level == Level::Leave) != (b.level == Level::Leave);
    if left && a.level.max(b.level) > Level::Gloss || apart >= 2 {
        return Some(format!("one is planned as {}, the other as {}", a.level, b.level));
    }
    let share = |plan: &PolishPlan| if plan.level == Level::Leave { 0.0 } else { plan.correction };
    let gap = (share(a) - share(b)).abs();
    (!left && gap > SEEN_CORRECTION)
        .then(|| format!("{:.0}\u{202f}% more of the defects goes on one side of the seam", gap * 100.0))
}
