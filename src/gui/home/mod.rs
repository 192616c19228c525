//! What belongs to the person at the desk and not to the job: preferences, recent jobs, all jobs, the clipboard, printing, hints.

mod carry_out;
mod hints;
mod jobs;
mod jobs_page;
mod nothing_yet;
mod notice;
mod preferences;
mod preferences_page;
mod print;
mod recent;
mod start;
mod table;
mod table_page;
mod wish;

pub(super) use hints::hints_ui;
pub(super) use nothing_yet::{is_unread, nothing_yet};
pub(super) use notice::notice_ui;
pub(super) use preferences::{Preferences, SCALES};
pub(super) use start::recent_ui;
pub(super) use wish::{HomeWish, PageKind};

use super::action::{Action, Model};
use super::commands::{Find, find_ui, help_ui};
use crate::file::{Places, RealDisk};
use crate::words::{Language, language};
use eframe::egui::Ui;
use jobs::Jobs;
use jobs_page::JobsPage;
use print::Printing;
use std::path::PathBuf;

/// A page that lies over the window, and what is typed in it.
#[derive(Debug)]
pub(super) enum Page {
    Find(Find),
    Help,
    Preferences,
    Jobs(JobsPage),
    Table,
}

/// Everything about the person at the desk.
#[derive(Debug, Default)]
pub(super) struct Home {
    pub(super) places: Places,
    pub(super) preferences: Preferences,
    /// The language that the system asks for.
    system: Language,
    /// Whether preferences are kept and put to use; tests and pictures say otherwise.
    live: bool,
    pub(super) page: Option<Page>,
    /// Files of jobs, the last one first.
    pub(super) recent: Vec<PathBuf>,
    pub(super) jobs: Jobs,
    /// The hint that is shown.
    pub(super) hint: Option<usize>,
    /// What to say once, at the foot of the window.
    pub(super) said: Option<String>,
    printing: Printing,
    /// The file that the window had when recent ones were last written.
    noted: Option<PathBuf>,
}

impl Home {
    /// That of a person, with what is kept in these places.
    pub(super) fn of(places: Places) -> Self {
        let read = places.config.as_deref().map(|folder| Preferences::read(&RealDisk, folder));
        let (preferences, said) = read.unwrap_or_default();
        let recent = recent::read(places.state.as_deref());
        let hint = (!preferences.hints_seen).then_some(0);
        Self {
            jobs: Jobs::new(preferences.folder_of_jobs.clone(), places.cache.clone()),
            live: true,
            system: language(),
            places,
            preferences,
            recent,
            hint,
            said,
            ..Self::default()
        }
    }

    /// Says whether the system may be asked to show a file.
    pub(super) fn may_show(&mut self, viewer: Viewer) {
        self.printing = Printing::with(viewer);
    }

    /// Whether a page lies over the window.
    pub(super) fn is_open(&self) -> bool {
        self.page.is_some()
    }
}

/// Whether the system may be asked to show a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Viewer {
    /// The viewer of the system.
    System,
    /// None: where the file is, is said.
    #[default]
    Nobody,
}

/// Draws the page that is open.
pub(super) fn page_ui(ui: &mut Ui, m: &Model<'_>, page: &mut Page, out: &mut Vec<Action>) {
    match page {
        Page::Find(find) => find_ui(ui, m, find, out),
        Page::Help => help_ui(ui, m, out),
        Page::Preferences => preferences_page::preferences_ui(ui, m, out),
        Page::Jobs(page) => jobs_page::jobs_ui(ui, m, page, out),
        Page::Table => table_page::table_page_ui(ui, m, out),
    }
}
