//! Saving: whatever the disk refuses, the old or the new job is there, whole, and the next save works.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{About, Disk, Fault, Lock, RealDisk, Saved, job_to_text, read_job, save_job};
use lapwright::job::Job;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, LazyLock, Mutex};
use support::sample;
use tempfile::TempDir;

/// The job that is on the disk before, and the one that is saved over it, with their texts.
struct Jobs {
    old: Arc<Job>,
    old_text: String,
    new: Arc<Job>,
    new_text: String,
}

static JOBS: LazyLock<Jobs> = LazyLock::new(|| {
    let old = sample().job;
    let new = Arc::new(Job { name: "changed".to_owned(), ..(*old).clone() });
    let text = |job: &Job| job_to_text(job).expect("it can be written");
    Jobs { old_text: text(&old), new_text: text(&new), old, new }
});

fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder")
}

/// A folder with the old job in it, saved twice so that there is a previous version too.
fn with_old_job() -> (TempDir, PathBuf) {
    let folder = folder();
    let path = folder.path().join("vehicle.job.ron");
    for _ in 0..2 {
        assert_eq!(save_job(&RealDisk, &path, &JOBS.old).expect("a sound disk"), Saved::Confirmed);
    }
    (folder, path)
}

fn names(folder: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(folder).expect("the folder is there");
    entries.map(|e| e.expect("an entry").file_name().to_string_lossy().into_owned()).collect()
}

fn previous(path: &Path) -> PathBuf {
    path.with_file_name(format!("{}~", path.file_name().expect("a name").to_string_lossy()))
}

/// Saves with the disk failing at each operation in turn until none is left to fail, and looks at what is there afterwards.
/// Gives the number of operations.
fn fail_everywhere(stays_broken: bool, start: impl Fn() -> (TempDir, PathBuf), old: Option<&str>) -> usize {
    for nth in 0.. {
        assert!(nth < 50, "saving ends");
        let (folder, path) = start();
        let disk = Fault::at(nth, stays_broken);
        let result = save_job(&disk, &path, &JOBS.new);
        if !disk.struck() {
            assert_eq!(result.expect("nothing failed"), Saved::Confirmed);
            return nth;
        }
        let now = fs::read_to_string(&path).ok();
        match result {
            Ok(saved) => {
                assert_eq!(saved, Saved::NotConfirmed, "operation {nth}: only the last one may fail so lightly");
                assert_eq!(now.as_deref(), Some(&*JOBS.new_text), "operation {nth}");
            }
            Err(error) => {
                assert_eq!(now.as_deref(), old, "operation {nth}: the old file is as it was");
                let (text, hint) = (error.to_string(), error.hint());
                assert!(text.contains("vehicle.job.ron") && text.contains("no space left"), "{text}");
                assert!(hint.contains("the file is as it was") && hint.contains("save under another name"), "{hint}");
            }
        }
        if now.is_some() {
            read_job(&RealDisk, &path).expect("what is there can be read");
        }
        if !stays_broken {
            let stray: Vec<_> = names(folder.path()).into_iter().filter(|n| n.starts_with('.')).collect();
            assert_eq!(stray, Vec::<String>::new(), "operation {nth}: a failure that passes leaves nothing behind");
        }
        // The disk is well again: the next save works and clears up.
        assert_eq!(save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk"), Saved::Confirmed, "operation {nth}");
        assert_eq!(fs::read_to_string(&path).expect("saved"), JOBS.new_text);
        let left: BTreeSet<_> = names(folder.path()).into_iter().filter(|n| n != "vehicle.job.ron~").collect();
        assert_eq!(left, BTreeSet::from(["vehicle.job.ron".to_owned()]), "operation {nth}");
    }
    unreachable!()
}

#[test]
fn a_save_over_a_file_survives_one_failure_anywhere() {
    assert!(fail_everywhere(false, with_old_job, Some(&JOBS.old_text)) >= 5);
}

#[test]
fn a_save_over_a_file_survives_a_disk_that_stays_broken() {
    assert!(fail_everywhere(true, with_old_job, Some(&JOBS.old_text)) >= 5);
}

fn new_file() -> (TempDir, PathBuf) {
    let folder = folder();
    let path = folder.path().join("vehicle.job.ron");
    (folder, path)
}

#[test]
fn a_save_to_a_new_name_survives_one_failure_anywhere() {
    assert!(fail_everywhere(false, new_file, None) >= 3);
}

#[test]
fn a_save_to_a_new_name_survives_a_disk_that_stays_broken() {
    assert!(fail_everywhere(true, new_file, None) >= 3);
}

#[test]
fn reading_from_a_broken_disk_is_an_error_with_a_hint() {
    let (_folder, path) = with_old_job();
    let error = read_job(&Fault::at(0, true), &path).expect_err("it can't be read");
    assert!(error.to_string().contains("cannot read"), "{error}");
    assert!(!error.hint().is_empty());
}

#[test]
fn the_version_before_is_kept_under_a_name_with_a_tilde() {
    let (folder, path) = with_old_job();
    save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk");
    assert_eq!(fs::read_to_string(previous(&path)).expect("kept"), JOBS.old_text);
    assert_eq!(*read_job(&RealDisk, &previous(&path)).expect("it can be opened").job, *JOBS.old);
    assert_eq!(names(folder.path()).len(), 2);
    let changed_again = Job { name: "again".to_owned(), ..(*JOBS.new).clone() };
    save_job(&RealDisk, &path, &changed_again).expect("a sound disk");
    assert_eq!(fs::read_to_string(previous(&path)).expect("kept"), JOBS.new_text, "one generation, the last");
}

#[test]
fn a_new_file_has_no_version_before() {
    let (folder, path) = new_file();
    save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk");
    assert_eq!(names(folder.path()), BTreeSet::from(["vehicle.job.ron".to_owned()]));
}

/// A save that failed at its last step leaves the file and its previous version as two names of one file; renaming one name of
/// a file over another does nothing at all (POSIX, rename).
#[test]
fn two_names_of_one_file_do_not_leave_a_third_behind() {
    let (folder, path) = with_old_job();
    fs::remove_file(previous(&path)).expect("it was there");
    fs::hard_link(&path, previous(&path)).expect("hard links work here");
    save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk");
    assert_eq!(names(folder.path()), BTreeSet::from(["vehicle.job.ron".to_owned(), "vehicle.job.ron~".to_owned()]));
    assert_eq!(fs::read_to_string(previous(&path)).expect("kept"), JOBS.old_text);
}

#[test]
fn a_folder_that_is_missing_is_an_error_and_leaves_nothing() {
    let (folder, _) = new_file();
    let error = save_job(&RealDisk, &folder.path().join("missing/vehicle.job.ron"), &JOBS.new).expect_err("no folder");
    assert!(error.to_string().contains("writing the new file"), "{error}");
    assert!(names(folder.path()).is_empty());
}

#[test]
fn a_folder_of_that_name_is_not_replaced() {
    let (folder, path) = new_file();
    fs::create_dir(&path).expect("a folder");
    save_job(&RealDisk, &path, &JOBS.new).expect_err("a folder is in the way");
    assert!(path.is_dir());
    assert_eq!(names(folder.path()), BTreeSet::from(["vehicle.job.ron".to_owned()]));
}

#[test]
fn a_job_that_would_not_read_back_is_not_written() {
    let (_folder, path) = with_old_job();
    let nobody = Job { crew: Vec::new(), ..(*JOBS.old).clone() };
    let error = save_job(&RealDisk, &path, &nobody).expect_err("nobody applies");
    assert!(error.hint().contains("nothing was written"), "{}", error.hint());
    assert_eq!(fs::read_to_string(&path).expect("untouched"), JOBS.old_text);
}

#[test]
fn a_name_that_is_only_a_name_is_saved_in_the_folder_one_is_in() {
    #[derive(Debug, Default)]
    struct Looks(Mutex<Vec<PathBuf>>);
    impl Looks {
        fn note(&self, path: &Path) {
            self.0.lock().expect("one thread").push(path.to_owned());
        }
    }
    impl Disk for Looks {
        fn read(&self, _: &Path, _: u64) -> std::io::Result<Vec<u8>> {
            Err(std::io::ErrorKind::NotFound.into())
        }
        fn about(&self, _: &Path) -> std::io::Result<Option<About>> {
            Ok(None)
        }
        fn target(&self, _: &Path) -> std::io::Result<Option<PathBuf>> {
            Ok(None)
        }
        fn list(&self, _: &Path) -> std::io::Result<Vec<PathBuf>> {
            Ok(Vec::new())
        }
        fn make_folder(&self, _: &Path) -> std::io::Result<()> {
            Ok(())
        }
        fn lock(&self, _: &Path, _: &str) -> std::io::Result<Option<Lock>> {
            Ok(None)
        }
        fn write_new(&self, path: &Path, _: &[u8], _: &Path) -> std::io::Result<()> {
            self.note(path);
            Ok(())
        }
        fn append(&self, _: &Path, _: &[u8]) -> std::io::Result<()> {
            Ok(())
        }
        fn link(&self, _: &Path, _: &Path) -> std::io::Result<()> {
            Err(std::io::ErrorKind::NotFound.into())
        }
        fn rename(&self, _: &Path, to: &Path) -> std::io::Result<()> {
            self.note(to);
            Ok(())
        }
        fn remove(&self, _: &Path) -> std::io::Result<()> {
            Ok(())
        }
        fn sync_folder(&self, folder: &Path) -> std::io::Result<()> {
            self.note(folder);
            Ok(())
        }
    }
    let disk = Looks::default();
    save_job(&disk, Path::new("just-a-name.job.ron"), &JOBS.new).expect("all is well");
    let seen = disk.0.into_inner().expect("one thread");
    assert!(seen[0].to_string_lossy().starts_with(".just-a-name.job.ron."), "{seen:?}");
    assert_eq!(seen[1..], [PathBuf::from("just-a-name.job.ron"), PathBuf::from(".")]);
}

#[cfg(unix)]
mod unix {
    use super::*;
    use std::os::unix::fs::{PermissionsExt, symlink};

    #[test]
    fn permissions_are_kept_through_a_save() {
        for mode in [0o600, 0o640, 0o664] {
            let (_folder, path) = with_old_job();
            fs::set_permissions(&path, fs::Permissions::from_mode(mode)).expect("own file");
            save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk");
            for file in [&path, &previous(&path)] {
                let now = fs::metadata(file).expect("it is there").permissions().mode() & 0o777;
                assert_eq!(now, mode, "{}: {now:o}", file.display());
            }
        }
    }

    #[test]
    fn a_symbolic_link_stays_one_and_its_file_is_replaced() {
        let (folder, path) = with_old_job();
        let link = folder.path().join("link.job.ron");
        symlink("vehicle.job.ron", &link).expect("links work here");
        save_job(&RealDisk, &link, &JOBS.new).expect("a sound disk");
        assert!(link.symlink_metadata().expect("it is there").is_symlink());
        assert_eq!(fs::read_to_string(&path).expect("saved"), JOBS.new_text);
        assert_eq!(fs::read_to_string(previous(&path)).expect("kept"), JOBS.old_text);
    }

    #[test]
    fn a_symbolic_link_to_a_file_that_is_not_there_yet_makes_that_file() {
        let (folder, path) = new_file();
        let (first, second) = (folder.path().join("first"), folder.path().join("second"));
        symlink("second", &first).expect("links work here");
        symlink(&path, &second).expect("links work here");
        save_job(&RealDisk, &first, &JOBS.new).expect("a sound disk");
        assert!(first.symlink_metadata().expect("it is there").is_symlink());
        assert_eq!(fs::read_to_string(&path).expect("saved"), JOBS.new_text);
    }

    #[test]
    fn a_circle_of_symbolic_links_does_not_keep_the_job_from_being_saved() {
        let (folder, path) = new_file();
        symlink(folder.path().join("other"), &path).expect("links work here");
        symlink(&path, folder.path().join("other")).expect("links work here");
        save_job(&RealDisk, &path, &JOBS.new).expect("a sound disk");
        assert_eq!(fs::read_to_string(&path).expect("saved"), JOBS.new_text);
    }
}
