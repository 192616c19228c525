//! What learners have done in Practice: one plain CSV file for each, in the user's folder.
//!
//! `learner-NAME.csv` with the columns `learner`, `date`, `exercise`, `vehicle`, `score_pct`, `broken_rules`; rows are only ever
//! added. A file is written whole beside the old one and put in its place, as a job is, and the old one stays as `NAME~`. A file with
//! a fault is refused with its line, and nothing is written over it.

use super::disk::{Disk, is_file};
use super::error::ReadError;
use super::load::read_text;
use super::save::{SaveError, Saved, write_text};
use super::templates::user_folder;
use crate::say;
use crate::units::Date;
use std::path::{Path, PathBuf};

const COLUMNS: [&str; 6] = ["learner", "date", "exercise", "vehicle", "score_pct", "broken_rules"];

/// One result of a learner.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Attempt {
    /// The day.
    pub date: Date,
    /// What was practised, by its British name.
    pub exercise: String,
    /// On which vehicle, by its name.
    pub vehicle: String,
    /// Share of the best possible, in whole per cent, 0 to 100.
    pub score_pct: u32,
    /// Broken rules, or wrong answers.
    pub broken: u32,
}

/// Where learners are kept. The default is nowhere.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Learners {
    folder: Option<PathBuf>,
}

/// Why a result could not be kept.
#[derive(Debug, thiserror::Error)]
pub enum ProgressError {
    /// There is no folder for it.
    #[error("{}", say!("file-learner-no-folder"))]
    NoFolder,
    /// What is there already can't be read, so nothing is written over it.
    #[error("{0}")]
    Faulty(ReadError),
    /// The disk refused.
    #[error("{0}")]
    Save(SaveError),
}

impl ProgressError {
    /// What a person can do, in one line.
    pub fn hint(&self) -> String {
        match self {
            Self::NoFolder => say!("file-set-home").to_owned(),
            Self::Faulty(_) => say!("file-learner-as-is").to_owned(),
            Self::Save(error) => error.hint().to_owned(),
        }
    }
}

impl Learners {
    /// Those in a folder, which need not exist yet.
    pub fn in_folder(folder: impl Into<PathBuf>) -> Self {
        Self { folder: Some(folder.into()) }
    }

    /// Those in the user's own folder, `lapwright/practice` where programs keep data.
    pub fn of_user() -> Self {
        Self { folder: user_folder("practice", |name| std::env::var_os(name), cfg!(windows)) }
    }

    /// The folder; none where the system names no place for one.
    pub fn folder(&self) -> Option<&Path> {
        self.folder.as_deref()
    }

    /// Names of all learners, sorted. A file that can't be read goes by its own name.
    pub fn list(&self, disk: &dyn Disk) -> Vec<String> {
        let mut names: Vec<String> = self
            .files(disk)
            .into_iter()
            .map(|path| {
                let said = read_text(disk, &path).ok().and_then(|text| learner_in(&text));
                said.unwrap_or_else(|| stem(&path).trim_start_matches(PREFIX).to_owned())
            })
            .collect();
        names.sort_by_key(|n| n.to_lowercase());
        names
    }

    /// What a learner has done, in the order it was done; nothing for somebody new.
    ///
    /// # Errors
    /// [`ReadError`] with the place of the fault.
    pub fn load(&self, disk: &dyn Disk, learner: &str) -> Result<Vec<Attempt>, ReadError> {
        match self.path_of(disk, learner) {
            Some(path) if is_file(disk, &path) => attempts(&path.display().to_string(), &read_text(disk, &path)?),
            _ => Ok(Vec::new()),
        }
    }

    /// Adds a result to those of a learner.
    ///
    /// # Errors
    /// [`ProgressError`]; what is on the disk is then as it was.
    pub fn add(&self, disk: &dyn Disk, learner: &str, attempt: &Attempt) -> Result<Saved, ProgressError> {
        let path = self.path_of(disk, learner).ok_or(ProgressError::NoFolder)?;
        let mut all = self.load(disk, learner).map_err(ProgressError::Faulty)?;
        all.push(attempt.clone());
        let text = written(learner.trim(), &all).map_err(ProgressError::Save)?;
        if let Some(folder) = path.parent() {
            disk.make_folder(folder).map_err(|cause| {
                ProgressError::Save(SaveError::Disk {
                    path: folder.to_owned(),
                    doing: say!("file-doing-making-folder"),
                    cause,
                })
            })?;
        }
        write_text(disk, &path, &text).map_err(ProgressError::Save)
    }

    fn files(&self, disk: &dyn Disk) -> Vec<PathBuf> {
        let all = self.folder.as_deref().and_then(|folder| disk.list(folder).ok()).unwrap_or_default();
        let is_ours = |path: &PathBuf| stem(path).starts_with(PREFIX) && path.extension().is_some_and(|e| e == "csv");
        all.into_iter().filter(is_ours).collect()
    }

    /// The file of a learner: letters and digits of the name, and a number where somebody else has those too.
    fn path_of(&self, disk: &dyn Disk, learner: &str) -> Option<PathBuf> {
        let folder = self.folder.as_deref()?;
        let plain = |c: char| if c.is_alphanumeric() { c } else { ' ' };
        let words: String = learner.to_lowercase().chars().map(plain).take(60).collect();
        let words = words.split_whitespace().collect::<Vec<_>>().join("-");
        let paths = (1..1_000).map(|n| match n {
            1 => folder.join(format!("{PREFIX}{words}.csv")),
            n => folder.join(format!("{PREFIX}{words}-{n}.csv")),
        });
        let is_theirs = |path: &PathBuf| {
            let said = read_text(disk, path).ok().and_then(|text| learner_in(&text));
            said.is_none_or(|name| name.to_lowercase() == learner.trim().to_lowercase())
        };
        paths.into_iter().find(is_theirs)
    }
}

const PREFIX: &str = "learner-";

fn stem(path: &Path) -> String {
    path.file_stem().unwrap_or_default().to_string_lossy().into_owned()
}

/// Whose file a text is, by its first row.
fn learner_in(text: &str) -> Option<String> {
    let row = csv::Reader::from_reader(text.as_bytes()).into_records().next()?.ok()?;
    row.get(0).map(|name| name.trim().to_owned()).filter(|name| !name.is_empty())
}

fn written(learner: &str, all: &[Attempt]) -> Result<String, SaveError> {
    let text = |e: String| SaveError::Text(e);
    let mut rows = csv::Writer::from_writer(Vec::new());
    rows.write_record(COLUMNS).map_err(|e| text(e.to_string()))?;
    for a in all {
        let fields =
            [learner, &a.date.to_string(), &a.exercise, &a.vehicle, &a.score_pct.to_string(), &a.broken.to_string()];
        rows.write_record(fields).map_err(|e| text(e.to_string()))?;
    }
    let bytes = rows.into_inner().map_err(|e| text(e.to_string()))?;
    let made = String::from_utf8(bytes).map_err(|e| text(e.to_string()))?;
    match attempts(say!("file-new-text"), &made) {
        Ok(again) if again == all => Ok(made),
        _ => Err(SaveError::Text(say!("file-learner-reads-other").to_owned())),
    }
}

fn attempts(name: &str, text: &str) -> Result<Vec<Attempt>, ReadError> {
    let fault = |line: u64, field: &str, message: String| ReadError::Syntax {
        name: name.to_owned(),
        line: line as usize,
        column: 1,
        field: field.to_owned(),
        message,
    };
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let heads = reader.headers().map_err(|e| fault(1, "", e.to_string()))?;
    if heads.iter().ne(COLUMNS) {
        return Err(fault(1, "", say!("file-learner-first-line", columns = COLUMNS.join(","))));
    }
    let mut found = Vec::new();
    for row in reader.records() {
        let row = row.map_err(|e| fault(e.position().map_or(0, csv::Position::line), "", e.to_string()))?;
        let line = row.position().map_or(0, csv::Position::line);
        let cell = |k: usize| row.get(k).unwrap_or_default().trim();
        let number = |k: usize, most: u32| {
            let value = cell(k).parse().ok().filter(|v| *v <= most);
            value.ok_or_else(|| fault(line, COLUMNS[k], say!("file-learner-number", text = cell(k), most = most)))
        };
        if cell(2).is_empty() {
            return Err(fault(line, COLUMNS[2], say!("file-learner-no-exercise").to_owned()));
        }
        found.push(Attempt {
            date: Date::parse(cell(1)).map_err(|e| fault(line, COLUMNS[1], e))?,
            exercise: cell(2).to_owned(),
            vehicle: cell(3).to_owned(),
            score_pct: number(4, 100)?,
            broken: number(5, 100_000)?,
        });
    }
    Ok(found)
}
