//! Any text as a number that somebody types: none, or a finite one that is the same with a point for the comma.
#![no_main]

use lapwright::units::number;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    if let Some(value) = number(text) {
        assert!(value.is_finite());
        assert_eq!(number(&text.replace(',', ".")), Some(value));
        assert_eq!(number(&format!("  {text}\t")), Some(value));
    }
});
