//! Commands of the job as a whole and of its files.

use super::{CTRL, CTRL_SHIFT, Group, WindowCommand, always, key};
use crate::gui::action::{Action, Effect, Model};
use crate::gui::handover::{Form, Which};
use crate::gui::home::{HomeWish, PageKind};
use crate::gui::practice::PracticeWish;
use crate::gui::view_state::Workspace;
use crate::say;
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
    there.then_some(()).ok_or_else(|| say!("command-not-undo"))
}

fn can_redo(m: &Model<'_>) -> Result<(), &'static str> {
    let there = m.view.workspace != Workspace::Practice && m.document.redo_label().is_some();
    there.then_some(()).ok_or_else(|| say!("command-not-redo"))
}

fn is_dirty(m: &Model<'_>) -> Result<(), &'static str> {
    m.document.is_dirty().then_some(()).ok_or_else(|| say!("command-not-dirty"))
}

fn has_readings(m: &Model<'_>) -> Result<(), &'static str> {
    m.insight.panels.iter().any(|p| p.film.is_some()).then_some(()).ok_or_else(|| say!("command-not-read"))
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    WindowCommand {
        id: "new",
        group: Group::Job,
        keys: &[key(CTRL, Key::N)],
        usable: always,
        wish: |_| Action::Effect(Effect::New),
    },
    WindowCommand {
        id: "open",
        group: Group::Job,
        keys: &[key(CTRL, Key::O)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskOpen),
    },
    WindowCommand {
        id: "all-jobs",
        group: Group::Job,
        keys: &[key(CTRL_SHIFT, Key::O)],
        usable: always,
        wish: |_| Action::Home(HomeWish::Show(PageKind::Jobs)),
    },
    WindowCommand {
        id: "vehicle-history",
        group: Group::Job,
        keys: &[],
        usable: |m| {
            let plate = !m.job.vehicle.plate.trim().is_empty();
            plate.then_some(()).ok_or_else(|| say!("command-not-plate"))
        },
        wish: |_| Action::Home(HomeWish::Show(PageKind::Visits)),
    },
    WindowCommand {
        id: "next-visit",
        group: Group::Job,
        keys: &[],
        usable: always,
        wish: |_| Action::Effect(Effect::NextVisit),
    },
    WindowCommand {
        id: "save",
        group: Group::Job,
        keys: &[key(CTRL, Key::S)],
        usable: is_dirty,
        wish: |_| Action::Effect(Effect::Save),
    },
    WindowCommand {
        id: "save-as",
        group: Group::Job,
        keys: &[key(CTRL_SHIFT, Key::S)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskSaveAs),
    },
    WindowCommand { id: "undo", group: Group::Job, keys: &[key(CTRL, Key::Z)], usable: can_undo, wish: undo },
    WindowCommand {
        id: "redo",
        group: Group::Job,
        keys: &[key(CTRL_SHIFT, Key::Z), key(CTRL, Key::Y)],
        usable: can_redo,
        wish: |_| Action::Effect(Effect::Redo),
    },
    WindowCommand {
        id: "import",
        group: Group::Job,
        keys: &[key(CTRL, Key::I)],
        usable: always,
        wish: |_| Action::Effect(Effect::AskReadings),
    },
    WindowCommand {
        id: "paste",
        group: Group::Job,
        keys: &[key(CTRL, Key::V)],
        usable: always,
        wish: |_| Action::Home(HomeWish::AskPaste),
    },
    WindowCommand {
        id: "copy",
        group: Group::Job,
        keys: &[key(CTRL, Key::C)],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyTable),
    },
    WindowCommand {
        id: "copy-drawing",
        group: Group::Job,
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyMap(Form::Svg)),
    },
    WindowCommand {
        id: "copy-picture",
        group: Group::Job,
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::CopyMap(Form::Png)),
    },
    WindowCommand {
        id: "print-customer",
        group: Group::Job,
        keys: &[key(CTRL, Key::P)],
        usable: has_readings,
        wish: |_| Action::Home(HomeWish::Print(Which::Customer)),
    },
    WindowCommand {
        id: "print-crew",
        group: Group::Job,
        keys: &[],
        usable: |m| (!m.rows.is_empty()).then_some(()).ok_or_else(|| say!("command-not-order")),
        wish: |_| Action::Home(HomeWish::Print(Which::Crew)),
    },
    WindowCommand {
        id: "print-record",
        group: Group::Job,
        keys: &[],
        usable: has_readings,
        wish: |_| Action::Home(HomeWish::Print(Which::Record)),
    },
];
