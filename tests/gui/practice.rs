//! Practice, driven by its buttons, panels and keys: a learner's first five minutes.

use super::pictures::egui_role::{PANEL, TAB};
use super::scripted::says;
use super::{EFFORT, settle};
use eframe::egui::{self, Key, Modifiers, Role, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{Attempt, Learners, RealDisk, SAMPLE, job_from_text};
use lapwright::gui::{App, Theme, install_theme, set_theme};
use lapwright::practice::{Done, Lesson};
use lapwright::work::HandClock;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// A window with learners kept in a folder.
pub(super) struct Room {
    pub(super) window: Harness<'static, App>,
    folder: PathBuf,
    _dir: Option<tempfile::TempDir>,
}

impl Room {
    pub(super) fn open(size: [f32; 2]) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let folder = dir.path().join("practice");
        Self { _dir: Some(dir), ..Self::in_folder(&folder, size) }
    }

    fn in_folder(folder: &Path, size: [f32; 2]) -> Self {
        let learners = Learners::in_folder(folder);
        let window = Harness::builder()
            .with_size(Vec2::from(size))
            .with_theme(egui::Theme::Light)
            .with_max_steps(60)
            .with_render_cursor(false)
            .renderer(super::raster::Raster::default())
            .build_eframe(move |creation| {
                install_theme(&creation.egui_ctx);
                let loaded = job_from_text("the sample", SAMPLE).unwrap();
                let clock = Arc::new(HandClock::at(1_764_072_000)); // noon of 25 November 2025 in UTC
                App::with_effort(loaded, None, EFFORT).with_clock(clock).with_learners(learners)
            });
        let mut room = Self { window, folder: folder.to_owned(), _dir: None };
        settle(&mut room.window);
        let tab = room.window.get_by(|n| n.role() == TAB && n.label().is_some_and(|l| l.starts_with("Practice")));
        tab.click_accesskit(); // it may be scrolled away in a low window
        room.window.run();
        room
    }

    pub(super) fn press(&mut self, name: &str) {
        self.window.get_by_role_and_label(Role::Button, name).click_accesskit();
        // What is played moves on and on, so this takes a few pictures and does not wait for rest.
        for _ in 0..3 {
            self.window.step();
        }
    }

    fn has(&self, text: &str) -> bool {
        self.window.query_all_by_label_contains(text).next().is_some()
    }

    pub(super) fn learner(&mut self, name: &str) {
        self.window.get_by_role_and_label(Role::TextInput, "A new name, then Enter").focus();
        self.window.run();
        self.window.get_by_role_and_label(Role::TextInput, "A new name, then Enter").type_text(name);
        self.window.run();
        self.window.key_press(Key::Enter);
        self.window.run();
    }

    pub(super) fn start(&mut self, exercise: &str) {
        self.press(exercise);
        for _ in 0..3_000 {
            self.window.step();
            if !self.window.state().is_making_exercise() {
                self.window.run();
                return;
            }
            std::thread::sleep(std::time::Duration::from_millis(10));
        }
        panic!("no exercise was made in half a minute");
    }

    fn click(&mut self, panel: &str) {
        self.window.get_by_role_and_label(PANEL, panel).click_accesskit();
        self.window.run();
    }

    /// Names of the panels of the vehicle on screen.
    fn panels(&self) -> Vec<String> {
        let nodes = self.window.get_all_by_role(PANEL);
        nodes.map(|n| n.accesskit_node().label().unwrap()).collect()
    }

    /// Clicks every panel twice, which applies and levels it, in the order of the vehicle.
    pub(super) fn lay_all(&mut self) {
        for panel in self.panels() {
            self.click(&panel);
            self.click(&panel);
        }
    }

    fn results(&self, name: &str) -> Vec<Attempt> {
        Learners::in_folder(&self.folder).load(&RealDisk, name).unwrap()
    }
}

#[test]
fn a_learners_first_five_minutes() {
    let mut room = Room::open([1280.0, 800.0]);
    assert!(room.has("Who practises?"));
    room.learner("Ada");
    assert!(says(&room.window, "Ada practises."));
    assert!(room.has("The results of Ada will stand here.") || room.has("Results over time, 0 so far"));
    room.start("One side");
    assert!(room.has("Click a panel to apply it"));

    // A panel of the other side has nothing to do, and says so.
    let side = if room.window.get_by_role_and_label(PANEL, "Wing, left").accesskit_node().description().unwrap()
        == "not part of this exercise"
    {
        "right"
    } else {
        "left"
    };
    let other = if side == "left" { "right" } else { "left" };
    room.click(&format!("Wing, {other}"));
    assert!(room.has("There is nothing to do on this panel"));
    let (wing, door) = (format!("Wing, {side}"), format!("Front door, {side}"));

    // The first click applies, the second levels; Ctrl+Z and Backspace take back.
    room.click(&wing);
    assert!(room.has("1 of "));
    let said = |room: &Room, panel: &str| {
        room.window.get_by_role_and_label(PANEL, panel).accesskit_node().description().unwrap()
    };
    assert!(said(&room, &wing).contains("applies as number 1"), "{}", said(&room, &wing));
    room.click(&wing);
    assert!(said(&room, &wing).contains("levels as number 2"), "{}", said(&room, &wing));
    room.click(&wing);
    assert!(room.has("Everything on this panel is laid already."));
    room.window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    room.window.run();
    assert!(!said(&room, &wing).contains("levels"));
    assert!(!room.window.state().is_dirty(), "the job is as it was");

    // A hint is a reason.
    room.press("Hint");
    let hint = room.window.query_all_by_label_contains("Mara: ").next().and_then(|n| n.accesskit_node().value());
    let hint = hint.expect("a hint begins with who it is for");
    assert!(room.panels().iter().all(|p| !hint.to_lowercase().contains(&p.to_lowercase())), "{hint}");

    // Keys alone: an arrow goes to a neighbour, Enter lays there.
    room.window.key_press(Key::Backspace);
    room.window.run();
    assert!(room.has("0 of "));
    room.window.get_by_role_and_label(PANEL, &door).focus();
    room.window.run();
    room.window.key_press(Key::Enter);
    room.window.run();
    assert!(said(&room, &door).contains("applies as number 1"), "{}", said(&room, &door));
    assert!(!room.has("Check this order"), "not before everything is laid");

    // Everything laid: check, score, marks, and it is played.
    room.lay_all();
    room.press("Check this order");
    assert!(room.has("% of the best"));
    assert!(room.has("What went wrong"), "panels in the order of a list break rules");
    let kept = room.results("Ada");
    assert_eq!(kept.len(), 1);
    assert_eq!(kept[0].exercise, Lesson::OneSide.written());
    assert!(kept[0].score_pct < 100 && kept[0].broken > 0);
    assert_eq!(kept[0].date.to_string()[..8], *"2025-11-");
    for _ in 0..400 {
        room.window.step();
    }
    room.window.run(); // at the end of what is played everything rests
    let mark = room
        .window
        .query_all_by(|n| {
            n.role() == Role::Button
                && n.label().is_some_and(|l| {
                    l.contains(" leans over ") || l.contains("although") || l.contains("window has closed")
                })
        })
        .next()
        .unwrap();
    mark.click_accesskit();
    room.window.run();
    assert!(room.has("A good order: "), "what a good order would have done there");
    assert!(["smears", "top down", "has set", "bump"].iter().any(|w| room.has(w)), "the rule with its reason");

    // Changing it and checking again is not kept: the first check counts.
    room.press("Change it");
    room.press("Check this order");
    assert_eq!(room.results("Ada").len(), 1);
    room.press("Show the best order");
    assert!(room.has("the best order the planner found"));
    room.press("Back to my order");
    room.press("All exercises");
    assert!(room.has("Results over time, 1 so far"));
}

#[test]
fn results_are_there_when_the_window_opens_again() {
    let dir = tempfile::tempdir().unwrap();
    let mut room = Room::in_folder(dir.path(), [1280.0, 800.0]);
    room.learner("Zoë");
    room.start("Which panel next");
    for _ in 0..5 {
        assert!(room.has("next?"));
        let first =
            room.window.query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("A   ")));
        first.last().unwrap().click_accesskit();
        room.window.run();
        assert!(room.has("Right is every panel"));
        room.press("Go on");
    }
    assert_eq!(room.results("Zoë").len(), 1);
    room.press("All exercises");
    room.start("How hard to polish");
    for _ in 0..5 {
        room.press("Hint");
        room.press("One-step");
        assert!(room.has("What limits it"));
        room.press("Go on");
    }
    assert_eq!(room.results("Zoë").len(), 2);
    drop(room);
    let mut room = Room::in_folder(dir.path(), [1280.0, 800.0]);
    room.press("Zoë");
    room.window.run();
    assert!(room.has("Results over time, 2 so far"));
}

#[test]
fn a_damaged_file_is_said_and_left_alone() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("learner-bo.csv");
    let text = "learner,date,exercise,vehicle,score_pct,broken_rules\nBo,2026-03-01,One side,Saloon,ninety,0\n";
    std::fs::write(&path, text).unwrap();
    let mut room = Room::in_folder(dir.path(), [1280.0, 800.0]);
    room.press("Bo");
    room.window.run();
    assert!(room.has(":2:"), "the line of the fault");
    assert!(room.has("Who practises?"), "nobody is chosen");
    assert_eq!(std::fs::read_to_string(path).unwrap(), text);
}

/// Other vehicles are practised on without a job for them; the job's own map is back afterwards.
#[test]
fn any_vehicle_can_be_practised_on() {
    let mut room = Room::open([1280.0, 800.0]);
    room.learner("Ada");
    let before = room.panels().len();
    room.window.get_by_role_and_label(Role::ComboBox, "Vehicle").click();
    room.window.run();
    room.window.get_by_label("Panel van with one sliding door").click_accesskit();
    room.window.run();
    let panels = room.panels();
    assert!(panels.len() != before);
    room.start("With a partner");
    room.lay_all();
    room.press("Check this order");
    assert!(room.has("% of the best"));
    assert!(room.results("Ada")[0].vehicle.to_lowercase().contains("van"), "{:?}", room.results("Ada"));
    room.window.get_by(|n| n.role() == TAB && n.label().is_some_and(|l| l.starts_with("Survey"))).click();
    room.window.run();
    assert_eq!(room.panels().len(), before);
    assert!(!room.window.state().is_dirty());
}

/// Light for the README, every theme for whoever looks.
#[test]
fn practice_has_its_pictures() {
    for (size, ending) in [([1280.0, 800.0], ""), ([1920.0, 1080.0], "-large")] {
        let dir = tempfile::tempdir().unwrap();
        let learners = Learners::in_folder(dir.path());
        for (k, score_pct) in [22, 41, 38, 57, 66, 64, 78, 85].into_iter().enumerate() {
            let done = if k % 3 == 1 { Done::NextPanel } else { Done::Lesson(Lesson::OneSide) };
            let date = lapwright::units::Date::of(2025, 11, 17 + k as i8).unwrap();
            let attempt = Attempt {
                date,
                exercise: done.written().to_owned(),
                vehicle: "Four-door saloon".to_owned(),
                score_pct,
                broken: 3,
            };
            learners.add(&RealDisk, "Nia", &attempt).unwrap();
        }
        let mut room = Room::in_folder(dir.path(), size);
        shoot(&mut room, "practice-names", ending, false);
        room.press("Nia");
        room.window.run();
        shoot(&mut room, "practice-list", ending, false);
        room.start("With a partner");
        for panel in room.panels().into_iter().take(9) {
            room.click(&panel);
        }
        room.press("Hint");
        shoot(&mut room, "practice-laying", ending, false);
        room.lay_all();
        room.press("Check this order");
        for _ in 0..400 {
            room.window.step();
        }
        room.window.run();
        shoot(&mut room, "practice-end", ending, false);
        let mark = room
            .window
            .query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.contains(" leans over ")))
            .nth(1);
        mark.unwrap().click_accesskit();
        room.window.run();
        shoot(&mut room, "practice", ending, true);
        room.press("All exercises");
        room.start("A surprise");
        shoot(&mut room, "practice-surprise", ending, false);
        room.press("All exercises");
        room.start("Which panel next");
        shoot(&mut room, "practice-next", ending, false);
        let first =
            room.window.query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("A   ")));
        first.last().unwrap().click_accesskit();
        room.window.run();
        shoot(&mut room, "practice-next-answer", ending, false);
        room.press("All exercises");
        room.start("How hard to polish");
        shoot(&mut room, "practice-polish", ending, false);
        room.press("One-step");
        shoot(&mut room, "practice-polish-answer", ending, false);
    }
}

fn shoot(room: &mut Room, name: &str, ending: &str, shown: bool) {
    let shots = Path::new(env!("CARGO_MANIFEST_DIR")).join("screenshots");
    let looks = Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks");
    std::fs::create_dir_all(&looks).unwrap();
    for theme in Theme::ALL {
        set_theme(&room.window.ctx, theme);
        room.window.run();
        let picture = room.window.render().unwrap();
        let colours: std::collections::BTreeSet<[u8; 4]> = picture.pixels().map(|p| p.0).collect();
        assert!(colours.len() > 100, "the picture {name} is as good as blank");
        if shown && theme == Theme::Light {
            picture.save(shots.join(format!("{name}{ending}.png"))).unwrap();
        }
        picture.save(looks.join(format!("{name}{ending}-{}.png", theme.name().to_lowercase()))).unwrap();
    }
    set_theme(&room.window.ctx, Theme::Light);
    room.window.run();
}
