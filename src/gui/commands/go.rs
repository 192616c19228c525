//! Commands that go somewhere: to a workspace, to a page, about the map.

use super::{ALT, BARE, CTRL, Group, WindowCommand, always, key};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::home::{HomeWish, PageKind};
use crate::gui::view_state::{Tool, Workspace};
use crate::say;
use crate::scene::Overlay;
use eframe::egui::Key;

macro_rules! workspace {
    ($id:literal, $key:ident, $workspace:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Go,
            keys: &[key(CTRL, Key::$key)],
            usable: always,
            wish: |_| Action::View(ViewChange::Workspace(Workspace::$workspace)),
        }
    };
}

macro_rules! overlay {
    ($id:literal, $key:ident, $overlay:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Map,
            keys: &[key(ALT, Key::$key)],
            usable: shows_map,
            wish: |_| Action::View(ViewChange::Overlay(Overlay::$overlay)),
        }
    };
}

macro_rules! page {
    ($id:literal, $keys:expr, $page:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Go,
            keys: $keys,
            usable: always,
            wish: |_| Action::Home(HomeWish::Show(PageKind::$page)),
        }
    };
}

fn shows_map(m: &Model<'_>) -> Result<(), &'static str> {
    let other = matches!(m.view.workspace, Workspace::Bay | Workspace::Handover | Workspace::Practice);
    if other { Err(say!("command-not-map")) } else { Ok(()) }
}

fn any_chosen(m: &Model<'_>) -> Result<(), &'static str> {
    (!m.view.chosen.is_empty()).then_some(()).ok_or_else(|| say!("command-not-chosen"))
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    page!("find", &[key(CTRL, Key::K)], Find),
    page!("help", &[key(BARE, Key::F1)], Help),
    page!("table", &[key(CTRL, Key::T)], Table),
    page!("preferences", &[key(CTRL, Key::Comma)], Preferences),
    WindowCommand {
        id: "hints",
        group: Group::Go,
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::Hint(Some(0))),
    },
    workspace!("job", Num1, Job),
    workspace!("survey", Num2, Survey),
    workspace!("correction", Num3, Correction),
    workspace!("coating", Num4, Coating),
    workspace!("bay", Num5, Bay),
    workspace!("handover", Num6, Handover),
    workspace!("practice", Num7, Practice),
    overlay!("film", Num1, Film),
    overlay!("defects", Num2, Defects),
    overlay!("polish", Num3, Polish),
    overlay!("order", Num4, Order),
    WindowCommand {
        id: "fit",
        group: Group::Map,
        keys: &[key(BARE, Key::F)],
        usable: always,
        wish: |_| Action::View(ViewChange::Fit),
    },
    WindowCommand {
        id: "fit-chosen",
        group: Group::Map,
        keys: &[key(BARE, Key::Z)],
        usable: any_chosen,
        wish: |_| Action::View(ViewChange::FitChosen),
    },
    WindowCommand {
        id: "choose-painted",
        group: Group::Map,
        keys: &[],
        usable: always,
        wish: |m| {
            let painted = m.template.panels.iter().filter(|p| p.surface == crate::vehicle::Surface::Paint);
            Action::View(ViewChange::ChooseAll(painted.map(|p| p.id.clone()).collect()))
        },
    },
    WindowCommand {
        id: "let-go",
        group: Group::Map,
        keys: &[key(BARE, Key::Escape)],
        usable: always,
        wish: |m| match m.view.tool {
            _ if m.home.hint.is_some() => Action::Home(HomeWish::Hint(None)),
            Tool::Choose => Action::View(ViewChange::Choose(None)),
            _ => Action::View(ViewChange::Tool(Tool::Choose)),
        },
    },
];
