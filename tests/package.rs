//! What the packages carry agrees with the program: the manual with its help, the desktop entry and the MIME type with each other
//! (after the Desktop Entry Specification 1.5 and the Shared MIME-info Specification 0.21 of freedesktop.org, from memory).
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use std::collections::BTreeSet;
use std::process::Command;
use support::root;

fn text(file: &str) -> String {
    std::fs::read_to_string(root().join(file)).expect(file)
}

fn help(words: &[&str]) -> String {
    let mut program = Command::new(env!("CARGO_BIN_EXE_lapwright"));
    let output = program.args(words).arg("--help").env("LC_ALL", "C").output().expect("the program runs");
    String::from_utf8(output.stdout).expect("help is text")
}

/// Commands that the help lists.
fn commands() -> Vec<String> {
    let help = help(&[]);
    let list = help.split("Commands:").nth(1).and_then(|after| after.split("\n\n").next()).expect("a list of commands");
    list.lines().filter_map(|line| line.split_whitespace().next()).filter(|c| *c != "help").map(str::to_owned).collect()
}

/// Long options of a help text, `--help` and `--version` too.
fn options(help: &str) -> BTreeSet<String> {
    let starts = |line: &str| line.trim_start().starts_with('-');
    let of = |line: &str| line.split([' ', ',']).find(|word| word.starts_with("--")).map(str::to_owned);
    help.lines().filter(|line| starts(line)).filter_map(of).collect()
}

#[test]
fn the_manual_has_every_command_and_option_and_no_other() {
    let manual = text("src/package/lapwright.1");
    let commands = commands();
    assert!(commands.len() >= 8, "{commands:?}");
    let mut wanted = options(&help(&[]));
    for command in &commands {
        assert!(manual.contains(&format!(".It Cm {command}\n")), "{command} is explained");
        wanted.extend(options(&help(&[command])));
    }
    let words: BTreeSet<String> = manual
        .lines()
        .filter(|line| line.starts_with(".It Fl "))
        .flat_map(|line| line.split_whitespace().filter_map(|word| word.strip_prefix('-')).map(|o| format!("--{o}")))
        .collect();
    assert_eq!(words, wanted);
    let synopsis = manual.split(".Sh DESCRIPTION").next().expect("a synopsis");
    for option in wanted.iter().filter(|o| !["--help", "--version"].contains(&o.as_str())) {
        assert!(synopsis.contains(&format!("Fl -{}", option.trim_start_matches("--"))), "{option} is in the synopsis");
    }
}

#[test]
fn desktop_entry_and_type_name_each_other() {
    let entry = text("src/package/lapwright.desktop");
    let value = |key: &str| entry.lines().find_map(|line| line.strip_prefix(&format!("{key}="))).unwrap_or_default();
    let types = text("src/package/lapwright.xml");
    let types = roxmltree::Document::parse(&types).expect("XML");
    let type_ = types
        .descendants()
        .find(|n| n.has_tag_name(("http://www.freedesktop.org/standards/shared-mime-info", "mime-type")));
    let type_ = type_.expect("a type");
    assert_eq!(value("MimeType").trim_end_matches(';'), type_.attribute("type").unwrap_or_default());
    let glob = type_.children().find_map(|n| n.attribute("pattern"));
    assert_eq!(glob, Some("*.job.ron"));
    assert_eq!(value("Exec"), "lapwright %f");
    assert_eq!(value("Icon"), "lapwright");
    // The id that the window gives itself, so that the desktop puts it under this entry.
    assert_eq!(value("StartupWMClass"), "lapwright");
    for key in ["Comment[de]", "Comment[es]"] {
        assert!(!value(key).is_empty(), "{key}");
    }
}

#[test]
fn icons_are_pictures_of_the_size_that_they_say() {
    for size in [48, 128, 256] {
        let icon = image::open(root().join(format!("src/package/icon-{size}.png"))).expect("a picture");
        assert_eq!((icon.width(), icon.height()), (size, size));
        let rgba = icon.to_rgba8();
        assert_eq!(rgba.get_pixel(0, 0).0[3], 0, "the corners are round");
        assert_eq!(
            rgba.get_pixel(size / 2, size / 20).0[..3],
            [0x17, 0x4A, 0x7C],
            "the ground has the colour of the window"
        );
    }
    assert!(roxmltree::Document::parse(&text("src/package/lapwright.svg")).is_ok());
}

#[test]
fn everything_that_the_debian_package_takes_is_there() {
    let manifest = text("Cargo.toml");
    let assets = manifest.split("assets = [").nth(1).and_then(|after| after.split("\n]").next()).expect("assets");
    let files: Vec<&str> = assets.lines().filter_map(|line| line.split('"').nth(1)).collect();
    assert!(files.len() >= 8, "{files:?}");
    for file in files.iter().filter(|file| !file.starts_with("target/")) {
        assert!(root().join(file).is_file(), "{file}");
    }
    let version = env!("CARGO_PKG_VERSION");
    assert!(text("README.md").contains(&format!("- {version}")), "the README tells of version {version}");
}
