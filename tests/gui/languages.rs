//! The window in every language: nothing is left in English where texts are stretched, every letter has a glyph (the harness
//! refuses one that has none), nothing sticks out of the window, and a change of language reaches what was worked out before.

use super::pictures::egui_role::PANEL;
use super::preferences::{at_home, no_hints};
use super::{settle, window};
use eframe::egui::{Event, Key, Modifiers, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::SAMPLE;
use lapwright::gui::App;
use lapwright::words::{Language, set_language, within};
use std::collections::BTreeSet;
use std::path::Path;

const SIZE: [f32; 2] = [1280.0, 800.0];

/// Everything that a page of the window says: names, values and descriptions of all its nodes.
fn said(window: &Harness<'_, App>) -> Vec<String> {
    let of = |node: egui_kittest::Node<'_>| {
        let node = node.accesskit_node();
        [node.label(), node.value(), node.description()]
    };
    window.root().children_recursive().flat_map(of).flatten().collect()
}

fn press(window: &mut Harness<'_, App>, modifiers: Modifiers, key: Key) {
    window.key_press_modifiers(modifiers, key);
    window.run();
}

fn readings_of(window: &Harness<'_, App>) -> usize {
    window.state().job().panels.values().map(|record| record.reading_count()).sum()
}

/// Opens every workspace, with a panel and without, and every page that lies over the window; says which one it looks at.
fn visit(window: &mut Harness<'_, App>, mut look: impl FnMut(&mut Harness<'_, App>, &str)) {
    let workspaces = [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7];
    for (at, key) in workspaces.into_iter().enumerate() {
        press(window, Modifiers::COMMAND, key);
        settle(window);
        look(window, &format!("workspace {}", at + 1));
        let panel = window.query_all_by_role(PANEL).nth(4).map(|panel| panel.click_accesskit());
        if panel.is_some() {
            window.run();
            look(window, &format!("workspace {} with a panel", at + 1));
            press(window, Modifiers::NONE, Key::Escape);
        }
    }
    press(window, Modifiers::COMMAND, Key::Num1);
    let shift = Modifiers::COMMAND.plus(Modifiers::SHIFT);
    for (name, modifiers, key) in [
        ("help", Modifiers::NONE, Key::F1),
        ("search", Modifiers::COMMAND, Key::K),
        ("preferences", Modifiers::COMMAND, Key::Comma),
        ("jobs", shift, Key::O),
        ("table", Modifiers::COMMAND, Key::T),
    ] {
        press(window, modifiers, key);
        look(window, name);
        press(window, Modifiers::NONE, Key::Escape);
    }
}

/// The words of a text, without signs.
fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty())
}

/// Words that somebody wrote into the sample.
fn written() -> BTreeSet<&'static str> {
    SAMPLE.split('"').skip(1).step_by(2).flat_map(words).collect()
}

/// Names, units and keys that are the same in every language.
const SAME: &str = "English UK US Deutsch Español nicht durchgesehen sin revisar Lapwright Alt Shift Enter Escape Delete \
                    Backspace Space Home End Up Equals Plus Minus PageUp PageDown min mil oz";

/// What a text has besides names, units, single letters and codes with digits, that is no message.
fn left_over<'a>(text: &'a str, written: &BTreeSet<&str>) -> Option<&'a str> {
    let same: BTreeSet<&str> = words(SAME).collect();
    let bare = |word: &str| word.contains(['a', 'e', 'i', 'o', 'u', 'A', 'E', 'I', 'O', 'U']);
    let is_word = |word: &&str| word.len() > 1 && !word.contains(|c: char| c.is_ascii_digit());
    words(text).filter(is_word).find(|word| bare(word) && !written.contains(word) && !same.contains(word))
}

/// A bare vowel means a text that is no message: those of the stretched language are all accented.
#[test]
fn every_text_of_the_window_is_a_message() {
    let mut wrong = BTreeSet::new();
    within(Language::Stretched, || {
        let written = written();
        let mut window = window(SIZE);
        visit(&mut window, |window, page| {
            for text in said(window) {
                if let Some(word) = left_over(&text, &written) {
                    wrong.insert(format!("{page}: \"{word}\" in {text}"));
                }
            }
        });
    });
    assert!(wrong.is_empty(), "{} texts\n{}", wrong.len(), wrong.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn every_language_fits_the_window() {
    let looks = Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks");
    std::fs::create_dir_all(&looks).unwrap();
    let mut wrong = BTreeSet::new();
    for language in [Language::American, Language::German, Language::Spanish, Language::Stretched] {
        within(language, || {
            let mut window = window(SIZE);
            visit(&mut window, |window, page| {
                for node in window.root().children_recursive() {
                    let what = node.accesskit_node();
                    if matches!(what.role(), Role::Button | Role::Tab | Role::ComboBox | Role::TextInput) {
                        let rect = node.rect();
                        let name = what.label().unwrap_or_default();
                        if rect.min.x < -1.0 || rect.max.x > SIZE[0] + 1.0 {
                            wrong.insert(format!("{language:?}, {page}: \"{name}\" sticks out: {rect:?}"));
                        }
                    }
                }
                let name = format!("{}-{}.png", language.tag(), page.replace(' ', "-"));
                if language == Language::German || language == Language::Spanish {
                    window.render().unwrap().save(looks.join(name)).unwrap();
                }
            });
        });
    }
    assert!(wrong.is_empty(), "{} things\n{}", wrong.len(), wrong.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn a_language_is_chosen_and_reaches_everything_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = at_home(folder.path());
    no_hints(&mut window);
    settle(&mut window);
    press(&mut window, Modifiers::COMMAND, Key::Comma);
    window.get_by_role_and_label(Role::ComboBox, "Language").click();
    window.run();
    window.get_by_label("Deutsch (nicht durchgesehen)").click();
    window.run();
    press(&mut window, Modifiers::NONE, Key::Escape);
    settle(&mut window);
    assert!(said(&window).iter().any(|text| text.starts_with("Korrektur")), "the rail speaks German");
    assert!(said(&window).iter().any(|text| text.contains("Kotflügel, links")), "panels have German names");
    let kept = std::fs::read_to_string(folder.path().join("config").join("preferences.ron")).unwrap();
    let line = kept.lines().find(|line| line.trim_start().starts_with("language:"));
    assert!(line.is_some_and(|line| line.contains("de")), "{kept}");
    // The number is shown with a comma, and may be typed with either sign.
    press(&mut window, Modifiers::COMMAND, Key::Num2);
    settle(&mut window);
    let before = readings_of(&window);
    for text in ["112,5", "112.5"] {
        for letter in text.chars() {
            window.input_mut().events.push(Event::Text(letter.to_string()));
        }
        window.run();
        press(&mut window, Modifiers::NONE, Key::Enter);
    }
    assert_eq!(readings_of(&window), before + 2);
    set_language(Language::British);
}
