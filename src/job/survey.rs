//! Surveys: walks round the vehicle with the gauge, and the checks of the gauge that belong to them.

use super::model::{Job, PanelRecord, Reading, Spot};
use crate::measure::{CheckAt, GaugeCheck, GlossGeometry, suspect_readings};
use crate::say;
use crate::units::{GlossUnits, Micrometres};
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// Whether a survey was taken before or after the polishing of this visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SurveyStage {
    /// The plan rests on it.
    #[default]
    Before,
    /// It shows what went.
    After,
}

impl SurveyStage {
    /// As it stands in a list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Before => say!("job-stage-before"),
            Self::After => say!("job-stage-after"),
        }
    }
}

/// One walk round the vehicle with the gauge.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Survey {
    /// When, as the shop writes it.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Who held the gauge.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub taken_by: String,
    /// Before or after polishing.
    pub stage: SurveyStage,
    /// Checks of the gauge, in the order they were made.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub checks: Vec<SurveyCheck>,
}

/// A reading on a bare plate or a shim of known thickness.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SurveyCheck {
    /// Number of the last reading of the survey before the check; 0 is before the first.
    #[serde(default)]
    pub after_reading: u32,
    /// What is certified; 0 for the bare plate.
    pub certified_um: Micrometres,
    /// What the gauge showed.
    pub shown_um: Micrometres,
}

impl SurveyCheck {
    /// The check as the gauge judges it.
    pub fn check(&self) -> GaugeCheck {
        GaugeCheck { certified_um: self.certified_um, shown_um: self.shown_um }
    }
}

/// A reading of a gloss meter on a panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GlossReading {
    /// Angle of the instrument.
    pub geometry: GlossGeometry,
    /// What it showed.
    pub gloss_gu: GlossUnits,
    /// Which survey it belongs to, from 0.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub survey: u32,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde hands over a reference")]
pub(super) fn is_zero(number: &u32) -> bool {
    *number == 0
}

impl Job {
    /// The survey that new readings belong to: the last one, counted from 0.
    pub fn current_survey(&self) -> u32 {
        self.surveys.len().saturating_sub(1) as u32
    }

    /// Every reading of one survey, with the panels in their order.
    fn readings_of(&self, survey: u32) -> impl Iterator<Item = &Reading> {
        self.panels.values().flat_map(|r| &r.spots).flat_map(move |spot| spot.readings_in(survey))
    }

    /// Number of the last reading or check of a survey; 0 before the first.
    pub fn last_number(&self, survey: u32) -> u32 {
        let checks = self.surveys.get(survey as usize).map(|s| s.checks.as_slice()).unwrap_or_default();
        let checked = checks.iter().map(|c| c.after_reading);
        self.readings_of(survey).map(|r| r.number).chain(checked).max().unwrap_or(0)
    }

    /// Which readings of each survey can't be trusted because the gauge failed a check.
    pub fn suspects(&self) -> Suspects {
        let of = |survey: &Survey| {
            let at = |c: &SurveyCheck| CheckAt { after_readings: c.after_reading as usize, check: c.check() };
            let checks: Vec<CheckAt> = survey.checks.iter().map(at).collect();
            suspect_readings(&self.gauge, &checks)
        };
        Suspects(self.surveys.iter().map(of).collect())
    }
}

/// Readings that can't be trusted, as ranges of how many were taken before, one list for each survey.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Suspects(Vec<Vec<Range<usize>>>);

impl Suspects {
    /// Whether a reading can't be trusted. One without a number can't as soon as any of its survey can't.
    pub fn has(&self, reading: &Reading) -> bool {
        let Some(ranges) = self.0.get(reading.survey as usize) else { return false };
        match reading.number {
            0 => !ranges.is_empty(),
            number => ranges.iter().any(|range| range.contains(&(number as usize - 1))),
        }
    }
}

impl Spot {
    /// The readings of one survey, in the order they were taken.
    pub fn readings_in(&self, survey: u32) -> impl Iterator<Item = &Reading> {
        self.readings.iter().filter(move |r| r.survey == survey)
    }

    /// How many readings of one survey were taken here.
    pub fn count_in(&self, survey: u32) -> usize {
        self.readings_in(survey).count()
    }
}

impl PanelRecord {
    /// Whether a survey has any reading here.
    pub fn is_read_in(&self, survey: u32) -> bool {
        self.spots.iter().any(|s| s.count_in(survey) > 0)
    }
}
