//! People as they are, and a day lived second by second.

use crate::ways::{Choice, Way};
use lapwright::crew::{PlanFile, ProblemSpec, SoFar, State};

/// Random numbers (SplitMix64), the same everywhere.
pub(crate) struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// From 0 to 1.
    pub(crate) fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub(crate) fn below(&mut self, n: usize) -> usize {
        (self.next() % n.max(1) as u64) as usize
    }

    fn normal(&mut self) -> f64 {
        // Box and Muller 1958.
        let (u, v) = (self.share().max(1e-12), self.share());
        (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
    }
}

/// What kind of day it is: how long everything takes, who leaves when, who follows a whim.
pub(crate) struct People {
    /// By operation.
    lasts: Vec<i64>,
    /// By worker: leaves at, for.
    breaks: Vec<Option<(i64, i64)>>,
    /// By operation: whoever is told to begin it takes another one instead.
    whim: Vec<bool>,
    pub(crate) dice: Dice,
}

impl People {
    /// People of one day. Each is slower or faster by a factor of their own (log-normal, 15 %), each operation by another
    /// (20 %); on two days in five somebody leaves for one to five minutes; one applied panel in twelve is another than told.
    pub(crate) fn of(spec: &ProblemSpec, seed: u64) -> Self {
        let mut dice = Dice(seed.wrapping_mul(0x2545_F491_4F6C_DD1D) ^ 0x5EED);
        let own: Vec<f64> = spec.workers.iter().map(|_| (0.15 * dice.normal()).exp()).collect();
        let of_role = |role: &str| spec.workers.iter().position(|w| w.roles.iter().any(|r| r == role)).unwrap_or(0);
        let lasts = spec
            .operations
            .iter()
            .map(|o| {
                (o.duration_s as f64 * own[of_role(&o.role)] * (0.2 * dice.normal()).exp()).round().max(1.0) as i64
            })
            .collect();
        let breaks = spec
            .workers
            .iter()
            .map(|_| (dice.share() < 0.2).then(|| (60 + dice.below(1_200) as i64, 60 + dice.below(240) as i64)))
            .collect();
        let whim = spec.operations.iter().map(|o| o.role == "apply" && dice.share() < 1.0 / 12.0).collect();
        Self { lasts, breaks, whim, dice }
    }
}

/// A day as it was lived.
pub(crate) struct Day {
    pub(crate) so_far: SoFar,
    finish: i64,
}

impl Day {
    pub(crate) fn state(&self, operation: usize) -> State {
        self.so_far.operations[operation]
    }

    pub(crate) fn finish_s(&self) -> i64 {
        self.finish
    }

    /// Lives a day. Whatever a way of working says, nobody starts where somebody else stands, leans over wet coating, levels what
    /// is not applied, or levels before the shortest wait.
    pub(crate) fn live(spec: &ProblemSpec, plan: &PlanFile, way: Way, mut people: People) -> Self {
        let mut life = Life::new(spec, plan, way);
        let mut now = 0;
        while !life.so_far.is_over() && now < 6 * 3600 {
            life.second(now, &mut people);
            now += 1;
        }
        let end = |s: &State| if let State::Done { end_s, .. } = s { *end_s } else { now };
        let finish = life.so_far.operations.iter().map(end).max().unwrap_or(0);
        Self { so_far: life.so_far, finish }
    }
}

struct Life<'a> {
    spec: &'a ProblemSpec,
    so_far: SoFar,
    choice: Choice<'a>,
    /// By worker: what they are at, and the real second at which it is over.
    doing: Vec<Option<(usize, i64)>>,
    /// By worker: on the way to their next place until then.
    arrives: Vec<Option<(usize, i64)>>,
}

impl<'a> Life<'a> {
    fn new(spec: &'a ProblemSpec, plan: &PlanFile, way: Way) -> Self {
        let so_far = SoFar::beginning(spec, 0);
        let workers = spec.workers.len();
        Self {
            spec,
            so_far,
            choice: Choice::new(spec, plan, way),
            doing: vec![None; workers],
            arrives: vec![None; workers],
        }
    }

    fn second(&mut self, now: i64, people: &mut People) {
        self.so_far.now_s = now;
        let mut changed = now == 0;
        for w in 0..self.spec.workers.len() {
            if let Some((operation, until)) = self.doing[w].filter(|d| d.1 <= now) {
                let State::Running { start_s, .. } = self.so_far.operations[operation] else { continue };
                self.so_far.operations[operation] = State::Done { worker: w, start_s, end_s: until };
                self.doing[w] = None;
                changed = true;
            }
            if self.so_far.workers[w].away_until_s.is_some_and(|until| until <= now) {
                self.so_far.workers[w].away_until_s = None;
                changed = true;
            }
            let leaves = people.breaks[w].is_some_and(|(at, _)| at <= now) && self.doing[w].is_none();
            if leaves && let Some((_, long)) = people.breaks[w].take() {
                self.so_far.workers[w].away_until_s = Some(now + long);
                changed = true;
            }
        }
        self.expectations(now);
        if changed {
            self.choice.look(&self.so_far);
        }
        for w in 0..self.spec.workers.len() {
            self.begin(w, now, people);
        }
    }

    /// What people expect of what runs: the planned time, or a little more when it is over.
    fn expectations(&mut self, now: i64) {
        for (operation, state) in self.so_far.operations.iter_mut().enumerate() {
            if let State::Running { start_s, end_s, .. } = state {
                let planned = *start_s + self.spec.operations[operation].duration_s;
                *end_s = if planned > now { planned } else { now + 8 };
            }
        }
    }

    fn begin(&mut self, w: usize, now: i64, people: &mut People) {
        if self.doing[w].is_some() || self.so_far.workers[w].away_until_s.is_some() {
            self.arrives[w] = None;
            return;
        }
        let Some(mut operation) = self.choice.next(w, &self.so_far) else { return };
        if people.whim[operation] {
            people.whim[operation] = false;
            if let Some(other) = self.another(operation, people) {
                operation = other;
                people.whim[other] = false;
                self.choice.insist(w, other);
            }
        }
        let stance = self.stance(operation);
        let there = match self.arrives[w] {
            Some((to, at)) if to == stance => at <= now,
            _ => {
                let walk = self.so_far.workers[w].stance.map_or(0, |from| self.spec.walk_s[from][stance]);
                self.arrives[w] = Some((stance, now + walk));
                walk == 0
            }
        };
        if there && self.may_begin(w, operation, now) {
            let until = now + people.lasts[operation];
            let end_s = now + self.spec.operations[operation].duration_s;
            self.so_far.operations[operation] = State::Running { worker: w, start_s: now, end_s };
            self.so_far.workers[w].stance = Some(stance);
            self.doing[w] = Some((operation, until));
            self.arrives[w] = None;
            self.choice.began(w, operation);
        }
    }

    /// Another panel to apply that may be begun.
    fn another(&self, told: usize, people: &mut People) -> Option<usize> {
        let role = &self.spec.operations[told].role;
        let open: Vec<usize> = (0..self.spec.operations.len())
            .filter(|&o| o != told && self.spec.operations[o].role == *role)
            .filter(|&o| self.so_far.operations[o] == State::ToDo && self.may_reach(o) && self.waits_are_over(o))
            .collect();
        (!open.is_empty()).then(|| open[people.dice.below(open.len())])
    }

    fn stance(&self, operation: usize) -> usize {
        let name = &self.spec.operations[operation].stance;
        self.spec.stances.iter().position(|s| s == name).unwrap_or(0)
    }

    fn index(&self, id: &str) -> usize {
        self.spec.operations.iter().position(|o| o.id == id).unwrap_or(0)
    }

    fn may_begin(&self, w: usize, operation: usize, _now: i64) -> bool {
        self.so_far.operations[operation] == State::ToDo
            && self.waits_are_over(operation)
            && self.may_reach(operation)
            && self.has_room(w, operation)
    }

    fn waits_are_over(&self, operation: usize) -> bool {
        let id = &self.spec.operations[operation].id;
        self.spec.lags.iter().filter(|l| l.to == *id).all(|l| match self.so_far.operations[self.index(&l.from)] {
            State::Done { end_s, .. } => end_s + l.min_s <= self.so_far.now_s,
            _ => false,
        })
    }

    /// Nobody leans over wet coating, and nobody coats what somebody leans over.
    fn may_reach(&self, operation: usize) -> bool {
        let id = &self.spec.operations[operation].id;
        self.spec.wet.iter().all(|rule| {
            let from = self.so_far.operations[self.index(&rule.from)];
            let to = self.so_far.operations[self.index(&rule.to)];
            let is_wet = from != State::ToDo && !matches!(to, State::Done { .. });
            let leaning = |b: &String| matches!(self.so_far.operations[self.index(b)], State::Running { .. });
            !(is_wet && rule.blocks.contains(id) || rule.from == *id && rule.blocks.iter().any(leaning))
        })
    }

    fn has_room(&self, w: usize, operation: usize) -> bool {
        let here = &self.spec.operations[operation].stance;
        self.doing.iter().enumerate().filter(|(other, _)| *other != w).all(|(_, doing)| {
            doing.is_none_or(|(o, _)| {
                let there = &self.spec.operations[o].stance;
                here != there
                    && !self.spec.close.iter().any(|[a, b]| (a == here && b == there) || (b == here && a == there))
            })
        })
    }
}
