//! Broken templates: every kind of fault is found, and said to be where it is.
#![expect(clippy::panic, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::finding::{Code, Finding, Severity};
use lapwright::vehicle::{Template, TemplateError, embedded, written_at};
use proptest::prelude::*;
use std::collections::BTreeSet;
use std::path::Path;

fn broken(file: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/templates").join(file);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// All that is said about a broken template, whether it can be built or not.
fn findings(file: &str) -> Vec<Finding> {
    match Template::parse(&broken(file)) {
        Ok(t) => t.check(),
        Err(TemplateError::Findings(findings)) => findings,
        Err(e) => panic!("{file}: {e}"),
    }
}

/// A place as a finding names it, and a part of the line of the file on which it is written, if it is.
type Place = (&'static str, Option<&'static str>);

/// A broken template, what it breaks, and places that have to be named: of the drawing as coordinates in mm, of the file as the
/// line on which the panel, point or field is written. Worked out by hand from the coordinates in the files.
const CASES: [(&str, Code, &[Place]); 21] = [
    // The front edge of the glass lies 500 mm in front of the rear edge of the bonnet.
    (
        "overlap.ron",
        Code::TemplateOverlap,
        &[
            ("panel \"bonnet-left\" and panel \"glass-rear-left\", at x 1500, y 0 mm", Some("(id: \"bonnet\"")),
            ("panel \"bonnet-left\" and panel \"glass-rear-left\", at x 2000, y 0 mm", Some("(id: \"bonnet\"")),
        ],
    ),
    // A square from 500 to 900 mm either way; its middle is the place.
    (
        "nested.ron",
        Code::TemplateOverlap,
        &[
            ("panels \"roof-left\" and \"bonnet-left\", at x 700, y 700 mm", Some("(id: \"roof\"")),
            ("panels \"roof-right\" and \"bonnet-right\", at x 700, y -700 mm", Some("(id: \"roof\"")),
        ],
    ),
    (
        "doubled.ron",
        Code::TemplateOverlap,
        &[
            ("curve from \"nose\" to \"middle\", centre", Some("\"nose\": (0, 0)")),
            ("curve from \"middle\" to \"middle-side\", left", Some("\"middle\": (2000, 0)")),
        ],
    ),
    (
        "opening-over-a-panel.ron",
        Code::TemplateOverlap,
        &[("panel \"bonnet-left\" and an opening, at x 700, y 700 mm", Some("(id: \"bonnet\""))],
    ),
    // A triangle with corners at (2000, 700), (2200, 700), (2000, 900): half of 200 by 200 mm, its box round (2100, 800).
    ("gap.ron", Code::TemplateGap, &[("at x 2100, y 800 mm", None), ("at x 2100, y -800 mm", None)]),
    // 2 mm wide behind the straight edge at 2000 mm, the first quarter of which is at 400 mm.
    (
        "slit.ron",
        Code::TemplateGap,
        &[
            ("panels \"bonnet-left\" and \"glass-rear-left\", at x 2000, y 400 mm", Some("(id: \"bonnet\"")),
            ("panels \"glass-rear-right\" and \"bonnet-right\", at x 2002, y -400 mm", Some("(id: \"glass-rear\"")),
        ],
    ),
    ("open.ron", Code::TemplateOutline, &[("panel \"bonnet\"", Some("outline: [\"nose\", \"nose-side\"]"))]),
    // From (-300, 700) straight to (2000, 1600), the front edge at x 0 is crossed at 700 + 300 / 2300 * 900 = 817 mm.
    (
        "self-crossing.ron",
        Code::TemplateOutline,
        &[
            ("panel \"bonnet-left\", at x 0, y 817 mm", Some("(id: \"bonnet\"")),
            ("panel \"bonnet-right\", at x 0, y -817 mm", Some("(id: \"bonnet\"")),
        ],
    ),
    ("right-side-point.ron", Code::TemplatePoint, &[("point \"nose-side\"", Some("\"nose-side\": (0, -1500)"))]),
    (
        "curve-twice.ron",
        Code::TemplatePoint,
        &[("lines[1], from \"middle-side\" to \"tail-side\"", Some("\"middle-side\": (2000, 1600)"))],
    ),
    ("unknown-point.ron", Code::TemplateUnknown, &[("panel \"glass-rear\"", Some("(id: \"glass-rear\""))]),
    ("unknown-neighbour.ron", Code::TemplateUnknown, &[("panel \"glass-rear\"", Some("(id: \"glass-rear\""))]),
    ("unknown-stance.ron", Code::TemplateUnknown, &[("panel \"glass-rear\"", Some("(id: \"glass-rear\""))]),
    ("panel-twice.ron", Code::TemplateUnknown, &[("panel \"bonnet\"", Some("(id: \"bonnet\""))]),
    ("size.ron", Code::TemplateSize, &[("length_mm", Some("length_mm: 40000"))]),
    (
        "stance-inside.ron",
        Code::TemplateStance,
        &[("stance \"front-left\"", Some("\"front\": (")), ("stance \"front-right\"", Some("\"front\": ("))],
    ),
    (
        "stance-far-away.ron",
        Code::TemplateReach,
        &[
            ("panel \"glass-rear-left\"", Some("(id: \"glass-rear\"")),
            ("panel \"glass-rear-right\"", Some("(id: \"glass-rear\"")),
        ],
    ),
    (
        "leans-in-a-circle.ron",
        Code::TemplateLean,
        &[("panel \"bonnet-left\"", Some("(id: \"bonnet\"")), ("panel \"bonnet-right\"", Some("(id: \"bonnet\""))],
    ),
    (
        "area.ron",
        Code::TemplateArea,
        &[("panel \"bonnet-left\"", Some("(id: \"bonnet\"")), ("the whole vehicle", None)],
    ),
    ("part-without-a-name.ron", Code::TemplateName, &[("panel \"bonnet-left\"", Some("part: \"figurehead\""))]),
    ("one-side-only.ron", Code::TemplateAsymmetric, &[("panel \"glass-rear-left\"", Some("(id: \"glass-rear\""))]),
];

#[test]
fn each_kind_of_fault_is_found_in_a_template_that_has_it_and_nothing_else() {
    assert_eq!(findings("sound.ron"), []);
    for (file, code, _) in CASES {
        let said: BTreeSet<&str> = findings(file).iter().map(|f| f.code.id()).collect();
        assert_eq!(said, BTreeSet::from([code.id()]), "{file}");
    }
    let covered: BTreeSet<&str> = CASES.iter().map(|(_, code, _)| code.id()).collect();
    let all: BTreeSet<&str> = Code::ALL.iter().map(|c| c.id()).filter(|id| id.starts_with("template-")).collect();
    assert_eq!(covered, all, "every code about templates has a broken template");
}

#[test]
fn every_fault_is_said_to_be_where_it_is() {
    for (file, _, places) in CASES {
        let (text, found) = (broken(file), findings(file));
        for (place, line) in places {
            let times = found.iter().filter(|f| f.place == *place).count();
            let named: Vec<&str> = found.iter().map(|f| f.place.as_str()).collect();
            assert_eq!(times, 1, "{file}: {place} in {named:#?}");
            let written = written_at(&text, place).and_then(|(line, _)| text.lines().nth(line - 1));
            match line {
                Some(part) => assert!(written.is_some_and(|w| w.contains(part)), "{file}: {place} at {written:?}"),
                None => assert_eq!(written, None, "{file}: {place}"),
            }
        }
    }
}

#[test]
fn a_circle_of_leaning_names_every_panel_of_it_and_one_side_alone_is_a_notice() {
    let circle = findings("leans-in-a-circle.ron");
    assert!(circle[0].cause.ends_with("bonnet-left, glass-rear-left, bonnet-left"), "{}", circle[0].cause);
    let alone = findings("one-side-only.ron");
    assert!(alone.iter().all(|f| f.severity() == Severity::Notice));
    let gap = findings("gap.ron");
    assert!(gap.iter().all(|f| f.cause.starts_with("20000 mm²")), "half of 200 by 200 mm");
}

#[test]
fn a_place_in_the_text_is_a_line_and_a_column_and_never_in_a_comment() {
    let text = "// (id: \"roof\"\n(\n  points: {\"roof\": (1, 2)},\n  panels: [(id: \"roof\")],\n)\n";
    assert_eq!(written_at(text, "panel \"roof-left\", at x 1, y 2 mm"), Some((4, 17)));
    assert_eq!(written_at(text, "point \"roof\""), Some((3, 12)));
    assert_eq!(written_at(text, "points"), Some((3, 3)));
    for nowhere in ["panel \"wing\"", "at x 1, y 2 mm", "the whole vehicle", ""] {
        assert_eq!(written_at(text, nowhere), None, "{nowhere}");
    }
}

fn syntax(text: &str) -> (usize, usize, String, String) {
    match Template::parse(text) {
        Err(TemplateError::Syntax { line, column, path, message }) => (line, column, path, message),
        other => panic!("a syntax error was expected, not {other:?}"),
    }
}

/// The sound template with one text replaced, and the line on which that stands.
fn with(from: &str, to: &str) -> (String, usize) {
    let text = broken("sound.ron");
    let at = text.find(from).unwrap_or_else(|| panic!("sound.ron has no {from}"));
    let line = text[..at].lines().count();
    (text.replacen(from, to, 1), line)
}

#[test]
fn a_syntax_error_names_line_column_and_field() {
    let (text, line) = with("area_m2: 4.5", "area_m2: many");
    let (l, column, path, _) = syntax(&text);
    assert_eq!((l, path.as_str()), (line, "panels[0].area_m2"));
    assert!(column > 1);
}

#[test]
fn what_is_not_a_number_is_refused_where_it_stands() {
    for bad in ["NaN", "inf", "-inf", "1e300"] {
        let (text, line) = with("length_mm: 4000", &format!("length_mm: {bad}"));
        let (l, _, path, message) = syntax(&text);
        assert_eq!((l, path.as_str()), (line, "length_mm"), "{bad}: {message}");
    }
    let (text, _) = with("area_m2: 4.5", "area_m2: -4.5");
    assert!(syntax(&text).3.contains("an area"), "a negative area is refused by the unit");
}

#[test]
fn unknown_fields_and_keys_given_twice_are_refused() {
    let (text, line) = with("height_mm: 1500", "hight_mm: 1500");
    let (l, _, _, message) = syntax(&text);
    assert_eq!(l, line);
    assert!(message.contains("hight_mm"), "{message}");
    let (text, _) = with("\"nose\":", "\"tail\": (1, 2), \"nose\":");
    assert!(syntax(&text).3.contains("twice"));
    let (text, _) = with("length_mm: 4000", "length_mm: 4000, length_mm: 4000");
    assert!(syntax(&text).3.contains("length_mm"));
}

#[test]
fn hostile_input_is_an_error_and_not_a_crash() {
    for text in
        ["[".repeat(100_000), "(".repeat(100_000), "Some(".repeat(100_000), String::new(), "\u{feff}".to_owned()]
    {
        syntax(&text);
    }
    let (text, _) = with("points: {", &format!("points: {}", "[".repeat(100_000)));
    syntax(&text);
    assert!(matches!(Template::parse(&" ".repeat(5 << 20)), Err(TemplateError::TooLarge { .. })));
    let (text, _) = with("vehicle-template/1", "vehicle-template/9");
    assert_eq!(Template::parse(&text).err(), Some(TemplateError::Format("vehicle-template/9".to_owned())));
    let trailing = broken("sound.ron") + " trailing";
    assert!(syntax(&trailing).0 > 1);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Whatever happens to a file on its way, reading and checking it ends in an answer.
    #[test]
    fn a_damaged_file_is_read_or_refused(which in 0usize..1000, cuts in proptest::collection::vec((0usize..200_000, 0u8..6), 1..6)) {
        let mut text = embedded()[which % embedded().len()].text.as_bytes().to_vec();
        for (at, what) in cuts {
            let at = at % text.len().max(1);
            match what {
                0 => { text.truncate(at.max(1)); }
                1 => text[at] = b'9',
                2 => text[at] = b'-',
                3 => { text.remove(at); }
                4 => { text.insert(at, b'0'); }
                _ => { let end = (at + 200).min(text.len()); text.drain(at..end); if text.is_empty() { text.push(b'('); } }
            }
        }
        if let Ok(t) = Template::parse(&String::from_utf8_lossy(&text)) {
            for finding in t.check() {
                prop_assert!(!finding.place.is_empty() && !finding.cause.is_empty());
            }
        }
    }
}

#[test]
fn a_mark_of_byte_order_at_the_start_is_no_harm() {
    assert!(Template::parse(&format!("\u{feff}{}", broken("sound.ron"))).is_ok());
}
