//! Commands of the work itself.

use super::{Group, WindowCommand, always, key};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::bay::{BayWish, Trade};
use crate::gui::edit::VehicleWish;
use crate::gui::entry::EntryWish;
use crate::gui::handover::Which;
use crate::gui::home::HomeWish;
use crate::gui::practice::PracticeWish;
use crate::gui::view_state::{Shape, Tool, Workspace};
use crate::job::Command;
use crate::polish::DefectKind;
use crate::say;
use crate::work::Place;
use eframe::egui::Key;

type Usable = Result<(), &'static str>;

fn when(is: bool, otherwise: &'static str) -> Usable {
    is.then_some(()).ok_or(otherwise)
}

fn in_survey(m: &Model<'_>) -> Usable {
    when(m.view.workspace == Workspace::Survey, say!("command-not-survey"))
}

fn in_practice(m: &Model<'_>) -> Usable {
    when(m.view.workspace == Workspace::Practice && m.practice.doing().is_some(), say!("command-not-exercise"))
}

fn one_chosen(m: &Model<'_>) -> Usable {
    when(m.current().is_some() && m.view.workspace == Workspace::Survey, say!("command-not-one"))
}

fn can_begin(m: &Model<'_>) -> Usable {
    let run = m.day_run();
    when(m.bay.running().is_none(), say!("command-not-runs"))?;
    when(*run.place() != Place::Nowhere, say!("command-not-saved"))?;
    when(run.can_begin(), say!("command-not-begin"))
}

macro_rules! sheet {
    ($id:literal, $which:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Work,
            keys: &[],
            usable: always,
            wish: |_| Action::Home(HomeWish::Sheet(Which::$which)),
        }
    };
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    WindowCommand {
        id: "edit-vehicle",
        group: Group::Work,
        keys: &[],
        usable: always,
        wish: |_| Action::Vehicle(VehicleWish::Begin),
    },
    WindowCommand {
        id: "own-vehicles",
        group: Group::Work,
        keys: &[],
        usable: |m| when(m.bodies.iter().any(|l| l.own), say!("command-not-own")),
        wish: |_| Action::Vehicle(VehicleWish::ShowOwn),
    },
    WindowCommand {
        id: "keep-crew",
        group: Group::Work,
        keys: &[],
        usable: |m| when(m.home.preferences.crew != m.job.crew, say!("command-not-crew")),
        wish: |_| Action::Home(HomeWish::KeepCrew),
    },
    WindowCommand {
        id: "draw-defect",
        group: Group::Work,
        keys: &[],
        usable: one_chosen,
        wish: |_| Action::View(ViewChange::Tool(Tool::PlaceDefect(DefectKind::Swirl, Shape::Point))),
    },
    WindowCommand {
        id: "skip-spot",
        group: Group::Work,
        keys: &[],
        usable: in_survey,
        wish: |_| Action::Entry(EntryWish::Skip),
    },
    WindowCommand {
        id: "repeat-spot",
        group: Group::Work,
        keys: &[],
        usable: in_survey,
        wish: |_| Action::Entry(EntryWish::Repeat),
    },
    WindowCommand {
        id: "skipped-spots",
        group: Group::Work,
        keys: &[],
        usable: |m| {
            in_survey(m)?;
            when(!m.view.entry.skipped.is_empty(), say!("command-not-skipped"))
        },
        wish: |_| Action::Entry(EntryWish::Skipped),
    },
    WindowCommand {
        id: "keypad",
        group: Group::Work,
        keys: &[],
        usable: in_survey,
        wish: |m| Action::Entry(EntryWish::Pad(!m.view.entry.pad)),
    },
    WindowCommand {
        id: "accept-order",
        group: Group::Work,
        keys: &[],
        usable: |m| when(m.order.is_current() && m.order.order().is_some(), say!("command-not-accept")),
        wish: accept,
    },
    WindowCommand {
        id: "coating-day",
        group: Group::Work,
        keys: &[],
        usable: always,
        wish: |_| Action::Bay(BayWish::Show(Trade::Coating)),
    },
    WindowCommand {
        id: "polishing-day",
        group: Group::Work,
        keys: &[],
        usable: always,
        wish: |_| Action::Bay(BayWish::Show(Trade::Polishing)),
    },
    WindowCommand {
        id: "start-day",
        group: Group::Work,
        keys: &[],
        usable: can_begin,
        wish: |_| Action::Bay(BayWish::Begin),
    },
    sheet!("customer-sheet", Customer),
    sheet!("crew-cards", Crew),
    sheet!("record", Record),
    WindowCommand {
        id: "big-screen",
        group: Group::Work,
        keys: &[key(super::BARE, Key::F11)],
        usable: always,
        wish: |_| Action::Home(HomeWish::BigScreen),
    },
    WindowCommand {
        id: "hint",
        group: Group::Work,
        keys: &[],
        usable: in_practice,
        wish: |_| Action::Practice(PracticeWish::Hint),
    },
    WindowCommand {
        id: "leave-exercise",
        group: Group::Work,
        keys: &[],
        usable: in_practice,
        wish: |_| Action::Practice(PracticeWish::Leave),
    },
];

/// Keeps the order; where there is none, clears what is kept, which the list does not offer.
fn accept(m: &Model<'_>) -> Action {
    Action::edit(Command::SetOrder(m.order.order().map(|o| std::sync::Arc::clone(&o.plan))))
}
