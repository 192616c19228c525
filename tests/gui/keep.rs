//! Keeping jobs safe, as a person meets it: unsaved work that comes back, two windows on one file, a file that somebody changed.

use super::scripted::{choose, drop_file, readings, says};
use super::{EFFORT, settle};
use eframe::egui::{self, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use lapwright::file::{
    Disk, Fault, Fingerprint, RealDisk, SAMPLE, SaveError, Templates, job_from_text, job_to_text, journal_of,
    photos_of, read_job, read_photo, save_job,
};
use lapwright::gui::App;
use lapwright::job::{Job, PhotoId};
use lapwright::work::{Clock, HandClock, Keeper, Shelf};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;
use tempfile::TempDir;

type Window = Harness<'static, App>;

/// A shop's computer: a folder of jobs and the user's own folder.
struct Computer {
    folder: TempDir,
}

impl Computer {
    fn new() -> Self {
        let computer = Self { folder: tempfile::tempdir().unwrap() };
        let sample = job_from_text("the sample", SAMPLE).unwrap();
        save_job(&RealDisk, &computer.file(), &sample.job).unwrap();
        computer
    }

    fn file(&self) -> PathBuf {
        self.folder.path().join("vehicle.job.ron")
    }

    fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    fn journal(&self) -> PathBuf {
        journal_of(&RealDisk, &self.file()).unwrap()
    }

    fn shelf(&self) -> Shelf {
        Shelf {
            disk: Arc::new(RealDisk),
            data: Some(self.data()),
            pause: Duration::from_millis(10),
            clock: Arc::new(HandClock::at(1_764_000_000)),
        }
    }

    /// Opens the file in a window.
    fn open(&self) -> Window {
        self.open_on(self.shelf())
    }

    fn open_on(&self, shelf: Shelf) -> Window {
        let file = self.file();
        let opened = Templates::default().open_job(&RealDisk, &file).unwrap();
        window(move || App::with_effort(opened.loaded, Some(file), EFFORT).keeping(shelf, opened.print, opened.newer))
    }

    /// Opens a window without a file.
    fn open_sample(&self) -> Window {
        let (sample, shelf) = (job_from_text("the sample", SAMPLE).unwrap(), self.shelf());
        window(move || App::with_effort(sample, None, EFFORT).keeping(shelf, None, None))
    }

    /// The computer as it is found after a power cut now: whatever is in its folders, and nobody who holds anything.
    fn after_power_cut(&self) -> Self {
        let next = Self { folder: tempfile::tempdir().unwrap() };
        copy(self.folder.path(), next.folder.path());
        next
    }

    fn kept(&self) -> Vec<PathBuf> {
        RealDisk.list(&self.data().join("kept")).unwrap_or_default()
    }
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let (path, name) = entry.map(|e| (e.path(), e.file_name())).unwrap();
        if path.is_dir() {
            copy(&path, &to.join(name));
        } else {
            std::fs::copy(&path, to.join(name)).unwrap();
        }
    }
}

fn window(app: impl FnOnce() -> App + 'static) -> Window {
    let mut window = super::window_of([1280.0, 800.0], app);
    settle(&mut window);
    window
}

/// Reads a panel that was not read in the sample.
fn add_reading(window: &mut Window, value: &str) {
    choose(window, "Roof rail, right");
    window.input_mut().events.push(egui::Event::Text(value.to_owned()));
    window.run();
    window.key_press(Key::Enter);
    window.run();
    window.key_press(Key::Escape);
    window.run();
}

fn count(window: &Window) -> usize {
    readings(window, "roof-rail-right")
}

fn press(window: &mut Window, name: &str) {
    window.get_by_role_and_label(Role::Button, name).click();
    window.run();
}

fn save(window: &mut Window) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
}

/// Waits until everything unsaved is on the disk.
fn rest(window: &mut Window) {
    for _ in 0..2_000 {
        window.step();
        if !window.state().is_keeping() {
            return;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    panic!("the journal is not written in ten seconds");
}

fn asks(window: &Window, head: &str) -> bool {
    window.query_by_label(head).is_some()
}

fn mentions(window: &Window, part: &str) -> bool {
    window.query_all_by_label_contains(part).next().is_some()
}

const FOUND: &str = "Unsaved work was found";
const CHANGED: &str = "“vehicle.job.ron” was changed since this window read it";

#[test]
fn unsaved_work_is_offered_after_a_crash_and_taken_up_again() {
    let computer = Computer::new();
    let mut first = computer.open();
    assert!(!asks(&first, FOUND));
    add_reading(&mut first, "101");
    add_reading(&mut first, "102");
    rest(&mut first);
    let after = computer.after_power_cut();
    let mut second = after.open();
    assert!(asks(&second, FOUND));
    assert!(mentions(&second, "2 changes more than the file"), "it says how much");
    assert_eq!(count(&second), 0, "the file is as it was saved");
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 2);
    assert!(second.state().is_dirty(), "it is not in the file yet");
    assert!(after.journal().exists(), "it stays until it is saved");
    // A second crash before anything is saved costs nothing either.
    let again = after.after_power_cut();
    assert!(asks(&again.open(), FOUND));
    save(&mut second);
    rest(&mut second);
    assert!(!second.state().is_dirty() && !after.journal().exists());
    assert_eq!(**second.state().job(), *read_job(&RealDisk, &after.file()).unwrap().job);
    assert!(!asks(&after.after_power_cut().open(), FOUND));
}

#[test]
fn unsaved_work_that_is_left_stays_as_a_file_of_its_own() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    rest(&mut first);
    let unsaved = Arc::clone(first.state().job());
    let after = computer.after_power_cut();
    let mut second = after.open();
    // Escape is no answer: it stays, and is spoken of.
    second.key_press(Key::Escape);
    second.run();
    assert!(!asks(&second, FOUND) && mentions(&second, "Unsaved work from before is waiting"));
    assert!(after.journal().exists());
    press(&mut second, "Look at it");
    press(&mut second, "Leave it");
    assert!(!asks(&second, FOUND) && !mentions(&second, "is waiting"));
    assert!(mentions(&second, &after.kept()[0].display().to_string()), "it is said where it is");
    assert!(!after.journal().exists() && !second.state().is_dirty());
    let kept = after.kept();
    assert_eq!(kept.len(), 1, "{kept:?}");
    assert_eq!(*read_job(&RealDisk, &kept[0]).unwrap().job, *unsaved);
}

#[test]
fn what_was_never_saved_is_offered_by_the_next_window() {
    let computer = Computer::new();
    let mut first = computer.open_sample();
    add_reading(&mut first, "101");
    rest(&mut first);
    let mut second = computer.open_sample();
    assert!(!asks(&second, FOUND), "the window that works on it is still there");
    add_reading(&mut second, "105");
    rest(&mut second);
    let after = computer.after_power_cut();
    let mut third = after.open_sample();
    assert!(asks(&third, FOUND) && mentions(&third, "was never saved"));
    press(&mut third, "Leave it");
    assert!(asks(&third, FOUND), "there were two");
    press(&mut third, "Take it up again");
    assert!(!asks(&third, FOUND) && third.state().is_dirty());
    assert_eq!((count(&third), after.kept().len()), (1, 1));
}

#[test]
fn a_torn_journal_is_kept_and_the_state_before_it_counts() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    rest(&mut first);
    add_reading(&mut first, "102");
    rest(&mut first);
    let after = computer.after_power_cut();
    let whole = std::fs::read(after.journal()).unwrap();
    std::fs::write(after.journal(), &whole[..whole.len() / 2]).unwrap();
    let mut second = after.open();
    assert!(asks(&second, FOUND) && mentions(&second, "The last few seconds of it are damaged"));
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 1);
    assert_eq!(std::fs::read(&after.kept()[0]).unwrap(), whole[..whole.len() / 2]);

    // With nothing before it, all that can be done is to keep its bytes.
    let last = computer.after_power_cut();
    std::fs::write(last.journal(), &whole[..20]).unwrap();
    std::fs::remove_file(last.journal().with_file_name(".vehicle.job.ron.journal~")).unwrap();
    let mut third = last.open();
    assert!(asks(&third, "Unsaved work was found, but it is damaged"));
    assert!(third.query_by_label("Take it up again").is_none());
    press(&mut third, "Put it aside");
    assert_eq!(std::fs::read(&last.kept()[0]).unwrap(), whole[..20]);
    assert!(!last.journal().exists());
}

#[test]
fn what_is_given_up_on_purpose_leaves_no_journal() {
    let computer = Computer::new();
    let mut window = computer.open();
    add_reading(&mut window, "101");
    rest(&mut window);
    assert!(computer.journal().exists());
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    press(&mut window, "Don't save");
    assert!(!computer.journal().exists());
    // Taken back is as good as never done.
    let mut window = computer.open();
    add_reading(&mut window, "101");
    rest(&mut window);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    rest(&mut window);
    assert!(!window.state().is_dirty() && !computer.journal().exists());
}

#[test]
fn two_windows_on_one_file_do_not_overwrite_each_other() {
    let computer = Computer::new();
    let mut first = computer.open();
    let mut second = computer.open();
    assert!(!mentions(&first, "another window") && mentions(&second, "This job is open in another window"));
    add_reading(&mut first, "101");
    add_reading(&mut second, "102");
    save(&mut second);
    assert!(asks(&second, "It can't be saved under this name"));
    press(&mut second, "Try again");
    assert!(asks(&second, "That could not be done"), "the other window still has it");
    press(&mut second, "Close");
    save(&mut first);
    assert_eq!(**first.state().job(), *read_job(&RealDisk, &computer.file()).unwrap().job);
    // Once the first one is closed the second can go on, and hears of what was saved meanwhile.
    let saved = Arc::clone(first.state().job());
    drop(first);
    press(&mut second, "Work on it here");
    assert!(asks(&second, CHANGED));
    press(&mut second, "Go on with what is here");
    save(&mut second);
    assert!(asks(&second, CHANGED), "nothing is written over without a word");
    press(&mut second, "Write over it");
    rest(&mut second);
    assert_eq!(**second.state().job(), *read_job(&RealDisk, &computer.file()).unwrap().job);
    let before = read_job(&RealDisk, &computer.file().with_file_name("vehicle.job.ron~")).unwrap();
    assert_eq!(*before.job, *saved, "what was written over is kept");
    assert!(!mentions(&second, "another window"));
}

/// Puts another job into the file, as another program would.
fn change_file(computer: &Computer) -> Job {
    let job = read_job(&RealDisk, &computer.file()).unwrap().job;
    let changed = Job { name: "Changed elsewhere".to_owned(), ..(*job).clone() };
    std::fs::write(computer.file(), job_to_text(&changed).unwrap()).unwrap();
    changed
}

/// Goes to another window and comes back.
fn come_back(window: &mut Window) {
    for focused in [false, true] {
        window.input_mut().focused = focused;
        window.run();
    }
}

#[test]
fn a_file_that_somebody_changed_is_read_again_when_the_window_is_looked_at() {
    let computer = Computer::new();
    let mut window = computer.open();
    come_back(&mut window);
    assert!(!asks(&window, CHANGED), "nothing has changed");
    let changed = change_file(&computer);
    come_back(&mut window);
    assert!(asks(&window, CHANGED));
    press(&mut window, "Read it again");
    assert_eq!(**window.state().job(), changed);
    come_back(&mut window);
    assert!(!asks(&window, CHANGED));
    assert_eq!(computer.kept().len(), 0, "nothing was unsaved");
}

#[test]
fn a_changed_file_and_unsaved_work_both_survive() {
    let computer = Computer::new();
    let mut window = computer.open();
    add_reading(&mut window, "101");
    let mine = Arc::clone(window.state().job());
    let changed = change_file(&computer);
    save(&mut window);
    assert!(asks(&window, CHANGED));
    assert_eq!(*read_job(&RealDisk, &computer.file()).unwrap().job, changed, "not written over");
    press(&mut window, "Cancel");
    come_back(&mut window);
    press(&mut window, "Read it again");
    assert_eq!(**window.state().job(), changed);
    assert_eq!(*read_job(&RealDisk, &computer.kept()[0]).unwrap().job, *mine);
    rest(&mut window);
    assert!(!computer.journal().exists() && !window.state().is_dirty());
}

#[test]
fn a_file_of_a_newer_version_is_shown_and_never_written_over() {
    let computer = Computer::new();
    let newer = std::fs::read_to_string(computer.file()).unwrap().replace("\"job/1\"", "\"job/2\"");
    std::fs::write(computer.file(), &newer).unwrap();
    let mut window = computer.open();
    assert!(mentions(&window, "A newer version of the program wrote this file (format job/2)"));
    add_reading(&mut window, "101");
    save(&mut window);
    assert!(asks(&window, "It can't be saved under this name"));
    assert_eq!(std::fs::read_to_string(computer.file()).unwrap(), newer);
    // Not under its own name by another way either.
    let error = save_job(&RealDisk, &computer.file(), window.state().job()).unwrap_err();
    assert!(error.to_string().contains("job/2") && error.hint().contains("another name"), "{error}");
    assert_eq!(std::fs::read_to_string(computer.file()).unwrap(), newer);
}

#[test]
fn a_file_that_is_marked_as_not_to_be_written_says_so_beforehand() {
    let computer = Computer::new();
    let mut permissions = std::fs::metadata(computer.file()).unwrap().permissions();
    permissions.set_readonly(true);
    std::fs::set_permissions(computer.file(), permissions).unwrap();
    let before = std::fs::read(computer.file()).unwrap();
    let mut window = computer.open();
    assert!(mentions(&window, "The file of this job is read-only"));
    add_reading(&mut window, "101");
    save(&mut window);
    assert!(asks(&window, "It can't be saved under this name"));
    assert_eq!(std::fs::read(computer.file()).unwrap(), before);
}

#[test]
fn a_full_disk_is_told_while_one_works_and_saving_says_what_to_do() {
    let computer = Computer::new();
    // The lock and the search for a journal still go through.
    let disk = Arc::new(Fault::at(8, true));
    let mut window = computer.open_on(Shelf { disk, ..computer.shelf() });
    add_reading(&mut window, "101");
    for _ in 0..200 {
        window.step();
        if mentions(&window, "could not be kept beside the job") {
            break;
        }
        std::thread::sleep(Duration::from_millis(10));
    }
    assert!(mentions(&window, "no space left on device") && mentions(&window, "free some space"));
    save(&mut window);
    assert!(mentions(&window, "no space left on device") && window.state().is_dirty());
    assert!(read_job(&RealDisk, &computer.file()).is_ok());
}

/// A clock that makes the program fail in the middle of a picture, once it is told to.
#[derive(Debug, Default)]
struct BrokenClock(AtomicBool);

impl Clock for BrokenClock {
    fn now_s(&self) -> i64 {
        assert!(!self.0.load(Ordering::SeqCst), "the clock is broken");
        1_764_000_000
    }
}

#[test]
fn a_mistake_of_the_program_costs_nothing_that_is_unsaved() {
    let computer = Computer::new();
    let clock = Arc::new(BrokenClock::default());
    // Nothing would be written by itself within this test.
    let shelf = Shelf { pause: Duration::from_hours(1), ..computer.shelf() };
    let mut window = computer.open_on(shelf);
    add_reading(&mut window, "101");
    rest(&mut window);
    let broken = Arc::clone(&clock);
    let file = computer.file();
    let opened = Templates::default().open_job(&RealDisk, &file).unwrap();
    drop(window); // the journal stays: it was never saved
    let print = Fingerprint::read(&RealDisk, &file).unwrap();
    let shelf = Shelf { pause: Duration::from_hours(1), ..computer.shelf() };
    let mut window = self::window(move || {
        App::with_effort(opened.loaded, Some(file), EFFORT).with_clock(broken).keeping(shelf, print, None)
    });
    press(&mut window, "Take it up again");
    add_reading(&mut window, "102");
    add_reading(&mut window, "103");
    clock.0.store(true, Ordering::SeqCst);
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with("Bay"))).click();
    let steps = || (0..4).for_each(|_| window.step());
    catch_unwind(AssertUnwindSafe(steps)).unwrap_err();
    clock.0.store(false, Ordering::SeqCst);
    drop(window);
    let mut next = computer.open();
    assert!(mentions(&next, "3 changes more than the file"));
    press(&mut next, "Take it up again");
    assert_eq!(count(&next), 3);
    assert!(!says(&next, FOUND));
}

#[test]
fn what_is_changed_while_the_offer_waits_is_kept_when_it_is_taken_up() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    add_reading(&mut first, "102");
    rest(&mut first);
    let after = computer.after_power_cut();
    let mut second = after.open();
    second.key_press(Key::Escape);
    second.run();
    add_reading(&mut second, "88");
    let meanwhile = Arc::clone(second.state().job());
    press(&mut second, "Look at it");
    assert!(mentions(&second, "There are changes in this window too"));
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 2);
    let kept = after.kept();
    assert_eq!(kept.len(), 1, "{kept:?}");
    assert_eq!(*read_job(&RealDisk, &kept[0]).unwrap().job, *meanwhile);
}

#[test]
fn a_second_window_that_takes_up_the_work_of_the_first_loses_neither() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    add_reading(&mut first, "102");
    rest(&mut first);
    let mut second = computer.open();
    add_reading(&mut second, "88");
    rest(&mut second);
    let mine = Arc::clone(second.state().job());
    drop(first);
    press(&mut second, "Work on it here");
    assert!(asks(&second, FOUND));
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 2);
    assert_eq!(*read_job(&RealDisk, &computer.kept()[0]).unwrap().job, *mine);
    add_reading(&mut second, "130");
    rest(&mut second);
    save(&mut second);
    rest(&mut second);
    assert_eq!(**second.state().job(), *read_job(&RealDisk, &computer.file()).unwrap().job);
    assert!(!computer.journal().exists(), "nothing older is offered later");
    drop(second);
    assert!(!asks(&computer.open(), FOUND) && !asks(&computer.open_sample(), FOUND));
}

#[test]
fn unsaved_work_of_a_protected_file_is_offered_with_that_file() {
    let computer = Computer::new();
    let mut rights = std::fs::metadata(computer.file()).unwrap().permissions();
    rights.set_readonly(true);
    std::fs::set_permissions(computer.file(), rights).unwrap();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    rest(&mut first);
    drop(first);
    let mut second = computer.open();
    assert!(asks(&second, FOUND));
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 1);
}

#[test]
fn work_taken_up_over_a_file_that_changed_since_is_not_saved_over_it_unasked() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    rest(&mut first);
    let after = computer.after_power_cut();
    let changed = change_file(&after);
    let mut second = after.open();
    assert!(mentions(&second, "The file has been changed since that work was begun"));
    press(&mut second, "Take it up again");
    save(&mut second);
    assert!(asks(&second, CHANGED));
    assert_eq!(*read_job(&RealDisk, &after.file()).unwrap().job, changed, "not written over");
    press(&mut second, "Write over it");
    assert!(!second.state().is_dirty());
    assert_eq!(*read_job(&RealDisk, &after.file()).unwrap().job, **second.state().job());
    save(&mut second);
    assert!(!asks(&second, CHANGED), "asked once");
}

/// Types a name for the file; there is no dialog here.
fn save_as(window: &mut Window, name: &str) {
    window.key_press_modifiers(Modifiers::COMMAND.plus(Modifiers::SHIFT), Key::S);
    window.run();
    for _ in 0..400 {
        window.step();
        if mentions(window, "Path of the file") {
            break;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    window.input_mut().events.push(egui::Event::Text(name.to_owned()));
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

#[test]
fn a_typed_name_replaces_another_file_only_when_somebody_says_so() {
    let computer = Computer::new();
    let other = computer.folder.path().join("letter.txt");
    std::fs::write(&other, "dear customer").unwrap();
    let mut window = computer.open();
    add_reading(&mut window, "101");
    save_as(&mut window, &other.display().to_string());
    assert!(mentions(&window, "is there already"));
    assert_eq!(std::fs::read_to_string(&other).unwrap(), "dear customer");
    press(&mut window, "Cancel");
    assert!(window.state().is_dirty());
    save_as(&mut window, &other.display().to_string());
    press(&mut window, "Replace it");
    assert!(!window.state().is_dirty());
    assert_eq!(std::fs::read_to_string(other.with_file_name("letter.txt~")).unwrap(), "dear customer");
    // A name without an ending gets that of jobs.
    save_as(&mut window, &computer.folder.path().join("copy").display().to_string());
    assert!(computer.folder.path().join("copy.job.ron").is_file());
}

#[test]
fn the_own_file_under_another_spelling_is_the_own_file() {
    let computer = Computer::new();
    let mut window = computer.open();
    add_reading(&mut window, "101");
    rest(&mut window);
    let link = computer.folder.path().join("link.job.ron");
    #[cfg(unix)]
    std::os::unix::fs::symlink("vehicle.job.ron", &link).unwrap();
    #[cfg(not(unix))]
    std::fs::hard_link(computer.file(), &link).unwrap();
    save_as(&mut window, &link.display().to_string());
    press(&mut window, "Replace it");
    rest(&mut window);
    assert!(!window.state().is_dirty(), "no other window has it");
    assert_eq!(*read_job(&RealDisk, &computer.file()).unwrap().job, **window.state().job());
    assert!(!computer.journal().exists());
}

/// A picture that a defect gets in the window.
fn add_picture(computer: &Computer, window: &mut Window) -> PhotoId {
    let file = computer.folder.path().join("scratch.jpg");
    std::fs::write(&file, super::tagging::turned_jpeg()).unwrap();
    choose(window, "Rear door, left");
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("Deep scratch, "))).click();
    window.run();
    drop_file(window, &file);
    for _ in 0..400 {
        window.step();
        if let Some(photo) = photos_of(window.state().job()).into_iter().next() {
            return photo;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    panic!("no picture in two seconds");
}

#[test]
fn work_that_gives_way_to_work_found_is_kept_with_the_pictures_of_both() {
    let computer = Computer::new();
    let mut first = computer.open();
    let saved_photo = add_picture(&computer, &mut first);
    save(&mut first);
    rest(&mut first);
    add_reading(&mut first, "101");
    rest(&mut first);
    let after = computer.after_power_cut();
    let mut second = after.open();
    second.key_press(Key::Escape);
    second.run();
    add_reading(&mut second, "88");
    press(&mut second, "Look at it");
    press(&mut second, "Take it up again");
    let kept = after.kept().into_iter().find(|path| path.is_file()).unwrap();
    assert!(read_photo(&RealDisk, &kept, &saved_photo).is_ok(), "the kept file can show what the job shows");
}

#[test]
fn a_picture_that_was_never_saved_is_kept_with_the_work_that_gives_way() {
    let computer = Computer::new();
    let mut first = computer.open();
    add_reading(&mut first, "101");
    rest(&mut first);
    let after = computer.after_power_cut();
    let mut second = after.open();
    second.key_press(Key::Escape);
    second.run();
    let photo = add_picture(&after, &mut second);
    press(&mut second, "Look at it");
    press(&mut second, "Take it up again");
    assert_eq!(count(&second), 1);
    let kept = after.kept().into_iter().find(|path| path.is_file()).unwrap();
    assert!(photos_of(&read_job(&RealDisk, &kept).unwrap().job).contains(&photo));
    assert!(read_photo(&RealDisk, &kept, &photo).is_ok());
}

#[test]
fn the_picture_of_a_protected_file_comes_back_with_the_work() {
    let computer = Computer::new();
    let mut rights = std::fs::metadata(computer.file()).unwrap().permissions();
    rights.set_readonly(true);
    std::fs::set_permissions(computer.file(), rights).unwrap();
    let mut first = computer.open();
    let photo = add_picture(&computer, &mut first);
    rest(&mut first);
    drop(first);
    let mut second = computer.open();
    press(&mut second, "Take it up again");
    let copy = computer.folder.path().join("copy.job.ron");
    save_as(&mut second, &copy.display().to_string());
    assert!(read_photo(&RealDisk, &copy, &photo).is_ok());
}

#[test]
fn work_is_not_given_up_where_there_is_no_place_to_keep_it() {
    let computer = Computer::new();
    let shelf = Shelf { data: None, ..computer.shelf() };
    let keeper = Keeper::new(shelf, None, None, None);
    let job = job_from_text("the sample", SAMPLE).unwrap().job;
    assert!(matches!(keeper.keep_state(&job, &[]), Err(SaveError::NowhereToKeep)));
}

/// Somebody closes the window; says whether it went.
fn close(window: &mut Window) -> bool {
    let root = egui::ViewportId::ROOT;
    window.input_mut().viewports.entry(root).or_default().events.push(egui::ViewportEvent::Close);
    window.step();
    let commands = &window.output().viewport_output[&root].commands;
    let stays = commands.contains(&egui::ViewportCommand::CancelClose);
    window.input_mut().viewports.entry(root).or_default().events.clear();
    window.run();
    !stays
}

#[test]
fn a_number_that_was_typed_and_not_entered_is_not_lost_unasked() {
    const TYPED: &str = "“134” was typed and not entered";
    let computer = Computer::new();
    let mut window = computer.open();
    assert!(close(&mut window), "nothing is typed and nothing unsaved");
    let mut window = computer.open();
    choose(&mut window, "Roof rail, right");
    window.input_mut().events.push(egui::Event::Text("134".to_owned()));
    window.run();
    assert!(!close(&mut window));
    assert!(asks(&window, TYPED));
    press(&mut window, "Enter it");
    assert_eq!(count(&window), 1);
    assert!(!asks(&window, TYPED) && mentions(&window, "first?"), "now it is unsaved");
}

#[test]
fn a_list_of_readings_that_is_opened_is_shown_as_one() {
    let computer = Computer::new();
    let list = computer.folder.path().join("list.csv");
    std::fs::write(&list, "panel;reading;thickness_um\nroof-rail-right;1;120\n").unwrap();
    let mut window = computer.open();
    window.key_press_modifiers(Modifiers::COMMAND, Key::O);
    for _ in 0..400 {
        window.step();
        if mentions(&window, "Path of the file") {
            break;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    // What stands there first is the folder of the job, chosen whole.
    let folder = format!("{}{}", computer.folder.path().display(), std::path::MAIN_SEPARATOR);
    assert!(window.query_all_by_value(&folder).next().is_some());
    window.input_mut().events.push(egui::Event::Text(list.display().to_string()));
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert!(mentions(&window, "1 reading"));
    assert!(!mentions(&window, "That could not be done"));
}

#[test]
fn the_name_of_a_job_never_leads_the_suggested_file_to_another_folder() {
    let computer = Computer::new();
    let (sample, shelf) = (job_from_text("the sample", SAMPLE).unwrap(), computer.shelf());
    let named = Job { name: "/elsewhere/b:c".to_owned(), ..(*sample.job).clone() };
    let (loaded, file) = (lapwright::file::Loaded { job: Arc::new(named), ..sample }, computer.file());
    let mut window = window(move || App::with_effort(loaded, Some(file), EFFORT).keeping(shelf, None, None));
    window.key_press_modifiers(Modifiers::COMMAND.plus(Modifiers::SHIFT), Key::S);
    for _ in 0..400 {
        window.step();
        if mentions(&window, "Path of the file") {
            break;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    let suggested = computer.folder.path().join("-elsewhere-b-c.job.ron").display().to_string();
    assert!(window.query_all_by_value(&suggested).next().is_some());
}
