//! The steps that tests of vehicles consist of.

use super::pictures::egui_role::PANEL;
use super::{EFFORT, settle};
use eframe::egui::{self, Key, Modifiers, Role, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{Loaded, SAMPLE, Templates, job_from_text};
use lapwright::gui::App;
use lapwright::job::Job;
use lapwright::vehicle::Template;
use std::path::Path;
use std::sync::Arc;

/// A window on the sample with a folder for vehicles of one's own, open at the job.
pub(super) fn window(folder: &Path) -> Harness<'static, App> {
    window_on(job_from_text("the sample", SAMPLE).unwrap(), folder)
}

pub(super) fn window_on(loaded: Loaded, folder: &Path) -> Harness<'static, App> {
    let templates = Templates::in_folder(folder);
    let app = move || App::with_effort(loaded, None, EFFORT).with_templates(templates);
    let mut window = super::window_of([1280.0, 800.0], app);
    settle(&mut window);
    open_workspace(&mut window, "Job");
    window
}

pub(super) fn open_workspace(window: &mut Harness<'_, App>, name: &str) {
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with(name))).click();
    window.run();
}

pub(super) fn press(window: &mut Harness<'_, App>, button: &str) {
    window.get_by_role_and_label(Role::Button, button).click();
    window.run();
}

pub(super) fn choose(window: &mut Harness<'_, App>, panel: &str) {
    window.get_by_role_and_label(PANEL, panel).click_accesskit();
    window.run();
}

pub(super) fn pick(window: &mut Harness<'_, App>, choice: &str, value: &str) {
    window.get_by_role_and_label(Role::ComboBox, choice).click();
    window.run();
    if window.query_by_role_and_label(Role::Button, value).is_none() {
        // It was open since the last choice, and is closed now.
        window.get_by_role_and_label(Role::ComboBox, choice).click();
        window.run();
    }
    let option = window.get_by_role_and_label(Role::Button, value);
    // The end of a long list is not on screen yet.
    if matches!(choice, "Body" | "Worked from") {
        option.click_accesskit();
    } else {
        option.click();
    }
    window.run();
}

/// Puts a number into a field and leaves it with Enter.
pub(super) fn enter(window: &mut Harness<'_, App>, field: &str, value: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(value);
    window.run();
    window.key_press(Key::Enter);
    window.step();
    window.step();
}

pub(super) fn click_at(window: &mut Harness<'_, App>, at: egui::Pos2, modifiers: Modifiers) {
    window.event(egui::Event::ModifiersChanged(modifiers));
    window.hover_at(at);
    window.run();
    window.drag_at(at);
    window.run();
    window.drop_at(at);
    window.run();
    window.event(egui::Event::ModifiersChanged(Modifiers::NONE));
    window.run();
}

pub(super) fn has_panel(window: &Harness<'_, App>, name: &str) -> bool {
    window.query_by_role_and_label(PANEL, name).is_some()
}

pub(super) fn says(window: &Harness<'_, App>, part: &str) -> bool {
    window.query_all_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains(part))).next().is_some()
}

pub(super) fn job(window: &Harness<'_, App>) -> Arc<Job> {
    Arc::clone(window.state().job())
}

/// Names the changed vehicle and saves it.
pub(super) fn save_as(window: &mut Harness<'_, App>, name: &str) {
    press(window, "Save as…");
    let field =
        |n: &egui_kittest::Node<'_>| n.accesskit_node().label().is_some_and(|l| l.starts_with("Name, for example"));
    let found = window.get_all_by_role(Role::TextInput).find(field).expect("a field for the name");
    found.focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.get_all_by_role(Role::TextInput).find(field).expect("still there").type_text(name);
    window.run();
    press(window, "Save");
}

pub(super) fn saved(folder: &Path, id: &str) -> Arc<Template> {
    Templates::in_folder(folder).load("the test", id).expect("it was saved")
}

pub(super) fn cut_by_hand(window: &mut Harness<'_, App>) {
    choose(window, "Front door, left");
    press(window, "Draw the cut…");
    let door = window.get_by_role_and_label(PANEL, "Front door, left").rect();
    click_at(window, pos2(door.left() - 3.0, door.center().y), Modifiers::NONE);
    assert!(says(window, "Now click where it ends."));
    click_at(window, pos2(door.right() + 3.0, door.center().y), Modifiers::NONE);
}
