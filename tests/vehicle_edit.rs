//! Changing templates: split, merge, leave out, move, resize, save.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::finding::Severity;
use lapwright::geometry::{FloorPoint, MapCurve, MapPoint, Outline};
use lapwright::units::Millimetres;
use lapwright::vehicle::{EditError, Naming, PanelId, Side, Size, Skip, Substrate, Template, embedded, load_embedded};
use proptest::prelude::*;
use std::sync::{Arc, LazyLock};

static TEMPLATES: LazyLock<Vec<Arc<Template>>> =
    LazyLock::new(|| embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads")).collect());

fn saloon() -> Arc<Template> {
    load_embedded("saloon").expect("loads")
}

fn id(text: &str) -> PanelId {
    PanelId::from(text)
}

fn serious(t: &Template) -> Vec<String> {
    t.check().iter().filter(|f| f.severity() > Severity::Notice).map(ToString::to_string).collect()
}

fn total_area(t: &Template) -> f64 {
    t.panels.iter().map(|p| p.area.m2()).sum()
}

fn total_map(t: &Template) -> f64 {
    t.panels.iter().map(|p| p.outline.map_area_mm2()).sum()
}

/// Same panels, outlines within 0.01 mm, same everything else that is kept in a file.
fn same(a: &Template, b: &Template) -> Result<(), TestCaseError> {
    prop_assert_eq!((&a.id, &a.name, a.body, a.size()), (&b.id, &b.name, b.body, b.size()));
    prop_assert_eq!(a.panels.len(), b.panels.len());
    for (p, q) in a.panels.iter().zip(&b.panels) {
        prop_assert_eq!(
            (&p.id, &p.part, p.number, p.side, p.substrate, p.surface, p.skip, p.stance, &p.leans_over),
            (&q.id, &q.part, q.number, q.side, q.substrate, q.surface, q.skip, q.stance, &q.leans_over)
        );
        prop_assert!((p.area.m2() - q.area.m2()).abs() < 1e-9);
        let points = |o: &Outline| o.curves().iter().flat_map(MapCurve::points).collect::<Vec<MapPoint>>();
        let (p, q) = (points(&p.outline), points(&q.outline));
        prop_assert_eq!(p.len(), q.len());
        prop_assert!(p.iter().zip(&q).all(|(a, b)| (*a - *b).length() < 0.01));
    }
    prop_assert_eq!(&a.stances, &b.stances);
    prop_assert_eq!(&a.wheels, &b.wheels);
    prop_assert_eq!(a.features.len(), b.features.len());
    Ok(())
}

#[test]
fn every_template_is_equal_after_saving_and_reading() -> Result<(), TestCaseError> {
    for t in TEMPLATES.iter() {
        let again = Template::parse(&t.to_ron()).expect("what was written can be read");
        same(t, &again)?;
        assert_eq!(again.to_ron(), t.to_ron(), "writing is stable");
    }
    Ok(())
}

#[test]
fn every_template_explains_the_format_at_its_head_in_the_same_words() {
    let head = |text: &str| {
        let lines = text.lines().skip(1).take_while(|l| l.starts_with("//"));
        lines.map(str::to_owned).collect::<Vec<String>>()
    };
    let expected = head(&saloon().to_ron());
    assert!(expected.len() > 10);
    for e in embedded() {
        assert_eq!(head(e.text), expected, "{}", e.id);
    }
}

#[test]
fn splitting_a_door_gives_two_panels_that_cover_the_same_place() {
    let t = saloon();
    let cut = t.split(&id("door-front-left"), MapPoint::new(1400.0, 1300.0), MapPoint::new(2600.0, 1300.0));
    let cut = cut.expect("a door can be cut across");
    assert_eq!(cut.panels.len(), t.panels.len() + 2, "both sides are cut");
    // Where the cut was said to run, there is a seam now, from end to end.
    let [from, to] = t
        .cut_ends(&id("door-front-left"), MapPoint::new(1400.0, 1300.0), MapPoint::new(2600.0, 1300.0))
        .expect("there is such a panel");
    let runs = |c: &MapCurve| {
        let ends = [c.at(0.0), c.at(1.0)];
        ends.iter().all(|end| (*end - from).length() < 0.01 || (*end - to).length() < 0.01)
    };
    assert!((to - from).length() > 500.0 && cut.seams.iter().any(|s| s.right.is_some() && runs(&s.curve)));
    assert!(serious(&cut).is_empty(), "{:?}", serious(&cut));
    assert!((total_area(&cut) - total_area(&t)).abs() < 1e-9);
    assert!((total_map(&cut) - total_map(&t)).abs() < total_map(&t) * 1e-6);
    let parts: Vec<String> = cut.panels.iter().filter(|p| p.part == "door-front").map(|p| p.name(Naming::Uk)).collect();
    assert_eq!(parts, ["Front door 1, left", "Front door 1, right", "Front door 2, left", "Front door 2, right"]);
    let (above, below) = (cut.panel_at(MapPoint::new(2000.0, 1200.0)), cut.panel_at(MapPoint::new(2000.0, 1400.0)));
    assert!(above.is_some() && below.is_some() && above != below);
    let above = above.expect("hit");
    assert!(cut.neighbours(above).contains(&below.expect("hit")), "the cut is a seam");
    // The roof leant over the door, and leans over both parts now.
    let roof = cut.panel(&id("roof-left")).expect("a roof");
    assert!(roof.leans_over.contains(&id("door-front-left")) && roof.leans_over.contains(&id("door-front-2-left")));
}

#[test]
fn merging_the_two_parts_again_gives_the_old_outline() {
    let t = saloon();
    let cut = t.split(&id("door-front-right"), MapPoint::new(1400.0, -1300.0), MapPoint::new(2600.0, -1300.0));
    let whole = cut.expect("cut").merge(&id("door-front-right"), &id("door-front-2-right")).expect("merged");
    assert_eq!(whole.panels.len(), t.panels.len());
    for side in ["door-front-left", "door-front-right"] {
        let (a, b) = (t.panel(&id(side)).expect("old"), whole.panel(&id(side)).expect("new"));
        assert!((a.outline.map_area_mm2() - b.outline.map_area_mm2()).abs() < 5.0);
        assert!((a.area.m2() - b.area.m2()).abs() < 1e-9);
    }
    let roof = whole.panel(&id("roof-left")).expect("a roof");
    assert_eq!(roof.leans_over, t.panel(&id("roof-left")).expect("a roof").leans_over);
}

#[test]
fn the_two_halves_of_a_bonnet_become_one_across_the_centreline() {
    let t = saloon();
    let one = t.merge(&id("bonnet-left"), &id("bonnet-right")).expect("halves meet");
    let bonnet = one.panel(&id("bonnet")).expect("its id has no side");
    assert_eq!(bonnet.side, Side::Centre);
    assert_eq!(bonnet.name(Naming::Us), "Hood");
    assert!((bonnet.area.m2() - 2.0 * t.panel(&id("bonnet-left")).expect("half").area.m2()).abs() < 1e-9);
    assert!((total_map(&one) - total_map(&t)).abs() < total_map(&t) * 1e-6);
    assert!(serious(&one).is_empty(), "{:?}", serious(&one));
    assert_eq!(one.panel_at(MapPoint::new(700.0, 200.0)), one.panel_at(MapPoint::new(700.0, -200.0)));
    assert!(matches!(
        one.split(&id("bonnet"), MapPoint::new(200.0, 0.0), MapPoint::new(1200.0, 0.0)),
        Err(EditError::AcrossCentre(_))
    ));
}

#[test]
fn what_can_not_be_merged_or_cut_says_why() {
    let t = saloon();
    let apart = t.merge(&id("bonnet-left"), &id("boot-lid-left"));
    assert!(matches!(apart, Err(EditError::NotNeighbours(_, _))));
    assert!(matches!(t.merge(&id("wing-left"), &id("wing-right")), Err(EditError::NotNeighbours(_, _))));
    assert!(matches!(t.merge(&id("wing-left"), &id("keel")), Err(EditError::UnknownPanel(_))));
    let same_place = MapPoint::new(2000.0, 1597.0);
    assert!(matches!(t.split(&id("door-front-left"), same_place, same_place), Err(EditError::NoCut(_))));
    // From one end of the wing to the other, through the wheel arch: the line leaves the panel.
    let outside = t.split(&id("wing-left"), MapPoint::new(595.0, 1380.0), MapPoint::new(1272.0, 1590.0));
    assert!(matches!(outside, Err(EditError::Faults(_))), "{:?}", outside.map(|t| t.panels.len()));
}

#[test]
fn a_panel_is_left_out_on_the_side_that_was_named_and_taken_in_again() -> Result<(), TestCaseError> {
    let t = saloon();
    let wrapped = t.with_skip(&id("mirror-right"), Some(Skip::Wrapped)).expect("a mirror");
    assert_eq!(wrapped.panel(&id("mirror-right")).expect("right").skip, Some(Skip::Wrapped));
    assert_eq!(wrapped.panel(&id("mirror-left")).expect("left").skip, None);
    assert!(serious(&wrapped).is_empty());
    same(&wrapped, &Template::parse(&wrapped.to_ron()).expect("reads"))?;
    same(&t, &wrapped.with_skip(&id("mirror-right"), None).expect("a mirror"))?;
    let composite = t.with_substrate(&id("wing-left"), Substrate::Composite).expect("a wing");
    assert_eq!(composite.panel(&id("wing-left")).expect("left").substrate, Substrate::Composite);
    assert_eq!(composite.panel(&id("wing-right")).expect("right").substrate, Substrate::Steel);
    Ok(())
}

#[test]
fn a_stance_moves_with_its_mirror_image_and_not_into_the_body() {
    let t = saloon();
    let moved = t.with_stance("wing-right", FloorPoint::new(600.0, -1500.0)).expect("there is room");
    let at = |id: &str| moved.stances.iter().find(|s| s.id == id).expect("a stance").at;
    assert_eq!(at("wing-right"), FloorPoint::new(600.0, -1500.0));
    assert_eq!(at("wing-left"), FloorPoint::new(600.0, 1500.0));
    assert!(matches!(t.with_stance("wing-left", FloorPoint::new(600.0, 300.0)), Err(EditError::Faults(_))));
    assert!(matches!(t.with_stance("moon", FloorPoint::new(600.0, 300.0)), Err(EditError::UnknownStance(_))));
}

#[test]
fn a_longer_wider_higher_vehicle_has_more_surface_and_longer_ways() {
    for t in TEMPLATES.iter() {
        let times = |by: f64| Size {
            length: Millimetres::of(t.length.mm() * by),
            width: Millimetres::of(t.width.mm() * by),
            height: Millimetres::of(t.height.mm() * by),
        };
        let larger = t.with_size(times(1.1)).expect("ten per cent more is a vehicle too");
        // All lengths times 1.1: all areas times 1.21, whichever way a panel faces.
        assert!((total_area(&larger) / total_area(t) - 1.21).abs() < 1e-6, "{}", t.id);
        assert!((total_map(&larger) - total_map(t)).abs() < 1.0, "the drawing stays");
        let n = t.stances.len();
        for a in 0..n {
            for b in 0..n {
                assert!(larger.walk_mm(a, b) >= t.walk_mm(a, b) - 0.01);
            }
        }
        assert!(!larger.check().iter().any(|f| f.severity() == Severity::Fault));
    }
}

#[test]
fn growing_in_length_changes_what_runs_along_and_not_what_faces_front_or_rear() {
    let grown = |t: &Template, panel: &str| {
        let size = Size { length: Millimetres::of(t.length.mm() * 1.2), ..t.size() };
        let area = |t: &Template| t.panel(&id(panel)).expect("a panel of this vehicle").area.m2();
        area(&t.with_size(size).expect("a longer vehicle")) / area(t)
    };
    for panel in ["roof-left", "door-front-left", "bonnet-right", "boot-lid-left"] {
        assert!((grown(&saloon(), panel) - 1.2).abs() < 0.03, "{panel}");
    }
    let bumper = grown(&saloon(), "bumper-rear-left");
    assert!((1.02..1.18).contains(&bumper), "a bumper goes round the corner: {bumper}");
    let coach = load_embedded("coach").expect("loads");
    assert!((grown(&coach, "panel-front-right") - 1.0).abs() < 1e-9);
}

#[test]
fn a_renamed_template_keeps_everything_but_its_name() {
    let t = saloon().with_name("Our Saloon!", "Our saloon");
    assert_eq!((t.id.as_str(), t.name.as_str()), ("our-saloon-", "Our saloon"));
    let again = Template::parse(&t.to_ron()).expect("reads");
    assert_eq!((again.id.as_str(), again.name.as_str()), ("our-saloon-", "Our saloon"));
    assert!(t.to_ron().starts_with("// Our saloon.\n"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    /// Any cut either is refused or leaves a sound drawing of the same extent, which can be saved and read.
    #[test]
    fn any_cut_is_refused_or_sound(
        which in 0usize..100_000, u in 0.0f32..1.0, v in 0.0f32..1.0, s in 0.0f32..1.0, w in 0.0f32..1.0,
    ) {
        let t = &TEMPLATES[which % TEMPLATES.len()];
        let panel = &t.panels[(which / TEMPLATES.len()) % t.panels.len()];
        let b = panel.outline.bounds();
        let at = |u: f32, v: f32| MapPoint::new(b.min.x + u * b.width(), b.min.y + v * b.height());
        match t.split(&panel.id, at(u, v), at(s, w)) {
            Ok(cut) => {
                let faults: Vec<String> = cut
                    .check().iter().filter(|f| f.severity() == Severity::Fault).map(ToString::to_string).collect();
                prop_assert!(faults.is_empty(), "{:?}", faults);
                prop_assert!((total_area(&cut) - total_area(t)).abs() < 1e-6);
                prop_assert!((total_map(&cut) - total_map(t)).abs() < total_map(t) * 1e-5);
                same(&cut, &Template::parse(&cut.to_ron()).expect("reads"))?;
            }
            Err(EditError::NoCut(_) | EditError::Faults(_)) => {}
            Err(e) => prop_assert!(false, "{e}"),
        }
    }

    /// Any two neighbours either become one sound panel or stay two.
    #[test]
    fn any_merge_is_refused_or_sound(which in 0usize..100_000, other in 0usize..100) {
        let t = &TEMPLATES[which % TEMPLATES.len()];
        let i = (which / TEMPLATES.len()) % t.panels.len();
        let around = t.neighbours(i);
        let j = around[other % around.len()];
        match t.merge(&t.panels[i].id, &t.panels[j].id) {
            Ok(merged) => {
                prop_assert!(merged.panels.len() < t.panels.len());
                prop_assert!((total_area(&merged) - total_area(t)).abs() < 1e-6);
                prop_assert!((total_map(&merged) - total_map(t)).abs() < total_map(t) * 1e-5);
                same(&merged, &Template::parse(&merged.to_ron()).expect("reads"))?;
            }
            Err(EditError::NotNeighbours(_, _) | EditError::Faults(_)) => {}
            Err(e) => prop_assert!(false, "{e}"),
        }
    }
}
