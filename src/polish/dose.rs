//! Keeping a day's work below the action values: which panels change hands, or over how many days it is spread.
//!
//! Vibration counts as a² times duration and noise as 10^(L/10) times duration (ISO 5349-1, ISO 9612), so both simply add up over
//! a day. Written as a share of what one day may hold, a worker is below the action values as long as both sums are below 1.

use super::exposure::{NOISE_VALUES_DB, hav_points};
use super::pair::PolishOperation;
use super::step::PolishStep;
use std::ops::{Add, Sub};

/// Points of vibration at the action value. **Source**: HSE ready-reckoner for hand-arm vibration.
const ACTION_POINTS: f64 = 100.0;
/// A day that ends a hair below the action value counts as below it.
const BELOW: f64 = 1.0 - 1e-9;

/// What work adds to a day, as shares of what one day may hold.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Dose {
    /// Of the action value of vibration (Directive 2002/44/EC).
    pub vibration: f64,
    /// Of the upper action value of noise (Directive 2003/10/EC), from which hearing protection must be worn.
    pub noise: f64,
}

impl Dose {
    /// What one operation adds.
    pub fn of(operation: &PolishOperation, steps: &[PolishStep]) -> Self {
        let Some(step) = steps.get(operation.step) else { return Self::default() };
        let share_of_day = operation.running.max(0) as f64 / (8.0 * 3600.0);
        let level = step.noise_db.db();
        Self {
            vibration: hav_points(step.vibration_with_k(), operation.running) / ACTION_POINTS,
            noise: if level > 0.0 { share_of_day * 10_f64.powf((level - NOISE_VALUES_DB[1]) / 10.0) } else { 0.0 },
        }
    }

    /// The share that comes nearer to its action value.
    pub fn worst(self) -> f64 {
        self.vibration.max(self.noise)
    }

    /// Whether a day of this stays below both action values.
    pub fn is_below(self) -> bool {
        self.worst() < BELOW
    }
}

impl Add for Dose {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { vibration: self.vibration + other.vibration, noise: self.noise + other.noise }
    }
}

impl Sub for Dose {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self { vibration: self.vibration - other.vibration, noise: self.noise - other.noise }
    }
}

/// Where days begin when work in its order is spread over as few days as keep everybody below the action values, and then as
/// evenly as that many days allow.
///
/// **Shape**: `work` holds worker and dose by start; the answer holds the first index of each day, ascending, beginning with 0;
/// empty without work. One piece that is over by itself has to stay over.
pub fn split_days(work: &[(usize, Dose)]) -> Vec<usize> {
    let fewest = days_at(work, BELOW);
    if fewest.len() < 2 {
        return fewest;
    }
    let (mut low, mut high) = (0.0, BELOW);
    for _ in 0..30 {
        let middle = f64::midpoint(low, high);
        if days_at(work, middle).len() <= fewest.len() {
            high = middle;
        } else {
            low = middle;
        }
    }
    days_at(work, high)
}

/// Days when each is filled until somebody would pass `most`. Filling first needs the fewest, since a day that begins later
/// can't end sooner.
fn days_at(work: &[(usize, Dose)], most: f64) -> Vec<usize> {
    let workers = work.iter().map(|(w, _)| w + 1).max().unwrap_or(0);
    let mut starts = Vec::new();
    let mut sums = vec![Dose::default(); workers];
    for (index, (worker, dose)) in work.iter().enumerate() {
        let with = sums[*worker] + *dose;
        let begun = starts.last().is_some_and(|s| *s < index);
        if index == 0 || (begun && with.worst() > most) {
            starts.push(index);
            sums.fill(Dose::default());
        }
        sums[*worker] = sums[*worker] + *dose;
    }
    starts
}

/// Shares work anew so that everybody stays below the action values, by handing panels over or exchanging two, as few as a
/// greedy choice needs.
///
/// **Shape**: worker, panel and dose per operation; the answer is the worker per operation, or `None` where no such exchange
/// brings everybody below.
pub fn swap_panels(owners: &[usize], panels: &[usize], doses: &[Dose], workers: usize) -> Option<Vec<usize>> {
    let mut owners = owners.to_vec();
    let mut sums = vec![Dose::default(); workers];
    for (owner, dose) in owners.iter().zip(doses) {
        sums[*owner] = sums[*owner] + *dose;
    }
    loop {
        let from = (0..workers).max_by(|a, b| sums[*a].worst().total_cmp(&sums[*b].worst()))?;
        if sums[from].is_below() {
            return Some(owners);
        }
        let parts = parts_of(&owners, panels, doses);
        let (_, given, to, taken) = best_exchange(&sums, &parts, from)?;
        let moved: Dose = given.dose - taken.map_or(Dose::default(), |t| t.dose);
        for (index, owner) in owners.iter_mut().enumerate() {
            if *owner == from && panels[index] == given.panel {
                *owner = to;
            } else if *owner == to && taken.is_some_and(|t| panels[index] == t.panel) {
                *owner = from;
            }
        }
        sums[from] = sums[from] - moved;
        sums[to] = sums[to] + moved;
    }
}

/// All that one worker does at one panel.
#[derive(Clone, Copy)]
struct Part {
    owner: usize,
    panel: usize,
    dose: Dose,
}

fn parts_of(owners: &[usize], panels: &[usize], doses: &[Dose]) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    for ((&owner, &panel), &dose) in owners.iter().zip(panels).zip(doses) {
        match parts.iter_mut().find(|p| p.owner == owner && p.panel == panel) {
            Some(part) => part.dose = part.dose + dose,
            None => parts.push(Part { owner, panel, dose }),
        }
    }
    parts
}

/// The exchange that makes the higher of the two lowest, if one makes it lower than it is: (highest after, given, to whom, taken).
fn best_exchange(sums: &[Dose], parts: &[Part], from: usize) -> Option<(f64, Part, usize, Option<Part>)> {
    let mut best: Option<(f64, Part, usize, Option<Part>)> = None;
    for given in parts.iter().filter(|p| p.owner == from) {
        for to in (0..sums.len()).filter(|to| *to != from) {
            let others = parts.iter().filter(|p| p.owner == to && p.panel != given.panel).map(|p| Some(*p));
            for taken in std::iter::once(None).chain(others) {
                let moved = given.dose - taken.map_or(Dose::default(), |t| t.dose);
                let highest = (sums[from] - moved).worst().max((sums[to] + moved).worst());
                let least = best.as_ref().map_or(sums[from].worst() - 1e-9, |b| b.0 - 1e-12);
                if highest < least {
                    best = Some((highest, *given, to, taken));
                }
            }
        }
    }
    best
}
