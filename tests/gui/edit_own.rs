//! Vehicles of one's own: saved again, deleted, worked from another stance, named in either English.

use super::edit_steps::{
    choose, click_at, enter, has_panel, job, open_workspace, pick, press, save_as, saved, says, window,
};
use super::pictures::egui_role::PANEL;
use super::settle;
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable;
use lapwright::vehicle::PanelId;

#[test]
fn a_vehicle_of_ones_own_is_saved_again_and_what_it_was_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Roof, left");
    press(&mut window, "Across");
    save_as(&mut window, "Mine");
    settle(&mut window);
    let readings = |window: &_| job(window).panels.values().map(|r| r.reading_count()).sum::<usize>();
    let before = readings(&window);
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Rear door, left");
    press(&mut window, "Along");
    press(&mut window, "Save");
    assert!(says(&window, "kept as mine.ron~"), "it asks first");
    window.key_press(Key::Escape);
    window.run();
    assert!(saved(folder.path(), "mine").panel(&PanelId::from("door-rear-2-left")).is_none());
    press(&mut window, "Save");
    press(&mut window, "Save the changes");
    settle(&mut window);
    assert!(has_panel(&window, "Rear door 2, left"), "the window shows the vehicle as it was saved");
    assert_eq!(job(&window).vehicle.template, "mine");
    assert_eq!(readings(&window), before, "no reading is lost");
    let again = saved(folder.path(), "mine");
    assert!(again.panel(&PanelId::from("door-rear-2-left")).is_some());
    assert_eq!(again.name, "Mine");
    let kept = std::fs::read_to_string(folder.path().join("mine.ron~")).unwrap();
    assert!(kept.contains("roof-2") && !kept.contains("door-rear-2"), "the old file is kept");
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert!(has_panel(&window, "Rear door 2, left"), "there is nothing to undo to another vehicle");
}

#[test]
fn a_vehicle_of_ones_own_is_deleted_after_a_question_unless_the_job_uses_it() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    assert!(window.query_by_label("Your vehicles…").is_none(), "there are none yet");
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Roof, left");
    press(&mut window, "Across");
    save_as(&mut window, "Mine");
    settle(&mut window);
    press(&mut window, "Your vehicles…");
    assert!(says(&window, "used by this job") && window.query_by_label("Delete…").is_none());
    press(&mut window, "Close");
    pick(&mut window, "Body", "Four-door saloon");
    settle(&mut window);
    window.key_press(Key::Escape); // closes the list
    window.run();
    press(&mut window, "Your vehicles…");
    press(&mut window, "Delete…");
    press(&mut window, "Keep it");
    assert!(folder.path().join("mine.ron").exists());
    press(&mut window, "Your vehicles…");
    press(&mut window, "Delete…");
    press(&mut window, "Delete it");
    assert!(!folder.path().join("mine.ron").exists() && folder.path().join("mine.ron~").exists());
    assert!(window.query_by_label("Your vehicles…").is_none(), "it is gone from the list");
    assert_eq!(job(&window).vehicle.template, "saloon");
}

#[test]
fn a_panel_is_worked_from_another_stance() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Front door, left");
    let saloon = lapwright::vehicle::load_embedded("saloon").unwrap();
    let number = |id: &str| saloon.stances.iter().position(|s| s.id == id).unwrap() + 1;
    pick(&mut window, "Worked from", &format!("stance {}", number("b-pillar-left")));
    assert!(says(&window, &format!("Front door, left: worked from stance {}", number("b-pillar-left"))));
    pick(&mut window, "Worked from", &format!("stance {}", number("rear-left")));
    assert!(says(&window, "far along the vehicle"), "it is done, and said to be far");
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    save_as(&mut window, "Mine");
    settle(&mut window);
    let mine = saved(folder.path(), "mine");
    let stance = |id: &str| mine.stances[mine.panel(&PanelId::from(id)).unwrap().stance].id.clone();
    assert_eq!(stance("door-front-left"), "b-pillar-left");
    assert_eq!(stance("door-front-right"), "door-front-right", "the other side is as it was");
}

#[test]
fn names_while_editing_follow_the_choice_and_the_map_is_zoomed_by_keys() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    press(&mut window, "View");
    window.get_by_label("Hood, trunk, fender").click();
    window.run();
    window.key_press(Key::Escape);
    window.run();
    press(&mut window, "Edit vehicle…");
    choose(&mut window, "Hood, left");
    assert!(says(&window, "Hood, left"));
    let far = window.get_by_role_and_label(PANEL, "Trunk lid, left").rect().center();
    click_at(&mut window, far, Modifiers::SHIFT);
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("Join as "))).click();
    window.run();
    assert!(says(&window, "Hood, left") && says(&window, "do not share one seam"));
    assert!(!says(&window, "bonnet-left"), "no ids");
    choose(&mut window, "Hood, left");
    let width =
        |window: &egui_kittest::Harness<'_, _>| window.get_by_role_and_label(PANEL, "Hood, left").rect().width();
    let whole = width(&window);
    window.key_press(Key::Z);
    window.run();
    assert!(width(&window) > 1.5 * whole);
    window.key_press(Key::F);
    window.run();
    assert!((width(&window) - whole).abs() < 1.0);
}

#[test]
fn a_long_name_stays_on_one_line_of_the_rail_and_the_bar() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(folder.path());
    let long = "The quite unusually long name of a job that somebody typed on a slow day in the bay";
    enter(&mut window, "Name of the job", long);
    window.run();
    pick(&mut window, "Body", "Touring coach, three axles");
    settle(&mut window);
    open_workspace(&mut window, "Job");
    for scale in ["75\u{202f}%", "150\u{202f}%", "200\u{202f}%"] {
        press(&mut window, "View");
        window.get_by_label(scale).click();
        window.run();
        window.run();
        let name =
            window.get_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.starts_with("The quite"))).rect();
        let undo = window.get_by_role_and_label(Role::Button, "Undo").rect();
        assert!(name.right() <= undo.left() && name.height() < 40.0, "{scale}: {name:?} beside {undo:?}");
    }
}
