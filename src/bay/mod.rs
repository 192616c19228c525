//! A day in the bay: what people tapped, what follows from it, what comes next.
//!
//! A [`Log`] is a list of taps with their times. [`Day::replay`] turns it into the state of every operation and person; taking
//! back a tap is one more entry, so that a log only ever grows and can be written line by line. [`Board`] lays the state beside
//! the plan of what is left: who does what, what comes next, which windows run.
//!
//! It knows the crew problem and the coating's window, and nothing of panels, files, screens or the clock: the present comes in
//! as an argument. Times are whole seconds of one clock, any that only goes forward.

mod board;
mod day;
mod log;
mod ready;
mod shift;

pub use board::{Board, Call, Current, NextUp, OpenWindow, WorkerBoard};
pub use day::{Day, LapMark, Odd, with_window};
pub use log::{Entry, Event, Log};
pub use ready::Hold;
