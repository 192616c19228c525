//! What can be asked for that belongs to the person at the desk and not to the job.

use super::Preferences;
use crate::gui::handover::{Form, Which};
use std::path::PathBuf;

/// A page that lies over the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::gui) enum PageKind {
    /// Finding a command.
    Find,
    Help,
    Preferences,
    /// All jobs of a folder.
    Jobs,
    /// Those of this vehicle.
    Visits,
    /// The table of panels.
    Table,
}

/// A wish.
#[derive(Debug, Clone)]
pub(in crate::gui) enum HomeWish {
    /// Opens a page.
    Show(PageKind),
    /// Closes it.
    Close,
    /// Takes these preferences from now on.
    Prefer(Box<Preferences>),
    /// New jobs begin with the crew of this one.
    KeepCrew,
    /// Asks for the folder of the jobs.
    AskFolder,
    /// Looks through a folder.
    Folder(PathBuf),
    /// Looks through the folder again.
    ListAgain,
    /// Shows a hint, or no more.
    Hint(Option<usize>),
    /// Takes a job out of the list of recent ones.
    Forget(PathBuf),
    /// What was said has been read.
    Read,
    /// Copies the table of the workspace.
    CopyTable,
    /// Copies the map.
    CopyMap(Form),
    /// Asks the system for what was copied.
    AskPaste,
    /// Something was pasted.
    Pasted(String),
    /// Prints a sheet.
    Print(Which),
    /// Shows a sheet in Handover.
    Sheet(Which),
    /// Plays the plan in the whole window.
    BigScreen,
}
