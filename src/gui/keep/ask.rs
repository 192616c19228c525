//! Questions about what was found on the disk.

use super::KeepWish;
use crate::file::Fingerprint;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::gui::widgets::primary;
use eframe::egui::Ui;

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
    /// The file was changed by another program.
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
        /// Whether another window has it.
        others: bool,
    },
}

/// Draws a question.
pub(in crate::gui) fn keep_question_ui(ui: &mut Ui, question: &KeepQuestion, out: &mut Vec<Action>) {
    match question {
        KeepQuestion::Recover { name, about, whole } => recover_ui(ui, name, about, *whole, out),
        KeepQuestion::Changed { file, dirty, saving, now } => changed_ui(ui, file, *dirty, *saving, *now, out),
        KeepQuestion::Blocked { why, others } => blocked_ui(ui, why, *others, out),
    }
}

fn recover_ui(ui: &mut Ui, name: &str, about: &[String], whole: bool, out: &mut Vec<Action>) {
    let head = if whole { "Unsaved work was found" } else { "Unsaved work was found, but it is damaged" };
    ui.label(theme::bold(head, 16.0));
    ui.label(theme::bold(name, 14.0));
    for sentence in about {
        ui.label(sentence);
    }
    ui.label(theme::soft(if whole {
        "Left, it is kept as a file of its own and can be opened later."
    } else {
        "It is kept as a file of its own; the job is as it was saved last."
    }));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if whole && primary(ui, "Take it up again").clicked() {
            out.push(Action::Keep(KeepWish::TakeUp));
        }
        let leave = if whole { ui.button("Leave it") } else { primary(ui, "Put it aside") };
        if leave.clicked() {
            out.push(Action::Keep(KeepWish::PutAside));
        }
    });
}

fn changed_ui(ui: &mut Ui, file: &str, dirty: bool, saving: bool, now: Fingerprint, out: &mut Vec<Action>) {
    ui.label(theme::bold(format!("“{file}” was changed by another program"), 16.0));
    ui.label(match (dirty, saving) {
        (_, true) => "It is not as it was when this window read it. Saving would replace what is there now.",
        (true, false) => "There are changes here too, which are not in it.",
        (false, false) => "This window still shows it as it was.",
    });
    ui.label(theme::soft(match (dirty, saving) {
        (_, true) => "What is written over is kept under the same name with ~. What is unsaved here is kept too when the file is read again.",
        (true, false) => "When the file is read again, what is unsaved here is kept as a file of its own.",
        (false, false) => "Nothing is unsaved here.",
    }));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if dirty || saving {
            if primary(ui, "Save a copy…").clicked() {
                out.push(Action::Effect(Effect::AskSaveAs));
            }
            if ui.button("Read it again").clicked() {
                out.push(Action::Keep(KeepWish::ReadAgain));
            }
        } else if primary(ui, "Read it again").clicked() {
            out.push(Action::Keep(KeepWish::ReadAgain));
        }
        if saving {
            if ui.button("Write over it").clicked() {
                out.push(Action::Keep(KeepWish::WriteOver(now)));
            }
            if ui.button("Cancel").clicked() {
                out.push(Action::Effect(Effect::Dismiss));
            }
        } else if ui.button("Go on with what is here").clicked() {
            out.push(Action::Keep(KeepWish::LeaveChange(now)));
        }
    });
}

fn blocked_ui(ui: &mut Ui, why: &str, others: bool, out: &mut Vec<Action>) {
    ui.label(theme::bold("It can't be saved under this name", 16.0));
    ui.label(why);
    ui.label(theme::soft("The file is as it was. Under another name the job can be saved."));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, "Save as…").clicked() {
            out.push(Action::Effect(Effect::AskSaveAs));
        }
        if others && ui.button("Try again").clicked() {
            out.push(Action::Keep(KeepWish::WorkHere));
        }
        if ui.button("Cancel").clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}
