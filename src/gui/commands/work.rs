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
use crate::work::Place;
use eframe::egui::Key;

type Usable = Result<(), &'static str>;

fn when(is: bool, otherwise: &'static str) -> Usable {
    is.then_some(()).ok_or(otherwise)
}

fn in_survey(m: &Model<'_>) -> Usable {
    when(m.view.workspace == Workspace::Survey, "Only in Survey.")
}

fn in_practice(m: &Model<'_>) -> Usable {
    when(m.view.workspace == Workspace::Practice && m.practice.doing().is_some(), "Only during an exercise.")
}

fn one_chosen(m: &Model<'_>) -> Usable {
    when(m.current().is_some() && m.view.workspace == Workspace::Survey, "Choose a panel in Survey first.")
}

fn can_begin(m: &Model<'_>) -> Usable {
    let run = m.day_run();
    when(m.bay.running().is_none(), "A day runs already.")?;
    when(*run.place() != Place::Nowhere, "Save the job first, so that every tap can be written beside it.")?;
    when(run.can_begin(), "There is no order to begin with yet.")
}

macro_rules! sheet {
    ($id:literal, $name:literal, $does:literal, $which:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Work,
            name: $name,
            does: $does,
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
        name: "Edit the vehicle",
        does: "Cuts or joins panels, leaves some out, moves the places to stand.",
        keys: &[],
        usable: always,
        wish: |_| Action::Vehicle(VehicleWish::Begin),
    },
    WindowCommand {
        id: "own-vehicles",
        group: Group::Work,
        name: "Your vehicles",
        does: "Shows the vehicles that were changed and saved here.",
        keys: &[],
        usable: |m| when(m.bodies.iter().any(|l| l.own), "There is no vehicle of your own yet; edit one and save it."),
        wish: |_| Action::Vehicle(VehicleWish::ShowOwn),
    },
    WindowCommand {
        id: "keep-crew",
        group: Group::Work,
        name: "Use this crew for new jobs",
        does: "New jobs begin with the crew of this one.",
        keys: &[],
        usable: |m| when(m.home.preferences.crew != m.job.crew, "New jobs have this crew already."),
        wish: |_| Action::Home(HomeWish::KeepCrew),
    },
    WindowCommand {
        id: "draw-defect",
        group: Group::Work,
        name: "Draw a defect",
        does: "Draws defects on the map of the chosen panel.",
        keys: &[],
        usable: one_chosen,
        wish: |_| Action::View(ViewChange::Tool(Tool::PlaceDefect(DefectKind::Swirl, Shape::Point))),
    },
    WindowCommand {
        id: "skip-spot",
        group: Group::Work,
        name: "Skip this spot",
        does: "Leaves this spot for later.",
        keys: &[],
        usable: in_survey,
        wish: |_| Action::Entry(EntryWish::Skip),
    },
    WindowCommand {
        id: "repeat-spot",
        group: Group::Work,
        name: "Measure this spot again",
        does: "Takes the readings of this spot away, to measure it again.",
        keys: &[],
        usable: in_survey,
        wish: |_| Action::Entry(EntryWish::Repeat),
    },
    WindowCommand {
        id: "skipped-spots",
        group: Group::Work,
        name: "Back to the skipped spots",
        does: "Goes to the first spot that was skipped.",
        keys: &[],
        usable: |m| {
            in_survey(m)?;
            when(!m.view.entry.skipped.is_empty(), "No spot was skipped.")
        },
        wish: |_| Action::Entry(EntryWish::Skipped),
    },
    WindowCommand {
        id: "keypad",
        group: Group::Work,
        name: "Large keys for readings",
        does: "Shows large number keys on the screen, or puts them away.",
        keys: &[],
        usable: in_survey,
        wish: |m| Action::Entry(EntryWish::Pad(!m.view.entry.pad)),
    },
    WindowCommand {
        id: "accept-order",
        group: Group::Work,
        name: "Accept this order",
        does: "Keeps the order of coating that is shown with the job.",
        keys: &[],
        usable: |m| when(m.order.is_current() && m.order.order().is_some(), "There is no order for this job yet."),
        wish: accept,
    },
    WindowCommand {
        id: "coating-day",
        group: Group::Work,
        name: "Show the day of coating",
        does: "The bay shows the coating.",
        keys: &[],
        usable: always,
        wish: |_| Action::Bay(BayWish::Show(Trade::Coating)),
    },
    WindowCommand {
        id: "polishing-day",
        group: Group::Work,
        name: "Show the day of polishing",
        does: "The bay shows the polishing.",
        keys: &[],
        usable: always,
        wish: |_| Action::Bay(BayWish::Show(Trade::Polishing)),
    },
    WindowCommand {
        id: "start-day",
        group: Group::Work,
        name: "Start the day in the bay",
        does: "Begins the day; from then on every tap is written.",
        keys: &[],
        usable: can_begin,
        wish: |_| Action::Bay(BayWish::Begin),
    },
    sheet!("customer-sheet", "Show the customer sheet", "Shows the pages for the customer.", Customer),
    sheet!("crew-cards", "Show the crew cards", "Shows the pages for the crew.", Crew),
    sheet!("record", "Show the technical record", "Shows the pages for the next visit.", Record),
    WindowCommand {
        id: "big-screen",
        group: Group::Work,
        name: "Big screen",
        does: "Plays the plan over the vehicle in the whole window, for a customer.",
        keys: &[key(super::BARE, Key::F11)],
        usable: always,
        wish: |_| Action::Home(HomeWish::BigScreen),
    },
    WindowCommand {
        id: "hint",
        group: Group::Work,
        name: "Give me a hint",
        does: "Says a reason for the next step of the exercise.",
        keys: &[],
        usable: in_practice,
        wish: |_| Action::Practice(PracticeWish::Hint),
    },
    WindowCommand {
        id: "leave-exercise",
        group: Group::Work,
        name: "All exercises",
        does: "Goes back to the list of exercises.",
        keys: &[],
        usable: in_practice,
        wish: |_| Action::Practice(PracticeWish::Leave),
    },
];

/// Keeps the order; where there is none, clears what is kept, which the list does not offer.
fn accept(m: &Model<'_>) -> Action {
    Action::edit(Command::SetOrder(m.order.order().map(|o| std::sync::Arc::clone(&o.plan))))
}
