//! Is the air right, how long may a coating wait, how much is needed, and when is it hard.
//!
//! It knows quantities and a product's data. It must not know vehicles, jobs, the order of work or the clock.

mod air;
mod fields;
mod product;
mod verdict;
mod window;

pub use air::{Air, dew_point, saturation_pressure, vapour_pressure};
pub use product::{Product, amount, bottles, seconds_to_apply, seconds_to_level};
pub use verdict::{AirVerdict, LEAST_MARGIN, assess};
pub use window::{MeasuredWindow, Window, window, window_factor, window_from_patch};
