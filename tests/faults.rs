//! Every call to the disk failed once and for good, one after the other, in everything that writes: what was there before is
//! there afterwards, or what should be, and the message says what to do. Saving a job itself is in `saving.rs`, a day in `day_file.rs`.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{
    Disk, Fault, JournalHead, RealDisk, SaveError, Templates, copy_photos, job_to_text, journal_of, keep_job,
    photo_file, photo_id, photos_of, put_aside, read_job, read_journal, remove_journal, save_job, save_photo,
    write_export, write_journal,
};
use lapwright::job::Revision;
use lapwright::job::{Command, Defect, Document, Job, PhotoId};
use lapwright::units::Date;
use lapwright::vehicle::PanelId;
use lapwright::work::{Effort, HandClock, Keeper, Progress, Shelf, SolveRun, Task};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::task::{Wake, Waker};
use std::time::Duration;
use support::sample;

/// A folder with a saved job, and what a step may need.
struct Place {
    folder: tempfile::TempDir,
    job: Arc<Job>,
    text: String,
}

impl Place {
    fn new() -> Self {
        let place = Self { folder: tempfile::tempdir().expect("a folder"), job: sample().job, text: String::new() };
        save_job(&RealDisk, &place.file(), &place.job).expect("a sound disk");
        let text = job_to_text(&place.job).expect("it can be written");
        Self { text, ..place }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn file(&self) -> PathBuf {
        self.path("vehicle.job.ron")
    }

    fn journal(&self) -> PathBuf {
        journal_of(&RealDisk, &self.file()).expect("no links here")
    }

    fn read(&self, name: &str) -> Option<Vec<u8>> {
        std::fs::read(self.path(name)).ok()
    }

    fn keep(&self, disk: &dyn Disk, name: &str) -> Result<(), SaveError> {
        let job = self.named(name);
        let head = JournalHead::new(&job, Some(&self.file()), None, 1_764_000_000, 1);
        write_journal(disk, &self.journal(), &head, &job).map(drop)
    }

    fn named(&self, name: &str) -> Job {
        Job { name: name.to_owned(), ..(*self.job).clone() }
    }

    fn text_of(&self, name: &str) -> String {
        job_to_text(&self.named(name)).expect("it can be written")
    }

    /// What the journal holds.
    fn kept_text(&self) -> Option<String> {
        let found = read_journal(&RealDisk, &self.journal()).expect("a sound disk");
        found.map(|found| found.text.expect("never torn"))
    }

    /// The job that was saved is still there.
    fn check_file(&self) {
        assert_eq!(self.read("vehicle.job.ron").as_deref(), Some(self.text.as_bytes()));
    }
}

/// Carries out a step with every call failing in turn, once and for good; `look` says what must be there, told whether it went well.
/// Gives the number of calls.
fn fail_everywhere<E: std::fmt::Debug>(
    start: impl Fn(&Place),
    step: impl Fn(&Place, &Fault) -> Result<(), E>,
    hint: impl Fn(&E) -> String,
    look: impl Fn(&Place, bool),
) -> usize {
    let mut most = 0;
    for stays_broken in [false, true] {
        for nth in 0.. {
            assert!(nth < 100, "it ends");
            let place = Place::new();
            start(&place);
            let disk = Fault::at(nth, stays_broken);
            let result = step(&place, &disk);
            place.check_file();
            look(&place, result.is_ok());
            if let Err(error) = &result {
                let said = hint(error);
                assert!(said.len() > 10, "call {nth}: {error:?} says what to do: {said}");
            }
            if !disk.struck() {
                result.expect("nothing failed");
                most = most.max(nth);
                break;
            }
            // The disk is well again, and so is the same step.
            step(&place, &Fault::at(usize::MAX, false)).expect("a sound disk");
            look(&place, true);
        }
    }
    most
}

fn save_hint(error: &SaveError) -> String {
    assert!(error.to_string().contains("no space left"), "{error}");
    error.hint().to_owned()
}

#[test]
fn an_export_is_the_old_or_the_new_one() {
    let calls = fail_everywhere(
        |place| std::fs::write(place.path("sheet.pdf"), "old sheet").expect("a sound disk"),
        |place, disk| write_export(disk, &place.path("sheet.pdf"), b"new sheet").map(drop),
        save_hint,
        |place, done| {
            let now = place.read("sheet.pdf").expect("it is there");
            assert_eq!(now, if done { b"new sheet" } else { b"old sheet" });
        },
    );
    assert!(calls >= 5, "{calls}");
}

#[test]
fn a_journal_is_the_old_or_the_new_one() {
    let calls = fail_everywhere(
        |place| place.keep(&RealDisk, "first").expect("a sound disk"),
        |place, disk| place.keep(disk, "second"),
        save_hint,
        |place, done| {
            let now = place.kept_text().expect("it is there");
            assert_eq!(now, place.text_of(if done { "second" } else { "first" }));
        },
    );
    assert!(calls >= 8, "{calls}");
}

#[test]
fn a_journal_that_could_not_be_removed_is_still_whole() {
    let calls = fail_everywhere(
        |place| ["first", "second"].into_iter().for_each(|n| place.keep(&RealDisk, n).expect("a sound disk")),
        |place, disk| remove_journal(disk, &place.journal()),
        |error| format!("{error}, tried again by the thread that writes it"),
        |place, done| {
            let now = place.kept_text();
            assert!(now.is_none() || !done && now == Some(place.text_of("second")));
        },
    );
    assert!(calls >= 3, "{calls}");
}

fn aside(place: &Place) -> Vec<String> {
    let files = RealDisk.list(&place.path("data").join("kept")).unwrap_or_default();
    let visible = files.iter().filter(|f| !f.file_name().expect("a name").to_string_lossy().starts_with('.'));
    visible.map(|f| std::fs::read_to_string(f).expect("text")).collect()
}

#[test]
fn unsaved_work_that_is_put_aside_is_in_its_journal_or_in_a_file_of_its_own() {
    let calls = fail_everywhere(
        |place| place.keep(&RealDisk, "unsaved").expect("a sound disk"),
        |place, disk| match read_journal(&RealDisk, &place.journal()).expect("a sound disk") {
            Some(found) => put_aside(disk, &place.path("data"), &found, None, "2026-11-25-120000").map(drop),
            None => Ok(()), // done before it failed
        },
        save_hint,
        |place, done| {
            let text = place.text_of("unsaved");
            let (kept, aside) = (place.kept_text(), aside(place));
            assert!(aside.iter().all(|a| *a == text), "nothing half");
            assert!(!aside.is_empty() || kept.as_ref() == Some(&text), "nothing lost");
            assert!(!done || kept.is_none());
        },
    );
    assert!(calls >= 8, "{calls}");
}

/// A photograph is any bytes here, under the name of their hash.
fn photo() -> (PhotoId, &'static [u8]) {
    let bytes = b"the bytes of a picture";
    (photo_id(bytes), bytes)
}

#[test]
fn a_picture_is_whole_or_not_there() {
    let (id, bytes) = photo();
    let calls = fail_everywhere(
        |_| {},
        |place, disk| save_photo(disk, &place.file(), &id, bytes),
        save_hint,
        |place, done| {
            let now = std::fs::read(photo_file(&place.file(), &id)).ok();
            assert!(now.as_deref() == Some(bytes) || !done && now.is_none());
        },
    );
    assert!(calls >= 5, "{calls}");
}

fn with_photo(job: &Job) -> Job {
    let mut document = Document::opened(Arc::new(job.clone()));
    let panel = PanelId::from("bonnet-left");
    let defect = job.panels.values().flat_map(|r| &r.defects).next().expect("the sample has one").clone();
    document.apply(&Command::AddDefect(panel, Defect { photos: vec![photo().0], ..defect }), None).expect("fits");
    Job::clone(document.job())
}

#[test]
fn pictures_that_are_copied_are_whole_or_not_there() {
    let (id, bytes) = photo();
    let calls = fail_everywhere(
        |place| save_photo(&RealDisk, &place.file(), &id, bytes).expect("a sound disk"),
        |place, disk| {
            let job = with_photo(&place.job);
            assert!(photos_of(&job).contains(&id));
            copy_photos(disk, &place.file(), &place.path("copy.job.ron"), &job)
        },
        save_hint,
        |place, _| {
            // A picture that can't be read counts as missing, which is no reason to refuse the job.
            let now = std::fs::read(photo_file(&place.path("copy.job.ron"), &id)).ok();
            assert!(now.is_none() || now.as_deref() == Some(bytes));
            assert_eq!(std::fs::read(photo_file(&place.file(), &id)).expect("untouched"), bytes);
        },
    );
    assert!(calls >= 6, "{calls}");
}

#[test]
fn a_job_that_is_about_to_be_replaced_is_kept_with_its_pictures_or_it_is_told() {
    let (id, bytes) = photo();
    let calls = fail_everywhere(
        |_| {},
        |place, disk| {
            let fresh = [(id.clone(), Arc::new(bytes.to_vec()))];
            keep_job(disk, &place.path("data"), &with_photo(&place.job), &fresh, None, "2026-11-25-120000").map(drop)
        },
        save_hint,
        |place, done| {
            let folder = place.path("data").join("kept");
            let files = RealDisk.list(&folder).unwrap_or_default();
            let whole = |file: &&PathBuf| photo_file(file, &id).exists() && read_job(&RealDisk, file).is_ok();
            assert!(!done || files.iter().any(|file| whole(&file)), "{files:?}");
        },
    );
    assert!(calls >= 8, "{calls}");
}

/// A window's keeper from opening a job through unsaved work to closing, on a disk that fails.
#[test]
fn a_keeper_survives_a_disk_that_fails_anywhere() {
    let mut struck = 0;
    for stays_broken in [false, true] {
        for nth in 0..60 {
            let place = Place::new();
            place.keep(&RealDisk, "from before").expect("a sound disk");
            let disk = Arc::new(Fault::at(nth, stays_broken));
            let shelf = Shelf {
                disk: Arc::<Fault>::clone(&disk),
                data: Some(place.path("data")),
                pause: Duration::ZERO,
                clock: Arc::new(HandClock::at(1_764_000_000)),
            };
            let print = lapwright::file::Fingerprint::read(&RealDisk, &place.file()).expect("a sound disk");
            let mut keeper = Keeper::new(shelf, Some(&place.file()), print, None);
            let looked = keeper.look_for_unsaved(&place.job);
            let mut document = Document::opened(Arc::clone(&place.job));
            if keeper.found().is_some() {
                if let Ok(Some(taken)) = keeper.take_up(&Templates::default()) {
                    assert_eq!(taken.loaded.job.name, "from before");
                    document = Document::unsaved(Arc::clone(&taken.loaded.job));
                }
            } else {
                assert!(
                    looked.is_err(),
                    "call {nth}: what is there is found, or it is said that it could not be looked for"
                );
            }
            let date = Date::of(2026, 11, 26).expect("a day");
            document.apply(&Command::SetDate(Some(date)), None).expect("fits");
            keeper.follow(&document, Vec::new, || Waker::noop().clone());
            drop(keeper); // as when the window goes
            place.check_file();
            let kept = place.kept_text();
            if looked.is_ok() && !disk.struck() {
                assert!(kept.expect("the journal").contains("2026-11-26"));
            } else if looked.is_ok() {
                let now = kept.expect("the journal of before or of now");
                assert!(now == place.text_of("from before") || now.contains("2026-11-26"), "call {nth}");
            }
            struck += usize::from(disk.struck());
            read_job(&RealDisk, &place.file()).expect("it can be opened");
        }
    }
    assert!(struck > 15, "{struck}");
}

/// A disk on which the program makes a mistake: at the first two writes, and at every picture that it reads.
#[derive(Debug, Default)]
struct Mistaken(AtomicUsize);

impl Disk for Mistaken {
    fn read(&self, path: &Path, limit: u64) -> std::io::Result<Vec<u8>> {
        assert!(path.extension().is_none_or(|e| e != "jpg"), "a mistake on purpose");
        RealDisk.read(path, limit)
    }
    fn about(&self, path: &Path) -> std::io::Result<Option<lapwright::file::About>> {
        RealDisk.about(path)
    }
    fn target(&self, path: &Path) -> std::io::Result<Option<PathBuf>> {
        RealDisk.target(path)
    }
    fn list(&self, folder: &Path) -> std::io::Result<Vec<PathBuf>> {
        RealDisk.list(folder)
    }
    fn make_folder(&self, folder: &Path) -> std::io::Result<()> {
        RealDisk.make_folder(folder)
    }
    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> std::io::Result<()> {
        let before = self.0.fetch_add(1, Ordering::SeqCst);
        assert!(before >= 2, "a mistake on purpose");
        RealDisk.write_new(path, bytes, like)
    }
    fn append(&self, path: &Path, bytes: &[u8]) -> std::io::Result<()> {
        RealDisk.append(path, bytes)
    }
    fn link(&self, from: &Path, to: &Path) -> std::io::Result<()> {
        RealDisk.link(from, to)
    }
    fn rename(&self, from: &Path, to: &Path) -> std::io::Result<()> {
        RealDisk.rename(from, to)
    }
    fn remove(&self, path: &Path) -> std::io::Result<()> {
        RealDisk.remove(path)
    }
    fn sync_folder(&self, folder: &Path) -> std::io::Result<()> {
        RealDisk.sync_folder(folder)
    }
    fn lock(&self, path: &Path, holder: &str) -> std::io::Result<Option<lapwright::file::Lock>> {
        RealDisk.lock(path, holder)
    }
}

#[test]
fn a_worker_that_makes_a_mistake_says_so_and_the_journal_is_tried_again() {
    let place = Place::new();
    let shelf = Shelf {
        disk: Arc::new(Mistaken::default()),
        data: None,
        pause: Duration::from_millis(1),
        clock: Arc::new(HandClock::at(1_764_000_000)),
    };
    let mut keeper = Keeper::new(shelf, Some(&place.file()), None, None);
    let mut document = Document::opened(Arc::clone(&place.job));
    document.apply(&Command::SetDate(Date::of(2026, 11, 26)), None).expect("fits");
    keeper.follow(&document, Vec::new, || Waker::noop().clone());
    let mut told = None;
    for _ in 0..2_000 {
        told = told.or(keeper.failure());
        if !keeper.is_busy() {
            break;
        }
        std::thread::sleep(Duration::from_millis(1));
    }
    assert!(told.expect("it is told").contains("a mistake on purpose"));
    assert!(place.kept_text().expect("written in the end").contains("2026-11-26") && keeper.failure().is_none());
}

#[cfg(feature = "gui")]
#[test]
fn a_picture_on_which_the_program_makes_a_mistake_is_told_and_the_next_one_comes() {
    use lapwright::work::{Ended, PictureRun};
    let files = vec![PathBuf::from("first.jpg"), PathBuf::from("missing.png")];
    let run = PictureRun::start(Arc::new(Mistaken::default()), files, Waker::noop().clone()).expect("a thread");
    let mut told = Vec::new();
    loop {
        match run.next_picture() {
            Ok(Some(picture)) => told.push(picture.expect_err("none of them is a picture")),
            Ok(None) => std::thread::sleep(Duration::from_millis(1)),
            Err(Ended) => break,
        }
    }
    assert_eq!(told.len(), 2, "{told:?}");
    assert!(told[0].contains("first.jpg") && told[0].contains("a mistake on purpose"), "{told:?}");
    assert!(told[1].contains("missing.png"), "{told:?}");
}

/// Something that the planner calls fails in its thread: the window is told, and goes on.
#[test]
fn a_planner_that_makes_a_mistake_says_so() {
    struct Fails;
    impl Wake for Fails {
        fn wake(self: Arc<Self>) {
            panic!("a mistake on purpose");
        }
    }
    let text = std::fs::read_to_string(support::root().join("tests/data/crew/small.json")).expect("test data");
    let problem = Arc::new(serde_json::from_str(&text).expect("a problem"));
    let effort = Effort { nodes: Some(1_000), threads: 1, ..Effort::default() };
    let task = Task::Coating { problem, free: None };
    let mut run = SolveRun::start(task, Revision::default(), effort, Waker::from(Arc::new(Fails))).expect("a thread");
    let failed = (0..5_000).find_map(|_| {
        std::thread::sleep(Duration::from_millis(2));
        match run.next_message() {
            Some(Progress::Failed(reason)) => Some(reason),
            _ => None,
        }
    });
    let reason = failed.expect("it is told");
    assert!(reason.contains("stopped unexpectedly") && reason.contains("the job is unharmed"), "{reason}");
}
