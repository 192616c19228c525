//! What the window shows of a job: neither saved nor undone.

use super::bay::{BayState, BayView};
use super::entry::Entry;
use crate::geometry::{Orientation, Viewport};
use crate::polish::DefectKind;
use crate::say;
use crate::scene::Overlay;
use crate::vehicle::{Naming, PanelId};
use std::collections::BTreeSet;

/// The places on the rail, in the order of the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Workspace {
    /// Vehicle, customer, goal, crew.
    Job,
    /// Readings and defects.
    Survey,
    /// Budget and polish plan.
    Correction,
    /// Air, window, order.
    Coating,
    /// The order being worked.
    Bay,
    /// Sheets for customer, crew and shop.
    Handover,
    /// Apprentices lay an order and see what is wrong with it.
    Practice,
}

impl Workspace {
    /// All of them, in the order of the work.
    pub const ALL: [Self; 7] =
        [Self::Job, Self::Survey, Self::Correction, Self::Coating, Self::Bay, Self::Handover, Self::Practice];

    /// As it stands on the rail.
    pub fn name(self) -> &'static str {
        match self {
            Self::Job => say!("window-workspace-job"),
            Self::Survey => say!("window-workspace-survey"),
            Self::Correction => say!("window-workspace-correction"),
            Self::Coating => say!("window-workspace-coating"),
            Self::Bay => say!("window-workspace-bay"),
            Self::Handover => say!("window-workspace-handover"),
            Self::Practice => say!("window-workspace-practice"),
        }
    }

    /// What the map shows first here.
    pub(super) fn overlay(self) -> Overlay {
        match self {
            Self::Job => Overlay::Defects,
            Self::Survey => Overlay::Film,
            Self::Correction => Overlay::Polish,
            Self::Coating | Self::Bay | Self::Handover | Self::Practice => Overlay::Order,
        }
    }
}

/// What the pointer does on the map.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Tool {
    /// Chooses panels.
    Choose,
    /// Draws a defect of this kind.
    PlaceDefect(DefectKind, Shape),
    /// Marks where the chosen panel is cut, while the vehicle itself is changed.
    Cut,
}

/// How a defect is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Shape {
    /// By a click.
    #[default]
    Point,
    /// By dragging from one end to the other.
    Line,
    /// By dragging round it.
    Area,
}

impl Shape {
    /// All of them, in the order of their keys 1, 2, 3.
    pub(super) const ALL: [Self; 3] = [Self::Point, Self::Line, Self::Area];

    /// As it stands on a button.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Point => say!("window-shape-point"),
            Self::Line => say!("window-shape-line"),
            Self::Area => say!("window-shape-area"),
        }
    }
}

/// A column of the table of panels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Column {
    Panel,
    Film,
    MayGo,
    Needed,
    WillGo,
    Level,
    Time,
    Stays,
}

impl Column {
    /// All of them, from left to right.
    pub(super) const ALL: [Self; 8] =
        [Self::Panel, Self::Film, Self::MayGo, Self::Needed, Self::WillGo, Self::Level, Self::Time, Self::Stays];
}

/// What the dilution calculator is asked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Mix {
    /// How much of the mixture, in ml.
    pub(super) whole_ml: f64,
    /// 1 part to so many.
    pub(super) parts: f64,
}

impl Default for Mix {
    /// A bucket of rinseless wash.
    fn default() -> Self {
        Self { whole_ml: 5_000.0, parts: 256.0 }
    }
}

/// Everything about the view.
#[derive(Debug, Clone)]
pub(super) struct ViewState {
    pub(super) workspace: Workspace,
    pub(super) overlay: Overlay,
    /// The chosen panels; the last one clicked is `current`.
    pub(super) chosen: BTreeSet<PanelId>,
    pub(super) current: Option<PanelId>,
    pub(super) viewport: Option<Viewport>,
    pub(super) tool: Tool,
    /// Seconds on the planner's clock that the chart's cursor stands at.
    pub(super) moment: Option<i64>,
    pub(super) naming: Naming,
    /// Which way the front points.
    pub(super) front: Orientation,
    /// Where somebody is with their readings.
    pub(super) entry: Entry,
    /// The defect of the chosen panel that is open, by its place in the record.
    pub(super) defect: Option<usize>,
    /// Column that the table of panels is sorted by, and whether it rises.
    pub(super) table_order: (Column, bool),
    /// The step of the shop that is open for changes.
    pub(super) open_step: Option<usize>,
    pub(super) mix: Mix,
    pub(super) bay: BayView,
}

impl ViewState {
    /// What is shown first: a day that runs, otherwise the survey.
    pub(super) fn on(bay: &BayState) -> Self {
        let Some(trade) = bay.running() else { return Self::default() };
        let workspace = Workspace::Bay;
        let bay = BayView { trade, ..BayView::default() };
        Self { workspace, overlay: workspace.overlay(), bay, ..Self::default() }
    }
}

impl Default for ViewState {
    fn default() -> Self {
        Self {
            workspace: Workspace::Survey,
            overlay: Overlay::Film,
            chosen: BTreeSet::new(),
            current: None,
            viewport: None,
            tool: Tool::Choose,
            moment: None,
            naming: Naming::Uk,
            front: Orientation::default(),
            entry: Entry::default(),
            defect: None,
            table_order: (Column::Level, false),
            open_step: None,
            mix: Mix::default(),
            bay: BayView::default(),
        }
    }
}
