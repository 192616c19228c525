//! What can be asked for while handing over.

use crate::say;
use crate::sheets::Options;
use std::path::PathBuf;

/// A sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(in crate::gui) enum Which {
    /// For the customer.
    #[default]
    Customer,
    /// For the crew.
    Crew,
    /// For the next visit.
    Record,
}

impl Which {
    /// Every sheet.
    pub(in crate::gui) const ALL: [Self; 3] = [Self::Customer, Self::Crew, Self::Record];

    /// As it stands on a button.
    pub(in crate::gui) fn name(self) -> &'static str {
        match self {
            Self::Customer => say!("handover-customer"),
            Self::Crew => say!("handover-crew"),
            Self::Record => say!("handover-record"),
        }
    }

    /// As it stands in the name of a file.
    pub(in crate::gui) fn file_name(self) -> &'static str {
        match self {
            Self::Customer => say!("handover-file-customer"),
            Self::Crew => say!("handover-file-crew"),
            Self::Record => say!("handover-file-record"),
        }
    }
}

/// What something is written as.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::gui) enum Form {
    /// The sheet, to be printed.
    Pdf,
    /// The sheet, to be read on a screen.
    Html,
    /// The order of the crew as a list.
    List,
    /// Care times for a calendar.
    Calendar,
    /// The map as it is shown, as a drawing.
    Svg,
    /// The map as it is shown, as a picture.
    Png,
}

impl Form {
    /// The ending of its file.
    pub(in crate::gui) fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Html => "html",
            Self::List => "csv",
            Self::Calendar => "ics",
            Self::Svg => "svg",
            Self::Png => "png",
        }
    }

    /// As it stands on a button.
    pub(in crate::gui) fn button(self) -> &'static str {
        match self {
            Self::Pdf => say!("handover-save-pdf"),
            Self::Html => say!("handover-save-web-page"),
            Self::List => say!("handover-save-list"),
            Self::Calendar => say!("handover-save-calendar"),
            Self::Svg => say!("handover-save-drawing"),
            Self::Png => say!("handover-save-picture"),
        }
    }
}

/// Something asked for.
#[derive(Debug)]
pub(in crate::gui) enum HandoverWish {
    /// Shows another sheet.
    Show(Which),
    /// Writes it otherwise.
    Options(Options),
    /// Asks for a file name.
    Ask(Form),
    /// Writes a file.
    Write(Form, PathBuf),
    /// Plays the plan over the whole window, from its beginning.
    Play,
    /// Back from the big screen.
    StopPlaying,
}
