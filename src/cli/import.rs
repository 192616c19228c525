//! `lapwright import JOB READINGS.csv --out JOB`

use super::{Exit, Failure, Output, args};
use crate::file::{Matched, RealDisk, Templates, copy_photos, match_panels, read_readings, save_job};
use crate::insight::add_readings;
use crate::job::Document;
use crate::say;
use crate::vehicle::Naming;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Adds the readings that can be added and lists the others.
pub(super) fn run(args: &args::Import, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let loaded = Templates::of_user().read_job(&RealDisk, &args.job)?;
    let readings = read_readings(&RealDisk, &args.readings)?;
    let matched = match_panels(&readings, &loaded.job, &loaded.template, &BTreeMap::new());
    let refused = readings.rejected.iter().chain(&matched.impossible);
    let mut rejected: Vec<(u64, String)> = refused.map(|r| (r.line, r.reason.clone())).collect();
    rejected.extend(matched.unknown.iter().flat_map(|unknown| {
        let reason = say!("cli-import-no-panel", panel = unknown.name.as_str());
        unknown.lines.iter().map(move |line| (*line, reason.clone()))
    }));
    rejected.sort();
    let name = args.readings.display();
    if matched.taken.is_empty() {
        let line = |(line, reason): &(u64, String)| say!("cli-import-line", line = *line, reason = reason);
        let why = rejected.first().map_or_else(|| say!("cli-import-no-rows").to_owned(), line);
        return Err(Failure::new(
            say!("cli-import-none", name = name.to_string(), count = rejected.len(), why = why),
            say!("cli-import-none-do"),
        ));
    }
    let mut document = Document::opened(Arc::clone(&loaded.job));
    if let Some(command) = add_readings(&loaded.job, &loaded.template, &matched.taken) {
        document
            .apply(&command, None)
            .map_err(|e| Failure::new(format!("{name}: {e}"), say!("cli-nothing-written")))?;
    }
    copy_photos(&RealDisk, &args.job, &args.out, document.job())?;
    save_job(&RealDisk, &args.out, document.job())?;
    writeln!(out.data, "{name}: {}", readings.recognised.in_words())?;
    for (panel, count) in counts(&matched) {
        let panel_name = loaded.template.panel(panel).map(|p| p.name(Naming::Uk)).unwrap_or_default();
        writeln!(out.data, "{panel}: {} ({panel_name})", readings_in_words(count))?;
    }
    for (line, reason) in &rejected {
        let name = name.to_string();
        writeln!(out.data, "{}", say!("cli-import-not-taken", name = name, line = *line, reason = reason))?;
    }
    let (taken, not) = (readings_in_words(matched.taken.len()), rejected.len());
    writeln!(out.data, "{}", say!("cli-import-summary", taken = taken, count = not))?;
    Ok(if rejected.is_empty() { Exit::Fine } else { Exit::Findings })
}

fn counts(matched: &Matched) -> BTreeMap<&crate::vehicle::PanelId, usize> {
    let mut counts = BTreeMap::new();
    for reading in &matched.taken {
        *counts.entry(&reading.panel).or_insert(0) += 1;
    }
    counts
}

fn readings_in_words(count: usize) -> String {
    say!("cli-readings", count = count)
}
