//! The order of the crew as CSV (RFC 4180).

use super::input::SheetInput;
use crate::say;
use crate::units::clock;
use csv::Writer;

/// Writing the list failed; that is a fault of the program.
#[derive(Debug, thiserror::Error)]
#[error("{}", say!("sheet-list-unwritten", why = _0.to_string()))]
pub struct CrewListError(#[from] csv::Error);

/// Who does what when, first the polishing, then the coating; a row per step at a panel.
///
/// # Errors
/// [`CrewListError`].
pub fn crew_list(input: &SheetInput<'_>) -> Result<String, CrewListError> {
    let mut out = Writer::from_writer(Vec::new());
    out.write_record(["work", "worker", "number", "task", "panel", "name", "layer", "start_s", "end_s", "start"])?;
    let panel = |index: usize| input.template.panels[index].id.to_string();
    let polishing = input.polishing.map(|o| o.rows.as_slice()).unwrap_or_default();
    for row in polishing {
        let (worker, number) = (input.job.crew[row.worker].name.as_str(), row.stop.to_string());
        let (start, end) = (row.at.start.to_string(), row.at.end.to_string());
        let names = (panel(row.panel), input.name(row.panel));
        let cells =
            ["polishing", worker, &number, &row.name, &names.0, &names.1, "", &start, &end, &clock(row.at.start)];
        out.write_record(cells)?;
    }
    let mut counts = vec![0_usize; input.job.crew.len()];
    for row in input.order {
        counts[row.worker] += 1;
        let (worker, number) = (input.job.crew[row.worker].name.as_str(), counts[row.worker].to_string());
        let (start, end, layer) = (row.at.start.to_string(), row.at.end.to_string(), row.layer.to_string());
        let names = (panel(row.panel), input.name(row.panel));
        let cells =
            ["coating", worker, &number, row.role.id(), &names.0, &names.1, &layer, &start, &end, &clock(row.at.start)];
        out.write_record(cells)?;
    }
    let bytes = out.into_inner().map_err(|e| csv::Error::from(std::io::Error::other(e.to_string())))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}
