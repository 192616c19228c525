//! Any text as a job: read or refused with a hint; what is read can be written and reads back as the same.
#![no_main]

use lapwright::file::{job_from_text, job_to_text};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    match job_from_text("a job", text) {
        Ok(loaded) => {
            let written = job_to_text(&loaded.job).expect("what was read can be written");
            let again = job_from_text("the same job", &written).expect("what was written can be read");
            assert_eq!(again.job, loaded.job);
        }
        Err(error) => assert!(!error.to_string().is_empty() && !error.hint().is_empty()),
    }
});
