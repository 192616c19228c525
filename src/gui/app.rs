//! The window as a whole: what it holds, and how a frame goes.

use super::action::{Action, Effect, Model, SpotPlaces};
use super::awake::Awake;
use super::bay::{BayState, Given};
use super::bodies::Bodies;
use super::edit::{self, Editing};
use super::entry;
use super::files::{Answer, Asked};
use super::handover::{HandoverState, big_screen_ui, pages_ui};
use super::home::{Home, Viewer, hints_ui, notice_ui, page_ui};
use super::import::{ImportDraft, import_ui};
use super::in_sight::bring_focus_into_sight;
use super::keep::{self, Keep};
use super::map::{MapCache, map_ui};
use super::modals::{Next, Question, question_ui};
use super::order::OrderState;
use super::photos::Photos;
use super::polishing::Polishing;
use super::practice::PracticeState;
use super::theme;
use super::view_state::{ViewState, Workspace};
use super::{chart, commands, rail, top_bar, workspace};
use crate::file::{Loaded, Places, Templates};
use crate::insight::{Insight, OrderRow, crew_problem, free_problem, order_rows};
use crate::job::{Document, Job};
use crate::say;
use crate::scene::Overlay;
use crate::vehicle::Template;
use crate::work::{Clock, Effort, Task, WallClock};
use eframe::egui::{self, CentralPanel, Frame, Margin, Panel, Stroke, Ui};
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::path::PathBuf;
use std::sync::Arc;

/// The window.
#[derive(Debug)]
pub struct App {
    pub(super) document: Document,
    pub(super) template: Arc<Template>,
    pub(super) insight: Insight,
    pub(super) order: OrderState,
    pub(super) rows: Vec<OrderRow>,
    pub(super) polishing: Polishing,
    pub(super) bay: BayState,
    pub(super) handover: HandoverState,
    pub(super) practice: PracticeState,
    pub(super) home: Home,
    pub(super) awake: Awake,
    pub(super) spots: SpotPlaces,
    pub(super) view: ViewState,
    pub(super) bodies: Bodies,
    /// The vehicle being changed, while one is.
    pub(super) editing: Option<Editing>,
    pub(super) cache: MapCache,
    pub(super) path: Option<PathBuf>,
    pub(super) asked: Option<Asked>,
    pub(super) question: Option<Question>,
    /// A file of readings that is being looked at.
    pub(super) import: Option<ImportDraft>,
    pub(super) photos: Photos,
    pub(super) keep: Keep,
    /// What to do after a save that a question asked for.
    pub(super) after_save: Option<Next>,
    pub(super) may_close: bool,
    pub(super) close_after_first_frame: bool,
    /// Without the map, for benches to measure against.
    empty_middle: bool,
    pub(super) effort: Effort,
    title: String,
    frames: u64,
}

impl App {
    /// A window on a job; `path` is the file it came from.
    pub fn new(loaded: Loaded, path: Option<PathBuf>) -> Self {
        Self::with_effort(loaded, path, Effort::default())
    }

    /// The same with another effort for planning the order; tests and pictures want the same answer every time.
    pub fn with_effort(loaded: Loaded, path: Option<PathBuf>, effort: Effort) -> Self {
        Self::by_clock(loaded, path, effort, Arc::new(WallClock))
    }

    fn by_clock(loaded: Loaded, path: Option<PathBuf>, effort: Effort, clock: Arc<dyn Clock>) -> Self {
        let Loaded { job, template } = loaded;
        let insight = Insight::new(&job, &template);
        let order = OrderState::new(coating_task(&job, &template, &insight), effort);
        let polishing = Polishing::new(&job, &template, &insight, effort);
        let given = Given { job: &job, insight: &insight, polishing: &polishing.work, coating: order.problem() };
        let bay = BayState::open(clock, path.as_deref(), given);
        let mut document = Document::opened(Arc::clone(&job));
        document.set_template(Arc::clone(&template));
        Self {
            spots: SpotPlaces::of(&template),
            bodies: Bodies::new(Templates::default(), &job.vehicle),
            editing: None,
            document,
            template,
            insight,
            order,
            rows: Vec::new(),
            polishing,
            view: ViewState::on(&bay),
            bay,
            handover: HandoverState::default(),
            practice: PracticeState::default(),
            home: Home::default(),
            awake: Awake::default(),
            cache: MapCache::default(),
            path,
            asked: None,
            question: None,
            import: None,
            photos: Photos::default(),
            keep: Keep::default(),
            after_save: None,
            may_close: false,
            close_after_first_frame: false,
            empty_middle: false,
            effort,
            title: String::new(),
            frames: 0,
        }
    }

    /// The same with vehicle templates from elsewhere too; without this it knows those of the program only.
    #[must_use]
    pub fn with_templates(mut self, templates: Templates) -> Self {
        self.bodies = Bodies::new(templates, &self.document.job().vehicle);
        self
    }

    /// The same, and the screen stays on while a day runs in the bay.
    #[must_use]
    pub fn keeping_awake(mut self) -> Self {
        self.awake = Awake::allowed();
        self
    }

    /// The same with preferences and recent jobs that are kept in these places; without this it has the usual ones and keeps nothing.
    #[must_use]
    pub fn with_home(mut self, places: Places) -> Self {
        self.home = Home::of(places);
        self
    }

    /// The same, and the system may be asked to show what is printed; without this it is said where the pages are.
    #[must_use]
    pub fn with_viewer(mut self) -> Self {
        self.home.may_show(Viewer::System);
        self
    }

    /// The same window with nothing in its middle; what the map costs is measured against it.
    #[must_use]
    pub fn with_empty_middle(mut self) -> Self {
        self.empty_middle = true;
        self
    }

    /// Shows something else on the map.
    pub fn show_overlay(&mut self, overlay: Overlay) {
        self.view.overlay = overlay;
    }

    /// Puts another job into the window; everything about the old one goes.
    pub(super) fn show(&mut self, loaded: Loaded, path: Option<PathBuf>) {
        let templates = self.bodies.templates().clone();
        let clock = Arc::clone(&self.bay.clock);
        let fresh = Self::by_clock(loaded, path, self.effort, clock).with_templates(templates);
        let workspace = self.view.workspace;
        let (unit, pad) = (self.view.entry.unit, self.view.entry.pad);
        let (awake, practice) = (std::mem::take(&mut self.awake), std::mem::take(&mut self.practice));
        let (home, keep) = (std::mem::take(&mut self.home), std::mem::take(&mut self.keep));
        *self = Self { frames: self.frames, awake, practice, home, keep, ..fresh };
        self.view_as_preferred();
        (self.view.entry.unit, self.view.entry.pad) = (unit, pad);
        if !self.bay.is_running() {
            self.view.workspace = workspace;
            self.view.overlay = workspace.overlay();
        }
    }

    /// The job as it is now.
    pub fn job(&self) -> &Arc<Job> {
        self.document.job()
    }

    /// Whether something is unsaved.
    pub fn is_dirty(&self) -> bool {
        self.document.is_dirty()
    }

    /// Whether something unsaved is still on its way to the disk.
    pub fn is_keeping(&self) -> bool {
        self.keep.keeper.is_busy()
    }

    /// Whether both orders shown are those of the job as it is, and none better is being looked for.
    pub fn is_settled(&self) -> bool {
        self.order.is_current() && !self.order.is_working() && self.polishing.is_settled()
    }

    /// The workspace that is open.
    pub fn workspace(&self) -> Workspace {
        self.view.workspace
    }

    /// Frames drawn so far.
    pub fn frames(&self) -> u64 {
        self.frames
    }

    /// Brings everything computed up to the job as it is now.
    pub(super) fn refresh(&mut self, ctx: &egui::Context) {
        let job = self.document.job();
        self.insight.refresh(job, &self.template);
        let now = self.document.revision();
        self.order.want(coating_task(job, &self.template, &self.insight), now, ctx);
        self.polishing.follow(job, &self.template, &self.insight, now, ctx);
        let given =
            Given { job, insight: &self.insight, polishing: &self.polishing.work, coating: self.order.problem() };
        self.bay.follow(given);
        self.refresh_rows();
    }

    /// Takes another template after a command named one.
    pub(super) fn take_template(&mut self, template: Arc<Template>) {
        self.spots = SpotPlaces::of(&template);
        self.view.entry.forget_places();
        self.cache = MapCache::default();
        // The map stays where it is when only the size or the seams are others.
        if !template.is_drawn_like(&self.template) {
            self.view.viewport = None;
        }
        self.view.chosen.retain(|id| template.panel(id).is_some());
        self.view.current = self.view.current.take().filter(|id| template.panel(id).is_some());
        self.document.set_template(Arc::clone(&template));
        self.template = template;
    }

    pub(super) fn refresh_rows(&mut self) {
        if self.editing.is_some() {
            return; // the order is not for the panels on screen
        }
        self.rows = self
            .order
            .order()
            .map(|o| order_rows(self.document.job(), &self.template, &o.problem, &o.plan))
            .unwrap_or_default();
        self.polishing.read(self.document.job(), &self.template);
    }

    /// What the last frame's dialogs and background work brought.
    fn listen(&mut self, out: &mut Vec<Action>) {
        let polishing = self.polishing.state.listen();
        if self.order.listen() || polishing {
            self.refresh_rows();
        }
        out.extend(self.photos.listen());
        let Some(asked) = &self.asked else { return };
        let purpose = asked.purpose;
        match asked.answer() {
            Answer::Waiting => return,
            Answer::File(path) => out.push(purpose.wish(path)),
            Answer::Cancelled => self.after_save = None,
            Answer::NoDialog => self.question = Some(self.ask_path(purpose)),
        }
        self.asked = None;
    }

    fn window_events(&mut self, ui: &Ui, out: &mut Vec<Action>) {
        if ui.input(|i| i.viewport().close_requested())
            && !self.may_close
            && (self.document.is_dirty() || self.is_vehicle_changed() || self.is_typing())
        {
            ui.send_viewport_cmd(egui::ViewportCommand::CancelClose);
            out.push(Action::Effect(Effect::Close));
        }
        let dropped: Vec<PathBuf> = ui.input(|i| i.raw.dropped_files.iter().map(|f| f.path().to_owned()).collect());
        out.extend(super::files::dropped(dropped).map(Action::Effect));
        let star = if self.document.is_dirty() { "• " } else { "" };
        let file = self
            .path
            .as_ref()
            .and_then(|p| p.file_name())
            .map_or_else(|| say!("window-sample").into(), |n| n.to_string_lossy());
        let title = format!("{star}{file} - Lapwright");
        if title != self.title {
            ui.send_viewport_cmd(egui::ViewportCommand::Title(title.clone()));
            self.title = title;
        }
    }

    /// What the views may read.
    pub(super) fn model(&self) -> Model<'_> {
        Model {
            job: self.editing.as_ref().map_or(self.document.job(), |editing| &editing.job),
            template: &self.template,
            insight: &self.insight,
            order: &self.order,
            rows: &self.rows,
            polishing: &self.polishing,
            bay: &self.bay,
            handover: &self.handover,
            practice: &self.practice,
            spots: &self.spots,
            photos: &self.photos,
            view: &self.view,
            document: &self.document,
            path: self.path.as_deref(),
            home: &self.home,
            bodies: self.bodies.listed(),
        }
    }

    /// The same for the map and what is round it: while practising, of the vehicle of the exercise.
    fn shown(&self) -> Model<'_> {
        let model = self.model();
        if self.view.workspace != Workspace::Practice || self.editing.is_some() {
            return model;
        }
        Model {
            job: self.practice.job().unwrap_or(model.job),
            template: self.shown_template(),
            insight: self.practice.insight().unwrap_or(model.insight),
            rows: &[],
            ..model
        }
    }

    fn draw(&mut self, ui: &mut Ui, out: &mut Vec<Action>) {
        let p = theme::of(ui.ctx());
        let mut cache = std::mem::take(&mut self.cache);
        let model = self.model();
        if self.handover.is_on_big_screen() {
            big_screen_ui(ui, &model, &mut cache, out);
            self.cache = cache;
            return;
        }
        let editing = self.editing.as_ref();
        let sheet = |margin| Frame::new().fill(p.sheet).inner_margin(margin);
        Panel::top("top")
            .exact_size(theme::bar_height(ui.ctx()))
            .resizable(false)
            .frame(sheet(Margin::symmetric(16, 0)))
            .show(ui, |ui| match editing {
                Some(editing) => edit::top_ui(ui, &model, editing, out),
                None => top_bar::top_bar_ui(ui, &model, out),
            });
        if editing.is_none() {
            keep::notice_ui(ui, &self.keep, out);
        }
        Panel::left("rail").exact_size(theme::RAIL_WIDTH).resizable(false).frame(sheet(Margin::symmetric(8, 4))).show(
            ui,
            |ui| {
                // In a low window, or at a large scale, it does not fit.
                egui::ScrollArea::vertical().show(ui, |ui| {
                    ui.add_enabled_ui(editing.is_none(), |ui| rail::rail_ui(ui, &model, out));
                });
            },
        );
        let model = self.shown();
        Panel::right("side").exact_size(theme::SIDE_WIDTH).resizable(false).frame(sheet(Margin::same(16))).show(
            ui,
            |ui| match editing {
                Some(editing) => edit::tools_ui(ui, &model, editing, out),
                None => workspace::side_ui(ui, &model, out),
            },
        );
        let below = |name: &'static str, height: f32| Panel::bottom(name).exact_size(height).resizable(false);
        match editing {
            Some(editing) => {
                below("floor", edit::FLOOR_HEIGHT)
                    .frame(sheet(Margin::same(0)))
                    .show(ui, |ui| edit::below_ui(ui, &model, editing, out));
            }
            // Pages take all the room there is.
            None if model.view.workspace == Workspace::Handover => {}
            // One size for all workspaces, so that the map stays where it is.
            None => {
                Panel::bottom("chart")
                    .default_size(theme::CHART_HEIGHT)
                    .size_range(theme::CHART_HEIGHT..=3.0 * theme::CHART_HEIGHT)
                    .frame(sheet(Margin::same(0)))
                    // With the order on the map, when who does what; otherwise every panel in figures.
                    .show(ui, |ui| match (model.view.workspace, model.view.overlay) {
                        (Workspace::Bay, _) => workspace::bay_below_ui(ui, &model, out),
                        (Workspace::Practice, _) => workspace::practice_below_ui(ui, &model, out),
                        (Workspace::Correction, overlay) if overlay != Overlay::Order => {
                            workspace::table_ui(ui, &model, out);
                        }
                        _ => chart::chart_ui(ui, &model, out),
                    });
            }
        }
        let table = Frame::new().fill(p.paper).stroke(Stroke::NONE);
        CentralPanel::default().frame(table).show(ui, |ui| {
            let area = ui.max_rect();
            if self.empty_middle {
                return;
            }
            if model.view.workspace == Workspace::Handover && editing.is_none() {
                return pages_ui(ui, &model);
            }
            map_ui(ui, &model, &mut cache, out);
            if model.view.workspace == Workspace::Bay && editing.is_none() {
                workspace::bay_call_ui(ui, &model, area);
            }
            if let Some(editing) = editing {
                edit::cut_preview(ui, &model, editing, area);
            }
        });
        self.cache = cache;
        if let Some(import) = &self.import {
            import_ui(ui, import, out);
        }
        self.draw_home(ui, out);
        if let Some(question) = &mut self.question {
            question_ui(ui, question, out);
        }
    }

    /// What lies over the window and belongs to the person at the desk.
    fn draw_home(&mut self, ui: &mut Ui, out: &mut Vec<Action>) {
        let mut page = self.home.page.take();
        let model = self.model();
        match &mut page {
            Some(page) => page_ui(ui, &model, page, out),
            None if self.question.is_none() && self.import.is_none() => hints_ui(ui, &model, out),
            None => {}
        }
        notice_ui(ui, &model, out);
        self.home.page = page;
    }
}

impl eframe::App for App {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        // A mistake of the program costs nothing that is unsaved.
        if let Err(cause) = catch_unwind(AssertUnwindSafe(|| self.picture(ui, frame))) {
            self.keep_before_the_end(ui.ctx());
            resume_unwind(cause);
        }
    }
}

impl App {
    fn picture(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        self.frames += 1;
        if self.close_after_first_frame && self.frames > 1 {
            self.may_close = true;
            ui.send_viewport_cmd(egui::ViewportCommand::Close);
            return;
        }
        let mut wishes = Vec::new();
        bring_focus_into_sight(ui.ctx());
        if self.frames > 1 {
            // The first picture comes before the planning.
            self.order.start_if_due(ui.ctx());
            if !self.order.is_working() || self.view.workspace == Workspace::Correction {
                self.polishing.state.start_if_due(ui.ctx()); // one after the other where nobody waits for it
            }
        }
        self.listen(&mut wishes);
        self.step_bay(self.view.workspace == Workspace::Bay, ui.ctx());
        self.step_handover(self.view.workspace == Workspace::Handover, ui.input(|i| i.time));
        self.step_practice(ui.ctx());
        self.window_events(ui, &mut wishes);
        self.step_home(self.frames == 1, ui.ctx());
        let asking = self.question.is_some() || self.import.is_some() || self.home.is_open();
        match &self.editing {
            _ if asking => {}
            Some(_) => edit::shortcuts(ui, &self.model(), &mut wishes),
            None => {
                entry::keys(ui, &self.model(), &mut wishes);
                workspace::defect_keys(ui, &self.model(), &mut wishes);
                workspace::practice_keys(ui, &self.model(), &mut wishes);
                commands::pressed(ui, &self.model(), &mut wishes);
            }
        }
        self.draw(ui, &mut wishes);
        self.dispatch(wishes, ui.ctx(), Some(frame));
        self.step_keep(ui);
        if self.frames == 1 {
            ui.request_repaint();
        }
    }
}

/// What is asked of the planner for a job.
fn coating_task(job: &Job, template: &Template, insight: &Insight) -> Task {
    let problem = Arc::new(crew_problem(job, template, insight));
    let free = (!job.choices.is_empty()).then(|| Arc::new(free_problem(job, template, insight)));
    Task::Coating { problem, free }
}
