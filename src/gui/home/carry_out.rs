//! Carries out what is asked for that belongs to the person at the desk.

use super::jobs_page::JobsPage;
use super::table::of_workspace;
use super::{Home, HomeWish, Page, PageKind, Preferences, print, recent};
use crate::file::{Disk as _, RealDisk, why};
use crate::gui::action::ViewChange;
use crate::gui::app::App;
use crate::gui::commands::Find;
use crate::gui::files::Purpose;
use crate::gui::handover::{Form, HandoverWish, Which};
use crate::gui::map::MapCache;
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::set_units;
use crate::say;
use crate::words;
use eframe::egui;

impl App {
    /// What has to be seen to in every frame.
    pub(in crate::gui) fn step_home(&mut self, first: bool, ctx: &egui::Context) {
        if first {
            // Sizes go through the preferences, so that they are kept.
            ctx.options_mut(|o| o.zoom_with_keyboard = false);
            if self.home.live {
                self.put_to_use(ctx, None);
            }
        }
        self.home.jobs.listen();
        if let Some(said) = self.home.printing.listen() {
            self.home.said = Some(said);
        }
        if self.path != self.home.noted {
            self.home.noted.clone_from(&self.path);
            if let Some(path) = &self.path {
                recent::note(&mut self.home.recent, path, self.home.places.state.as_deref());
            }
        }
    }

    /// Carries a wish out.
    pub(in crate::gui) fn at_home(&mut self, wish: HomeWish, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        match wish {
            HomeWish::Show(page) => self.show_page(page, ctx),
            HomeWish::Close => self.home.page = None,
            HomeWish::Prefer(preferences) => self.prefer(*preferences, ctx),
            HomeWish::KeepCrew => {
                let crew = self.document.job().crew.clone();
                self.prefer(Preferences { crew, ..self.home.preferences.clone() }, ctx);
            }
            HomeWish::AskFolder => self.ask(Purpose::Folder, ctx, frame),
            HomeWish::Folder(folder) => {
                self.question = None;
                self.home.jobs.look_at(folder.clone());
                self.home.jobs.list(ctx);
                if let Some(Page::Jobs(page)) = &mut self.home.page {
                    *page = JobsPage::new(Some(&folder), None);
                }
                self.prefer(Preferences { folder_of_jobs: Some(folder), ..self.home.preferences.clone() }, ctx);
            }
            HomeWish::ListAgain => self.home.jobs.list(ctx),
            HomeWish::Hint(hint) => {
                self.home.hint = hint;
                if hint.is_none() && !self.home.preferences.hints_seen {
                    self.prefer(Preferences { hints_seen: true, ..self.home.preferences.clone() }, ctx);
                }
            }
            HomeWish::Forget(path) => {
                recent::forget(&mut self.home.recent, &path, self.home.places.state.as_deref());
            }
            HomeWish::Read => self.home.said = None,
            HomeWish::CopyTable => {
                let text = of_workspace(ctx, &self.model()).as_text();
                ctx.copy_text(text);
                self.home.said = Some(say!("home-table-copied").to_owned());
            }
            HomeWish::CopyMap(form) => self.copy_map(form, ctx),
            HomeWish::AskPaste => ctx.send_viewport_cmd(egui::ViewportCommand::RequestPaste),
            HomeWish::Pasted(text) => self.show_pasted(&text),
            HomeWish::Print(which) => self.print(which, ctx),
            HomeWish::Sheet(which) => {
                self.change_view(ViewChange::Workspace(Workspace::Handover));
                self.hand_over(HandoverWish::Show(which), ctx, frame);
            }
            HomeWish::BigScreen => {
                self.change_view(ViewChange::Workspace(Workspace::Handover));
                self.hand_over(HandoverWish::Play, ctx, frame);
            }
        }
    }

    fn show_page(&mut self, page: PageKind, ctx: &egui::Context) {
        if self.handover.is_on_big_screen() {
            self.hand_over(HandoverWish::StopPlaying, ctx, None);
        }
        let plate = self.document.job().vehicle.plate.trim().to_owned();
        let plate = (page == PageKind::Visits && !plate.is_empty()).then_some(plate);
        self.home.page = Some(match page {
            PageKind::Find => Page::Find(Find::default()),
            PageKind::Help => Page::Help,
            PageKind::Preferences => Page::Preferences,
            PageKind::Table => Page::Table,
            PageKind::Jobs | PageKind::Visits => {
                // The jobs of the shop are most likely where this one is.
                let here = self.path.as_deref().and_then(std::path::Path::parent).filter(is_folder);
                if let (None, Some(here)) = (self.home.jobs.folder(), here) {
                    self.home.jobs.look_at(here.to_owned());
                }
                self.home.jobs.list(ctx);
                Page::Jobs(JobsPage::new(self.home.jobs.folder(), plate))
            }
        });
    }

    /// Takes preferences, puts them to use and keeps them.
    fn prefer(&mut self, preferences: Preferences, ctx: &egui::Context) {
        let before = std::mem::replace(&mut self.home.preferences, preferences);
        self.put_to_use(ctx, Some(&before));
        let Home { places, preferences, .. } = &self.home;
        if let Some(Err(error)) = places.config.as_deref().map(|folder| preferences.write(&RealDisk, folder)) {
            self.home.said = Some(say!("home-not-kept", why = error.to_string()));
        }
    }

    /// Makes the window as it is preferred; what is as before stays untouched.
    fn put_to_use(&mut self, ctx: &egui::Context, before: Option<&Preferences>) {
        let now = &self.home.preferences;
        if before.is_none_or(|b| b.theme != now.theme) {
            theme::set(ctx, now.theme);
        }
        if before.is_none_or(|b| b.large_targets != now.large_targets) {
            theme::set_targets(ctx, now.large_targets);
        }
        if before.is_none_or(|b| b.scale_pct != now.scale_pct) {
            ctx.set_zoom_factor(f32::from(now.scale_pct) / 100.0);
        }
        set_units(ctx, now.units());
        let language = now.language.unwrap_or(self.home.system);
        if before.is_none_or(|b| b.film != now.film) {
            self.view.entry.unit = now.film;
        }
        self.view.naming = now.names;
        if self.view.front != now.front {
            self.view.front = now.front;
            if let Some(viewport) = &mut self.view.viewport {
                viewport.turn(now.front);
            }
        }
        if language != words::language() {
            words::set_language(language);
            self.cache = MapCache::default();
            self.refresh(ctx);
        }
    }

    /// The same for a fresh view of another job.
    pub(in crate::gui) fn view_as_preferred(&mut self) {
        self.view.naming = self.home.preferences.names;
        self.view.front = self.home.preferences.front;
    }

    fn copy_map(&mut self, form: Form, ctx: &egui::Context) {
        let copied = if form == Form::Png {
            self.map_as_picture().map(|picture| ctx.copy_image(picture))
        } else {
            ctx.copy_text(self.map_as_drawing());
            Ok(())
        };
        match copied {
            Ok(()) => self.home.said = Some(say!("home-map-copied").to_owned()),
            Err(failure) => self.fail(failure),
        }
    }

    /// Writes the pages of a sheet where they are only passed on, and has the system show them.
    fn print(&mut self, which: Which, ctx: &egui::Context) {
        let written = print::fresh_folder().map_err(|error| {
            let said = say!("home-no-place", why = why(&error));
            crate::cli::Failure::new(said, say!("home-print-other"))
        });
        let written = written.and_then(|folder| {
            let file = folder.join(format!("{}.pdf", which.file_name().to_lowercase().replace(' ', "-")));
            self.handover.which = which;
            self.write_sheet(Form::Pdf, &file).map(|()| file)
        });
        match written {
            Ok(file) => self.home.said = self.home.printing.open(&file, ctx).or(self.home.said.take()),
            Err(failure) => self.fail(failure),
        }
    }
}

/// Whether there is a folder of that name.
fn is_folder(path: &&std::path::Path) -> bool {
    RealDisk.about(path).is_ok_and(|about| about.is_some_and(|about| !about.is_file))
}
