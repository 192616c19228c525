//! Asking for a file: the dialog of the system on a thread of its own, so that the window goes on.

use eframe::egui;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::time::{Duration, Instant};

/// What a file is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Purpose {
    Open,
    Save,
}

/// A dialog that is open.
#[derive(Debug)]
pub(super) struct Asked {
    pub(super) purpose: Purpose,
    answer: Receiver<Option<PathBuf>>,
    since: Instant,
}

/// What came of a dialog.
#[derive(Debug)]
pub(super) enum Answer {
    /// Still open.
    Waiting,
    /// A file was named.
    File(PathBuf),
    /// Somebody changed their mind.
    Cancelled,
    /// The system has no dialog to show; ask in the window.
    NoDialog,
}

/// A "no" that comes faster than a person can answer means that there is no dialog.
const TOO_FAST_FOR_A_PERSON: Duration = Duration::from_millis(150);

impl Asked {
    /// Opens a dialog.
    pub(super) fn start(
        purpose: Purpose,
        suggestion: &str,
        frame: Option<&eframe::Frame>,
        ctx: &egui::Context,
    ) -> std::io::Result<Self> {
        let mut dialog = rfd::AsyncFileDialog::new().add_filter("Job", &["ron"]);
        if let Some(frame) = frame {
            dialog = dialog.set_parent(frame);
        }
        let (send, answer) = sync_channel(1);
        let ctx = ctx.clone();
        let finish = move |path: Option<rfd::FileHandle>| {
            // A window that is gone needs no answer.
            drop(send.send(path.map(|p| p.path().to_owned())));
            ctx.request_repaint();
        };
        let thread = std::thread::Builder::new().name("file-dialog".to_owned());
        match purpose {
            Purpose::Open => {
                let future = dialog.set_title("Open a job").pick_file();
                thread.spawn(move || finish(pollster::block_on(future)))?;
            }
            Purpose::Save => {
                let future = dialog.set_title("Save the job").set_file_name(suggestion).save_file();
                thread.spawn(move || finish(pollster::block_on(future)))?;
            }
        }
        Ok(Self { purpose, answer, since: Instant::now() })
    }

    /// What came of it so far.
    pub(super) fn answer(&self) -> Answer {
        match self.answer.try_recv() {
            Err(TryRecvError::Empty) => Answer::Waiting,
            Ok(Some(path)) => Answer::File(path),
            Ok(None) if self.since.elapsed() < TOO_FAST_FOR_A_PERSON => Answer::NoDialog,
            Ok(None) => Answer::Cancelled,
            Err(TryRecvError::Disconnected) => Answer::NoDialog,
        }
    }
}
