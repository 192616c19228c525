//! Choosing among the sequences: one for the whole panel, and one for each single defect that is worth extra work.
//!
//! Exact over all combinations of what the search gives, with extra work at the [`MOST_PLACES`] heaviest single defects. For every sequence over the panel, each single defect has a front of (time, gain); the fronts
//! are joined one after another, keeping only combinations that no other beats in both. Local work uses what the panel's
//! sequence leaves of the budget.

use super::facts::{DefectFacts, PanelFacts};
use super::local::LOCAL_AREA_M2;
use super::search::{FINEST_UM, Found, ROUNDING, Search};
use super::step::PolishStep;
use super::within::sequences_within;
use crate::units::{Micrometres, Seconds};

/// Extra work at a single defect is done only where at least this share of it is gone afterwards (our estimate); otherwise it is
/// not worth a machine. Judged by the result, so that a better sequence over the panel never rules it out.
pub const LOCAL_WORTH: f64 = 0.5;

/// Extra work is considered at this many single defects of a panel at most, those of the greatest weight (our estimate: more
/// places than that are worked as a panel).
pub(super) const MOST_PLACES: usize = 12;

/// What was chosen.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Choice {
    /// Over the whole panel; empty when nothing fits.
    pub whole: Found,
    /// Extra work: index of the defect and its sequence, in the order of the defects.
    pub local: Vec<(usize, Found)>,
    /// Unit in which removals were compared, in µm.
    pub unit: f64,
}

impl Choice {
    /// No work at all.
    pub(super) fn nothing() -> Self {
        Self { whole: Found::nothing(), local: Vec::new(), unit: FINEST_UM }
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
#[derive(Debug, Clone)]
pub(super) struct Candidates {
    /// Defects that polishing helps, with their place in the facts.
    helped: Vec<(usize, DefectFacts)>,
    /// Their weights together.
    all: f64,
    allowed: f64,
    /// Sequences over the panel, quickest first.
    whole: Vec<Found>,
    /// Sequences over the surface around a single defect, quickest first; empty when there is no such defect.
    at_spot: Vec<Found>,
    /// Upper bounds of those sequences, rising, each with the most that a sequence up to it removes.
    most_at_spot: Vec<(f64, f64)>,
    /// Where extra work is considered, as places in `helped`, in the order of the defects.
    places: Vec<usize>,
    /// Unit in which removals were compared, in µm.
    unit: f64,
}

impl Candidates {
    pub(super) fn new(facts: &PanelFacts<'_>, allowed: Micrometres, steps: &[PolishStep]) -> Self {
        let helps = |d: &DefectFacts| d.kind.treatment().by_removal() && d.safe_weight() > 0.0;
        let all = facts.defects.iter().copied().enumerate();
        let helped: Vec<(usize, DefectFacts)> = all.filter(|(_, d)| helps(d)).collect();
        let deepest = |d: &DefectFacts| d.depth_um.0.max(d.depth_um.1).um();
        let useful = helped.iter().map(|(_, d)| deepest(d)).fold(0.0, f64::max);
        let spot_area = LOCAL_AREA_M2.min(facts.area.m2());
        let places = heaviest_places(&helped);
        let held = facts.level_at_most;
        let over_panel = sequences_within(held, steps, allowed.um(), facts.area.m2(), useful);
        let at_spot = if places.is_empty() {
            Search { found: Vec::new(), labels: 0, unit: over_panel.unit }
        } else {
            sequences_within(held, steps, allowed.um(), spot_area, useful)
        };
        Self {
            all: helped.iter().map(|(_, d)| d.safe_weight()).sum(),
            allowed: allowed.um(),
            unit: over_panel.unit.max(at_spot.unit),
            whole: over_panel.found,
            most_at_spot: most_by_upper(&at_spot.found),
            at_spot: at_spot.found,
            places,
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
            let extra = if gone + slack >= wanted {
                Extra::none()
            } else {
                let rival = best.as_ref().map(|(rank, ..)| rank);
                match self.extra_work(whole, gone, wanted, rival, slack) {
                    Some(extra) => extra,
                    None => continue,
                }
            };
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
            unit: self.unit,
        })
    }

    /// The quickest extra work that brings what is gone to `wanted`, or the one that gains most; `None` where it can't beat
    /// `rival`. Gains within `slack` are taken as equal.
    fn extra_work(&self, whole: &Found, gone: f64, wanted: f64, rival: Option<&Rank>, slack: f64) -> Option<Extra> {
        let left = self.allowed - whole.removal_upper;
        let (missing, places) = (wanted - gone, self.places.iter().map(|&at| &self.helped[at]));
        let margin = slack * (self.places.len() + 2) as f64; // every join may round by one slack
        let latest = match rival {
            Some(r) if r.counted + slack >= wanted => r.seconds - whole.seconds,
            _ => Seconds::MAX,
        };
        let at_most = self.gain_at_most(whole, left);
        if rival.is_some_and(|r| (gone + at_most).min(wanted) + margin < r.counted)
            || self.at_spot.first().is_some_and(|quickest| latest < quickest.seconds)
        {
            return None;
        }
        let options: Vec<(usize, Vec<(usize, f64)>)> =
            places.map(|(index, defect)| (*index, self.options(whole, defect, left, latest, slack))).collect();
        // What the places from each on can gain at most.
        let mut ahead = vec![0.0; options.len() + 1];
        for (at, (_, options)) in options.iter().enumerate().rev() {
            ahead[at] = ahead[at + 1] + options.last().map_or(0.0, |o| o.1);
        }
        if rival.is_some_and(|r| (gone + ahead[0]).min(wanted) + margin < r.counted) {
            return None;
        }
        let reachable = ahead[0] + margin >= missing;
        let mut front = vec![Extra::none()];
        for (at, (index, options)) in options.iter().enumerate() {
            // Short of what is missing by more than all that comes, a combination is of use only if none can reach it.
            let least = if reachable { missing - ahead[at + 1] - margin } else { ahead[0] - ahead[at + 1] - margin };
            let mut joined = front.clone();
            for base in &front {
                for &(at, gain) in options {
                    let mut work = base.work.clone();
                    work.push((*index, at));
                    let seconds = base.seconds + self.at_spot[at].seconds;
                    joined.push(Extra { seconds, gain: base.gain + gain, work });
                }
            }
            joined.retain(|e| e.seconds <= latest && e.gain >= least);
            joined.sort_by(|a, b| a.seconds.cmp(&b.seconds).then(b.gain.total_cmp(&a.gain)));
            front.clear();
            for extra in joined {
                let enough = front.last().is_some_and(|f: &Extra| f.gain + slack >= missing);
                if !enough && front.last().is_none_or(|f| extra.gain > f.gain + slack) {
                    front.push(extra);
                }
            }
        }
        let reaching = front.iter().position(|e| e.gain + slack >= missing);
        let at = reaching.or_else(|| front.len().checked_sub(1))?;
        Some(front.swap_remove(at))
    }

    /// What extra work after a sequence over the panel can gain at most: as if every place got the deepest that fits.
    fn gain_at_most(&self, whole: &Found, left: f64) -> f64 {
        let fitting = self.most_at_spot.partition_point(|&(upper, _)| upper <= left + ROUNDING);
        let Some((_, removal)) = fitting.checked_sub(1).map(|last| self.most_at_spot[last]) else { return 0.0 };
        let gain = |&at: &usize| {
            let defect = &self.helped[at].1;
            let share = defect.share_gone(whole.removal + removal) - defect.share_gone(whole.depth_cleared());
            defect.safe_weight() * share
        };
        self.places.iter().map(gain).sum()
    }

    /// Sequences for a single defect that gain more than every quicker one, with the gain.
    fn options(
        &self,
        whole: &Found,
        defect: &DefectFacts,
        left: f64,
        latest: Seconds,
        slack: f64,
    ) -> Vec<(usize, f64)> {
        let already = defect.share_gone(whole.depth_cleared());
        let mut options: Vec<(usize, f64)> = Vec::new();
        let soon_enough = self.at_spot.partition_point(|s| s.seconds <= latest);
        for (at, sequence) in
            self.at_spot[..soon_enough].iter().enumerate().filter(|(_, s)| s.removal_upper <= left + ROUNDING)
        {
            let after = defect.share_gone(whole.depth_cleared_with(sequence));
            let gain = defect.safe_weight() * (after - already);
            if after + ROUNDING >= LOCAL_WORTH && gain > options.last().map_or(0.0, |o| o.1) + slack {
                options.push((at, gain));
                if after >= 1.0 {
                    break; // more is not to be had, and what follows takes longer
                }
            }
        }
        options
    }
}

/// Upper bounds of sequences, rising, each with the most that a sequence up to it removes.
fn most_by_upper(sequences: &[Found]) -> Vec<(f64, f64)> {
    let mut most: Vec<(f64, f64)> = sequences.iter().map(|s| (s.removal_upper, s.removal)).collect();
    most.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut best = 0.0_f64;
    for (_, removal) in &mut most {
        best = best.max(*removal);
        *removal = best;
    }
    most
}

/// The heaviest of the single defects, as places in `helped`, in the order of the defects.
fn heaviest_places(helped: &[(usize, DefectFacts)]) -> Vec<usize> {
    let mut places: Vec<usize> = (0..helped.len()).filter(|&at| helped[at].1.local).collect();
    places.sort_by(|&a, &b| helped[b].1.safe_weight().total_cmp(&helped[a].1.safe_weight()));
    places.truncate(MOST_PLACES);
    places.sort_unstable();
    places
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
