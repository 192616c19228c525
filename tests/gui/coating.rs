//! The Coating workspace: air, window, choices, crew, amounts, the moment on the time chart.

use super::pictures::egui_role::PANEL;
use super::scripted::{choose, click_at, unfold};
use super::{EFFORT, settle, window, window_on};
use eframe::egui::{self, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::job_from_text;
use lapwright::gui::App;
use lapwright::job::Role as Does;
use lapwright::units::clock;
use lapwright::vehicle::{PanelId, Side};

const SIZE: [f32; 2] = [1280.0, 800.0];

fn open(window: &mut Harness<'_, App>, tab: &str) {
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with(tab))).click();
    window.run();
}

fn coating() -> Harness<'static, App> {
    let mut window = window(SIZE);
    open(&mut window, "Coating");
    window
}

fn says(window: &Harness<'_, App>, words: &str) -> bool {
    window.query_all_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains(words))).next().is_some()
}

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

fn press(window: &mut Harness<'_, App>, button: &str) {
    window.get_by_role_and_label(Role::Button, button).click_accesskit();
    window.run();
}

/// Takes an entry of a drop-down.
fn pick(window: &mut Harness<'_, App>, list: &str, entry: &str) {
    window.get_by_role_and_label(Role::ComboBox, list).click_accesskit();
    window.run();
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l == entry)).click_accesskit();
    window.run();
}

fn chart(window: &Harness<'_, App>) -> (egui::Rect, String) {
    let node = window.get_by(|n| n.role() == Role::Canvas && n.label().is_some_and(|l| l.starts_with("Time chart")));
    (node.rect(), node.accesskit_node().label().unwrap_or_default().clone())
}

#[test]
fn the_sunny_side_shortens_the_window_and_can_stop_the_work() {
    let mut window = coating();
    let before = window.state().job().air;
    window.get_by_role_and_label(Role::Slider, "Warmest panel, sunny side").focus();
    window.run();
    for _ in 0..8 {
        window.key_press(Key::ArrowRight);
        window.run();
    }
    let air = window.state().job().air;
    assert!(air.warmest() > before.warmest(), "{air:?}");
    assert_eq!(air.surface_temp_c, before.surface_temp_c);
    assert!(!window.state().is_settled(), "it is planned again while the slider moves");
    settle(&mut window);
    assert!(says(&window, "The air is right"));
    for _ in 0..60 {
        window.key_press(Key::ArrowRight);
        window.step();
    }
    window.run();
    assert!(says(&window, "Stop") && says(&window, "Let it cool in the shade"));
    settle(&mut window);
}

#[test]
fn a_window_tried_on_the_vehicle_counts_until_it_is_dropped() {
    let mut window = coating();
    let of_label = window.state().job().air;
    unfold(&mut window, "Tried on the vehicle");
    press(&mut window, "Note a tried window");
    enter(&mut window, "Levelled cleanly from", "40");
    enter(&mut window, "until", "170");
    let patch = window.state().job().patch.expect("it was noted");
    assert_eq!((patch.min_s, patch.max_s, patch.air), (40, 170, of_label));
    assert!(says(&window, &format!("{} to {}", clock(40), clock(170))));
    settle(&mut window);
    press(&mut window, "Go by the label again");
    assert_eq!(window.state().job().patch, None);
    assert!(!says(&window, &format!("{} to {}", clock(40), clock(170))));
    settle(&mut window);
}

#[test]
fn the_figures_of_the_product_are_the_shops_and_faults_are_refused() {
    let mut window = coating();
    for (fold, field, value) in [
        ("Limits of the label", "Humidity at least", "35"),
        ("How much", "For a square metre and layer", "2.5"),
        ("Afterwards", "May be driven after", "4"),
    ] {
        unfold(&mut window, fold);
        enter(&mut window, field, value);
    }
    let product = &window.state().job().product;
    assert!((product.min_humidity_pct.pct() - 35.0).abs() < 1e-9);
    assert!((product.amount_ml_per_m2 - 2.5).abs() < 1e-9);
    assert_eq!(product.drive_s, 4 * 3600);
    unfold(&mut window, "Window of the label");
    enter(&mut window, "and no later than", "30");
    assert!(window.query_by_label("That could not be done").is_some(), "a window can't end before it begins");
    window.get_by_label("Close").click();
    window.run();
    assert_eq!(window.state().job().product.window_max_s, 300);
}

#[test]
fn a_side_asked_for_costs_what_the_sheet_says() {
    let mut window = coating();
    unfold(&mut window, "What is asked of the order");
    pick(&mut window, "Side first", "left");
    settle(&mut window);
    assert_eq!(window.state().job().choices.side, Some(Side::Left));
    assert!(says(&window, "What you ask of the order costs"));
    assert!(says(&window, "that is proven"));
    press(&mut window, "Ask for nothing");
    assert!(window.state().job().choices.is_empty());
    settle(&mut window);
    assert!(!says(&window, "What you ask of the order costs"));
}

#[test]
fn the_chosen_panel_can_come_first_or_be_left_out() {
    let mut window = coating();
    choose(&mut window, "Bonnet, left");
    unfold(&mut window, "What is asked of the order");
    press(&mut window, "Bonnet, left comes first");
    assert_eq!(window.state().job().choices.first, [PanelId::from("bonnet-left")]);
    settle(&mut window);
    window.get_by_role_and_label(Role::CheckBox, "Leave Bonnet, left out").click_accesskit();
    window.run();
    assert!(says(&window, "Bonnet, left is not coated."));
    settle(&mut window);
}

/// One to four people, by hand: each has a lane, and who knows the work best levels.
#[test]
fn the_crew_grows_from_one_to_four() {
    let mut window = coating();
    open(&mut window, "Job");
    window
        .query_all_by(|n| n.role() == Role::Button && n.label().as_deref() == Some("Remove"))
        .next()
        .unwrap()
        .click_accesskit();
    window.run();
    let alone = window.state().job().crew.clone();
    assert_eq!(alone.len(), 1);
    assert_eq!(alone[0].roles, [Does::Apply, Does::Level], "the one who is left takes over what the other did");
    settle(&mut window);
    open(&mut window, "Coating");
    assert!(chart(&window).1.contains("for 1 person"), "{}", chart(&window).1);
    open(&mut window, "Job");
    for people in 2..=4 {
        press(&mut window, "Add somebody");
        assert_eq!(window.state().job().crew.len(), people);
        settle(&mut window);
        open(&mut window, "Coating");
        unfold(&mut window, "Who levels");
        if window.query_by_role_and_label(Role::Button, "Let experience decide who levels").is_some() {
            press(&mut window, "Let experience decide who levels");
        }
        settle(&mut window);
        assert!(window.query_by_role_and_label(Role::Button, "Let experience decide who levels").is_none());
        let levels = window.state().job().crew.iter().filter(|m| m.roles.contains(&Does::Level)).count();
        assert_eq!(levels, if people == 2 { 1 } else { 2 });
        assert!(chart(&window).1.contains(&format!("for {people} people")), "{}", chart(&window).1);
        unfold(&mut window, "Who levels");
        open(&mut window, "Job");
    }
}

#[test]
fn the_moment_is_dragged_and_both_workers_move_round_the_vehicle() {
    let mut window = coating();
    let area = chart(&window).0;
    let at = |share: f32| egui::pos2(area.left() + 132.0 + (area.width() - 144.0) * share, area.center().y);
    let look = |window: &mut Harness<'_, App>| window.render().unwrap();
    let mut seen = Vec::new();
    for share in [0.1, 0.5, 0.9] {
        click_at(&mut window, at(share));
        // Away from the bars, so that no tip covers the map.
        window.hover_at(egui::pos2(4.0, 4.0));
        window.run();
        seen.push(look(&mut window));
    }
    assert!(seen[0] != seen[1] && seen[1] != seen[2]);
    // A drag goes through the moments in between.
    window.hover_at(at(0.2));
    window.run();
    window.drag_at(at(0.2));
    window.run();
    let begun = look(&mut window);
    window.hover_at(at(0.4));
    window.run();
    assert!(look(&mut window) != begun);
    window.drop_at(at(0.4));
    window.run();
}

#[test]
fn what_is_needed_is_told_for_the_vehicle_and_for_each_panel() {
    let mut window = coating();
    unfold(&mut window, "How much is needed");
    for words in ["First load of an applicator", "10 drops", "Bottles of 30", "Applicators", "Towels to level"] {
        assert!(says(&window, words), "{words}");
    }
    unfold(&mut window, "Panel by panel");
    assert!(says(&window, "Bonnet, left"));
}

#[test]
fn a_job_with_choices_opens_with_them() {
    let text = lapwright::file::SAMPLE.replacen(
        "  product: (",
        "  patch: Some((min_s: 50, max_s: 200, air: (air_temp_c: 22, humidity_pct: 45, surface_temp_c: 21))),\n  \
         order_choices: (side: Some(left), paint_first: true, first: [\"bonnet-left\"]),\n  product: (",
        1,
    );
    let loaded = job_from_text("with choices", &text).expect("it opens");
    assert_eq!(loaded.job.choices.first, [PanelId::from("bonnet-left")]);
    let mut window = window_on(loaded, EFFORT, SIZE);
    settle(&mut window);
    open(&mut window, "Coating");
    assert!(says(&window, "What you ask of the order costs"));
    assert!(window.query_by_role_and_label(PANEL, "Bonnet, left").is_some());
}
