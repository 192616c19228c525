//! The exact search for sequences of steps.
//!
//! Steps are taken hardest first. A label is a partial sequence: its removal r (mean) and R (upper bound), its time, the deepest
//! defect its steps can clear, and its last step. Label A makes B needless when both end in the same step and A is at least as
//! good in all four: r not less, R not more, time not more, reach not less. What can follow depends on the last step only, so
//! dropping B loses nothing. (Multi-criteria label setting, Martins 1984.)

use super::sieve::Sieve;
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

/// A partial sequence: its figures, and where it came from in the list of all labels.
#[derive(Debug, Clone, Copy)]
pub(super) struct Label {
    /// Mean removal in µm.
    pub removal: f64,
    /// Upper bound of the removal in µm.
    pub removal_upper: f64,
    /// Deepest defect the steps can clear, in µm.
    pub reach: f64,
    /// Time.
    pub seconds: Seconds,
    /// Place of the label it extends, and the step and passes that were added; the start has none.
    from: Option<(u32, u16, u16)>,
}

/// The sequences found, and how many labels were made on the way.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Search {
    /// Quickest first.
    pub found: Vec<Found>,
    /// Labels that were made, a measure of the work.
    pub labels: usize,
}

/// Every sequence worth considering on a surface that may lose `allowed` µm, quickest first; empty when not even the gentlest fits.
///
/// For every sequence that keeps the rules (each step takes out the marks of the one before, the last leaves gloss, the upper
/// bound stays within `allowed`) there is one in the answer that is at least as good in all four figures, where removal and reach
/// beyond `useful` µm, the deepest that anything needs, count as equal.
pub(super) fn sequences(steps: &[PolishStep], allowed: f64, area_m2: f64, useful: f64) -> Search {
    let order = working_order(steps);
    let sieve = Sieve::new(steps, allowed, useful);
    let mut all = vec![Label { removal: 0.0, removal_upper: 0.0, reach: 0.0, seconds: 0, from: None }];
    let mut made = 0;
    // Labels by their last step, as places in `all`; what can be extended by a step grows with the marks it takes out.
    let mut by_last: Vec<Vec<u32>> = Vec::with_capacity(order.len());
    for (position, &index) in order.iter().enumerate() {
        let step = &steps[index];
        let mut earlier: Vec<usize> = (0..position).collect();
        earlier.sort_by_key(|&at| steps[order[at]].scratch_left_um);
        let mut earlier = earlier.into_iter().peekable();
        let mut before = vec![0_u32];
        let mut candidates: Vec<Label> = Vec::new();
        for passes in step.passes() {
            let (removal, upper) = (step.removal(passes), step.removal_upper(passes));
            if upper > allowed + ROUNDING {
                break;
            }
            let mut grown = false;
            while let Some(at) = earlier.next_if(|&at| steps[order[at]].scratch_left_um.um() <= removal + ROUNDING) {
                before.extend(&by_last[at]);
                grown = true;
            }
            if grown {
                sieve.keep(&mut before, |&at| all[at as usize]);
            }
            let seconds = step.seconds(passes, area_m2);
            let fitting = before.iter().map(|&at| (at, all[at as usize]));
            candidates.extend(fitting.filter(|(_, l)| l.removal_upper + upper <= allowed + ROUNDING).map(|(at, l)| {
                Label {
                    removal: l.removal + removal,
                    removal_upper: l.removal_upper + upper,
                    reach: l.reach.max(step.clears_up_to_um.um()),
                    seconds: l.seconds + seconds,
                    from: Some((at, index as u16, passes as u16)),
                }
            }));
        }
        made += candidates.len();
        sieve.keep(&mut candidates, |label| *label);
        let first = all.len() as u32;
        by_last.push((first..first + candidates.len() as u32).collect());
        all.append(&mut candidates);
    }
    let gloss = by_last.iter().zip(&order).filter(|&(_, &last)| steps[last].kind.leaves_gloss());
    let mut done: Vec<u32> = gloss.flat_map(|(labels, _)| labels.iter().copied()).collect();
    sieve.keep(&mut done, |&at| all[at as usize]);
    Search { found: done.into_iter().map(|at| unfold(&all, at)).collect(), labels: made }
}

/// The sequence that a label stands for.
fn unfold(all: &[Label], at: u32) -> Found {
    let label = all[at as usize];
    let mut passes = Vec::new();
    let mut from = label.from;
    while let Some((earlier, index, count)) = from {
        passes.push((usize::from(index), u32::from(count)));
        from = all[earlier as usize].from;
    }
    passes.reverse();
    Found {
        passes,
        removal: label.removal,
        removal_upper: label.removal_upper,
        reach: label.reach,
        seconds: label.seconds,
    }
}
