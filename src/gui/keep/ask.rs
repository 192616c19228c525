//! Questions about what was found on the disk.

use super::KeepWish;
use crate::file::Fingerprint;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::say;
use eframe::egui::Ui;
use std::path::{Path, PathBuf};

/// A question.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::gui) enum KeepQuestion {
    /// An unsaved state from before was found.
    Recover {
        /// What the job is called.
        name: String,
        /// What is known of it, a sentence each.
        about: Vec<String>,
        /// Whether it can be taken up.
        whole: bool,
    },
    /// The file is not as it was read any more.
    Changed {
        /// What the file is called.
        file: String,
        /// Whether something is unsaved here.
        dirty: bool,
        /// Whether somebody was about to save.
        saving: bool,
        /// What it is now.
        now: Fingerprint,
    },
    /// The job can't be saved under this name.
    Blocked {
        /// Why, a sentence.
        why: String,
        /// The name, where another window has it and may have let go of it since.
        again: Option<PathBuf>,
    },
    /// Another file has the name that was typed.
    Replace {
        /// The name.
        path: PathBuf,
    },
}

/// Draws a question.
pub(in crate::gui) fn keep_question_ui(ui: &mut Ui, question: &KeepQuestion, out: &mut Vec<Action>) {
    match question {
        KeepQuestion::Recover { name, about, whole } => recover_ui(ui, name, about, *whole, out),
        KeepQuestion::Changed { file, dirty, saving, now } => changed_ui(ui, file, *dirty, *saving, *now, out),
        KeepQuestion::Blocked { why, again } => blocked_ui(ui, why, again.as_deref(), out),
        KeepQuestion::Replace { path } => replace_ui(ui, path, out),
    }
}

fn recover_ui(ui: &mut Ui, name: &str, about: &[String], whole: bool, out: &mut Vec<Action>) {
    let head = if whole { say!("keep-found") } else { say!("keep-found-damaged") };
    ui.label(theme::bold(head, 16.0));
    ui.label(theme::bold(name, 14.0));
    for sentence in about {
        ui.label(sentence);
    }
    ui.label(theme::soft(if whole { say!("keep-left-kept") } else { say!("keep-damaged-kept") }));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if whole && primary(ui, say!("keep-take-up")).clicked() {
            out.push(Action::Keep(KeepWish::TakeUp));
        }
        let leave = if whole { ui.button(say!("keep-leave")) } else { primary(ui, say!("keep-put-aside")) };
        if leave.clicked() {
            out.push(Action::Keep(KeepWish::PutAside));
        }
        if ui.button(say!("keep-later")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}

fn changed_ui(ui: &mut Ui, file: &str, dirty: bool, saving: bool, now: Fingerprint, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("keep-changed", file = file), 16.0));
    ui.label(match (dirty, saving) {
        (_, true) => say!("keep-not-as-read"),
        (true, false) => say!("keep-changes-here"),
        (false, false) => say!("keep-still-shows"),
    });
    ui.label(theme::soft(match (dirty, saving) {
        (_, true) => say!("keep-over-kept"),
        (true, false) => say!("keep-again-kept"),
        (false, false) => say!("keep-nothing-unsaved"),
    }));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if dirty || saving {
            if primary(ui, say!("keep-save-copy")).clicked() {
                out.push(Action::Effect(Effect::AskSaveAs));
            }
            if ui.button(say!("keep-read-again")).clicked() {
                out.push(Action::Keep(KeepWish::ReadAgain));
            }
        } else if primary(ui, say!("keep-read-again")).clicked() {
            out.push(Action::Keep(KeepWish::ReadAgain));
        }
        if saving {
            if ui.button(say!("keep-write-over")).clicked() {
                out.push(Action::Keep(KeepWish::WriteOver(now)));
            }
            if ui.button(say!("common-cancel")).clicked() {
                out.push(Action::Effect(Effect::Dismiss));
            }
        } else if ui.button(say!("keep-go-on")).clicked() {
            out.push(Action::Keep(KeepWish::LeaveChange(now)));
        }
    });
}

fn replace_ui(ui: &mut Ui, path: &Path, out: &mut Vec<Action>) {
    let name = path.display().to_string();
    ui.label(theme::bold(say!("keep-replace", file = name), 16.0));
    ui.label(theme::soft(say!("keep-replaced-kept")));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, say!("keep-other-name")).clicked() {
            out.push(Action::Effect(Effect::AskSaveAs));
        }
        if ui.button(say!("keep-replace-it")).clicked() {
            out.push(Action::Keep(KeepWish::Replace(path.to_owned())));
        }
        if ui.button(say!("common-cancel")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}

fn blocked_ui(ui: &mut Ui, why: &str, again: Option<&Path>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("keep-cannot-save"), 16.0));
    ui.label(why);
    ui.label(theme::soft(say!("keep-as-it-was")));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, say!("keep-save-as")).clicked() {
            out.push(Action::Effect(Effect::AskSaveAs));
        }
        if let Some(path) = again
            && ui.button(say!("keep-try-again")).clicked()
        {
            out.push(Action::Keep(KeepWish::TryAgain(path.to_owned())));
        }
        if ui.button(say!("common-cancel")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}
