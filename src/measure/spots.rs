//! How many spots a panel needs, and reading gauges that drift.

use super::gauge::{Gauge, GaugeCheck};
use crate::units::SquareMetres;

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

/// Readings that can't be trusted: those between the last good check and a failed one. Ranges `[from, to)`, in order.
///
/// They are marked, not deleted. `checks` may come in any order. **Source**: ASTM D7091 (from memory).
pub fn suspect_readings(gauge: &Gauge, checks: &[CheckAt]) -> Vec<std::ops::Range<usize>> {
    let mut checks: Vec<&CheckAt> = checks.iter().collect();
    checks.sort_by_key(|c| c.after_readings);
    let mut suspect = Vec::new();
    let mut good_until = 0;
    for check in checks {
        if !gauge.passes(&check.check) && check.after_readings > good_until {
            suspect.push(good_until..check.after_readings);
        }
        good_until = check.after_readings;
    }
    suspect
}
