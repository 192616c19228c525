//! The only writer: carries out the wishes of the views.

use super::action::{Action, Effect, ViewChange};
use super::app::App;
use super::entry::{EntryWish, next_reading};
use super::files::{Asked, Purpose};
use super::modals::{Next, Question};
use super::view_state::{Column, Tool, ViewState, Workspace};
use crate::cli::Failure;
use crate::file::{Fingerprint, Loaded, SAMPLE, Saved, job_from_text, save_job};
use crate::geometry::Viewport;
use crate::insight::next_visit;
use crate::job::{Command, Document, GestureId, Job, Member, carry_over};
use crate::say;
use crate::scene::Overlay;
use crate::vehicle;
use eframe::egui;
use std::path::{Path, PathBuf};
use std::sync::Arc;

impl App {
    /// Carries out the wishes of one frame, in their order.
    pub(super) fn dispatch(&mut self, wishes: Vec<Action>, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        if wishes.is_empty() {
            return;
        }
        let vehicle = Arc::clone(self.shown_template());
        for wish in wishes {
            match wish {
                Action::Edit(command, gesture) => self.apply(&command, gesture, ctx),
                Action::Entry(wish) => self.enter(wish, ctx),
                Action::Import(wish) => self.change_import(wish, ctx),
                Action::View(change) => self.change_view(change),
                Action::Vehicle(wish) => self.change_vehicle(wish, ctx),
                Action::Bay(wish) => {
                    if let Some(effect) = self.work(wish, ctx) {
                        self.carry_out(effect, ctx, frame);
                    }
                }
                Action::Handover(wish) => self.hand_over(wish, ctx, frame),
                Action::Practice(wish) => self.practise(wish, ctx),
                Action::Home(wish) => self.at_home(wish, ctx, frame),
                Action::Keep(wish) => self.keep_safe(wish, ctx, frame),
                Action::Effect(effect) => self.carry_out(effect, ctx, frame),
            }
        }
        self.follow_vehicle(&vehicle);
        ctx.request_repaint();
    }

    /// Changes the job, or says why not.
    pub(super) fn apply(&mut self, command: &Command, gesture: Option<GestureId>, ctx: &egui::Context) {
        match self.document.apply(command, gesture) {
            Ok(_) => self.changed(ctx),
            Err(error) => self.fail(Failure::new(error.to_string(), say!("window-job-as-it-was"))),
        }
    }

    pub(super) fn changed(&mut self, ctx: &egui::Context) {
        match self.bodies.if_other(&self.document.job().vehicle) {
            None => {}
            Some(Ok(template)) => self.take_template(template),
            Some(Err(error)) => self.fail(error.into()),
        }
        self.refresh(ctx);
    }

    /// Takes another vehicle; what is known of panels that it has too is taken over.
    fn take_body(&mut self, id: &str, ctx: &egui::Context) {
        match self.bodies.load(id) {
            Ok(to) => {
                let panels = carry_over(&self.document.job().panels, &self.template, &to);
                self.apply(&Command::SetTemplate { template: id.to_owned(), panels }, None, ctx);
            }
            Err(error) => self.fail(error.into()),
        }
    }

    pub(super) fn change_view(&mut self, change: ViewChange) {
        let view = &mut self.view;
        match change {
            ViewChange::Workspace(workspace) => {
                if (view.workspace == Workspace::Correction) != (workspace == Workspace::Correction) {
                    view.moment = None; // the chart below shows another order
                }
                if (view.workspace == Workspace::Practice) != (workspace == Workspace::Practice) {
                    view.moment = None; // as above
                }
                view.workspace = workspace;
                view.overlay = workspace.overlay();
                view.tool = Tool::Choose;
                view.entry.draft.clear();
            }
            ViewChange::Overlay(overlay) => view.overlay = overlay,
            ViewChange::Defect(defect) => {
                view.defect = defect;
                view.overlay = if defect.is_some() { Overlay::Defects } else { Overlay::Film };
            }
            ViewChange::Choose(panel) => {
                if view.current != panel {
                    view.defect = None;
                }
                view.entry.at = None;
                view.chosen = panel.iter().cloned().collect();
                view.current = panel;
            }
            ViewChange::ChooseAll(panels) => {
                view.defect = None;
                view.current = panels.first().cloned();
                view.chosen = panels.into_iter().collect();
            }
            ViewChange::Toggle(panel) => {
                view.defect = None;
                if view.chosen.remove(&panel) {
                    view.current = view.chosen.last().cloned();
                } else {
                    view.chosen.insert(panel.clone());
                    view.current = Some(panel);
                }
            }
            ViewChange::Viewport(viewport) => view.viewport = Some(viewport),
            ViewChange::Fit => {
                let template = Arc::clone(self.shown_template());
                fit(&mut self.view, &template);
            }
            ViewChange::FitChosen => {
                let template = Arc::clone(self.shown_template());
                let view = &mut self.view;
                let chosen = view.chosen.iter().filter_map(|id| template.panel(id));
                let part = chosen.map(|p| p.outline.bounds()).reduce(|a, b| a.union(&b));
                if let (Some(viewport), Some(part)) = (&mut view.viewport, part) {
                    viewport.fit_part(part);
                }
            }
            ViewChange::Tool(tool) => {
                // Who draws defects sees them, and afterwards the readings again.
                match (view.tool, tool) {
                    (_, Tool::PlaceDefect(..)) => view.overlay = Overlay::Defects,
                    (Tool::PlaceDefect(..), _) => view.overlay = view.workspace.overlay(),
                    _ => {}
                }
                view.tool = tool;
            }
            ViewChange::Moment(moment) => view.moment = moment,
            ViewChange::SortTable(column) => {
                let (before, rising) = view.table_order;
                // Names rise first, figures fall first: the most of something is what one looks for.
                view.table_order = (column, if before == column { !rising } else { column == Column::Panel });
            }
            ViewChange::OpenStep(step) => view.open_step = step,
            ViewChange::Mix(mix) => view.mix = mix,
        }
    }

    fn carry_out(&mut self, effect: Effect, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        match effect {
            Effect::Undo => self.undo_and_follow(ctx),
            Effect::Redo => {
                self.document.redo();
                self.changed(ctx);
            }
            Effect::New => {
                if self.may_leave(Next::New) {
                    match job_from_text(say!("window-the-sample"), SAMPLE) {
                        Ok(sample) => {
                            self.show(blank(&sample, &self.home.preferences.crew), None);
                            self.keep_other(None, None);
                            self.change_view(ViewChange::Workspace(Workspace::Job));
                        }
                        Err(error) => self.fail(error.into()),
                    }
                }
            }
            Effect::NextVisit => {
                if self.may_leave(Next::LaterVisit) {
                    let job = self.document.job();
                    let next = next_visit(job, &self.template, &self.insight, &visit_name(job));
                    let (job, template) = (Arc::new(next), Arc::clone(&self.template));
                    self.show(Loaded { job: Arc::clone(&job), template: Arc::clone(&template) }, None);
                    self.document = Document::unsaved(job); // it exists nowhere else yet
                    self.document.set_template(template);
                    self.keep_other(None, None);
                }
            }
            Effect::AskOpen => {
                if self.may_leave(Next::AskOpen) {
                    self.ask(Purpose::Open, ctx, frame);
                }
            }
            Effect::AskReadings => self.ask(Purpose::Readings, ctx, frame),
            Effect::Readings(path) => self.show_readings(&path),
            Effect::AskPhoto(panel, defect) => {
                self.photos.wanted = Some((panel, defect));
                self.ask(Purpose::Photo, ctx, frame);
            }
            Effect::Photos(files) => self.take_photos(files, ctx),
            Effect::ShowPhoto(photo) => self.photos.show(&photo, self.path.as_deref(), ctx),
            Effect::TakeBody(id) => self.take_body(&id, ctx),
            Effect::Open(path) => self.open(path),
            Effect::Save => match self.path.clone() {
                Some(path) => self.save(&path, ctx, frame),
                None => self.ask(Purpose::Save, ctx, frame),
            },
            Effect::AskSaveAs => self.ask(Purpose::Save, ctx, frame),
            Effect::SaveAs(path) => self.save(&path, ctx, frame),
            Effect::Close => {
                if self.may_leave(Next::Close) {
                    self.may_close = true;
                    ctx.send_viewport_cmd(egui::ViewportCommand::Close);
                }
            }
            Effect::Discard => {
                self.question = None;
                self.keep.keeper.discard();
                self.after_save = None;
                let job = Arc::clone(self.document.job());
                self.document.mark_saved(job);
            }
            Effect::EnterTyped(then) => self.enter_typed(then, ctx, frame),
            Effect::Dismiss => {
                self.put_off();
                self.question = None;
                self.after_save = None;
            }
        }
    }

    /// Whether the job in the window may go; asks if something is unsaved.
    fn may_leave(&mut self, then: Next) -> bool {
        if self.is_vehicle_changed() {
            self.question = Some(Question::DropVehicle { then: Some(then) });
            return false;
        }
        self.stop_editing();
        if self.is_typing() {
            let draft = self.view.entry.draft.trim().to_owned();
            self.question = Some(Question::Typed { draft, then });
            return false;
        }
        if !self.document.is_dirty() {
            self.question = None;
            return true;
        }
        let name = self.document.job().name.clone();
        self.after_save = Some(then.clone());
        self.question = Some(Question::Unsaved { name, then });
        false
    }

    /// Opens a file; if that fails, the window keeps what it had.
    fn open(&mut self, path: PathBuf) {
        if !self.may_leave(Next::Open(path.clone())) {
            return;
        }
        match self.bodies.templates().open_job(&*self.keep.keeper.disk(), &path) {
            Ok(opened) => self.show_opened(opened, path),
            Err(error) => self.fail(error.into()),
        }
    }

    fn save(&mut self, path: &Path, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        self.save_over(path, None, ctx, frame);
    }

    /// Saves; `over` is a change of the file by somebody else that shall be written over.
    pub(super) fn save_over(
        &mut self,
        path: &Path,
        over: Option<Fingerprint>,
        ctx: &egui::Context,
        frame: Option<&eframe::Frame>,
    ) {
        self.question = None;
        if let Err(obstacle) = self.keep.keeper.may_save(path, over) {
            return self.ask_about_obstacle(obstacle, path);
        }
        let job = Arc::clone(self.document.job());
        let disk = self.keep.keeper.disk();
        // Pictures first, so that no job on the disk ever speaks of one that is not there.
        if let Err(error) = self.photos.save(&*disk, self.path.as_deref(), path, &job) {
            return self.fail(error.into());
        }
        match save_job(&*disk, path, &job) {
            Ok(saved) => {
                self.document.mark_saved(job);
                self.keep.keeper.saved(path, saved, self.document.revision());
                self.path = Some(path.to_owned());
                self.bay.move_to(path);
                if saved == Saved::NotConfirmed {
                    self.fail(Failure::new(say!("window-save-not-confirmed"), say!("window-save-again")));
                } else if let Some(next) = self.after_save.take() {
                    self.carry_out(next.effect(), ctx, frame);
                }
            }
            Err(error) => self.fail(error.into()),
        }
    }

    pub(super) fn ask(&mut self, purpose: Purpose, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        self.question = None;
        let suggestion = purpose.suggestion(&self.document.job().name);
        match Asked::start(purpose, &suggestion, frame, ctx) {
            Ok(asked) => self.asked = Some(asked),
            Err(_) => self.question = Some(self.ask_path(purpose)),
        }
    }

    /// Asks for a path in the window, where the system has no dialog.
    pub(super) fn ask_path(&self, purpose: Purpose) -> Question {
        let beside = self.path.as_deref().and_then(Path::parent).map(Path::to_owned);
        let folder = beside.or_else(|| self.home.preferences.folder_of_jobs.clone());
        let folder = folder.or_else(std::env::home_dir).unwrap_or_default();
        let place = match purpose {
            Purpose::Save | Purpose::Sheet(..) => folder.join(purpose.suggestion(&self.document.job().name)),
            Purpose::Open | Purpose::Readings | Purpose::Photo | Purpose::Folder => folder.join(""),
        };
        Question::Path { purpose, draft: place.display().to_string(), fresh: true }
    }

    /// Whether a reading is typed and not entered yet, where there is a place for it.
    pub(super) fn is_typing(&self) -> bool {
        !self.view.entry.draft.trim().is_empty() && next_reading(&self.model()).is_some()
    }

    /// Enters what was typed, and goes on if it could be taken.
    fn enter_typed(&mut self, then: Next, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        self.question = None;
        let before = self.document.revision();
        self.enter(EntryWish::Take, ctx);
        if self.document.revision() != before {
            self.carry_out(then.effect(), ctx, frame);
        }
    }

    pub(super) fn fail(&mut self, failure: Failure) {
        self.after_save = None;
        self.question = Some(Question::Failed(failure));
    }
}

fn fit(view: &mut ViewState, template: &vehicle::Template) {
    if let Some(viewport) = &mut view.viewport {
        *viewport = Viewport::fit(template.bounds(), viewport.screen(), super::map::MARGIN, viewport.orientation());
    }
}

/// What the ledger calls a visit: the day it was surveyed, otherwise the name of the job.
fn visit_name(job: &Job) -> String {
    let dates = job.surveys.iter().rev().map(|s| s.date.trim());
    dates.into_iter().find(|date| !date.is_empty()).unwrap_or(&job.name).to_owned()
}

/// A new job: the shop's coating, gauge and rules as in the sample, its crew where that is known, and nothing of its vehicle.
fn blank(sample: &Loaded, crew: &[Member]) -> Loaded {
    let mut job = (*sample.job).clone();
    say!("window-new-job").clone_into(&mut job.name);
    job.vehicle = crate::job::Vehicle { template: job.vehicle.template, ..Default::default() };
    job.customer = crate::job::Customer::default();
    job.panels.clear();
    job.surveys = vec![crate::job::Survey::default()];
    job.order = None;
    if !crew.is_empty() {
        job.crew = crew.to_vec();
    }
    Loaded { job: Arc::new(job), template: Arc::clone(&sample.template) }
}
