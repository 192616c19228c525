//! All jobs of a folder, recent ones, the visits of one vehicle.

use super::commands::{find, run_command};
use super::preferences::{at_home, no_hints};
use super::scripted::drop_file;
use eframe::egui::{Event, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::App;
use std::path::Path;

/// A folder with three jobs, two of one vehicle, and a file that is none.
fn shop(folder: &Path) {
    let jobs = folder.join("jobs");
    std::fs::create_dir_all(jobs.join("2025")).unwrap();
    let job = |file: &str, name: &str, plate: &str, owner: &str, date: &str| {
        let text = lapwright::file::SAMPLE.to_owned();
        let mut loaded = (*lapwright::file::job_from_text("the sample", &text).unwrap().job).clone();
        name.clone_into(&mut loaded.name);
        plate.clone_into(&mut loaded.vehicle.plate);
        owner.clone_into(&mut loaded.customer.name);
        loaded.date = Some(lapwright::units::Date::parse(date).unwrap());
        std::fs::write(jobs.join(file), lapwright::file::job_to_text(&loaded).unwrap()).unwrap();
    };
    job("one.job.ron", "First visit", "QX 12-ZZ", "Ada Winter", "2025-03-01");
    job("2025/two.job.ron", "Second visit", "qx12zz", "Ada Winter", "2026-04-01");
    job("three.job.ron", "Another", "RM 77", "Bo Larsen", "2026-05-01");
    std::fs::write(jobs.join("broken.job.ron"), "(format: \"job/1\"").unwrap();
}

fn rows(window: &Harness<'_, App>) -> Vec<String> {
    let list = window.root().children_recursive().filter(|n| n.accesskit_node().role() == Role::ListBoxOption);
    list.filter_map(|n| n.accesskit_node().label())
        .filter(|label| label.contains("visit") || label.contains("Another") || label.contains("broken"))
        .collect()
}

/// Runs until the folder is listed.
fn listed(window: &mut Harness<'_, App>, count: usize) {
    for _ in 0..500 {
        window.step();
        if rows(window).len() == count {
            window.run();
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    panic!("{:?}", rows(window));
}

/// Opens the page and names the folder.
fn look_through(window: &mut Harness<'_, App>, folder: &Path) {
    window.key_press_modifiers(Modifiers::COMMAND.plus(Modifiers::SHIFT), Key::O);
    window.run();
    assert!(window.query_by_label_contains("Say in which folder").is_some());
    window.get_by_role_and_label(Role::TextInput, "Folder").focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Folder").type_text(&folder.join("jobs").display().to_string());
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

#[test]
fn a_folder_is_listed_searched_and_a_job_opened_by_keys_alone() {
    let folder = tempfile::tempdir().unwrap();
    shop(folder.path());
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    look_through(&mut window, folder.path());
    listed(&mut window, 4);
    let all = rows(&window);
    assert!(all[0].starts_with("2026-05-01, RM 77, Bo Larsen"), "newest first: {all:?}");
    assert!(all[3].contains("can't be read"), "{all:?}");
    window.get_by(|n| n.role() == Role::TextInput && n.label().is_some_and(|l| l.starts_with("Look for"))).focus();
    window.run();
    window.input_mut().events.push(Event::Text("winter".to_owned()));
    window.run();
    assert_eq!(rows(&window).len(), 2);
    window.key_press(Key::ArrowDown);
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(window.state().job().name, "First visit");
    // The list is remembered, and so is the job.
    let mut again = at_home(folder.path());
    again.run();
    find(&mut again, "one.job");
    let found =
        again.query_by(|n| n.role() == Role::MenuItem && n.label().is_some_and(|l| l.starts_with("one.job.ron")));
    assert!(found.is_some(), "recent jobs are found by their name");
    again.key_press(Key::Enter);
    again.run();
    assert_eq!(again.state().job().name, "First visit");
}

#[test]
fn the_visits_of_a_vehicle_are_in_their_order_whatever_the_plate_is_written_like() {
    let folder = tempfile::tempdir().unwrap();
    shop(folder.path());
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    drop_file(&mut window, &folder.path().join("jobs").join("one.job.ron"));
    run_command(&mut window, "earlier visits of this vehicle");
    listed(&mut window, 2);
    let visits = rows(&window);
    assert!(visits[0].contains("First visit") && visits[1].contains("Second visit"), "{visits:?}");
    window.get_by_label("All jobs").click();
    window.run();
    listed(&mut window, 4);
}

#[test]
fn a_folder_that_is_not_there_is_said_and_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    look_through(&mut window, folder.path());
    for _ in 0..200 {
        window.step();
        if window.query_by_label_contains("can't be looked through").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    assert!(window.query_by_label_contains("The folder can't be looked through").is_some());
}
