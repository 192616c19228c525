//! The quantity types themselves.

use crate::words::{Message, decimal, shortest};
use crate::{message, say};
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::fmt;

/// A number that was NaN, infinite, or outside what the quantity can be.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{}", say!("unit-must-be", quantity = .quantity.text(), domain = .domain.text(), value = shortest(*.value)))]
pub struct NotFinite {
    /// Name of the quantity, as a person says it.
    pub quantity: Message,
    /// What would have been accepted.
    pub domain: Message,
    /// What was given.
    pub value: f64,
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $door:ident, $unit:literal, $said:expr, $domain:expr, $accepts:expr) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Serialize, Deserialize)]
        #[serde(try_from = "f64", into = "f64")]
        pub struct $name(f64);

        impl $name {
            /// Zero of this quantity.
            pub const ZERO: Self = Self(0.0);
            /// Unit as printed after the number.
            pub const UNIT: &'static str = $unit;

            /// Takes a value in
            #[doc = concat!($unit, ".")]
            ///
            /// # Errors
            /// [`NotFinite`] when the value is NaN, infinite or outside the domain.
            pub fn new(value: f64) -> Result<Self, NotFinite> {
                let accepts: fn(f64) -> bool = $accepts;
                if value.is_finite() && accepts(value) {
                    Ok(Self(value + 0.0)) // + 0.0 turns -0.0 into 0.0, so that equal values print alike
                } else {
                    Err(NotFinite { quantity: $said, domain: $domain, value })
                }
            }

            /// A value known while compiling; the compiler refuses one that is not finite.
            pub const fn of(value: f64) -> Self {
                assert!(value.is_finite(), "a constant quantity must be finite");
                Self(value)
            }

            /// The bare number, in
            #[doc = concat!($unit, ".")]
            pub const fn $door(self) -> f64 {
                self.0
            }
        }

        impl PartialEq for $name {
            fn eq(&self, other: &Self) -> bool {
                self.cmp(other) == Ordering::Equal
            }
        }
        impl Eq for $name {}
        impl PartialOrd for $name {
            fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
                Some(self.cmp(other))
            }
        }
        impl Ord for $name {
            fn cmp(&self, other: &Self) -> Ordering {
                self.0.total_cmp(&other.0)
            }
        }
        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{} {}", self.0, $unit)
            }
        }
        impl fmt::Display for $name {
            /// Number, a thin no-break space, unit; `{:.1}` sets the decimals.
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                let number = f.precision().map_or_else(|| shortest(self.0), |places| decimal(self.0, places));
                write!(f, "{number}\u{202f}{}", $unit)
            }
        }
        impl TryFrom<f64> for $name {
            type Error = NotFinite;
            fn try_from(value: f64) -> Result<Self, NotFinite> {
                Self::new(value)
            }
        }
        impl From<$name> for f64 {
            fn from(value: $name) -> f64 {
                value.0
            }
        }
    };
}

quantity!(
    /// A film thickness, a removal or a depth.
    Micrometres, um, "µm", message!("unit-a-thickness"), message!("unit-range-thickness"), |v| (0.0..=100_000.0).contains(&v)
);
quantity!(
    /// A length of the vehicle, or a place on it.
    Millimetres, mm, "mm", message!("unit-a-length"), message!("unit-range-length"), |v| (0.0..=100_000.0).contains(&v)
);
quantity!(
    /// A real surface, never an area on the map.
    SquareMetres, m2, "m²", message!("unit-a-area"), message!("unit-range-area"), |v| (0.0..=1_000.0).contains(&v)
);
quantity!(
    /// A point on the temperature scale.
    Celsius, c, "°C", message!("unit-a-temperature"), message!("unit-range-temperature"), |v| (-40.0..=100.0).contains(&v)
);
quantity!(
    /// A difference of two temperatures.
    Kelvin, k, "K", message!("unit-a-temperature-difference"), message!("unit-range-temperature-difference"), |_| true
);
quantity!(
    /// Relative humidity of the air over liquid water.
    RelativeHumidity, pct, "%", message!("unit-a-humidity"), message!("unit-range-humidity"), |v| v > 0.0 && v <= 100.0
);
quantity!(
    /// A volume of liquid.
    Millilitres, ml, "ml", message!("unit-a-volume"), message!("unit-range-volume"), |v| (0.0..=1_000_000.0).contains(&v)
);
quantity!(
    /// A frequency-weighted vibration magnitude at the hand.
    MetresPerSecondSquared, ms2, "m/s²", message!("unit-a-vibration"), message!("unit-range-vibration"), |v| (0.0..=100.0).contains(&v)
);
quantity!(
    /// An A-weighted sound level.
    Decibels, db, "dB(A)", message!("unit-a-sound"), message!("unit-range-sound"), |v| (0.0..=200.0).contains(&v)
);
quantity!(
    /// Specular gloss; 100 is polished glass of refractive index 1.567. A mirror reaches about 2,000.
    GlossUnits, gu, "GU", message!("unit-a-gloss"), message!("unit-range-gloss"), |v| (0.0..=2_000.0).contains(&v)
);

impl Micrometres {
    /// What is left after taking `other` away; never below zero, as no film is.
    #[must_use]
    pub fn saturating_sub(self, other: Self) -> Self {
        Self((self.0 - other.0).max(0.0))
    }
}

impl std::ops::Sub for Celsius {
    type Output = Kelvin;
    fn sub(self, other: Self) -> Kelvin {
        Kelvin(self.0 - other.0)
    }
}

macro_rules! sums {
    ($($name:ident),*) => {$(
        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(values: I) -> Self {
                Self(values.map(|v| v.0).sum())
            }
        }
    )*};
}
sums!(Micrometres, SquareMetres, Millilitres);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_not_a_number_or_not_possible_is_refused() {
        assert!(Micrometres::new(f64::NAN).is_err());
        assert!(Celsius::new(f64::INFINITY).is_err());
        assert!(Micrometres::new(-1.0).is_err());
        assert!(RelativeHumidity::new(0.0).is_err());
        assert!(RelativeHumidity::new(100.0).is_ok());
    }

    #[test]
    fn a_value_prints_with_its_unit() {
        assert_eq!(format!("{:.1}", Micrometres::of(3.94)), "3.9\u{202f}µm");
    }

    #[test]
    fn two_temperatures_differ_by_kelvin() {
        assert_eq!(Celsius::of(20.0) - Celsius::of(12.0), Kelvin::of(8.0));
    }
}
