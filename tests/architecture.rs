//! The rules of the code that the compiler does not check: layers, file sizes, who touches the outside, what is embedded and listed.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::finding::{Code, Severity};
use lapwright::vehicle::embedded;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::LazyLock;
use support::{files, root, templates};

/// A file of the library: its path below `src`, its module, its text without comments.
struct Source {
    path: String,
    module: String,
    code: String,
    lines: usize,
}

static SOURCES: LazyLock<Vec<Source>> = LazyLock::new(|| {
    let folder = root().join("src");
    let read = |path: &std::path::PathBuf| {
        let text = std::fs::read_to_string(path).expect("source is text");
        let path = path.strip_prefix(&folder).expect("below src").to_string_lossy().replace('\\', "/");
        let module = path.split('/').next().expect("a name").trim_end_matches(".rs").to_owned();
        Source { module, lines: text.lines().count(), code: without_comments(&text), path }
    };
    files(&folder, "rs").iter().map(read).collect()
});

/// Blanks comments out, line by line, keeping line numbers. A `//` inside a text is cut too, which hides nothing that matters here.
fn without_comments(text: &str) -> String {
    let code = |line: &str| line.split("//").next().unwrap_or_default().to_owned();
    text.lines().map(code).collect::<Vec<_>>().join("\n")
}

/// Layer of each module, from the table in the head of `lib.rs`: `//! | 2 | [`polish`] | … |`.
static LAYERS: LazyLock<BTreeMap<String, u32>> = LazyLock::new(|| {
    let text = std::fs::read_to_string(root().join("src/lib.rs")).expect("source is text");
    let row = |line: &str| {
        let mut cells = line.strip_prefix("//! |")?.split('|').map(str::trim);
        let layer = cells.next()?.parse().ok()?;
        let module = cells.next()?.trim_matches(['[', ']', '`']).trim_start_matches("mod@").to_owned();
        Some((module, layer))
    };
    text.lines().filter_map(row).collect()
});

/// Every `crate::name` of a text, grouped imports too, with its line from 1.
fn crate_names(code: &str) -> Vec<(usize, String)> {
    let name = |text: &str| -> String { text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect() };
    let mut found = Vec::new();
    for (at, _) in code.match_indices("crate::") {
        if code[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_') {
            continue; // the end of another word
        }
        let line = 1 + code[..at].matches('\n').count();
        let after = &code[at + "crate::".len()..];
        match after.strip_prefix('{') {
            None => found.push((line, name(after))),
            Some(group) => found.extend(group_names(group).into_iter().map(|n| (line, name(&n)))),
        }
    }
    found.retain(|(_, n)| !n.is_empty());
    found
}

/// The first names of a group `a::b, c::{d, e}, f}…`, up to its closing bracket.
fn group_names(group: &str) -> Vec<String> {
    let (mut depth, mut parts, mut part) = (0, Vec::new(), String::new());
    for c in group.chars() {
        match c {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => parts.push(std::mem::take(&mut part)),
            c => part.push(c),
        }
    }
    parts.push(part);
    parts.into_iter().map(|p| p.trim().to_owned()).collect()
}

#[test]
fn grouped_and_nested_imports_are_seen() {
    let code =
        "use crate::job::Job;\nuse crate::{crew, vehicle::{self, PanelId},\n insight};\nlet x = crate::units::f();";
    let names: Vec<_> = crate_names(code).into_iter().map(|(line, name)| format!("{line} {name}")).collect();
    assert_eq!(names, ["1 job", "2 crew", "2 vehicle", "2 insight", "4 units"]);
}

#[test]
fn every_module_has_a_layer_and_every_layer_a_module() {
    let modules: BTreeSet<&str> =
        SOURCES.iter().map(|s| s.module.as_str()).filter(|m| !["lib", "main"].contains(m)).collect();
    let listed: BTreeSet<&str> = LAYERS.keys().map(String::as_str).collect();
    assert_eq!(modules, listed, "the table in src/lib.rs lists the folders of src");
}

#[test]
fn imports_point_to_lower_layers_only() {
    let mut wrong = Vec::new();
    let mut seen = 0;
    for source in SOURCES.iter().filter(|s| LAYERS.contains_key(&s.module)) {
        for (line, name) in crate_names(&source.code) {
            seen += 1;
            // Macros stand at the top of the crate; these two are those of the words.
            let name = if ["say", "message"].contains(&name.as_str()) { "words".to_owned() } else { name };
            let allowed =
                name == source.module || LAYERS.get(&name).is_some_and(|layer| *layer < LAYERS[&source.module]);
            if !allowed {
                wrong.push(format!("{}:{line} {} -> {name}", source.path, source.module));
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    assert!(seen > 200, "the imports are found at all: {seen}");
}

/// Words of a source text outside comments: what is found there, with its place.
fn mentions(source: &Source, word: &str) -> Vec<String> {
    let is_word = |c: char| c.is_alphanumeric() || c == '_';
    let found = |(number, line): (usize, &str)| {
        let alone = line.match_indices(word).any(|(at, _)| {
            !line[..at].ends_with(is_word)
                && (!word.ends_with(is_word) || !line[at + word.len()..].starts_with(is_word))
        });
        alone.then(|| format!("{}:{} {word}", source.path, number + 1))
    };
    source.code.lines().enumerate().filter_map(found).collect()
}

#[test]
fn only_the_window_knows_a_window() {
    let wrong: Vec<_> = SOURCES
        .iter()
        .filter(|s| s.module != "gui")
        .flat_map(|s| ["egui", "eframe", "rfd"].map(|word| mentions(s, word)))
        .flatten()
        .collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn only_outer_layers_touch_files_clocks_and_threads() {
    let outer = ["file", "work", "cli", "gui", "main"];
    // Scoped threads, which end before the function does and take no time from anywhere.
    let exceptions = [("crew/portfolio.rs", "std::thread")];
    let words = [
        "std::fs",
        "File::open",
        "std::thread",
        "Instant",
        "SystemTime",
        "std::env",
        "std::net",
        "std::process",
        "rand::",
    ];
    let mut wrong = Vec::new();
    for source in SOURCES.iter().filter(|s| !outer.contains(&s.module.as_str())) {
        for word in words.iter().filter(|word| !exceptions.contains(&(source.path.as_str(), **word))) {
            wrong.extend(mentions(source, word));
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    for (path, word) in exceptions {
        let source = SOURCES.iter().find(|s| s.path == path).expect("an exception names a file");
        assert!(!mentions(source, word).is_empty(), "{path} needs no exception");
    }
}

/// The disk is reached through one trait, so that tests can make everything fail that a disk can refuse.
#[test]
fn only_the_real_disk_calls_the_file_system() {
    let words = ["std::fs", "fs::", "File::", "OpenOptions"];
    let methods =
        [".exists()", ".is_file()", ".is_dir()", ".read_dir()", ".read_link()", ".metadata()", ".canonicalize()"];
    // The lock is a file that the real disk keeps open.
    let real = ["file/disk/real.rs", "file/disk/lock.rs"];
    let mut wrong = Vec::new();
    for source in SOURCES.iter().filter(|s| !real.contains(&s.path.as_str())) {
        let mut found: Vec<_> = words.iter().flat_map(|word| mentions(source, word)).collect();
        let calls = |line: &str| methods.iter().any(|method| line.contains(method));
        found.extend(source.code.lines().filter(|line| calls(line)).map(|line| format!("{} {line}", source.path)));
        wrong.extend(found);
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    for path in real {
        let source = SOURCES.iter().find(|s| s.path == path).expect("the real disk is there");
        assert!(!mentions(source, "std::fs").is_empty(), "{path} calls nothing");
    }
}

#[test]
fn files_are_small() {
    // Path and reason of every file that may be longer than 700 lines.
    let longer_for_a_reason: [(&str, &str); 0] = [];
    let mut lines: Vec<usize> = SOURCES.iter().map(|s| s.lines).collect();
    lines.sort_unstable();
    let share = |share: usize| lines[(lines.len() - 1) * share / 100];
    assert!(share(50) < 150, "half of all files have {} lines or more", share(50));
    assert!(share(90) < 400, "one in ten has {} lines or more", share(90));
    for source in SOURCES.iter().filter(|s| s.lines > 700) {
        assert!(longer_for_a_reason.iter().any(|(path, _)| *path == source.path), "{}: {}", source.path, source.lines);
    }
}

#[test]
fn colours_are_in_the_theme_only() {
    let mut wrong = Vec::new();
    let is_palette = |s: &&Source| s.path.starts_with("gui/theme/") || s.path == "sheets/palette.rs";
    for source in SOURCES.iter().filter(|s| !is_palette(s)) {
        let named = |line: &&str| {
            line.match_indices("Rgb(").any(|(at, _)| line[at + 4..].starts_with(|c: char| c.is_ascii_digit()))
        };
        wrong.extend(source.code.lines().filter(named).map(|l| format!("{} {l}", source.path)));
        for word in ["Color32::from_", "Color32::WHITE", "Color32::BLACK", "Color32::RED", "Rgba::from_", "hex_color!"]
        {
            wrong.extend(mentions(source, word));
        }
        let hex = |line: &str| {
            line.match_indices("\"#").any(|(at, _)| {
                let digits = line[at + 2..].chars().take_while(char::is_ascii_hexdigit).count();
                [3, 6, 8].contains(&digits)
            })
        };
        wrong.extend(source.code.lines().filter(|l| hex(l)).map(|l| format!("{} {l}", source.path)));
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_embedded_template_is_sound() {
    for template in templates() {
        let serious: Vec<_> = template.check().into_iter().filter(|f| f.severity() >= Severity::Warning).collect();
        assert!(serious.is_empty(), "{}: {serious:#?}", template.id);
    }
}

#[test]
fn every_template_file_is_embedded() {
    let stem = |path: &std::path::PathBuf| path.file_stem().expect("a name").to_string_lossy().into_owned();
    let on_disk: BTreeSet<String> = files(&root().join("vehicle-templates"), "ron").iter().map(stem).collect();
    let in_program: BTreeSet<String> = embedded().iter().map(|e| e.id.to_owned()).collect();
    assert_eq!(on_disk, in_program);
}

#[test]
fn every_finding_code_is_explained() {
    for code in Code::ALL {
        let explanation = code.explanation();
        assert!(explanation.len() > 60 && explanation.ends_with('.'), "{code}: {explanation}");
        assert!(!explanation.contains("  "), "{code}: {explanation}");
    }
    let ids: BTreeSet<&str> = Code::ALL.iter().map(|c| c.id()).collect();
    assert_eq!(ids.len(), Code::ALL.len(), "each code has an id of its own");
}

#[test]
fn every_finding_code_is_used() {
    for code in Code::ALL {
        let name = format!("Code::{code:?}");
        let used = SOURCES.iter().any(|s| !mentions(s, &name).is_empty());
        assert!(used, "{code} is never found");
    }
}

#[test]
fn every_finding_code_stands_in_the_guide_for_contributors() {
    let guide = std::fs::read_to_string(root().join("DEVELOPERS.md")).expect("DEVELOPERS.md is there");
    let missing: Vec<_> = Code::ALL.iter().map(|c| c.id()).filter(|id| !guide.contains(&format!("`{id}`"))).collect();
    assert!(missing.is_empty(), "DEVELOPERS.md does not list {missing:?}");
}

/// Everything in the package that a person wrote.
fn written_files() -> Vec<std::path::PathBuf> {
    let endings = ["rs", "ron", "md", "toml", "json", "sh", "csv", "txt"];
    let folders = ["src", "tests", "benches", "vehicle-templates", ".ci", ".config", ".cargo"];
    let below = folders.iter().map(|f| root().join(f)).filter(|f| f.is_dir());
    let mut all: Vec<_> = below.flat_map(|f| endings.into_iter().flat_map(move |e| files(&f, e))).collect();
    let top = endings.into_iter().flat_map(|e| {
        std::fs::read_dir(root())
            .expect("the package")
            .map(|entry| entry.expect("an entry").path())
            .filter(move |p| p.is_file() && p.extension().is_some_and(|x| x == e))
    });
    all.extend(top);
    let run = root().join(".ci/run");
    all.extend(run.is_file().then_some(run));
    all
}

#[test]
fn nothing_points_outside_the_package() {
    // Put together here, so that this file does not hold what it looks for.
    let outside =
        [["..", "/shared"].concat(), ["/wo", "rk/"].concat(), ["/ho", "me/"].concat(), ["C:", "\\Users"].concat()];
    let files = written_files();
    assert!(files.len() > 100, "{}", files.len());
    let mut wrong = Vec::new();
    for path in files {
        // Some files are not text on purpose.
        let bytes = std::fs::read(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        let text = String::from_utf8_lossy(&bytes);
        for (number, line) in text.lines().enumerate() {
            if outside.iter().any(|o| line.contains(o.as_str())) || names_a_folder_of_one_machine(&path, line) {
                wrong.push(format!("{}:{} {line}", path.display(), number + 1));
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// A text that begins with the folder of a system, such as the one for temporary files, which tests must ask the system for.
fn names_a_folder_of_one_machine(path: &Path, line: &str) -> bool {
    let folders = ["tmp", "usr", "opt", "var", "root", "etc", "mnt"];
    let is_code = path.extension().is_some_and(|e| e == "rs" || e == "ron" || e == "toml");
    is_code && folders.iter().any(|f| line.contains(&format!("\"/{f}/")) || line.contains(&format!("\"/{f}\"")))
}
