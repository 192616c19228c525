//! What time it is, behind a trait, so that a day in the bay can be tried without waiting for it.

use crate::say;
use crate::units::{Date, Seconds};
use crate::words::text;
use std::fmt;
use std::sync::atomic::{AtomicI64, Ordering};
use std::time::{SystemTime, UNIX_EPOCH};

/// A clock that people share; it goes on while the program does not run.
pub trait Clock: fmt::Debug + Send + Sync {
    /// Whole seconds since some moment, the same one every time.
    fn now_s(&self) -> Seconds;
}

/// The clock of this machine, in seconds since the beginning of 1970 (UTC).
#[derive(Debug, Clone, Copy, Default)]
pub struct WallClock;

impl Clock for WallClock {
    fn now_s(&self) -> Seconds {
        SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |d| d.as_secs() as Seconds)
    }
}

/// The day on this machine's calendar at a moment of its clock; none far outside any calendar.
pub fn day_of(now_s: Seconds) -> Option<Date> {
    let moment = jiff::Timestamp::from_second(now_s).ok()?;
    let day = moment.to_zoned_datetime(jiff::tz::TimeZone::system()).date();
    Date::of(day.year(), day.month(), day.day())
}

/// A moment as the clock on the wall shows it: "14:02" on the day it is now, else with its day.
pub fn clock_words(at_s: Seconds, now_s: Seconds) -> String {
    let (at, now) = (wall(at_s), wall(now_s));
    let time = at.strftime("%H:%M");
    if at.date() == now.date() {
        return time.to_string();
    }
    let (day, year) = (at.day(), at.year().to_string());
    let day = say!("unit-date-plain", day = day, month = text(&format!("unit-month-{}", at.month())), year = year);
    format!("{day}, {time}")
}

/// The same as a part of a name: `2026-11-25-140210`.
pub fn clock_stamp(at_s: Seconds) -> String {
    wall(at_s).strftime("%Y-%m-%d-%H%M%S").to_string()
}

fn wall(at_s: Seconds) -> jiff::civil::DateTime {
    let moment = jiff::Timestamp::from_second(at_s).unwrap_or_default();
    moment.to_zoned_datetime(jiff::tz::TimeZone::system()).datetime()
}

/// A clock that stands still until it is set.
#[derive(Debug, Default)]
pub struct HandClock(AtomicI64);

impl HandClock {
    /// A clock that shows this.
    pub fn at(now_s: Seconds) -> Self {
        Self(AtomicI64::new(now_s))
    }

    /// Puts it on by so many seconds.
    pub fn advance(&self, seconds: Seconds) {
        self.0.fetch_add(seconds, Ordering::SeqCst);
    }
}

impl Clock for HandClock {
    fn now_s(&self) -> Seconds {
        self.0.load(Ordering::SeqCst)
    }
}
