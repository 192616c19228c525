//! A time of a day of the calendar, as a clock on the wall shows it.

use super::{Date, Seconds};
use crate::say;
use crate::words::{Language, language, text};
use jiff::{SignedDuration, civil};
use std::fmt;

/// In which order people write day and month.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum DateOrder {
    /// Thu 26 November 2026, 17:00.
    #[default]
    DayFirst,
    /// Thu, November 26, 2026, 5:00 pm.
    MonthFirst,
}

impl DateOrder {
    /// Whether the language in use leaves a choice; languages other than English have one order.
    pub fn is_a_choice() -> bool {
        matches!(language(), Language::British | Language::American)
    }
}

/// A day and a time of it. It has no time zone: where the vehicle stands, clocks show it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment(civil::DateTime);

impl Moment {
    /// A time of a day; none where there is no such time.
    pub fn of(day: Date, hour: i8, minute: i8) -> Option<Self> {
        let time = civil::Time::new(hour, minute, 0, 0).ok()?;
        Some(Self(day.civil().to_datetime(time)))
    }

    /// So many seconds later, counted without changes of the clock; the last moment there is where that is beyond the calendar.
    #[must_use]
    pub fn later(self, seconds: Seconds) -> Self {
        Self(self.0.saturating_add(SignedDuration::from_secs(seconds)))
    }

    /// Day and time in words.
    pub fn in_words(self, order: DateOrder) -> String {
        let (hour, minute) = (self.0.hour(), self.0.minute());
        let day = day_in_words(self.0.date(), order);
        match order {
            DateOrder::DayFirst => format!("{day}, {hour:02}:{minute:02}"),
            DateOrder::MonthFirst => {
                let half = if hour < 12 { "am" } else { "pm" };
                format!("{day}, {}:{minute:02}\u{202f}{half}", (hour + 11) % 12 + 1)
            }
        }
    }
}

impl Date {
    /// The day in words: "Thu 26 November 2026", or "Thu, November 26, 2026".
    pub fn in_words(self, order: DateOrder) -> String {
        day_in_words(self.civil(), order)
    }
}

fn day_in_words(day: civil::Date, order: DateOrder) -> String {
    let month = text(&format!("unit-month-{}", day.month()));
    let weekday = text(&format!("unit-day-{}", day.weekday().to_monday_one_offset()));
    let (year, day) = (day.year().to_string(), day.day());
    match order {
        DateOrder::DayFirst => say!("unit-date-day-first", weekday = weekday, day = day, month = month, year = year),
        DateOrder::MonthFirst => {
            say!("unit-date-month-first", weekday = weekday, day = day, month = month, year = year)
        }
    }
}

impl fmt::Display for Moment {
    /// `20261126T170000`, the local time of RFC 5545, 3.3.5, which is also ISO 8601 without marks.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let t = self.0;
        write!(f, "{:04}{:02}{:02}T{:02}{:02}{:02}", t.year(), t.month(), t.day(), t.hour(), t.minute(), t.second())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 26 November 2026 is a Thursday; 2028 is a leap year (Gregorian calendar).
    #[test]
    fn days_and_times_read_as_on_a_letter() {
        let at = Moment::of(Date::of(2026, 11, 26).unwrap(), 17, 0).unwrap();
        assert_eq!(at.in_words(DateOrder::DayFirst), "Thu 26 November 2026, 17:00");
        assert_eq!(at.in_words(DateOrder::MonthFirst), "Thu, November 26, 2026, 5:00\u{202f}pm");
        assert_eq!(at.later(7 * 86_400 + 3600).in_words(DateOrder::DayFirst), "Thu 3 December 2026, 18:00");
        let noon = Moment::of(Date::of(2028, 2, 29).unwrap(), 12, 5).unwrap();
        assert_eq!(noon.in_words(DateOrder::MonthFirst), "Tue, February 29, 2028, 12:05\u{202f}pm");
        assert_eq!(noon.later(12 * 3600).to_string(), "20280301T000500");
        assert_eq!(Moment::of(Date::of(2028, 2, 29).unwrap(), 24, 0), None);
    }
}
