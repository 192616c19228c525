//! Commands of how things look. Each changes a preference, so it is kept.

use super::{CTRL, Group, WindowCommand, always, key};
use crate::geometry::Orientation;
use crate::gui::action::{Action, Model};
use crate::gui::home::{HomeWish, Preferences};
use crate::gui::theme::Theme;
use crate::units::{TemperatureUnit, ThicknessUnit, VolumeUnit};
use crate::vehicle::Naming;
use eframe::egui::Key;

/// The preferences with something changed.
fn with(m: &Model<'_>, change: impl FnOnce(&mut Preferences)) -> Action {
    let mut preferences = m.home.preferences.clone();
    change(&mut preferences);
    Action::Home(HomeWish::Prefer(Box::new(preferences)))
}

macro_rules! prefer {
    ($id:literal, $name:literal, $does:literal, $field:ident = $value:expr) => {
        WindowCommand {
            id: $id,
            group: Group::Look,
            name: $name,
            does: $does,
            keys: &[],
            usable: |m| (m.home.preferences.$field != $value).then_some(()).ok_or("That is so already."),
            wish: |m| with(m, |p| p.$field = $value),
        }
    };
}

macro_rules! size {
    ($id:literal, $name:literal, $does:literal, $keys:expr, $up:literal) => {
        WindowCommand {
            id: $id,
            group: Group::Look,
            name: $name,
            does: $does,
            keys: $keys,
            usable: |m| m.home.preferences.next_scale($up).map(|_| ()).ok_or("It does not go further."),
            wish: |m| with(m, |p| p.scale_pct = p.next_scale($up).unwrap_or(p.scale_pct)),
        }
    };
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    prefer!("light", "Light", "Ink on white paper.", theme = Theme::Light),
    prefer!("dark", "Dark", "For a dark bay.", theme = Theme::Dark),
    prefer!("sunlight", "Sunlight", "Highest contrast and heavier lines, for bright sun.", theme = Theme::Sunlight),
    size!("larger", "Larger", "Makes everything larger.", &[key(CTRL, Key::Plus), key(CTRL, Key::Equals)], true),
    size!("smaller", "Smaller", "Makes everything smaller.", &[key(CTRL, Key::Minus)], false),
    WindowCommand {
        id: "usual-size",
        group: Group::Look,
        name: "Usual size",
        does: "Makes everything as large as usual.",
        keys: &[key(CTRL, Key::Num0)],
        usable: always,
        wish: |m| with(m, |p| p.scale_pct = 100),
    },
    prefer!("touch", "Larger things to press", "For gloves and touch screens.", large_targets = true),
    prefer!("no-touch", "Things to press as usual", "For a pointer.", large_targets = false),
    prefer!(
        "front-left",
        "Front to the left",
        "Turns the map so that the front is at the left.",
        front = Orientation::FrontLeft
    ),
    prefer!("front-up", "Front up", "Turns the map so that the front is at the top.", front = Orientation::FrontUp),
    prefer!("names-uk", "Bonnet, boot, wing", "Names of panels as in Britain.", names = Naming::Uk),
    prefer!("names-us", "Hood, trunk, fender", "Names of panels as in America.", names = Naming::Us),
    prefer!("film-um", "Film in µm", "Shows film in micrometres.", film = ThicknessUnit::Um),
    prefer!("film-mil", "Film in mil", "Shows film in thousandths of an inch.", film = ThicknessUnit::Mil),
    prefer!("celsius", "Temperature in °C", "Shows degrees Celsius.", temperature = TemperatureUnit::Celsius),
    prefer!("fahrenheit", "Temperature in °F", "Shows degrees Fahrenheit.", temperature = TemperatureUnit::Fahrenheit),
    prefer!("ml", "Amounts in ml", "Shows millilitres.", volume = VolumeUnit::Ml),
    prefer!("fl-oz", "Amounts in fl oz", "Shows US fluid ounces.", volume = VolumeUnit::FlOz),
];
