//! Jobs as files: what is written can be read, what can't be read is said in one line with its place, and nothing panics.

mod support;

use lapwright::file::{RealDisk, SAMPLE, job_as_written, job_findings, job_from_text, job_to_text, read_job};
use lapwright::insight::Insight;
use lapwright::job::Document;
use lapwright::polish::{Level, PaintHistory};
use lapwright::vehicle::{PanelId, Substrate};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, LazyLock};
use std::time::{Duration, Instant};
use support::command::command;
use support::job::job_on;
use support::{files, root, sample};

#[test]
fn the_sample_has_no_finding() {
    let (_, _, found) = job_findings("sample", SAMPLE).unwrap();
    assert_eq!(found, Vec::new());
}

#[test]
fn the_sample_written_and_read_again_is_the_same_job() {
    let first = sample();
    let text = job_to_text(&first.job).unwrap();
    let second = job_from_text("again", &text).unwrap();
    assert_eq!(first.job, second.job);
    assert_eq!(text, job_to_text(&second.job).unwrap(), "the same job is written in the same way");
}

#[test]
fn a_written_job_has_one_line_for_each_spot_and_units_in_its_names() {
    let text = job_to_text(&sample().job).unwrap();
    let spots: usize = sample().job.panels.values().map(|r| r.spots.len()).sum();
    let lines = text.lines().filter(|l| l.contains("readings:")).count();
    assert_eq!(lines, spots, "so that two versions of a job can be compared line by line");
    for name in ["air_temp_c: 21", "humidity_pct: 52", "surface_temp_c: 19.5", "thickness_um: 119"] {
        assert!(text.contains(name), "{name}");
    }
    assert!(text.starts_with("(\n  format: \"job/1\",\n"), "the format is the first field");
}

#[test]
fn the_sample_has_a_refinished_door_with_a_budget_of_its_own() {
    let loaded = sample();
    let door = PanelId::from("door-front-right");
    assert_eq!(loaded.job.record(&door).unwrap().history, PaintHistory::Refinished);
    let insight = Insight::new(&loaded.job, &loaded.template);
    let index = loaded.template.index_of(&door).unwrap();
    let film = insight.panels[index].film.as_ref().unwrap();
    assert!(film.mean > loaded.job.policy.bands.refinished_above_um.um());
    let budget = &insight.panels[index].budget;
    assert!(budget.allowed <= loaded.job.policy.refinished_um, "{budget:?}");
    assert!(budget.limits[0].what.contains("painted again"), "{budget:?}");
}

#[test]
fn the_sample_has_a_thin_roof_edge_that_needs_care() {
    let loaded = sample();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let roof = &insight.panels[support::index_of(&loaded.template, "roof-left")];
    assert!(roof.budget.edge.unwrap() < roof.budget.allowed);
    assert!(roof.polish.why.iter().any(|w| w.contains("thin edge")), "{:?}", roof.polish.why);
}

#[test]
fn the_sample_has_etching_on_the_bonnet_to_decide_about() {
    let loaded = sample();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let bonnet = &insight.panels[support::index_of(&loaded.template, "bonnet-left")];
    let etching = bonnet.defects.iter().position(|d| d.kind == lapwright::polish::DefectKind::BirdEtching).unwrap();
    let (_, most) = bonnet.defects[etching].depth_um;
    assert!(most > bonnet.polish.removal, "polishing the whole panel would not reach its bottom");
    assert!(most <= bonnet.budget.allowed, "but the budget could");
}

#[test]
fn the_sample_has_bumpers_that_the_gauge_can_not_read() {
    let loaded = sample();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let bumper = &insight.panels[support::index_of(&loaded.template, "bumper-front-left")];
    assert_eq!(bumper.substrate, Substrate::Plastic);
    assert!(bumper.unreadable.is_some());
    assert_eq!(bumper.polish.level, Level::Leave);
    assert!(bumper.budget.refused.as_ref().unwrap().contains("ultrasonic"), "{:?}", bumper.budget.refused);
}

#[test]
fn the_sample_has_a_scratch_too_deep_for_any_budget_and_says_why_it_stays() {
    let loaded = sample();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let door = &insight.panels[support::index_of(&loaded.template, "door-rear-left")];
    let stays = &door.polish.stays;
    assert!(stays.iter().any(|s| s.defect == 0 && !s.reason.is_empty()), "{stays:?}");
    assert!(door.defects[0].depth_um.0 > door.budget.allowed);
}

static HATCH: LazyLock<lapwright::file::Loaded> = LazyLock::new(|| job_on("hatch").build());

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_generated_job_written_and_read_again_is_the_same(
        commands in proptest::collection::vec(command(&HATCH.template), 1..60),
    ) {
        let mut document = Document::opened(Arc::clone(&HATCH.job));
        for command in &commands {
            drop(document.apply(command, None));
        }
        let text = job_to_text(document.job()).expect("a job made by commands can be written");
        let again = job_from_text("again", &text).expect("and read");
        prop_assert_eq!(&again.job, document.job());
        let quick = job_as_written(&text);
        prop_assert_eq!(quick.as_ref(), Some(&**document.job()), "lists read it quickly, and the same");
        prop_assert_eq!(text, job_to_text(&again.job).expect("and written"));
    }
}

/// What the error of each bad file has to say: its place, and a part of its words.
fn expected() -> BTreeMap<&'static str, (&'static str, &'static str)> {
    BTreeMap::from([
        ("another-file-format", (":1:1", "it is no job of this program")),
        ("byte-order-mark-and-unknown-field", (":7:3", "`aire`")),
        ("depth-reversed", ("panels[bonnet-left].defects[0].depth_um", "the least depth is above the most")),
        ("empty", (":1:1", "it is empty")),
        ("empty-spot", ("panels[bonnet-left].spots[0].readings", "no reading")),
        ("field-twice", (":10:3", "duplicate field named `name`")),
        ("humidity-zero", ("(field air.humidity_pct)", "up to 100 %, not 0")),
        ("infinity", ("(field panels[0].spots[0].readings[0].thickness_um)", "not inf")),
        ("later-format", (":2:1", "\"job/2\"")),
        ("layers-without-end", ("product.layers", "4000000000")),
        ("missing-comma", (":11:49", "(field panels[0].spots[0])")),
        ("missing-field", (":9:1", "`goal`")),
        ("nan", ("(field panels[0].spots[0].readings[0].thickness_um)", "not NaN")),
        ("nan-place", ("panels[bonnet-left].spots[0].at", "not a pair of finite numbers")),
        ("negative-thickness", ("(field panels[0].spots[0].readings[0].thickness_um)", "not -5")),
        ("negative-window", ("(field product.window_min_s)", "not -60")),
        ("nobody-levels", (": crew:", "nobody in the crew levels")),
        ("not-utf-8", (":10:1", "not UTF-8")),
        ("number-too-large-to-count", ("(field panels[0].defects[0].quantity)", "out of bounds")),
        ("only-a-comment", (":1:", "it is no job of this program")),
        ("order-after-the-end-of-time", ("order.operations[0].start_s", "9223372036854775807")),
        ("panel-twice", ("panels[1].id", "an entry already")),
        ("passes-without-end", ("steps[0].max_passes", "4000000000")),
        ("quantity-nine", ("panels[bonnet-left].defects[0].quantity", "the quantity is 9")),
        ("share-above-one", ("(field goal.correct.share)", "from 0 to 1, not 8")),
        ("text-without-end", (":4:27", "Expected comma")),
        ("thickness-too-large", ("(field panels[0].spots[0].readings[0].thickness_um)", "from 0 to 100,000")),
        ("trailing-text", (":10:2", "trailing")),
        ("two-workers-of-one-name", ("crew[1].name", "used twice")),
        ("unknown-defect", ("(field panels[0].defects[0].kind)", "`rust`")),
        (
            "unknown-field",
            ("(field panels[0].spots[0].reading)", "expected one of `at`, `edge`, `readings`, or `note`"),
        ),
        ("unknown-panel", ("panels[bonet-left].id", "no panel \"bonet-left\"")),
        ("unknown-template", ("vehicle.template", "no vehicle template \"hovercraft\"")),
        ("worker-without-a-role", ("crew[2].roles", "nothing to do")),
        ("wrong-type", ("(field panels[0].spots[0].readings[0].thickness_um)", "Expected float")),
    ])
}

#[test]
fn each_bad_file_gives_one_error_with_its_place_and_a_hint() {
    let expected = expected();
    let bad = files(&root().join("tests/data/jobs/bad"), "ron");
    let names: BTreeSet<_> = bad.iter().map(|f| f.file_stem().unwrap().to_string_lossy().into_owned()).collect();
    assert_eq!(names, expected.keys().map(ToString::to_string).collect(), "one expectation for each file");
    for file in &bad {
        let (place, words) = expected[&*file.file_stem().unwrap().to_string_lossy()];
        let begun = Instant::now();
        let error = read_job(&RealDisk, file).unwrap_err();
        assert!(begun.elapsed() < Duration::from_secs(1), "{}: {:?}", file.display(), begun.elapsed());
        let text = error.to_string();
        assert!(text.starts_with(&file.display().to_string()), "{text}");
        assert!(text.contains(place), "{}: the place {place:?} is not in {text:?}", file.display());
        assert!(text.contains(words), "{}: {words:?} is not in {text:?}", file.display());
        assert!(!text.contains('\n') && !error.hint().contains('\n'), "{text}");
        assert!(!error.hint().is_empty());
    }
}

#[test]
fn a_hundred_thousand_opening_brackets_are_refused_at_once() {
    for bracket in ["(", "[", "{", "Some(", "(name: ", "/*"] {
        let text = format!("(format: \"job/1\", panels: {}", bracket.repeat(100_000));
        for text in [bracket.repeat(100_000), text] {
            let begun = Instant::now();
            let error = job_from_text("deep", &text).unwrap_err();
            assert!(begun.elapsed() < Duration::from_secs(1), "{bracket}: {:?}", begun.elapsed());
            assert!(error.to_string().starts_with("deep:1:"), "{error}");
        }
    }
}

#[test]
fn a_byte_order_mark_at_the_start_is_no_fault() {
    let job = job_from_text("marked", &format!("\u{feff}{SAMPLE}")).unwrap().job;
    assert_eq!(job, sample().job);
}

#[test]
fn line_ends_of_another_system_are_no_fault() {
    let job = job_from_text("marked", &SAMPLE.replace('\n', "\r\n")).unwrap().job;
    assert_eq!(job, sample().job);
}

#[test]
fn a_file_of_several_faults_names_the_first_and_counts_the_rest() {
    let text = SAMPLE.replace("quantity: 4", "quantity: 6");
    let error = job_from_text("two", &text).unwrap_err();
    assert!(error.hint().ends_with("lapwright check lists 1 more"), "{}", error.hint());
    let (_, _, found) = job_findings("two", &text).unwrap();
    assert_eq!(found.len(), 2);
}

#[test]
fn a_place_beside_its_panel_is_told_but_the_job_can_be_used() {
    let text = SAMPLE.replacen("at: (330, 150)", "at: (330, -150)", 1);
    assert!(job_from_text("beside", &text).is_ok());
    let (_, _, found) = job_findings("beside", &text).unwrap();
    let places: Vec<_> = found.iter().map(|f| f.place.as_str()).collect();
    assert_eq!(places, ["panels[bonnet-left].spots[0].at"]);
}

/// Cut after every byte, a step at a time so that the whole takes a second or two: 7 has no divisor in common with the width of
/// any line, so every kind of place is cut.
#[test]
fn a_job_cut_short_anywhere_is_refused_with_a_place_and_never_panics() {
    let text = job_to_text(&sample().job).unwrap();
    let last = text.trim_end().len();
    for end in (0..last).step_by(7).filter(|end| text.is_char_boundary(*end)) {
        let error = job_from_text("cut", &text[..end]).unwrap_err().to_string();
        assert!(error.starts_with("cut:"), "{end}: {error}");
    }
}

#[test]
fn a_job_with_any_byte_changed_is_read_or_refused_and_never_panics() {
    let text = job_to_text(&job_on("hatch").film("bonnet-left", 110.0).build().job).unwrap();
    let (mut read, mut refused) = (0, 0);
    for at in (0..text.len()).step_by(2) {
        let mut bytes = text.clone().into_bytes();
        bytes[at] ^= [0x01, 0x10, 0x20][at % 3];
        let Ok(text) = String::from_utf8(bytes) else { continue };
        match job_from_text("changed", &text) {
            Ok(loaded) => {
                assert!(job_as_written(&text).is_none_or(|quick| quick == *loaded.job), "{at}");
                read += 1;
                if read % 10 == 0 {
                    job_to_text(&loaded.job).unwrap();
                }
            }
            Err(error) => {
                refused += 1;
                assert!(error.to_string().starts_with("changed:"), "{error}");
            }
        }
    }
    assert!(read > 100 && refused > 1_000, "both happen: {read} read, {refused} refused");
}
