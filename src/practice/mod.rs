//! Practice: an apprentice lays the order of coating, it is played by plain rules, and everything wrong with it is marked.
//!
//! An [`Exercise`] is a crew problem with what is given already and the planner's best answer. [`Laid`] is what the learner put
//! into each lane; [`play()`] gives it times and avoids nothing; [`marks()`] turns what the crew checker finds, one for one, into
//! sentences; [`score()`] compares with the best. [`next_rounds`] asks "which panel next?", [`polish_rounds`] how hard to polish.
//!
//! The crew checker is the only judge of a broken rule. Nothing here knows a window, a file or a clock; seeds come from outside.

mod exercise;
mod hint;
mod laid;
mod lesson;
mod marks;
mod play;
mod polishing;
mod progress;
mod quick;
mod score;
mod surprise;
mod wants;
mod words;

pub use exercise::{Exercise, PrepareError, Setup, prepare};
pub use hint::{Hint, hint};
pub use laid::{CantLay, Laid, Step};
pub use lesson::{Lesson, Part};
pub use marks::{LongWay, Mark, Trouble, long_ways, marks};
pub use play::{Played, play};
pub use polishing::{PolishAnswer, PolishRound, polish_rounds};
pub use progress::Done;
pub use quick::{Candidate, MARGIN, NextRound, next_rounds};
pub use score::{MOST_SECONDS_MORE, Score, price_s, score};
pub use wants::{Wanted, wanted};
