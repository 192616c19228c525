//! The exact search for sequences of steps.
//!
//! Steps are taken hardest first. A label is a partial sequence: its removal r (mean) and R (upper bound), its time, the deepest
//! defect its steps can clear, and its last step. Label A makes B needless when both end in the same step and A is at least as
//! good in all four: r not less, R not more, time not more, reach not less. What can follow depends on the last step only, so
//! dropping B loses nothing. (Multi-criteria label setting, Martins 1984.)

use super::step::PolishStep;
use crate::units::Seconds;

/// Slack against rounding when a removal is held against a bound, in µm.
pub(super) const ROUNDING: f64 = 1e-9;

/// A sequence with its figures.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Found {
    /// Index of the step and its passes, in working order.
    pub passes: Vec<(usize, u32)>,
    /// Mean removal in µm.
    pub removal: f64,
    /// Upper bound of the removal in µm.
    pub removal_upper: f64,
    /// Deepest defect the steps can clear, in µm.
    pub reach: f64,
    /// Time.
    pub seconds: Seconds,
}

impl Found {
    /// The empty sequence.
    pub(super) fn nothing() -> Self {
        Self { passes: Vec::new(), removal: 0.0, removal_upper: 0.0, reach: 0.0, seconds: 0 }
    }

    /// Depth down to which defects are gone.
    pub(super) fn depth_cleared(&self) -> f64 {
        self.removal.min(self.reach)
    }

    /// Depth down to which defects are gone where this and `more` are both done.
    pub(super) fn depth_cleared_with(&self, more: &Self) -> f64 {
        (self.removal + more.removal).min(self.reach.max(more.reach))
    }

    /// This sequence and one more step.
    fn then(&self, index: usize, step: &PolishStep, passes: u32, area_m2: f64) -> Self {
        let mut sequence = self.passes.clone();
        sequence.push((index, passes));
        Self {
            passes: sequence,
            removal: self.removal + step.removal(passes),
            removal_upper: self.removal_upper + step.removal_upper(passes),
            reach: self.reach.max(step.clears_up_to_um.um()),
            seconds: self.seconds + step.seconds(passes, area_m2),
        }
    }

    /// Whether it is at least as good in every figure, where depth beyond `useful` is no gain.
    fn covers(&self, other: &Self, useful: f64) -> bool {
        self.removal >= other.removal.min(useful)
            && self.removal_upper <= other.removal_upper
            && self.seconds <= other.seconds
            && self.reach >= other.reach.min(useful)
    }
}

/// The order in which steps may follow each other: hardest kind first, then by the marks they leave.
pub(super) fn working_order(steps: &[PolishStep]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..steps.len()).collect();
    order.sort_by(|&a, &b| {
        let (x, y) = (&steps[a], &steps[b]);
        x.kind.cmp(&y.kind).then(y.scratch_left_um.cmp(&x.scratch_left_um)).then(a.cmp(&b))
    });
    order
}

/// Every sequence worth considering on a surface that may lose `allowed` µm, quickest first; empty when not even the gentlest fits.
///
/// For every sequence that keeps the rules (each step takes out the marks of the one before, the last leaves gloss, the upper
/// bound stays within `allowed`) there is one in the answer that is at least as good in all four figures, where removal and reach
/// beyond `useful` µm, the deepest that anything needs, count as equal.
pub(super) fn sequences(steps: &[PolishStep], allowed: f64, area_m2: f64, useful: f64) -> Vec<Found> {
    let order = working_order(steps);
    let start = [Found::nothing()];
    let mut by_last: Vec<Vec<Found>> = Vec::with_capacity(order.len());
    for (position, &index) in order.iter().enumerate() {
        let step = &steps[index];
        let earlier = by_last.iter().zip(&order[..position]);
        let before = std::iter::once((0.0, start.as_slice()))
            .chain(earlier.map(|(labels, &last)| (steps[last].scratch_left_um.um(), labels.as_slice())));
        let mut labels = Vec::new();
        for (marks, previous) in before {
            for passes in step.passes() {
                let upper = step.removal_upper(passes);
                if upper > allowed + ROUNDING {
                    break;
                }
                if step.removal(passes) + ROUNDING < marks {
                    continue;
                }
                let fitting = previous.iter().filter(|l| l.removal_upper + upper <= allowed + ROUNDING);
                labels.extend(fitting.map(|label| label.then(index, step, passes, area_m2)));
            }
        }
        by_last.push(undominated(labels, useful));
    }
    let last_leaves_gloss = by_last.into_iter().zip(&order).filter(|&(_, &last)| steps[last].kind.leaves_gloss());
    undominated(last_leaves_gloss.flat_map(|(labels, _)| labels).collect(), useful)
}

/// Drops every label that another one covers; of equal ones the first stays. Sorted by time, then removal.
fn undominated(mut labels: Vec<Found>, useful: f64) -> Vec<Found> {
    labels.sort_by(|a, b| {
        a.seconds
            .cmp(&b.seconds)
            .then(a.removal_upper.total_cmp(&b.removal_upper))
            .then(b.removal.total_cmp(&a.removal))
            .then(b.reach.total_cmp(&a.reach))
    });
    let mut kept: Vec<Found> = Vec::new();
    for label in labels {
        if !kept.iter().any(|k| k.covers(&label, useful)) {
            kept.push(label);
        }
    }
    kept
}
