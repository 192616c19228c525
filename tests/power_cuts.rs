//! A power cut at every step of saving, of keeping a journal and of recovery, on a disk that keeps any part of what was not
//! synced: the old or the new state is there, whole, and nothing that was confirmed is lost.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

#[path = "support/model_disk.rs"]
mod model_disk;
mod support;

use lapwright::file::{
    Disk, FoundJournal, JournalHead, Saved, job_from_text, job_to_text, journal_of, put_aside, read_journal,
    remove_journal, save_job, write_journal,
};
use lapwright::job::Job;
use model_disk::ModelDisk;
use std::path::{Path, PathBuf};
use support::sample;

/// What a window does to the disk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Step {
    /// Saves a state and removes the journal.
    Save(usize),
    /// Keeps an unsaved state in the journal.
    Keep(usize),
    /// Gives up what is unsaved.
    Discard,
    /// Puts aside the unsaved state from before.
    PutAside,
}

/// States of a job, each with the text of its file.
struct States(Vec<(Job, String)>);

impl States {
    fn new() -> Self {
        let sample = sample().job;
        let state = |n: usize| {
            let job = Job { name: format!("state {n}"), ..(*sample).clone() };
            let text = job_to_text(&job).expect("it can be written");
            assert_eq!(*job_from_text("a state", &text).expect("it loads").job, job);
            (job, text)
        };
        Self((0..6).map(state).collect())
    }

    /// Which state a text is, byte for byte.
    fn of(&self, text: &[u8]) -> usize {
        self.0.iter().position(|(_, known)| known.as_bytes() == text).expect("a state that was saved, whole")
    }
}

fn file() -> PathBuf {
    PathBuf::from("shop/vehicle.job.ron")
}

fn data() -> &'static Path {
    Path::new("user")
}

fn journal(disk: &dyn Disk) -> PathBuf {
    journal_of(disk, &file()).expect("no links here")
}

/// Carries out a step; says whether it is confirmed.
fn carry_out(disk: &ModelDisk, states: &States, step: Step) -> bool {
    let journal = journal(disk);
    match step {
        Step::Save(n) => match save_job(disk, &file(), &states.0[n].0) {
            Ok(Saved::Confirmed) => {
                // The save counts, whatever becomes of this.
                drop(remove_journal(disk, &journal));
                true
            }
            _ => false,
        },
        Step::Keep(n) => {
            let head = JournalHead::new(&states.0[n].0, Some(&file()), None, 1_764_000_000, 1);
            matches!(write_journal(disk, &journal, &head, &states.0[n].0), Ok(Saved::Confirmed))
        }
        Step::Discard => remove_journal(disk, &journal).is_ok(),
        Step::PutAside => match read_journal(disk, &journal) {
            Ok(Some(found)) => put_aside(disk, data(), &found, None, "2026-11-25-120000").is_ok(),
            _ => false,
        },
    }
}

/// What is there after a power cut: the state in the file, in the journal, and put aside.
fn found(disk: &ModelDisk, states: &States) -> (Option<usize>, Option<usize>, Vec<usize>) {
    let in_file = disk.read(&file(), u64::MAX).ok().map(|text| states.of(&text));
    let found: Option<FoundJournal> = read_journal(disk, &journal(disk)).expect("the disk is well again");
    let in_journal = found.map(|found| states.of(found.text.expect("whole, or the one before is").as_bytes()));
    let kept = disk.list(&data().join("kept")).unwrap_or_default();
    let whole = kept.iter().filter(|path| path.extension().is_some_and(|e| e == "ron"));
    let kept = whole.filter(|path| !path.file_name().expect("a name").to_string_lossy().starts_with('.'));
    let kept = kept.map(|path| states.of(&disk.read(path, u64::MAX).expect("there"))).collect();
    (in_file, in_journal, kept)
}

/// Cuts the power before every step of a history and looks at everything that may be left. Gives the number of states looked at.
fn cut_everywhere(history: &[Step]) -> usize {
    cut_everywhere_on(&ModelDisk::default(), history)
}

fn cut_everywhere_on(empty: &ModelDisk, history: &[Step]) -> usize {
    let states = States::new();
    let mut looked_at = 0;
    for cut in 0.. {
        assert!(cut < 1_000, "the history ends");
        let disk = empty.cut_at(cut);
        // What must be there: the state saved last for sure, and the newest state that was kept or saved for sure.
        let (mut saved, mut newest) = (None, None);
        let mut running = None;
        for step in history {
            running = Some(*step);
            if !carry_out(&disk, &states, *step) {
                break;
            }
            running = None;
            match *step {
                Step::Save(n) => (saved, newest) = (Some(n), Some(n)),
                Step::Keep(n) => newest = Some(n),
                Step::Discard => newest = saved,
                Step::PutAside => {}
            }
        }
        for after in disk.after_power_cut() {
            looked_at += 1;
            let (in_file, in_journal, kept) = found(&after, &states);
            let about = format!(
                "cut before step {cut}, in {running:?}: file {in_file:?}, journal {in_journal:?}, kept {kept:?}"
            );
            let allowed = match running {
                Some(Step::Save(n)) => in_file == saved || in_file == Some(n),
                _ => in_file == saved,
            };
            assert!(allowed, "{about}: the file is the old or the new one, {saved:?}");
            let best = in_file.into_iter().chain(in_journal).chain(kept).max();
            let expected = if running == Some(Step::Discard) { saved } else { newest };
            assert!(best >= expected, "{about}: {expected:?} was confirmed");
        }
        if running.is_none() {
            assert_eq!(disk.steps(), cut, "no step is left");
            return looked_at;
        }
    }
    unreachable!()
}

#[test]
fn saving_again_and_again_loses_nothing() {
    let looked_at = cut_everywhere(&[Step::Save(0), Step::Save(1), Step::Save(2)]);
    assert!(looked_at >= 80, "{looked_at}");
}

#[test]
fn keeping_saving_and_giving_up_loses_nothing() {
    use Step::{Discard, Keep, Save};
    let looked_at = cut_everywhere(&[Save(0), Keep(1), Keep(2), Save(2), Keep(3), Discard, Keep(4), Save(5)]);
    assert!(looked_at >= 150, "{looked_at}");
}

#[test]
fn recovery_loses_nothing() {
    use Step::{Keep, PutAside, Save};
    let looked_at = cut_everywhere(&[Save(0), Keep(1), PutAside, Keep(2), Keep(3), PutAside, Save(4)]);
    assert!(looked_at >= 150, "{looked_at}");
}

/// The checks above can fail: a disk that says it synced a file, and did not.
#[test]
#[should_panic(expected = "whole")]
fn a_disk_that_does_not_sync_files_is_found_out() {
    cut_everywhere_on(&ModelDisk::that_forgets_files(), &[Step::Save(0), Step::Save(1)]);
}

/// And one that says it synced a folder, and did not.
#[test]
#[should_panic(expected = "old or the new one")]
fn a_disk_that_does_not_sync_folders_is_found_out() {
    cut_everywhere_on(&ModelDisk::that_forgets_folders(), &[Step::Save(0), Step::Save(1)]);
}

/// The model finds what it is made to find: a write in place, and a rename of what was not synced.
#[test]
fn the_model_disk_loses_what_is_written_without_care() {
    let (new, old) = (Path::new("shop/new"), Path::new("shop/old"));
    let start = || {
        let disk = ModelDisk::default();
        disk.write_new(old, b"old", old).expect("a sound disk");
        disk.sync_folder(Path::new("shop")).expect("a sound disk");
        disk
    };
    // New bytes that were not synced, renamed over the old ones: the classic way to lose both.
    let steps = start().steps();
    let torn = start().cut_at(usize::MAX);
    let cut = torn.cut_at(2);
    assert!(cut.write_new(new, b"new!", new).is_err(), "the power goes before the sync");
    cut.cut_at(9).rename(new, old).expect("one step");
    let renamed = {
        let disk = cut.cut_at(9);
        disk.rename(new, old).expect("one step");
        disk
    };
    let left: Vec<_> = renamed.after_power_cut().iter().map(|d| d.read(old, 9).expect("a name")).collect();
    assert!(left.contains(&b"old".to_vec()) && left.iter().any(|bytes| bytes.len() < 3), "{left:?}");
    assert_eq!(steps, 5);
}
