//! Size, vehicles of one's own, and changing one: as a person does it, by names, keys and the pointer.

use super::edit_steps::{
    choose, click_at, cut_by_hand, enter, has_panel, job, open_workspace, pick, press, save_as, saved, says, window,
    window_on,
};
use super::pictures::egui_role::PANEL;
use super::settle;
use eframe::egui::{self, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{RealDisk, Templates};
use lapwright::gui::App;
use lapwright::job::Job;
use lapwright::vehicle::{PanelId, Skip, Substrate, Template, load_embedded};
use std::sync::Arc;

#[test]
fn a_longer_vehicle_has_more_paint_and_another_order() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let paint = |window: &Harness<'_, App>| {
        let label = window.get_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains("m² of paint")));
        label.accesskit_node().value().unwrap()
    };
    let before = paint(&window);
    assert!(window.query_by_label("Keep the template's size").is_none(), "it has the template's size");
    enter(&mut window, "Length", "5400");
    assert_eq!(job(&window).vehicle.size_mm.map(|s| s.length.mm()), Some(5400.0));
    assert!(!window.state().is_settled(), "the old order is out of date");
    settle(&mut window);
    assert_ne!(paint(&window), before);
    press(&mut window, "Keep the template's size");
    assert_eq!(job(&window).vehicle.size_mm, None);
    settle(&mut window);
    assert_eq!(paint(&window), before);
    assert!(window.query_by_label("Keep the template's size").is_none());
}

#[test]
fn a_size_that_no_vehicle_has_is_not_taken() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    for value in ["47", "99999", "long"] {
        enter(&mut window, "Length", value);
        window.run();
        assert_eq!(job(&window).vehicle.size_mm, None, "{value}");
    }
}

#[test]
fn a_door_is_cut_saved_as_a_new_vehicle_and_opened_again() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let readings = |job: &Job| job.panels.values().map(|r| r.reading_count()).sum::<usize>();
    let before = job(&window);
    press(&mut window, "Edit vehicle…");
    cut_by_hand(&mut window);
    assert!(has_panel(&window, "Front door 2, left") && has_panel(&window, "Front door 2, right"));
    assert!(says(&window, "is two panels now"));
    assert!(Arc::ptr_eq(&before, window.state().job()), "the job is as it was");
    save_as(&mut window, "Saloon, doors in two");
    settle(&mut window);
    let after = job(&window);
    assert_eq!(after.vehicle.template, "saloon-doors-in-two");
    assert_eq!(readings(&after), readings(&before));
    assert!(after.panels.contains_key(&PanelId::from("door-front-2-left")), "readings went to the part they lie on");
    assert!(window.query_by_label("Edit vehicle…").is_some(), "back at the job");
    let template = saved(folder.path(), "saloon-doors-in-two");
    assert_eq!(template.name, "Saloon, doors in two");
    assert_eq!(template.panels.len(), load_embedded("saloon").unwrap().panels.len() + 2);

    let file = folder.path().join("cut.job.ron");
    lapwright::file::save_job(&RealDisk, &file, &after).unwrap();
    let again = Templates::in_folder(folder.path()).read_job(&RealDisk, &file).unwrap();
    let again = window_on(again, folder.path());
    assert!(has_panel(&again, "Front door 2, left"));
    assert!(
        again
            .query_by_role(Role::ComboBox)
            .is_some_and(|n| n.accesskit_node().value().is_none_or(|v| v.contains("doors in two")))
    );

    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(job(&window), before, "one step back is the old vehicle with all its readings");
    settle(&mut window);
}

#[test]
fn neighbours_become_one_and_strangers_do_not() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Bonnet, left");
    pick(&mut window, "Neighbour", "Bonnet, right");
    assert!(has_panel(&window, "Bonnet") && !has_panel(&window, "Bonnet, left"));
    choose(&mut window, "Wing, left");
    let far = window.get_by_role_and_label(PANEL, "Boot lid, left").rect().center();
    click_at(&mut window, far, Modifiers::SHIFT);
    assert!(says(&window, "2 panels"));
    press(&mut window, "Join as Wing, left");
    assert!(says(&window, "do not share one seam that can be taken away."), "the refusal is shown as it is");
    save_as(&mut window, "One bonnet");
    settle(&mut window);
    assert!(saved(folder.path(), "one-bonnet").panel(&PanelId::from("bonnet")).is_some());
    assert!(job(&window).panels.contains_key(&PanelId::from("bonnet")), "the readings of both halves came along");
}

#[test]
fn a_panel_that_is_not_there_is_not_in_the_order() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let in_order = |window: &mut Harness<'_, App>| {
        open_workspace(window, "Coating");
        let row = |n: &egui_kittest::Node<'_>| n.accesskit_node().label().is_some_and(|l| l.contains("Sill, left"));
        let found = window.get_all_by_role(Role::Button).any(|n| row(&n));
        open_workspace(window, "Job");
        found
    };
    assert!(in_order(&mut window));
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Sill, left");
    pick(&mut window, "In the work", "not on this vehicle");
    pick(&mut window, "Made of", "composite");
    save_as(&mut window, "Without a sill");
    settle(&mut window);
    assert!(!in_order(&mut window));
    let sill = |side: &str| saved(folder.path(), "without-a-sill").panel(&PanelId::from(side)).cloned().unwrap();
    assert_eq!((sill("sill-left").skip, sill("sill-left").substrate), (Some(Skip::Absent), Substrate::Composite));
    assert_eq!((sill("sill-right").skip, sill("sill-right").substrate), (None, Substrate::Steel));
}

#[test]
fn cancelling_leaves_everything_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let before = job(&window);
    press(&mut window, "Edit vehicle…");
    press(&mut window, "Cancel");
    assert!(window.query_by_label("Edit vehicle…").is_some(), "nothing changed, so nothing is asked");
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Roof, left");
    press(&mut window, "Across");
    assert!(has_panel(&window, "Roof 2, left"));
    press(&mut window, "Cancel");
    assert!(says(&window, "Drop the changes to the vehicle?"));
    press(&mut window, "Go on editing");
    assert!(has_panel(&window, "Roof 2, left"));
    press(&mut window, "Cancel");
    press(&mut window, "Drop the changes");
    assert!(!has_panel(&window, "Roof 2, left"));
    assert!(Arc::ptr_eq(&before, window.state().job()) && window.state().is_settled() && !window.state().is_dirty());
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn changes_are_taken_back_and_made_again_one_by_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    for (panel, way) in [("Roof, left", "Across"), ("Front door, left", "Along")] {
        choose(&mut window, panel);
        press(&mut window, way);
    }
    let (roof, door) = ("Roof 2, left", "Front door 2, left");
    assert!(has_panel(&window, roof) && has_panel(&window, door));
    let undo = |window: &mut Harness<'_, App>, modifiers| {
        window.key_press_modifiers(modifiers, Key::Z);
        window.run();
    };
    undo(&mut window, Modifiers::COMMAND);
    assert!(has_panel(&window, roof) && !has_panel(&window, door));
    press(&mut window, "Undo");
    assert!(!has_panel(&window, roof) && !has_panel(&window, door));
    undo(&mut window, Modifiers::COMMAND);
    undo(&mut window, Modifiers::COMMAND.plus(Modifiers::SHIFT));
    press(&mut window, "Redo");
    assert!(has_panel(&window, roof) && has_panel(&window, door));
}

#[test]
fn a_stance_is_dragged_or_pushed_by_keys_and_never_into_the_body() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let saloon = load_embedded("saloon").unwrap();
    let place = |t: &Template, id: &str| t.stances.iter().find(|s| s.id == id).unwrap().at;
    let number = saloon.stances.iter().position(|s| s.id == "wing-left").unwrap() + 1;
    press(&mut window, "Edit vehicle…");
    let stance = format!("Stance {number}:");
    let is_it = |n: &egui_kittest::Node<'_>| n.accesskit_node().label().is_some_and(|l| l.starts_with(&stance));
    let at =
        |window: &Harness<'_, App>| window.get_all_by_role(Role::Button).find(|n| is_it(n)).unwrap().rect().center();
    // Into the body: refused, and it springs back.
    let from = at(&window);
    let drag = |window: &mut Harness<'_, App>, from: egui::Pos2, to: egui::Pos2| {
        window.hover_at(from);
        window.run();
        window.drag_at(from);
        window.run();
        window.hover_at(from + (to - from) * 0.5);
        window.run();
        window.hover_at(to);
        window.run();
        window.drop_at(to);
        window.run();
    };
    drag(&mut window, from, from - egui::vec2(0.0, 40.0));
    assert!(says(&window, "That would leave a fault"));
    assert_eq!(at(&window), from);
    drag(&mut window, from, from + egui::vec2(8.0, 4.0));
    assert!(says(&window, &format!("Stance {number} moved")));
    let dragged = at(&window);
    assert!((dragged - from - egui::vec2(8.0, 4.0)).length() < 1.0, "{dragged:?} {from:?}");
    window.get_all_by_role(Role::Button).find(|n| is_it(n)).unwrap().focus();
    window.run();
    for _ in 0..2 {
        window.key_press(Key::ArrowRight);
        window.run();
    }
    enter(&mut window, "From the centreline", "1500");
    window.run();
    save_as(&mut window, "Wider");
    settle(&mut window);
    let wider = saved(folder.path(), "wider");
    let (old, new) = (place(&saloon, "wing-left"), place(&wider, "wing-left"));
    assert!((new.y - 1500.0).abs() < 0.01, "{new:?}");
    assert!(new.x > old.x + 150.0, "dragged by 8 points and pushed by 100 mm: {old:?} {new:?}");
    assert!((place(&wider, "wing-right").y + 1500.0).abs() < 0.01, "the other side alike");
}

#[test]
fn a_name_that_is_taken_and_a_damaged_file_are_told() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("broken.ron"), "(\n    name: \"Broken one\",\n    x\n").unwrap();
    let mut window = window(folder.path());
    pick(&mut window, "Body", "Broken one");
    assert!(says(&window, "broken.ron:") && says(&window, "That could not be done"));
    press(&mut window, "Close");
    assert_eq!(job(&window).vehicle.template, "saloon");
    press(&mut window, "Edit vehicle…");
    save_as(&mut window, "Double-cab pickup");
    assert!(says(&window, "There is a vehicle \"Double-cab pickup\" already"), "taken by one of the program");
    press(&mut window, "Close");
    save_as(&mut window, "Mine");
    settle(&mut window);
    assert_eq!(job(&window).vehicle.template, "mine");
    pick(&mut window, "Body", "Four-door saloon");
    assert_eq!(job(&window).vehicle.template, "saloon");
    settle(&mut window);
}

#[test]
fn closing_the_window_asks_before_changes_of_the_vehicle_are_lost() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Roof, left");
    press(&mut window, "Across");
    let root = egui::ViewportId::ROOT;
    window.input_mut().viewports.entry(root).or_default().events.push(egui::ViewportEvent::Close);
    window.step();
    window.input_mut().viewports.entry(root).or_default().events.clear();
    window.run();
    assert!(says(&window, "Drop the changes to the vehicle?"));
}

#[test]
fn everything_that_takes_the_focus_while_editing_has_a_name_and_is_reached_by_tab() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Front door, left");
    let mut names = std::collections::BTreeSet::new();
    for node in window.root().children_recursive() {
        let node = node.accesskit_node();
        let focusable = node.data().supports_action(egui::accesskit::Action::Focus);
        let named = node.label().is_some_and(|l| !l.is_empty()) && node.role() != Role::Unknown;
        assert!(!focusable || named, "{:?} at {:?}", node.role(), node.raw_bounds());
    }
    for _ in 0..80 {
        window.key_press(Key::Tab);
        window.run();
        let focused = window.root().children_recursive().find(|n| n.accesskit_node().is_focused());
        names.extend(focused.and_then(|n| n.accesskit_node().label()));
    }
    for name in [
        "Draw the cut…",
        "Across",
        "Along",
        "Neighbour",
        "In the work",
        "Made of",
        "Save as…",
        "Cancel",
        "Front door, left",
    ] {
        assert!(names.contains(name), "{name} is not reached: {names:?}");
    }
    assert!(names.iter().any(|n| n.starts_with("Stance 1:")), "{names:?}");
}
