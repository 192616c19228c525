//! What the help says that is not made from the list of commands.

use crate::gui::view_state::Workspace;
use crate::words::Message;
use crate::{message, say};

/// What a workspace is for, in some sentences.
pub(super) fn about(workspace: Workspace) -> &'static str {
    match workspace {
        Workspace::Job => say!("find-about-job"),
        Workspace::Survey => say!("find-about-survey"),
        Workspace::Correction => say!("find-about-correction"),
        Workspace::Coating => say!("find-about-coating"),
        Workspace::Bay => say!("find-about-bay"),
        Workspace::Handover => say!("find-about-handover"),
        Workspace::Practice => say!("find-about-practice"),
    }
}

/// Keys that belong to one place, each with what it does there.
pub(super) const LOCAL: &[(Message, &[(Message, Message)])] = &[
    (
        message!("find-keys-map"),
        &[
            (message!("find-key-map-arrows"), message!("find-key-map-arrows-does")),
            (message!("find-key-map-enter"), message!("find-key-map-enter-does")),
            (message!("find-key-map-shift"), message!("find-key-map-shift-does")),
            (message!("find-key-map-wheel"), message!("find-key-map-wheel-does")),
        ],
    ),
    (
        message!("find-keys-survey"),
        &[
            (message!("find-key-survey-digits"), message!("find-key-survey-digits-does")),
            (message!("find-key-survey-back"), message!("find-key-survey-back-does")),
            (message!("find-key-survey-s"), message!("find-key-survey-s-does")),
            (message!("find-key-survey-r"), message!("find-key-survey-r-does")),
            (message!("find-key-survey-b"), message!("find-key-survey-b-does")),
            (message!("find-key-survey-d"), message!("find-key-survey-d-does")),
        ],
    ),
    (
        message!("find-keys-practice"),
        &[
            (message!("find-key-practice-undo"), message!("find-key-practice-undo-does")),
            (message!("find-key-practice-h"), message!("find-key-practice-h-does")),
        ],
    ),
    (
        message!("find-keys-lists"),
        &[
            (message!("find-key-lists-rows"), message!("find-key-lists-rows-does")),
            (message!("find-key-lists-open"), message!("find-key-lists-open-does")),
        ],
    ),
];

/// What holds for all work with this program.
pub(super) const CAUTIONS: &[Message] = &[
    message!("find-caution-gone"),
    message!("find-caution-gauge"),
    message!("find-caution-makers"),
    message!("find-caution-harm"),
    message!("find-caution-voltage"),
];
