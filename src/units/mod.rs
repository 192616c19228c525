//! Quantities: one type each, so that a thickness is never added to a time.
//!
//! Every value is finite by construction, so comparing and sorting are total. Values go in and out through named doors
//! (`Micrometres::new(112.5)?.um()`); there is no conversion from a bare float. In files the unit stands in the field name
//! (`thickness_um`), never in the value.
//!
//! A temperature and a difference of temperatures are two types: 20 °C minus 12 °C is 8 K, not 8 °C.

mod date;
pub(crate) mod fields;
mod format;
mod interval;
mod moment;
mod quantity;
mod shown;
mod thickness;

pub use date::Date;
pub use format::{capital, clock, listed, minutes, number};
pub use interval::Interval;
pub use moment::{DateOrder, Moment};
pub use quantity::{
    Celsius, Decibels, GlossUnits, Kelvin, MetresPerSecondSquared, Micrometres, Millilitres, Millimetres, NotFinite,
    RelativeHumidity, SquareMetres,
};
pub use shown::{Conversion, ML_PER_FL_OZ, ShownUnits, TemperatureUnit, VolumeUnit};
pub use thickness::{MOST_FILM_UM, ThicknessUnit, UM_PER_MIL};

/// Whole seconds on the planner's clock; 0 is the start of the plan.
pub type Seconds = i64;
