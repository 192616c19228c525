//! Readings from files: what is recognised, what is refused with which reason, and where the readings go.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]
#![expect(clippy::format_push_string, reason = "a test puts its text together plainly")]

mod support;

use lapwright::file::{Loaded, Readings, ReadingsError, TextEncoding, match_panels, readings_from_bytes};
use lapwright::insight::{SAME_PLACE_MM, add_readings, recommended_spots};
use lapwright::job::{Document, check};
use lapwright::measure::GaugePrinciple;
use lapwright::units::{Micrometres, ThicknessUnit};
use lapwright::vehicle::PanelId;
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::sync::Arc;
use support::job::job_on;

fn read(bytes: &[u8]) -> Readings {
    readings_from_bytes("r.csv", bytes).expect("readings")
}

fn values(readings: &Readings) -> Vec<f64> {
    readings.rows.iter().map(|r| r.thickness.um()).collect()
}

fn reasons(readings: &Readings) -> Vec<String> {
    readings.rejected.iter().map(|r| format!("{}: {}", r.line, r.reason)).collect()
}

#[test]
fn every_separator_and_both_decimal_signs_are_recognised_and_said() {
    for (text, separator, decimal) in [
        ("panel;reading;thickness_um\nroof;1;112,5\nroof;2;113\n", ';', Some(',')),
        ("panel,reading,thickness_um\nroof,1,112.5\nroof,2,113\n", ',', Some('.')),
        ("panel,reading,thickness_um\nroof,1,\"112,5\"\nroof,2,113\n", ',', Some(',')),
        ("panel\treading\tthickness_um\nroof\t1\t112,5\nroof\t2\t113\n", '\t', Some(',')),
        ("Panel ; Reading ; Thickness_um\r\n\r\nroof;1;112,5\r\nroof;2;113", ';', Some(',')),
        ("panel;reading;thickness_um\nroof;1;112\nroof;2;113\n", ';', None),
    ] {
        let readings = read(text.as_bytes());
        assert_eq!(readings.recognised.separator, separator, "{text}");
        assert_eq!(readings.recognised.decimal, decimal, "{text}");
        assert!((values(&readings)[1] - 113.0).abs() < 1e-9, "{text}");
        assert_eq!(readings.rejected, []);
        let said = readings.recognised.in_words();
        assert!(said.contains("µm") && said.contains("UTF-8") && said.contains("separated by"), "{said}");
    }
}

/// 1 mil = 25.4 µm: 4.4 mil are 111.76 µm.
#[test]
fn the_unit_is_the_one_in_the_name_of_the_column() {
    let readings = read(b"panel,reading,thickness_mil\nroof,1,4.4\nroof,2,0.5\nroof,3,4.375\n");
    assert_eq!(readings.recognised.unit, ThicknessUnit::Mil);
    assert_eq!(values(&readings), [111.76, 12.7, 111.13]);
    let both = readings_from_bytes("r.csv", b"panel,reading,thickness_um,thickness_mil\nroof,1,112,4.4\n");
    assert!(both.expect_err("ambiguous").to_string().contains("which one counts"));
}

#[test]
fn letters_of_every_usual_encoding_are_read() {
    let text = "panel;reading;thickness_um;Prüfer\nroof;1;100;Jörg\n";
    let mut marked = vec![0xef, 0xbb, 0xbf];
    marked.extend(text.as_bytes());
    let windows: Vec<u8> = text.chars().map(|c| u8::try_from(u32::from(c)).expect("Latin")).collect();
    let mut wide = vec![0xff, 0xfe];
    wide.extend(text.encode_utf16().flat_map(u16::to_le_bytes));
    for (bytes, encoding) in [
        (text.as_bytes(), TextEncoding::Utf8),
        (&marked, TextEncoding::Utf8),
        (&windows, TextEncoding::Windows1252),
        (&wide, TextEncoding::Utf16),
    ] {
        let readings = read(bytes);
        assert_eq!(readings.recognised.encoding, encoding);
        assert_eq!(readings.rows[0].note, "Prüfer Jörg", "{encoding:?}");
        assert_eq!(readings.recognised.notes, ["Prüfer"]);
    }
    let picture = readings_from_bytes("r.csv", &[0x89, b'P', b'N', b'G', 0, 0, 1]);
    assert!(matches!(picture, Err(ReadingsError::NotText { .. })));
}

#[test]
fn every_row_that_is_not_taken_has_its_line_and_a_reason() {
    let text = "panel;reading;thickness_um;by\n\
                roof;1;112,5;A\n\
                roof;1;113;A\n\
                roof;2;112.5;A\n\
                roof;3;1,234;A\n\
                roof;x;112;A\n\
                roof;0;112;A\n\
                ;4;112;A\n\
                roof;5;;A\n\
                roof;6;thick;A\n\
                roof;7;-3;A\n\
                roof;8;99999;A\n\
                roof;9;112\n\
                roof;10;1.112,5;A\n\
                roof;11;90;A\n";
    let readings = read(text.as_bytes());
    assert_eq!(values(&readings), [112.5, 90.0]);
    let reasons = reasons(&readings);
    for (reason, part) in reasons.iter().zip([
        "3: reading 1 of \u{201c}roof\u{201d} stands in line 2 already",
        "4: \u{201c}112.5\u{201d} has a point, the numbers before it have a comma",
        "5: \u{201c}1,234\u{201d} could be a thousand or a fraction",
        "6: the reading \u{201c}x\u{201d} is not a number",
        "7: the reading \u{201c}0\u{201d} is not a number from 1",
        "8: it names no panel",
        "9: it has no thickness",
        "10: \u{201c}thick\u{201d} is not a number",
        "11: a thickness can't be less than nothing",
        "12: 99999\u{202f}µm is thicker than any paint",
        "13: it has 3 cells, the first line 4",
        "14: \u{201c}1.112,5\u{201d} has a comma and a point",
    ]) {
        assert!(reason.starts_with(part), "{reason} is not {part}");
    }
    assert_eq!(reasons.len(), 12);
}

#[test]
fn a_first_line_without_the_columns_is_said_with_what_is_missing() {
    for (text, part) in [
        ("", "the file is empty"),
        ("\n\n  \n", "the file is empty"),
        ("panel;thickness_um\nroof;1\n", "no column \u{201c}reading\u{201d}"),
        ("panel,reading,thickness\nroof,1,100\n", "no column \u{201c}thickness_um\u{201d} or"),
        ("panel,panel,reading,thickness_um\n", "\u{201c}panel\u{201d} is there twice"),
        ("roof;1;112\n", "no column"),
    ] {
        let error = readings_from_bytes("r.csv", text.as_bytes()).expect_err(text);
        assert!(error.to_string().contains(part), "{error}");
        assert!(error.to_string().starts_with("r.csv:1:1: ") && error.hint().contains("thickness_um"), "{error}");
    }
}

#[test]
fn a_file_too_large_is_refused_before_it_is_read() {
    let large = vec![b'a'; 9 * 1024 * 1024];
    assert!(matches!(readings_from_bytes("r.csv", &large), Err(ReadingsError::TooLarge { .. })));
    let mut many = b"panel,reading,thickness_um\n".to_vec();
    for row in 1..=100_001 {
        many.extend(format!("roof,{row},100\n").bytes());
    }
    let error = readings_from_bytes("r.csv", &many).expect_err("too many rows");
    assert!(error.to_string().contains("r.csv:100002:1"), "{error}");
}

#[test]
fn a_panel_is_known_by_its_id_and_by_both_its_names() {
    let Loaded { job, template } = job_on("saloon").build();
    let text = "panel;reading;thickness_um\n\
                bonnet-left;1;100\nBonnet, left;2;100\nHOOD, LEFT;3;100\nleft bonnet;4;100\nbonnet_left;5;100\n\
                bonnet;6;100\nHeck;7;100\n";
    let matched = match_panels(&read(text.as_bytes()), &job, &template, &BTreeMap::new());
    assert_eq!(matched.taken.len(), 5);
    assert!(matched.taken.iter().all(|r| r.panel == PanelId::from("bonnet-left")));
    let unknown: Vec<_> = matched.unknown.iter().map(|u| (u.name.as_str(), u.lines.as_slice())).collect();
    assert_eq!(unknown, [("bonnet", &[7_u64][..]), ("Heck", &[8][..])], "a half of a pair is not guessed");
    let assigned = BTreeMap::from([("Heck".to_owned(), PanelId::from("roof-right"))]);
    let matched = match_panels(&read(text.as_bytes()), &job, &template, &assigned);
    assert_eq!(matched.taken.last().expect("one more").panel, PanelId::from("roof-right"));
}

fn document() -> (Document, Arc<lapwright::vehicle::Template>) {
    let loaded = job_on("saloon").build();
    (Document::opened(Arc::clone(&loaded.job)), loaded.template)
}

#[test]
fn readings_are_put_at_recommended_places_three_a_spot_in_one_step() {
    let (mut document, template) = document();
    let mut text = "panel;reading;thickness_um\n".to_owned();
    for reading in (1..=15).rev() {
        text += &format!("roof-left;{reading};{}\n", 100 + reading);
    }
    let matched = match_panels(&read(text.as_bytes()), document.job(), &template, &BTreeMap::new());
    let command = add_readings(document.job(), &template, &matched.taken).expect("something to add");
    document.apply(&command, None).expect("a job");
    let roof = PanelId::from("roof-left");
    let spots = &document.job().record(&roof).expect("read").spots;
    let panel = template.panel(&roof).expect("a roof");
    assert_eq!(spots.iter().map(|s| s.at).collect::<Vec<_>>(), recommended_spots(panel));
    let first: Vec<f64> = spots[0].readings.iter().map(|r| r.thickness_um.um()).collect();
    assert_eq!(first, [101.0, 102.0, 103.0], "by number, not by line");
    assert_eq!(check(document.job(), &template), []);
    assert_eq!(document.undo_label(), Some("import readings"));
    assert!(document.undo());
    assert!(!document.is_dirty());
}

#[test]
fn a_reading_that_is_missing_does_not_move_the_others_to_another_spot() {
    let (mut document, template) = document();
    let text = "panel;reading;thickness_um\nroof-left;1;101\nroof-left;3;103\nroof-left;4;104\n";
    let matched = match_panels(&read(text.as_bytes()), document.job(), &template, &BTreeMap::new());
    document.apply(&add_readings(document.job(), &template, &matched.taken).expect("some"), None).expect("a job");
    let counts: Vec<usize> = document
        .job()
        .record(&PanelId::from("roof-left"))
        .expect("read")
        .spots
        .iter()
        .map(|s| s.readings.len())
        .collect();
    assert_eq!(counts, [2, 1]);
}

#[test]
fn named_spots_stay_together_and_new_ones_keep_clear_of_those_that_are_there() {
    let loaded = job_on("saloon").film("roof-left", 110.0).build();
    let mut document = Document::opened(Arc::clone(&loaded.job));
    let text =
        "panel,spot,reading,thickness_um,note\nroof-left,A,1,101,warm\nroof-left,B,1,111,\nroof-left,A,2,102,warm\n";
    let matched = match_panels(&read(text.as_bytes()), &loaded.job, &loaded.template, &BTreeMap::new());
    let command = add_readings(&loaded.job, &loaded.template, &matched.taken).expect("some");
    document.apply(&command, None).expect("a job");
    let spots = &document.job().record(&PanelId::from("roof-left")).expect("read").spots;
    let (old, new) = spots.split_at(5);
    assert_eq!(new.len(), 2);
    assert_eq!(new[0].readings.len(), 2);
    assert_eq!(new[0].note, "note warm");
    for spot in new {
        assert!(old.iter().all(|o| (o.at - spot.at).length() >= SAME_PLACE_MM));
    }
}

#[test]
fn rows_of_a_panel_that_the_gauge_cannot_read_are_listed_and_the_others_taken() {
    let Loaded { job, template } = job_on("saloon").build();
    let text = "panel;reading;thickness_um\nroof-left;1;101\nbumper-rear-left;1;140\nroof-left;2;102\nLeft rear bumper;2;150\n";
    let matched = match_panels(&read(text.as_bytes()), &job, &template, &BTreeMap::new());
    assert_eq!(matched.taken.len(), 2);
    assert!(matched.taken.iter().all(|r| r.panel == PanelId::from("roof-left")));
    assert_eq!(matched.impossible.iter().map(|r| r.line).collect::<Vec<_>>(), [3, 5], "the bumpers are plastic");
    assert!(matched.impossible[1].reason.contains("Left rear bumper"), "{}", matched.impossible[1].reason);
    let mut document = Document::opened(Arc::clone(&job));
    document.apply(&add_readings(&job, &template, &matched.taken).expect("some"), None).expect("the rest goes in");
    // With a gauge that reads over plastic all of them are taken.
    let mut other = (*job).clone();
    other.gauge.principle = GaugePrinciple::Ultrasonic;
    assert_eq!(match_panels(&read(text.as_bytes()), &other, &template, &BTreeMap::new()).taken.len(), 4);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_bytes_make_it_panic(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        drop(readings_from_bytes("r.csv", &bytes));
    }

    /// Every row below a good first line is taken or refused, none is lost and none comes twice.
    #[test]
    fn every_row_is_taken_or_refused(rows in proptest::collection::vec("[a-z0-9;,.\"\\t -]{0,24}", 0..30)) {
        let text = format!("panel;reading;thickness_um\n{}\n", rows.join("\n"));
        let readings = read(text.as_bytes());
        // A quote that is open swallows lines; without quotes each line that says anything is a row.
        if !text.contains('"') {
            let filled = rows.iter().filter(|r| r.split(';').any(|cell| !cell.trim().is_empty())).count();
            prop_assert_eq!(readings.rows.len() + readings.rejected.len(), filled);
        }
        for row in &readings.rows {
            prop_assert!(row.thickness <= Micrometres::of(10_000.0) && row.line >= 2);
        }
        for rejected in &readings.rejected {
            prop_assert!(rejected.line >= 2 && rejected.reason.len() > 10);
        }
    }

    /// What is written in any dialect is read back as it was meant.
    #[test]
    fn a_file_of_any_dialect_is_read_as_it_was_meant(
        tenths in proptest::collection::vec(1_u32..20_000, 1..40),
        separator in proptest::sample::select(vec![';', '\t']),
        comma in any::<bool>(),
        returns in any::<bool>(),
    ) {
        let end = if returns { "\r\n" } else { "\n" };
        let mut text = format!("panel{separator}reading{separator}thickness_um{end}");
        for (k, tenth) in tenths.iter().enumerate() {
            let value = format!("{:.1}", f64::from(*tenth) / 10.0);
            let value = if comma { value.replace('.', ",") } else { value };
            text += &format!("roof-left{separator}{}{separator}{value}{end}", k + 1);
        }
        let readings = read(text.as_bytes());
        prop_assert_eq!(&readings.rejected, &[]);
        let meant: Vec<f64> = tenths.iter().map(|t| f64::from(*t) / 10.0).collect();
        prop_assert_eq!(values(&readings), meant);
    }
}
