//! What the program says: the same messages with the same arguments in every language, and each of them used.
//!
//! The syntax is that of [Project Fluent](https://projectfluent.org/fluent/guide/); its reference parser is the library's own.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use fluent_bundle::{FluentResource, FluentValue};
use lapwright::words::{Language, keys, language, said, taking_along, text_in, variables, within};
use std::collections::{BTreeMap, BTreeSet};
use support::{files, root};

/// The languages that have a text of their own for every message.
const WHOLE: [Language; 3] = [Language::British, Language::German, Language::Spanish];

fn keys_of(language: Language) -> BTreeSet<String> {
    keys(language).into_iter().map(|(_, key)| key).collect()
}

#[test]
fn every_file_can_be_read_and_is_listed() {
    let areas: BTreeSet<&str> = keys(Language::British).into_iter().map(|(area, _)| area).collect();
    for language in Language::ALL {
        let folder = root().join("src/words").join(language.tag());
        let found = files(&folder, "ftl");
        assert!(!found.is_empty(), "{} has files", language.tag());
        for file in found {
            let text = std::fs::read_to_string(&file).expect("messages are text");
            let read = FluentResource::try_new(text);
            assert!(read.is_ok(), "{}: {:?}", file.display(), read.err().map(|(_, faults)| faults));
            let area = file.file_stem().expect("a name").to_string_lossy().into_owned();
            assert!(areas.contains(area.as_str()), "{} has messages and is listed", file.display());
        }
    }
}

#[test]
fn a_key_begins_with_its_area_and_stands_once() {
    for language in Language::ALL {
        let mut seen = BTreeSet::new();
        for (area, key) in keys(language) {
            assert!(key.starts_with(&format!("{area}-")), "{key} stands in {area}.ftl");
            assert!(seen.insert(key.clone()), "{key} stands twice in {}", language.tag());
        }
    }
}

#[test]
fn languages_have_the_same_keys_and_arguments() {
    let british = variables(Language::British);
    for language in WHOLE {
        assert_eq!(keys_of(language), keys_of(Language::British), "{}", language.tag());
        assert_eq!(variables(language), british, "{}", language.tag());
    }
    let stray: Vec<_> = keys_of(Language::American).difference(&keys_of(Language::British)).cloned().collect();
    assert!(stray.is_empty(), "American English has what British English lacks: {stray:?}");
    assert_eq!(variables(Language::American), british);
}

/// Every message with its arguments given as words and as numbers, in every language.
#[test]
fn every_message_can_be_said() {
    for language in [Language::British, Language::American, Language::German, Language::Spanish, Language::Stretched] {
        within(language, || {
            for (key, names) in variables(Language::British) {
                if names.is_empty() {
                    let text = text_in(language, &key).expect("a text");
                    assert!(!text.is_empty() && !text.contains(['{', '}', '\u{2068}']), "{key}: {text}");
                    continue;
                }
                for value in [FluentValue::from("X"), FluentValue::from(1), FluentValue::from(2), FluentValue::from(0)]
                {
                    let args: Vec<_> = names.iter().map(|name| (name.as_str(), value.clone())).collect();
                    let key: &'static str = key.clone().leak();
                    // A fault in an argument or a selector panics in test builds.
                    let text = said(key, args);
                    assert!(!text.is_empty() && !text.contains(['{', '}', '\u{2068}']), "{key}: {text}");
                }
            }
        });
    }
}

/// A use of a message in the source: its key and the names of its arguments.
struct Use {
    place: String,
    key: String,
    args: BTreeSet<String>,
}

/// The names of the arguments that follow a key, up to the bracket that closes the macro.
fn argument_names(code: &str) -> BTreeSet<String> {
    let (mut depth, mut quoted, mut escaped) = (0, false, false);
    let mut parts = vec![String::new()];
    for c in code.chars() {
        match c {
            _ if escaped => escaped = false,
            '\\' if quoted => escaped = true,
            '"' => quoted = !quoted,
            _ if quoted => {}
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' if depth == 0 => break,
            ')' | ']' | '}' => depth -= 1,
            ',' if depth == 0 => parts.push(String::new()),
            c => {
                if let Some(part) = parts.last_mut() {
                    part.push(c);
                }
            }
        }
    }
    let name = |part: &String| {
        let (name, value) = part.split_once('=')?;
        let name = name.trim();
        let plain = name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_');
        (plain && !name.is_empty() && !value.starts_with('=')).then(|| name.to_owned())
    };
    parts.iter().filter_map(name).collect()
}

/// The source without comments and without the folder of the words.
fn sources() -> Vec<(String, String)> {
    let folder = root().join("src");
    files(&folder, "rs")
        .into_iter()
        .filter(|path| !path.starts_with(folder.join("words")))
        .map(|path| {
            let text = std::fs::read_to_string(&path).expect("source is text");
            let code: Vec<&str> = text.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
            (path.display().to_string(), code.join("\n"))
        })
        .collect()
}

fn uses(sources: &[(String, String)]) -> Vec<Use> {
    let mut found = Vec::new();
    for (place, code) in sources {
        for name in ["say!", "message!"] {
            for (at, _) in code.match_indices(name) {
                let after = code[at + name.len()..].trim_start_matches(['(', '[', '{', ' ', '\n']);
                let Some((key, rest)) = after.strip_prefix('"').and_then(|a| a.split_once('"')) else { continue };
                let args = rest.trim_start().strip_prefix(',').map(argument_names).unwrap_or_default();
                found.push(Use { place: place.clone(), key: key.to_owned(), args });
            }
        }
    }
    found
}

#[test]
fn arguments_of_nested_calls_are_told_apart() {
    let names = argument_names(r#" panel = f(a, "x, y = 2"), count = if a == b { 1 } else { 2 }) + 3, z = 4"#);
    assert_eq!(names, ["count", "panel"].map(str::to_owned).into());
}

#[test]
fn the_code_gives_each_message_what_it_asks_for() {
    let british = variables(Language::British);
    let sources = sources();
    let uses = uses(&sources);
    assert!(!uses.is_empty(), "uses are found at all");
    let mut wrong = Vec::new();
    for Use { place, key, args } in &uses {
        match british.get(key) {
            None => wrong.push(format!("{place}: no message {key}")),
            Some(wanted) if wanted != args => wrong.push(format!("{place}: {key} wants {wanted:?} and gets {args:?}")),
            Some(_) => {}
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// Keys are written out, or put together by `format!("area-…{}")`.
#[test]
fn every_message_is_used() {
    let sources = sources();
    let quoted: BTreeSet<&str> = sources.iter().flat_map(|(_, code)| code.split('"')).collect();
    let put_together: BTreeSet<&str> = sources
        .iter()
        .flat_map(|(_, code)| code.split("format!(\"").skip(1))
        .filter_map(|after| after.split_once('{').map(|(start, _)| start))
        .filter(|start| start.contains('-') && start.chars().all(|c| c.is_ascii_lowercase() || c == '-'))
        .collect();
    let used = |key: &String| quoted.contains(key.as_str()) || put_together.iter().any(|start| key.starts_with(start));
    let unused: Vec<_> = keys_of(Language::British).into_iter().filter(|key| !used(key)).collect();
    assert!(unused.is_empty(), "{unused:?}");
}

/// Spellings from a dictionary of differences between the two Englishes (common knowledge, from memory).
#[test]
fn american_english_is_spelt_so() {
    let british = [
        "colour",
        "grey",
        "tyre",
        "bonnet",
        "windscreen",
        "metre",
        "litre",
        "centre",
        "licence",
        "favour",
        "neighbour",
        "labelled",
        "travelled",
        "levelled",
        "levelling",
        "aluminium",
        "recognis",
        "organis",
        "polaris",
        "kerb",
    ];
    let mut wrong = Vec::new();
    // The British names themselves.
    let kept = ["home-names-uk", "command-names-uk"];
    for (key, names) in variables(Language::American).into_iter().filter(|(key, _)| !kept.contains(&key.as_str())) {
        let args: Vec<_> = names.iter().map(|name| (name.as_str(), FluentValue::from(2))).collect();
        let key: &'static str = key.leak();
        let text = within(Language::American, || said(key, args)).to_lowercase();
        wrong.extend(british.iter().filter(|word| text.contains(*word)).map(|word| format!("{key}: {word}")));
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// Plural categories of CLDR (Unicode plural rules, version 46: English and German have one and other, Spanish one, many and other).
#[test]
fn plurals_are_those_of_the_language() {
    let mut forms: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for language in WHOLE {
        let said = |count: i64| within(language, || said("cli-readings", vec![("count", FluentValue::from(count))]));
        forms.insert(language.tag(), [0, 1, 2, 11].map(said).into());
    }
    assert_eq!(forms["en-GB"], ["0 readings", "1 reading", "2 readings", "11 readings"]);
    assert_eq!(forms["de"], ["0 Messwerte", "1 Messwert", "2 Messwerte", "11 Messwerte"]);
    assert_eq!(forms["es"], ["0 lecturas", "1 lectura", "2 lecturas", "11 lecturas"]);
}

#[test]
fn a_thread_takes_the_language_along() {
    let start = || std::thread::Builder::new().name("speaks".to_owned()).spawn(taking_along(language));
    let there = within(Language::German, start).unwrap();
    assert_eq!(there.join().unwrap(), Language::German);
}
