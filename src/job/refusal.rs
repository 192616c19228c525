//! Readings that the gauge can't take, because of what lies under the paint.

use super::command::{Command, CommandError};
use super::model::Job;
use crate::measure::Base;
use crate::vehicle::{Panel, Substrate, Template};

/// What lies under the paint of a panel: the job's word before the template's.
pub fn substrate_of(job: &Job, panel: &Panel) -> Substrate {
    job.record(&panel.id).and_then(|r| r.substrate).unwrap_or(panel.substrate)
}

/// Why the gauge of a job can't read a panel, as the end of a sentence; none where it can.
pub fn cant_read(job: &Job, panel: &Panel) -> Option<&'static str> {
    job.gauge.principle.refusal(base(substrate_of(job, panel)))
}

/// What a substrate is to a gauge.
fn base(substrate: Substrate) -> Base {
    match substrate {
        Substrate::Steel => Base::Steel,
        Substrate::Aluminium => Base::Aluminium,
        Substrate::Plastic | Substrate::Composite => Base::Plastic,
        Substrate::Glass => Base::Glass,
    }
}

/// Refuses a new reading where the gauge can't read.
pub(super) fn admit(command: &Command, job: &Job, template: &Template) -> Result<(), CommandError> {
    let panel = match command {
        Command::AddSpot { panel, .. } | Command::AddReading { panel, .. } | Command::AddSpots(panel, _) => panel,
        Command::All { commands, .. } => return commands.iter().try_for_each(|command| admit(command, job, template)),
        _ => return Ok(()),
    };
    match template.panel(panel).and_then(|p| cant_read(job, p)) {
        Some(reason) => Err(CommandError::CantRead { panel: panel.clone(), reason }),
        None => Ok(()),
    }
}
