//! What several tests share.
#![allow(dead_code, reason = "each test file uses a part of it")]
#![allow(clippy::allow_attributes, reason = "whether something here is unused differs from test to test")]

pub mod brute;
pub mod quiet;
pub mod random_problem;
