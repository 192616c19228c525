//! What the owner may do when: on the customer sheet, and as a calendar file.

use super::input::SheetInput;
use crate::coat::{DROPPINGS_ADVICE, cure_calendar};
use crate::say;
use crate::units::{Moment, Seconds, capital};

/// One line of the care times: when, and what is allowed from then on.
pub fn care(input: &SheetInput<'_>) -> Vec<(String, String)> {
    let when = |after: Seconds| {
        if let Some(done) = input.done() {
            say!("sheet-from-moment", moment = done.later(after).in_words(input.options.dates))
        } else {
            say!("sheet-after-work", span = capital(&span(after)))
        }
    };
    cure_calendar(&input.job.product).into_iter().map(|m| (when(m.after_s), m.what)).collect()
}

/// A time span in words: "1 hour", "7 days".
fn span(seconds: Seconds) -> String {
    match seconds {
        s if s % 86_400 == 0 && s > 0 => say!("sheet-days", count = s / 86_400),
        s if s % 3_600 == 0 && s > 0 => say!("sheet-hours", count = s / 3_600),
        s => say!("sheet-minutes", count = (s + 59) / 60),
    }
}

/// When a calendar file is made, as it stands there, from seconds since 1970 (UTC).
pub fn calendar_stamp(now_s: Seconds) -> String {
    let now = jiff::Timestamp::from_second(now_s).unwrap_or_default();
    now.strftime("%Y%m%dT%H%M%SZ").to_string()
}

/// The care times as a calendar file (RFC 5545), in the local time of wherever it is opened. `stamp` is when the file is made, in UTC,
/// as `20261126T170000Z`. None where the job has no day.
pub fn calendar(input: &SheetInput<'_>, code: &str, stamp: &str) -> Option<String> {
    let done = input.done()?;
    let mut out = String::new();
    let mut line = |text: &str| folded(text, &mut out);
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Lapwright//Care times//EN");
    line("CALSCALE:GREGORIAN");
    for (number, milestone) in cure_calendar(&input.job.product).iter().enumerate() {
        let from: Moment = done.later(milestone.after_s);
        line("BEGIN:VEVENT");
        line(&format!("UID:{code}-{}@lapwright.invalid", number + 1));
        line(&format!("DTSTAMP:{stamp}"));
        line(&format!("DTSTART:{from}"));
        line(&format!("DTEND:{}", from.later(15 * 60)));
        line(&format!("SUMMARY:{}", escaped(&milestone.what)));
        let about = format!("{}. {}", input.job.vehicle.description, DROPPINGS_ADVICE.text());
        line(&format!("DESCRIPTION:{}", escaped(&about)));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    Some(out)
}

/// Text as RFC 5545, 3.3.11, wants it.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}

/// A content line, folded so that no line has more than 75 octets (RFC 5545, 3.1); never within a character.
fn folded(text: &str, out: &mut String) {
    let mut room = 75;
    for c in text.chars() {
        if c.len_utf8() > room {
            out.push_str("\r\n ");
            room = 74;
        }
        out.push(c);
        room -= c.len_utf8();
    }
    out.push_str("\r\n");
}
