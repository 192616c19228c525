//! The walk-round for high spots: where they gather, in which order to look, and how long each can still be saved.

use crate::units::Seconds;

/// How the walk-round is done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LapPace {
    /// Walking, in mm per second; above zero. 1000 is unhurried.
    pub walk_mm_s: f64,
    /// Looking at a place, and levelling what is found.
    pub look_s: Seconds,
    /// How long after applying a high spot can be saved by re-wetting.
    pub high_spot_s: Seconds,
}

/// One stop of the walk-round.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LapStop {
    /// The place, by its index in the list given.
    pub place: usize,
    /// When it is reached.
    pub arrive_s: Seconds,
    /// Seconds left to save a high spot there on arrival; below zero it takes polishing.
    pub left_s: Seconds,
}

/// Orders places for a walk-round that starts now. `applied_s` says when the coating at each was applied; `walk_mm` is the way from
/// one place, or from where one is, to another.
///
/// Fewest places too late first, then least walking. Starts from the order of urgency and from the nearest-first order, and
/// improves both by moving places and turning stretches round; not proven best, but tests hold it against all orders of small
/// laps. Deterministic; every place once.
pub fn last_lap(
    applied_s: &[Seconds],
    walk_mm: &dyn Fn(Option<usize>, usize) -> f64,
    now_s: Seconds,
    pace: &LapPace,
) -> Vec<LapStop> {
    let lap = Lap { applied: applied_s, walk_mm, now: now_s as f64, pace };
    let mut urgent: Vec<usize> = (0..applied_s.len()).collect();
    urgent.sort_by_key(|&i| (applied_s[i], i));
    let near = lap.nearest_first();
    let best = [urgent, near]
        .into_iter()
        .map(|order| lap.improved(order))
        .min_by(|a, b| lap.cost(a).total_cmp(&lap.cost(b)))
        .unwrap_or_default();
    lap.stops(&best)
}

struct Lap<'a> {
    applied: &'a [Seconds],
    walk_mm: &'a dyn Fn(Option<usize>, usize) -> f64,
    now: f64,
    pace: &'a LapPace,
}

impl Lap<'_> {
    fn walk(&self, a: Option<usize>, b: usize) -> f64 {
        (self.walk_mm)(a, b) / self.pace.walk_mm_s.max(1.0)
    }

    /// Calls `visit` with each place and the moment it is reached; answers the seconds walked.
    fn follow(&self, order: &[usize], mut visit: impl FnMut(usize, f64)) -> f64 {
        let (mut clock, mut walked, mut last) = (self.now, 0.0, None);
        for &place in order {
            let walk = self.walk(last, place);
            walked += walk;
            clock += walk;
            visit(place, clock);
            clock += self.pace.look_s.max(0) as f64;
            last = Some(place);
        }
        walked
    }

    fn left(&self, place: usize, at: f64) -> f64 {
        (self.applied[place] + self.pace.high_spot_s) as f64 - at
    }

    /// Places too late, far more weighty than the seconds walked.
    fn cost(&self, order: &[usize]) -> f64 {
        let mut late = 0.0;
        let walked = self.follow(order, |place, at| late += f64::from(u8::from(self.left(place, at) < 0.0)));
        late * 1e6 + walked
    }

    fn nearest_first(&self) -> Vec<usize> {
        let mut left: Vec<usize> = (0..self.applied.len()).collect();
        let mut order: Vec<usize> = Vec::with_capacity(left.len());
        while let Some(at) = (0..left.len()).min_by(|&a, &b| {
            self.walk(order.last().copied(), left[a]).total_cmp(&self.walk(order.last().copied(), left[b]))
        }) {
            order.push(left.remove(at));
        }
        order
    }

    /// Moves single places and turns stretches round until neither helps.
    fn improved(&self, mut order: Vec<usize>) -> Vec<usize> {
        let mut cost = self.cost(&order);
        let mut again = true;
        while again {
            again = false;
            for i in 0..order.len() {
                for j in 0..order.len() {
                    let mut moved = order.clone();
                    let place = moved.remove(i);
                    moved.insert(j, place);
                    let mut turned = order.clone();
                    turned[i.min(j)..=i.max(j)].reverse();
                    for candidate in [moved, turned] {
                        let new = self.cost(&candidate);
                        if new < cost - 1e-6 {
                            (order, cost, again) = (candidate, new, true);
                        }
                    }
                }
            }
        }
        order
    }

    fn stops(&self, order: &[usize]) -> Vec<LapStop> {
        let mut stops = Vec::with_capacity(order.len());
        self.follow(order, |place, at| {
            let (arrive_s, left_s) = (at.ceil() as Seconds, self.left(place, at).floor() as Seconds);
            stops.push(LapStop { place, arrive_s, left_s });
        });
        stops
    }
}
