//! What the map costs: a frame with it and without it, finding the panel under a point, making the drawing of a vehicle anew.
//!
//! Needs no display. All figures come from one run, what is compared by turns.

#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a bench says its figures and stops where it can't measure"
)]

mod busy;
mod drawing;
mod frame;
mod hit;

use std::time::{Duration, Instant};

fn main() {
    frame::measure();
    hit::measure();
    drawing::measure();
}

fn time(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

fn median(times: &mut [Duration]) -> Duration {
    times.sort_unstable();
    times[times.len() / 2]
}

fn micros(time: Duration) -> f64 {
    time.as_secs_f64() * 1e6
}
