//! Choosing among the sequences: one for the whole panel, and one for each single defect that is worth extra work.
//!
//! Exact over all combinations. For every sequence over the panel, each single defect has a front of (time, gain); the fronts
//! are joined one after another, keeping only combinations that no other beats in both. Local work uses what the panel's
//! sequence leaves of the budget.

use super::facts::{DefectFacts, PanelFacts};
use super::local::LOCAL_AREA_M2;
use super::search::{Found, ROUNDING, sequences};
use super::step::PolishStep;
use crate::units::{Micrometres, Seconds};

/// Extra work at a single defect must make at least this share of it go on top (our estimate); less is not worth a machine.
pub const LOCAL_WORTH: f64 = 0.25;

/// What was chosen.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Choice {
    /// Over the whole panel; empty when nothing fits.
    pub whole: Found,
    /// Extra work: index of the defect and its sequence, in the order of the defects.
    pub local: Vec<(usize, Found)>,
}

impl Choice {
    /// No work at all.
    pub(super) fn nothing() -> Self {
        Self { whole: Found::nothing(), local: Vec::new() }
    }
}

/// A combination of local work: its time, the weight of defects it makes go, and the sequence for each defect.
#[derive(Clone)]
struct Extra {
    seconds: Seconds,
    gain: f64,
    work: Vec<(usize, usize)>,
}

/// The least time that makes `share` of the weighted defects go, or the most that can go; `None` when nothing fits.
pub(super) fn choose(facts: &PanelFacts<'_>, allowed: Micrometres, steps: &[PolishStep], share: f64) -> Option<Choice> {
    let helped: Vec<(usize, &DefectFacts)> = facts
        .defects
        .iter()
        .enumerate()
        .filter(|(_, d)| d.kind.treatment().by_removal() && d.safe_weight() > 0.0)
        .collect();
    let all: f64 = helped.iter().map(|(_, d)| d.safe_weight()).sum();
    let wanted = share * all;
    let slack = ROUNDING * all;
    let some_local = wanted > 0.0 && helped.iter().any(|(_, d)| d.local);
    let at_spot =
        if some_local { sequences(steps, allowed.um(), LOCAL_AREA_M2.min(facts.area.m2())) } else { Vec::new() };

    let mut best: Option<(Rank, Choice)> = None;
    for whole in sequences(steps, allowed.um(), facts.area.m2()) {
        if let Some((rank, _)) = &best
            && rank.counted + slack >= wanted
            && whole.seconds > rank.seconds
        {
            break; // quickest first: nothing that follows can be better
        }
        let depth = whole.depth_cleared();
        let gone: f64 = helped.iter().map(|(_, d)| d.safe_weight() * d.share_gone(depth)).sum();
        let enough = gone + slack >= wanted;
        let extra = if enough || at_spot.is_empty() {
            Extra { seconds: 0, gain: 0.0, work: Vec::new() }
        } else {
            let left = allowed.um() - whole.removal_upper;
            extra_work(&helped, &whole, &at_spot, left, wanted - gone, slack)
        };
        let rank = Rank {
            counted: (gone + extra.gain).min(wanted),
            seconds: whole.seconds + extra.seconds,
            removal_upper: whole.removal_upper,
        };
        if best.as_ref().is_none_or(|(b, _)| rank.before(b, slack)) {
            let local = extra.work.iter().map(|&(defect, at)| (defect, at_spot[at].clone())).collect();
            best = Some((rank, Choice { whole, local }));
        }
    }
    best.map(|(_, choice)| choice)
}

/// What two choices are compared by.
struct Rank {
    counted: f64,
    seconds: Seconds,
    removal_upper: f64,
}

impl Rank {
    fn before(&self, other: &Self, slack: f64) -> bool {
        if (self.counted - other.counted).abs() > slack {
            return self.counted > other.counted;
        }
        self.seconds.cmp(&other.seconds).then(self.removal_upper.total_cmp(&other.removal_upper)).is_lt()
    }
}

/// The quickest extra work that gains `missing`, or the one that gains most. Gains within `slack` are taken as equal.
fn extra_work(
    helped: &[(usize, &DefectFacts)],
    whole: &Found,
    at_spot: &[Found],
    left: f64,
    missing: f64,
    slack: f64,
) -> Extra {
    let mut front = vec![Extra { seconds: 0, gain: 0.0, work: Vec::new() }];
    for &(index, defect) in helped.iter().filter(|(_, d)| d.local) {
        let already = defect.share_gone(whole.depth_cleared());
        // Quickest first, so an option is worth keeping when it gains more than every quicker one.
        let mut options: Vec<(usize, f64)> = Vec::new();
        for (at, sequence) in at_spot.iter().enumerate().filter(|(_, s)| s.removal_upper <= left + ROUNDING) {
            let more = defect.share_gone(whole.depth_cleared_with(sequence)) - already;
            let gain = defect.safe_weight() * more;
            if more + ROUNDING >= LOCAL_WORTH && gain > options.last().map_or(0.0, |o| o.1) + slack {
                options.push((at, gain));
            }
        }
        let mut joined = front.clone();
        for base in &front {
            for &(at, gain) in &options {
                let mut work = base.work.clone();
                work.push((index, at));
                joined.push(Extra { seconds: base.seconds + at_spot[at].seconds, gain: base.gain + gain, work });
            }
        }
        joined.sort_by(|a, b| a.seconds.cmp(&b.seconds).then(b.gain.total_cmp(&a.gain)));
        front.clear();
        for extra in joined {
            if front.last().is_none_or(|f: &Extra| extra.gain > f.gain + slack) {
                front.push(extra);
            }
        }
    }
    let reaching = front.iter().position(|e| e.gain + slack >= missing).unwrap_or(front.len() - 1);
    front.swap_remove(reaching)
}
