//! From text to rows.

use super::cells::{decimal_sign, reading_number, shortened, thickness};
use super::text::{TextEncoding, decode};
use super::{LIMIT_MIB, ReadingsError};
use crate::say;
use crate::units::{Micrometres, ThicknessUnit};
use csv::StringRecord;
use std::collections::BTreeMap;

/// Most rows of one file.
const MOST_ROWS: usize = 100_000;
/// Longest note of one row, in characters.
const LONGEST_NOTE: usize = 400;
/// What may stand between cells.
const SEPARATORS: [char; 3] = [';', ',', '\t'];

/// What a file says.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// How it was understood.
    pub recognised: Recognised,
    /// Rows that can be taken, in the order of the file.
    pub rows: Vec<ReadingRow>,
    /// Rows that can't, in the order of the file.
    pub rejected: Vec<RejectedRow>,
}

/// How a file was understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Recognised {
    /// How its letters are written.
    pub encoding: TextEncoding,
    /// What stands between cells: the one sign that makes the columns of the first line.
    pub separator: char,
    /// The decimal sign: the first one that a thickness has; none where all are whole.
    pub decimal: Option<char>,
    /// The unit, from the name of the column.
    pub unit: ThicknessUnit,
    /// Whether a column says which readings belong to one spot.
    pub names_spots: bool,
    /// Other columns, which become notes.
    pub notes: Vec<String>,
}

/// A row that can be taken.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadingRow {
    /// Its line in the file, from 1.
    pub line: u64,
    /// The panel as the file calls it.
    pub panel: String,
    /// The spot as the file calls it.
    pub spot: Option<String>,
    /// Number of the reading, from 1.
    pub reading: u32,
    /// Total film above the substrate.
    pub thickness: Micrometres,
    /// What stands in the other columns.
    pub note: String,
}

/// A row that can't be taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RejectedRow {
    /// Its line in the file, from 1.
    pub line: u64,
    /// Why, as a sentence without its stop.
    pub reason: String,
}

impl Recognised {
    /// In words: "UTF-8 text, cells separated by ;, decimal comma, thickness in µm".
    pub fn in_words(&self) -> String {
        let separator = match self.separator {
            '\t' => say!("file-table-tab").to_owned(),
            sign => say!("file-table-separator", sign = sign.to_string()),
        };
        let decimal = match self.decimal {
            Some(',') => say!("file-table-comma"),
            Some(_) => say!("file-table-point"),
            None => say!("file-table-whole"),
        };
        let spots = if self.names_spots { say!("file-table-spots-named") } else { say!("file-table-spots-three") };
        let recognised = say!(
            "file-table-recognised",
            encoding = self.encoding.name(),
            separator = separator,
            decimal = decimal,
            unit = self.unit.name(),
            spots = spots,
        );
        if self.notes.is_empty() {
            return recognised;
        }
        say!("file-table-recognised-notes", read = recognised, notes = self.notes.join(", "))
    }
}

/// Where the columns are.
struct Columns {
    panel: usize,
    reading: usize,
    thickness: usize,
    unit: ThicknessUnit,
    spot: Option<usize>,
    names: Vec<String>,
}

/// Reads the bytes of a file; `name` is what errors call it.
///
/// # Errors
/// [`ReadingsError`] where nothing can be taken at all.
pub fn readings_from_bytes(name: &str, bytes: &[u8]) -> Result<Readings, ReadingsError> {
    let name = || name.to_owned();
    if bytes.len() as u64 > LIMIT_MIB * 1024 * 1024 {
        return Err(ReadingsError::TooLarge { name: name(), limit_mib: LIMIT_MIB });
    }
    let (text, encoding) = decode(bytes).ok_or_else(|| ReadingsError::NotText { name: name() })?;
    let header = |line, problem| ReadingsError::Header { name: name(), line, problem };
    let (separator, columns) = columns_of(&text).map_err(|(line, problem)| header(line, problem))?;
    let mut records = records(&text, separator).skip(1);
    let records: Vec<(u64, StringRecord)> = records.by_ref().take(MOST_ROWS + 1).collect();
    if let Some((line, _)) = records.get(MOST_ROWS) {
        return Err(ReadingsError::TooManyRows { name: name(), line: *line, limit: MOST_ROWS });
    }
    let mut cells = records.iter().filter_map(|(_, record)| record.get(columns.thickness));
    let decimal = cells.find_map(decimal_sign);
    let mut read = Readings {
        recognised: Recognised {
            encoding,
            separator,
            decimal,
            unit: columns.unit,
            names_spots: columns.spot.is_some(),
            notes: (0..columns.names.len()).filter(|c| columns.is_note(*c)).map(|c| columns.names[c].clone()).collect(),
        },
        rows: Vec::new(),
        rejected: Vec::new(),
    };
    let mut seen: BTreeMap<(String, Option<String>, u32), u64> = BTreeMap::new();
    for (line, record) in &records {
        let row = columns.row(*line, record, decimal).and_then(|row| {
            let key = (row.panel.to_lowercase(), row.spot.clone(), row.reading);
            match seen.insert(key, *line) {
                None => Ok(row),
                Some(before) => {
                    Err(say!("file-table-twice", reading = row.reading, panel = row.panel.as_str(), line = before))
                }
            }
        });
        match row {
            Ok(row) => read.rows.push(row),
            Err(reason) => read.rejected.push(RejectedRow { line: *line, reason }),
        }
    }
    Ok(read)
}

/// Every row with its line, the first one too. Nothing in a text makes it fail: whatever is quoted wrongly becomes a cell.
fn records(text: &str, separator: char) -> impl Iterator<Item = (u64, StringRecord)> {
    let reader = csv::ReaderBuilder::new()
        .delimiter(separator as u8)
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let filled = |record: &StringRecord| record.iter().any(|cell| !cell.trim().is_empty());
    reader
        .into_records()
        .filter_map(Result::ok)
        .filter(move |record| filled(record))
        .map(|record| (record.position().map_or(0, csv::Position::line), record))
}

/// The separator and the columns of the first line: the one separator that gives all that are needed.
fn columns_of(text: &str) -> Result<(char, Columns), (u64, String)> {
    let mut problem = None;
    for separator in SEPARATORS {
        let Some((line, first)) = records(text, separator).next() else {
            return Err((1, say!("file-table-empty").to_owned()));
        };
        match Columns::of(&first) {
            Ok(columns) => return Ok((separator, columns)),
            Err(reason) => {
                // The separator that makes most columns says best what is missing.
                if problem.as_ref().is_none_or(|(_, _, cells)| *cells < first.len()) {
                    problem = Some((line, reason, first.len()));
                }
            }
        }
    }
    Err(problem.map_or((1, say!("file-table-empty").to_owned()), |(line, reason, _)| (line, reason)))
}

impl Columns {
    fn of(first: &StringRecord) -> Result<Self, String> {
        let names: Vec<String> = first.iter().map(|name| name.trim().to_owned()).collect();
        let find = |wanted: &str| {
            let mut found = (0..names.len()).filter(|c| names[*c].to_lowercase() == wanted);
            match (found.next(), found.next()) {
                (Some(_), Some(_)) => Err(say!("file-table-column-twice", column = wanted)),
                (column, _) => Ok(column),
            }
        };
        let needed = |wanted| find(wanted)?.ok_or_else(|| say!("file-table-no-column", column = wanted));
        let (thickness, unit) = match (find("thickness_um")?, find("thickness_mil")?) {
            (Some(column), None) => (column, ThicknessUnit::Um),
            (None, Some(column)) => (column, ThicknessUnit::Mil),
            (Some(_), Some(_)) => return Err(say!("file-table-which-unit").to_owned()),
            (None, None) => {
                return Err(say!("file-table-no-thickness").to_owned());
            }
        };
        Ok(Self { panel: needed("panel")?, reading: needed("reading")?, thickness, unit, spot: find("spot")?, names })
    }

    fn is_note(&self, column: usize) -> bool {
        ![Some(self.panel), Some(self.reading), Some(self.thickness), self.spot].contains(&Some(column))
    }

    /// One row, or why it can't be taken.
    fn row(&self, line: u64, record: &StringRecord, decimal: Option<char>) -> Result<ReadingRow, String> {
        if record.len() != self.names.len() {
            let (has, wants) = (record.len(), self.names.len());
            return Err(say!("file-table-cells", has = has, wants = wants));
        }
        let cell = |column: usize| record.get(column).unwrap_or_default().trim();
        let panel = cell(self.panel);
        if panel.is_empty() {
            return Err(say!("file-table-names-none").to_owned());
        }
        if panel.contains('\n') || panel.chars().count() > 100 {
            return Err(say!("file-table-no-panel", text = shortened(panel)));
        }
        let reading = reading_number(cell(self.reading))?;
        let thickness = thickness(cell(self.thickness), self.unit, decimal)?;
        let spot = self.spot.map(cell).filter(|spot| !spot.is_empty()).map(str::to_owned);
        let notes = (0..self.names.len()).filter(|c| self.is_note(*c) && !cell(*c).is_empty());
        let note = notes.map(|c| note(&self.names[c], cell(c))).collect::<Vec<_>>().join("; ");
        if note.chars().count() > LONGEST_NOTE {
            return Err(say!("file-table-notes-long", most = LONGEST_NOTE));
        }
        Ok(ReadingRow { line, panel: panel.to_owned(), spot, reading, thickness, note })
    }
}

fn note(column: &str, text: &str) -> String {
    if column.is_empty() { text.to_owned() } else { format!("{column} {text}") }
}
