//! Correction in the window: goal, rules, steps, test spot, table, refusals.

use super::pictures::egui_role::PANEL;
use super::window;
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::App;
use lapwright::insight::{Insight, PanelInsight};
use lapwright::polish::{Goal, Level};
use lapwright::vehicle::{PanelId, load_embedded};

/// Tall, so that the whole right side is on screen.
const SIZE: [f32; 2] = [1280.0, 2400.0];

fn correction() -> Harness<'static, App> {
    let mut window = window(SIZE);
    open(&mut window, "Correction");
    window
}

fn open(window: &mut Harness<'_, App>, name: &str) {
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with(name))).click();
    window.run();
}

fn click(window: &mut Harness<'_, App>, label: &str) {
    window.get_by_label(label).click_accesskit(); // it may lie below what is on screen
    window.run();
}

/// Takes another entry of a drop-down.
fn pick(window: &mut Harness<'_, App>, list: &str, entry: &str) {
    window.get_by_role_and_label(Role::ComboBox, list).click();
    window.run();
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l == entry)).click_accesskit();
    window.run();
}

fn choose(window: &mut Harness<'_, App>, panel: &str) {
    window.get_by_role_and_label(PANEL, panel).click_accesskit();
    window.run();
}

fn fill(window: &mut Harness<'_, App>, field: &str, value: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    if value.is_empty() {
        window.key_press(Key::Delete);
    } else {
        window.get_by_role_and_label(Role::TextInput, field).type_text(value);
    }
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

/// Whether a text on screen begins so.
fn says(window: &Harness<'_, App>, begins: &str) -> bool {
    let begins = |text: Option<String>| text.is_some_and(|t| t.starts_with(begins));
    window.root().children_recursive().any(|n| begins(n.accesskit_node().value()))
}

/// What follows for a panel from the job as it is in the window.
fn planned(window: &Harness<'_, App>, panel: &str) -> PanelInsight {
    let template = load_embedded(&window.state().job().vehicle.template).unwrap();
    let index = template.index_of(&PanelId::from(panel)).unwrap();
    Insight::new(window.state().job(), &template).panels[index].clone()
}

fn row<'w>(window: &'w Harness<'_, App>, begins: &str) -> egui_kittest::Node<'w> {
    let begins = begins.to_owned();
    window.get_by(move |n| n.role() == Role::Row && n.label().is_some_and(|l| l.starts_with(&begins)))
}

#[test]
fn a_slider_drag_is_one_step_of_undo_and_shows_its_price_at_once() {
    let mut window = correction();
    let before = window.state().job().goal;
    let rail = window.get_by_role_and_label(Role::Slider, "Share of the defects that shall go").rect();
    let at = |share: f32| rail.left_top() + eframe::egui::vec2(rail.width().min(176.0) * share, rail.height() / 2.0);
    window.hover_at(at(0.8));
    window.run();
    window.drag_at(at(0.8));
    window.run();
    let mut seen = Vec::new();
    for share in [0.7, 0.55, 0.4, 0.3, 0.2] {
        window.hover_at(at(share));
        window.run();
        seen.push(window.state().job().goal.share());
    }
    window.drop_at(at(0.2));
    window.run();
    assert!(seen.is_sorted_by(|a, b| a > b), "the goal follows the pointer: {seen:?}");
    let price = window.state().job().goal;
    assert!(matches!(price, Goal::Correct { share } if share < 0.5), "{price:?}");
    window.key_press(Key::Escape);
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job().goal, before, "one step takes the whole drag back");
    assert!(!window.state().is_dirty());
}

#[test]
fn a_rule_of_the_shop_changed_changes_the_budget_and_there_is_a_way_back() {
    let mut window = correction();
    let before = planned(&window, "bonnet-left").budget.allowed;
    click(&mut window, "What may be taken off");
    fill(&mut window, "Most in one visit", "1,5");
    let after = planned(&window, "bonnet-left");
    assert!((after.budget.allowed.um() - 1.5).abs() < 1e-9 && after.budget.allowed < before);
    assert_eq!(after.budget.deciding().unwrap().what, "cap for one visit");
    assert!(after.removal_upper() <= after.budget.allowed);
    click(&mut window, "Back to the defaults");
    assert_eq!(planned(&window, "bonnet-left").budget.allowed, before);
    assert!(!window.state().is_dirty(), "the sample has the defaults");
}

#[test]
fn a_test_spot_changes_the_plan() {
    let mut window = correction();
    let before = planned(&window, "bonnet-left").polish;
    click(&mut window, "Test spot");
    assert!(says(&window, "Next: Fine polish, soft pad"), "the gentlest first");
    click(&mut window, "Enter a result");
    pick(&mut window, "Step", "Medium polish, medium pad");
    fill(&mut window, "Passes", "3");
    fill(&mut window, "Removed", "2.7");
    let tests = &window.state().job().test_spots;
    assert_eq!((tests.results.len(), tests.results[0].passes), (1, 3));
    let after = planned(&window, "bonnet-left");
    assert_ne!(after.polish.steps, before.steps, "twice the removal of a pass is another plan");
    assert!(after.removal_upper() <= after.budget.allowed);
    fill(&mut window, "Defects that went", "100");
    assert!(says(&window, "Next: Fine polish"), "the gentlest one is still to be tried");
    fill(&mut window, "Removed", "");
    assert_eq!(window.state().job().test_spots.results[0].removal, None, "an emptied field is no removal of zero");
}

#[test]
fn a_matte_panel_is_refused_with_the_reason() {
    let mut window = correction();
    choose(&mut window, "Bonnet, left");
    assert_ne!(planned(&window, "bonnet-left").polish.level, Level::Leave);
    open(&mut window, "Survey");
    pick(&mut window, "Finish", "matte");
    open(&mut window, "Correction");
    let plan = planned(&window, "bonnet-left");
    assert_eq!((plan.polish.level, plan.polish.steps.len(), plan.polish.seconds), (Level::Leave, 0, 0));
    assert!(says(&window, "Not polished: matte paint"), "the reason stands on the sheet");
    assert!(window.query_by_role_and_label(Role::ComboBox, "At most").is_none(), "there is nothing to hold");
}

#[test]
fn a_level_held_by_hand_is_kept_on_that_panel_only() {
    let mut window = correction();
    choose(&mut window, "Bonnet, left");
    let other = planned(&window, "bonnet-right").polish.level;
    pick(&mut window, "At most", "Gloss");
    assert_eq!(planned(&window, "bonnet-left").polish.level, Level::Gloss);
    assert_eq!(planned(&window, "bonnet-right").polish.level, other);
    assert!(says(&window, "Will look different from Bonnet, right"), "and somebody is told");
}

#[test]
fn the_table_sorts_and_its_rows_choose_by_pointer_and_keys() {
    let mut window = correction();
    let chosen = |window: &Harness<'_, App>, row_name: &str| row(window, row_name).accesskit_node().is_selected();
    window.get_by_label("Sort by panel").click();
    window.run();
    let names = |window: &Harness<'_, App>| -> Vec<String> {
        let mut rows: Vec<_> = window
            .get_all_by_role(Role::Row)
            .map(|n| (n.rect().top(), n.accesskit_node().label().unwrap_or_default()))
            .collect();
        rows.sort_by(|a, b| a.0.total_cmp(&b.0));
        rows.into_iter().map(|(_, label)| label.split(", least film").next().unwrap_or_default().to_owned()).collect()
    };
    let rising = names(&window);
    assert!(rising.is_sorted(), "{rising:?}");
    window.get_by_label_contains("Sort by panel").click();
    window.run();
    let falling = names(&window);
    assert_eq!(falling.iter().rev().collect::<Vec<_>>(), rising.iter().collect::<Vec<_>>());
    row(&window, &falling[0]).click();
    window.run();
    assert_eq!(chosen(&window, &falling[0]), Some(true));
    assert!(says(&window, &falling[0]), "its sheet is at the right");
    for next in &falling[1..] {
        window.key_press(Key::ArrowDown);
        window.run();
        assert_eq!(chosen(&window, next), Some(true), "also where the row has to be brought into view");
    }
    assert_eq!(chosen(&window, &falling[0]), Some(false));
}

#[test]
fn steps_are_added_copied_moved_renamed_removed_and_set_back() {
    let mut window = correction();
    click(&mut window, "Steps of the shop");
    let names = |w: &Harness<'_, App>| w.state().job().steps.iter().map(|s| s.name.clone()).collect::<Vec<_>>();
    let start = names(&window);
    click(&mut window, "Add a step");
    assert_eq!(names(&window).len(), start.len() + 1);
    fill(&mut window, "Name of the step", "Spot polish");
    assert_eq!(names(&window)[start.len()], "Spot polish");
    click(&mut window, "Up");
    assert_eq!(names(&window)[start.len() - 1], "Spot polish", "the open step goes with its place");
    click(&mut window, "Copy");
    assert_eq!(names(&window)[start.len()], "Spot polish (2)");
    fill(&mut window, "Removal of a pass", "0.33");
    assert!((window.state().job().steps[start.len()].removal_um.um() - 0.33).abs() < 1e-9);
    click(&mut window, "Remove");
    assert_eq!(names(&window).len(), start.len() + 1);
    click(&mut window, "Back to the starting set");
    assert_eq!(names(&window), start);
}
