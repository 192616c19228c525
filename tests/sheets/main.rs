//! Paper: the sheets opened with readers that are not ours, and looked at for what must and must not stand on them.
#![expect(
    clippy::expect_used,
    clippy::unwrap_used,
    reason = "helpers of tests; clippy only sees test functions as tests"
)]

#[path = "../support/mod.rs"]
mod support;

mod calendar;
mod cli;
mod content;
mod files;
mod jobs;
mod look;
mod pdf;
