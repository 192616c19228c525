//! The bar at the top: which job this is, and what can be done with it as a whole.

use super::action::{Action, Model};
use super::commands::{self, find_button};
use super::home::{HomeWish, Preferences, SCALES};
use super::theme::{self, Theme};
use crate::geometry::Orientation;
use crate::say;
use crate::vehicle::Naming;
use eframe::egui::{self, Ui};

/// Draws the bar.
pub(super) fn top_bar_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    // What can be pressed comes first; names take the room that is left.
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
        for id in ["help", "save-as", "save", "open", "new"] {
            commands::button(ui, m, id, out);
        }
        ui.add_space(8.0);
        // Where the bar is narrow, what finds everything is in the menu.
        let narrow = ui.available_width() < NARROW;
        view_menu(ui, m, narrow, out);
        ui.add_space(8.0);
        history(ui, m, out);
        if !narrow {
            ui.add_space(8.0);
            find_button(ui, m, out);
        }
        ui.add_space(8.0);
        names(ui, theme::bold(&m.job.name, 16.0), &m.job.vehicle.description);
    });
}

/// Room at the left of the view menu, in points, below which the button that finds has none.
const NARROW: f32 = 560.0;

/// A name and something about it at the left of a bar, each cut where there is no room.
pub(super) fn names(ui: &mut Ui, name: egui::RichText, about: &str) {
    ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
        let shown = |ui: &mut Ui, text: egui::RichText| ui.add(egui::Label::new(text).truncate());
        shown(ui, name);
        if ui.available_width() > 48.0 {
            shown(ui, theme::soft(about));
        }
    });
}

/// Undo and redo, each saying what it would do.
fn history(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let redo = m.document.redo_label().map(|label| say!("window-redo-what", what = label));
    commands::button_saying(ui, m, "redo", redo.as_deref(), out);
    let undo = m.document.undo_label().map(|label| say!("window-undo-what", what = label));
    commands::button_saying(ui, m, "undo", undo.as_deref(), out);
}

/// How things look: theme, size, which way the front points, names; and what is wanted seldom.
fn view_menu(ui: &mut Ui, m: &Model<'_>, with_find: bool, out: &mut Vec<Action>) {
    ui.menu_button(say!("window-view"), |ui| {
        ui.set_min_width(200.0);
        if with_find {
            commands::button(ui, m, "find", out);
            ui.separator();
        }
        let theme = theme::current(ui.ctx());
        for (id, is) in [("light", Theme::Light), ("dark", Theme::Dark), ("sunlight", Theme::Sunlight)] {
            commands::radio(ui, m, id, theme == is, out);
        }
        ui.separator();
        let now = m.home.preferences.scale_pct;
        for scale_pct in SCALES {
            if ui.radio(now == scale_pct, format!("{scale_pct}\u{202f}%")).clicked() {
                let wanted = Preferences { scale_pct, ..m.home.preferences.clone() };
                out.push(Action::Home(HomeWish::Prefer(Box::new(wanted))));
            }
        }
        ui.separator();
        for (id, is) in [("front-left", Orientation::FrontLeft), ("front-up", Orientation::FrontUp)] {
            commands::radio(ui, m, id, m.view.front == is, out);
        }
        if Naming::is_a_choice() {
            ui.separator();
            for (id, is) in [("names-uk", Naming::Uk), ("names-us", Naming::Us)] {
                commands::radio(ui, m, id, m.view.naming == is, out);
            }
        }
        ui.separator();
        commands::button(ui, m, "table", out);
        commands::button(ui, m, "preferences", out);
    });
}
