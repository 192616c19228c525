//! Every command by keyboard, the search for them, the help, the clipboard and printing.

use super::pictures::egui_role::PANEL;
use super::scripted::{choose, readings, says};
use super::{labels, settle, window};
use eframe::egui::{Event, Key, Modifiers, OutputCommand, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::{App, Workspace, command_keys, command_names};
use std::collections::BTreeSet;

const SIZE: [f32; 2] = [1280.0, 800.0];

/// Presses Ctrl+K and types words.
pub(super) fn find(window: &mut Harness<'_, App>, words: &str) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::K);
    window.run();
    window.input_mut().events.push(Event::Text(words.to_owned()));
    window.run();
}

/// Finds a command and takes the first line.
pub(super) fn run_command(window: &mut Harness<'_, App>, words: &str) {
    find(window, words);
    window.key_press(Key::Enter);
    window.run();
}

/// Whether a label has these words somewhere.
pub(super) fn tells(window: &Harness<'_, App>, words: &str) -> bool {
    let label = |n: &egui_kittest::Node<'_>| n.accesskit_node().role() == Role::Label;
    let has = |n: egui_kittest::Node<'_>| n.accesskit_node().value().is_some_and(|v| v.contains(words));
    window.root().children_recursive().filter(label).any(has)
}

/// Names of the lines in the search that can be taken or not.
fn lines(window: &Harness<'_, App>) -> Vec<String> {
    let options = window.root().children_recursive().filter(|n| n.accesskit_node().role() == Role::MenuItem);
    options.filter_map(|n| n.accesskit_node().label()).collect()
}

#[test]
fn every_command_is_found_by_its_name() {
    let mut window = window(SIZE);
    for (id, name) in command_names().filter(|(id, _)| *id != "find") {
        find(&mut window, name);
        let found = lines(&window).iter().any(|line| line.starts_with(&format!("{name}, ")));
        assert!(found, "{id}: {:?}", lines(&window));
        window.key_press(Key::Escape);
        window.run();
    }
}

#[test]
fn no_two_commands_share_keys_and_the_help_shows_them_all() {
    let keys: Vec<(&str, String)> = command_keys().collect();
    let different: BTreeSet<&String> = keys.iter().map(|(_, keys)| keys).collect();
    assert_eq!(different.len(), keys.len(), "{keys:?}");
    assert!(keys.len() > 25, "{}", keys.len());
    let names: BTreeSet<&str> = command_names().map(|(_, name)| name).collect();
    assert_eq!(names.len(), command_names().count(), "each has a name of its own");
    let mut window = window(SIZE);
    window.key_press(Key::F1);
    window.run();
    let labels = labels(&window);
    for (id, keys) in keys {
        assert!(labels.iter().any(|label| label.split(" or ").any(|part| part == keys)), "{id}: {keys}");
    }
    for (id, name) in command_names() {
        assert!(labels.iter().any(|label| label.starts_with(&format!("{name}. "))), "{id}");
    }
    for workspace in Workspace::ALL {
        assert!(labels.iter().any(|label| label == workspace.name()), "{}", workspace.name());
    }
    window.key_press(Key::Escape);
    window.run();
    assert!(window.query_by_label("Cautions").is_none(), "Escape closes the help");
}

#[test]
fn workspaces_overlays_and_panels_are_gone_to_by_keys_and_words() {
    let mut window = window(SIZE);
    for (key, workspace) in
        [Key::Num1, Key::Num4, Key::Num2].into_iter().zip([Workspace::Job, Workspace::Coating, Workspace::Survey])
    {
        window.key_press_modifiers(Modifiers::COMMAND, key);
        window.run();
        assert_eq!(window.state().workspace(), workspace);
    }
    run_command(&mut window, "bonnet left");
    assert!(says(&window, "Bonnet, left"));
    window.key_press(Key::Escape);
    window.run();
    assert_ne!(window.get_by_role_and_label(PANEL, "Bonnet, left").accesskit_node().is_selected(), Some(true));
    run_command(&mut window, "go correction");
    assert_eq!(window.state().workspace(), Workspace::Correction);
}

#[test]
fn what_can_t_be_done_now_says_why_and_is_not_done() {
    let mut window = window(SIZE);
    find(&mut window, "redo");
    assert!(lines(&window)[0].contains("Nothing was taken back."), "{:?}", lines(&window));
    window.key_press(Key::Enter);
    window.run();
    assert!(!lines(&window).is_empty(), "the search stays");
    window.key_press(Key::Escape);
    window.run();
    find(&mut window, "xyzzy");
    assert!(window.query_by_label_contains("Nothing is called so").is_some());
}

#[test]
fn the_arrow_keys_go_through_what_is_found() {
    let mut window = window(SIZE);
    find(&mut window, "go to");
    for _ in 0..3 {
        window.key_press(Key::ArrowDown);
        window.run();
    }
    window.key_press(Key::ArrowUp);
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(window.state().workspace(), Workspace::Correction, "the third of seven");
}

#[test]
fn copied_rows_of_readings_are_shown_before_they_are_added() {
    let mut window = window(SIZE);
    let rows = "panel\treading\tthickness_mil\nroof-rail-right\t1\t4.4\nroof-rail-right\t2\t4.5\nnowhere\t1\t4\n";
    window.input_mut().events.push(Event::Paste(rows.to_owned()));
    window.run();
    assert!(window.query_by_label_contains("Readings from what was pasted").is_some());
    assert_eq!(readings(&window, "roof-rail-right"), 0);
    window.get_by_label("Add 2 readings").click();
    window.run();
    assert_eq!(readings(&window, "roof-rail-right"), 2);
    window.input_mut().events.push(Event::Paste("what a lovely day".to_owned()));
    window.run();
    assert!(window.query_by_label("That could not be done").is_some());
    assert_eq!(readings(&window, "roof-rail-right"), 2);
}

/// Presses Enter and draws one frame, so that what it gave out can be looked at.
fn enter(window: &mut Harness<'_, App>) {
    let (key, modifiers) = (Key::Enter, Modifiers::NONE);
    window.input_mut().events.push(Event::Key { key, physical_key: None, pressed: true, repeat: false, modifiers });
    window.step();
}

/// What the window gave to the clipboard in the last frame.
fn copied(window: &Harness<'_, App>) -> Vec<OutputCommand> {
    window.output().platform_output.commands.clone()
}

#[test]
fn the_table_goes_out_with_tabs_and_the_map_as_a_drawing_and_a_picture() {
    let mut window = window(SIZE);
    window.input_mut().events.push(Event::Copy);
    window.step();
    let commands = copied(&window);
    let [OutputCommand::CopyText(text)] = &commands[..] else { panic!("{commands:?}") };
    let lines: Vec<&str> = text.lines().collect();
    assert!(lines[0].starts_with("Panel\tMade of\tMean film, µm\tAt least, µm"), "{}", lines[0]);
    let cells = lines[0].split('\t').count();
    assert!(lines.iter().all(|line| line.split('\t').count() == cells), "{text}");
    assert!(lines.iter().any(|line| line.starts_with("Bonnet, left\t")), "{text}");
    window.run();
    find(&mut window, "copy the map as a drawing");
    enter(&mut window);
    let commands = copied(&window);
    let [OutputCommand::CopyText(svg)] = &commands[..] else { panic!("{commands:?}") };
    // Well-formed by a general XML reader, and the root is SVG's own (W3C SVG 1.1, 5.1).
    let drawing = roxmltree::Document::parse(svg).unwrap();
    assert_eq!(drawing.root_element().tag_name().name(), "svg");
    window.run();
    find(&mut window, "copy the map as a picture");
    enter(&mut window);
    let commands = copied(&window);
    let [OutputCommand::CopyImage(picture)] = &commands[..] else { panic!("{commands:?}") };
    assert!(picture.width() > 400 && picture.height() > 300, "{:?}", picture.size);
}

#[test]
fn printing_without_a_viewer_says_where_the_pages_are() {
    let mut window = window(SIZE);
    run_command(&mut window, "print the customer sheet");
    let said = window.get_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains("The pages are in")));
    let said = said.accesskit_node().value().unwrap();
    let path = said.split(['“', '”']).nth(1).unwrap();
    let pdf = std::fs::read(path).unwrap();
    // ISO 32000-1, 7.5.2: a PDF begins so.
    assert!(pdf.starts_with(b"%PDF-1."), "{path}");
    std::fs::remove_dir_all(std::path::Path::new(path).parent().unwrap()).unwrap();
    window.get_by_label("OK").click();
    window.run();
    assert!(!tells(&window, "The pages are in"));
}

#[test]
fn the_table_shows_every_panel_and_goes_to_it() {
    let mut window = window(SIZE);
    window.key_press_modifiers(Modifiers::COMMAND, Key::T);
    window.run();
    let rows: Vec<String> = window
        .root()
        .children_recursive()
        .filter(|n| n.accesskit_node().role() == Role::Row)
        .filter_map(|n| n.accesskit_node().label())
        .collect();
    let panels = lapwright::vehicle::load_embedded(&window.state().job().vehicle.template).unwrap().panels.len();
    assert_eq!(rows.iter().filter(|row| row.contains("made of")).count(), panels);
    let bonnet = rows.iter().find(|row| row.starts_with("Bonnet, left: ")).unwrap();
    assert!(bonnet.contains("mean film, µm 1"), "{bonnet}");
    window
        .get_by(|n| n.role() == Role::Row && n.label().is_some_and(|l| l.starts_with("Roof, right: ")))
        .click_accesskit();
    window.run();
    assert!(says(&window, "Roof, right"));
}

#[test]
fn a_field_that_is_typed_in_keeps_its_own_keys() {
    let mut window = window(SIZE);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num1);
    window.run();
    let name = window.state().job().name.clone();
    window.get_by_role_and_label(Role::TextInput, "Name of the job").focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Name of the job").type_text("f");
    window.run();
    assert_ne!(window.state().job().name, name);
    window.key_press_modifiers(Modifiers::COMMAND, Key::C);
    window.run();
    assert!(!tells(&window, "The table is copied"));
    window.key_press_modifiers(Modifiers::COMMAND, Key::K);
    window.run();
    assert!(!lines(&window).is_empty(), "but commands are found from everywhere");
    settle(&mut window);
    let focused = window.root().children_recursive().find(|n| n.accesskit_node().is_focused());
    assert!(focused.is_some_and(|n| n.accesskit_node().label().is_some_and(|l| l.starts_with("Find a command"))));
}

#[test]
fn an_empty_job_says_in_every_workspace_what_comes_next() {
    let mut window = window(SIZE);
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    settle(&mut window);
    assert_eq!(window.state().workspace(), Workspace::Job);
    for (key, words) in [
        (Key::Num1, "Choose the body"),
        (Key::Num2, "Type a reading and press Enter"),
        (Key::Num3, "No panel has been read yet"),
        (Key::Num4, "The air is right"),
        (Key::Num5, "Every tap is written beside the job"),
        (Key::Num6, "No panel has been read yet"),
        (Key::Num7, "Who practises?"),
    ] {
        window.key_press_modifiers(Modifiers::COMMAND, key);
        window.run();
        assert!(tells(&window, words), "{words}");
    }
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num6);
    window.run();
    window.get_by_label("Go to Survey").click();
    window.run();
    assert_eq!(window.state().workspace(), Workspace::Survey);
}

/// A panel is chosen and its bare keys still work after the search was closed.
#[test]
fn closing_the_search_gives_the_keys_back() {
    let mut window = window(SIZE);
    choose(&mut window, "Roof, right");
    find(&mut window, "save");
    window.key_press(Key::Escape);
    window.run();
    assert!(says(&window, "Roof, right"), "Escape closed the search and nothing else");
    window.key_press(Key::Escape);
    window.run();
    assert!(!says(&window, "Roof, right"));
}
