//! What a view may read, and what it may wish for.

use super::edit::VehicleWish;
use super::order::OrderState;
use super::theme::Theme;
use super::view_state::{Tool, ViewState, Workspace};
use crate::file::Listed;
use crate::geometry::{MapPoint, Orientation, Viewport};
use crate::insight::{Insight, OrderRow, recommended_spots};
use crate::job::{Command, GestureId, Job};
use crate::scene::Overlay;
use crate::vehicle::{Naming, Panel, PanelId, Template};
use std::cell::OnceCell;
use std::path::PathBuf;
use std::sync::Arc;

/// What a view may read.
#[derive(Clone, Copy)]
pub(super) struct Model<'a> {
    pub(super) job: &'a Arc<Job>,
    pub(super) template: &'a Arc<Template>,
    pub(super) insight: &'a Insight,
    pub(super) order: &'a OrderState,
    pub(super) rows: &'a [OrderRow],
    pub(super) spots: &'a SpotPlaces,
    pub(super) view: &'a ViewState,
    /// The vehicles that there are.
    pub(super) bodies: &'a [Listed],
}

/// Recommended places of readings per panel, worked out when first asked for.
#[derive(Debug, Default)]
pub(super) struct SpotPlaces(Vec<OnceCell<Vec<MapPoint>>>);

impl SpotPlaces {
    /// Nothing worked out yet for the panels of a template.
    pub(super) fn of(template: &Template) -> Self {
        Self(template.panels.iter().map(|_| OnceCell::new()).collect())
    }
}

impl<'a> Model<'a> {
    /// Where a panel wants its readings.
    pub(super) fn wanted_spots(&self, index: usize) -> &'a [MapPoint] {
        self.spots.0[index].get_or_init(|| recommended_spots(&self.template.panels[index]))
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
    /// Changes the vehicle itself, on a copy until it is saved.
    Vehicle(VehicleWish),
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
    Moment(Option<i64>),
    Theme(Theme),
    /// Size of everything, 1 is usual.
    Scale(f32),
    Turn(Orientation),
    Naming(Naming),
}

/// Something outside the job.
#[derive(Debug)]
pub(super) enum Effect {
    Undo,
    Redo,
    New,
    /// Asks for a file and opens it.
    AskOpen,
    /// Takes another vehicle, by its id.
    TakeBody(String),
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
    /// Leaves a question open on screen unanswered.
    Dismiss,
}
