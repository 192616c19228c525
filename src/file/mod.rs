//! Jobs on disk: reading with one clear error, writing so that a power cut leaves the old or the new file, never neither.
//!
//! A job is RON text (`NAME.job.ron`) whose first field is its format, `job/1`. The types of a format version live in a module
//! of their own and never change once released; a later version converts from them.
//!
//! [`Templates`] finds the vehicle template that a job names: one of the program, or one in the user's own folder.

mod aside;
mod day;
mod disk;
mod error;
mod fingerprint;
mod holder;
mod jobs;
mod journal;
mod kept;
mod load;
mod open;
mod photos;
#[cfg(feature = "gui")]
mod picture;
mod places;
mod plain;
mod practice;
mod readings;
mod save;
mod templates;
mod v1;

pub use aside::{KEPT_FILES, keep_job, keep_torn, put_aside};
pub use day::{DayFile, append_day, day_path, polishing_day_path, read_day, write_day};
pub use disk::{About, Disk, Fault, Lock, RealDisk, new_private_folder, why};
pub use error::ReadError;
pub use fingerprint::{Change, Fingerprint};
pub use holder::{Hold, Holder, hold};
pub use jobs::{FolderOfJobs, JobHead, Listing, Reading, history_of, matching, sort_by_date};
pub use journal::{
    FoundJournal, JournalHead, journal_of, journal_without_file, journals_without_file, read_journal, remove_journal,
    write_journal,
};
pub use kept::{Kept, keep, kept};
pub use load::{Loaded, job_findings, job_from_text, read_job, read_text, sized, template_of};
pub use open::Opened;
pub use photos::{copy_photos, photo_file, photo_folder, photo_id, photos_of, read_photo, save_photo};
#[cfg(feature = "gui")]
pub use picture::{KEPT_SIDE, PICTURE_LIMIT_MIB, Picture, Shown, show_picture, take_picture};
pub use places::Places;
pub use plain::job_as_written;
pub use practice::{Attempt, Learners, ProgressError};
pub use readings::{
    Matched, ReadingRow, Readings, ReadingsError, Recognised, RejectedRow, TextEncoding, UnknownPanel, match_panels,
    read_readings, readings_from_bytes,
};
pub use save::{SaveError, Saved, job_to_text, save_job, write_export, write_text};
pub use templates::{Listed, Templates, data_folder};

/// The embedded sample job: an invented vehicle with something to decide.
pub const SAMPLE: &str = include_str!("sample.job.ron");
