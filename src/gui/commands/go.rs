//! Commands that go somewhere: to a workspace, to a page, about the map.

use super::{ALT, BARE, CTRL, Group, WindowCommand, always, key};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::home::{HomeWish, PageKind};
use crate::gui::view_state::{Tool, Workspace};
use crate::scene::Overlay;
use eframe::egui::Key;

macro_rules! workspace {
    ($id:literal, $name:literal, $does:literal, $key:ident, $workspace:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Go,
            name: $name,
            does: $does,
            keys: &[key(CTRL, Key::$key)],
            usable: always,
            wish: |_| Action::View(ViewChange::Workspace(Workspace::$workspace)),
        }
    };
}

macro_rules! overlay {
    ($id:literal, $name:literal, $does:literal, $key:ident, $overlay:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Map,
            name: $name,
            does: $does,
            keys: &[key(ALT, Key::$key)],
            usable: shows_map,
            wish: |_| Action::View(ViewChange::Overlay(Overlay::$overlay)),
        }
    };
}

macro_rules! page {
    ($id:literal, $name:literal, $does:literal, $keys:expr, $page:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Go,
            name: $name,
            does: $does,
            keys: $keys,
            usable: always,
            wish: |_| Action::Home(HomeWish::Show(PageKind::$page)),
        }
    };
}

fn shows_map(m: &Model<'_>) -> Result<(), &'static str> {
    let other = matches!(m.view.workspace, Workspace::Bay | Workspace::Handover | Workspace::Practice);
    if other { Err("This workspace has a picture of its own.") } else { Ok(()) }
}

fn any_chosen(m: &Model<'_>) -> Result<(), &'static str> {
    (!m.view.chosen.is_empty()).then_some(()).ok_or("No panel is chosen.")
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    page!(
        "find",
        "Find a command",
        "Finds a command, a panel or a recent job by its name.",
        &[key(CTRL, Key::K)],
        Find
    ),
    page!("help", "Help", "What each workspace is for, all keys, and the cautions.", &[key(BARE, Key::F1)], Help),
    page!("table", "Table of panels", "Everything that the map shows, as a table.", &[key(CTRL, Key::T)], Table),
    page!(
        "preferences",
        "Preferences",
        "Units, names, looks, the crew of new jobs.",
        &[key(CTRL, Key::Comma)],
        Preferences
    ),
    WindowCommand {
        id: "hints",
        group: Group::Go,
        name: "Show the hints again",
        does: "Shows the five hints of the first time.",
        keys: &[],
        usable: always,
        wish: |_| Action::Home(HomeWish::Hint(Some(0))),
    },
    workspace!("job", "Go to Job", "Vehicle, customer, crew.", Num1, Job),
    workspace!("survey", "Go to Survey", "Readings and defects.", Num2, Survey),
    workspace!("correction", "Go to Correction", "What may go, what must, what will.", Num3, Correction),
    workspace!("coating", "Go to Coating", "Product, air, order of the crew.", Num4, Coating),
    workspace!("bay", "Go to Bay", "The order being worked.", Num5, Bay),
    workspace!("handover", "Go to Handover", "Sheets for customer, crew and shop.", Num6, Handover),
    workspace!("practice", "Go to Practice", "Exercises for apprentices.", Num7, Practice),
    overlay!("film", "Show the film", "The map shows how thick the film is.", Num1, Film),
    overlay!("defects", "Show the defects", "The map shows what is wrong and where.", Num2, Defects),
    overlay!("polish", "Show the polishing", "The map shows how hard each panel is worked.", Num3, Polish),
    overlay!("order", "Show the order", "The map shows who goes where and when.", Num4, Order),
    WindowCommand {
        id: "fit",
        group: Group::Map,
        name: "Fit the vehicle",
        does: "Shows the whole vehicle.",
        keys: &[key(BARE, Key::F)],
        usable: always,
        wish: |_| Action::View(ViewChange::Fit),
    },
    WindowCommand {
        id: "fit-chosen",
        group: Group::Map,
        name: "Zoom to what is chosen",
        does: "Shows the chosen panels as large as they go.",
        keys: &[key(BARE, Key::Z)],
        usable: any_chosen,
        wish: |_| Action::View(ViewChange::FitChosen),
    },
    WindowCommand {
        id: "choose-painted",
        group: Group::Map,
        name: "Choose all painted panels",
        does: "Chooses every painted panel, to change them together.",
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
        name: "Choose nothing",
        does: "Puts the tool away; then lets go of what is chosen.",
        keys: &[key(BARE, Key::Escape)],
        usable: always,
        wish: |m| match m.view.tool {
            Tool::Choose => Action::View(ViewChange::Choose(None)),
            _ => Action::View(ViewChange::Tool(Tool::Choose)),
        },
    },
];
