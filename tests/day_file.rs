//! The log of a day on disk: whatever tears it, what was tapped before is there again.

#![expect(clippy::expect_used, reason = "a test says what it expected")]

use lapwright::bay::{Event, Log};
use lapwright::coat::Feel;
use lapwright::crew::{FORMAT, ObjectiveSpec, OperationSpec, PlanRow, ProblemSpec, WorkerSpec};
use lapwright::file::{DayFile, Disk, Fault, RealDisk, append_day, day_path, read_day, write_day};
use lapwright::work::{DayRun, HandClock, Place, Setup};
use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::task::Waker;

fn some_day() -> Log {
    let mut log = Log::default();
    let mara = || "Mara \"the\u{202f}hand\"\n".to_owned();
    log.note(1_764_000_000, Event::Began { worker: mara(), operation: "roof-left/apply1".into() });
    log.note(1_764_000_040, Event::Finished { worker: mara() });
    log.assume(1_764_000_041, Event::Began { worker: mara(), operation: "bonnet-left/apply1".into() });
    log.note(1_764_000_050, Event::Felt { operation: "roof-left/level1".into(), feel: Feel::StillWet });
    log.note(1_764_000_060, Event::Left { worker: mara(), for_s: 240 });
    log.note(1_764_000_070, Event::TakenBack);
    log
}

fn write(disk: &dyn Disk, path: &Path, log: &Log) {
    for entry in log.entries() {
        append_day(disk, path, entry).expect("there is room");
    }
}

#[test]
fn a_day_is_read_as_it_was_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = day_path(&folder.path().join("estate.job.ron"));
    assert!(path.ends_with("estate.job.ron.day"));
    assert_eq!(read_day(&RealDisk, &path).expect("no file is an empty day"), DayFile::default());
    let log = some_day();
    write(&RealDisk, &path, &log);
    assert_eq!(read_day(&RealDisk, &path).expect("readable"), DayFile { log, unreadable: 0 });
}

/// The battery dies at every byte once; the day goes on after it and is read again.
#[test]
fn a_torn_line_costs_only_its_own_entry() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("whole.day");
    let log = some_day();
    write(&RealDisk, &path, &log);
    let bytes = fs::read(&path).expect("written");
    let torn = folder.path().join("torn.day");
    for cut in 0..=bytes.len() {
        fs::write(&torn, &bytes[..cut]).expect("there is room");
        let whole_lines = bytes[..cut].split(|b| *b == b'\n').count().saturating_sub(2);
        let kept = read_day(&RealDisk, &torn).expect("readable");
        assert_eq!(kept.log.entries(), &log.entries()[..whole_lines], "cut at {cut}");
        assert_eq!(kept.unreadable, 0, "cut at {cut}");
        let next = &log.entries()[0];
        append_day(&RealDisk, &torn, next).expect("there is room");
        let gone_on = read_day(&RealDisk, &torn).expect("readable");
        assert_eq!(gone_on.log.entries().len(), whole_lines + 1, "cut at {cut}");
    }
}

#[test]
fn every_failing_call_leaves_the_entries_before() {
    let log = some_day();
    let mut most = 0;
    // The first entry makes the file; the last one goes behind the others.
    for before in [&log.entries()[..0], &log.entries()[..log.entries().len() - 1]] {
        let next = &log.entries()[before.len()];
        for stays_broken in [false, true] {
            for nth in 0.. {
                let folder = tempfile::tempdir().expect("a folder");
                let path = folder.path().join("x.day");
                for entry in before {
                    append_day(&RealDisk, &path, entry).expect("there is room");
                }
                let disk = Fault::at(nth, stays_broken);
                let done = append_day(&disk, &path, next);
                let read = read_day(&RealDisk, &path).expect("readable");
                assert_eq!(read.log.entries()[..before.len()], *before);
                assert_eq!(done.is_ok(), !disk.struck());
                if !disk.struck() {
                    most = most.max(nth);
                    break;
                }
                append_day(&RealDisk, &path, next).expect("there is room again");
                let read = read_day(&RealDisk, &path).expect("readable");
                assert_eq!(read.log.entries(), &log.entries()[..=before.len()]);
            }
        }
    }
    assert_eq!(most, 6, "a link, no file, reading, the first line, its name, the entry");
}

/// A day that is written whole, for a job that got another name, is there whole or not at all, and can be written again.
#[test]
fn a_day_that_is_copied_is_whole_or_not_there() {
    let log = some_day();
    for stays_broken in [false, true] {
        for nth in 0.. {
            let folder = tempfile::tempdir().expect("a folder");
            let path = folder.path().join("x.day");
            let disk = Fault::at(nth, stays_broken);
            let done = write_day(&disk, &path, &log);
            if !disk.struck() {
                assert!(done.is_ok() && nth >= 2);
                break;
            }
            done.expect_err("a call failed");
            if !stays_broken {
                assert!(!path.exists(), "call {nth}");
                write_day(&RealDisk, &path, &log).expect("there is room again");
                assert_eq!(read_day(&RealDisk, &path).expect("readable").log, log);
            }
        }
    }
}

#[test]
fn another_format_is_refused_and_left_alone() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("x.day");
    fs::write(&path, "day/2\n(at_s:1)\n").expect("there is room");
    let error = read_day(&RealDisk, &path).expect_err("a later format");
    assert!(error.to_string().contains("day/2"), "{error}");
    assert_eq!(fs::read_to_string(&path).expect("untouched"), "day/2\n(at_s:1)\n");
}

/// A day that was only tried goes to the disk when its job gets a file, and never over another day.
#[test]
fn a_day_in_memory_follows_its_job_to_the_disk() {
    let worker = |id: &str| WorkerSpec { id: id.into(), roles: vec!["cut".into()] };
    let operation = |id: &str| OperationSpec {
        id: id.into(),
        panel: id.into(),
        role: "cut".into(),
        duration_s: 60,
        stance: "here".into(),
        worker: None,
    };
    let problem = ProblemSpec {
        format: FORMAT.into(),
        name: "two panels".into(),
        workers: vec![worker("Mara")],
        stances: vec!["here".into()],
        walk_s: vec![vec![0]],
        close: Vec::new(),
        operations: vec![operation("a"), operation("b")],
        lags: Vec::new(),
        wet: Vec::new(),
        objective: ObjectiveSpec { makespan: 10, walking: 1 },
    };
    let setup = Setup { problem: Arc::new(problem), windows: None };
    let clock = Arc::new(HandClock::at(500));
    let open = |place| DayRun::open(Arc::<HandClock>::clone(&clock), setup.clone(), place);
    let rows = [PlanRow { id: "a".into(), worker: "Mara".into(), start_s: 0 }];
    let waker = Waker::noop();
    let mut run = open(Place::Nowhere);
    run.plan_ahead(&rows);
    run.begin(waker);
    assert!(!run.is_begun(), "a job without a file has no day");
    run.rehearse();
    run.begin(waker);
    clock.advance(70);
    run.finish(0, 0, waker);
    run.finish(0, 0, waker);
    assert_eq!((run.day().done_at(0), run.log().entries().len()), (Some(570), 2), "a second tap counts for nothing");

    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("x.day");
    run.move_to(path.clone());
    assert_eq!((run.place(), &run.failure), (&Place::File(path.clone()), &None));
    assert_eq!(&read_day(&RealDisk, &path).expect("readable").log, run.log());
    assert_eq!(open(Place::File(path.clone())).day(), run.day());

    let taken = folder.path().join("y.day");
    write_day(&RealDisk, &taken, &some_day()).expect("there is room");
    run.move_to(taken.clone());
    assert_eq!(run.place(), &Place::File(path), "it stays where it was");
    assert!(run.failure.is_some());
    assert_eq!(read_day(&RealDisk, &taken).expect("readable").log, some_day());
}
