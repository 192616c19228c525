//! The next visit of the same vehicle.

use super::Insight;
use crate::job::{Job, PanelRecord, Survey};
use crate::polish::{Ledger, LedgerEntry, RemovalSource};
use crate::vehicle::Template;
use std::sync::Arc;

/// The job for the next visit of the vehicle: facts about its paint stay, readings, defects, gloss and order go, and what this visit
/// took is in the ledger of each panel: as measured where readings after polishing show it, otherwise as planned.
///
/// `visit` is what the ledger calls this visit.
pub fn next_visit(job: &Job, template: &Template, insight: &Insight, visit: &str) -> Job {
    let mut next = job.clone();
    next.surveys = vec![Survey::default()];
    next.order = None;
    for (panel, insight) in template.panels.iter().zip(&insight.panels) {
        let known = job.record(&panel.id).map_or_else(PanelRecord::default, |r| (**r).clone());
        let planned = (insight.polish.removal, insight.removal_upper());
        let (likely, upper, source) = match &insight.after {
            Some(after) if after.went.measured => (after.went.likely, after.went.upper, RemovalSource::Measured),
            Some(after) => (after.went.likely, after.went.upper, RemovalSource::Planned),
            None => (planned.0, planned.1, RemovalSource::Planned),
        };
        let mut removals = known.removals.clone();
        if upper.um() > 0.0 {
            let visit = visit.to_owned();
            removals.entries.push(LedgerEntry { visit, removed_um: likely.min(upper), upper_um: upper, source });
        }
        let record = PanelRecord { spots: Vec::new(), defects: Vec::new(), gloss: Vec::new(), removals, ..known };
        if record.is_blank() {
            next.panels.remove(&panel.id);
        } else {
            next.panels.insert(panel.id.clone(), Arc::new(record));
        }
    }
    next
}

/// One earlier visit over all panels.
#[derive(Debug, Clone, PartialEq)]
pub struct EarlierVisit {
    /// What the ledger calls it.
    pub visit: String,
    /// On how many panels it is noted.
    pub panels: usize,
    /// The largest upper value of any panel, in µm.
    pub most_um: f64,
    /// Where it is known from; the first panel's source.
    pub source: RemovalSource,
}

/// The earlier visits of a job, in the order they were noted.
pub fn earlier_visits(job: &Job) -> Vec<EarlierVisit> {
    let mut visits: Vec<EarlierVisit> = Vec::new();
    for Ledger { entries } in job.panels.values().map(|r| &r.removals) {
        for entry in entries {
            let upper = entry.upper_um.um();
            match visits.iter_mut().find(|v| v.visit == entry.visit) {
                Some(visit) => {
                    visit.panels += 1;
                    visit.most_um = visit.most_um.max(upper);
                }
                None => visits.push(EarlierVisit {
                    visit: entry.visit.clone(),
                    panels: 1,
                    most_um: upper,
                    source: entry.source,
                }),
            }
        }
    }
    visits
}
