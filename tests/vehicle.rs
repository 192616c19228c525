//! Templates that come with the program: complete, plausible, and without a fault.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::finding::Severity;
use lapwright::vehicle::{BodyClass, Naming, PanelId, Substrate, Surface, Template, embedded, load_embedded};
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
fn an_unknown_template_is_named_in_the_message() {
    let message = load_embedded("airship").err().map(|e| e.to_string()).unwrap_or_default();
    assert!(message.contains("airship"), "{message}");
}
