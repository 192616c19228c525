//! A folder of 10,000 jobs: listed for the first time, listed again, and searched.
//!
//! `cargo bench --bench jobs` writes the jobs into a folder of its own, prints the table that stands in DEVELOPERS.md, and takes
//! the folder away again. `JOBS=1000` makes fewer. Times are the median of several runs. Jobs that somebody wrote into by hand (here a
//! comment at their end) are read by the full reader; listed first and by turns, they show what the quick one saves.

#![expect(clippy::print_stdout, clippy::unwrap_used, reason = "a tool for contributors; a wrong folder may end it")]

use lapwright::file::{FolderOfJobs, Listing, RealDisk, SAMPLE, history_of, job_from_text, job_to_text, matching};
use lapwright::units::Date;
use std::path::Path;
use std::time::{Duration, Instant};

const FIRST_TIMES: usize = 5;

/// Jobs of some hundred vehicles over ten years, spread over folders by year; each has the readings and defects of the sample, and
/// `end` behind its text.
fn write_jobs(folder: &Path, count: usize, end: &str) -> u64 {
    let sample = job_from_text("the sample", SAMPLE).unwrap();
    let mut bytes = 0;
    for at in 0..count {
        let mut job = (*sample.job).clone();
        job.name = format!("Visit {at}");
        job.vehicle.plate = format!("{} {}", ["QX", "RM", "ZV", "KO"][at % 4], at % 2_500);
        job.customer.name =
            format!("{} {}", ["Ada", "Bo", "Cleo", "Dan", "Eve"][at % 5], ["Winter", "Larsen", "Okoro"][at % 3]);
        let (year, month, day) = (2016 + (at % 10) as i16, 1 + (at / 10 % 12) as i8, 1 + (at % 28) as i8);
        job.date = Date::of(year, month, day);
        let text = job_to_text(&job).unwrap() + end;
        let year = folder.join(year.to_string());
        std::fs::create_dir_all(&year).unwrap();
        std::fs::write(year.join(format!("visit-{at}.job.ron")), &text).unwrap();
        bytes += text.len() as u64;
    }
    bytes
}

fn list(folder: &FolderOfJobs) -> (Listing, Duration) {
    let begin = Instant::now();
    let listing = folder.list(&RealDisk, &mut |_| true).unwrap();
    (listing, begin.elapsed())
}

fn median(mut times: Vec<Duration>) -> f64 {
    times.sort();
    times[times.len() / 2].as_secs_f64() * 1e3
}

fn main() {
    let count: usize = std::env::var("JOBS").ok().and_then(|n| n.parse().ok()).unwrap_or(10_000);
    let place = tempfile::tempdir().unwrap();
    let bytes = write_jobs(&place.path().join("jobs"), count, "");
    write_jobs(&place.path().join("by-hand"), count, "// by hand\n");
    let folder = FolderOfJobs::new(place.path().join("jobs"), Some(place.path().join("cache")));
    println!("{count} jobs, {:.0} MB, {:.1} kB each", bytes as f64 / 1e6, bytes as f64 / 1e3 / count as f64);
    println!("| what | ms | read |");
    println!("| --- | --- | --- |");
    let (mut quick, mut full) = (Vec::new(), Vec::new());
    for run in 0..FIRST_TIMES {
        for (name, times) in [("jobs", &mut quick), ("by-hand", &mut full)] {
            // With an index that is not there yet every file is read.
            let cache = place.path().join(format!("cache-{run}"));
            let (listing, took) = list(&FolderOfJobs::new(place.path().join(name), Some(cache)));
            assert_eq!((listing.jobs.len(), listing.read), (count, count));
            times.push(took);
        }
    }
    println!("| listed for the first time | {:.0} | {count} |", median(quick));
    println!("| the same, each written into by hand | {:.0} | {count} |", median(full));
    let (listing, _) = list(&folder);
    let mut runs = Vec::new();
    for _ in 0..9 {
        let (again, took) = list(&folder);
        assert_eq!((again.jobs.len(), again.read), (count, 0));
        runs.push(took);
    }
    println!("| listed again | {:.0} | 0 |", median(runs));
    // One job is saved again.
    let changed = place.path().join("jobs").join("2016").join("visit-0.job.ron");
    let text = std::fs::read_to_string(&changed).unwrap();
    std::fs::write(&changed, format!("{text}\n")).unwrap();
    let (again, took) = list(&folder);
    assert_eq!(again.read, 1);
    println!("| listed after one was saved | {:.0} | {} |", took.as_secs_f64() * 1e3, again.read);
    for question in ["", "w", "winter", "qx 124", "2021 larsen defects", "nobody is called so"] {
        let times = (0..21).map(|_| {
            let begin = Instant::now();
            let found = std::hint::black_box(matching(&listing.jobs, question));
            (begin.elapsed(), found.len())
        });
        let (times, found): (Vec<Duration>, Vec<usize>) = times.unzip();
        println!("| search for \u{201c}{question}\u{201d}, {} found | {:.2} | |", found[0], median(times));
    }
    let times = (0..21).map(|_| {
        let begin = Instant::now();
        std::hint::black_box(history_of(&listing.jobs, "qx124"));
        begin.elapsed()
    });
    println!("| visits of one vehicle | {:.2} | |", median(times.collect()));
}
