//! Templates: what comes with the program is sound, and every kind of fault is found in a broken one.
#![expect(clippy::expect_used, clippy::panic, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::finding::{Code, Severity};
use lapwright::units::Micrometres;
use lapwright::vehicle::{
    BodyClass, Direction, FeatureKind, Naming, PanelId, Substrate, Surface, Template, TemplateError, embedded,
    load_embedded,
};
use proptest::prelude::*;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::{Arc, LazyLock};

static TEMPLATES: LazyLock<Vec<Arc<Template>>> =
    LazyLock::new(|| embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads")).collect());

#[test]
fn no_template_has_a_fault_or_a_warning() {
    for t in TEMPLATES.iter() {
        let serious: Vec<String> =
            t.check().iter().filter(|f| f.severity() > Severity::Notice).map(ToString::to_string).collect();
        assert!(serious.is_empty(), "{}: {serious:#?}", t.id);
    }
}

#[test]
fn every_file_of_the_folder_is_embedded_under_its_own_id() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("vehicle-templates");
    let files: BTreeSet<String> = std::fs::read_dir(folder)
        .expect("the folder is there")
        .map(|e| e.expect("an entry").path())
        .filter(|p| p.extension().is_some_and(|e| e == "ron"))
        .map(|p| p.file_stem().expect("a name").to_string_lossy().into_owned())
        .collect();
    let embedded_ids: BTreeSet<String> = embedded().iter().map(|e| e.id.to_owned()).collect();
    assert_eq!(files, embedded_ids);
    for t in TEMPLATES.iter() {
        assert!(embedded_ids.contains(&t.id));
    }
}

#[test]
fn cars_have_about_as_many_panels_as_people_count_and_a_coach_has_many_more() {
    for t in TEMPLATES.iter() {
        let (low, high) = if t.body == BodyClass::Coach { (110, 500) } else { (28, 60) };
        assert!((low..=high).contains(&t.panels.len()), "{}: {} panels", t.id, t.panels.len());
    }
    for id in ["hatch", "saloon"] {
        assert!((30..=38).contains(&load_embedded(id).expect("loads").panels.len()), "{id}");
    }
}

/// Sums of painted outside surface, m²: hatch 9-11, saloon 12-14, off-roader 14-18, van and pickup 18-25. Our estimates for
/// the class; no published measurement was found.
#[test]
fn painted_areas_are_plausible_for_the_class() {
    for t in TEMPLATES.iter() {
        let painted: f64 = t.panels.iter().filter(|p| p.surface == Surface::Paint).map(|p| p.area.m2()).sum();
        let (low, high) = match t.body {
            BodyClass::Hatch => (9.0, 11.0),
            BodyClass::Saloon => (12.0, 14.0),
            BodyClass::OffRoader | BodyClass::PeopleCarrier => (14.0, 18.0),
            BodyClass::Van | BodyClass::Pickup => (18.0, 25.0),
            BodyClass::Coupe | BodyClass::Convertible | BodyClass::Estate => (9.0, 15.0),
            BodyClass::Coach => (60.0, 130.0),
        };
        assert!((low..=high).contains(&painted), "{}: {painted}", t.id);
    }
}

#[test]
fn panels_have_substrates_that_fit_their_surface() {
    for t in TEMPLATES.iter() {
        for p in &t.panels {
            let fits = match p.surface {
                Surface::Glass => p.substrate == Substrate::Glass,
                Surface::Lamp => p.substrate == Substrate::Plastic,
                Surface::Paint | Surface::Trim => p.substrate != Substrate::Glass,
            };
            assert!(fits, "{} {}", t.id, p.id);
            assert!(p.height.low < p.height.high && f64::from(p.height.high) <= t.height.mm(), "{} {}", t.id, p.id);
        }
    }
}

#[test]
fn names_are_known_in_both_kinds_of_english_and_differ_within_a_vehicle() {
    for t in TEMPLATES.iter() {
        for naming in [Naming::Uk, Naming::Us] {
            let names: BTreeSet<String> = t.panels.iter().map(|p| p.name(naming)).collect();
            assert_eq!(names.len(), t.panels.len(), "{}", t.id);
        }
    }
    let saloon = load_embedded("saloon").expect("loads");
    let bonnet = saloon.panel(&PanelId::from("bonnet-left")).expect("a saloon has a bonnet");
    assert_eq!(bonnet.name(Naming::Uk), "Bonnet, left");
    assert_eq!(bonnet.name(Naming::Us), "Hood, left");
}

#[test]
fn neighbours_are_mutual_and_no_panel_is_alone() {
    for t in TEMPLATES.iter() {
        for i in 0..t.panels.len() {
            assert!(!t.neighbours(i).is_empty(), "{} {}", t.id, t.panels[i].id);
            for &j in t.neighbours(i) {
                assert!(i != j && t.neighbours(j).contains(&i));
            }
        }
    }
}

#[test]
fn panels_lean_only_over_what_is_not_higher() {
    for t in TEMPLATES.iter() {
        for p in &t.panels {
            for over in &p.leans_over {
                let over = t.panel(over).expect("a panel leans over panels of its own vehicle");
                assert!(over.height.low <= p.height.low, "{} {} over {}", t.id, p.id, over.id);
            }
        }
    }
}

#[test]
fn walks_go_round_the_body_and_keep_the_triangle_inequality() {
    for t in TEMPLATES.iter() {
        let n = t.stances.len();
        for a in 0..n {
            for b in 0..n {
                let straight = f64::from((t.stances[a].at - t.stances[b].at).length());
                assert!(t.walk_mm(a, b) >= straight - 0.5);
                assert!((t.walk_mm(a, b) - t.walk_mm(b, a)).abs() < 1e-6);
            }
        }
        for speed in [0.7, 1.0, 1.37] {
            let s = t.walk_seconds(speed);
            for a in 0..n {
                assert_eq!(s[a][a], 0);
                for b in 0..n {
                    assert_eq!(s[a][b], s[b][a]);
                    let exact = t.walk_mm(a, b) / 1000.0 / speed;
                    assert!(s[a][b] as f64 >= exact - 1e-6 && s[a][b] as f64 <= exact + 1.0);
                    for c in 0..n {
                        assert!(s[a][c] <= s[a][b] + s[b][c], "{} {a} {b} {c}", t.id);
                    }
                }
            }
        }
    }
}

#[test]
fn a_walk_across_the_vehicle_goes_round_its_nearer_end() {
    // From one front door to the other: out to the front corner, along the front and back. Worked by hand: 250 mm of air
    // round a body of 4,700 by 1,820 mm; corners at x -250 and y ±1,160, stances at (1,950, ±1,360).
    let t = load_embedded("saloon").expect("loads");
    let at = |id: &str| t.stances.iter().position(|s| s.id == id).expect("a stance of the saloon");
    let leg = (2200.0_f64).hypot(200.0);
    let expected = 2.0 * leg + 2.0 * 1160.0;
    let found = t.walk_mm(at("door-front-left"), at("door-front-right"));
    assert!((found - expected).abs() < 1.0, "{found} {expected}");
}

#[test]
fn close_pairs_are_those_nearer_than_asked() {
    for t in TEMPLATES.iter() {
        for (a, b) in t.close_pairs(1200.0) {
            assert!(a < b && t.walk_mm(a, b) < 1200.0);
        }
        assert!(t.close_pairs(0.0).is_empty());
        let n = t.stances.len();
        assert_eq!(t.close_pairs(1e9).len(), n * (n - 1) / 2);
    }
}

#[test]
fn features_lie_on_panels_and_only_trim_in_openings() {
    for t in TEMPLATES.iter() {
        for f in &t.features {
            let inside = f.kind == FeatureKind::Trim && t.openings.iter().any(|o| o.contains(f.at));
            assert!(inside || !f.panels.is_empty(), "{}: {:?} at {:?}", t.id, f.kind, f.at);
            let sampled = f.shape.curves().iter().flat_map(|c| [c.at(0.1), c.at(0.5), c.at(0.9)]);
            for at in sampled.filter(|_| !inside) {
                assert!(
                    t.contour().iter().any(|c| c.contains(at)),
                    "{}: {:?} leaves the vehicle at {at:?}",
                    t.id,
                    f.kind
                );
            }
        }
        let has = |kind: FeatureKind| t.features.iter().any(|f| f.kind == kind);
        assert!(has(FeatureKind::Handle) && has(FeatureKind::Plate), "{}", t.id);
    }
}

/// Common practice, no source: where these things sit on road vehicles.
#[test]
fn every_vehicle_has_the_features_that_ask_for_care_where_they_belong() {
    use FeatureKind as F;
    for t in TEMPLATES.iter() {
        let on = |kind: FeatureKind| t.features.iter().filter(move |f| f.kind == kind);
        for kind in [
            F::BodyLine,
            F::Edge,
            F::Handle,
            F::Plate,
            F::Emblem,
            F::FillerFlap,
            F::Radar,
            F::Camera,
            F::Ultrasonic,
            F::Aerial,
        ] {
            assert!(on(kind).next().is_some(), "{}: no {kind:?}", t.id);
        }
        let panels = |kind| on(kind).flat_map(|f| &f.panels).map(|i| &t.panels[*i]);
        assert!(panels(F::Ultrasonic).chain(panels(F::Radar)).all(|p| p.part.contains("bumper")), "{}", t.id);
        assert!(panels(F::Camera).all(|p| p.part.contains("windscreen")), "{}", t.id);
        assert!(panels(F::FillerFlap).all(|p| p.surface == Surface::Paint && p.height.low < 1200.0), "{}", t.id);
        assert!(on(F::Plate).count() >= 2, "{}: a plate at each end", t.id);
        let ends: Vec<f32> = on(F::Ultrasonic).map(|f| f.at.x).collect();
        assert!(ends.iter().any(|x| *x < 500.0) && ends.iter().any(|x| *x > 0.8 * t.length.mm() as f32), "{}", t.id);
    }
    let coupe = load_embedded("coupe").expect("loads");
    let feet = coupe.features.iter().filter(|f| f.kind == F::SpoilerFoot).count();
    assert_eq!(feet, 2, "the spoiler of the coupé stands on two feet");
}

fn broken(file: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/templates").join(file);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// Codes of all that is said about a broken template, whether it can be built or not.
fn said(file: &str) -> BTreeSet<&'static str> {
    let findings = match Template::parse(&broken(file)) {
        Ok(t) => t.check(),
        Err(TemplateError::Findings(findings)) => findings,
        Err(e) => panic!("{file}: {e}"),
    };
    findings.iter().map(|f| f.code.id()).collect()
}

#[test]
fn each_kind_of_fault_is_found_in_a_template_that_has_it_and_nothing_else() {
    let cases = [
        ("sound.ron", None),
        ("overlap.ron", Some(Code::TemplateOverlap)),
        ("nested.ron", Some(Code::TemplateOverlap)),
        ("doubled.ron", Some(Code::TemplateOverlap)),
        ("gap.ron", Some(Code::TemplateGap)),
        ("slit.ron", Some(Code::TemplateGap)),
        ("opening-over-a-panel.ron", Some(Code::TemplateOverlap)),
        ("self-crossing.ron", Some(Code::TemplateOutline)),
        ("open.ron", Some(Code::TemplateOutline)),
        ("right-side-point.ron", Some(Code::TemplatePoint)),
        ("curve-twice.ron", Some(Code::TemplatePoint)),
        ("unknown-point.ron", Some(Code::TemplateUnknown)),
        ("unknown-neighbour.ron", Some(Code::TemplateUnknown)),
        ("unknown-stance.ron", Some(Code::TemplateUnknown)),
        ("panel-twice.ron", Some(Code::TemplateUnknown)),
        ("size.ron", Some(Code::TemplateSize)),
        ("stance-inside.ron", Some(Code::TemplateStance)),
        ("stance-far-away.ron", Some(Code::TemplateReach)),
        ("leans-in-a-circle.ron", Some(Code::TemplateLean)),
        ("area.ron", Some(Code::TemplateArea)),
        ("part-without-a-name.ron", Some(Code::TemplateName)),
        ("one-side-only.ron", Some(Code::TemplateAsymmetric)),
    ];
    for (file, code) in cases {
        let expected: BTreeSet<&str> = code.into_iter().map(Code::id).collect();
        assert_eq!(said(file), expected, "{file}");
    }
    let covered: BTreeSet<&str> = cases.iter().filter_map(|(_, c)| c.map(Code::id)).collect();
    let all: BTreeSet<&str> = Code::ALL.iter().map(|c| c.id()).filter(|id| id.starts_with("template-")).collect();
    assert_eq!(covered, all, "every code about templates has a broken template");
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

#[test]
fn an_unknown_template_is_named_in_the_message() {
    let message = load_embedded("airship").err().map(|e| e.to_string()).unwrap_or_default();
    assert!(message.contains("airship"), "{message}");
}

#[test]
fn arrow_keys_lead_from_any_panel_to_any_other() {
    for t in TEMPLATES.iter() {
        for start in 0..t.panels.len() {
            let mut reached = BTreeSet::from([start]);
            let mut open = vec![start];
            while let Some(panel) = open.pop() {
                for to in Direction::ALL.into_iter().filter_map(|d| t.step(panel, d)) {
                    assert!(t.neighbours(panel).contains(&to));
                    if reached.insert(to) {
                        open.push(to);
                    }
                }
            }
            let all = 0..t.panels.len();
            let missing: Vec<&str> = all.filter(|i| !reached.contains(i)).map(|i| t.panels[i].id.as_str()).collect();
            assert!(missing.is_empty(), "{} from {}: {missing:?}", t.id, t.panels[start].id);
        }
    }
}

#[test]
fn an_arrow_leads_where_it_points() {
    let t = load_embedded("saloon").expect("loads");
    let at = |id: &str| t.index_of(&PanelId::from(id)).expect("a panel of the saloon");
    for (from, direction, to) in [
        ("roof-left", Direction::Front, "windscreen-left"),
        ("roof-left", Direction::Rear, "rear-window-left"),
        ("roof-left", Direction::Right, "roof-right"),
        ("door-front-left", Direction::Rear, "door-rear-left"),
        ("door-rear-right", Direction::Front, "door-front-right"),
        ("bonnet-right", Direction::Right, "wing-right"),
    ] {
        assert_eq!(t.step(at(from), direction), Some(at(to)), "{from} {direction:?}");
    }
    assert_eq!(t.step(at("sill-left"), Direction::Left), None, "the vehicle ends there");
}

#[test]
fn features_carry_their_cautions_to_the_panels_they_touch() {
    let t = load_embedded("saloon").expect("loads");
    let on = |panel: &str| t.cautions(t.index_of(&PanelId::from(panel)).expect("a panel of the saloon"));
    assert!(on("door-front-left").contains(&FeatureKind::BodyLine));
    assert!(on("windscreen-right").contains(&FeatureKind::Camera));
    assert!(on("bumper-front-left").contains(&FeatureKind::Radar));
    assert!(on("sill-left").is_empty());
    // Published film limits over sensors: 300 µm over a bumper radar (a vehicle maker's repair guideline quoted by a
    // collision-industry training body), 120 µm on ultrasonic sensors (a vehicle maker's workshop note).
    assert_eq!(FeatureKind::Radar.film_limit().map(Micrometres::um), Some(300.0));
    assert_eq!(FeatureKind::Ultrasonic.film_limit().map(Micrometres::um), Some(120.0));
    assert!(FeatureKind::Handle.gathers_coating() && !FeatureKind::Aerial.gathers_coating());
}
