//! Film thickness as gauges show it: in micrometres or in thousandths of an inch.

use super::{Micrometres, number};
use crate::say;

/// The unit that a gauge shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ThicknessUnit {
    /// Micrometres.
    #[default]
    Um,
    /// Thousandths of an inch.
    Mil,
}

/// Micrometres in a thousandth of an inch: an inch is 25.4 mm exactly (**source**: the international yard of 1959; ISO 80000-3).
pub const UM_PER_MIL: f64 = 25.4;
/// More than this is no film of paint or filler but a slip of the finger, in µm (our estimate).
pub const MOST_FILM_UM: f64 = 10_000.0;

impl ThicknessUnit {
    /// Both, in the order of a list to choose from.
    pub const ALL: [Self; 2] = [Self::Um, Self::Mil];

    /// As it stands after a number.
    pub fn name(self) -> &'static str {
        match self {
            Self::Um => "µm",
            Self::Mil => "mil",
        }
    }

    /// A value in this unit as a thickness, to a hundredth of a micrometre.
    ///
    /// # Errors
    /// Why it is none, as the end of a sentence.
    pub fn thickness(self, value: f64) -> Result<Micrometres, String> {
        let um = match self {
            Self::Um => value,
            Self::Mil => (value * UM_PER_MIL * 100.0).round() / 100.0,
        };
        match Micrometres::new(um) {
            Ok(thickness) if um <= MOST_FILM_UM => Ok(thickness),
            Ok(_) => Err(say!("unit-too-thick", film = format!("{um:.0}\u{202f}µm"))),
            Err(_) => Err(say!("unit-below-nothing").to_owned()),
        }
    }

    /// A thickness as typed: decimal point or comma.
    ///
    /// # Errors
    /// Why it is none, as the end of a sentence.
    pub fn read(self, text: &str) -> Result<Micrometres, String> {
        let value = number(text).ok_or_else(|| format!("\u{201c}{}\u{201d} is not a number", text.trim()))?;
        self.thickness(value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 5 mil are 127 µm; 0.5 mil are 12.7 µm, as a maker's bulletin of 1992 has it side by side.
    #[test]
    fn thousandths_of_an_inch_become_micrometres() {
        assert_eq!(ThicknessUnit::Mil.read("5"), Ok(Micrometres::of(127.0)));
        assert_eq!(ThicknessUnit::Mil.read("0,5"), Ok(Micrometres::of(12.7)));
        assert_eq!(ThicknessUnit::Mil.read("4.4"), Ok(Micrometres::of(111.76)));
        assert_eq!(ThicknessUnit::Um.read("112,5"), Ok(Micrometres::of(112.5)));
    }

    #[test]
    fn what_is_no_thickness_is_refused_with_a_reason() {
        for bad in ["", "abc", "-5", "1.2.3", "1e9", "20000"] {
            assert!(ThicknessUnit::Um.read(bad).is_err_and(|reason| reason.len() > 10), "{bad}");
        }
        assert!(ThicknessUnit::Mil.read("112").is_ok() && ThicknessUnit::Mil.read("400").is_err());
    }
}
