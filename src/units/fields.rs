//! Doors for bare numbers in files: shares, factors and counts that must be finite and inside their range.

use super::Seconds;
use crate::say;
use crate::words::shortest;
use serde::{Deserialize, Deserializer, de::Error};

/// Whether a value is the one that is meant where nothing is written.
pub(crate) fn is_usual<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}

fn within<'de, D: Deserializer<'de>>(from: D, low: f64, high: f64) -> Result<f64, D::Error> {
    let value = f64::deserialize(from)?;
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(say!(
            "unit-number-range",
            low = shortest(low),
            high = shortest(high),
            value = shortest(value)
        )))
    }
}

fn count<'de, D: Deserializer<'de>>(from: D, most: u32, what: &str) -> Result<u32, D::Error> {
    let value = u32::deserialize(from)?;
    if (1..=most).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(say!("unit-count-range", most = most, what = what, value = value)))
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

/// A number that is zero or more and not absurd.
pub(crate) fn amount<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 1e6)
}

/// An exponent of humidity, 0 to 3.
pub(crate) fn exponent<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 3.0)
}

/// An activation energy, 0 to 200 kJ/mol.
pub(crate) fn activation<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    within(from, 0.0, 200.0)
}

/// Passes of a step, 1 to 50.
pub(crate) fn passes<'de, D: Deserializer<'de>>(from: D) -> Result<u32, D::Error> {
    count(from, 50, say!("unit-passes"))
}

/// Layers, 1 to 10.
pub(crate) fn layers<'de, D: Deserializer<'de>>(from: D) -> Result<u32, D::Error> {
    count(from, 10, say!("unit-layers"))
}

/// Whole seconds from 0 to a year.
pub(crate) fn seconds<'de, D: Deserializer<'de>>(from: D) -> Result<Seconds, D::Error> {
    let value = Seconds::deserialize(from)?;
    if (0..=31_622_400).contains(&value) {
        Ok(value)
    } else {
        Err(D::Error::custom(say!("unit-seconds-range", value = value)))
    }
}
