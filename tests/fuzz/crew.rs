//! Any text as a crew problem: read, and then written and read as the same, or refused.
#![no_main]

use lapwright::crew::Problem;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    match Problem::from_json(text) {
        Ok(problem) => {
            let written = serde_json::to_string(problem.spec()).expect("what was read can be written");
            let again = Problem::from_json(&written).expect("what was written can be read");
            assert_eq!(again.spec(), problem.spec());
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
});
