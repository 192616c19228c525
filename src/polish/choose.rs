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

/// Extra work at a single defect is done only where at least this share of it is gone afterwards (our estimate); otherwise it is
/// not worth a machine. Judged by the result, so that a better sequence over the panel never rules it out.
pub const LOCAL_WORTH: f64 = 0.5;

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

impl Extra {
    fn none() -> Self {
        Self { seconds: 0, gain: 0.0, work: Vec::new() }
    }
}

/// Everything that can be chosen from on one panel, so that several goals can be tried without searching again.
pub(super) struct Candidates<'a> {
    /// Defects that polishing helps, with their place in the facts.
    helped: Vec<(usize, &'a DefectFacts)>,
    /// Their weights together.
    all: f64,
    allowed: f64,
    /// Sequences over the panel, quickest first.
    whole: Vec<Found>,
    /// Sequences over the surface around a single defect, quickest first; empty when there is no such defect.
    at_spot: Vec<Found>,
}

impl<'a> Candidates<'a> {
    pub(super) fn new(facts: &PanelFacts<'a>, allowed: Micrometres, steps: &[PolishStep]) -> Self {
        let helps = |d: &DefectFacts| d.kind.treatment().by_removal() && d.safe_weight() > 0.0;
        let helped: Vec<(usize, &DefectFacts)> = facts.defects.iter().enumerate().filter(|(_, d)| helps(d)).collect();
        let deepest = |d: &DefectFacts| d.depth_um.0.max(d.depth_um.1).um();
        let useful = helped.iter().map(|(_, d)| deepest(d)).fold(0.0, f64::max);
        let spot_area = LOCAL_AREA_M2.min(facts.area.m2());
        Self {
            all: helped.iter().map(|(_, d)| d.safe_weight()).sum(),
            allowed: allowed.um(),
            whole: sequences(steps, allowed.um(), facts.area.m2(), useful).found,
            at_spot: if helped.iter().any(|(_, d)| d.local) {
                sequences(steps, allowed.um(), spot_area, useful).found
            } else {
                Vec::new()
            },
            helped,
        }
    }

    /// The least time that makes `share` of the weighted defects go, or the most that can go; `None` when nothing fits.
    pub(super) fn choose(&self, share: f64) -> Option<Choice> {
        let (wanted, slack) = (share * self.all, ROUNDING * self.all);
        let mut best: Option<(Rank, &Found, Extra)> = None;
        for whole in &self.whole {
            if let Some((rank, ..)) = &best
                && rank.counted + slack >= wanted
                && whole.seconds > rank.seconds
            {
                break; // quickest first: nothing that follows can be better
            }
            let depth = whole.depth_cleared();
            let gone: f64 = self.helped.iter().map(|(_, d)| d.safe_weight() * d.share_gone(depth)).sum();
            let extra =
                if gone + slack >= wanted { Extra::none() } else { self.extra_work(whole, wanted - gone, slack) };
            let rank = Rank {
                counted: (gone + extra.gain).min(wanted),
                seconds: whole.seconds + extra.seconds,
                removal_upper: whole.removal_upper,
            };
            if best.as_ref().is_none_or(|(b, ..)| rank.before(b, slack)) {
                best = Some((rank, whole, extra));
            }
        }
        best.map(|(_, whole, extra)| Choice {
            whole: whole.clone(),
            local: extra.work.iter().map(|&(defect, at)| (defect, self.at_spot[at].clone())).collect(),
        })
    }

    /// The quickest extra work that gains `missing`, or the one that gains most. Gains within `slack` are taken as equal.
    fn extra_work(&self, whole: &Found, missing: f64, slack: f64) -> Extra {
        let left = self.allowed - whole.removal_upper;
        let mut front = vec![Extra::none()];
        for &(index, defect) in self.helped.iter().filter(|(_, d)| d.local) {
            let options = self.options(whole, defect, left, slack);
            let mut joined = front.clone();
            for base in &front {
                for &(at, gain) in &options {
                    let mut work = base.work.clone();
                    work.push((index, at));
                    let seconds = base.seconds + self.at_spot[at].seconds;
                    joined.push(Extra { seconds, gain: base.gain + gain, work });
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

    /// Sequences for a single defect that gain more than every quicker one, with the gain.
    fn options(&self, whole: &Found, defect: &DefectFacts, left: f64, slack: f64) -> Vec<(usize, f64)> {
        let already = defect.share_gone(whole.depth_cleared());
        let mut options: Vec<(usize, f64)> = Vec::new();
        for (at, sequence) in self.at_spot.iter().enumerate().filter(|(_, s)| s.removal_upper <= left + ROUNDING) {
            let after = defect.share_gone(whole.depth_cleared_with(sequence));
            let gain = defect.safe_weight() * (after - already);
            if after + ROUNDING >= LOCAL_WORTH && gain > options.last().map_or(0.0, |o| o.1) + slack {
                options.push((at, gain));
            }
        }
        options
    }
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
