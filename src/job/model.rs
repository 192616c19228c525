//! What a job consists of.

use super::choices::OrderChoices;
use super::defect::Defect;
use super::paint::PreviousCoating;
use super::survey::{GlossReading, Survey, is_zero};
use crate::coat::{Air, MeasuredWindow, Product};
use crate::crew::PlanFile;
use crate::geometry::MapPoint;
use crate::measure::{Assurance, Gauge};
use crate::polish::{
    Finish, Goal, Ledger, Level, PaintHardness, PaintHistory, PolishStep, RemovalPolicy, Shop, TestSpots,
};
use crate::say;
use crate::units::{Date, Micrometres, fields};
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
    /// The day of the work, where somebody gave it; the library has no clock of its own.
    pub date: Option<Date>,
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
    /// Walks round the vehicle with the gauge, in their order; never empty. New readings belong to the last one.
    pub surveys: Vec<Survey>,
    /// How sure the lower bounds of the film have to be.
    pub assurance: Assurance,
    /// What the shop allows to be taken off.
    pub policy: RemovalPolicy,
    /// The polishing steps that the shop has, coarsest first.
    pub steps: Vec<PolishStep>,
    /// How hard the paint is, and what test spots showed.
    pub test_spots: Arc<TestSpots>,
    /// How the shop works and what it pays.
    pub shop: Shop,
    /// The coating.
    pub product: Product,
    /// The air, the coldest and the warmest panel.
    pub air: Air,
    /// The window that was tried on a patch of this vehicle; it counts instead of the product's own.
    pub patch: Option<MeasuredWindow>,
    /// What somebody asks of the order of coating.
    pub choices: OrderChoices,
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
            Self::Apply => say!("job-role-applies"),
            Self::Level => say!("job-role-levels"),
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
    /// How well they know the work.
    #[serde(default, skip_serializing_if = "fields::is_usual")]
    pub experience: Experience,
}

impl Member {
    /// Somebody practised.
    pub fn new(name: impl Into<String>, roles: &[Role]) -> Self {
        Self { name: name.into(), roles: roles.to_vec(), experience: Experience::default() }
    }
}

/// How well somebody knows the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Experience {
    /// Learns it.
    Learner,
    /// Has done it before.
    #[default]
    Practised,
    /// Does it every day.
    Expert,
}

impl Experience {
    /// Every one, least first.
    pub const ALL: [Self; 3] = [Self::Learner, Self::Practised, Self::Expert];

    /// As a person says it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Learner => say!("job-experience-learner"),
            Self::Practised => say!("job-experience-practised"),
            Self::Expert => say!("job-experience-expert"),
        }
    }
}

/// What is known of one panel.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PanelRecord {
    /// What the paint is, where it differs from the template's clear coat.
    pub finish: Option<Finish>,
    /// What was done to it before.
    pub history: PaintHistory,
    /// The day it was last painted, where that is known.
    pub painted_on: Option<Date>,
    /// What was put on the paint before.
    pub coating: PreviousCoating,
    /// How hard the paint is, where that is known.
    pub hardness: PaintHardness,
    /// What lies under the paint, where it differs from the template.
    pub substrate: Option<Substrate>,
    /// The hardest level that it may be polished at, where somebody holds it lower than the plan would.
    pub level_at_most: Option<Level>,
    /// Whether the panel is left out of the coating.
    pub left_uncoated: bool,
    /// Places of readings, in the order they were taken.
    pub spots: Vec<Spot>,
    /// What is wrong with it.
    pub defects: Vec<Defect>,
    /// What a gloss meter showed, in the order taken.
    pub gloss: Vec<GlossReading>,
    /// What earlier visits took.
    pub removals: Ledger,
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
    /// What else came with the readings, such as the other columns of a file.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// One number off the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Total film above the substrate.
    pub thickness_um: Micrometres,
    /// Which survey it belongs to, from 0.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub survey: u32,
    /// Its place in the sequence of that survey, from 1; 0 where nobody knows.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub number: u32,
}

impl Reading {
    /// A reading of the first survey whose place in the sequence nobody knows.
    pub fn of(thickness_um: Micrometres) -> Self {
        Self { thickness_um, survey: 0, number: 0 }
    }
}

/// One reading of a file, before it has a place on the map.
#[derive(Debug, Clone, PartialEq)]
pub struct GaugeReading {
    /// The panel.
    pub panel: PanelId,
    /// What the file calls the spot, where it says.
    pub spot: Option<String>,
    /// Its number on that panel, or in that spot; from 1.
    pub reading: u32,
    /// Total film above the substrate.
    pub thickness: Micrometres,
    /// What else the file says of it.
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

    /// What is known of the past of the paint on a day: how fresh a fresh refinish still is follows from the two dates, where
    /// both are known.
    pub fn history_on(&self, day: Option<Date>) -> PaintHistory {
        match (self.history, self.painted_on, day) {
            (PaintHistory::FreshRefinish { .. }, Some(painted), Some(day)) => {
                PaintHistory::FreshRefinish { days: painted.days_until(day) }
            }
            (history, ..) => history,
        }
    }

    /// Number of readings over all spots.
    pub fn reading_count(&self) -> usize {
        self.spots.iter().map(|s| s.readings.len()).sum()
    }
}
