//! The only ways to change a job. Each command can be stored and replayed.

use super::check;
use super::choices::OrderChoices;
use super::defect::Defect;
use super::model::{Job, Member, PanelRecord, Reading, Spot};
use super::paint::PreviousCoating;
use super::survey_change::SurveyChange;
use crate::coat::{Air, MeasuredWindow, Product};
use crate::crew::PlanFile;
use crate::finding::Finding;
use crate::geometry::MapPoint;
use crate::measure::{Assurance, Gauge};
use crate::polish::{Finish, Goal, Level, PaintHardness, PaintHistory, PolishStep, RemovalPolicy, Shop, TestSpots};
use crate::say;
use crate::units::{Date, Micrometres};
use crate::vehicle::{PanelId, Size, Substrate};
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::sync::Arc;

/// One change of a job.
#[derive(Debug, Clone, PartialEq)]
pub enum Command {
    /// Several changes as one step, in their order; all of them or none.
    All {
        /// What undo calls them together.
        label: &'static str,
        /// The changes.
        commands: Vec<Self>,
    },
    /// Changes one of the texts.
    SetText(TextField, String),
    /// Takes another vehicle template in its own size. What can't be taken over to it is dropped, and undo brings it back.
    SetTemplate {
        /// Id of the template.
        template: String,
        /// What is known of its panels, as [`super::carry_over`] gives it.
        panels: BTreeMap<PanelId, Arc<PanelRecord>>,
    },
    /// Gives the vehicle a size of its own, or that of its template.
    SetSize(Option<Size>),
    /// The day of the work.
    SetDate(Option<Date>),
    /// Adds whole spots to a panel, with their readings.
    AddSpots(PanelId, Vec<Spot>),
    /// Takes the readings of the current survey at a spot away, so that it can be read again.
    RemoveSpot {
        /// The panel.
        panel: PanelId,
        /// Which of its spots, from 0.
        spot: usize,
    },
    /// Starts a spot with its first reading.
    AddSpot {
        /// The panel read.
        panel: PanelId,
        /// Where.
        at: MapPoint,
        /// The first reading.
        thickness: Micrometres,
    },
    /// Adds a reading to a spot.
    AddReading {
        /// The panel read.
        panel: PanelId,
        /// Which of its spots, from 0.
        spot: usize,
        /// The reading.
        thickness: Micrometres,
    },
    /// Corrects a reading.
    SetReading {
        /// The panel read.
        panel: PanelId,
        /// Which of its spots, from 0.
        spot: usize,
        /// Which reading of the spot, from 0.
        reading: usize,
        /// The corrected value.
        thickness: Micrometres,
    },
    /// Takes a reading away; a spot without readings goes too.
    RemoveReading {
        /// The panel read.
        panel: PanelId,
        /// Which of its spots, from 0.
        spot: usize,
        /// Which reading of the spot, from 0.
        reading: usize,
    },
    /// Says whether a spot was taken on an edge.
    SetEdge {
        /// The panel read.
        panel: PanelId,
        /// Which of its spots, from 0.
        spot: usize,
        /// Whether it was.
        edge: bool,
    },
    /// Notes a defect.
    AddDefect(PanelId, Defect),
    /// Corrects a defect.
    SetDefect {
        /// The panel.
        panel: PanelId,
        /// Which of its defects, from 0.
        defect: usize,
        /// What it is now.
        value: Defect,
    },
    /// Takes a defect away.
    RemoveDefect {
        /// The panel.
        panel: PanelId,
        /// Which of its defects, from 0.
        defect: usize,
    },
    /// Notes a fact about the paint of a panel.
    SetFact(PanelId, PanelFact),
    /// What shall be reached.
    SetGoal(Goal),
    /// Who works.
    SetCrew(Vec<Member>),
    /// The gauge.
    SetGauge(Gauge),
    /// How sure the lower bounds have to be.
    SetAssurance(Assurance),
    /// Something about the surveys, the gloss or the ledger.
    Survey(SurveyChange),
    /// What may be taken off.
    SetPolicy(Box<RemovalPolicy>),
    /// The steps that the shop has. Test results follow a step that only gets another name.
    SetSteps(Vec<PolishStep>),
    /// How hard the paint is, and what test spots showed.
    SetTestSpots(Arc<TestSpots>),
    /// How the shop works and what it pays.
    SetShop(Box<Shop>),
    /// The coating.
    SetProduct(Box<Product>),
    /// The air.
    SetAir(Air),
    /// The window tried on a patch, or none.
    SetPatch(Option<MeasuredWindow>),
    /// What is asked of the order of coating.
    SetChoices(OrderChoices),
    /// Agrees on an order, or drops the one agreed on.
    SetOrder(Option<Arc<PlanFile>>),
}

/// The texts of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TextField {
    /// Name of the job.
    Name,
    /// Description of the vehicle.
    Vehicle,
    /// Number plate.
    Plate,
    /// What was done to the paint before.
    History,
    /// Name of the customer.
    Customer,
    /// What the customer wants.
    Wishes,
}

/// A fact about the paint of one panel.
#[derive(Debug, Clone, PartialEq)]
pub enum PanelFact {
    /// What the paint is.
    Finish(Option<Finish>),
    /// What was done to it before.
    History(PaintHistory),
    /// The day it was last painted.
    PaintedOn(Option<Date>),
    /// What was put on the paint before.
    Coating(PreviousCoating),
    /// How hard the paint is.
    Hardness(PaintHardness),
    /// What lies under the paint, where it is not what the vehicle has there.
    Substrate(Option<Substrate>),
    /// The hardest level that it may be polished at.
    LevelAtMost(Option<Level>),
    /// Whether it stays uncoated.
    LeftUncoated(bool),
    /// A note.
    Note(String),
}

/// A command that doesn't fit the job it was applied to.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CommandError {
    /// A spot, reading or defect number past the end.
    #[error("{}", say!("job-no-such", what = *.what, number = .number, panel = .panel.as_str()))]
    NoSuch {
        /// A spot, a reading, a defect ..., in words.
        what: &'static str,
        /// Counted from 1, as on screen.
        number: usize,
        /// The panel.
        panel: PanelId,
    },
    /// The job would have a fault, so it could be saved but not opened again.
    #[error("{}; {}", .0.cause, .0.action)]
    Fault(Box<Finding>),
    /// A number outside its range.
    #[error("{0}")]
    Range(String),
    /// The gauge can't read what lies under the paint of this panel.
    #[error("{}", say!("job-not-read", panel = .panel.as_str(), reason = *.reason))]
    CantRead {
        /// The panel.
        panel: PanelId,
        /// Why not.
        reason: &'static str,
    },
    /// It makes no sense now; the text says why.
    #[error("{0}")]
    NotNow(&'static str),
}

/// What a step of undo is to somebody with a gauge in hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum GaugeStep {
    /// A reading was taken.
    Taken,
    /// A spot was emptied, to be read again.
    Again,
    /// Something else.
    #[default]
    Other,
}

impl Command {
    /// Whether it is a reading.
    pub(super) fn gauge_step(&self) -> GaugeStep {
        match self {
            Self::AddSpot { .. } | Self::AddReading { .. } => GaugeStep::Taken,
            Self::RemoveSpot { .. } => GaugeStep::Again,
            _ => GaugeStep::Other,
        }
    }

    /// What undo calls it: "Undo add reading".
    pub fn label(&self) -> &'static str {
        match self {
            Self::All { label, .. } => label,
            Self::SetText(..) => say!("job-undo-edit-text"),
            Self::SetTemplate { .. } => say!("job-undo-change-vehicle"),
            Self::SetSize(_) => say!("job-undo-change-size"),
            Self::SetDate(_) => say!("job-undo-change-day-of-work"),
            Self::AddSpots(..) => say!("job-undo-add-readings"),
            Self::RemoveSpot { .. } => say!("job-undo-read-spot-again"),
            Self::AddSpot { .. } | Self::AddReading { .. } => say!("job-undo-add-reading"),
            Self::SetReading { .. } => say!("job-undo-correct-reading"),
            Self::RemoveReading { .. } => say!("job-undo-remove-reading"),
            Self::SetEdge { .. } => say!("job-undo-mark-edge"),
            Self::AddDefect(..) => say!("job-undo-add-defect"),
            Self::SetDefect { .. } => say!("job-undo-correct-defect"),
            Self::RemoveDefect { .. } => say!("job-undo-remove-defect"),
            Self::SetFact(..) => say!("job-undo-change-paint-facts"),
            Self::SetGoal(_) => say!("job-undo-change-goal"),
            Self::SetCrew(_) => say!("job-undo-change-crew"),
            Self::SetGauge(_) => say!("job-undo-change-gauge"),
            Self::SetAssurance(_) => say!("job-undo-change-how-sure"),
            Self::Survey(change) => change.label(),
            Self::SetPolicy(_) => say!("job-undo-change-removal-limits"),
            Self::SetSteps(_) => say!("job-undo-change-steps"),
            Self::SetTestSpots(_) => say!("job-undo-change-test-spot"),
            Self::SetShop(_) => say!("job-undo-change-shop"),
            Self::SetProduct(_) => say!("job-undo-change-coating"),
            Self::SetAir(_) => say!("job-undo-change-air"),
            Self::SetPatch(Some(_)) => say!("job-undo-note-tried-window"),
            Self::SetPatch(None) => say!("job-undo-drop-tried-window"),
            Self::SetChoices(_) => say!("job-undo-change-choices-of-order"),
            Self::SetOrder(Some(_)) => say!("job-undo-accept-order"),
            Self::SetOrder(None) => say!("job-undo-drop-order"),
        }
    }

    /// Carries the command out on a job.
    ///
    /// # Errors
    /// [`CommandError`]; the job may then be half changed, so [`super::Document`] works on a copy.
    pub(super) fn carry_out(&self, job: &mut Job) -> Result<(), CommandError> {
        self.change(job)?;
        job.panels.retain(|_, r| !r.is_blank());
        match check::check_alone(job).into_iter().next() {
            None => Ok(()),
            Some(fault) => Err(CommandError::Fault(Box::new(fault))),
        }
    }

    fn change(&self, job: &mut Job) -> Result<(), CommandError> {
        match self {
            Self::All { commands, .. } => commands.iter().try_for_each(|command| command.change(job))?,
            Self::SetDate(date) => job.date = *date,
            Self::AddSpots(panel, spots) => {
                let survey = job.current_survey();
                let mut number = job.last_number(survey);
                let mut numbered = |reading: &Reading| {
                    number = number.saturating_add(1);
                    Reading { survey, number, ..*reading }
                };
                let spots = spots
                    .iter()
                    .map(|s| Spot { readings: s.readings.iter().map(&mut numbered).collect(), ..s.clone() });
                let spots: Vec<Spot> = spots.collect();
                record(job, panel).spots.extend(spots);
            }
            Self::RemoveSpot { panel, spot } => {
                let survey = job.current_survey();
                let spots = &mut record(job, panel).spots;
                let readings = &mut at(spots, *spot, say!("job-spot"), panel)?.readings;
                readings.retain(|r| r.survey != survey);
                if readings.is_empty() {
                    spots.remove(*spot);
                }
            }
            Self::SetText(field, text) => set_text(job, *field, text),
            Self::SetTemplate { template, panels } => {
                job.vehicle.template.clone_from(template);
                job.vehicle.size_mm = None;
                job.panels.clone_from(panels);
                // They name panels of the other template.
                job.choices.begins.clear();
                job.choices.first.clear();
                job.order = None;
            }
            Self::SetSize(size) => job.vehicle.size_mm = *size,
            Self::AddSpot { panel, at, thickness } => {
                let readings = vec![next_reading(job, *thickness)];
                let spot = Spot { at: *at, edge: false, readings, note: String::new() };
                record(job, panel).spots.push(spot);
            }
            Self::AddReading { panel, spot, thickness } => {
                let reading = next_reading(job, *thickness);
                let spots = &mut record(job, panel).spots;
                at(spots, *spot, say!("job-spot"), panel)?.readings.push(reading);
            }
            Self::SetReading { panel, spot, reading, thickness } => {
                let spots = &mut record(job, panel).spots;
                let readings = &mut at(spots, *spot, say!("job-spot"), panel)?.readings;
                at(readings, *reading, say!("job-reading"), panel)?.thickness_um = *thickness;
            }
            Self::RemoveReading { panel, spot, reading } => {
                let spots = &mut record(job, panel).spots;
                let readings = &mut at(spots, *spot, say!("job-spot"), panel)?.readings;
                at(readings, *reading, say!("job-reading"), panel)?;
                readings.remove(*reading);
                if readings.is_empty() {
                    spots.remove(*spot);
                }
            }
            Self::SetEdge { panel, spot, edge } => {
                at(&mut record(job, panel).spots, *spot, say!("job-spot"), panel)?.edge = *edge;
            }
            Self::AddDefect(panel, defect) => {
                record(job, panel).defects.push(defect.clone());
            }
            Self::SetDefect { panel, defect, value } => {
                *at(&mut record(job, panel).defects, *defect, say!("job-defect"), panel)? = value.clone();
            }
            Self::RemoveDefect { panel, defect } => {
                let defects = &mut record(job, panel).defects;
                at(defects, *defect, say!("job-defect"), panel)?;
                defects.remove(*defect);
            }
            Self::SetFact(panel, fact) => set_fact(record(job, panel), fact),
            Self::SetGoal(goal) => job.goal = in_range(goal)?,
            Self::SetCrew(crew) => set_crew(job, crew),
            Self::SetGauge(gauge) => job.gauge = in_range(gauge)?,
            Self::SetAssurance(assurance) => job.assurance = in_range(assurance)?,
            Self::Survey(change) => change.carry_out(job)?,
            Self::SetPolicy(policy) => job.policy = in_range(&**policy)?,
            Self::SetSteps(steps) => super::steps::set_steps(job, in_range(steps)?)?,
            Self::SetTestSpots(tests) => job.test_spots = Arc::new(in_range(&**tests)?),
            Self::SetShop(shop) => job.shop = in_range(&**shop)?,
            Self::SetProduct(product) => job.product = in_range(&**product)?,
            Self::SetAir(air) => job.air = *air,
            Self::SetPatch(patch) => job.patch = in_range(patch)?,
            Self::SetChoices(choices) => job.choices = choices.clone(),
            Self::SetOrder(order) => job.order.clone_from(order),
        }
        Ok(())
    }
}

/// Another crew. Where one of them only got another name, what was chosen for them stays theirs.
fn set_crew(job: &mut Job, crew: &[Member]) {
    let renamed = job.crew.len() == crew.len();
    let pairs: Vec<(&Member, &Member)> = if renamed { job.crew.iter().zip(crew).collect() } else { Vec::new() };
    for begins in &mut job.choices.begins {
        if let Some((_, now)) = pairs.iter().find(|(was, now)| was.name == begins.member && was.roles == now.roles) {
            begins.member.clone_from(&now.name);
        }
    }
    job.choices.begins.retain(|b| crew.iter().any(|m| m.name == b.member));
    job.crew = crew.to_vec();
}

fn set_text(job: &mut Job, field: TextField, text: &str) {
    let place = match field {
        TextField::Name => &mut job.name,
        TextField::Vehicle => &mut job.vehicle.description,
        TextField::Plate => &mut job.vehicle.plate,
        TextField::History => &mut job.vehicle.history,
        TextField::Customer => &mut job.customer.name,
        TextField::Wishes => &mut job.customer.wishes,
    };
    text.clone_into(place);
}

fn set_fact(record: &mut PanelRecord, fact: &PanelFact) {
    match fact {
        PanelFact::Finish(finish) => record.finish = *finish,
        PanelFact::History(history) => record.history = *history,
        PanelFact::PaintedOn(date) => record.painted_on = *date,
        PanelFact::Coating(coating) => record.coating = *coating,
        PanelFact::Hardness(hardness) => record.hardness = *hardness,
        PanelFact::Substrate(substrate) => record.substrate = *substrate,
        PanelFact::LevelAtMost(level) => record.level_at_most = *level,
        PanelFact::LeftUncoated(left) => record.left_uncoated = *left,
        PanelFact::Note(note) => record.note.clone_from(note),
    }
}

/// A reading taken now: the next one of the present survey.
fn next_reading(job: &Job, thickness_um: Micrometres) -> Reading {
    let survey = job.current_survey();
    Reading { thickness_um, survey, number: job.last_number(survey).saturating_add(1) }
}

/// The record of a panel, copied if an earlier snapshot still holds it.
pub(super) fn record<'a>(job: &'a mut Job, panel: &PanelId) -> &'a mut PanelRecord {
    Arc::make_mut(job.panels.entry(panel.clone()).or_default())
}

pub(super) fn at<'a, T>(
    list: &'a mut [T],
    index: usize,
    what: &'static str,
    panel: &PanelId,
) -> Result<&'a mut T, CommandError> {
    list.get_mut(index).ok_or_else(|| CommandError::NoSuch { what, number: index + 1, panel: panel.clone() })
}

/// The value, if every number in it keeps the range that the file format sets: what is taken in can be read back.
fn in_range<T: Serialize + DeserializeOwned>(value: &T) -> Result<T, CommandError> {
    let text = ron::to_string(value).map_err(|e| CommandError::Range(e.to_string()))?;
    ron::from_str(&text).map_err(|e| CommandError::Range(e.code.to_string()))
}
