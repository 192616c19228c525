//! Printing: the PDF goes to a folder for passing things and is opened with the viewer of the system.
//!
//! Only ever after somebody asked for it, and only files that were written here: nothing in a job starts a program.

use super::Viewer;
use crate::file::new_private_folder;
use crate::gui::order::waker;
use crate::say;
use eframe::egui;
use std::io;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::mpsc::{Receiver, sync_channel};

/// What is being opened.
#[derive(Debug, Default)]
pub(super) struct Printing {
    viewer: Viewer,
    opened: Option<Receiver<bool>>,
    file: PathBuf,
}

impl Printing {
    pub(super) fn with(viewer: Viewer) -> Self {
        Self { viewer, ..Self::default() }
    }

    /// Opens a file; without a viewer it says where the file is.
    pub(super) fn open(&mut self, file: &Path, ctx: &egui::Context) -> Option<String> {
        file.clone_into(&mut self.file);
        if self.viewer == Viewer::Nobody {
            return Some(self.where_it_is());
        }
        let (send, opened) = sync_channel(1);
        let (file, waker) = (file.to_owned(), waker(ctx));
        let thread = std::thread::Builder::new().name("open-viewer".to_owned());
        let started = thread.spawn(move || {
            // A window that is gone needs no answer.
            send.send(show(&file)).unwrap_or_default();
            waker.wake();
        });
        match started {
            Ok(_) => {
                self.opened = Some(opened);
                None
            }
            Err(_) => Some(self.where_it_is()),
        }
    }

    /// What came of it, where there is something to say.
    pub(super) fn listen(&mut self) -> Option<String> {
        let answer: bool = self.opened.as_ref()?.try_recv().ok()?;
        self.opened = None;
        (!answer).then(|| self.where_it_is())
    }

    fn where_it_is(&self) -> String {
        say!("home-no-viewer", file = self.file.display().to_string())
    }
}

/// Asks the system to show a file, and waits until it has said whether it can.
fn show(file: &Path) -> bool {
    let program = match () {
        () if cfg!(windows) => "explorer",
        () if cfg!(target_os = "macos") => "open",
        () => "xdg-open",
    };
    let mut command = Command::new(program);
    command.arg(file).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    // The one of Windows says "1" even where it opened the file.
    command.status().is_ok_and(|status| status.success() || cfg!(windows))
}

/// A new folder that nobody else can read, in the place for files that are only passed on.
pub(super) fn fresh_folder() -> io::Result<PathBuf> {
    let place = std::env::temp_dir();
    let mut last = io::Error::from(io::ErrorKind::AlreadyExists);
    for number in 0..1_000 {
        let folder = place.join(format!("lapwright-print-{}-{number}", std::process::id()));
        match new_private_folder(&folder) {
            Ok(()) => return Ok(folder),
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => last = error,
            Err(error) => return Err(error),
        }
    }
    Err(last)
}
