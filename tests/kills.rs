//! A program that saves and keeps its journal for ever, killed at random moments; and the same on a disk whose power is cut.
//!
//! The child is this test program itself, told by a variable of the environment where to work. It says on stdout what was
//! confirmed; whatever was, must be there afterwards.
#![cfg(unix)]
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stderr,
    reason = "helpers of tests; clippy only sees test functions as tests"
)]

mod support;

use lapwright::file::{
    JournalHead, RealDisk, Saved, job_from_text, journal_of, read_job, read_journal, remove_journal, save_job,
    write_journal,
};
use lapwright::job::Job;
use std::io::{BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, SystemTime, UNIX_EPOCH};
use support::sample;

const WHERE: &str = "LAPWRIGHT_TEST_KILL_FOLDER";

fn file(folder: &Path) -> PathBuf {
    folder.join("vehicle.job.ron")
}

/// Small, so that many saves fit into a short life.
fn small_job(number: u64) -> Job {
    let sample = sample().job;
    Job { name: format!("state {number}"), panels: std::collections::BTreeMap::new(), ..(*sample).clone() }
}

fn number_in(job: &Job) -> u64 {
    job.name.strip_prefix("state ").and_then(|n| n.parse().ok()).expect("a state that was saved")
}

/// What is there: the state in the file, and the unsaved one if there is one. Both whole, or this panics.
fn found(folder: &Path) -> (Option<u64>, Option<u64>) {
    let in_file = file(folder).exists().then(|| {
        let loaded = read_job(&RealDisk, &file(folder)).unwrap_or_else(|e| panic!("the file is whole: {e}"));
        number_in(&loaded.job)
    });
    let journal = journal_of(&RealDisk, &file(folder)).expect("no links here");
    let in_journal = read_journal(&RealDisk, &journal).expect("it can be read").map(|found| {
        let text = found.text.expect("the journal is whole");
        number_in(&job_from_text("the journal", &text).expect("the journal loads").job)
    });
    (in_file, in_journal)
}

fn is_unfinished_name(name: &str) -> bool {
    Path::new(name).extension().is_some_and(|e| e == "new" || e == "old")
}

/// Whether something was being written.
fn is_unfinished(folder: &Path) -> bool {
    let entries = std::fs::read_dir(folder).expect("the folder");
    entries.map(|e| e.expect("an entry").file_name()).any(|name| is_unfinished_name(&name.to_string_lossy()))
}

/// Saves, keeps a journal and gives up, until killed. Goes on where the one before was killed.
#[test]
#[ignore = "the child of the other tests"]
fn child() {
    let folder = PathBuf::from(std::env::var_os(WHERE).expect("it is told where to work"));
    let (in_file, in_journal) = found(&folder);
    let mut number = in_file.max(in_journal).unwrap_or(0);
    let (path, journal) = (file(&folder), journal_of(&RealDisk, &file(&folder)).expect("no links here"));
    let mut say = std::io::stdout();
    writeln!(say, "begun").expect("somebody listens");
    say.flush().expect("somebody listens");
    loop {
        for round in 0..4 {
            number += 1;
            let job = small_job(number);
            let confirmed = if round < 3 {
                let head = JournalHead::new(&job, Some(&path), None, 1_764_000_000, round + 1);
                write_journal(&RealDisk, &journal, &head, &job).expect("there is room")
            } else {
                save_job(&RealDisk, &path, &job).expect("there is room")
            };
            assert_eq!(confirmed, Saved::Confirmed);
            writeln!(say, "confirmed {number}").expect("somebody listens");
            say.flush().expect("somebody listens");
        }
        remove_journal(&RealDisk, &journal).expect("it can go");
    }
}

fn start(folder: &Path) -> Child {
    Command::new(std::env::current_exe().expect("a program"))
        .args(["--exact", "child", "--ignored", "--nocapture", "--quiet"])
        .env(WHERE, folder)
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("it starts")
}

/// The last state that a child said was confirmed.
fn last_confirmed(said: &str) -> Option<u64> {
    // The last line may be cut off.
    let whole = said.rsplit_once('\n').map_or("", |(whole, _)| whole);
    whole.lines().rev().find_map(|line| line.strip_prefix("confirmed ")?.parse().ok())
}

/// Pseudo-random moments, another row every time.
struct Moments(u64);

impl Moments {
    fn new() -> Self {
        let now = SystemTime::now().duration_since(UNIX_EPOCH).map_or(1, |d| d.as_nanos() as u64);
        Self(now | 1)
    }

    /// Xorshift (Marsaglia 2003).
    fn next(&mut self, most: Duration) -> Duration {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        most.mul_f64((self.0 >> 11) as f64 / (1_u64 << 53) as f64)
    }
}

fn kill_again_and_again(kills: u32) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut moments = Moments::new();
    let (mut newest, mut hit, mut confirmed) = (0, 0, 0_u64);
    for _ in 0..kills {
        let mut child = start(folder.path());
        // It says when it begins; the kill comes at any moment after.
        let mut out = BufReader::new(child.stdout.take().expect("piped"));
        let mut line = String::new();
        while line.trim() != "begun" {
            line.clear();
            assert!(out.read_line(&mut line).expect("readable") > 0, "it begins");
        }
        std::thread::sleep(moments.next(Duration::from_millis(60)));
        child.kill().expect("it runs"); // SIGKILL
        child.wait().expect("it ends");
        let mut said = String::new();
        out.read_to_string(&mut said).expect("text");
        if let Some(last) = last_confirmed(&said) {
            confirmed += last.saturating_sub(newest);
            newest = newest.max(last);
        }
        let (in_file, in_journal) = found(folder.path());
        let best = in_file.max(in_journal).unwrap_or(0);
        assert!(best >= newest, "{newest} was confirmed, {in_file:?} and {in_journal:?} are there");
        newest = best;
        hit += usize::from(is_unfinished(folder.path()));
        for entry in std::fs::read_dir(folder.path()).expect("the folder").map(|e| e.expect("an entry")) {
            let name = entry.file_name().to_string_lossy().into_owned();
            if is_unfinished_name(&name) {
                std::fs::remove_file(entry.path()).expect("ours"); // of a process that is gone
            }
        }
    }
    eprintln!("{kills} kills, {hit} in the middle of a write, {confirmed} states confirmed, none lost");
    assert!(hit * 20 > kills as usize, "kills come while it writes: {hit} of {kills}");
}

#[test]
fn two_hundred_kills_lose_nothing() {
    kill_again_and_again(200);
}

#[test]
#[ignore = "a quarter of an hour: cargo test --test kills -- --ignored ten_thousand --nocapture"]
fn ten_thousand_kills_lose_nothing() {
    kill_again_and_again(10_000);
}

fn run(program: &str, words: &[&str]) {
    let done = Command::new(program).args(words).status().unwrap_or_else(|e| panic!("{program}: {e}"));
    assert!(done.success(), "{program} {words:?}: {done}");
}

fn text(path: &Path) -> &str {
    path.to_str().expect("plain names")
}

/// A file system in a file, mounted until this is dropped.
struct Mounted(PathBuf);

impl Mounted {
    fn new(image: &Path, folder: &Path, options: &str) -> Self {
        std::fs::create_dir_all(folder).expect("a folder");
        run("mount", &["-o", options, text(image), text(folder)]);
        Self(folder.to_owned())
    }
}

impl Drop for Mounted {
    fn drop(&mut self) {
        run("umount", &[text(&self.0)]);
    }
}

/// Copies of a file system while it is written to, each mounted as after a power cut: only what reached the disk is in them.
#[test]
#[ignore = "needs root and loop devices: .ci/power-cuts"]
fn two_hundred_power_cuts_lose_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let image = folder.path().join("disk.img");
    std::fs::File::create(&image).expect("a file").set_len(24 << 20).expect("room");
    run("mkfs.ext4", &["-q", "-F", text(&image)]);
    // Without what ext4 does of itself for programs that forget to sync.
    let mounted = Mounted::new(&image, &folder.path().join("shop"), "loop,noauto_da_alloc");
    let mut moments = Moments::new();
    let (mut cuts, mut newest, mut in_journals, mut hit) = (0, 0, 0, 0);
    while cuts < 200 {
        let log = folder.path().join("said");
        let said = std::fs::File::create(&log).expect("a file");
        let mut child = Command::new(std::env::current_exe().expect("a program"))
            .args(["--exact", "child", "--ignored", "--nocapture", "--quiet"])
            .env(WHERE, &mounted.0)
            .stdout(said)
            .stderr(Stdio::null())
            .spawn()
            .expect("it starts");
        let pid = child.id().to_string();
        for _ in 0..20 {
            std::thread::sleep(Duration::from_millis(15) + moments.next(Duration::from_millis(60)));
            run("kill", &["-STOP", &pid]);
            // What was confirmed before the power goes; only then the copy is made.
            newest = newest.max(last_confirmed(&std::fs::read_to_string(&log).expect("readable")).unwrap_or(0));
            let copy = folder.path().join("copy.img");
            run("cp", &["--sparse=always", text(&image), text(&copy)]);
            run("kill", &["-CONT", &pid]);
            let after = Mounted::new(&copy, &folder.path().join("after"), "loop");
            let (in_file, in_journal) = found(&after.0);
            let best = in_file.max(in_journal).unwrap_or(0);
            assert!(best >= newest, "cut {cuts}: {newest} was confirmed, {in_file:?} and {in_journal:?} are there");
            in_journals += usize::from(in_journal > in_file);
            hit += usize::from(is_unfinished(&after.0));
            drop(after);
            cuts += 1;
        }
        child.kill().expect("it runs");
        child.wait().expect("it ends");
    }
    eprintln!(
        "{cuts} power cuts, {newest} states confirmed, {in_journals} times the newest was in the journal, {hit} in the middle of a write, none lost"
    );
    assert!(newest > 200 && in_journals > 20 && hit > 5, "{newest}, {in_journals}, {hit}");
}
