//! Any bytes as a list of readings: rows, rows left out with their reason, or one error.
#![no_main]

use lapwright::file::readings_from_bytes;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    match readings_from_bytes("a list", bytes) {
        Ok(readings) => {
            for row in &readings.rows {
                assert!(row.thickness.um().is_finite());
            }
            for row in &readings.rejected {
                assert!(!row.reason.is_empty());
            }
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
});
