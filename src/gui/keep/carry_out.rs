//! Carries out what people want done with what was found on the disk, and looks at the disk for them.

use super::{Keep, KeepQuestion, KeepWish, LastWords, Unsaved};
use crate::cli::Failure;
use crate::file::{Change, Fingerprint, Opened, why};
use crate::gui::app::App;
use crate::gui::modals::Question;
use crate::gui::order::waker;
use crate::say;
use crate::work::{Keeper, Obstacle, Shelf, Standing, clock_words};
use eframe::egui;
use std::path::{Path, PathBuf};
use std::sync::Arc;

impl App {
    /// The same, and what is unsaved is kept on the disk; `print` and `newer` are what is known of the job's file.
    #[must_use]
    pub fn keeping(mut self, shelf: Shelf, print: Option<Fingerprint>, newer: Option<String>) -> Self {
        let keeper = Keeper::new(shelf, self.path.as_deref(), print, newer);
        self.keep = Keep { keeper, at_start: self.path.is_none(), focused: true, ..Keep::default() };
        self.look_for_unsaved();
        self
    }

    pub(in crate::gui) fn telling(mut self, last_words: LastWords) -> Self {
        self.keep.last_words = last_words;
        self
    }

    /// Keeps the job that was just put into the window.
    pub(in crate::gui) fn keep_other(&mut self, print: Option<Fingerprint>, newer: Option<String>) {
        let keep = &mut self.keep;
        // The one before is done with first: it may hold the same file.
        let next = keep.keeper.let_go();
        keep.keeper = next.map_or_else(Keeper::default, |shelf| Keeper::new(shelf, self.path.as_deref(), print, newer));
        (keep.unsaved, keep.at_start, keep.read) = (Unsaved::default(), false, None);
        if self.path.is_some() {
            self.look_for_unsaved();
        }
    }

    fn look_for_unsaved(&mut self) {
        if let Err(error) = self.keep.keeper.look_for_unsaved(self.document.job()) {
            self.fail(Failure::new(say!("keep-unsaved-unseen", why = why(&error)), say!("keep-check-disk")));
        }
    }

    /// Takes in the job as it is, asks what has to be asked, looks at the file when the window gets the keyboard.
    pub(in crate::gui) fn step_keep(&mut self, ui: &egui::Ui) {
        let focused = ui.input(|i| i.focused);
        let before = std::mem::replace(&mut self.keep.focused, focused);
        let came = focused && !before;
        self.follow_with_keeper(ui.ctx());
        if self.question.is_some() || self.import.is_some() || self.asked.is_some() {
            return;
        }
        if self.keep.keeper.found().is_some() && !self.keep.unsaved.later {
            self.ask_about_found();
        } else if came && let Ok(Change::Changed(now)) = self.keep.keeper.glance() {
            self.ask_about_change(now, false);
        }
        if self.question.is_some() {
            ui.ctx().request_repaint();
        }
    }

    fn follow_with_keeper(&mut self, ctx: &egui::Context) {
        let photos = &self.photos;
        self.keep.keeper.follow(&self.document, || photos.in_memory(), || waker(ctx));
        let journal = self.keep.keeper.journal().filter(|_| self.document.is_dirty());
        self.keep.last_words.note(journal);
    }

    /// Writes what is unsaved at once: the program can't go on.
    pub(in crate::gui) fn keep_before_the_end(&mut self, ctx: &egui::Context) {
        self.follow_with_keeper(ctx);
        drop(self.keep.keeper.let_go());
    }

    fn ask_about_found(&mut self) {
        let Some(found) = self.keep.keeper.found() else { return };
        let mut about = Vec::new();
        if let Some(head) = &found.head {
            let when = clock_words(head.at_s, self.keep.keeper.now_s());
            about.push(match head.file {
                _ if found.text.is_none() => say!("keep-from", moment = when),
                Some(_) => say!("keep-from-more", moment = when, count = head.changes),
                None => say!("keep-from-never", moment = when),
            });
            if let Some(file) = head.file.as_ref().filter(|_| self.path.is_none()) {
                about.push(say!("keep-read-from", file = file));
            }
        }
        if self.document.is_dirty() {
            about.push(say!("keep-changes-here-too").to_owned());
        }
        if self.keep.keeper.found_is_of_another_version() {
            about.push(say!("keep-changed-since").to_owned());
        }
        if found.torn.is_some() && found.text.is_some() {
            about.push(say!("keep-torn").to_owned());
        }
        let name = found.head.as_ref().map_or_else(|| say!("keep-a-job").to_owned(), |head| head.name.clone());
        let whole = found.text.is_some() && !self.keep.unsaved.unusable;
        self.question = Some(Question::Keep(KeepQuestion::Recover { name, about, whole }));
    }

    fn ask_about_change(&mut self, now: Fingerprint, saving: bool) {
        let name = self.path.as_deref().and_then(Path::file_name).unwrap_or_default();
        let (file, dirty) = (name.to_string_lossy().into_owned(), self.document.is_dirty());
        self.question = Some(Question::Keep(KeepQuestion::Changed { file, dirty, saving, now }));
    }

    /// Says what stands against saving.
    pub(in crate::gui) fn ask_about_obstacle(&mut self, obstacle: Obstacle, path: &Path) {
        let (standing, others) = match obstacle {
            Obstacle::Changed(now) => return self.ask_about_change(now, true),
            Obstacle::Unreadable(error) => {
                return self
                    .fail(Failure::new(say!("keep-change-unseen", why = why(&error)), say!("keep-check-folder")));
            }
            Obstacle::Others(holder) => (Standing::Others(holder), true),
            Obstacle::NoWriting(reason) => (Standing::NoWriting(reason), false),
            Obstacle::Protected => (Standing::Protected, false),
            Obstacle::Newer(format) => (Standing::Newer(format), false),
        };
        let why = self.keep.why_not(&standing).unwrap_or_default();
        let again = others.then(|| path.to_owned());
        self.question = Some(Question::Keep(KeepQuestion::Blocked { why, again }));
    }

    /// Carries out a wish.
    pub(in crate::gui) fn keep_safe(&mut self, wish: KeepWish, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        self.question = None;
        match wish {
            KeepWish::TakeUp => self.take_up(ctx),
            KeepWish::PutAside => match self.keep.keeper.put_aside() {
                Ok(kept) => {
                    self.say_kept(kept);
                    self.keep.unsaved.unusable = false;
                    if self.keep.at_start {
                        self.look_for_unsaved(); // there may be more than one
                    }
                }
                Err(error) => {
                    self.keep.unsaved.later = true;
                    self.fail(Failure::new(say!("keep-stays", why = error.to_string()), error.hint()));
                }
            },
            KeepWish::AskAgain => self.keep.unsaved.later = false,
            KeepWish::ReadAgain => self.read_again(),
            KeepWish::LeaveChange(now) => self.keep.keeper.leave(now),
            KeepWish::WriteOver(now) => {
                if let Some(path) = self.path.clone() {
                    self.save_over(&path, Some(now), ctx, frame);
                }
            }
            KeepWish::WorkHere => self.work_here(),
            // The own file is tried for first; another one only at the moment of saving.
            KeepWish::TryAgain(path) if self.path.as_deref() == Some(&path) => self.work_here(),
            KeepWish::TryAgain(path) | KeepWish::Replace(path) => self.save_over(&path, None, ctx, frame),
            KeepWish::SaveTyped(path) => self.save_typed(path, ctx, frame),
            KeepWish::NoticeRead(text) => self.keep.read = Some(text),
        }
    }

    /// An unsaved state that is put off; the notice above the map leads back to it.
    pub(in crate::gui) fn put_off(&mut self) {
        if matches!(self.question, Some(Question::Keep(KeepQuestion::Recover { .. }))) {
            self.keep.unsaved.later = true;
        }
    }

    fn take_up(&mut self, ctx: &egui::Context) {
        let saved = Arc::clone(self.document.job());
        if self.document.is_dirty() && self.keep.keeper.found().is_some() && !self.keep_what_is_here() {
            return;
        }
        match self.keep.keeper.take_up(self.bodies.templates()) {
            Ok(None) => {}
            Ok(Some(taken)) => {
                let path = self.path.clone();
                self.show(taken.loaded, path.clone());
                self.photos.take_in(taken.photos);
                // What is in the file stays what it is; a job without a file is nowhere yet.
                self.document.set_unsaved(path.map(|_| saved));
                self.refresh(ctx);
            }
            Err(error) => {
                self.keep.unsaved.unusable = true;
                self.fail(Failure::new(say!("keep-unusable", why = error.to_string()), say!("keep-still-there")));
            }
        }
    }

    /// Keeps the job as it is here as a file of its own; says where, or why not.
    fn keep_what_is_here(&mut self) -> bool {
        match self.keep.keeper.keep_state(self.document.job(), &self.photos.in_memory()) {
            Ok(kept) => {
                self.say_kept(kept);
                true
            }
            Err(error) => {
                self.fail(Failure::new(say!("keep-not-kept", why = error.to_string()), error.hint()));
                false
            }
        }
    }

    fn say_kept(&mut self, kept: Option<PathBuf>) {
        self.home.said = kept.map(|path| say!("keep-kept-as", path = path.display().to_string()));
    }

    /// Reads the file again; what is unsaved is kept as a file of its own first.
    fn read_again(&mut self) {
        let Some(path) = self.path.clone() else { return };
        let opened = match self.bodies.templates().open_job(&*self.keep.keeper.disk(), &path) {
            Ok(opened) => opened,
            Err(error) => return self.fail(error.into()),
        };
        if self.document.is_dirty() && !self.keep_what_is_here() {
            return;
        }
        self.keep.keeper.discard();
        self.show_opened(opened, path);
    }

    /// Puts a job that was read from a file into the window.
    pub(in crate::gui) fn show_opened(&mut self, opened: Opened, path: PathBuf) {
        let Opened { loaded, print, newer } = opened;
        self.show(loaded, Some(path));
        self.keep_other(print, newer);
    }

    /// Saves under a name that was typed: with the ending of jobs, and over another file only when somebody says so.
    fn save_typed(&mut self, path: PathBuf, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        let path = if path.extension().is_none() { path.with_extension("job.ron") } else { path };
        let is_own = self.path.as_deref() == Some(&path);
        if !is_own && !matches!(self.keep.keeper.disk().about(&path), Ok(None)) {
            self.question = Some(Question::Keep(KeepQuestion::Replace { path }));
            return;
        }
        self.save_over(&path, None, ctx, frame);
    }

    /// Tries to get the file that another window had.
    fn work_here(&mut self) {
        if !matches!(self.keep.keeper.standing(), Standing::Others(_)) {
            return; // it is ours already
        }
        if !self.keep.keeper.take_over() {
            let why = self.keep.why_not(self.keep.keeper.standing()).unwrap_or_default();
            return self.fail(Failure::new(why, say!("keep-close-other")));
        }
        // What the other window left, and what it wrote.
        self.look_for_unsaved();
        if self.question.is_none()
            && let Ok(Change::Changed(now)) = self.keep.keeper.glance()
        {
            self.ask_about_change(now, false);
        }
    }
}
