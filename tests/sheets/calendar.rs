//! The care times as a calendar file, held against the rules of RFC 5545.

use super::jobs::Case;
use lapwright::sheets;

const STAMP: &str = "20261126T090000Z";

#[test]
fn the_calendar_keeps_the_rules_for_lines() {
    let case = Case::sample(|job| job.vehicle.description = "Limousine, grün; sehr schön, ".repeat(8));
    let text = sheets::calendar(&case.input(), "AB12-CD34", STAMP).unwrap();
    // 3.1: lines end with CR LF and have at most 75 octets without it.
    assert!(text.ends_with("\r\n"));
    assert_eq!(text.matches('\n').count(), text.matches("\r\n").count());
    assert!(text.split("\r\n").all(|line| line.len() <= 75), "a line is too long");
    assert!(text.contains("\r\n "), "something is folded");
    // Unfolded, every line is a name, perhaps parameters, and a value.
    let unfolded = text.replace("\r\n ", "");
    for line in unfolded.lines() {
        let (name, _) = line.split_once(':').unwrap();
        assert!(name.bytes().all(|b| b.is_ascii_uppercase() || b == b'-'), "{line}");
    }
    // 3.3.11: commas and semicolons of a text have a backslash before them.
    assert!(unfolded.contains("grün\\; sehr schön\\, "));
}

#[test]
fn every_event_has_what_it_must_have_once() {
    let case = Case::sample(|_| ());
    let text = sheets::calendar(&case.input(), "AB12-CD34", STAMP).unwrap();
    // 3.4 and 3.6: one object with version and product, events with UID and DTSTAMP.
    assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    let events = text.matches("BEGIN:VEVENT\r\n").count();
    assert_eq!(events, 5, "drive, rain, dust, wash, full hardness");
    for property in ["UID:", "DTSTART:", "DTEND:", "SUMMARY:", "END:VEVENT"] {
        assert_eq!(text.matches(&format!("\r\n{property}")).count(), events, "{property}");
    }
    assert_eq!(text.matches(&format!("\r\nDTSTAMP:{STAMP}\r\n")).count(), events);
    let mut ids: Vec<&str> = text.lines().filter(|l| l.starts_with("UID:")).collect();
    ids.dedup();
    assert_eq!(ids.len(), events, "3.8.4.7: each is unique");
    // Done at 17:00: an hour later it may be driven, a week later washed.
    assert!(text.contains("DTSTART:20261126T180000\r\n") && text.contains("DTSTART:20261203T170000\r\n"));
}

#[test]
fn without_a_day_there_is_no_calendar() {
    assert_eq!(sheets::calendar(&Case::sample(|job| job.date = None).input(), "AB12-CD34", STAMP), None);
}
