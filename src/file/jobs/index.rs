//! What was read of a folder, kept beside nothing of the user's: a CSV file in the folder for what can be made again.

use super::{JobHead, Stamp};
use crate::file::disk::Disk;
use crate::file::save::write_export;
use crate::units::Date;
use crate::words::language;
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::fmt::Write as _;
use std::path::Path;

const LIMIT: u64 = 64 * 1024 * 1024;
const COLUMNS: usize = 10;

/// Another layout gets another number, so that an older file is simply read anew; so is one whose open points are in another language.
fn layout() -> String {
    format!("jobs/1 {}", language().tag())
}

/// Heads by their file.
#[derive(Debug, Default)]
pub(super) struct Index {
    heads: HashMap<String, JobHead>,
}

impl Index {
    /// The file of a folder: named by the folder's path, so that each folder has one.
    pub(super) fn name(folder: &Path) -> String {
        let hash = Sha256::digest(folder.as_os_str().as_encoded_bytes());
        let mut name = "jobs-".to_owned();
        for byte in &hash[..8] {
            let written = write!(name, "{byte:02x}");
            debug_assert!(written.is_ok(), "a text takes any letters");
        }
        name + ".csv"
    }

    /// What is remembered; nothing where the file is missing, of another layout or damaged.
    pub(super) fn read(disk: &dyn Disk, file: Option<&Path>) -> Self {
        let bytes = file.and_then(|file| disk.read(file, LIMIT).ok()).unwrap_or_default();
        let mut rows = csv::ReaderBuilder::new().has_headers(false).flexible(true).from_reader(bytes.as_slice());
        let mut records = rows.records();
        if !records.next().is_some_and(|first| first.is_ok_and(|row| row.get(0) == Some(layout().as_str()))) {
            return Self::default();
        }
        let heads = records.map_while(Result::ok).filter_map(|row| head(&row)).map(|h| (h.file.clone(), h));
        Self { heads: heads.collect() }
    }

    pub(super) fn len(&self) -> usize {
        self.heads.len()
    }

    /// What is remembered of a file that has not changed.
    pub(super) fn take(&mut self, file: &str, stamp: Stamp) -> Option<JobHead> {
        self.heads.remove(file).filter(|head| head.stamp == stamp)
    }

    /// Remembers. It is no loss where that fails: the folder is then read again the next time.
    pub(super) fn write(disk: &dyn Disk, file: Option<&Path>, jobs: &[JobHead]) {
        let Some(file) = file else { return };
        let mut rows = csv::WriterBuilder::new().flexible(true).from_writer(Vec::new());
        let mut good = rows.write_record([layout()]).is_ok();
        for job in jobs {
            good &= rows.write_record(row(job)).is_ok();
        }
        let folder_there = file.parent().is_some_and(|folder| disk.make_folder(folder).is_ok());
        if let Ok(bytes) = rows.into_inner()
            && good
            && folder_there
        {
            drop(write_export(disk, file, &bytes));
        }
    }
}

fn row(job: &JobHead) -> [String; COLUMNS] {
    [
        job.file.clone(),
        job.stamp.changed_ns.to_string(),
        job.stamp.length.to_string(),
        job.name.clone(),
        job.plate.clone(),
        job.owner.clone(),
        job.vehicle.clone(),
        job.date.map(|d| d.to_string()).unwrap_or_default(),
        job.open.clone(),
        job.trouble.clone().unwrap_or_default(),
    ]
}

fn head(row: &csv::StringRecord) -> Option<JobHead> {
    let text = |at: usize| row.get(at).map(str::to_owned);
    let stamp = Stamp { changed_ns: row.get(1)?.parse().ok()?, length: row.get(2)?.parse().ok()? };
    let head = JobHead {
        file: text(0)?,
        stamp,
        name: text(3)?,
        plate: text(4)?,
        owner: text(5)?,
        vehicle: text(6)?,
        date: text(7).filter(|d| !d.is_empty()).and_then(|d| Date::parse(&d).ok()),
        open: text(8)?,
        trouble: text(9).filter(|t| !t.is_empty()),
        ..JobHead::default()
    };
    (row.len() == COLUMNS).then(|| head.with_words())
}
