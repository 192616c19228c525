//! The list of all jobs of a folder.

use crate::file::{FolderOfJobs, Listing};
use crate::gui::order::waker;
use crate::say;
use crate::work::JobsRun;
use eframe::egui;
use std::path::{Path, PathBuf};

/// The list, and the work on it.
#[derive(Debug, Default)]
pub(in crate::gui) struct Jobs {
    folder: Option<FolderOfJobs>,
    cache: Option<PathBuf>,
    pub(super) listing: Listing,
    run: Option<JobsRun>,
    /// Why there is no list.
    pub(super) trouble: Option<String>,
    /// Grows with every list, so that what was found in an older one is looked for again.
    pub(super) edition: u64,
}

impl Jobs {
    pub(super) fn new(folder: Option<PathBuf>, cache: Option<PathBuf>) -> Self {
        let folder = folder.map(|folder| FolderOfJobs::new(folder, cache.clone()));
        Self { folder, cache, ..Self::default() }
    }

    /// The folder, where one is known.
    pub(super) fn folder(&self) -> Option<&Path> {
        self.folder.as_ref().map(FolderOfJobs::path)
    }

    /// The file of a job in the list.
    pub(super) fn file(&self, at: usize) -> Option<PathBuf> {
        Some(self.folder.as_ref()?.file(self.listing.jobs.get(at)?))
    }

    /// Takes another folder.
    pub(super) fn look_at(&mut self, folder: PathBuf) {
        *self = Self { edition: self.edition + 1, ..Self::new(Some(folder), self.cache.take()) };
    }

    /// Begins to list the folder.
    pub(super) fn list(&mut self, ctx: &egui::Context) {
        let Some(folder) = self.folder.clone() else { return };
        self.trouble = None;
        match JobsRun::start(folder, waker(ctx)) {
            Ok(run) => self.run = Some(run),
            Err(error) => self.trouble = Some(say!("home-folder-unread", why = error.to_string())),
        }
    }

    /// What came of it so far.
    pub(super) fn listen(&mut self) {
        let Some(listed) = self.run.as_mut().and_then(JobsRun::listed) else { return };
        self.run = None;
        match listed {
            Ok(listing) => {
                self.listing = listing;
                self.edition += 1;
            }
            Err(error) => self.trouble = Some(say!("home-folder-unread", why = error)),
        }
    }

    /// Whether the folder is being looked through.
    pub(in crate::gui) fn is_busy(&self) -> bool {
        self.run.is_some()
    }

    /// How far that is, in words.
    pub(super) fn progress(&self) -> Option<String> {
        let reading = self.run.as_ref()?.reading;
        Some(match reading.all {
            0 => say!("home-looking").to_owned(),
            all => say!("home-reading", number = reading.done + 1, all = all),
        })
    }
}
