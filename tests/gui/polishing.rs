//! People polishing together, in the Correction workspace.

use super::pictures::egui_role::{PANEL, TAB};
use super::{EFFORT, settle, window};
use eframe::egui::{self, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::App;
use lapwright::insight::{Insight, PolishOrder, polish_order, polish_work};
use lapwright::vehicle::Naming;
use lapwright::work::{Task, find_task};
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

const SIZE: [f32; 2] = [1280.0, 800.0];

fn correction() -> Harness<'static, App> {
    let mut window = window(SIZE);
    open(&mut window, "Correction");
    show(&mut window, "Order");
    window
}

/// Another overlay; with the order on the map the time chart stands below it.
fn show(window: &mut Harness<'_, App>, overlay: &str) {
    window.get_by_role_and_label(Role::Button, overlay).click();
    window.run();
}

fn open(window: &mut Harness<'_, App>, tab: &str) {
    window.get_by(|n| n.role() == TAB && n.label().is_some_and(|l| l.starts_with(tab))).click();
    window.run();
}

/// The order that the window must have found: the same search without a window.
fn expected(window: &Harness<'_, App>) -> (PolishOrder, Vec<String>) {
    let loaded = lapwright::file::job_from_text("the sample", lapwright::file::SAMPLE).unwrap();
    assert_eq!(loaded.job, *window.state().job());
    let insight = Insight::new(&loaded.job, &loaded.template);
    let work = polish_work(&loaded.job, &loaded.template, &insight);
    let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
    let found = find_task(&task, EFFORT, &AtomicBool::new(false), &|_| ()).unwrap();
    let names = loaded.template.panels.iter().map(|p| p.name(Naming::Uk)).collect();
    (polish_order(&loaded.job, &loaded.template, &work, &found), names)
}

fn chart(window: &Harness<'_, App>) -> (egui::Rect, String) {
    let node = window.get_by(|n| n.role() == Role::Canvas && n.label().is_some_and(|l| l.starts_with("Time chart")));
    (node.rect(), node.accesskit_node().label().unwrap_or_default().clone())
}

fn click_at(window: &mut Harness<'_, App>, at: egui::Pos2) {
    window.hover_at(at);
    window.run();
    window.drag_at(at);
    window.run();
    window.drop_at(at);
    window.run();
}

/// Types a number into a field of the sheet and enters it.
fn enter(window: &mut Harness<'_, App>, field: &str, value: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(value);
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

fn says(window: &Harness<'_, App>, words: &str) -> bool {
    window.query_all_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains(words))).next().is_some()
}

#[test]
fn the_order_of_polishing_stands_in_correction_and_that_of_coating_in_coating() {
    let mut window = correction();
    let (order, _) = expected(&window);
    let (_, text) = chart(&window);
    assert_eq!(
        text,
        format!(
            "Time chart of polishing: {} steps for 2 people in {}",
            order.rows.len(),
            lapwright::units::clock(order.takes)
        )
    );
    assert!(says(&window, "that is proven"));
    open(&mut window, "Coating");
    assert!(chart(&window).1.starts_with("Time chart of coating"), "{}", chart(&window).1);
}

#[test]
fn a_click_on_a_bar_chooses_its_panel_and_tells_who_and_when() {
    let mut window = correction();
    let (order, names) = expected(&window);
    let area = chart(&window).0;
    for worker in [1, 0] {
        let first = order.rows.iter().find(|r| r.worker == worker && r.at.start == 0).unwrap();
        // The lanes begin right of the names and share the height below the clock.
        let lane = (area.height() - 28.0) / 2.0;
        click_at(&mut window, area.min + egui::vec2(132.0 + 8.0, 20.0 + lane * (worker as f32 + 0.5)));
        let name = &names[first.panel];
        assert!(window.get_by_role_and_label(PANEL, name).accesskit_node().is_selected() == Some(true), "{name}");
        assert!(says(&window, "Who and when"));
    }
}

#[test]
fn the_map_shows_the_order_of_polishing_when_asked() {
    let mut window = correction();
    show(&mut window, "Polish");
    let polish = window.render().unwrap();
    show(&mut window, "Order");
    let order = window.render().unwrap();
    assert_ne!(polish, order);
    open(&mut window, "Coating");
    assert_ne!(order, window.render().unwrap(), "numbers of coating are others");
}

#[test]
fn another_goal_brings_a_new_order_while_the_old_one_is_marked() {
    let mut window = correction();
    let before = chart(&window).1;
    window.get_by_role_and_label(Role::Slider, "Share of the defects that shall go").focus();
    window.run();
    window.key_press(Key::ArrowLeft);
    window.step();
    window.step();
    assert!(!window.state().is_settled());
    assert_eq!(chart(&window).1, before, "the old order stays on screen");
    assert!(says(&window, "Out of date"));
    settle(&mut window);
    assert!(!says(&window, "Out of date"));
}

/// Computed: 1 + 10 parts are 9.09 %, 1 in 10 parts is 10 %. 1 US fl oz in 2 US gal is 1 to 256, 0.389 % (common practice).
#[test]
fn the_calculator_spells_out_both_readings_of_a_ratio() {
    let mut window = correction();
    window.get_by_label("Dilution").click_accesskit();
    window.run();
    assert!(says(&window, "0.39\u{202f}%"), "1:256 to begin with");
    enter(&mut window, "Mixture wanted", "1000");
    window.get_by_role_and_label(Role::Button, "1:10").click_accesskit();
    window.run();
    assert!(says(&window, "1 part to 10 parts of water"));
    assert!(says(&window, "90.9\u{202f}ml and 909\u{202f}ml of water, 9.09\u{202f}%"));
    assert!(says(&window, "1 part in 10 parts of the mixture"));
    assert!(says(&window, "100\u{202f}ml and 900\u{202f}ml of water, 10.00\u{202f}%"));
    assert!(!window.state().is_dirty(), "a calculation changes nothing in the job");
}

#[test]
fn prices_are_entered_and_taken_back() {
    let mut window = correction();
    window.get_by_label("Cost, for the shop only").click_accesskit();
    window.run();
    assert!(says(&window, "Polishing costs"));
    enter(&mut window, "An hour of one person", "50");
    assert!((window.state().job().shop.prices.labour_per_hour - 50.0).abs() < 1e-9);
    assert!(window.state().is_dirty());
    window.key_press(Key::Escape);
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert!(!window.state().is_dirty());
}
