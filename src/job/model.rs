//! What a job consists of.

use crate::coat::{Air, Product};
use crate::crew::PlanFile;
use crate::geometry::MapPoint;
use crate::measure::{Assurance, Gauge};
use crate::polish::{DefectKind, Finish, Goal, PaintHistory, PolishStep, RemovalPolicy, Shop};
use crate::units::{Micrometres, Millimetres};
use crate::vehicle::{PanelId, Size, Substrate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::Arc;

/// One vehicle on one visit: what is known of it, what is wanted, who works on it with what.
///
/// Cloning copies pointers to the panel records, so that a snapshot for undo is cheap.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// What the people of the shop call this job.
    pub name: String,
    /// The vehicle.
    pub vehicle: Vehicle,
    /// Who brought it and what they want.
    pub customer: Customer,
    /// How much of what is wrong shall be corrected.
    pub goal: Goal,
    /// Who works on it; at least one can apply and one can level.
    pub crew: Vec<Member>,
    /// The gauge that the readings were taken with.
    pub gauge: Gauge,
    /// How sure the lower bounds of the film have to be.
    pub assurance: Assurance,
    /// What the shop allows to be taken off.
    pub policy: RemovalPolicy,
    /// The polishing steps that the shop has, coarsest first.
    pub steps: Vec<PolishStep>,
    /// How the shop works and what it pays.
    pub shop: Shop,
    /// The coating.
    pub product: Product,
    /// The air and the coldest panel.
    pub air: Air,
    /// What is known of each panel; panels without an entry are unread and without defects.
    pub panels: BTreeMap<PanelId, Arc<PanelRecord>>,
    /// The order of coating that was agreed on, if one was.
    pub order: Option<Arc<PlanFile>>,
}

/// The vehicle as far as the job needs it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Vehicle {
    /// What a person would call it: class, colour, age.
    pub description: String,
    /// Id of the vehicle template.
    pub template: String,
    /// Size over all without mirrors, where it is not the template's. Areas, ways and stances follow it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size_mm: Option<Size>,
    /// Number plate or another mark that tells it from others.
    #[serde(default)]
    pub plate: String,
    /// What was done to the paint before, in words.
    #[serde(default)]
    pub history: String,
}

/// The customer as far as the job needs them.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Customer {
    /// Name.
    pub name: String,
    /// What they want, in their words.
    #[serde(default)]
    pub wishes: String,
}

/// What somebody does while coating.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Spreads the coating.
    Apply,
    /// Levels it within its window.
    Level,
}

impl Role {
    /// The name in crew problems and files.
    pub fn id(self) -> &'static str {
        match self {
            Self::Apply => "apply",
            Self::Level => "level",
        }
    }

    /// As a person says it of somebody.
    pub fn verb(self) -> &'static str {
        match self {
            Self::Apply => "applies",
            Self::Level => "levels",
        }
    }
}

/// One of the people who coat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Member {
    /// Name, different from every other one in the crew.
    pub name: String,
    /// What this person does; never empty.
    pub roles: Vec<Role>,
}

/// What is known of one panel.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PanelRecord {
    /// What the paint is, where it differs from the template's clear coat.
    pub finish: Option<Finish>,
    /// What was done to it before.
    pub history: PaintHistory,
    /// What lies under the paint, where it differs from the template.
    pub substrate: Option<Substrate>,
    /// Whether the panel is left out of the coating.
    pub left_uncoated: bool,
    /// Places of readings, in the order they were taken.
    pub spots: Vec<Spot>,
    /// What is wrong with it.
    pub defects: Vec<Defect>,
    /// Anything else, for the people of the shop.
    pub note: String,
}

/// A place of a few readings within 4 cm.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spot {
    /// Where on the map.
    pub at: MapPoint,
    /// Whether it was taken on an edge or a body line, where the film is thinner; such a spot speaks for the edge only.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub edge: bool,
    /// The readings, in the order they were taken.
    pub readings: Vec<Reading>,
}

/// One number off the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Total film above the substrate.
    pub thickness_um: Micrometres,
}

/// Something wrong with the surface.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Defect {
    /// What it is.
    pub kind: DefectKind,
    /// Where on the map.
    pub at: MapPoint,
    /// How large across, or how long.
    pub size_mm: Millimetres,
    /// How many, 0 (none) to 5 (dense), after the idea of ISO 4628-1.
    pub quantity: u8,
    /// Estimated depth, least and most; without it the usual range of the kind.
    #[serde(default)]
    pub depth_um: Option<(Micrometres, Micrometres)>,
    /// Anything else.
    #[serde(default)]
    pub note: String,
}

impl Job {
    /// What is known of a panel, if anything is.
    pub fn record(&self, panel: &PanelId) -> Option<&Arc<PanelRecord>> {
        self.panels.get(panel)
    }
}

impl PanelRecord {
    /// Whether nothing has been noted, so that the entry can go.
    pub fn is_blank(&self) -> bool {
        *self == Self::default()
    }

    /// Number of readings over all spots.
    pub fn reading_count(&self) -> usize {
        self.spots.iter().map(|s| s.readings.len()).sum()
    }
}
