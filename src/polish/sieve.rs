//! Sieving labels: what another one covers in all four figures goes.
//!
//! Sorted by time, a label is needless when an earlier one has no more upper bound, no less removal and no less reach. The best
//! removal up to each upper bound stands in a tree of prefix maxima (Fenwick 1994), one for each reach, so that a label costs the
//! logarithm of the number of upper bounds and not the number of labels kept.

use super::search::Label;
use super::step::PolishStep;

/// What is needed to hold labels against each other.
#[derive(Debug)]
pub(super) struct Sieve {
    /// Width of a unit of removal, in µm.
    unit: f64,
    /// Units of the budget.
    units: usize,
    /// Removal and reach beyond this are no gain, in µm.
    useful: f64,
    /// Reaches that differ, rising, in µm.
    reaches: Vec<f64>,
}

impl Sieve {
    pub(super) fn new(steps: &[PolishStep], allowed: f64, useful: f64, unit: f64) -> Self {
        let mut reaches: Vec<f64> = steps.iter().map(|s| s.clears_up_to_um.um().min(useful)).chain([0.0]).collect();
        reaches.sort_by(f64::total_cmp);
        reaches.dedup();
        Self { unit, units: (allowed / unit).round().max(0.0) as usize + 2, useful, reaches }
    }

    fn in_units(&self, um: f64) -> usize {
        (um / self.unit).round().max(0.0) as usize
    }

    /// Keeps what nothing else covers, by time; of equal ones the first stays.
    pub(super) fn keep<T>(&self, items: &mut Vec<T>, label: impl Fn(&T) -> Label) {
        items.sort_by(|a, b| {
            let (a, b) = (label(a), label(b));
            a.seconds
                .cmp(&b.seconds)
                .then(self.in_units(a.removal_upper).cmp(&self.in_units(b.removal_upper)))
                .then(b.removal.total_cmp(&a.removal))
                .then(b.reach.total_cmp(&a.reach))
        });
        // best[reach][node]: one more than the greatest removal among upper bounds of the node, zero for none.
        let mut best = vec![vec![0_usize; self.units + 1]; self.reaches.len()];
        items.retain(|item| {
            let label = label(item);
            let reach = self.reaches.partition_point(|&r| r < label.reach.min(self.useful));
            let upper = self.in_units(label.removal_upper).min(self.units - 1) + 1;
            let removal = self.in_units(label.removal.min(self.useful)) + 1;
            let mut node = upper;
            while node > 0 {
                if best[reach][node] >= removal {
                    return false;
                }
                node &= node - 1;
            }
            for row in &mut best[..=reach] {
                let mut node = upper;
                while node <= self.units {
                    row[node] = row[node].max(removal);
                    node += node & node.wrapping_neg();
                }
            }
            true
        });
    }
}
