//! Vehicles of the user's own: found beside those of the program, told apart from them, refused with their place when damaged.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{
    Fault, ReadError, RealDisk, SaveError, Saved, Templates, job_from_text, job_to_text, template_of,
};
use lapwright::geometry::FloorPoint;
use lapwright::job::Job;
use lapwright::vehicle::{PanelId, Skip, Template, embedded, load_embedded};
use std::path::Path;
use support::job::job_on;

struct Shelf {
    folder: tempfile::TempDir,
    templates: Templates,
}

/// A folder that is there and empty.
fn shelf() -> Shelf {
    let folder = tempfile::tempdir().expect("a folder");
    let templates = Templates::in_folder(folder.path());
    Shelf { folder, templates }
}

fn saloon() -> Template {
    (*load_embedded("saloon").expect("loads")).clone()
}

/// The saloon under another name, with wrapped mirrors.
fn own() -> Template {
    let wrapped = saloon().with_skip(&PanelId::from("mirror-left"), Some(Skip::Wrapped)).expect("a mirror");
    wrapped.with_name("our-saloon", "Our saloon")
}

fn job_that_names(template: &str) -> Job {
    let mut job = (*job_on("saloon").build().job).clone();
    template.clone_into(&mut job.vehicle.template);
    job
}

fn load(shelf: &Shelf, id: &str) -> Result<String, String> {
    let loaded = shelf.templates.load("my.job.ron", id);
    loaded.map(|t| t.name.clone()).map_err(|e| format!("{e} | {}", e.hint()))
}

fn write(shelf: &Shelf, name: &str, text: &str) {
    std::fs::write(shelf.folder.path().join(name), text).expect("a sound disk");
}

#[test]
fn a_saved_template_is_listed_after_those_of_the_program_and_loads_as_it_was() {
    let shelf = shelf();
    assert_eq!(shelf.templates.save(&RealDisk, &own()).expect("saved"), Saved::Confirmed);
    let listed = shelf.templates.list();
    let ids: Vec<&str> = listed.iter().map(|l| l.id.as_str()).collect();
    let program: Vec<&str> = embedded().iter().map(|e| e.id).collect();
    assert_eq!(ids, [program.as_slice(), &["our-saloon"]].concat());
    assert_eq!(listed.last().map(|l| (l.name.as_str(), l.own)), Some(("Our saloon", true)));
    let again = shelf.templates.load("a job", "our-saloon").expect("loads");
    assert_eq!(again.to_ron(), own().to_ron());
}

#[test]
fn the_folder_is_made_where_it_is_missing() {
    let shelf = shelf();
    let deep = Templates::in_folder(shelf.folder.path().join("lapwright").join("vehicle-templates"));
    assert!(deep.list().iter().all(|l| !l.own));
    deep.save(&RealDisk, &own()).expect("saved");
    assert_eq!(deep.load("a job", "our-saloon").expect("loads").name, "Our saloon");
}

#[test]
fn a_job_on_an_own_template_is_read_written_and_read_again() {
    let shelf = shelf();
    shelf.templates.save(&RealDisk, &own()).expect("saved");
    let text = job_to_text(&job_that_names("our-saloon")).expect("a job is written without its template");
    let loaded = shelf.templates.job_from_text("my.job.ron", &text).expect("the template is found");
    assert_eq!(loaded.template.name, "Our saloon");
    let error = job_from_text("my.job.ron", &text).expect_err("the program alone does not know it");
    assert_eq!(error.to_string(), "my.job.ron: vehicle.template: there is no vehicle template \"our-saloon\"");
}

#[test]
fn an_unknown_template_is_answered_with_those_that_there_are() {
    let shelf = shelf();
    shelf.templates.save(&RealDisk, &own()).expect("saved");
    let error = template_of("my.job.ron", &job_that_names("hearse"), &shelf.templates).expect_err("nobody knows it");
    assert!(matches!(&error, ReadError::UnknownTemplate { known, .. }
        if known.contains("saloon, ") && known.ends_with("our-saloon")));
}

#[test]
fn no_name_leads_out_of_the_folder() {
    let shelf = shelf();
    let inner = shelf.folder.path().join("inner");
    std::fs::create_dir(&inner).expect("a folder");
    write(&shelf, "our-saloon.ron", &own().to_ron());
    let templates = Templates::in_folder(&inner);
    let absolute = shelf.folder.path().join("our-saloon").display().to_string();
    let names = [
        "../our-saloon",
        "..\\our-saloon",
        "./../our-saloon",
        "inner/../../our-saloon",
        "",
        ".",
        "..",
        "our saloon",
        "Our-saloon",
    ];
    for id in names.into_iter().chain([absolute.as_str()]) {
        let error = templates.load("my.job.ron", id).expect_err(id);
        assert!(matches!(error, ReadError::UnknownTemplate { .. }), "{id}: {error}");
    }
}

#[test]
fn a_file_with_the_name_of_a_template_of_the_program_is_not_used() {
    let shelf = shelf();
    write(&shelf, "saloon.ron", &saloon().with_name("saloon", "Another saloon").to_ron());
    assert_eq!(load(&shelf, "saloon"), Ok("Four-door saloon".to_owned()));
    assert!(shelf.templates.list().iter().all(|l| !l.own));
    let clash = shelf.templates.save(&RealDisk, &saloon().with_name("van", "My van"));
    assert!(matches!(clash, Err(SaveError::Taken(_))), "{clash:?}");
    assert!(!shelf.folder.path().join("van.ron").exists());
}

#[test]
fn a_name_that_is_taken_is_not_taken_again() {
    let shelf = shelf();
    shelf.templates.save(&RealDisk, &own()).expect("saved");
    let before = std::fs::read_to_string(shelf.folder.path().join("our-saloon.ron")).expect("it is there");
    assert!(matches!(shelf.templates.save(&RealDisk, &own()), Err(SaveError::Taken(_))));
    let same_name = own().with_name("other", "OUR SALOON");
    assert!(matches!(shelf.templates.save(&RealDisk, &same_name), Err(SaveError::Taken(_))));
    assert_eq!(std::fs::read_to_string(shelf.folder.path().join("our-saloon.ron")).expect("it is there"), before);
    for (name, id) in [
        ("Our saloon", "our-saloon-2"),
        ("Van", "van-2"),
        ("  Big   Ute! ", "big-ute"),
        ("\u{43b}\u{430}\u{434}\u{430}", "vehicle"),
        ("../..", "vehicle"),
    ] {
        assert_eq!(shelf.templates.free_id(name), id);
    }
}

#[test]
fn a_damaged_file_is_told_with_file_and_place() {
    let shelf = shelf();
    let sound = own().to_ron();
    let line = 1 + sound.lines().position(|l| l.trim().starts_with("length_mm:")).expect("it has a length");
    write(&shelf, "our-saloon.ron", &sound.replace("length_mm: ", "length_mm: x"));
    let path = shelf.folder.path().join("our-saloon.ron").display().to_string();
    let said = load(&shelf, "our-saloon").expect_err("damaged");
    assert!(said.starts_with(&format!("{path}:{line}:")), "{said}");
    assert!(said.contains("length_mm"), "{said}");

    write(&shelf, "our-saloon.ron", "");
    assert!(load(&shelf, "our-saloon").expect_err("empty").starts_with(&format!("{path}:1:1")));
    std::fs::write(Path::new(&path), b"(\xff").expect("a sound disk");
    assert!(load(&shelf, "our-saloon").expect_err("no text").contains("UTF-8"));
    // What can't be used is listed all the same, so that somebody can see and mend it.
    assert_eq!(shelf.templates.list().last().map(|l| l.name.as_str()), Some("our-saloon"));
}

#[test]
fn a_file_with_a_fault_in_its_drawing_or_of_another_id_is_refused() {
    let shelf = shelf();
    let overlap = std::fs::read_to_string(support::root().join("tests/data/templates/overlap.ron")).expect("test data");
    let id = overlap.lines().find_map(|l| l.trim().strip_prefix("id: \"")).and_then(|l| l.split('"').next());
    let id = id.expect("it has an id").to_owned();
    write(&shelf, &format!("{id}.ron"), &overlap);
    let said = load(&shelf, &id).expect_err("a fault");
    assert!(said.contains("template-overlap") && said.contains(&format!("{id}.ron")), "{said}");

    write(&shelf, "wagon.ron", &own().to_ron());
    let said = load(&shelf, "wagon").expect_err("another id");
    assert!(said.contains("its id is \"our-saloon\"") && said.contains("name the file our-saloon.ron"), "{said}");
}

#[test]
fn what_can_not_be_saved_leaves_nothing_behind() {
    let shelf = shelf();
    let full = shelf.templates.save(&Fault::at(0, true), &own());
    assert!(matches!(full, Err(SaveError::Disk { .. })));
    assert_eq!(
        Templates::default().save(&RealDisk, &own()).map_err(|e| e.to_string()).expect_err("no folder"),
        "there is no folder for vehicles of your own on this computer"
    );
    let faulty = std::fs::read_to_string(support::root().join("tests/data/templates/overlap.ron")).expect("test data");
    let faulty = Template::parse(&faulty).expect("it can be built").with_name("faulty", "Faulty");
    assert!(matches!(shelf.templates.save(&RealDisk, &faulty), Err(SaveError::Faulty(_))));
    let left: Vec<_> = std::fs::read_dir(shelf.folder.path()).expect("a folder").collect();
    assert!(left.iter().all(|e| e.as_ref().is_ok_and(|e| e.path().extension().is_none_or(|x| x != "ron"))), "{left:?}");
    assert!(shelf.templates.list().iter().all(|l| !l.own));
    // And a stance that was moved into the body never gets that far.
    saloon().with_stance("wing-left", FloorPoint::new(600.0, 300.0)).expect_err("nobody can stand there");
}
