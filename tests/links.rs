//! Links planted in a folder of jobs under the names that the program gives to files of its own: what they lead to is neither read
//! nor changed. Every link here leads to something of value that must be as it was at the end.
#![cfg(unix)]
#![expect(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::bay::{Entry, Event, Log};
use lapwright::file::{
    Hold, Holder, JournalHead, RealDisk, Templates, append_day, day_path, hold, journal_of, photo_file, photo_folder,
    photo_id, put_aside, read_day, read_journal, read_photo, remove_journal, save_job, save_photo, write_journal,
};
use lapwright::job::{Command, Document};
use lapwright::units::Date;
use lapwright::work::{HandClock, Keeper, Shelf};
use std::fs;
use std::os::unix::fs::symlink;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::task::Waker;
use std::time::Duration;
use support::sample;

const VALUABLE: &str = "nobody's business";
const PICTURE: &[u8] = b"a picture, as far as its name goes";

/// A folder with a job, and another one that nothing may touch.
struct Place {
    folder: tempfile::TempDir,
}

impl Place {
    fn new() -> Self {
        let place = Self { folder: tempfile::tempdir().unwrap() };
        fs::create_dir_all(place.elsewhere()).unwrap();
        fs::create_dir_all(place.file().parent().unwrap()).unwrap();
        fs::write(place.valuable(), VALUABLE).unwrap();
        // A picture elsewhere has the name that pictures have here.
        fs::write(place.elsewhere().join(format!("{}.jpg", photo_id(PICTURE))), PICTURE).unwrap();
        save_job(&RealDisk, &place.file(), &sample().job).unwrap();
        place
    }

    fn file(&self) -> PathBuf {
        self.folder.path().join("here/vehicle.job.ron")
    }

    fn elsewhere(&self) -> PathBuf {
        self.folder.path().join("elsewhere")
    }

    fn valuable(&self) -> PathBuf {
        self.elsewhere().join("valuable")
    }

    fn journal(&self) -> PathBuf {
        journal_of(&RealDisk, &self.file()).unwrap()
    }

    /// Where the lock and the previous version of the journal are.
    fn beside_journal(&self, ending: &str) -> PathBuf {
        let name = self.journal().file_name().unwrap().to_string_lossy().into_owned();
        self.file().with_file_name(name.replace(".journal", ending))
    }

    fn write_journal(&self) {
        let job = sample().job;
        let head = JournalHead::new(&job, Some(&self.file()), None, 1_764_000_000, 1);
        write_journal(&RealDisk, &self.journal(), &head, &job).unwrap();
    }

    /// Everything elsewhere is as it was, and nothing came to it.
    fn check(&self) {
        assert_eq!(fs::read_to_string(self.valuable()).unwrap(), VALUABLE);
        let picture = self.elsewhere().join(format!("{}.jpg", photo_id(PICTURE)));
        assert_eq!(fs::read(picture).unwrap(), PICTURE);
        assert_eq!(fs::read_dir(self.elsewhere()).unwrap().count(), 2);
    }
}

fn is_link(path: &Path) -> bool {
    path.symlink_metadata().is_ok_and(|found| found.is_symlink())
}

#[test]
fn a_lock_is_never_taken_through_a_link() {
    let place = Place::new();
    let lock = place.beside_journal(".lock");
    for target in [place.valuable(), place.elsewhere().join("new"), place.elsewhere()] {
        symlink(target, &lock).unwrap();
        let held = hold(&RealDisk, &place.file(), &Holder::me(0));
        assert!(matches!(held, Hold::Ours(_)), "{held:?}");
        assert!(!is_link(&lock) && lock.is_file());
        let second = hold(&RealDisk, &place.file(), &Holder::me(0));
        assert!(matches!(second, Hold::Others(_)), "the lock holds: {second:?}");
        drop(held);
        assert!(!lock.exists());
        place.check();
    }
}

#[test]
fn a_link_is_no_journal_and_a_journal_takes_its_place() {
    let place = Place::new();
    let (journal, previous) = (place.journal(), place.beside_journal(".journal~"));
    // One that could be read, were it followed.
    place.write_journal();
    let whole = place.folder.path().join("whole");
    fs::rename(&journal, &whole).unwrap();
    for target in [&whole, &place.valuable(), &place.elsewhere().join("new")] {
        symlink(target, &journal).unwrap();
        symlink(target, &previous).unwrap();
        assert_eq!(read_journal(&RealDisk, &journal).unwrap(), None);
        // A torn journal is not made whole by what the link beside it leads to.
        fs::remove_file(&journal).unwrap();
        fs::write(&journal, "journal/1\n").unwrap();
        assert_eq!(read_journal(&RealDisk, &journal).unwrap().unwrap().text, None);
        fs::remove_file(&journal).unwrap();
        symlink(target, &journal).unwrap();

        place.write_journal();
        place.write_journal();
        assert!(!is_link(&journal) && !is_link(&previous));
        assert!(read_journal(&RealDisk, &journal).unwrap().unwrap().text.is_some());
        remove_journal(&RealDisk, &journal).unwrap();
        symlink(target, &journal).unwrap();
        symlink(target, &previous).unwrap();
        remove_journal(&RealDisk, &journal).unwrap();
        assert!(!is_link(&journal) && !is_link(&previous));
        place.check();
        assert!(fs::read_to_string(&whole).unwrap().starts_with("journal/1\n"));
    }
}

#[test]
fn a_folder_of_pictures_that_is_a_link_is_never_emptied_or_moved() {
    let place = Place::new();
    let folder = photo_folder(&place.journal());
    symlink(place.elsewhere(), &folder).unwrap();
    place.write_journal();
    remove_journal(&RealDisk, &place.journal()).unwrap();
    assert!(!is_link(&folder));
    place.check();
    // Put aside with its journal, it does not come along.
    symlink(place.elsewhere(), &folder).unwrap();
    place.write_journal();
    let found = read_journal(&RealDisk, &place.journal()).unwrap().unwrap();
    let data = place.folder.path().join("data");
    let kept = put_aside(&RealDisk, &data, &found, None, "2026-11-26-120000").unwrap();
    assert!(kept.is_file() && !photo_folder(&kept).exists() && !is_link(&folder));
    place.check();
    // A real one loses its pictures only.
    let photo = photo_id(PICTURE);
    save_photo(&RealDisk, &place.journal(), &photo, PICTURE).unwrap();
    fs::write(folder.join(format!(".{photo}.77.new")), "cut short").unwrap();
    symlink(place.valuable(), folder.join(format!("{}.jpg", photo_id(b"another")))).unwrap();
    fs::write(folder.join("holiday.jpg"), "somebody's own").unwrap();
    remove_journal(&RealDisk, &place.journal()).unwrap();
    let left: Vec<_> = fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    assert_eq!(left, ["holiday.jpg"]);
    fs::remove_file(folder.join("holiday.jpg")).unwrap();
    remove_journal(&RealDisk, &place.journal()).unwrap();
    assert!(!folder.exists());
    place.check();
}

#[test]
fn a_day_is_neither_read_nor_written_through_a_link() {
    let place = Place::new();
    let day = day_path(&place.file());
    let real = place.folder.path().join("real.day");
    let event = Event::Finished { worker: "Ada".to_owned() };
    let entry = Entry { at_s: 0, event, assumed: false };
    append_day(&RealDisk, &real, &entry).unwrap();
    let before = fs::read(&real).unwrap();
    for target in [&real, &place.valuable(), &place.elsewhere().join("new"), &place.elsewhere()] {
        symlink(target, &day).unwrap();
        let error = read_day(&RealDisk, &day).unwrap_err();
        assert!(error.to_string().contains("a link to another place"), "{error}");
        let error = append_day(&RealDisk, &day, &entry).unwrap_err();
        assert!(error.to_string().contains("a link to another place"), "{error}");
        let written = lapwright::file::write_day(&RealDisk, &day, &Log::default());
        assert!(written.is_err() && is_link(&day));
        fs::remove_file(&day).unwrap();
        place.check();
        assert_eq!(fs::read(&real).unwrap(), before);
    }
    // A folder or a pipe is said to be one, without waiting for somebody at its other end.
    fs::create_dir(&day).unwrap();
    assert!(read_day(&RealDisk, &day).unwrap_err().to_string().contains("it is no file"));
    fs::remove_dir(&day).unwrap();
    if std::process::Command::new("mkfifo").arg(&day).status().is_ok_and(|made| made.success()) {
        assert!(read_day(&RealDisk, &day).unwrap_err().to_string().contains("it is no file"));
        assert!(append_day(&RealDisk, &day, &entry).is_err());
        let job = Templates::default().open_job(&RealDisk, &day).unwrap_err();
        assert!(job.to_string().contains("it is no file"), "{job}");
    }
}

#[test]
fn a_picture_is_neither_written_through_a_link_nor_taken_for_another() {
    let place = Place::new();
    let photo = photo_id(PICTURE);
    let (file, folder) = (photo_file(&place.file(), &photo), photo_folder(&place.file()));
    symlink(place.elsewhere(), &folder).unwrap();
    let error = save_photo(&RealDisk, &place.file(), &photo, PICTURE).unwrap_err();
    assert!(error.to_string().contains("a link to another place") && !error.hint().is_empty(), "{error}");
    let other = photo_id(b"another");
    assert!(save_photo(&RealDisk, &place.file(), &other, b"another").is_err());
    assert!(read_photo(&RealDisk, &place.file(), &photo).is_err());
    place.check();
    fs::remove_file(&folder).unwrap();
    // A link in the place of one picture gives way to the picture.
    for target in [place.valuable(), place.elsewhere().join("new")] {
        fs::create_dir_all(&folder).unwrap();
        symlink(target, &file).unwrap();
        assert!(read_photo(&RealDisk, &place.file(), &photo).is_err());
        save_photo(&RealDisk, &place.file(), &photo, PICTURE).unwrap();
        assert!(!is_link(&file));
        assert_eq!(read_photo(&RealDisk, &place.file(), &photo).unwrap(), PICTURE);
        fs::remove_file(&file).unwrap();
        place.check();
    }
    // Another picture under the same name is not shown for it, and gives way too.
    fs::write(&file, "exchanged").unwrap();
    let error = read_photo(&RealDisk, &place.file(), &photo).unwrap_err();
    assert!(error.to_string().contains("another picture"), "{error}");
    save_photo(&RealDisk, &place.file(), &photo, PICTURE).unwrap();
    assert_eq!(read_photo(&RealDisk, &place.file(), &photo).unwrap(), PICTURE);
}

/// A window's keeper from opening to closing in a folder where every name of the program's own is a link.
#[test]
fn a_job_from_elsewhere_with_links_all_around_is_worked_on_and_saved() {
    let place = Place::new();
    let journal = place.journal();
    for name in [&journal, &place.beside_journal(".journal~"), &place.beside_journal(".lock")] {
        symlink(place.valuable(), name).unwrap();
    }
    let previous = PathBuf::from(format!("{}~", place.file().display()));
    symlink(place.valuable(), &previous).unwrap();
    for folder in [photo_folder(&journal), photo_folder(&place.file())] {
        symlink(place.elsewhere(), folder).unwrap();
    }
    let shelf = Shelf {
        disk: Arc::new(RealDisk),
        data: Some(place.folder.path().join("data")),
        pause: Duration::ZERO,
        clock: Arc::new(HandClock::at(1_764_000_000)),
    };
    let opened = Templates::default().open_job(&RealDisk, &place.file()).unwrap();
    let mut keeper = Keeper::new(shelf, Some(&place.file()), opened.print, opened.newer);
    assert!(keeper.standing().may_write(), "{:?}", keeper.standing());
    keeper.look_for_unsaved(&opened.loaded.job).unwrap();
    assert!(keeper.found().is_none());
    let mut document = Document::opened(Arc::clone(&opened.loaded.job));
    document.apply(&Command::SetDate(Date::of(2026, 11, 26)), None).unwrap();
    keeper.follow(&document, Vec::new, || Waker::noop().clone());
    keeper.let_go();
    assert!(read_journal(&RealDisk, &journal).unwrap().unwrap().text.unwrap().contains("2026-11-26"));
    save_job(&RealDisk, &place.file(), document.job()).unwrap();
    remove_journal(&RealDisk, &journal).unwrap();
    assert!(!is_link(&previous) && previous.is_file());
    place.check();
}
