//! Paper: the sheets opened with readers that are not ours, and looked at for what must and must not stand on them.
#![expect(
    clippy::unwrap_used,
    clippy::expect_used,
    reason = "helpers of tests; clippy only sees test functions as tests"
)]

#[path = "../support/mod.rs"]
mod support;

mod calendar;
mod content;
mod files;
mod jobs;
mod look;
mod pdf;
