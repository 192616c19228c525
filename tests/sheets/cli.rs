//! The binary itself: `sheet` and `map`.

use super::support::sample;
use lapwright::file::job_to_text;
use std::path::Path;
use std::process::{Command, Output};

fn lapwright(words: &[&str], folder: &Path) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_lapwright"));
    command
        .args(words)
        .current_dir(folder)
        .env("XDG_DATA_HOME", folder)
        .env("LC_ALL", "C")
        .output()
        .expect("the program runs")
}

fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

#[test]
fn every_sheet_and_map_is_written_by_its_ending_and_is_the_same_twice() {
    let folder = tempfile::tempdir().unwrap();
    let write = |words: &[&str], name: &str| {
        let output = lapwright(&[words, &["--out", name]].concat(), folder.path());
        assert_eq!(output.status.code(), Some(0), "{words:?}: {}", stderr(&output));
        assert!(output.stdout.is_empty());
        std::fs::read(folder.path().join(name)).unwrap()
    };
    for (words, name, beginning) in [
        (&["sheet", "customer"] as &[&str], "a.pdf", "%PDF-1.7"),
        (&["sheet", "crew", "--paper", "letter"], "b.pdf", "%PDF-1.7"),
        (&["sheet", "record", "--locale", "us"], "c.html", "<!DOCTYPE html>"),
        (&["sheet", "crew"], "d.csv", "work,worker,number,"),
        (&["map", "--show", "film"], "e.svg", "<?xml version=\"1.0\""),
        (&["map", "--show", "order"], "f.svg", "<?xml version=\"1.0\""),
        (&["map", "--show", "polish"], "g.png", "\u{fffd}PNG"),
    ] {
        let first = write(words, name);
        assert!(String::from_utf8_lossy(&first).starts_with(beginning), "{words:?}");
        assert_eq!(first, write(words, name), "{words:?}");
    }
    assert!(!folder.path().join("a.pdf~").exists(), "what can be made again leaves no copy");
}

#[test]
fn care_times_need_a_day() {
    let folder = tempfile::tempdir().unwrap();
    let output = lapwright(&["sheet", "customer", "--out", "care.ics"], folder.path());
    assert_eq!(output.status.code(), Some(2));
    assert!(stderr(&output).starts_with("error: the job has no day"), "{}", stderr(&output));
    let mut job = (*sample().job).clone();
    job.date = lapwright::units::Date::of(2026, 11, 26);
    std::fs::write(folder.path().join("a.job.ron"), job_to_text(&job).unwrap()).unwrap();
    let words = ["sheet", "customer", "a.job.ron", "--done", "15:30", "--out", "care.ics"];
    let output = lapwright(&words, folder.path());
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let text = std::fs::read_to_string(folder.path().join("care.ics")).unwrap();
    assert!(text.contains("DTSTART:20261126T163000\r\n"));
}

#[test]
fn endings_and_options_that_do_not_fit_are_refused_with_what_does() {
    let folder = tempfile::tempdir().unwrap();
    for (words, error, hint) in [
        (&["sheet", "customer", "--out", "a.docx"] as &[&str], "has no ending", ".pdf or .html, or .ics"),
        (&["sheet", "record", "--out", "a.csv"], "has no ending", ".pdf or .html"),
        (&["sheet", "crew", "--costs", "--out", "a.pdf"], "--costs is for the customer sheet", "leave --costs out"),
        (&["sheet", "customer", "--done", "25:00", "--out", "a.pdf"], "25:00", "--help"),
        (&["map", "--show", "film", "--out", "a.pdf"], "has no ending", ".svg or .png"),
        (&["map", "--out", "a.svg"], "--show", "--help"),
    ] {
        let output = lapwright(words, folder.path());
        assert_eq!(output.status.code(), Some(2), "{words:?}");
        let said = stderr(&output);
        let mut lines = said.lines();
        assert!(lines.next().is_some_and(|l| l.starts_with("error: ") && l.contains(error)), "{words:?}: {said}");
        assert!(lines.next().is_some_and(|l| l.starts_with("hint: ") && l.contains(hint)), "{words:?}: {said}");
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0, "nothing was written");
}

#[test]
fn a_name_that_can_not_be_printed_is_refused_for_pdf_and_taken_for_html() {
    let folder = tempfile::tempdir().unwrap();
    let mut job = (*sample().job).clone();
    job.customer.name = "李小龍".to_owned();
    std::fs::write(folder.path().join("a.job.ron"), job_to_text(&job).unwrap()).unwrap();
    let output = lapwright(&["sheet", "customer", "a.job.ron", "--out", "a.pdf"], folder.path());
    assert_eq!(output.status.code(), Some(2));
    assert!(stderr(&output).contains("李 (U+674E)") && stderr(&output).contains("hint: "), "{}", stderr(&output));
    assert!(!folder.path().join("a.pdf").exists());
    let output = lapwright(&["sheet", "customer", "a.job.ron", "--out", "a.html"], folder.path());
    assert_eq!(output.status.code(), Some(0));
    assert!(std::fs::read_to_string(folder.path().join("a.html")).unwrap().contains("李小龍"));
}

#[test]
fn a_job_without_a_valid_order_still_has_its_sheets_and_exit_code_1() {
    let folder = tempfile::tempdir().unwrap();
    let mut job = (*sample().job).clone();
    // A window that nobody can meet: longer to level than it stays open is fine, but nobody is there to level twice at once.
    job.product.window_min_s = 10;
    job.product.window_max_s = 10;
    job.product.layers = 3;
    job.product.recoat_s = 0;
    std::fs::write(folder.path().join("a.job.ron"), job_to_text(&job).unwrap()).unwrap();
    let output = lapwright(&["sheet", "crew", "a.job.ron", "--out", "a.pdf"], folder.path());
    let code = output.status.code();
    assert!(code == Some(0) || (code == Some(1) && stderr(&output).contains("no valid order")), "{}", stderr(&output));
    assert!(folder.path().join("a.pdf").exists());
}
