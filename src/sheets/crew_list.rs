//! The order of the crew as CSV (RFC 4180).

use super::input::SheetInput;
use crate::say;
use crate::units::{clock, number};
use csv::Writer;
use std::borrow::Cow;

/// Writing the list failed; that is a fault of the program.
#[derive(Debug, thiserror::Error)]
#[error("{}", say!("sheet-list-unwritten", why = _0.to_string()))]
pub struct CrewListError(#[from] csv::Error);

/// A text as a cell of a spreadsheet, which takes one that begins like this for a formula and would carry it out; behind an
/// apostrophe it is text. Numbers stay numbers. Source: OWASP, "CSV Injection".
pub fn spreadsheet_cell(text: &str) -> Cow<'_, str> {
    let formula = text.starts_with(['=', '+', '-', '@', '\t', '\r']) && number(text).is_none();
    if formula { Cow::Owned(format!("'{text}")) } else { Cow::Borrowed(text) }
}

/// Who does what when, first the polishing, then the coating; a row per step at a panel.
///
/// # Errors
/// [`CrewListError`].
pub fn crew_list(input: &SheetInput<'_>) -> Result<String, CrewListError> {
    let mut out = Writer::from_writer(Vec::new());
    out.write_record(["work", "worker", "number", "task", "panel", "name", "layer", "start_s", "end_s", "start"])?;
    let member = |index: usize| spreadsheet_cell(&input.job.crew[index].name);
    let names = |panel: usize| {
        let (id, name) = (input.template.panels[panel].id.as_str(), input.name(panel));
        (spreadsheet_cell(id).into_owned(), spreadsheet_cell(&name).into_owned())
    };
    let polishing = input.polishing.map(|o| o.rows.as_slice()).unwrap_or_default();
    for row in polishing {
        let (worker, number) = (member(row.worker), row.stop.to_string());
        let (start, end) = (row.at.start.to_string(), row.at.end.to_string());
        let names = names(row.panel);
        let cells =
            ["polishing", &worker, &number, &row.name, &names.0, &names.1, "", &start, &end, &clock(row.at.start)];
        out.write_record(cells)?;
    }
    let mut counts = vec![0_usize; input.job.crew.len()];
    for row in input.order {
        counts[row.worker] += 1;
        let (worker, number) = (member(row.worker), counts[row.worker].to_string());
        let (start, end, layer) = (row.at.start.to_string(), row.at.end.to_string(), row.layer.to_string());
        let names = names(row.panel);
        let cells = [
            "coating",
            &worker,
            &number,
            row.role.id(),
            &names.0,
            &names.1,
            &layer,
            &start,
            &end,
            &clock(row.at.start),
        ];
        out.write_record(cells)?;
    }
    let bytes = out.into_inner().map_err(|e| csv::Error::from(std::io::Error::other(e.to_string())))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}
