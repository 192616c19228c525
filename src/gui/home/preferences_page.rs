//! The page of preferences. Each takes effect at once and is kept.

use super::preferences::SCALES;
use super::{HomeWish, Preferences};
use crate::geometry::Orientation;
use crate::gui::action::{Action, Model};
use crate::gui::theme::{self, Theme};
use crate::gui::widgets::{choice, line, page_over, primary, section};
use crate::say;
use crate::units::listed;
use crate::units::{TemperatureUnit, ThicknessUnit, VolumeUnit};
use crate::vehicle::Naming;
use crate::words::{Language, within};
use eframe::egui::{self, Ui};

/// Draws the page.
pub(super) fn preferences_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let room = ui.ctx().content_rect().height();
    let shown = page_over(ui, "preferences").show(ui, |ui| {
        ui.set_width(440.0);
        ui.label(theme::bold(say!("home-preferences"), 20.0));
        ui.label(theme::soft(say!("home-at-once")));
        let mut wanted = m.home.preferences.clone();
        let height = (room - 220.0).max(160.0);
        egui::ScrollArea::vertical().max_height(height).min_scrolled_height(height).show(ui, |ui| {
            ui.set_width(412.0); // and the bar that scrolls
            words(ui, &mut wanted);
            units(ui, &mut wanted);
            looks(ui, &mut wanted);
            shop(ui, m, &mut wanted, out);
        });
        if wanted != m.home.preferences {
            out.push(Action::Home(HomeWish::Prefer(Box::new(wanted))));
        }
        ui.add_space(8.0);
        ui.horizontal(|ui| {
            if primary(ui, say!("common-close")).clicked() {
                ui.close();
            }
            if m.home.places.config.is_none() {
                ui.label(theme::soft(say!("home-no-folder")));
            }
        });
    });
    if shown.should_close() {
        out.push(Action::Home(HomeWish::Close));
    }
}

/// A choice that goes into a field.
fn choose<T: PartialEq + Copy>(ui: &mut Ui, label: &str, field: &mut T, options: &[(T, &str)]) {
    let options: Vec<(T, String)> = options.iter().map(|(value, name)| (*value, (*name).to_owned())).collect();
    if let Some(chosen) = choice(ui, label, *field, &options) {
        *field = chosen;
    }
}

/// Languages are named in themselves, so that somebody who can't read the present one finds theirs.
fn words(ui: &mut Ui, wanted: &mut Preferences) {
    ui.add_space(4.0);
    let system = (None, say!("home-language-system").to_owned());
    let named = |language: Language| {
        if language.is_reviewed() {
            language.own_name().to_owned()
        } else {
            format!("{} ({})", language.own_name(), within(language, || say!("common-not-reviewed")))
        }
    };
    let languages: Vec<_> = std::iter::once(system).chain(Language::ALL.map(|l| (Some(l), named(l)))).collect();
    if let Some(chosen) = choice(ui, say!("home-language"), wanted.language, &languages) {
        wanted.language = chosen;
        match chosen {
            Some(Language::American) => wanted.names = Naming::Us,
            Some(Language::British) => wanted.names = Naming::Uk,
            _ => {}
        }
    }
}

fn units(ui: &mut Ui, wanted: &mut Preferences) {
    section(ui, say!("home-units-names"));
    choose(ui, say!("home-film"), &mut wanted.film, &[(ThicknessUnit::Um, "µm"), (ThicknessUnit::Mil, "mil")]);
    let temperatures = [(TemperatureUnit::Celsius, "°C"), (TemperatureUnit::Fahrenheit, "°F")];
    choose(ui, say!("home-temperature"), &mut wanted.temperature, &temperatures);
    choose(ui, say!("home-amounts"), &mut wanted.volume, &[(VolumeUnit::Ml, "ml"), (VolumeUnit::FlOz, "US fl oz")]);
    if Naming::is_a_choice() {
        let names = [(Naming::Uk, say!("home-names-uk")), (Naming::Us, say!("home-names-us"))];
        choose(ui, say!("home-names"), &mut wanted.names, &names);
    }
    ui.label(theme::soft(say!("home-files-keep")));
}

fn looks(ui: &mut Ui, wanted: &mut Preferences) {
    section(ui, say!("home-looks"));
    let themes = Theme::ALL.map(|theme| (theme, theme.name()));
    choose(ui, say!("home-theme"), &mut wanted.theme, &themes);
    let sizes = SCALES.map(|pct| (pct, format!("{pct}\u{202f}%")));
    if let Some(pct) = choice(ui, say!("home-size"), wanted.scale_pct, &sizes) {
        wanted.scale_pct = pct;
    }
    let fronts = [(Orientation::FrontLeft, say!("home-front-left")), (Orientation::FrontUp, say!("home-front-up"))];
    choose(ui, say!("home-front"), &mut wanted.front, &fronts);
    ui.checkbox(&mut wanted.large_targets, say!("home-large"));
}

fn shop(ui: &mut Ui, m: &Model<'_>, wanted: &mut Preferences, out: &mut Vec<Action>) {
    section(ui, say!("home-shop"));
    if let Some(shop) = line(ui, say!("home-shop-name"), &wanted.shop) {
        shop.trim().clone_into(&mut wanted.shop);
    }
    let crew = match wanted.crew.as_slice() {
        [] => say!("home-crew-sample").to_owned(),
        crew => {
            let names: Vec<&str> = crew.iter().map(|member| member.name.as_str()).collect();
            say!("home-crew", people = listed(&names))
        }
    };
    ui.label(crew);
    ui.horizontal(|ui| {
        let other = wanted.crew != m.job.crew;
        if ui.add_enabled(other, egui::Button::new(say!("home-use-crew"))).clicked() {
            wanted.crew.clone_from(&m.job.crew);
        }
        if ui.add_enabled(!wanted.crew.is_empty(), egui::Button::new(say!("home-none"))).clicked() {
            wanted.crew.clear();
        }
    });
    let folder = match m.home.jobs.folder() {
        Some(folder) => say!("home-jobs-in", folder = folder.display().to_string()),
        None => say!("home-jobs-nowhere").to_owned(),
    };
    ui.label(folder);
    if ui.button(say!("home-choose-folder")).clicked() {
        out.push(Action::Home(HomeWish::AskFolder));
    }
}
