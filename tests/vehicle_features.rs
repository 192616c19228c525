//! Features of the templates: where they lie, and what care they ask for.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::units::Micrometres;
use lapwright::vehicle::{FeatureKind, PanelId, Surface, Template, embedded, load_embedded};
use std::sync::{Arc, LazyLock};

static TEMPLATES: LazyLock<Vec<Arc<Template>>> =
    LazyLock::new(|| embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads")).collect());

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
