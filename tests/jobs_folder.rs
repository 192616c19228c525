//! A folder of jobs: what is listed, what is read again, what is found; and the small files that the program keeps for itself.
#![expect(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::file::{
    Fault, FolderOfJobs, Kept, Listing, ReadError, RealDisk, SAMPLE, history_of, job_findings, job_from_text,
    job_to_text, keep, kept, matching,
};
use lapwright::units::Date;
use std::path::Path;

fn write(folder: &Path, file: &str, plate: &str, owner: &str, date: Option<&str>) {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    job.name = format!("Job {file}");
    plate.clone_into(&mut job.vehicle.plate);
    owner.clone_into(&mut job.customer.name);
    job.date = date.map(|d| Date::parse(d).unwrap());
    let path = folder.join(file);
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    std::fs::write(path, job_to_text(&job).unwrap()).unwrap();
}

fn list(folder: &FolderOfJobs) -> Listing {
    folder.list(&RealDisk, &mut |_| true).unwrap()
}

fn files(listing: &Listing) -> Vec<&str> {
    listing.jobs.iter().map(|job| job.file.as_str()).collect()
}

#[test]
fn every_job_is_listed_newest_first_and_read_only_once() {
    let place = tempfile::tempdir().unwrap();
    let jobs = place.path().join("jobs");
    write(&jobs, "a.job.ron", "QX 1", "Ada", Some("2025-01-02"));
    write(&jobs, "2024/b.job.ron", "QX 2", "Bo", Some("2026-01-02"));
    write(&jobs, "c.job.ron", "QX 3", "Cleo, \"the\" tester\nof commas", None);
    std::fs::write(jobs.join("broken.job.ron"), "(format: \"job/1\", name: 5)").unwrap();
    std::fs::write(jobs.join("notes.txt"), "no job").unwrap();
    std::fs::create_dir_all(jobs.join(".hidden")).unwrap();
    write(&jobs, ".hidden/d.job.ron", "QX 4", "Dan", None);
    let folder = FolderOfJobs::new(&jobs, Some(place.path().join("cache")));
    let first = list(&folder);
    assert_eq!(files(&first)[..2], ["2024/b.job.ron", "a.job.ron"]);
    assert_eq!((first.jobs.len(), first.read), (4, 4));
    let broken = first.jobs.iter().find(|job| job.file == "broken.job.ron").unwrap();
    assert!(broken.trouble.as_ref().unwrap().starts_with("broken.job.ron:1:24: "), "{:?}", broken.trouble);
    let again = list(&folder);
    assert_eq!((&again.jobs, again.read), (&first.jobs, 0), "the same from the index, whatever signs are in it");
    write(&jobs, "a.job.ron", "QX 1", "Somebody else", Some("2025-01-02"));
    let changed = list(&folder);
    assert_eq!(changed.read, 1);
    assert!(changed.jobs.iter().any(|job| job.owner == "Somebody else"));
    std::fs::remove_file(jobs.join("a.job.ron")).unwrap();
    assert_eq!(list(&folder).jobs.len(), 3);
    assert_eq!(folder.file(&first.jobs[0]), jobs.join("2024").join("b.job.ron"));
}

#[test]
fn a_damaged_index_is_made_again_and_none_is_needed() {
    let place = tempfile::tempdir().unwrap();
    let jobs = place.path().join("jobs");
    write(&jobs, "a.job.ron", "QX 1", "Ada", None);
    let cache = place.path().join("cache");
    let folder = FolderOfJobs::new(&jobs, Some(cache.clone()));
    let right = list(&folder);
    let index = std::fs::read_dir(&cache).unwrap().next().unwrap().unwrap().path();
    let bytes = std::fs::read(&index).unwrap();
    for damaged in [&b"\xff\xfe\x00"[..], b"jobs/0\n", &bytes[..bytes.len() / 2], b"jobs/1\na.job.ron,1\n", b""] {
        std::fs::write(&index, damaged).unwrap();
        assert_eq!(list(&folder).jobs, right.jobs, "{damaged:?}");
    }
    assert_eq!(list(&FolderOfJobs::new(&jobs, None)).jobs, right.jobs);
    // The index of the cache can't be written: nothing but time is lost.
    let blocked = place.path().join("blocked");
    std::fs::write(&blocked, "a file, no folder").unwrap();
    assert_eq!(list(&FolderOfJobs::new(&jobs, Some(blocked))).jobs, right.jobs);
    assert!(FolderOfJobs::new(jobs.join("nowhere"), None).list(&RealDisk, &mut |_| true).is_err());
}

#[cfg(unix)]
#[test]
fn links_lead_nowhere() {
    let place = tempfile::tempdir().unwrap();
    let (jobs, elsewhere) = (place.path().join("jobs"), place.path().join("elsewhere"));
    write(&jobs, "a.job.ron", "QX 1", "Ada", None);
    write(&elsewhere, "b.job.ron", "QX 2", "Bo", None);
    std::os::unix::fs::symlink(&elsewhere, jobs.join("link")).unwrap();
    std::os::unix::fs::symlink(&jobs, jobs.join("round")).unwrap();
    std::os::unix::fs::symlink(elsewhere.join("b.job.ron"), jobs.join("b.job.ron")).unwrap();
    assert_eq!(files(&list(&FolderOfJobs::new(&jobs, None))), ["a.job.ron"]);
}

#[test]
fn what_is_stopped_goes_on_where_it_was() {
    let place = tempfile::tempdir().unwrap();
    let jobs = place.path().join("jobs");
    for at in 0..4 {
        write(&jobs, &format!("{at}.job.ron"), "QX 1", "Ada", None);
    }
    let folder = FolderOfJobs::new(&jobs, Some(place.path().join("cache")));
    let mut seen = Vec::new();
    let stopped = folder.list(&RealDisk, &mut |reading| {
        seen.push((reading.done, reading.all));
        reading.done < 1
    });
    assert_eq!(stopped.unwrap_err().kind(), std::io::ErrorKind::Interrupted);
    assert_eq!(seen, [(0, 4), (1, 4)]);
    assert_eq!(list(&folder).read, 2, "two were remembered");
}

/// As many as several threads share; every bad file that the tests have is among them, and each is said to be bad.
#[test]
fn many_are_listed_at_once_and_the_same_however_they_are_read() {
    let place = tempfile::tempdir().unwrap();
    let jobs = place.path().join("jobs");
    write(&jobs, "0.job.ron", "QX 0", "Ada", Some("2025-01-02"));
    let text = std::fs::read_to_string(jobs.join("0.job.ron")).unwrap();
    for at in 1..300 {
        let text = text.replace("QX 0", &format!("QX {at}"));
        // Every third was written into by hand, so that only the full reader reads it.
        let end = if at % 3 == 0 { "// by hand\n" } else { "" };
        std::fs::write(jobs.join(format!("{at}.job.ron")), text + end).unwrap();
    }
    let bad = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/jobs/bad");
    let mut reasons = Vec::new();
    for file in std::fs::read_dir(bad).unwrap().map(|entry| entry.unwrap().path()) {
        let name = format!("{}.job.ron", file.file_stem().unwrap().to_str().unwrap());
        std::fs::copy(&file, jobs.join(&name)).unwrap();
        // What is wrong with the fields; what only a template or the whole job shows is not looked for in a list.
        let text = std::fs::read(&file).unwrap();
        let error = String::from_utf8(text).ok().and_then(|text| job_findings(&name, &text).err());
        reasons
            .extend(error.filter(|e| !matches!(e, ReadError::UnknownTemplate { .. })).map(|e| (name, e.to_string())));
    }
    let listing = list(&FolderOfJobs::new(&jobs, None));
    for at in 0..300 {
        let job = listing.jobs.iter().find(|job| job.file == format!("{at}.job.ron")).unwrap();
        assert_eq!((job.plate.as_str(), &job.trouble), (format!("QX {at}").as_str(), &None));
        assert_eq!((&job.open, job.date), (&listing.jobs[0].open, Date::parse("2025-01-02").ok()));
    }
    assert!(reasons.len() > 10, "{}", reasons.len());
    for (file, reason) in reasons {
        let job = listing.jobs.iter().find(|job| job.file == file).unwrap();
        assert_eq!(job.trouble.as_ref(), Some(&reason));
    }
    let mut asked = 0;
    let stopped = FolderOfJobs::new(&jobs, None).list(&RealDisk, &mut |reading| {
        asked += 1;
        assert!(reading.done < reading.all);
        asked < 10
    });
    assert_eq!((stopped.unwrap_err().kind(), asked), (std::io::ErrorKind::Interrupted, 10));
}

#[test]
fn words_are_found_in_any_order_and_plates_however_they_are_written() {
    let place = tempfile::tempdir().unwrap();
    write(place.path(), "a.job.ron", "QX-12 AB", "Ada Winter", Some("2025-03-01"));
    write(place.path(), "b.job.ron", "qx12ab", "Ada Winter", Some("2024-03-01"));
    write(place.path(), "c.job.ron", "RM 7", "Bo Øst", None);
    let listing = list(&FolderOfJobs::new(place.path(), None));
    let found = |question: &str| {
        let places = matching(&listing.jobs, question);
        places.into_iter().map(|at| listing.jobs[at].file.chars().next().unwrap()).collect::<String>()
    };
    for (question, files) in [
        ("", "abc"),
        ("winter ada", "ab"),
        ("WINTER 2025-03", "a"),
        ("qx12ab", "ab"),
        ("qx 12 ab", "ab"),
        ("QX-12", "a"),
        ("øst", "c"),
        ("defects", "abc"),
        ("winter bo", ""),
    ] {
        assert_eq!(found(question), files, "{question}");
    }
    let visits = history_of(&listing.jobs, "QX 12 AB");
    assert_eq!(visits.iter().map(|at| listing.jobs[*at].file.as_str()).collect::<Vec<_>>(), ["b.job.ron", "a.job.ron"]);
    assert!(history_of(&listing.jobs, " - ").is_empty());
}

/// Each call to the disk failed, once and from then on: afterwards the old or the new text is there, whole.
#[test]
fn what_the_program_keeps_outlives_every_fault_of_the_disk() {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("kept").join("some.ron");
    let (old, new) = (vec!["old".to_owned()], vec!["new".to_owned(); 3]);
    let mut struck = 0;
    for (nth, stays_broken) in (0..20).flat_map(|nth| [(nth, false), (nth, true)]) {
        keep(&RealDisk, &file, &old).unwrap();
        let disk = Fault::at(nth, stays_broken);
        let saved = keep(&disk, &file, &new);
        struck += u32::from(disk.struck());
        match kept::<Vec<String>>(&RealDisk, &file) {
            Kept::Read(read) => {
                assert!(read == new || (read == old && saved.is_err()), "{nth} {stays_broken} {read:?}");
            }
            other => panic!("{nth} {stays_broken}: {other:?}"),
        }
    }
    assert!(struck >= 10, "{struck}");
}

#[test]
fn a_broken_one_is_put_aside_with_its_place() {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("some.ron");
    assert_eq!(kept::<Vec<String>>(&RealDisk, &file), Kept::Nothing);
    std::fs::write(&file, "[\"a\", 5]").unwrap();
    let Kept::Broken(why) = kept::<Vec<String>>(&RealDisk, &file) else { panic!("it is broken") };
    assert!(why.contains("1:7") && why.contains("some.ron.broken"), "{why}");
    assert_eq!(std::fs::read_to_string(place.path().join("some.ron.broken")).unwrap(), "[\"a\", 5]");
    assert_eq!(kept::<Vec<String>>(&RealDisk, &file), Kept::Nothing);
}
