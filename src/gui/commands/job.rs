//! Commands of the job as a whole and of its files.

use super::{CTRL, CTRL_SHIFT, Group, WindowCommand, always, key};
use crate::gui::action::{Action, Effect, Model};
use crate::gui::handover::{Form, Which};
use crate::gui::home::{HomeWish, PageKind};
use crate::gui::practice::PracticeWish;
use crate::gui::view_state::Workspace;
use eframe::egui::Key;

fn undo(m: &Model<'_>) -> Action {
    match m.view.workspace {
        Workspace::Practice => Action::Practice(PracticeWish::TakeBack),
        _ => Action::Effect(Effect::Undo),
    }
}

fn can_undo(m: &Model<'_>) -> Result<(), &'static str> {
    let there = match m.view.workspace {
        Workspace::Practice => m.practice.laying().is_some(),
        _ => m.document.undo_label().is_some(),
    };
    there.then_some(()).ok_or("There is nothing to take back.")
}

fn can_redo(m: &Model<'_>) -> Result<(), &'static str> {
    let there = m.view.workspace != Workspace::Practice && m.document.redo_label().is_some();
    there.then_some(()).ok_or("Nothing was taken back.")
}

fn is_dirty(m: &Model<'_>) -> Result<(), &'static str> {
    m.document.is_dirty().then_some(()).ok_or("Everything is saved.")
}

fn has_readings(m: &Model<'_>) -> Result<(), &'static str> {
    m.insight.panels.iter().any(|p| p.film.is_some()).then_some(()).ok_or("No panel has been read yet.")
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    WindowCommand {
        id: "new",
        group: Group::Job,
        name: "New",
        does: "Begins a new job with the crew and the rules of the shop.",
        keys: &[key(CTRL, Key::N)],
        usable: always,
        wish: |_| Action::Effect(Effect::New),
    },
    WindowCommand {
        id: "open",
        group: Group::Job,
        name: "Open",
        does: "Opens the file of a job.",
        keys: &[key(CTRL, Key::O)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskOpen),
    },
    WindowCommand {
        id: "all-jobs",
        group: Group::Job,
        name: "All jobs",
        does: "Looks through a folder of jobs by plate, owner, vehicle, day or open points.",
        keys: &[key(CTRL_SHIFT, Key::O)],
        usable: always,
        wish: |_| Action::Home(HomeWish::Show(PageKind::Jobs)),
    },
    WindowCommand {
        id: "vehicle-history",
        group: Group::Job,
        name: "Earlier visits of this vehicle",
        does: "Lists the jobs with the plate of this one, the first visit first.",
        keys: &[],
        usable: |m| {
            let plate = !m.job.vehicle.plate.trim().is_empty();
            plate.then_some(()).ok_or("The vehicle has no plate or other mark; enter it in Job.")
        },
        wish: |_| Action::Home(HomeWish::Show(PageKind::Visits)),
    },
    WindowCommand {
        id: "next-visit",
        group: Group::Job,
        name: "Begin the next visit",
        does: "Begins the job for the next visit of the same vehicle; what was taken off stays noted.",
        keys: &[],
        usable: always,
        wish: |_| Action::Effect(Effect::NextVisit),
    },
    WindowCommand {
        id: "save",
        group: Group::Job,
        name: "Save",
        does: "Saves the job.",
        keys: &[key(CTRL, Key::S)],
        usable: is_dirty,
        wish: |_| Action::Effect(Effect::Save),
    },
    WindowCommand {
        id: "save-as",
        group: Group::Job,
        name: "Save as",
        does: "Saves the job under another name.",
        keys: &[key(CTRL_SHIFT, Key::S)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskSaveAs),
    },
    WindowCommand {
        id: "undo",
        group: Group::Job,
        name: "Undo",
        does: "Takes the last change back.",
        keys: &[key(CTRL, Key::Z)],
        usable: can_undo,
        wish: undo,
    },
    WindowCommand {
        id: "redo",
        group: Group::Job,
        name: "Redo",
        does: "Makes the change again that was taken back.",
        keys: &[key(CTRL_SHIFT, Key::Z), key(CTRL, Key::Y)],
        usable: can_redo,
        wish: |_| Action::Effect(Effect::Redo),
    },
    WindowCommand {
        id: "import",
        group: Group::Job,
        name: "Readings from a file",
        does: "Shows the readings of a CSV file before they are added.",
        keys: &[key(CTRL, Key::I)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskReadings),
    },
    WindowCommand {
        id: "paste",
        group: Group::Job,
        name: "Paste readings",
        does: "Shows copied rows of readings before they are added; the first row names the columns.",
        keys: &[key(CTRL, Key::V)],
        usable: always,
        wish: |_| Action::Home(HomeWish::AskPaste),
    },
    WindowCommand {
        id: "copy",
        group: Group::Job,
        name: "Copy the table",
        does: "Copies the table of this workspace, for a spreadsheet.",
        keys: &[key(CTRL, Key::C)],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyTable),
    },
    WindowCommand {
        id: "copy-drawing",
        group: Group::Job,
        name: "Copy the map as a drawing",
        does: "Copies the map as SVG text.",
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyMap(Form::Svg)),
    },
    WindowCommand {
        id: "copy-picture",
        group: Group::Job,
        name: "Copy the map as a picture",
        does: "Copies the map as a picture.",
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyMap(Form::Png)),
    },
    WindowCommand {
        id: "print-customer",
        group: Group::Job,
        name: "Print the customer sheet",
        does: "Opens the customer sheet in the viewer of the system, to be printed there.",
        keys: &[key(CTRL, Key::P)],
        usable: has_readings,
        wish: |_| Action::Home(HomeWish::Print(Which::Customer)),
    },
    WindowCommand {
        id: "print-crew",
        group: Group::Job,
        name: "Print the crew cards",
        does: "Opens the crew cards in the viewer of the system, to be printed there.",
        keys: &[],
        usable: |m| (!m.rows.is_empty()).then_some(()).ok_or("There is no order of coating yet."),
        wish: |_| Action::Home(HomeWish::Print(Which::Crew)),
    },
    WindowCommand {
        id: "print-record",
        group: Group::Job,
        name: "Print the technical record",
        does: "Opens the technical record in the viewer of the system, to be printed there.",
        keys: &[],
        usable: has_readings,
        wish: |_| Action::Home(HomeWish::Print(Which::Record)),
    },
];
