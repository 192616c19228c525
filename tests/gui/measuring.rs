//! The measuring side of the survey, step by step: checks of the gauge, a second survey, the ledger, gloss.

use super::pictures::egui_role::PANEL;
use super::window;
use eframe::egui::{Key, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::gui::App;
use lapwright::job::SurveyStage;
use lapwright::vehicle::PanelId;

/// High enough that nothing has to be scrolled to.
const SIZE: [f32; 2] = [1280.0, 3000.0];

fn press(window: &mut Harness<'_, App>, button: &str) {
    window.get_by_role_and_label(Role::Button, button).click_accesskit(); // it may lie below what is on screen
    window.run();
}

/// Types into an empty field; `enter` hands it over.
fn fill(window: &mut Harness<'_, App>, field: &str, text: &str, enter: bool) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    window.run();
    if enter {
        window.key_press(Key::Enter);
        window.run();
    }
}

fn check(window: &mut Harness<'_, App>, certified: &str, shown: &str) {
    fill(window, "Certified, 0 for the bare plate", certified, false);
    fill(window, "Gauge shows", shown, true);
}

fn choose(window: &mut Harness<'_, App>, panel: &str) {
    window.get_by_role_and_label(PANEL, panel).click_accesskit();
    window.run();
}

fn open(window: &mut Harness<'_, App>, header: &str) {
    window.get_by(|n| n.role() != Role::Label && n.label().is_some_and(|l| l.starts_with(header))).click_accesskit();
    window.run();
}

#[test]
fn a_check_that_fails_marks_the_readings_and_removing_it_brings_them_back() {
    let mut window = window(SIZE);
    let checks = window.state().job().surveys[0].checks.len();
    assert!(window.query_by_label_contains("Passed, also after the last reading").is_some());
    check(&mut window, "126,3", "140");
    assert_eq!(window.state().job().surveys[0].checks.len(), checks + 1);
    assert!(window.query_by_label_contains("readings don't count, because the gauge failed").is_some());
    choose(&mut window, "Roof, right");
    assert!(window.query_by_label_contains("but nothing is decided by it").is_some());
    window.key_press(Key::Escape);
    window.run();
    let removes: Vec<_> = window.query_all_by_role_and_label(Role::Button, "Remove").collect();
    removes.last().unwrap().click_accesskit();
    window.run();
    assert_eq!(window.state().job().surveys[0].checks.len(), checks);
    choose(&mut window, "Roof, right");
    assert!(window.query_by_label("at least, µm").is_some());
}

#[test]
fn a_second_survey_begins_and_its_readings_are_compared() {
    let mut window = window(SIZE);
    press(&mut window, "Measure again after polishing");
    assert_eq!(window.state().job().surveys[1].stage, SurveyStage::After);
    assert!(window.query_by_label("Drop this survey").is_some());
    choose(&mut window, "Roof rail, left");
    let record = |window: &Harness<'_, App>| {
        window.state().job().record(&PanelId::from("roof-rail-left")).unwrap().spots.clone()
    };
    let before: usize = record(&window).iter().map(|s| s.count_in(0)).sum();
    // Three micrometres less than each spot had.
    for value in ["100.7", "97.3", "99.3"].into_iter().flat_map(|value| [value; 3]) {
        let field = window.get_by(|n| n.role() == Role::TextInput && n.label().is_some_and(|l| l.starts_with("Spot")));
        field.focus();
        window.run();
        window
            .get_by(|n| n.role() == Role::TextInput && n.label().is_some_and(|l| l.starts_with("Spot")))
            .type_text(value);
        window.run();
        window.key_press(Key::Enter);
        window.run();
    }
    let spots = record(&window);
    assert_eq!(spots.iter().map(|s| s.count_in(0)).sum::<usize>(), before, "the first survey is as it was");
    assert_eq!(spots.iter().map(|s| s.count_in(1)).sum::<usize>(), 9);
    choose(&mut window, "Roof rail, left");
    assert!(window.query_by_label("Before and after").is_some());
    assert!(window.query_by_label_contains("Removed ").is_some());
}

#[test]
fn an_earlier_visit_is_noted_on_a_panel_and_taken_out_again() {
    let mut window = window(SIZE);
    choose(&mut window, "Bonnet, left");
    open(&mut window, "Earlier visits");
    fill(&mut window, "Day or name of the visit", "Two years ago", false);
    fill(&mut window, "Probably went", "1", false);
    fill(&mut window, "At most went", "1.6", false);
    press(&mut window, "Add to this panel");
    let removed = |window: &Harness<'_, App>| {
        window.state().job().record(&PanelId::from("bonnet-left")).unwrap().removals.removed().um()
    };
    assert!((removed(&window) - 1.6).abs() < 1e-9);
    assert!(window.query_by_label("Earlier visits, at most 1.6\u{202f}µm in all").is_some());
    window.key_press(Key::Escape);
    window.run();
    choose(&mut window, "Bonnet, left");
    assert!(window.query_by_label("Two years ago").is_some());
}

#[test]
fn the_next_visit_is_a_job_of_its_own_that_is_not_saved_yet() {
    let mut window = window(SIZE);
    press(&mut window, "Next visit of this vehicle");
    assert!(window.state().is_dirty(), "it is in no file");
    let job = window.state().job();
    assert!(job.panels.values().all(|r| r.spots.is_empty()));
    let visits = lapwright::insight::earlier_visits(job);
    assert!(visits.iter().any(|v| v.visit == "4 May"), "{visits:?}");
}

#[test]
fn gauge_assurance_and_borders_are_set_in_the_window() {
    let mut window = window(SIZE);
    window.get_by_role_and_label(Role::ComboBox, "Principle").click();
    window.run();
    window.get_by_label("ultrasonic").click_accesskit();
    window.run();
    assert_eq!(window.state().job().gauge.principle, lapwright::measure::GaugePrinciple::Ultrasonic);
    window.get_by_role_and_label(Role::ComboBox, "Sure of that").click();
    window.run();
    window.get_by_label("99\u{202f}%").click_accesskit();
    window.run();
    assert!((window.state().job().assurance.confidence - 0.99).abs() < 1e-12);
    open(&mut window, "Borders of the film");
    fill_number(&mut window, "Refinished, above", "180");
    assert!((window.state().job().policy.bands.refinished_above_um.um() - 180.0).abs() < 1e-12);
    press(&mut window, "Back to the defaults");
    assert_eq!(window.state().job().policy.bands, lapwright::measure::FilmBands::default());
}

fn fill_number(window: &mut Harness<'_, App>, field: &str, text: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.key_press_modifiers(eframe::egui::Modifiers::COMMAND, Key::A);
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

#[test]
fn a_gloss_reading_goes_to_the_angle_that_the_rule_asks_for() {
    let mut window = window(SIZE);
    choose(&mut window, "Roof, left");
    open(&mut window, "Gloss");
    assert!(window.query_by_label_contains("Read at 60° first").is_some());
    fill(&mut window, "Gloss reading", "91.5", true);
    assert!(window.query_by_label_contains("so 20° tells more").is_some());
    fill(&mut window, "Gloss reading", "82", true);
    let gloss = window.state().job().record(&PanelId::from("roof-left")).unwrap().gloss.clone();
    let degrees: Vec<f64> = gloss.iter().map(|g| g.geometry.degrees()).collect();
    assert_eq!(degrees, [60.0, 20.0]);
}

#[test]
fn an_open_point_leads_to_its_panel() {
    let mut window = window(SIZE);
    press(&mut window, "Go to Front door, right");
    let panel = window.get_by_role_and_label(PANEL, "Front door, right");
    assert_eq!(panel.accesskit_node().is_selected(), Some(true));
    assert!(window.query_by_label_contains("suggests that it was painted again").is_some());
    open(&mut window, "Details");
    assert!(window.query_by_label("Effective degrees of freedom").is_some());
}
