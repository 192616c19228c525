//! Asking for a file: the dialog of the system on a thread of its own, so that the window goes on.

use super::action::{Action, Effect};
use super::handover::{Form, HandoverWish, Which};
use super::home::HomeWish;
use crate::say;
use eframe::egui;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, sync_channel};
use std::time::{Duration, Instant};

/// What a file is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Purpose {
    Open,
    Save,
    /// A file of readings.
    Readings,
    /// A picture of the defect that is open.
    Photo,
    /// The folder of the jobs.
    Folder,
    /// A sheet or a picture to be written.
    Sheet(Form, Which),
}

impl Purpose {
    /// What happens with the file.
    pub(super) fn wish(self, path: PathBuf) -> Action {
        Action::Effect(match self {
            Self::Open => opened(path),
            Self::Save => Effect::SaveAs(path),
            Self::Readings => Effect::Readings(path),
            Self::Photo => Effect::Photos(vec![path]),
            Self::Folder => return Action::Home(HomeWish::Folder(path)),
            Self::Sheet(form, _) => return Action::Handover(HandoverWish::Write(form, path)),
        })
    }

    /// A name for a file of a job that is called so, without the signs that lead to another folder or that a system doesn't allow.
    pub(super) fn suggestion(self, job: &str) -> String {
        let plain = |c: char| if c.is_control() || r#"/\:*?"<>|"#.contains(c) { '-' } else { c };
        let job: String = job.chars().map(plain).collect();
        match self {
            Self::Sheet(form, which) => format!("{job}, {}.{}", which.file_name(), form.ending()),
            _ => format!("{job}.job.ron"),
        }
    }

    /// The head of the dialog.
    pub(super) fn title(self) -> &'static str {
        match self {
            Self::Open => say!("window-open-job"),
            Self::Save => say!("window-save-job"),
            Self::Readings => say!("window-readings-from-file"),
            Self::Photo => say!("window-picture-of-defect"),
            Self::Folder => say!("window-folder-of-jobs"),
            Self::Sheet(..) => say!("window-write-file"),
        }
    }

    fn filter(self) -> (&'static str, &'static [&'static str]) {
        match self {
            Self::Open | Self::Save | Self::Folder => (say!("window-files-job"), &["ron"]),
            Self::Readings => (say!("window-files-readings"), &["csv", "tsv", "txt"]),
            Self::Photo => (say!("window-files-picture"), &["jpg", "jpeg", "png"]),
            Self::Sheet(form, _) => match form {
                Form::Pdf => ("PDF", &["pdf"]),
                Form::Html => (say!("window-files-web-page"), &["html"]),
                Form::List => (say!("window-files-list"), &["csv"]),
                Form::Calendar => (say!("window-files-calendar"), &["ics"]),
                Form::Svg => (say!("window-files-drawing"), &["svg"]),
                Form::Png => (say!("window-files-picture"), &["png"]),
            },
        }
    }
}

fn is(purpose: Purpose, path: &Path) -> bool {
    let ending = path.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default();
    purpose.filter().1.contains(&ending.as_str())
}

/// What opening a file means: a list of readings is shown, anything else is a job.
pub(super) fn opened(path: PathBuf) -> Effect {
    if is(Purpose::Readings, &path) { Effect::Readings(path) } else { Effect::Open(path) }
}

/// What happens with files that are dropped on the window: pictures go to the defect that is open, lists of readings are
/// shown, anything else is opened as a job.
pub(super) fn dropped(mut files: Vec<PathBuf>) -> Option<Effect> {
    if files.iter().any(|f| is(Purpose::Photo, f)) {
        files.retain(|f| is(Purpose::Photo, f));
        return Some(Effect::Photos(files));
    }
    files.into_iter().next().map(opened)
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
        let (name, endings) = purpose.filter();
        let mut dialog = rfd::AsyncFileDialog::new().add_filter(name, endings).set_title(purpose.title());
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
            Purpose::Open | Purpose::Readings | Purpose::Photo => {
                let future = dialog.pick_file();
                thread.spawn(move || finish(pollster::block_on(future)))?;
            }
            Purpose::Folder => {
                let future = dialog.pick_folder();
                thread.spawn(move || finish(pollster::block_on(future)))?;
            }
            Purpose::Save | Purpose::Sheet(..) => {
                let future = dialog.set_file_name(suggestion).save_file();
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
