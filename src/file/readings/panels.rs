//! Which panel a name in a file means.

use super::table::{Readings, RejectedRow};
use crate::job::{GaugeReading, Job, cant_read};
use crate::vehicle::{Naming, PanelId, Template};
use std::collections::BTreeMap;

/// Rows with the panel of the vehicle that each is for.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Matched {
    /// Readings that can be added, in the order of the file.
    pub taken: Vec<GaugeReading>,
    /// Names that no panel of the vehicle has, in the order of the file.
    pub unknown: Vec<UnknownPanel>,
    /// Rows for a panel that the gauge of the job can't read, in the order of the file.
    pub impossible: Vec<RejectedRow>,
}

/// A name in a file that no panel has.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownPanel {
    /// The name.
    pub name: String,
    /// Lines that have it, from 1.
    pub lines: Vec<u64>,
}

/// Finds the panel of every row. A panel is known by its id and by its British and American name; capitals, the order of the
/// words, commas, hyphens and underscores make no difference. `assigned` says which panel is meant by a name that is none.
/// `template` is the vehicle of the job.
pub fn match_panels(
    readings: &Readings,
    job: &Job,
    template: &Template,
    assigned: &BTreeMap<String, PanelId>,
) -> Matched {
    let names = names(template);
    let mut matched = Matched::default();
    for row in &readings.rows {
        let given = assigned.get(&row.panel).filter(|id| template.panel(id).is_some());
        let meant = given.or_else(|| names.get(&words(&row.panel)).and_then(Option::as_ref));
        let reason = meant.and_then(|id| template.panel(id)).and_then(|panel| cant_read(job, panel));
        if let Some(reason) = reason {
            let reason = format!("\u{201c}{}\u{201d} can't be read: {reason}", row.panel);
            matched.impossible.push(RejectedRow { line: row.line, reason });
            continue;
        }
        match meant {
            Some(panel) => matched.taken.push(GaugeReading {
                panel: panel.clone(),
                spot: row.spot.clone(),
                reading: row.reading,
                thickness: row.thickness,
                note: row.note.clone(),
            }),
            None => match matched.unknown.iter_mut().find(|u| u.name == row.panel) {
                Some(unknown) => unknown.lines.push(row.line),
                None => matched.unknown.push(UnknownPanel { name: row.panel.clone(), lines: vec![row.line] }),
            },
        }
    }
    matched
}

/// Every name of every panel; none for a name that two panels have.
fn names(template: &Template) -> BTreeMap<Vec<String>, Option<PanelId>> {
    let mut names: BTreeMap<Vec<String>, Option<PanelId>> = BTreeMap::new();
    for panel in &template.panels {
        let said = [panel.id.to_string(), panel.name(Naming::Uk), panel.name(Naming::Us)];
        for name in said {
            let owner = names.entry(words(&name)).or_insert_with(|| Some(panel.id.clone()));
            if owner.as_ref() != Some(&panel.id) {
                *owner = None;
            }
        }
    }
    names
}

/// The words of a name in an order of their own.
fn words(name: &str) -> Vec<String> {
    let lower = name.to_lowercase();
    let mut words: Vec<String> =
        lower.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()).map(str::to_owned).collect();
    words.sort_unstable();
    words
}
