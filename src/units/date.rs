//! A day of the calendar.

use crate::say;
use jiff::civil;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A day, written `YYYY-MM-DD` (ISO 8601). It has no time and no time zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Date(civil::Date);

impl Date {
    /// Reads `YYYY-MM-DD`, blanks around it allowed.
    ///
    /// # Errors
    /// What is wrong with it, in words.
    pub fn parse(text: &str) -> Result<Self, String> {
        let text = text.trim();
        let digits =
            |range: std::ops::Range<usize>| text.get(range).is_some_and(|t| t.bytes().all(|b| b.is_ascii_digit()));
        let shape = text.len() == 10 && digits(0..4) && digits(5..7) && digits(8..10);
        let shape = shape && text.as_bytes()[4] == b'-' && text.as_bytes()[7] == b'-';
        if !shape {
            return Err(say!("unit-day-form").to_owned());
        }
        text.parse().map(Self).map_err(|e: jiff::Error| say!("unit-no-day", text = text, why = e.to_string()))
    }

    /// The day of a year, month and day; none where there is no such day.
    pub fn of(year: i16, month: i8, day: i8) -> Option<Self> {
        civil::Date::new(year, month, day).ok().map(Self)
    }

    pub(super) fn civil(self) -> civil::Date {
        self.0
    }

    /// Whole days to a later day; 0 where that is not later.
    pub fn days_until(self, later: Self) -> u32 {
        self.0.until(later.0).map_or(0, |span| u32::try_from(span.get_days()).unwrap_or(0))
    }
}

impl TryFrom<String> for Date {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        Self::parse(&text)
    }
}

impl From<Date> for String {
    fn from(date: Date) -> Self {
        date.to_string()
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.0, f)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_day_is_read_and_written_alike_and_no_other_is_read() {
        assert_eq!(Date::parse(" 2028-02-29 ").map(|d| d.to_string()), Ok("2028-02-29".to_owned()));
        for bad in ["2026-02-29", "2026-13-01", "26-01-01", "2026-1-1", "01.02.2026", "", "2026-01-01T00"] {
            assert!(Date::parse(bad).is_err(), "{bad}");
        }
    }

    /// From 1 March to 1 March over a leap day: 366 days (Gregorian calendar).
    #[test]
    fn days_are_counted_over_leap_years() {
        let day = |text| Date::parse(text).unwrap();
        assert_eq!(day("2027-03-01").days_until(day("2028-03-01")), 366);
        assert_eq!(day("2026-11-03").days_until(day("2026-11-25")), 22);
        assert_eq!(day("2026-11-25").days_until(day("2026-11-03")), 0);
    }
}
