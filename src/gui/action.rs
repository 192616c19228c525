//! What a view may read, and what it may wish for.

use super::bay::{BayState, BayWish};
use super::edit::VehicleWish;
use super::entry::EntryWish;
use super::handover::{HandoverState, HandoverWish};
use super::home::{Home, HomeWish};
use super::import::ImportWish;
use super::keep::KeepWish;
use super::modals::Next;
use super::order::OrderState;
use super::photos::Photos;
use super::polishing::Polishing;
use super::practice::{PracticeState, PracticeWish};
use super::view_state::{Column, Mix, Tool, ViewState, Workspace};
use crate::file::Listed;
use crate::geometry::{MapPoint, Viewport};
use crate::insight::{Insight, OrderRow, Stop, recommended_spots, survey_stops};
use crate::job::{Command, Document, GestureId, Job, PhotoId};
use crate::scene::Overlay;
use crate::units::ShownUnits;
use crate::vehicle::{Panel, PanelId, Template};
use std::cell::OnceCell;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// What a view may read.
#[derive(Clone, Copy)]
pub(super) struct Model<'a> {
    pub(super) job: &'a Arc<Job>,
    pub(super) template: &'a Arc<Template>,
    pub(super) insight: &'a Insight,
    pub(super) order: &'a OrderState,
    pub(super) rows: &'a [OrderRow],
    pub(super) polishing: &'a Polishing,
    pub(super) bay: &'a BayState,
    pub(super) handover: &'a HandoverState,
    pub(super) practice: &'a PracticeState,
    pub(super) spots: &'a SpotPlaces,
    pub(super) photos: &'a Photos,
    pub(super) view: &'a ViewState,
    /// What can be undone, and whether all is saved.
    pub(super) document: &'a Document,
    /// The file of the job.
    pub(super) path: Option<&'a Path>,
    pub(super) home: &'a Home,
    /// The vehicles that there are.
    pub(super) bodies: &'a [Listed],
}

/// Recommended places of readings per panel, and the way through all of them, worked out when first asked for.
#[derive(Debug, Default)]
pub(super) struct SpotPlaces {
    panels: Vec<OnceCell<Vec<MapPoint>>>,
    way: OnceCell<Vec<Stop>>,
}

impl SpotPlaces {
    /// Nothing worked out yet for the panels of a template.
    pub(super) fn of(template: &Template) -> Self {
        Self { panels: template.panels.iter().map(|_| OnceCell::new()).collect(), way: OnceCell::new() }
    }
}

impl<'a> Model<'a> {
    /// The units of everything that is shown.
    pub(super) fn units(&self) -> ShownUnits {
        self.home.preferences.units()
    }

    /// Where a panel wants its readings.
    pub(super) fn wanted_spots(&self, index: usize) -> &'a [MapPoint] {
        self.spots.panels[index].get_or_init(|| recommended_spots(&self.template.panels[index]))
    }

    /// The way round the vehicle through every place that wants readings.
    pub(super) fn way(&self) -> &'a [Stop] {
        self.spots.way.get_or_init(|| survey_stops(self.template))
    }

    /// The chosen panels with their indices, in the order of the vehicle.
    pub(super) fn chosen(&self) -> Vec<(usize, &'a Panel)> {
        self.template.panels.iter().enumerate().filter(|(_, p)| self.view.chosen.contains(&p.id)).collect()
    }

    /// The chosen panel with its index, if exactly one counts.
    pub(super) fn current(&self) -> Option<(usize, &'a Panel)> {
        let id = self.view.current.as_ref()?;
        self.template.panels.iter().enumerate().find(|(_, p)| p.id == *id)
    }
}

/// A wish of a view.
#[derive(Debug)]
pub(super) enum Action {
    /// Changes the job; can be undone.
    Edit(Command, Option<GestureId>),
    /// Changes what is shown.
    View(ViewChange),
    /// Types or presses something for the readings.
    Entry(EntryWish),
    /// Does something with the readings of a file before they are added.
    Import(ImportWish),
    /// Changes the vehicle itself, on a copy until it is saved.
    Vehicle(VehicleWish),
    /// Something happens in the bay.
    Bay(BayWish),
    /// Shows and writes sheets.
    Handover(HandoverWish),
    /// Lays, plays, answers while practising.
    Practice(PracticeWish),
    /// Something of the person at the desk.
    Home(HomeWish),
    /// Does something about unsaved work and changed files.
    Keep(KeepWish),
    /// Does something outside the job.
    Effect(Effect),
}

impl Action {
    /// An edit that is a step of its own.
    pub(super) fn edit(command: Command) -> Self {
        Self::Edit(command, None)
    }
}

/// A change of what is shown.
#[derive(Debug)]
pub(super) enum ViewChange {
    Workspace(Workspace),
    Overlay(Overlay),
    /// Chooses one panel, or none.
    Choose(Option<PanelId>),
    /// Chooses exactly these.
    ChooseAll(Vec<PanelId>),
    /// Adds a panel to the choice or takes it out.
    Toggle(PanelId),
    Viewport(Viewport),
    /// Shows the whole vehicle.
    Fit,
    /// Shows the chosen panels as large as they go.
    FitChosen,
    Tool(Tool),
    /// Opens a defect of the chosen panel, by its place in the record, or closes the one that is open.
    Defect(Option<usize>),
    Moment(Option<i64>),
    /// Sorts the table of panels by a column, or turns its order round.
    SortTable(Column),
    /// Opens a step of the shop for changes, or closes it.
    OpenStep(Option<usize>),
    /// What the dilution calculator mixes.
    Mix(Mix),
}

/// Something outside the job.
#[derive(Debug)]
pub(super) enum Effect {
    Undo,
    Redo,
    New,
    /// Begins the job for the next visit of the same vehicle.
    NextVisit,
    /// Asks for a file and opens it.
    AskOpen,
    /// Takes another vehicle, by its id.
    TakeBody(String),
    /// Asks for a file of readings.
    AskReadings,
    /// Shows what a file of readings holds.
    Readings(PathBuf),
    /// Asks for a picture of a defect.
    AskPhoto(PanelId, usize),
    /// Takes pictures for the defect that is open.
    Photos(Vec<PathBuf>),
    /// Gets a picture ready to be shown.
    ShowPhoto(PhotoId),
    /// Opens a file.
    Open(PathBuf),
    /// Saves under the present name, or asks for one.
    Save,
    /// Asks for a name and saves.
    AskSaveAs,
    /// Saves under a name.
    SaveAs(PathBuf),
    /// Closes the window, asking first if something is unsaved.
    Close,
    /// Closes the window whatever is unsaved.
    Discard,
    /// Enters the reading that is typed, then goes on.
    EnterTyped(Next),
    /// Leaves a question open on screen unanswered.
    Dismiss,
}
