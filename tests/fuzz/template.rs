//! Any text as a vehicle template: built, or refused with where and why.
#![no_main]

use lapwright::vehicle::Template;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    match Template::parse(text) {
        Ok(template) => assert!(!template.panels.is_empty()),
        Err(error) => assert!(!error.to_string().is_empty()),
    }
});
