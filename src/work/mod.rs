//! Background threads: each has a name, an end, and a bounded channel.
//!
//! A [`SolveRun`] works out an order of coating or polishing while the window stays free. Its answers carry the revision of the job that
//! they were computed for, so that a late one can be told from a current one. The window is woken through a
//! [`std::task::Waker`], so nothing here knows what a window is.

mod clock;
mod day;
mod jobs;
mod journal;
mod keeper;
mod order;
#[cfg(feature = "gui")]
mod picture;
mod polishing;
mod practice;
mod rest;
mod solve;
mod writer;

pub use clock::{Clock, HandClock, WallClock, clock_stamp, clock_words, day_of};
pub use day::{DayRun, Place, Setup, Windows};
pub use jobs::JobsRun;
pub use journal::{JournalRun, Snapshot};
pub use keeper::{Keeper, Obstacle, Shelf, Standing, Taken};
pub use order::{Effort, Listener, Task, find_order, find_task, solve_for};
#[cfg(feature = "gui")]
pub use picture::{Ended, PictureRun};
pub use practice::{PracticeAnswer, PracticeAsk, PracticeRun};
pub use rest::{REST_LIMITS, RestAnswer, RestRun};
pub use solve::{Progress, SolveRun};
