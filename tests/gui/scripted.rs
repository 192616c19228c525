//! What a person does with the window, step by step.

use super::pictures::egui_role::PANEL;
use super::{settle, window};
use eframe::egui::{self, Key, Modifiers, Role, ViewportEvent, ViewportId};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::App;
use lapwright::vehicle::PanelId;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// A field of the coating sheet.
const FIELD: (Role, &str) = (Role::TextInput, "Apply a square metre in");
const SIZE: [f32; 2] = [1280.0, 800.0];

pub(super) fn choose(window: &mut Harness<'_, App>, panel: &str) {
    window.get_by_role_and_label(PANEL, panel).click_accesskit();
    window.run();
}

fn open_workspace(window: &mut Harness<'_, App>, name: &str) {
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with(name))).click();
    window.run();
}

/// Opens or closes a part of the sheet.
pub(super) fn unfold(window: &mut Harness<'_, App>, title: &str) {
    window.get_by_role_and_label(Role::DisclosureTriangle, title).click_accesskit();
    window.run();
}

pub(super) fn readings(window: &Harness<'_, App>, panel: &str) -> usize {
    window.state().job().record(&PanelId::from(panel)).map_or(0, |r| r.reading_count())
}

/// Types a number and Enter, wherever the focus is.
fn read(window: &mut Harness<'_, App>, value: &str) {
    window.input_mut().events.push(egui::Event::Text(value.to_owned()));
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

pub(super) fn click_at(window: &mut Harness<'_, App>, at: egui::Pos2) {
    window.hover_at(at);
    window.run();
    window.drag_at(at);
    window.run();
    window.drop_at(at);
    window.run();
}

/// A file of this test run, gone with it.
pub(super) fn scratch(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("gui");
    std::fs::create_dir_all(&folder).unwrap();
    folder.join(format!("{}-{name}", std::process::id()))
}

/// A label with exactly this text.
pub(super) fn says(window: &Harness<'_, App>, text: &str) -> bool {
    window.query_by(|n| n.role() == Role::Label && n.value().as_deref() == Some(text)).is_some()
}

#[derive(Debug)]
struct Dropped(PathBuf);

impl egui::DroppedFile for Dropped {
    fn path(&self) -> &Path {
        &self.0
    }
    fn bytes(&self) -> Result<Vec<u8>, String> {
        std::fs::read(&self.0).map_err(|e| e.to_string())
    }
}

pub(super) fn drop_file(window: &mut Harness<'_, App>, path: &Path) {
    window.input_mut().dropped_files.push(Arc::new(Dropped(path.to_owned())));
    window.run();
}

#[test]
fn a_click_on_a_panel_shows_it_at_the_right() {
    let mut window = window(SIZE);
    let middle = window.get_by_role_and_label(PANEL, "Roof, right").rect().center();
    click_at(&mut window, middle);
    assert!(says(&window, "Roof, right"));
    assert!(window.get_by_role_and_label(PANEL, "Roof, right").accesskit_node().is_selected() == Some(true));
}

#[test]
fn a_reading_typed_and_entered_changes_the_plan_and_can_be_taken_back() {
    let mut window = window(SIZE);
    choose(&mut window, "Roof rail, right");
    assert_eq!(readings(&window, "roof-rail-right"), 0);
    assert!(window.query_by_label_contains("Not read yet").is_some());
    for value in ["101", "101,5", "100.5"] {
        read(&mut window, value);
    }
    assert_eq!(readings(&window, "roof-rail-right"), 3);
    assert!(window.query_by_label("mean, µm").is_some(), "the mean is shown at once");
    window.key_press(Key::Escape); // out of the field, so that Ctrl+Z is for the job
    window.run();
    for left in [2, 1, 0] {
        window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
        window.run();
        assert_eq!(readings(&window, "roof-rail-right"), left);
    }
    assert!(!window.state().is_dirty(), "back where it was opened");
    window.key_press_modifiers(Modifiers::COMMAND.plus(Modifiers::SHIFT), Key::Z);
    window.run();
    assert_eq!(readings(&window, "roof-rail-right"), 1);
}

#[test]
fn a_panel_is_read_by_number_and_enter_alone_and_the_next_one_follows() {
    let mut window = window(SIZE);
    choose(&mut window, "Roof rail, right");
    let mut typed = 0;
    while says(&window, "Roof rail, right") && typed < 40 {
        read(&mut window, "99");
        typed += 1;
    }
    assert_eq!(readings(&window, "roof-rail-right"), typed);
    assert_eq!(typed % 3, 0, "three readings a spot");
    assert!(says(&window, "Sill, right"), "the other panel that is not read yet is chosen");
}

#[test]
fn what_is_not_a_thickness_is_not_taken() {
    let mut window = window(SIZE);
    choose(&mut window, "Roof rail, right");
    for value in ["abc", "-5", "1e9", "1.2.3", "99999"] {
        read(&mut window, value);
        assert_eq!(readings(&window, "roof-rail-right"), 0, "{value}");
        assert!(value == "abc" || window.query_by_label_contains("Not taken").is_some(), "{value}");
    }
}

#[test]
fn a_defect_goes_where_it_is_clicked_and_changes_the_order_when_it_must() {
    let mut window = window(SIZE);
    choose(&mut window, "Wing, left");
    let before = window.state().job().record(&PanelId::from("wing-left")).map_or(0, |r| r.defects.len());
    window.get_by_role_and_label(Role::ComboBox, "New defect").click();
    window.run();
    window.get_by_label("Clear coat failure").click_accesskit();
    window.run();
    let middle = window.get_by_role_and_label(PANEL, "Wing, left").rect().center();
    click_at(&mut window, middle + egui::vec2(0.0, -20.0));
    let record = Arc::clone(window.state().job().record(&PanelId::from("wing-left")).unwrap());
    assert_eq!(record.defects.len(), before + 1);
    assert!(!window.state().is_settled(), "failing clear is not coated, so the old order is out of date at once");
    settle(&mut window);
}

#[test]
fn slower_hands_bring_a_new_order_while_the_old_one_is_marked() {
    let mut window = window(SIZE);
    open_workspace(&mut window, "Coating");
    unfold(&mut window, "How fast you work");
    window.get_by_role_and_label(FIELD.0, FIELD.1).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.get_by_role_and_label(FIELD.0, FIELD.1).type_text("60");
    window.run();
    window.key_press(Key::Enter);
    window.step();
    window.step();
    assert!((window.state().job().product.apply_s_per_m2 - 60.0).abs() < 1e-9);
    assert!(!window.state().is_settled());
    settle(&mut window);
}

#[test]
fn an_accepted_order_is_saved_with_the_job() {
    let mut window = window(SIZE);
    open_workspace(&mut window, "Coating");
    window.get_by_label("Accept this order").click();
    window.run();
    assert!(window.state().job().order.is_some());
    assert!(window.query_by_label_contains("accepted and saved").is_some());
}

#[test]
fn a_damaged_file_is_refused_and_the_window_keeps_its_job() {
    let mut window = window(SIZE);
    let bad = scratch("bad.job.ron");
    std::fs::write(&bad, "(format: \"job/1\", name: 5)").unwrap();
    let before = Arc::clone(window.state().job());
    drop_file(&mut window, &bad);
    assert!(window.query_by_label("That could not be done").is_some());
    assert!(Arc::ptr_eq(&before, window.state().job()));
    window.get_by_label("Close").click();
    window.run();
    assert!(window.query_by_label("That could not be done").is_none());
    std::fs::remove_file(bad).unwrap();
}

#[test]
fn closing_asks_first_when_something_is_unsaved() {
    let mut window = window(SIZE);
    open_workspace(&mut window, "Coating");
    window.get_by_label("Accept this order").click();
    window.run();
    let close = |window: &mut Harness<'_, App>| {
        window.input_mut().viewports.entry(ViewportId::ROOT).or_default().events.push(ViewportEvent::Close);
        window.step();
        window.input_mut().viewports.entry(ViewportId::ROOT).or_default().events.clear();
        window.run();
    };
    close(&mut window);
    assert!(window.query_by_label_contains("Save “").is_some());
    window.get_by_label("Cancel").click();
    window.run();
    assert!(window.query_by_label_contains("Save “").is_none());
    assert!(window.state().is_dirty());
}

#[test]
fn a_job_is_opened_changed_saved_and_opened_again() {
    let file = scratch("round.job.ron");
    std::fs::write(&file, lapwright::file::SAMPLE).unwrap();
    let mut window = window(SIZE);
    drop_file(&mut window, &file);
    settle(&mut window);
    open_workspace(&mut window, "Coating");
    window.get_by_label("Accept this order").click();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    assert!(!window.state().is_dirty());
    let saved = lapwright::file::read_job(&lapwright::file::RealDisk, &file).unwrap();
    assert_eq!(*saved.job, **window.state().job());
    assert!(saved.job.order.is_some());
    std::fs::remove_file(&file).unwrap();
    std::fs::remove_file(file.with_file_name(format!("{}~", file.file_name().unwrap().to_string_lossy()))).unwrap();
}

#[test]
fn arrow_keys_go_from_panel_to_panel_along_seams() {
    let mut window = window(SIZE);
    choose(&mut window, "Bonnet, left");
    window.key_press(Key::ArrowDown);
    window.run();
    assert!(says(&window, "Wing, left"));
    window.key_press(Key::ArrowUp);
    window.run();
    assert!(says(&window, "Bonnet, left"));
}

#[test]
fn nothing_is_drawn_while_nothing_happens() {
    let mut window = window(SIZE);
    window.run();
    let asked = window.output().viewport_output[&ViewportId::ROOT].repaint_delay;
    assert!(asked > std::time::Duration::from_hours(1), "a repaint is asked for in {asked:?}");
}
