//! Every workspace, page and question of the window, one after the other.

use super::super::bay::Bay;
use super::super::commands::run_command;
use super::super::practice::Room;
use super::super::scripted::{choose, drop_file};
use super::super::{settle, window};
use super::Window;
use eframe::egui::accesskit::Action;
use eframe::egui::{Event, Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{SAMPLE, job_from_text};

pub(super) const SIZE: [f32; 2] = [1280.0, 800.0];
/// Scenes with a page or a question that lies over the rest of the window.
pub(super) const LIES_OVER: [&str; 9] = [
    "Find",
    "Help",
    "Preferences",
    "All jobs",
    "Table",
    "Readings that were pasted",
    "A failure",
    "Vehicles of one's own",
    "Unsaved changes",
];
const KEYS: [Key; 7] = [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7];

/// Opens everything that can be unfolded on screen.
fn unfold_all(window: &mut Window) {
    for _ in 0..60 {
        let closed = window.query_all_by_role(Role::DisclosureTriangle).find(|n| {
            let node = n.accesskit_node();
            node.data().is_expanded() != Some(true) && node.data().supports_action(Action::Click)
        });
        let Some(closed) = closed else { return };
        let name = closed.accesskit_node().label();
        closed.click_accesskit();
        window.run();
        let still = window.query_all_by_role(Role::DisclosureTriangle).filter(|n| n.accesskit_node().label() == name);
        if still.into_iter().all(|n| n.accesskit_node().data().is_expanded().is_none()) {
            return;
        }
    }
}

fn escape(window: &mut Window) {
    window.key_press(Key::Escape);
    window.run();
}

/// Shows each workspace with nothing chosen, then with a panel chosen and everything unfolded.
fn workspaces(window: &mut Window, visit: &mut dyn FnMut(&str, &mut Window)) {
    for (key, name) in KEYS.into_iter().zip(["Job", "Survey", "Correction", "Coating", "Bay", "Handover", "Practice"]) {
        window.key_press_modifiers(Modifiers::COMMAND, key);
        window.run();
        visit(name, window);
        if name != "Handover" && name != "Practice" {
            choose(window, "Rear door, left");
            unfold_all(window);
            visit(&format!("{name}, a panel chosen, all unfolded"), window);
            escape(window);
        }
    }
}

fn pages(window: &mut Window, visit: &mut dyn FnMut(&str, &mut Window)) {
    const BOTH: Modifiers = Modifiers::COMMAND.plus(Modifiers::SHIFT);
    for (held, key, name) in [
        (Modifiers::COMMAND, Key::K, "Find"),
        (Modifiers::NONE, Key::F1, "Help"),
        (Modifiers::COMMAND, Key::Comma, "Preferences"),
        (BOTH, Key::O, "All jobs"),
        (Modifiers::COMMAND, Key::T, "Table"),
    ] {
        window.key_press_modifiers(held, key);
        window.run();
        visit(name, window);
        escape(window);
    }
    run_command(window, "show the hints again");
    visit("First hint", window);
    window.get_by_label("No more hints").click_accesskit();
    window.run();
    let rows = "panel\treading\tthickness_um\nroof-rail-right\t1\t104\nnowhere\t1\t104\n";
    window.input_mut().events.push(Event::Paste(rows.to_owned()));
    window.run();
    visit("Readings that were pasted", window);
    escape(window);
    let folder = tempfile::tempdir().unwrap();
    let bad = folder.path().join("bad.job.ron");
    std::fs::write(&bad, "(format: \"job/1\", name: 5)").unwrap();
    drop_file(window, &bad);
    visit("A failure", window);
    escape(window);
    window.key_press(Key::F11);
    window.run();
    visit("Big screen", window);
    escape(window);
}

fn questions_and_vehicles(window: &mut Window, visit: &mut dyn FnMut(&str, &mut Window)) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num1);
    window.run();
    run_command(window, "your vehicles");
    visit("Vehicles of one's own", window);
    escape(window);
    run_command(window, "edit the vehicle");
    visit("Editing the vehicle", window);
    choose(window, "Front door, left");
    unfold_all(window);
    visit("Editing a panel of the vehicle", window);
    window.get_by_role_and_label(Role::Button, "Cancel").click_accesskit();
    window.run();
    settle(window);
    run_command(window, "accept this order");
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    visit("Unsaved changes", window);
    window.get_by_label("Don't save").click_accesskit();
    settle(window);
    visit("A new job", window);
}

fn bay(size: [f32; 2], visit: &mut dyn FnMut(&str, &mut Window)) {
    let mut bay = Bay::open(job_from_text("the sample", SAMPLE).unwrap(), size);
    if size[0] < SIZE[0] {
        // What is pressed may be scrolled away here.
        bay.window.get_by_role_and_label(Role::Button, "Start the day").click_accesskit();
        bay.rest();
        visit("A day that runs", &mut bay.window);
        return;
    }
    bay.press("Start the day");
    for _ in 0..8 {
        bay.step(2);
    }
    visit("A day that runs", &mut bay.window);
    bay.work_to_the_end();
    visit("A day at its end", &mut bay.window);
}

fn practice(size: [f32; 2], visit: &mut dyn FnMut(&str, &mut Window)) {
    let mut room = Room::open(size);
    room.learner("Ida");
    visit("Exercises", &mut room.window);
    room.start("With a partner");
    visit("An exercise", &mut room.window);
    room.lay_all();
    visit("An order that is laid", &mut room.window);
    room.press("Check this order");
    visit("An order that is judged", &mut room.window);
    room.press("Show the best order");
    visit("The best order", &mut room.window);
    room.press("All exercises");
    room.start("How hard to polish");
    visit("A question", &mut room.window);
}

/// Visits them all; a window in each.
pub(super) fn every_scene(size: [f32; 2], visit: &mut dyn FnMut(&str, &mut Window)) {
    let mut one = window(size);
    workspaces(&mut one, visit);
    pages(&mut one, visit);
    questions_and_vehicles(&mut one, visit);
    bay(size, visit);
    practice(size, visit);
}
