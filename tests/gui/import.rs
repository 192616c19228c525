//! Readings of a file in the window: shown first, then added in one step.

use super::scripted::{drop_file, readings, scratch};
use super::window;
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable;

const SIZE: [f32; 2] = [1280.0, 800.0];

#[test]
fn a_dropped_file_is_shown_before_anything_changes_and_added_in_one_step() {
    let file = scratch("readings.csv");
    let text = "panel;reading;thickness_um\nsill-right;1;112,5\nsill-right;2;113\nsill-right;x;113\nTürschweller;1;121\nTürschweller;2;122\n";
    std::fs::write(&file, text).unwrap();
    let mut window = window(SIZE);
    drop_file(&mut window, &file);
    for part in [
        "decimal comma, thickness in µm",
        "Will be added to 1 panel",
        "Line 4: the reading “x” is not a number",
        "“Türschweller”, 2 rows",
    ] {
        assert!(window.query_by_label_contains(part).is_some(), "{part}");
    }
    assert!(!window.state().is_dirty());
    window.get_by_role_and_label(Role::ComboBox, "“Türschweller”, 2 rows").click();
    window.run();
    window.get_by(|n| n.role() == Role::Button && n.label().as_deref() == Some("Sill, left")).click_accesskit();
    window.run();
    let before = readings(&window, "sill-left");
    window.get_by_label("Add 4 readings").click();
    window.run();
    assert_eq!(readings(&window, "sill-right"), 2);
    assert_eq!(readings(&window, "sill-left"), before + 2);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert!(!window.state().is_dirty(), "one step of undo");
    std::fs::remove_file(file).unwrap();
}

#[test]
fn a_file_without_the_columns_is_refused_and_one_left_alone_changes_nothing() {
    let file = scratch("other.csv");
    std::fs::write(&file, "a;b\n1;2\n").unwrap();
    let mut window = window(SIZE);
    drop_file(&mut window, &file);
    assert!(window.query_by_label("That could not be done").is_some());
    window.get_by_label("Close").click();
    window.run();
    std::fs::write(&file, "panel;reading;thickness_um\nsill-right;1;112\n").unwrap();
    drop_file(&mut window, &file);
    window.get_by_label("Cancel").click();
    window.run();
    assert!(window.query_by_label_contains("Will be added").is_none());
    assert!(!window.state().is_dirty());
    std::fs::remove_file(file).unwrap();
}
