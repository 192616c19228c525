//! Keeping the screen on while a day runs, where the system allows it.

use crate::say;
use crate::words::taking_along;
use std::sync::mpsc::{SyncSender, sync_channel};
use std::thread;

/// Keeps the screen on as long as it is told to.
#[derive(Debug, Default)]
pub(super) struct Awake {
    allowed: bool,
    held: Option<SyncSender<()>>,
}

impl Awake {
    /// One that may ask the system; the usual one does nothing, so that tests leave the screen alone.
    pub(super) fn allowed() -> Self {
        Self { allowed: true, held: None }
    }

    /// Keeps the screen on from now on, or lets it go off. Asking the system may take a moment and may be refused, so it is done on a
    /// thread of its own, which lives as long as the screen is held; a refusal changes nothing for the day.
    pub(super) fn keep(&mut self, wanted: bool) {
        if !wanted {
            self.held = None;
        } else if self.allowed && self.held.is_none() {
            let (hold, until_dropped) = sync_channel::<()>(0);
            let hold_screen = move || {
                let held = keepawake::Builder::default()
                    .display(true)
                    .idle(true)
                    .reason(say!("window-day-runs"))
                    .app_name("Lapwright")
                    .app_reverse_domain("lapwright")
                    .create();
                until_dropped.recv().unwrap_or_default();
                drop(held);
            };
            // Without a thread the screen does what it always does.
            drop(thread::Builder::new().name("keep-awake".to_owned()).spawn(taking_along(hold_screen)));
            self.held = Some(hold);
        }
    }
}
