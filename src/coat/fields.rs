//! Doors for bare numbers in files: they must be finite and inside their range.

use serde::{Deserialize, Deserializer, de::Error};

fn within<'de, D: Deserializer<'de>>(from: D, low: f64, high: f64) -> Result<f64, D::Error> {
    let value = f64::deserialize(from)?;
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(format!("must be a number from {low} to {high}, not {value}")))
    }
}

/// An exponent of humidity, 0 to 3.
pub(super) fn exponent<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 3.0)
}

/// An activation energy, 0 to 200 kJ/mol.
pub(super) fn activation<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 200.0)
}

/// A number that is zero or more and not absurd.
pub(super) fn amount<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 1e6)
}

/// Whole seconds from 0 to a year.
pub(super) fn seconds<'de, D: Deserializer<'de>>(from: D) -> Result<i64, D::Error> {
    let value = i64::deserialize(from)?;
    if (0..=31_622_400).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(format!("must be whole seconds from 0 to one year, not {value}")))
    }
}

/// Layers, 1 to 10.
pub(super) fn layers<'de, D: Deserializer<'de>>(from: D) -> Result<u32, D::Error> {
    let value = u32::deserialize(from)?;
    if (1..=10).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(format!("must be from 1 to 10 layers, not {value}")))
    }
}
