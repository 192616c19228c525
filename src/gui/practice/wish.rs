//! What somebody may wish for while practising.

use crate::coat::Air;
use crate::practice::{Done, Part};
use crate::units::Seconds;
use crate::vehicle::PanelId;

/// A wish.
#[derive(Debug, Clone)]
pub(in crate::gui) enum PracticeWish {
    /// Somebody with this name practises.
    Learner(String),
    /// On another vehicle; none is that of the job.
    Body(Option<String>),
    /// For whom the order is laid.
    Part(Part),
    /// In other air; none is that of the lesson.
    Air(Option<Air>),
    /// Begins an exercise.
    Start(Done),
    /// Back to the list of exercises.
    Leave,
    /// Lays what comes next on a panel.
    Lay(PanelId),
    /// The next step is begun so many seconds later than it could be.
    Hold(Seconds),
    /// Waits with the next step until the other has done what is laid.
    HoldForOther,
    /// Takes the last step back.
    TakeBack,
    /// Says a reason.
    Hint,
    /// Judges what was laid.
    Check,
    /// Goes on laying after that.
    Change,
    /// Shows the planner's order.
    ShowBest,
    /// Plays on, or stops.
    Play(bool),
    /// So many seconds of the order in one second.
    Speed(f32),
    /// Goes to a moment.
    Moment(Seconds),
    /// Looks at a mark, by its place in the list.
    Mark(Option<usize>),
    /// Answers a question.
    Answer(usize),
    /// Goes on to the next question, or to the end.
    Next,
}
