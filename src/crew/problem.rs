//! A crew problem that can be planned: every name resolved, every number in range.
//!
//! The constructor is the only door, so whoever holds a [`Problem`] need not check again. Letters used throughout `crew`:
//! `n` operations, `m` workers, `d` durations, `w` walking times.

use super::spec::ProblemSpec;
use super::validate;
use crate::finding::Finding;
use crate::say;
use std::collections::HashSet;

/// A checked problem. Operations, workers and stances are known by their index in the specification.
#[derive(Debug, Clone)]
pub struct Problem {
    spec: ProblemSpec,
    pub(crate) operations: Vec<Operation>,
    pub(crate) workers: usize,
    pub(crate) stances: usize,
    /// Row by row.
    walk: Vec<i32>,
    /// Row by row, symmetric, true on the diagonal.
    close: Vec<bool>,
    pub(crate) lags: Vec<Lag>,
    pub(crate) wet: Vec<Wet>,
    /// Wet periods (from, to) of which no lag says that they begin before they end. The search takes it for granted, so what it
    /// proves by trying all orders is not proven for such a problem.
    pub(crate) undirected: Vec<(usize, usize)>,
}

/// One operation, by index.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Operation {
    /// Seconds, at least 1.
    pub(crate) duration: i32,
    pub(crate) stance: usize,
    /// Workers who may do it, ascending, never empty.
    pub(crate) able: Vec<usize>,
}

/// One waiting time, by index.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Lag {
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) min: i32,
    pub(crate) max: Option<i32>,
}

/// One wet rule for one blocked operation, by index.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) struct Wet {
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) blocked: usize,
}

/// Everything that keeps a specification from being planned.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", Self::sentence(.findings))]
pub struct ProblemErrors {
    /// At least one, in the order of the document.
    pub findings: Vec<Finding>,
}

impl ProblemErrors {
    pub(crate) fn sentence(findings: &[Finding]) -> String {
        match findings {
            [one] => say!("crew-unusable", place = one.place.as_str(), cause = one.cause.as_str()),
            many => say!("crew-unusable-many", count = many.len()),
        }
    }
}

impl TryFrom<ProblemSpec> for Problem {
    type Error = ProblemErrors;

    fn try_from(spec: ProblemSpec) -> Result<Self, ProblemErrors> {
        let findings = validate::findings(&spec);
        if findings.is_empty() { Ok(Self::index(spec)) } else { Err(ProblemErrors { findings }) }
    }
}

impl Problem {
    /// The document it came from.
    pub fn spec(&self) -> &ProblemSpec {
        &self.spec
    }

    /// Resolves names of a specification without findings; an unknown name would have been a finding.
    fn index(spec: ProblemSpec) -> Self {
        let stance_of = validate::index_of(spec.stances.iter().map(String::as_str));
        let operation_of = validate::index_of(spec.operations.iter().map(|o| o.id.as_str()));
        let stances = spec.stances.len();
        let mut close = vec![false; stances * stances];
        for s in 0..stances {
            close[s * stances + s] = true;
        }
        for [a, b] in &spec.close {
            let (a, b) = (stance_of[a.as_str()], stance_of[b.as_str()]);
            close[a * stances + b] = true;
            close[b * stances + a] = true;
        }
        let operations = spec
            .operations
            .iter()
            .map(|o| Operation {
                duration: o.duration_s as i32,
                stance: stance_of[o.stance.as_str()],
                able: (0..spec.workers.len()).filter(|&w| o.is_for(&spec.workers[w])).collect(),
            })
            .collect();
        let lags: Vec<Lag> = spec
            .lags
            .iter()
            .map(|l| Lag {
                from: operation_of[l.from.as_str()],
                to: operation_of[l.to.as_str()],
                min: l.min_s as i32,
                max: l.max_s.map(|s| s as i32),
            })
            .collect();
        let mut wet: Vec<Wet> = Vec::new();
        let mut seen = HashSet::new();
        for rule in &spec.wet {
            let (from, to) = (operation_of[rule.from.as_str()], operation_of[rule.to.as_str()]);
            for blocked in &rule.blocks {
                let one = Wet { from, to, blocked: operation_of[blocked.as_str()] };
                if seen.insert(one) {
                    wet.push(one);
                }
            }
        }
        let direct: HashSet<(usize, usize)> = lags.iter().map(|l| (l.from, l.to)).collect();
        let periods: HashSet<(usize, usize)> = wet.iter().map(|w| (w.from, w.to)).collect();
        let mut undirected: Vec<(usize, usize)> =
            periods.difference(&direct).copied().filter(|&(from, to)| !follows(&lags, from, to)).collect();
        undirected.sort_unstable();
        let walk = spec.walk_s.iter().flatten().map(|&s| s as i32).collect();
        Self { workers: spec.workers.len(), stances, walk, close, operations, lags, wet, undirected, spec }
    }

    /// The same problem with some of its operations (ascending) and the rules among them.
    pub(crate) fn only(&self, operations: &[usize]) -> Self {
        let kept: HashSet<&str> = operations.iter().map(|&o| self.operation_id(o)).collect();
        let mut spec = self.spec.clone();
        spec.operations.retain(|o| kept.contains(o.id.as_str()));
        spec.lags.retain(|l| kept.contains(l.from.as_str()) && kept.contains(l.to.as_str()));
        spec.wet.retain(|w| kept.contains(w.from.as_str()) && kept.contains(w.to.as_str()));
        for wet in &mut spec.wet {
            wet.blocks.retain(|b| kept.contains(b.as_str()));
        }
        Self::index(spec)
    }

    /// The same problem after a change that leaves no name without its thing.
    pub(crate) fn changed(&self, change: impl FnOnce(&mut ProblemSpec)) -> Self {
        let mut spec = self.spec.clone();
        change(&mut spec);
        Self::index(spec)
    }

    /// Number of operations.
    pub(crate) fn len(&self) -> usize {
        self.operations.len()
    }

    /// Seconds from one stance to another.
    pub(crate) fn walk(&self, from: usize, to: usize) -> i32 {
        self.walk[from * self.stances + to]
    }

    /// Whether two workers can't use these stances at once.
    pub(crate) fn close(&self, a: usize, b: usize) -> bool {
        self.close[a * self.stances + b]
    }

    /// Operations so that each comes after those its lags wait for.
    pub(crate) fn sorted_by_lags(&self) -> Vec<usize> {
        let mut waits = vec![0_usize; self.len()];
        let mut later = vec![Vec::new(); self.len()];
        for lag in &self.lags {
            waits[lag.to] += 1;
            later[lag.from].push(lag.to);
        }
        let mut sorted: Vec<usize> = (0..self.len()).filter(|&o| waits[o] == 0).collect();
        let mut at = 0;
        while at < sorted.len() {
            for &next in &later[sorted[at]] {
                waits[next] -= 1;
                if waits[next] == 0 {
                    sorted.push(next);
                }
            }
            at += 1;
        }
        debug_assert_eq!(sorted.len(), self.len(), "the constructor refuses circles of lags");
        sorted
    }

    /// Name of an operation.
    pub(crate) fn operation_id(&self, operation: usize) -> &str {
        &self.spec.operations[operation].id
    }

    /// Name of a worker.
    pub(crate) fn worker_id(&self, worker: usize) -> &str {
        &self.spec.workers[worker].id
    }

    /// Cost of a finish and a total of walking.
    pub(crate) fn cost(&self, makespan: i64, walking: i64) -> i64 {
        self.spec.objective.makespan * makespan + self.spec.objective.walking * walking
    }
}

/// Whether a chain of lags leads from one operation to another, or they are the same.
fn follows(lags: &[Lag], from: usize, to: usize) -> bool {
    let mut reached = vec![from];
    let mut at = 0;
    while at < reached.len() {
        if reached[at] == to {
            return true;
        }
        let here = reached[at];
        for lag in lags.iter().filter(|l| l.from == here) {
            if !reached.contains(&lag.to) {
                reached.push(lag.to);
            }
        }
        at += 1;
    }
    false
}
