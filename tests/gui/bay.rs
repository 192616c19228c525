//! The Bay, driven by its buttons on a clock that the test sets.

use super::day_support::check_rest;
use super::pictures::egui_role::{PANEL, TAB};
use super::{EFFORT, settle};
use eframe::egui::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::bay::{Board, Event};
use lapwright::file::{Loaded, RealDisk, SAMPLE, day_path, job_from_text, read_day, read_job, save_job};
use lapwright::gui::App;
use lapwright::job::{Job, Vehicle};
use lapwright::vehicle::load_embedded;
use lapwright::work::{DayRun, Effort, HandClock};
use std::path::PathBuf;
use std::sync::Arc;
use tempfile::TempDir;

pub(super) const SIZE: [f32; 2] = [1280.0, 800.0];

/// A window in the bay, its job on the disk.
pub(super) struct Bay {
    pub(super) window: Harness<'static, App>,
    pub(super) clock: Arc<HandClock>,
    pub(super) folder: TempDir,
    polishes: bool,
}

/// The sample on another body, with nothing read.
pub(super) fn job_on(template: &str) -> Loaded {
    let sample = job_from_text("the sample", SAMPLE).unwrap();
    let template = load_embedded(template).unwrap();
    let vehicle = Vehicle { template: template.id.clone(), ..sample.job.vehicle.clone() };
    let job = Job { vehicle, panels: std::collections::BTreeMap::new(), ..(*sample.job).clone() };
    Loaded { job: Arc::new(job), template }
}

fn open_window(loaded: Loaded, path: Option<PathBuf>, clock: Arc<HandClock>, size: [f32; 2]) -> Harness<'static, App> {
    let effort = Effort { nodes: Some(4_000), ..EFFORT };
    let mut window = super::window_of(size, move || App::with_effort(loaded, path, effort).with_clock(clock));
    settle(&mut window);
    window
}

impl Bay {
    /// A job on the disk, the bay open, the day not begun.
    pub(super) fn open(loaded: Loaded, size: [f32; 2]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("day.job.ron");
        save_job(&RealDisk, &path, &loaded.job).unwrap();
        let clock = Arc::new(HandClock::at(1_764_000_000));
        let window = open_window(loaded, Some(path), Arc::clone(&clock), size);
        let mut bay = Self { window, clock, folder, polishes: false };
        bay.tab("Bay");
        bay
    }

    pub(super) fn path(&self) -> PathBuf {
        self.folder.path().join("day.job.ron")
    }

    pub(super) fn tab(&mut self, name: &str) {
        self.window.get_by(|n| n.role() == TAB && n.label().is_some_and(|l| l.starts_with(name))).click_accesskit();
        self.window.run();
    }

    /// The window is gone as in a crash; the job is opened again.
    pub(super) fn crash(self, gone_s: i64) -> Self {
        let Self { window, clock, folder, polishes } = self;
        drop(window);
        clock.advance(gone_s);
        let path = folder.path().join("day.job.ron");
        let loaded = read_job(&RealDisk, &path).unwrap();
        let window = open_window(loaded, Some(path), Arc::clone(&clock), SIZE);
        let mut bay = Self { window, clock, folder, polishes: false };
        bay.tab("Bay");
        if polishes {
            bay = bay.polishing();
        }
        bay.rest();
        bay
    }

    /// The same, with the day of polishing on screen.
    pub(super) fn polishing(mut self) -> Self {
        self.polishes = true;
        if self.has("Polishing day") {
            self.press("Polishing day");
        }
        self
    }

    pub(super) fn run(&self) -> &DayRun {
        let app = self.window.state();
        if self.polishes { app.polishing_day() } else { app.coating_day() }
    }

    pub(super) fn board(&self) -> Board {
        self.run().board()
    }

    pub(super) fn worker(&self, worker: usize) -> String {
        self.run().problem().workers[worker].id.clone()
    }

    /// Draws until everything is written and planned, and what is due has begun.
    pub(super) fn rest(&mut self) {
        let mut quiet = 0;
        for _ in 0..20_000 {
            self.window.step();
            quiet = if self.run().is_busy() { 0 } else { quiet + 1 };
            if quiet == 4 {
                return self.check();
            }
            std::thread::sleep(std::time::Duration::from_millis(1));
        }
        panic!("the bay does not come to rest");
    }

    /// The advice keeps every rule with the past as it was.
    fn check(&self) {
        let run = self.run();
        assert_eq!(run.day().odd, [], "every tap counts");
        assert_eq!(run.failure, None);
        if let Some(plan) = run.plan() {
            // As it was when the plan was made: what has begun since then began as planned.
            let so_far = run.day().so_far(run.problem(), run.now_s());
            let behind = run.day().is_behind(run.problem(), run.now_s());
            if !behind {
                check_rest(run.problem(), plan, &so_far.operations);
            }
        }
    }

    pub(super) fn press(&mut self, name: &str) {
        self.window.get_by_role_and_label(Role::Button, name).click();
        self.window.run();
        self.rest();
    }

    pub(super) fn has(&self, name: &str) -> bool {
        self.window.query_by_role_and_label(Role::Button, name).is_some()
    }

    /// The button that says that somebody is done with what they are at.
    pub(super) fn done_button(&self, worker: usize) -> String {
        let name = format!("{}, done with ", self.worker(worker));
        let button =
            self.window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with(&name)));
        button.accesskit_node().label().unwrap().clone()
    }

    pub(super) fn advance(&mut self, seconds: i64) {
        self.clock.advance(seconds);
        self.rest();
    }

    /// Goes on to the next thing that happens by plan and taps it, `later` seconds late. False when nothing is left.
    pub(super) fn step(&mut self, later: i64) -> bool {
        let board = self.board();
        let now = self.run().now_s();
        let moments = board.workers.iter().enumerate().filter_map(|(w, worker)| {
            if worker.away_until_s.is_some() {
                return None;
            }
            match (worker.current, worker.next.first()) {
                // The expected end moves on while somebody takes longer.
                (Some(current), _) => {
                    let takes = self.run().problem().operations[current.operation].duration_s;
                    Some(((current.start_s + takes).max(now), w, true))
                }
                (None, Some(next)) if self.run().holds(w, next.operation).is_empty() || next.start_s > now => {
                    Some((next.start_s.max(now), w, false))
                }
                _ => None,
            }
        });
        let Some((at, worker, ends)) = moments.min() else { return false };
        if ends {
            self.advance(at - now + later);
            let button = self.done_button(worker);
            self.press(&button);
        } else {
            // What is due begins by itself; somebody who is in the way may take a moment.
            self.advance((at - now).max(1));
        }
        true
    }

    pub(super) fn work_to_the_end(&mut self) {
        for _ in 0..2_000 {
            if !self.step(0) {
                assert!(self.run().is_over(), "nothing to do, and not over");
                return;
            }
        }
        panic!("the day does not end");
    }

    /// Leaves a picture for whoever wants to look.
    pub(super) fn look(&mut self, name: &str) {
        let looks = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks");
        std::fs::create_dir_all(&looks).unwrap();
        self.window.render().unwrap().save(looks.join(format!("bay-{name}.png"))).unwrap();
    }

    /// Taps on the disk.
    pub(super) fn written(&self) -> Vec<lapwright::bay::Entry> {
        read_day(&RealDisk, &day_path(&self.path())).unwrap().log.entries().to_vec()
    }

    pub(super) fn reads(&self, text: &str) -> bool {
        self.window
            .query_all_by(|n| {
                let says = |t: Option<String>| t.is_some_and(|t| t.contains(text));
                says(n.label()) || says(n.value())
            })
            .next()
            .is_some()
    }

    /// What a panel says of itself on the map.
    pub(super) fn panel(&self, name: &str) -> String {
        let node = self.window.get_by_role_and_label(PANEL, name);
        node.accesskit_node().data().description().unwrap_or_default().to_owned()
    }

    fn panel_name(&self, operation: usize) -> String {
        let app = self.window.state();
        let id = app.coating_day().problem().operations[operation].panel.clone();
        let template = load_embedded(&app.job().vehicle.template).unwrap();
        let panel = template.panel(&lapwright::vehicle::PanelId::from(id.as_str())).unwrap();
        panel.name(lapwright::vehicle::Naming::Uk)
    }
}

fn begun(template: &str) -> Bay {
    let mut bay = Bay::open(job_on(template), SIZE);
    bay.press("Start the day");
    bay
}

#[test]
fn a_tap_counts_once_it_is_on_the_disk() {
    let mut bay = begun("coupe");
    assert!(matches!(bay.written()[0].event, Event::Began { .. }));
    assert!(!bay.written()[0].assumed);
    bay.step(3);
    let day = bay.run().day().clone();
    assert_eq!(bay.run().log().entries(), bay.written(), "what counts is what is written");
    assert_eq!(day.last_to_finish(), bay.run().day().last_to_finish());
    assert!(bay.reads(" is on, "), "the call is shown");
}

#[test]
fn a_tap_that_cannot_be_written_does_not_count_and_says_so() {
    let mut bay = begun("coupe");
    let file = day_path(&bay.path());
    std::fs::remove_file(&file).unwrap();
    std::fs::create_dir(&file).unwrap();
    bay.clock.advance(20);
    let button = bay.done_button(0);
    let before = bay.run().day().clone();
    bay.window.get_by_role_and_label(Role::Button, &button).click();
    for _ in 0..500 {
        bay.window.step();
        std::thread::sleep(std::time::Duration::from_millis(2));
        if bay.run().failure.is_some() {
            break;
        }
    }
    assert_eq!(*bay.run().day(), before, "nobody is done");
    assert!(bay.reads("could not be written"));
    std::fs::remove_dir(&file).unwrap();
    bay.press(&button);
    assert_ne!(*bay.run().day(), before, "pressed again, it counts");
}

#[test]
fn a_job_without_a_file_asks_to_be_saved_first_or_only_tries() {
    let clock = Arc::new(HandClock::at(1_000));
    let window = open_window(job_on("coupe"), None, Arc::clone(&clock), SIZE);
    let mut bay = Bay { window, clock, folder: tempfile::tempdir().unwrap(), polishes: false };
    bay.tab("Bay");
    assert!(bay.has("Save the job first…") && !bay.has("Start the day"));
    bay.press("Try it without saving");
    assert!(bay.reads("Only to try"));
    bay.press("Start the day");
    assert!(bay.run().is_begun());
    assert_eq!(std::fs::read_dir(bay.folder.path()).unwrap().count(), 0, "nothing is written");
}

#[test]
fn the_map_stays_where_it_is_and_shows_who_is_where() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    let place = |bay: &Bay| bay.window.get_by_role_and_label(PANEL, "Bonnet, left").rect();
    let in_bay = place(&bay);
    bay.tab("Coating");
    assert_eq!(place(&bay), in_bay);
    bay.tab("Bay");
    bay.press("Start the day");
    assert_eq!(place(&bay), in_bay);
    bay.step(0);
    let wet = bay.board().windows[0];
    let name = bay.panel_name(wet.operation);
    assert!(bay.panel(&name).starts_with("wet, "), "{}", bay.panel(&name));
    while bay.run().day().done_at(wet.operation).is_none() {
        bay.step(0);
    }
    assert!(bay.panel(&name).starts_with("done; "), "{}", bay.panel(&name));
    assert_eq!(place(&bay), in_bay);
}

/// WCAG 2.2, 2.5.5 (enhanced): 44 by 44; the buttons for "done" are to be hit with gloves, so far larger (our own measure).
#[test]
fn everything_that_is_pressed_is_large_enough_for_gloves() {
    let mut bay = begun("coupe");
    bay.step(0);
    let rail = 170.0;
    for asks in [None, Some("More"), Some("Pause for everybody"), Some("The air is another")] {
        if let Some(asks) = asks {
            bay.press(asks);
        }
        for node in bay.window.query_all_by_role(Role::Button) {
            let rect = node.rect();
            let of_the_bay = rect.left() > SIZE[0] - 330.0 && rect.top() > 48.0;
            assert!(
                !of_the_bay || rect.height() >= 44.0 && rect.width() >= 44.0,
                "{:?} {rect:?}",
                node.accesskit_node().label()
            );
            assert!(rect.left() > rail || rect.height() > 0.0);
        }
        if let Some(asks) = asks {
            bay.press(asks);
        }
    }
    let worker = loop {
        match (0..2).find(|&w| bay.board().workers[w].current.is_some()) {
            Some(worker) => break worker,
            None => bay.advance(5),
        }
    };
    let done = bay.window.get_by_role_and_label(Role::Button, &bay.done_button(worker)).rect();
    assert!(done.width() > 250.0 && done.height() > 80.0, "{done:?}");
}

#[test]
fn an_answer_moves_the_windows_and_the_plan_and_the_rule_is_on_screen() {
    let mut bay = begun("coupe");
    assert!(bay.run().window().is_some());
    let levelled = loop {
        bay.step(0);
        let level = |o: &usize| bay.run().problem().operations[*o].role == "level";
        let last = bay.run().day().last_to_finish().and_then(|w| bay.run().day().last_done(w));
        if let Some(last) = last.filter(level) {
            break last;
        }
    };
    let before = bay.run().window().unwrap();
    let name = bay.panel_name(levelled);
    bay.press(&format!("{name} felt dragging"));
    let after = bay.run().window().unwrap();
    assert!(after.max_s < before.max_s);
    assert!(bay.board().windows.iter().all(|w| w.latest_s - w.since_s <= after.max_s));
    bay.press("Take back the last tap");
    assert_eq!(bay.run().window(), Some(before));
}

#[test]
fn the_panel_that_is_chosen_on_the_map_comes_first_when_somebody_takes_another() {
    let mut bay = begun("coupe");
    bay.window.get_by_role_and_label(PANEL, "Front bumper, right").click_accesskit();
    bay.window.run();
    let worker = bay.worker(0);
    bay.press(&format!("{worker}, other panel"));
    let takes = format!("{worker} takes ");
    let first = {
        let mut buttons =
            bay.window.query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with(&takes)));
        buttons.next().unwrap().accesskit_node().label().unwrap().clone()
    };
    assert_eq!(first, format!("{worker} takes Apply front bumper right"));
    bay.press(&first);
    let doing = bay.board().workers[0].current.unwrap().operation;
    assert_eq!(bay.panel_name(doing), "Front bumper, right");
}

#[test]
fn the_sun_comes_round() {
    let mut bay = begun("coupe");
    bay.step(0);
    let before = bay.run().window().unwrap();
    bay.press("The air is another");
    for _ in 0..5 {
        bay.press("Warmest panel more");
    }
    assert!(bay.reads("shorter"));
    bay.look("air");
    bay.press("So it is");
    assert!(bay.run().window().unwrap().max_s < before.max_s);
    assert_eq!(bay.window.state().job().air, job_on("coupe").job.air, "the job keeps the air that was planned with");
    bay.work_to_the_end();
}

#[test]
fn reading_the_log_of_a_day_that_is_damaged_leaves_it_alone() {
    let bay = begun("coupe");
    let file = day_path(&bay.path());
    std::fs::write(&file, "something else\n").unwrap();
    let bay = {
        let Bay { window, clock, folder, .. } = bay;
        drop(window);
        let loaded = read_job(&RealDisk, &folder.path().join("day.job.ron")).unwrap();
        let window = open_window(loaded, Some(folder.path().join("day.job.ron")), Arc::clone(&clock), SIZE);
        let mut bay = Bay { window, clock, folder, polishes: false };
        bay.tab("Bay");
        bay
    };
    assert!(bay.reads("is left as it is") && !bay.has("Start the day"));
    assert_eq!(std::fs::read_to_string(&file).unwrap(), "something else\n");
}

#[test]
fn a_tap_that_could_not_be_written_can_be_tapped_again_or_kept_elsewhere() {
    let mut bay = Bay::open(job_from_text("the sample", SAMPLE).unwrap(), SIZE);
    let away = bay.folder.path().with_extension("away");
    std::fs::rename(bay.folder.path(), &away).unwrap();
    let begin = |bay: &mut Bay| {
        bay.window.get_by_role_and_label(Role::Button, "Start the day").click();
        for _ in 0..2_000 {
            bay.window.step();
            if !bay.run().is_busy() {
                break;
            }
            std::thread::sleep(std::time::Duration::from_millis(1));
        }
        bay.window.run();
    };
    begin(&mut bay);
    let said = |bay: &Bay, part: &str| bay.window.query_all_by_label_contains(part).next().is_some();
    assert!(said(&bay, "so it does not count: there is no such file or folder"));
    assert!(!said(&bay, "There is no order to begin with yet"));
    assert!(said(&bay, "Saved under another name, in a folder of your own"));
    std::fs::rename(&away, bay.folder.path()).unwrap();
    begin(&mut bay);
    assert!(bay.run().failure.is_none() && !bay.written().is_empty());
}
