//! How many spots a panel needs, and reading gauges that drift.

use super::gauge::{Gauge, GaugeCheck};
use crate::units::{Micrometres, SquareMetres};
use std::collections::BTreeSet;

/// Readings in one spot. **Source**: SSPC-PA 2, at least three within 4 cm.
pub const READINGS_PER_SPOT: usize = 3;
/// Nearest that a spot may lie to an edge or seam, in mm (from memory, SSPC-PA 2 and ASTM D7091).
pub const EDGE_DISTANCE_MM: f64 = 25.0;

/// Spots recommended for a panel: three for a small one, five from 0.4 m² on, one more per 0.4 m² above 1.2 m² (our estimate; the
/// spacing of the standards is meant for large structures).
pub fn spots_for(area: SquareMetres) -> usize {
    match area.m2() {
        a if a < 0.05 => 1,
        a if a < 0.4 => 3,
        a if a <= 1.2 => 5,
        a => 5 + ((a - 1.2) / 0.4 - 1e-9).ceil() as usize,
    }
}

/// A check of the gauge, made before the reading of this number (0 is before the first).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CheckAt {
    /// How many readings had been taken.
    pub after_readings: usize,
    /// What was read on the shim.
    pub check: GaugeCheck,
}

/// Readings that can't be trusted, as ranges `[from, to)` of how many were taken before; in order, apart from each other.
///
/// Between two checks the readings count only if the gauge passed both. Those before a failed one don't (one of several shims is
/// enough), and those after it don't until every plate and shim that failed has passed again; the last range is then open, up to
/// `usize::MAX`. Before the first check only what follows counts. They are marked, not deleted. `checks` may come in any order;
/// of checks at the same count the later in the list came later. **Source**: ASTM D7091 (from memory); cautious where it is open.
pub fn suspect_readings(gauge: &Gauge, checks: &[CheckAt]) -> Vec<std::ops::Range<usize>> {
    let mut checks: Vec<&CheckAt> = checks.iter().collect();
    checks.sort_by_key(|c| c.after_readings);
    let mut suspect: Vec<std::ops::Range<usize>> = Vec::new();
    let mut mark = |from: usize, to: usize| match suspect.last_mut() {
        Some(last) if last.end == from => last.end = to,
        _ if from < to => suspect.push(from..to),
        _ => {}
    };
    let mut failing: BTreeSet<Micrometres> = BTreeSet::new(); // plates and shims that the gauge failed on last
    let mut since = 0;
    for group in checks.chunk_by(|a, b| a.after_readings == b.after_readings) {
        let now = group[0].after_readings;
        if !failing.is_empty() || group.iter().any(|c| !gauge.passes(&c.check)) {
            mark(since, now);
        }
        for CheckAt { check, .. } in group {
            if gauge.passes(check) {
                failing.remove(&check.certified_um);
            } else {
                failing.insert(check.certified_um);
            }
        }
        since = now;
    }
    if !failing.is_empty() {
        mark(since, usize::MAX);
    }
    suspect
}
