//! Questions that must be answered before anything else, and messages that must be read.

use super::action::{Action, Effect};
use super::edit::{self, VehicleWish};
use super::entry::EntryWish;
use super::files::Purpose;
use super::handover::Form;
use super::keep::{KeepQuestion, KeepWish, keep_question_ui};
use super::theme;
use super::widgets::{page_over, primary};
use crate::cli::Failure;
use crate::file::Listed;
use crate::say;
use crate::units::capital;
use eframe::egui::text::{CCursor, CCursorRange};
use eframe::egui::{self, Key, Ui};
use std::path::{Path, PathBuf};

/// What is on screen.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Question {
    /// A number was typed and not entered, and would be lost by what comes next.
    Typed {
        /// What stands there.
        draft: String,
        /// What was about to happen.
        then: Next,
    },
    /// Something is unsaved and would be lost by what comes next.
    Unsaved {
        /// What the job is called.
        name: String,
        /// What was about to happen.
        then: Next,
    },
    /// The system has no file dialog, so the path is typed here.
    Path {
        /// What for.
        purpose: Purpose,
        /// What is typed so far; at first a place that may fit, chosen whole.
        draft: String,
        /// Whether the field still has to take the focus.
        fresh: bool,
    },
    /// Changes of the vehicle would be lost by what comes next.
    DropVehicle {
        /// What was about to happen; nothing more where somebody only wants to leave.
        then: Option<Next>,
    },
    /// What a changed vehicle shall be called.
    NameVehicle {
        /// What is typed so far.
        draft: String,
        /// Where it will be kept.
        folder: Option<String>,
        /// Whether the field still has to take the focus.
        fresh: bool,
    },
    /// A vehicle of one's own would be saved over what it was.
    ReplaceVehicle {
        name: String,
        /// What the old file will be called.
        kept: String,
    },
    /// Which vehicles of one's own there are.
    OwnVehicles {
        own: Vec<Listed>,
        /// The one that the job uses.
        used: String,
    },
    /// A vehicle of one's own would be deleted.
    DeleteVehicle {
        id: String,
        name: String,
        /// What its file will be called.
        kept: String,
    },
    /// Something about unsaved work or a changed file.
    Keep(KeepQuestion),
    /// Something could not be done.
    Failed(Failure),
}

/// What happens once an unsaved job is dealt with.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Next {
    Close,
    New,
    LaterVisit,
    AskOpen,
    Open(PathBuf),
}

impl Next {
    pub(super) fn effect(self) -> Effect {
        match self {
            Self::Close => Effect::Close,
            Self::New => Effect::New,
            Self::LaterVisit => Effect::NextVisit,
            Self::AskOpen => Effect::AskOpen,
            Self::Open(path) => Effect::Open(path),
        }
    }
}

/// Draws the question; answers come as effects.
pub(super) fn question_ui(ui: &mut Ui, question: &mut Question, out: &mut Vec<Action>) {
    let shown = page_over(ui, "question").show(ui, |ui| {
        ui.set_width(420.0);
        match question {
            Question::Unsaved { name, then } => {
                ui.label(theme::bold(say!("window-save-first", name = &*name), 16.0));
                ui.label(say!("window-not-in-file"));
                ui.add_space(8.0);
                ui.horizontal(|ui| {
                    let mut effect = |effect| out.push(Action::Effect(effect));
                    if primary(ui, say!("common-save")).clicked() {
                        effect(Effect::Save);
                    }
                    if ui.button(say!("window-do-not-save")).clicked() {
                        effect(Effect::Discard);
                        effect(then.clone().effect());
                    }
                    if ui.button(say!("common-cancel")).clicked() {
                        effect(Effect::Dismiss);
                    }
                });
            }
            Question::Typed { draft, then } => {
                ui.label(theme::bold(say!("window-typed", text = &*draft), 16.0));
                ui.label(say!("window-typed-enter"));
                ui.add_space(8.0);
                ui.horizontal(|ui| {
                    let mut effect = |effect| out.push(Action::Effect(effect));
                    if primary(ui, say!("window-enter-it")).clicked() {
                        effect(Effect::EnterTyped(then.clone()));
                    }
                    if ui.button(say!("window-leave-it-out")).clicked() {
                        out.push(Action::Entry(EntryWish::Clear));
                        out.push(Action::Effect(then.clone().effect()));
                    } else if ui.button(say!("common-cancel")).clicked() {
                        out.push(Action::Effect(Effect::Dismiss));
                    }
                });
            }
            Question::Path { purpose, draft, fresh } => {
                let (button, example) = match purpose {
                    Purpose::Open => (say!("common-open"), say!("window-example-job")),
                    Purpose::Save => (say!("common-save"), say!("window-example-job")),
                    Purpose::Readings => (say!("window-show"), say!("window-example-readings")),
                    Purpose::Photo => (say!("window-add"), say!("window-example-picture")),
                    Purpose::Folder => (say!("window-look-through"), say!("window-example-folder")),
                    Purpose::Sheet(Form::Pdf, _) => (say!("window-write"), say!("window-example-pdf")),
                    Purpose::Sheet(Form::Html, _) => (say!("window-write"), say!("window-example-web-page")),
                    Purpose::Sheet(Form::List, _) => (say!("window-write"), say!("window-example-list")),
                    Purpose::Sheet(Form::Calendar, _) => (say!("window-write"), say!("window-example-calendar")),
                    Purpose::Sheet(Form::Svg, _) => (say!("window-write"), say!("window-example-drawing")),
                    Purpose::Sheet(Form::Png, _) => (say!("window-write"), say!("window-example-map")),
                };
                ui.label(theme::bold(purpose.title(), 16.0));
                let name = ui.label(theme::soft(say!("window-path-of-file", example = example)));
                let edit = egui::TextEdit::singleline(draft)
                    .desired_width(f32::INFINITY)
                    .margin(egui::Margin::symmetric(8, 6));
                let response = ui.add(edit).labelled_by(name.id);
                if std::mem::take(fresh) {
                    response.request_focus();
                    choose_all(ui, response.id, draft);
                }
                let entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
                ui.add_space(8.0);
                ui.horizontal(|ui| {
                    let clicked = primary(ui, button).clicked();
                    if (clicked || entered) && !draft.trim().is_empty() {
                        let path = typed_path(draft);
                        // A dialog asks by itself before it gives the name of a file that is there.
                        out.push(match purpose {
                            Purpose::Save => Action::Keep(KeepWish::SaveTyped(path)),
                            other => other.wish(path),
                        });
                    }
                    if ui.button(say!("common-cancel")).clicked() {
                        out.push(Action::Effect(Effect::Dismiss));
                    }
                });
            }
            Question::DropVehicle { then } => drop_vehicle(ui, then.as_ref(), out),
            Question::NameVehicle { draft, folder, fresh } => name_vehicle(ui, draft, folder.as_deref(), fresh, out),
            Question::ReplaceVehicle { name, kept } => edit::replace_ui(ui, name, kept, out),
            Question::OwnVehicles { own, used } => edit::own_ui(ui, own, used, out),
            Question::DeleteVehicle { id, name, kept } => edit::delete_ui(ui, id, name, kept, out),
            Question::Keep(question) => keep_question_ui(ui, question, out),
            Question::Failed(failure) => {
                ui.label(theme::bold(say!("window-not-done"), 16.0));
                ui.label(capital(failure.error()));
                ui.label(theme::soft(capital(failure.hint())));
                ui.add_space(8.0);
                if primary(ui, say!("common-close")).clicked() {
                    out.push(Action::Effect(Effect::Dismiss));
                }
            }
        }
    });
    if shown.should_close() {
        out.push(Action::Effect(Effect::Dismiss));
    }
}

/// Chooses all that stands in a field, so that typing replaces it.
fn choose_all(ui: &Ui, field: egui::Id, text: &str) {
    let all = CCursorRange::two(CCursor::new(0), CCursor::new(text.chars().count()));
    let mut state = egui::TextEdit::load_state(ui.ctx(), field).unwrap_or_default();
    state.cursor.set_char_range(Some(all));
    state.store(ui.ctx(), field);
}

/// A path as people type it, with `~` for their own folder.
fn typed_path(typed: &str) -> PathBuf {
    let path = Path::new(typed.trim());
    match (path.strip_prefix("~"), std::env::home_dir()) {
        (Ok(rest), Some(home)) => home.join(rest),
        _ => path.to_owned(),
    }
}

fn drop_vehicle(ui: &mut Ui, then: Option<&Next>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("window-drop-vehicle-changes"), 16.0));
    ui.label(say!("window-job-keeps-vehicle"));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        if primary(ui, say!("window-go-on-editing")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
        if ui.button(say!("window-drop-changes")).clicked() {
            out.push(Action::Vehicle(VehicleWish::Drop));
            out.extend(then.cloned().map(|next| Action::Effect(next.effect())));
        }
    });
}

fn name_vehicle(ui: &mut Ui, draft: &mut String, folder: Option<&str>, fresh: &mut bool, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("window-save-own-vehicle"), 16.0));
    let name = ui.label(theme::soft(say!("window-vehicle-name")));
    let edit = egui::TextEdit::singleline(draft)
        .desired_width(f32::INFINITY)
        .char_limit(60)
        .margin(egui::Margin::symmetric(8, 6));
    let response = ui.add(edit).labelled_by(name.id);
    if std::mem::take(fresh) {
        response.request_focus();
    }
    let entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
    ui.label(theme::soft(folder.map_or_else(
        || say!("window-no-vehicle-folder").to_owned(),
        |folder| say!("window-vehicle-kept-in", folder = folder),
    )));
    ui.add_space(8.0);
    ui.horizontal(|ui| {
        let clicked = primary(ui, say!("common-save")).clicked();
        if (clicked || entered) && !draft.trim().is_empty() {
            out.push(Action::Vehicle(VehicleWish::SaveAs(draft.clone())));
        }
        if ui.button(say!("common-cancel")).clicked() {
            out.push(Action::Effect(Effect::Dismiss));
        }
    });
}
