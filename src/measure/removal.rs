//! What a second survey says about the removal, in words a person can act on.

use super::gauge::Gauge;
use super::mean_and_sd;
use super::paired::{PairedChange, paired_change, pairs_needed};
use super::thickness;
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;

/// More pairs of spots than this nobody reads on one panel; a change that needs more is called not measurable (our estimate).
pub const MOST_PAIRS: usize = 30;

/// Whether the gauge could tell that something went.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Visibility {
    /// The removal is shown: its interval excludes none.
    Shown,
    /// Not shown with these spots; more of them would show it.
    MoreSpots {
        /// Pairs of spots in all.
        pairs: usize,
    },
    /// Not measurable with this gauge.
    NotMeasurable,
}

/// Removal between two surveys at the same spots.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasuredRemoval {
    /// The change with its two-sided 95 % interval.
    pub change: PairedChange,
    /// Most that may have gone, for the ledger: upper end of the interval.
    pub upper: Micrometres,
    /// Whether it was seen.
    pub visibility: Visibility,
    /// As a sentence.
    pub text: String,
}

/// Compares two surveys; spots with readings in both are paired by their place in the list. `None` with fewer than two pairs.
pub fn measured_removal(before: &[&[Micrometres]], after: &[&[Micrometres]], gauge: &Gauge) -> Option<MeasuredRemoval> {
    let mean_of = |spot: &[Micrometres]| mean_and_sd(&spot.iter().map(|r| r.um()).collect::<Vec<_>>()).0;
    let pairs = before.iter().zip(after).filter(|(b, a)| !b.is_empty() && !a.is_empty());
    let (first, second): (Vec<f64>, Vec<f64>) = pairs.map(|(b, a)| (mean_of(b), mean_of(a))).unzip();
    let change = paired_change(&first, &second, 0.95, gauge.resolution_um.um())?;
    let visibility = if change.low > 0.0 { Visibility::Shown } else { hidden(&change, gauge) };
    let (mean, low, high) = (decimal(change.mean, 1), decimal(change.low, 1), decimal(change.high, 1));
    let interval = say!("measure-interval", mean = mean, low = low, high = high);
    let text = match visibility {
        Visibility::Shown => say!("measure-removed", interval = interval),
        Visibility::MoreSpots { pairs } => say!("measure-removal-not-shown", interval = interval, pairs = pairs),
        Visibility::NotMeasurable => say!("measure-removal-too-small", interval = interval),
    };
    Some(MeasuredRemoval { upper: thickness(change.high.max(0.0)), change, visibility, text })
}

/// Why a change is not shown: too few spots, or too small for the gauge.
fn hidden(change: &PairedChange, gauge: &Gauge) -> Visibility {
    // A spot's difference varies at least as much as rounding to the display makes it vary.
    let sd = change.sd.max(gauge.resolution_um.um() / 6.0_f64.sqrt());
    // `pairs_needed` takes the spread of single readings; with one reading a spot, that of differences is √2 times it.
    match pairs_needed(sd / std::f64::consts::SQRT_2, 1, change.mean) {
        Some(pairs) if pairs <= MOST_PAIRS => Visibility::MoreSpots { pairs: pairs.max(change.n + 1) },
        _ => Visibility::NotMeasurable,
    }
}
