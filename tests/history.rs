//! Undo and redo under any sequence of commands.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{job_from_text, job_to_text};
use lapwright::geometry::MapPoint;
use lapwright::job::{Command, CommandError, Document, GestureId, TextField};
use lapwright::units::Micrometres;
use lapwright::vehicle::PanelId;
use proptest::prelude::*;
use std::sync::{Arc, LazyLock};
use support::command::command;
use support::job::job_on;

static START: LazyLock<lapwright::file::Loaded> = LazyLock::new(|| job_on("hatch").film("bonnet-left", 110.0).build());

fn document() -> Document {
    Document::opened(Arc::clone(&START.job))
}

fn commands() -> impl Strategy<Value = Vec<(Command, Option<u64>)>> {
    proptest::collection::vec((command(&START.template), proptest::option::of(0_u64..3)), 1..25)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 192, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn undo_leads_to_the_start_and_redo_to_the_end(commands in commands()) {
        let mut document = document();
        for (command, gesture) in &commands {
            drop(document.apply(command, gesture.map(GestureId)));
        }
        let end = Arc::clone(document.job());
        let mut steps = 0;
        while document.undo() {
            steps += 1;
        }
        prop_assert_eq!(&**document.job(), &*START.job);
        prop_assert!(!document.is_dirty(), "back at what was opened");
        prop_assert_eq!(document.undo_label(), None);
        for _ in 0..steps {
            prop_assert!(document.redo());
        }
        prop_assert!(!document.redo());
        prop_assert_eq!(&**document.job(), &*end);
        prop_assert_eq!(document.is_dirty(), end != START.job);
    }

    #[test]
    fn a_command_that_fails_or_changes_nothing_leaves_everything_as_it_was(commands in commands()) {
        let mut document = document();
        for (command, gesture) in &commands {
            let (before, revision, label) = (Arc::clone(document.job()), document.revision(), document.undo_label());
            let result = document.apply(command, gesture.map(GestureId));
            if result.is_err() || result == Ok(revision) {
                prop_assert!(Arc::ptr_eq(&before, document.job()));
                prop_assert_eq!(revision, document.revision());
                prop_assert_eq!(label, document.undo_label());
            } else {
                prop_assert!(document.revision() > revision);
                prop_assert_ne!(&before, document.job());
            }
        }
    }

    /// Otherwise somebody could work for an hour and then not be able to save.
    #[test]
    fn whatever_commands_do_the_job_can_be_saved_and_opened_again(commands in commands()) {
        let mut document = document();
        for (command, _) in &commands {
            drop(document.apply(command, None));
        }
        let text = job_to_text(document.job());
        prop_assert!(text.is_ok(), "{:?}", text);
        let again = job_from_text("again", &text.expect("just checked")).expect("what was written can be read");
        prop_assert_eq!(&again.job, document.job());
    }
}

fn rename(to: &str) -> Command {
    Command::SetText(TextField::Name, to.to_owned())
}

fn typed(document: &mut Document, texts: &[&str], gesture: u64) {
    for text in texts {
        document.apply(&rename(text), Some(GestureId(gesture))).expect("a name");
    }
}

#[test]
fn a_gesture_is_one_step() {
    let mut document = document();
    typed(&mut document, &["a", "ab", "abc"], 1);
    typed(&mut document, &["d", "de"], 2);
    assert!(document.undo());
    assert_eq!(document.job().name, "abc");
    assert!(document.undo());
    assert_eq!(document.job(), &START.job);
    assert!(!document.undo());
}

#[test]
fn a_gesture_that_ends_where_it_began_leaves_no_step() {
    let mut document = document();
    let name = START.job.name.clone();
    typed(&mut document, &["a", "ab", &name], 1);
    assert_eq!(document.undo_label(), None);
    assert!(!document.is_dirty());
}

#[test]
fn a_gesture_that_was_undone_is_not_joined_by_what_follows() {
    let mut document = document();
    typed(&mut document, &["a"], 1);
    typed(&mut document, &["b"], 2);
    document.undo();
    typed(&mut document, &["c"], 2);
    document.undo();
    assert_eq!(document.job().name, "a");
}

#[test]
fn a_job_saved_and_changed_is_clean_again_after_undo() {
    let mut document = document();
    document.apply(&rename("first"), None).expect("a name");
    let saved = Arc::clone(document.job());
    document.mark_saved(Arc::clone(&saved));
    assert!(!document.is_dirty());
    document.apply(&rename("second"), None).expect("a name");
    assert!(document.is_dirty());
    document.undo();
    assert!(!document.is_dirty(), "this is what is on disk");
    document.undo();
    assert!(document.is_dirty(), "before what is on disk");
    document.redo();
    assert!(!document.is_dirty());
}

#[test]
fn a_job_saved_while_it_was_being_changed_stays_dirty() {
    let mut document = document();
    let written = Arc::clone(document.job());
    document.apply(&rename("later"), None).expect("a name");
    document.mark_saved(written);
    assert!(document.is_dirty());
}

#[test]
fn a_new_command_after_undo_forgets_what_could_be_redone() {
    let mut document = document();
    document.apply(&rename("a"), None).expect("a name");
    document.undo();
    assert_eq!(document.redo_label(), Some("edit text"));
    document.apply(&rename("b"), None).expect("a name");
    assert_eq!(document.redo_label(), None);
    assert!(!document.redo());
}

#[test]
fn a_command_says_what_does_not_fit() {
    let mut document = document();
    let panel = PanelId::from("bonnet-left");
    let past_the_end = Command::RemoveReading { panel: panel.clone(), spot: 99, reading: 0 };
    let error = document.apply(&past_the_end, None).expect_err("there are not that many spots");
    assert_eq!(error, CommandError::NoSuch { what: "spot", number: 100, panel: panel.clone() });
    let nowhere = Command::AddSpot { panel, at: MapPoint::new(f32::NAN, 0.0), thickness: Micrometres::of(100.0) };
    let error = document.apply(&nowhere, None).expect_err("not a place").to_string();
    assert!(error.contains("the place is not a pair of finite numbers"), "{error}");
}

#[test]
fn snapshots_share_the_panels_that_did_not_change() {
    let mut document = document();
    let before = Arc::clone(document.job());
    let at = START.template.panels[0].label.centre;
    let add = Command::AddSpot { panel: PanelId::from("roof-left"), at, thickness: Micrometres::of(100.0) };
    document.apply(&add, None).expect("a reading");
    let bonnet = PanelId::from("bonnet-left");
    let (was, is) = (before.record(&bonnet).expect("read"), document.job().record(&bonnet).expect("still read"));
    assert!(Arc::ptr_eq(was, is));
}
