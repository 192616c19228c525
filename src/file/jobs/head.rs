//! What a list says of a job.

use super::Stamp;
use crate::job::Job;
use crate::say;
use crate::units::Date;

/// What a list says of a job.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct JobHead {
    /// Its file below the folder, with `/` between folders.
    pub file: String,
    pub(super) stamp: Stamp,
    /// What it is called.
    pub name: String,
    /// Number plate or other mark.
    pub plate: String,
    /// Whose vehicle it is.
    pub owner: String,
    /// The vehicle in words.
    pub vehicle: String,
    /// Its day: the one of the work, otherwise that of the last survey.
    pub date: Option<Date>,
    /// What is still open, in words; empty where nothing is.
    pub open: String,
    /// Why it can't be read, where it can't.
    pub trouble: Option<String>,
    /// Everything that is searched, in small letters.
    pub(super) words: String,
    /// The plate without blanks and hyphens, in small letters.
    pub(super) mark: String,
}

impl JobHead {
    pub(super) fn of(file: &str, stamp: Stamp, job: &Job) -> Self {
        let surveyed = || job.surveys.iter().rev().find_map(|s| Date::parse(&s.date).ok());
        Self {
            file: file.to_owned(),
            stamp,
            name: job.name.clone(),
            plate: job.vehicle.plate.trim().to_owned(),
            owner: job.customer.name.clone(),
            vehicle: job.vehicle.description.clone(),
            date: job.date.or_else(surveyed),
            open: open_points(job),
            trouble: None,
            words: String::new(),
            mark: String::new(),
        }
        .with_words()
    }

    pub(super) fn unreadable(file: &str, stamp: Stamp, reason: &str) -> Self {
        let trouble = Some(reason.to_owned());
        Self { file: file.to_owned(), stamp, name: file.to_owned(), trouble, ..Self::default() }.with_words()
    }

    /// Fills in what is searched.
    pub(super) fn with_words(mut self) -> Self {
        self.mark = squeezed(&self.plate);
        let date = self.date.map(|d| d.to_string()).unwrap_or_default();
        let trouble = self.trouble.as_deref().map_or("", |_| say!("file-open-trouble"));
        let all =
            [&self.name, &self.plate, &self.mark, &self.owner, &self.vehicle, &date, &self.open, trouble, &self.file];
        self.words = all.join("\n").to_lowercase();
        self
    }
}

/// Small letters and digits only, so that "AB 12-C" and "ab12c" are one mark.
pub(super) fn squeezed(mark: &str) -> String {
    mark.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

/// What a job still wants, as far as it can be seen without its template.
fn open_points(job: &Job) -> String {
    let mut open = Vec::new();
    if job.panels.values().all(|record| record.spots.is_empty()) {
        open.push(say!("file-open-unread").to_owned());
    }
    match job.panels.values().map(|record| record.defects.len()).sum::<usize>() {
        0 => {}
        count => open.push(say!("file-open-defects", count = count)),
    }
    if job.order.is_none() {
        open.push(say!("file-open-no-order").to_owned());
    }
    open.join(", ")
}
