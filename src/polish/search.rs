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

/// Removals are compared in units of this many µm, far below what any gauge can tell.
pub(super) const FINEST_UM: f64 = 0.01;
/// Most units a budget is divided into; above 20 µm the finest unit grows accordingly.
const MOST_UNITS: f64 = 2_000.0;
/// Most labels of one search before it is repeated with a coarser unit.
const MOST_LABELS: usize = 30_000;
/// The unit in which removals within a budget are compared at first, in µm.
pub(super) fn finest_unit(allowed: f64) -> f64 {
    FINEST_UM.max(allowed / MOST_UNITS)
}

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
    /// Labels that were made in all, a measure of the work.
    pub labels: usize,
    /// Unit in which removals were compared, in µm.
    pub unit: f64,
}

/// Every sequence worth considering on a surface that may lose `allowed` µm, quickest first; empty when not even the gentlest fits.
///
/// For every sequence that keeps the rules (each step takes out the marks of the one before, the last leaves gloss, the upper
/// bound stays within `allowed`) there is one in the answer that is at least as good in all four figures, where removal and reach
/// beyond `useful` µm, the deepest that anything needs, count as equal.
///
/// Removals are compared in units of [`FINEST_UM`]. Where that takes more than [`MOST_LABELS`], the search is repeated with a wider
/// unit until it does not, so that every list of steps is answered in bounded time. The figures of a sequence stay exact at any
/// unit, so the budget is never passed; only what is best is then known no finer than [`Search::unit`].
pub(super) fn sequences(steps: &[PolishStep], allowed: f64, area_m2: f64, useful: f64) -> Search {
    let (mut unit, mut spent) = (finest_unit(allowed), 0);
    loop {
        // A unit as wide as the budget leaves two classes of removal, so the work can't grow further: no limit there.
        let most = if unit < allowed { MOST_LABELS } else { usize::MAX };
        let sieve = Sieve::new(steps, allowed, useful, unit);
        match search(steps, allowed, area_m2, &sieve, most, &mut spent) {
            Ok(found) => return Search { found, labels: spent, unit },
            // The more steps were still to come, the further the unit was from wide enough.
            Err(TooMany { to_come }) => unit *= 2.0_f64.powi(1 + to_come as i32 / 3),
        }
    }
}

/// A search that took too many labels, and how many steps were still to come.
struct TooMany {
    to_come: usize,
}

/// One search with a given sieve that makes at most `most` labels; those it made are added to `spent`.
fn search(
    steps: &[PolishStep],
    allowed: f64,
    area_m2: f64,
    sieve: &Sieve,
    most: usize,
    spent: &mut usize,
) -> Result<Vec<Found>, TooMany> {
    let order = working_order(steps);
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
            if made + candidates.len() > most {
                *spent += made + candidates.len();
                return Err(TooMany { to_come: order.len() - position - 1 });
            }
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
    *spent += made;
    Ok(done.into_iter().map(|at| unfold(&all, at)).collect())
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::polish::StepKind;
    use crate::units::Micrometres;

    /// No list of steps may take more labels than this, all repetitions together: at most as many repetitions as the factors of
    /// the unit from the finest to the budget allow, of [`MOST_LABELS`] and the labels of one step and count of passes each.
    const CAP: usize = 11 * 2 * MOST_LABELS;

    /// Steps like those of a shop, each a little different from the others.
    fn alike(count: usize, passes: u32) -> Vec<PolishStep> {
        let start = PolishStep::starting_set();
        let vary = |i: usize| {
            let step = start[i * start.len() / count].clone();
            PolishStep {
                removal_um: Micrometres::of(step.removal_um.um() * (1.0 + 0.037 * i as f64)),
                removal_spread: 0.3 + 0.05 * ((i * 5 % 12) as f64),
                seconds_per_m2_pass: step.seconds_per_m2_pass * (1.0 + 0.023 * ((i * 7 % 12) as f64)),
                min_passes: 1,
                max_passes: passes,
                ..step
            }
        };
        (0..count).map(vary).collect()
    }

    /// Steps that leave as many sequences as possible undominated: gentle, few marks, slow where they are sure.
    fn hostile(round: u32) -> Vec<PolishStep> {
        let mut state = u64::from(round) + 1;
        let mut between = |low: f64, high: f64| {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            low + (high - low) * ((state >> 33) as f64 / (1_u64 << 31) as f64)
        };
        let finish = between(0.0, 1.0);
        let vary = |step: PolishStep| {
            let (removal, spread) = (between(0.005, 0.4), between(0.0, 4.0));
            PolishStep {
                kind: if between(0.0, 1.0) < finish { StepKind::Finish } else { step.kind },
                removal_um: Micrometres::of(removal),
                removal_spread: spread,
                scratch_left_um: Micrometres::of(between(0.0, 0.3)),
                clears_up_to_um: Micrometres::of(between(0.5, 20.0)),
                seconds_per_m2_pass: 500.0 * removal * (1.0 / (0.1 + spread) + between(0.0, 0.5)),
                setup_s: between(0.0, 60.0) as u32,
                ..step
            }
        };
        alike(12, 50).into_iter().map(vary).collect()
    }

    /// Lists of the sizes that are slow when labels are held against each other pair by pair are searched in the finest unit.
    #[test]
    fn rich_lists_take_few_labels_at_the_finest_unit() {
        for (steps, passes, allowed) in [(5, 6, 4.0), (12, 50, 4.0), (8, 12, 19.7), (12, 6, 19.7), (5, 50, 19.7)] {
            let search = sequences(&alike(steps, passes), allowed, 1.0, 12.0);
            assert!(search.unit <= FINEST_UM, "{steps} steps, {passes} passes: compared in {} µm", search.unit);
            assert!(search.labels <= MOST_LABELS, "{steps} steps, {passes} passes: {} labels", search.labels);
            assert!(!search.found.is_empty());
        }
    }

    /// However the largest list is made up, the labels stay under the cap, and what is found keeps the budget.
    #[test]
    fn no_list_takes_more_labels_than_the_cap() {
        for round in 0..60 {
            for allowed in [4.0, 19.7, 200.0, 5_000.0] {
                let search = sequences(&hostile(round), allowed, 1.0, allowed);
                assert!(search.labels <= CAP, "round {round}, {allowed} µm: {} labels", search.labels);
                assert!(search.found.iter().all(|f| f.removal_upper <= allowed + ROUNDING));
                assert!(!search.found.is_empty(), "round {round}, {allowed} µm");
            }
        }
    }
}
