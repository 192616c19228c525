//! What the crew tests share.
#![allow(dead_code, reason = "each test file uses a part of it")]
#![allow(clippy::allow_attributes, reason = "whether something here is unused differs from test to test")]

pub(crate) mod brute;
pub(crate) mod clockwork;
pub(crate) mod flow_shop;
#[path = "../../benches/crew/invent.rs"]
pub(crate) mod invent;
pub(crate) mod quiet;
pub(crate) mod random_problem;
