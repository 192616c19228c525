//! How much clear a shop is willing to take: every number of the budget, editable.

use crate::measure::FilmBands;
use crate::units::{Micrometres, fields};
use serde::{Deserialize, Serialize};

/// The shop's rules for removal.
///
/// The defaults are our estimates around what trade pages repeat (0.3 mil, that is 7 to 8 µm, "most makers' recommended
/// maximum"; a quarter of the clear; both without a traceable original). They are a convention, not a law of nature.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct RemovalPolicy {
    /// Most that may go in the life of the paint. 8 µm, our estimate.
    pub lifetime_um: Micrometres,
    /// Most that may go in the life of the paint, as a share of its clear. 0.20, our estimate.
    #[serde(deserialize_with = "fields::share")]
    pub lifetime_share_of_clear: f64,
    /// Clear that is kept in any case. 30 µm, our estimate.
    pub keep_clear_um: Micrometres,
    /// Most that may go in one visit. 4 µm, our estimate.
    pub visit_cap_um: Micrometres,
    /// Share of the lifetime limits taken as spent when the history is unknown. 0.5, our estimate.
    #[serde(deserialize_with = "fields::share")]
    pub unknown_history_spent: f64,
    /// Least share of the film that is taken to be clear. 0.35, our estimate: 37 µm of a usual film of 105 µm.
    #[serde(deserialize_with = "fields::share")]
    pub assumed_share_low: f64,
    /// Greatest share of the film that is taken to be clear. 0.45, our estimate.
    #[serde(deserialize_with = "fields::share")]
    pub assumed_share_high: f64,
    /// Clear is never assumed to be thicker than this at least, however thick the film. 40 µm, our estimate.
    pub assumed_low_at_most_um: Micrometres,
    /// Greatest clear that is assumed. 50 µm: upper end of what trade pages give.
    pub assumed_high_at_most_um: Micrometres,
    /// Limit on a very thin film. 1 µm, our estimate of "finest polish only".
    pub very_thin_um: Micrometres,
    /// Limit on a thin film. 2 µm, our estimate of "nothing strong".
    pub thin_um: Micrometres,
    /// Limit on a panel that was painted again. 2 µm, our estimate.
    pub refinished_um: Micrometres,
    /// Limit on paint that is still hardening. 1 µm, our estimate.
    pub fresh_um: Micrometres,
    /// Days after which a refinish is no longer fresh. 30, common practice, no source.
    pub fresh_days: u32,
    /// Limit on narrow panels, which are mostly edges. 1 µm, our estimate; pressure peaks at edges.
    pub narrow_um: Micrometres,
    /// Limit on a panel that a sensor looks through. 1 µm, our estimate; the maker's guidance comes first.
    pub sensor_um: Micrometres,
    /// Borders of the film bands.
    pub bands: FilmBands,
}

impl Default for RemovalPolicy {
    fn default() -> Self {
        Self {
            lifetime_um: Micrometres::of(8.0),
            lifetime_share_of_clear: 0.20,
            keep_clear_um: Micrometres::of(30.0),
            visit_cap_um: Micrometres::of(4.0),
            unknown_history_spent: 0.5,
            assumed_share_low: 0.35,
            assumed_share_high: 0.45,
            assumed_low_at_most_um: Micrometres::of(40.0),
            assumed_high_at_most_um: Micrometres::of(50.0),
            very_thin_um: Micrometres::of(1.0),
            thin_um: Micrometres::of(2.0),
            refinished_um: Micrometres::of(2.0),
            fresh_um: Micrometres::of(1.0),
            fresh_days: 30,
            narrow_um: Micrometres::of(1.0),
            sensor_um: Micrometres::of(1.0),
            bands: FilmBands::default(),
        }
    }
}
