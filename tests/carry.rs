//! Readings and defects when the vehicle is cut up differently, is another one, or has another size.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{Loaded, job_from_text, job_to_text, sized};
use lapwright::finding::Code;
use lapwright::geometry::MapPoint;
use lapwright::insight::{Insight, crew_problem};
use lapwright::job::{Command, CommandError, Document, Job, PanelRecord, PreviousCoating, carry_over, check};
use lapwright::polish::{Finish, PaintHardness, PaintHistory};
use lapwright::units::{Date, Millimetres};
use lapwright::vehicle::{PanelId, Size, Template, load_embedded};
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::sync::Arc;
use support::job::job_on;
use support::sample;

fn id(text: &str) -> PanelId {
    PanelId::from(text)
}

fn cut_doors(t: &Template) -> Template {
    let cut = t.split(&id("door-front-left"), MapPoint::new(1400.0, 1300.0), MapPoint::new(2600.0, 1300.0));
    cut.expect("a door can be cut across")
}

/// All places of spots and of defects, with what is noted there, in an order of their own.
fn places(panels: &BTreeMap<PanelId, Arc<PanelRecord>>) -> Vec<String> {
    let of = |r: &Arc<PanelRecord>| -> Vec<String> {
        let spots = r.spots.iter().map(|s| format!("{s:?}"));
        spots.chain(r.defects.iter().map(|d| format!("{d:?}"))).collect()
    };
    let mut all: Vec<String> = panels.values().flat_map(of).collect();
    all.sort();
    all
}

fn beside_their_panel(job: &Job, t: &Template) -> usize {
    check(job, t).iter().filter(|f| f.code == Code::JobPlaceOutside).count()
}

#[test]
fn every_reading_of_a_cut_door_goes_to_the_part_it_lies_on() {
    let Loaded { job, template } = job_on("saloon").film("door-front-left", 110.0).film("roof-left", 120.0).build();
    let cut = cut_doors(&template);
    let panels = carry_over(&job.panels, &template, &cut);
    assert_eq!(places(&panels), places(&job.panels), "nothing is lost, nothing comes twice");
    let parts = [&panels[&id("door-front-left")], &panels[&id("door-front-2-left")]];
    assert!(parts.iter().all(|r| !r.spots.is_empty()), "the door was read above and below");
    assert_eq!(beside_their_panel(&Job { panels: panels.clone(), ..(*job).clone() }, &cut), 0);
    assert!(Arc::ptr_eq(&panels[&id("roof-left")], &job.panels[&id("roof-left")]), "other panels are left alone");
}

#[test]
fn both_parts_of_a_cut_panel_keep_what_is_known_of_its_paint() {
    let Loaded { job, template } = job_on("saloon").film("door-front-left", 110.0).build();
    let mut job = (*job).clone();
    let record = Arc::make_mut(job.panels.get_mut(&id("door-front-left")).expect("it was read"));
    record.finish = Some(Finish::SingleStage);
    record.history = PaintHistory::Refinished;
    record.painted_on = Date::of(2026, 11, 3);
    record.coating = PreviousCoating::Wax;
    record.hardness = PaintHardness::Soft;
    record.left_uncoated = true;
    record.note = "resprayed".to_owned();
    let panels = carry_over(&job.panels, &template, &cut_doors(&template));
    for part in ["door-front-left", "door-front-2-left"] {
        let part = &panels[&id(part)];
        assert_eq!((part.finish, part.history), (Some(Finish::SingleStage), PaintHistory::Refinished));
        assert_eq!((part.coating, part.hardness), (PreviousCoating::Wax, PaintHardness::Soft));
        assert_eq!(part.painted_on, Date::of(2026, 11, 3));
        assert!(part.left_uncoated && part.note == "resprayed");
    }
}

#[test]
fn two_panels_made_one_bring_all_their_readings_along() {
    let Loaded { job, template } = job_on("saloon").film("bonnet-left", 110.0).film("bonnet-right", 130.0).build();
    let one = template.merge(&id("bonnet-left"), &id("bonnet-right")).expect("halves meet");
    let panels = carry_over(&job.panels, &template, &one);
    assert_eq!(panels.keys().collect::<Vec<_>>(), [&id("bonnet")]);
    assert_eq!(places(&panels), places(&job.panels));
    // And taken apart again by taking the old drawing back, each is where it was.
    assert_eq!(places(&carry_over(&panels, &one, &template)), places(&job.panels));
    assert_eq!(carry_over(&panels, &one, &template).len(), 2);
}

#[test]
fn another_body_keeps_panels_of_the_same_name_and_no_others() {
    let Loaded { job, template } = sample();
    let coupe = load_embedded("coupe").expect("loads");
    let panels = carry_over(&job.panels, &template, &coupe);
    assert!(!panels.is_empty() && panels.keys().all(|id| coupe.panel(id).is_some()));
    for (id, record) in &panels {
        assert!(Arc::ptr_eq(record, &job.panels[id]), "{id}");
    }
    assert!(job.panels.keys().filter(|id| coupe.panel(id).is_some()).all(|id| panels.contains_key(id)));
}

#[test]
fn taking_a_template_is_one_step_that_undo_takes_back() {
    let Loaded { job, template } = sample();
    let cut = cut_doors(&template);
    let mut document = Document::opened(Arc::clone(&job));
    let size = Some(Size { length: Millimetres::of(5000.0), ..template.size() });
    document.apply(&Command::SetSize(size), None).expect("a vehicle can be five metres long");
    let panels = carry_over(&job.panels, &template, &cut);
    document.apply(&Command::SetTemplate { template: "cut".to_owned(), panels }, None).expect("it fits");
    assert_eq!(document.job().vehicle.size_mm, None, "a template comes in its own size");
    assert!(document.undo() && document.undo());
    assert_eq!(document.job(), &job);
}

#[test]
fn a_size_is_kept_in_the_file_and_changes_areas_and_ways_but_no_place() {
    let Loaded { job, template } = sample();
    let mut document = Document::opened(Arc::clone(&job));
    let size = Size { length: Millimetres::of(5170.0), ..template.size() };
    document.apply(&Command::SetSize(Some(size)), None).expect("a vehicle can be that long");
    let text = job_to_text(document.job()).expect("it can be written");
    assert!(text.contains("size_mm: Some((") && text.contains("length: 5170"), "{text}");
    let again = job_from_text("again", &text).expect("and read");
    assert_eq!(again.template.size(), size);
    assert_eq!(again.job, *document.job());
    let roof = |t: &Template| t.panel(&id("roof-left")).expect("a roof").area.m2();
    assert!((roof(&again.template) / roof(&template) - 1.1).abs() < 0.02, "a tenth longer, a tenth more roof");
    let problem = |l: &Loaded| crew_problem(&l.job, &l.template, &Insight::new(&l.job, &l.template));
    let (short, long) = (problem(&sample()), problem(&again));
    assert!(
        long.operations.iter().map(|o| o.duration_s).sum::<i64>() > short.operations.iter().map(|o| o.duration_s).sum()
    );
    assert_ne!(short.walk_s, long.walk_s);
    assert_eq!(places(&job.panels), places(&again.job.panels));
    assert!(beside_their_panel(&again.job, &again.template) == beside_their_panel(&job, &template));
    document.apply(&Command::SetSize(None), None).expect("back to the template's");
    assert!(!job_to_text(document.job()).expect("it can be written").contains("size_mm: Some(("));
}

#[test]
fn a_size_that_no_vehicle_has_is_refused_by_hand_and_in_a_file() {
    let Loaded { job, template } = sample();
    let mut document = Document::opened(Arc::clone(&job));
    for (length, width, height) in [(499.0, 1800.0, 1400.0), (4700.0, 4001.0, 1400.0), (4700.0, 1800.0, 6000.1)] {
        let [length, width, height] = [length, width, height].map(Millimetres::of);
        let refused = document.apply(&Command::SetSize(Some(Size { length, width, height })), None);
        assert!(matches!(&refused, Err(CommandError::Fault(f)) if f.code == Code::JobSize), "{refused:?}");
    }
    let with = |size: &str| {
        let text = lapwright::file::SAMPLE
            .replace("template: \"saloon\",", &format!("template: \"saloon\", size_mm: {size},"));
        job_from_text("sized", &text).map(|l| l.template.size()).map_err(|e| e.to_string())
    };
    assert_eq!(with("Some((length: 4700, width: 1820, height: 1450))"), Ok(template.size()));
    let said = with("Some((length: 4.7, width: 1.82, height: 1.45))").expect_err("metres");
    assert!(said.contains("vehicle.size_mm.length: no vehicle has a length of 4.7 mm"), "{said}");
    assert!(with("Some((length: NaN, width: 1820, height: 1450))").expect_err("no number").contains("sized:"));
    assert!(with("Some((length: 4700, width: 1820))").expect_err("no height").contains("height"));
    assert_eq!(sized(Arc::clone(&template), None).size(), template.size());
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is cut or made one, no reading is lost, none comes twice, and each lies on its panel if it did before.
    #[test]
    fn no_reading_is_lost_by_any_change(
        steps in proptest::collection::vec((any::<bool>(), 0usize..100_000, 0usize..100, 0.1f32..0.9), 1..5),
    ) {
        let Loaded { job, template } = sample();
        let mut changed = (*template).clone();
        for (split, which, other, part) in steps {
            let i = which % changed.panels.len();
            let (panel, around) = (changed.panels[i].id.clone(), changed.neighbours(i));
            let next = if split {
                let b = changed.panels[i].outline.bounds();
                let x = b.min.x + part * b.width();
                changed.split(&panel, MapPoint::new(x, b.min.y), MapPoint::new(x, b.max.y))
            } else {
                changed.merge(&panel, &changed.panels[around[other % around.len()]].id.clone())
            };
            changed = next.unwrap_or(changed);
        }
        let panels = carry_over(&job.panels, &template, &changed);
        prop_assert_eq!(places(&panels), places(&job.panels));
        let carried = Job { panels, ..(*job).clone() };
        prop_assert!(check(&carried, &changed).iter().all(|f| f.code != Code::JobUnknownPanel));
        prop_assert!(beside_their_panel(&carried, &changed) <= beside_their_panel(&job, &template));
    }
}
