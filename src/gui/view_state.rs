//! What the window shows of a job: neither saved nor undone.

use crate::geometry::Viewport;
use crate::polish::DefectKind;
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
}

impl Workspace {
    /// All of them, in the order of the work.
    pub const ALL: [Self; 4] = [Self::Job, Self::Survey, Self::Correction, Self::Coating];

    /// As it stands on the rail.
    pub fn name(self) -> &'static str {
        match self {
            Self::Job => "Job",
            Self::Survey => "Survey",
            Self::Correction => "Correction",
            Self::Coating => "Coating",
        }
    }

    /// What the map shows first here.
    pub(super) fn overlay(self) -> Overlay {
        match self {
            Self::Job => Overlay::Defects,
            Self::Survey => Overlay::Film,
            Self::Correction => Overlay::Polish,
            Self::Coating => Overlay::Order,
        }
    }
}

/// What the pointer does on the map.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Tool {
    /// Chooses panels.
    Choose,
    /// Puts a defect of this kind where it clicks.
    PlaceDefect(DefectKind),
    /// Marks where the chosen panel is cut, while the vehicle itself is changed.
    Cut,
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
    pub(super) mix: Mix,
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
            mix: Mix::default(),
        }
    }
}
