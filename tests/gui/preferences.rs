//! Preferences: put to use at once, kept, and never lost when the file is broken.

use super::commands::{run_command, tells};
use super::scripted::{choose, says, unfold};
use super::{EFFORT, labels, settle, window_of};
use eframe::egui::{self, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{Places, SAMPLE, job_from_text};
use lapwright::gui::App;
use std::path::Path;

const SIZE: [f32; 2] = [1280.0, 800.0];

/// A window of somebody whose things lie below a folder.
pub(super) fn at_home(folder: &Path) -> Harness<'static, App> {
    let places = Places::below(folder);
    let sample = job_from_text("the sample", SAMPLE).unwrap();
    window_of(SIZE, move || App::with_effort(sample, None, EFFORT).with_home(places))
}

fn kept(folder: &Path) -> String {
    std::fs::read_to_string(folder.join("config").join("preferences.ron")).unwrap_or_default()
}

/// Closes the hints of the first time.
pub(super) fn no_hints(window: &mut Harness<'_, App>) {
    settle(window);
    window.get_by_label("No more hints").click();
    window.run();
}

#[test]
fn the_first_time_has_five_hints_and_the_second_none() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    window.run();
    for at in 1..=5 {
        assert!(says(&window, &format!("{at} of 5")), "{at}");
        window.get_by_label(if at < 5 { "Next hint" } else { "Done" }).click();
        window.run();
    }
    assert!(!says(&window, "5 of 5"));
    assert!(kept(folder.path()).contains("hints_seen: true"));
    let mut again = at_home(folder.path());
    again.run();
    assert!(!says(&again, "1 of 5"));
    run_command(&mut again, "show the hints again");
    assert!(says(&again, "1 of 5"));
}

#[test]
fn film_in_mil_is_shown_and_typed_everywhere_and_the_job_keeps_micrometres() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    settle(&mut window);
    let mean = |window: &Harness<'_, App>, unit: &str| choose_number(window, &format!("mean, {unit}"));
    choose(&mut window, "Bonnet, left");
    let um = mean(&window, "µm");
    run_command(&mut window, "film in mil");
    let mil = mean(&window, "mil");
    // An inch is 25.4 mm exactly, so a thousandth is 25.4 µm (ISO 80000-3); the mean is shown to a tenth.
    assert!((um / 25.4 - mil).abs() <= 0.05 + 0.5 / 25.4, "{um} µm, {mil} mil");
    assert!(kept(folder.path()).contains("film: mil"), "{}", kept(folder.path()));
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num3);
    window.run();
    assert!(window.query_by_label_contains("µm").is_none(), "nothing is left in µm");
    // Somebody who comes again finds it so.
    let mut again = at_home(folder.path());
    settle(&mut again);
    choose(&mut again, "Bonnet, left");
    assert!((mean(&again, "mil") - mil).abs() < 1e-9);
}

/// The large number above a name.
fn choose_number(window: &Harness<'_, App>, name: &str) -> f64 {
    let labels = labels(window);
    let at = labels.iter().position(|label| label == name).unwrap_or_else(|| panic!("{name}: {labels:?}"));
    labels[at - 1].parse().unwrap()
}

#[test]
fn a_temperature_is_typed_in_fahrenheit_and_kept_in_celsius() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    settle(&mut window);
    run_command(&mut window, "temperature in °F");
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num4);
    window.run();
    assert!(!window.state().is_dirty(), "looking at it in another unit changes nothing");
    unfold(&mut window, "Window of the label");
    let field = |window: &Harness<'_, App>| {
        let node = window.get_by_role_and_label(Role::TextInput, "It holds at");
        node.accesskit_node().value().unwrap()
    };
    let before = window.state().job().product.reference_temp_c.c();
    assert_eq!(field(&window), format!("{:.0}", before * 1.8 + 32.0));
    window.get_by_role_and_label(Role::TextInput, "It holds at").focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.run();
    window.get_by_role_and_label(Role::TextInput, "It holds at").type_text("77");
    window.run();
    window.key_press(Key::Enter);
    settle(&mut window);
    // 77 °F are 25 °C (NIST Special Publication 811, B.8: t/°C = (t/°F − 32)/1.8).
    assert!((window.state().job().product.reference_temp_c.c() - 25.0).abs() < 1e-9);
    assert_eq!(field(&window), "77");
}

#[test]
fn names_size_and_the_front_are_as_preferred_from_the_first_picture() {
    let folder = tempfile::tempdir().unwrap();
    let config = folder.path().join("config");
    std::fs::create_dir_all(&config).unwrap();
    let text = "(names: us, scale_pct: 125, front: front_up, theme: dark, large_targets: true, hints_seen: true)";
    std::fs::write(config.join("preferences.ron"), text).unwrap();
    let mut window = at_home(folder.path());
    window.run();
    assert!((window.ctx.zoom_factor() - 1.25).abs() < 1e-6);
    choose(&mut window, "Hood, left");
    let (hood, trunk) = (place(&window, "Hood, left"), place(&window, "Trunk lid, left"));
    assert!(hood.y < trunk.y, "the front is up");
    let save = window.get_by_label("Save as…").rect();
    assert!(save.height() >= 44.0, "{save:?}: WCAG 2.2, 2.5.5 asks for 44 of a target");
    window.key_press_modifiers(Modifiers::COMMAND, Key::Num0);
    window.run();
    assert!((window.ctx.zoom_factor() - 1.0).abs() < 1e-6);
    assert!(kept(folder.path()).contains("scale_pct: 100"));
}

fn place(window: &Harness<'_, App>, panel: &str) -> egui::Pos2 {
    window.get_by(|n| n.role() == Role::ListBoxOption && n.label().is_some_and(|l| l == panel)).rect().center()
}

#[test]
fn broken_preferences_give_one_notice_and_are_kept_aside() {
    let folder = tempfile::tempdir().unwrap();
    let config = folder.path().join("config");
    std::fs::create_dir_all(&config).unwrap();
    for broken in
        ["(film: inches)", "(scale_pct: 9000)", "(film: mil", "(crew: [(name: \"A\", roles: [apply])])", "\u{0}"]
    {
        std::fs::write(config.join("preferences.ron"), broken).unwrap();
        let mut window = at_home(folder.path());
        window.run();
        assert!(tells(&window, "The preferences could not be read"), "{broken}");
        assert_eq!(std::fs::read_to_string(config.join("preferences.ron.broken")).unwrap(), broken);
        window.get_by_label("OK").click();
        window.run();
        assert!(!tells(&window, "could not be read"), "{broken}");
        let mut again = at_home(folder.path());
        again.run();
        assert!(!tells(&again, "could not be read"), "{broken}: said once");
    }
}

#[test]
fn the_crew_of_a_job_is_that_of_new_ones() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    let crew = window.state().job().crew.clone();
    run_command(&mut window, "use this crew for new jobs");
    run_command(&mut window, "new");
    assert_eq!(window.state().job().name, "New job");
    assert_eq!(window.state().job().crew, crew);
    let mut again = at_home(folder.path());
    again.run();
    run_command(&mut again, "new");
    assert_eq!(again.state().job().crew, crew);
}

#[test]
fn the_page_changes_things_at_once_and_keeps_what_it_says() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Comma);
    window.run();
    for (field, choice) in [("Temperature", "°F"), ("Names of panels", "Hood, trunk, fender")] {
        window.get_by_role_and_label(Role::ComboBox, field).click_accesskit();
        window.run();
        window.get_by_label(choice).click_accesskit();
        window.run();
    }
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l == "Close")).click();
    window.run();
    assert!(kept(folder.path()).contains("names: us") && kept(folder.path()).contains("temperature: fahrenheit"));
    choose(&mut window, "Hood, left");
    assert!(says(&window, "Hood, left"));
}
