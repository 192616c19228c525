//! Is the air right, how long may a coating wait, how much is needed, and when is it hard.
//!
//! It knows quantities and a product's data. It must not know vehicles, jobs, the order of work or the clock.

mod air;
mod amounts;
mod calendar;
mod evaporation;
mod feel;
mod last_lap;
mod product;
mod verdict;
mod window;

pub use air::{Air, dew_point, saturation_pressure, vapour_pressure};
pub use amounts::{CoatingMaterials, DROP_ML, amount, bottles, coating_materials, drops};
pub use calendar::{DROPPINGS_ADVICE, Milestone, cure_calendar};
pub use evaporation::{Solvent, parts_per_million, vapour_in_bay};
pub use feel::{Feel, FeelAt, factor_after, feel_rule};
pub use last_lap::{LapPace, LapStop, last_lap};
pub use product::{Product, seconds_to_apply, seconds_to_level};
pub use verdict::{AirVerdict, LEAST_MARGIN, assess};
pub use window::{MeasuredWindow, Window, WindowBasis, window_assumptions};
