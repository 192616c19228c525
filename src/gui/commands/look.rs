//! Commands of how things look. Each changes a preference, so it is kept.

use super::{CTRL, Group, WindowCommand, always, key};
use crate::geometry::Orientation;
use crate::gui::action::{Action, Model};
use crate::gui::home::{HomeWish, Preferences};
use crate::gui::theme::Theme;
use crate::say;
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
    ($id:literal, $field:ident = $value:expr) => {
        WindowCommand {
            id: $id,
            group: Group::Look,
            keys: &[],
            usable: |m| (m.home.preferences.$field != $value).then_some(()).ok_or_else(|| say!("command-not-already")),
            wish: |m| with(m, |p| p.$field = $value),
        }
    };
}

macro_rules! names {
    ($id:literal, $naming:ident) => {
        WindowCommand {
            id: $id,
            group: Group::Look,
            keys: &[],
            usable: |m| {
                Naming::is_a_choice().then_some(()).ok_or_else(|| say!("command-not-english"))?;
                (m.home.preferences.names != Naming::$naming).then_some(()).ok_or_else(|| say!("command-not-already"))
            },
            wish: |m| with(m, |p| p.names = Naming::$naming),
        }
    };
}

macro_rules! size {
    ($id:literal, $keys:expr, $up:literal) => {
        WindowCommand {
            id: $id,
            group: Group::Look,
            keys: $keys,
            usable: |m| m.home.preferences.next_scale($up).map(|_| ()).ok_or_else(|| say!("command-not-further")),
            wish: |m| with(m, |p| p.scale_pct = p.next_scale($up).unwrap_or(p.scale_pct)),
        }
    };
}

pub(super) const COMMANDS: &[WindowCommand] = &[
    prefer!("light", theme = Theme::Light),
    prefer!("dark", theme = Theme::Dark),
    prefer!("sunlight", theme = Theme::Sunlight),
    size!("larger", &[key(CTRL, Key::Plus), key(CTRL, Key::Equals)], true),
    size!("smaller", &[key(CTRL, Key::Minus)], false),
    WindowCommand {
        id: "usual-size",
        group: Group::Look,
        keys: &[key(CTRL, Key::Num0)],
        usable: always,
        wish: |m| with(m, |p| p.scale_pct = 100),
    },
    prefer!("touch", large_targets = true),
    prefer!("no-touch", large_targets = false),
    prefer!("front-left", front = Orientation::FrontLeft),
    prefer!("front-up", front = Orientation::FrontUp),
    names!("names-uk", Uk),
    names!("names-us", Us),
    prefer!("film-um", film = ThicknessUnit::Um),
    prefer!("film-mil", film = ThicknessUnit::Mil),
    prefer!("celsius", temperature = TemperatureUnit::Celsius),
    prefer!("fahrenheit", temperature = TemperatureUnit::Fahrenheit),
    prefer!("ml", volume = VolumeUnit::Ml),
    prefer!("fl-oz", volume = VolumeUnit::FlOz),
];
