//! Readings by number and Enter, as a person types them and as a gauge does.

use super::scripted::{choose, readings};
use super::{EFFORT, window, window_on};
use eframe::egui::{Event, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::gui::App;
use lapwright::insight::survey_stops;
use lapwright::measure::GaugePrinciple;
use lapwright::vehicle::{PanelId, load_embedded};
use lapwright::work::Effort;
use std::sync::Arc;

const SIZE: [f32; 2] = [1280.0, 800.0];

/// The sample's shop with another vehicle of which nothing is known, and a gauge that reads every panel.
fn unread(template: &str) -> Harness<'static, App> {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    template.clone_into(&mut job.vehicle.template);
    job.gauge.principle = GaugePrinciple::Ultrasonic;
    job.panels.clear();
    let loaded = Loaded { job: Arc::new(job), template: load_embedded(template).unwrap() };
    let mut window = window_on(loaded, Effort { nodes: Some(50), ..EFFORT }, SIZE);
    window.run();
    window
}

/// What a keyboard sends for these keys: one picture, in their order. `↵` and `⇥` are keys, anything else is text.
fn send(window: &mut Harness<'_, App>, typed: &str) {
    for letter in typed.chars() {
        let key = match letter {
            '↵' => Some(Key::Enter),
            '⇥' => Some(Key::Tab),
            '⌫' => Some(Key::Backspace),
            _ => None,
        };
        let events = &mut window.input_mut().events;
        match key {
            Some(key) => events.extend([true, false].map(|pressed| Event::Key {
                key,
                physical_key: None,
                pressed,
                repeat: false,
                modifiers: Modifiers::NONE,
            })),
            None => events.push(Event::Text(letter.to_string())),
        }
    }
    window.step();
}

fn values(window: &Harness<'_, App>, panel: &str) -> Vec<Vec<f64>> {
    let record = window.state().job().record(&PanelId::from(panel)).cloned();
    let spots = record.map(|r| r.spots.clone()).unwrap_or_default();
    spots.iter().map(|s| s.readings.iter().map(|r| r.thickness_um.um()).collect()).collect()
}

fn heading(window: &Harness<'_, App>) -> String {
    let label = |n: &egui_kittest::Node<'_>| n.value().filter(|v| v.starts_with("Spot ") && v.contains(" of "));
    let found = window.query_all(egui_kittest::kittest::By::new().role(Role::Label)).find_map(|n| label(&n));
    found.unwrap_or_default()
}

/// A whole vehicle of 43 panels, 188 spots and 564 readings (more than a car of 33 panels with 5 spots of 3), from the first
/// picture on without the pointer: every reading is at the place and on the panel where the way round has it.
#[test]
fn a_whole_vehicle_is_read_with_the_keyboard_only() {
    let mut window = unread("van");
    let template = load_embedded("van").unwrap();
    let stops = survey_stops(&template);
    let panels: std::collections::BTreeSet<usize> = stops.iter().map(|s| s.panel).collect();
    assert!(panels.len() >= 33 && stops.len() >= 33 * 5, "{} panels, {} spots", panels.len(), stops.len());
    let value = |k: usize| 80 + k * 7 % 90;
    for k in 0..stops.len() * 3 {
        if k % 60 == 0 {
            window.step();
            assert_eq!(heading(&window), format!("Spot {} of {}", k / 3 + 1, stops.len()));
        }
        send(&mut window, &format!("{}", value(k)));
        send(&mut window, "↵");
    }
    window.run();
    assert!(window.query_by_label_contains("has its readings").is_some(), "nothing is left to read");
    for (number, stop) in stops.iter().enumerate() {
        let record = window.state().job().record(&template.panels[stop.panel].id).unwrap();
        let spot = record.spots.iter().find(|s| s.at == stop.at).unwrap();
        let read: Vec<f64> = spot.readings.iter().map(|r| r.thickness_um.um()).collect();
        assert_eq!(read, [0, 1, 2].map(|r| value(number * 3 + r) as f64), "spot {number}");
    }
}

#[test]
fn a_gauge_that_types_faster_than_pictures_loses_nothing() {
    let mut window = unread("saloon");
    send(&mut window, "112↵113,5⇥114.5↵121↵122⇥");
    window.run();
    let stops = survey_stops(&load_embedded("saloon").unwrap());
    let panel = load_embedded("saloon").unwrap().panels[stops[0].panel].id.clone();
    assert_eq!(values(&window, panel.as_str()), [vec![112.0, 113.5, 114.5], vec![121.0, 122.0]]);
    // Line ends may come as text too.
    window.input_mut().events.push(Event::Paste("123\r\n131\n".to_owned()));
    window.run();
    assert_eq!(values(&window, panel.as_str())[1..], [vec![121.0, 122.0, 123.0], vec![131.0]]);
}

#[test]
fn mil_are_kept_as_micrometres_and_never_guessed() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    send(&mut window, "4.4↵");
    window.run();
    assert_eq!(values(&window, "bonnet-left"), [[4.4]], "the field is in µm, so µm it is");
    assert!(window.query_by_label_contains("does the gauge show mil?").is_some());
    send(&mut window, "⌫");
    window.run();
    window.get_by_role_and_label(Role::Button, "mil").click();
    window.run();
    send(&mut window, "4,4↵4.5 mil↵112µm↵");
    window.run();
    assert_eq!(values(&window, "bonnet-left"), [[111.76, 114.3, 112.0]]);
    assert!(window.query_by_label_contains("does the gauge show").is_none());
}

#[test]
fn backspace_takes_back_the_last_reading_and_goes_to_its_spot() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    let before = heading(&window);
    send(&mut window, "101↵102↵103↵");
    window.run();
    assert_ne!(heading(&window), before);
    send(&mut window, "⌫");
    window.run();
    assert_eq!(heading(&window), before);
    assert_eq!(values(&window, "bonnet-left"), [[101.0, 102.0]]);
    send(&mut window, "99⌫⌫⌫");
    window.run();
    assert_eq!(values(&window, "bonnet-left"), [[101.0]], "two digits, then a reading");
    send(&mut window, "⌫⌫⌫⌫");
    window.run();
    assert_eq!(readings(&window, "bonnet-left"), 0);
    assert!(!window.state().is_dirty(), "it takes back readings only as far as there are some");
}

#[test]
fn a_spot_is_skipped_and_come_back_to() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    let (first, all) = (heading(&window), survey_stops(&load_embedded("saloon").unwrap()).len());
    window.key_press(Key::S);
    window.run();
    assert_ne!(heading(&window), first);
    send(&mut window, "111↵112↵113↵");
    window.run();
    window.get_by_label("1 skipped (B)");
    window.key_press(Key::B);
    window.run();
    assert_eq!(heading(&window), first);
    send(&mut window, "121↵122↵123↵");
    window.run();
    assert!(window.query_by_label_contains("skipped (B)").is_none());
    assert_eq!(values(&window, "bonnet-left"), [[111.0, 112.0, 113.0], [121.0, 122.0, 123.0]]);
    assert!(heading(&window).ends_with(&format!("of {all}")));
}

#[test]
fn a_spot_is_measured_again_in_one_step() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    let first = heading(&window);
    send(&mut window, "101↵150↵103↵");
    window.run();
    window.key_press(Key::R); // the new spot has nothing yet, so the one before is meant
    window.run();
    assert_eq!(heading(&window), first);
    assert_eq!(readings(&window, "bonnet-left"), 0);
    send(&mut window, "101↵102↵");
    window.run();
    window.key_press(Key::R);
    window.run();
    assert_eq!(readings(&window, "bonnet-left"), 0);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(values(&window, "bonnet-left"), [[101.0, 102.0]], "one step brings both back");
}

#[test]
fn digits_go_to_the_field_from_the_map_but_not_out_of_another_field() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    window.key_press(Key::ArrowDown); // the map has the focus
    window.run();
    send(&mut window, "118↵");
    window.run();
    assert_eq!(readings(&window, "wing-left"), 1);
    let note = window.get_by_role_and_label(Role::MultilineTextInput, "Note");
    note.focus();
    window.run();
    window.get_by_role_and_label(Role::MultilineTextInput, "Note").type_text("12 s");
    window.run();
    assert_eq!(readings(&window, "wing-left"), 1);
    assert_eq!(window.state().job().record(&PanelId::from("wing-left")).unwrap().note, "12 s");
}

#[test]
fn a_panel_that_is_read_or_can_not_be_read_takes_nothing_by_mistake() {
    let mut window = window(SIZE);
    choose(&mut window, "Front bumper, left");
    let before = Arc::clone(window.state().job());
    send(&mut window, "118↵");
    window.run();
    assert!(window.query_by_label_contains("can't be read with this gauge").is_some());
    choose(&mut window, "Bonnet, left");
    send(&mut window, "118↵");
    window.run();
    assert!(window.query_by_label_contains("wants no more readings").is_some());
    assert!(Arc::ptr_eq(&before, window.state().job()), "neither was put anywhere else");
}

#[test]
fn the_keypad_has_large_keys_that_do_the_same() {
    let mut window = unread("saloon");
    choose(&mut window, "Bonnet, left");
    window.get_by_role_and_label(Role::Button, "Keypad").click();
    window.run();
    for name in ["1", "1", "2", "Decimal sign", "5", "Take the reading"] {
        let key = window.get_by_role_and_label(Role::Button, name);
        let size = key.rect().size();
        assert!(size.x >= 56.0 && size.y >= 56.0, "{name} is {size:?}");
        key.click();
        window.run();
    }
    assert_eq!(values(&window, "bonnet-left"), [[112.5]]);
    window.get_by_role_and_label(Role::Button, "Digit or reading back").click();
    window.run();
    assert_eq!(readings(&window, "bonnet-left"), 0);
    assert!(window.get_by_role_and_label(Role::Button, "Take the reading").accesskit_node().role() == Role::Button);
}
