//! Files of every released format: checked in once and never edited. They still open, and say what they said.

use lapwright::file::{SAMPLE, job_findings, job_from_text, job_to_text};
use sha2::{Digest, Sha256};

mod support;

/// Format, file below `tests/data/golden`, SHA-256 of its bytes, panels with something known, readings, members of the crew.
const RELEASED: [(&str, &str, &str, usize, usize, usize); 2] = [
    ("job/1", "job-1-full.job.ron", "3fe0f13da71eb396504ebce043f192c2bcb367e34c5925a6074424cf4d81e89a", 12, 20, 2),
    ("job/1", "job-1-least.job.ron", "5d93e9080c98abe68dc433832ff087299ecc26fba57b5df2824031be040d400f", 0, 0, 2),
];

#[test]
fn files_of_every_released_format_open_and_say_what_they_said() {
    for (format, file, hash, panels, readings, crew) in RELEASED {
        let text = std::fs::read_to_string(support::root().join("tests/data/golden").join(file)).unwrap();
        let bytes: Vec<String> = Sha256::digest(text.as_bytes()).iter().map(|byte| format!("{byte:02x}")).collect();
        assert_eq!(bytes.concat(), hash, "{file} was edited; a released file stays as it was");
        assert!(text.contains(&format!("format: \"{format}\"")));
        let job = job_from_text(file, &text).unwrap().job;
        let known = job.panels.values().filter(|r| ***r != lapwright::job::PanelRecord::default()).count();
        let read: usize = job.panels.values().map(|r| r.reading_count()).sum();
        assert_eq!((known, read, job.crew.len()), (panels, readings, crew), "{file}");
        // Written by this version and read again it is the same job.
        assert_eq!(job_from_text(file, &job_to_text(&job).unwrap()).unwrap().job, job);
    }
}

#[test]
fn the_format_that_is_written_has_its_files_here() {
    let (job, _, _) = job_findings("the sample", SAMPLE).unwrap();
    let text = job_to_text(&job).unwrap();
    let of_format = |format: &str| text.contains(&format!("format: \"{format}\""));
    assert!(
        RELEASED.iter().filter(|(format, ..)| of_format(format)).count() >= 2,
        "a full and a small file of each format"
    );
}
