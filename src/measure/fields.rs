//! Doors for bare numbers in files: shares and factors that must be finite and inside their range.

use serde::{Deserialize, Deserializer, de::Error};

fn within<'de, D: Deserializer<'de>>(from: D, low: f64, high: f64) -> Result<f64, D::Error> {
    let value = f64::deserialize(from)?;
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(format!("must be a number from {low} to {high}, not {value}")))
    }
}

/// A share of something, 0 to 1.
pub(crate) fn share<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 1.0)
}

/// A coverage or a confidence, 0.7 to 0.999: below, more spots could loosen a bound.
pub(crate) fn assurance<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.7, 0.999)
}

/// Passes of a step, 1 to 50.
pub(crate) fn passes<'de, D: Deserializer<'de>>(from: D) -> Result<u32, D::Error> {
    let value = u32::deserialize(from)?;
    if (1..=50).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(format!("must be from 1 to 50 passes, not {value}")))
    }
}

/// A number that is zero or more and not absurd.
pub(crate) fn amount<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 1e6)
}
