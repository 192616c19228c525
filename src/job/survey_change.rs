//! Changes of the surveys, of gloss readings and of the ledger of earlier visits.

use super::command::{CommandError, at, record};
use super::model::Job;
use super::survey::{GlossReading, Survey, SurveyCheck, SurveyStage};
use crate::measure::{GaugeCheck, GlossGeometry};
use crate::polish::LedgerEntry;
use crate::say;
use crate::units::GlossUnits;
use crate::vehicle::PanelId;

/// One change of the surveys, of gloss readings or of the ledger.
#[derive(Debug, Clone, PartialEq)]
pub enum SurveyChange {
    /// Says when a survey was taken and by whom.
    Describe {
        /// Which survey, from 0.
        survey: usize,
        /// When.
        date: String,
        /// By whom.
        taken_by: String,
    },
    /// Begins another survey; new readings belong to it.
    Begin(Survey),
    /// Takes the last survey away; only while it has no readings.
    Drop,
    /// Notes a check of the gauge, made after the last reading.
    AddCheck(GaugeCheck),
    /// Corrects a check.
    SetCheck {
        /// Which survey, from 0.
        survey: usize,
        /// Which of its checks, from 0.
        check: usize,
        /// What it is now.
        value: GaugeCheck,
    },
    /// Takes a check away.
    RemoveCheck {
        /// Which survey, from 0.
        survey: usize,
        /// Which of its checks, from 0.
        check: usize,
    },
    /// Notes what a gloss meter showed.
    AddGloss {
        /// The panel.
        panel: PanelId,
        /// Angle of the instrument.
        geometry: GlossGeometry,
        /// What it showed.
        gloss: GlossUnits,
    },
    /// Takes a gloss reading away.
    RemoveGloss {
        /// The panel.
        panel: PanelId,
        /// Which of its gloss readings, from 0.
        reading: usize,
    },
    /// Notes on some panels what an earlier visit took.
    AddRemoval(Vec<PanelId>, LedgerEntry),
    /// Takes an earlier visit out of the ledger of a panel.
    RemoveRemoval {
        /// The panel.
        panel: PanelId,
        /// Which of its entries, from 0.
        entry: usize,
    },
}

impl SurveyChange {
    /// What undo calls it.
    pub(super) fn label(&self) -> &'static str {
        match self {
            Self::Describe { .. } => say!("job-undo-describe-survey"),
            Self::Begin(_) => say!("job-undo-begin-survey"),
            Self::Drop => say!("job-undo-drop-survey"),
            Self::AddCheck(_) => say!("job-undo-add-gauge-check"),
            Self::SetCheck { .. } => say!("job-undo-correct-gauge-check"),
            Self::RemoveCheck { .. } => say!("job-undo-remove-gauge-check"),
            Self::AddGloss { .. } => say!("job-undo-add-gloss-reading"),
            Self::RemoveGloss { .. } => say!("job-undo-remove-gloss-reading"),
            Self::AddRemoval(..) => say!("job-undo-add-earlier-visit"),
            Self::RemoveRemoval { .. } => say!("job-undo-remove-earlier-visit"),
        }
    }

    /// Carries it out; the job may be half changed on an error.
    pub(super) fn carry_out(&self, job: &mut Job) -> Result<(), CommandError> {
        match self {
            Self::Describe { survey, date, taken_by } => {
                let survey = numbered(&mut job.surveys, *survey)?;
                date.clone_into(&mut survey.date);
                taken_by.clone_into(&mut survey.taken_by);
            }
            Self::Begin(survey) => begin(job, survey)?,
            Self::Drop => drop_last(job)?,
            Self::AddCheck(check) => {
                let current = job.current_survey();
                let after_reading = job.last_number(current);
                let checks = &mut numbered(&mut job.surveys, current as usize)?.checks;
                checks.push(SurveyCheck { after_reading, certified_um: check.certified_um, shown_um: check.shown_um });
            }
            Self::SetCheck { survey, check, value } => {
                let check = numbered(&mut numbered(&mut job.surveys, *survey)?.checks, *check)?;
                (check.certified_um, check.shown_um) = (value.certified_um, value.shown_um);
            }
            Self::RemoveCheck { survey, check } => {
                let checks = &mut numbered(&mut job.surveys, *survey)?.checks;
                numbered(checks, *check)?;
                checks.remove(*check);
            }
            Self::AddGloss { panel, geometry, gloss } => {
                let reading = GlossReading { geometry: *geometry, gloss_gu: *gloss, survey: job.current_survey() };
                record(job, panel).gloss.push(reading);
            }
            Self::RemoveGloss { panel, reading } => {
                let gloss = &mut record(job, panel).gloss;
                at(gloss, *reading, say!("job-gloss-reading"), panel)?;
                gloss.remove(*reading);
            }
            Self::AddRemoval(panels, entry) => {
                for panel in panels {
                    record(job, panel).removals.entries.push(entry.clone());
                }
            }
            Self::RemoveRemoval { panel, entry } => {
                let entries = &mut record(job, panel).removals.entries;
                at(entries, *entry, say!("job-earlier-visit"), panel)?;
                entries.remove(*entry);
            }
        }
        Ok(())
    }
}

/// An item of a list that belongs to the whole job.
fn numbered<T>(list: &mut [T], index: usize) -> Result<&mut T, CommandError> {
    list.get_mut(index).ok_or_else(|| CommandError::NotNow(say!("job-no-such-survey")))
}

fn begin(job: &mut Job, survey: &Survey) -> Result<(), CommandError> {
    let current = job.current_survey();
    if !job.panels.values().any(|r| r.is_read_in(current)) {
        return Err(CommandError::NotNow(say!("job-survey-goes-on")));
    }
    let polished = job.surveys.last().is_some_and(|s| s.stage == SurveyStage::After);
    if polished && survey.stage == SurveyStage::Before {
        return Err(CommandError::NotNow(say!("job-polished-already")));
    }
    job.surveys.push(Survey { checks: Vec::new(), ..survey.clone() });
    Ok(())
}

fn drop_last(job: &mut Job) -> Result<(), CommandError> {
    let last = job.current_survey();
    if last == 0 {
        return Err(CommandError::NotNow(say!("job-first-survey-stays")));
    }
    if job.panels.values().any(|r| r.is_read_in(last) || r.gloss.iter().any(|g| g.survey == last)) {
        return Err(CommandError::NotNow(say!("job-survey-has-readings")));
    }
    job.surveys.pop();
    Ok(())
}
