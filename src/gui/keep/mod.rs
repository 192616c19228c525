//! Keeping the job safe, as far as the window has a part in it: what is asked, what is said above the map, and what
//! happens when the program makes a mistake. `work::Keeper` does the keeping.

mod ask;
mod carry_out;
mod last_words;
mod notice;

pub(super) use ask::{KeepQuestion, keep_question_ui};
pub(super) use last_words::LastWords;
pub(super) use notice::notice_ui;

use crate::file::Fingerprint;
use crate::work::Keeper;
use std::path::PathBuf;

/// What the window has for it.
#[derive(Debug, Default)]
pub(super) struct Keep {
    pub(super) keeper: Keeper,
    unsaved: Unsaved,
    /// Whether the window opened without a file, so that any job without one may be taken up.
    at_start: bool,
    /// Whether the window had the keyboard in the last picture.
    focused: bool,
    /// A notice that somebody has read.
    read: Option<String>,
    last_words: LastWords,
}

/// What is known of an unsaved state from before.
#[derive(Debug, Default)]
struct Unsaved {
    /// Whether it waits until somebody asks for it.
    later: bool,
    /// Whether it turned out to be no job that can be worked on.
    unusable: bool,
}

/// What a person wants done.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum KeepWish {
    /// Takes up the unsaved state from before.
    TakeUp,
    /// Puts it aside.
    PutAside,
    /// Asks about it again.
    AskAgain,
    /// Reads the file again, as somebody else left it.
    ReadAgain,
    /// Goes on with what is here.
    LeaveChange(Fingerprint),
    /// Saves over what somebody else wrote.
    WriteOver(Fingerprint),
    /// Tries to get the file that another window had.
    WorkHere,
    /// Tries once more to save under a name that another window had.
    TryAgain(PathBuf),
    /// Saves under a name that was typed.
    SaveTyped(PathBuf),
    /// Saves over another file.
    Replace(PathBuf),
    /// Closes a notice.
    NoticeRead(String),
}
