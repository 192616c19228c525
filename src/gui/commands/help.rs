//! The help: what each workspace is for, all keys, the cautions, where files are. It is all in the program; nothing is looked up.

use super::help_text::{CAUTIONS, LOCAL, about};
use super::{Group, all, in_words};
use crate::gui::action::{Action, Model};
use crate::gui::home::HomeWish;
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::{page_over, section};
use crate::insight::cautions;
use eframe::egui::{self, RichText, Ui};

/// Draws the help.
pub(in crate::gui) fn help_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let room = ui.ctx().content_rect().size();
    let shown = page_over(ui, "help").show(ui, |ui| {
        let width = 760.0_f32.min(room.x - 96.0);
        ui.set_width(width);
        ui.horizontal(|ui| {
            ui.label(theme::bold("Help", 20.0));
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if ui.button("Close").clicked() {
                    ui.close();
                }
                if ui.button("Show the hints again").clicked() {
                    out.push(Action::Home(HomeWish::Close));
                    out.push(Action::Home(HomeWish::Hint(Some(0))));
                }
            });
        });
        ui.separator();
        let height = (room.y - 200.0).max(200.0);
        let area = egui::ScrollArea::vertical().max_height(height).min_scrolled_height(height).auto_shrink(false);
        area.show(ui, |ui| {
            ui.set_width(width - 16.0);
            for workspace in Workspace::ALL {
                section(ui, workspace.name());
                ui.label(about(workspace));
            }
            section(ui, "Cautions");
            for caution in CAUTIONS {
                ui.label(*caution);
            }
            of_this_job(ui, m);
            section(ui, "Keys");
            ui.label(
                "Every command is found by its name as well: press the keys of “Find a command” and type a word of it.",
            );
            keys(ui);
            section(ui, "Where files are kept");
            files(ui, m);
        });
    });
    if shown.should_close() {
        out.push(Action::Home(HomeWish::Close));
    }
}

fn of_this_job(ui: &mut Ui, m: &Model<'_>) {
    let cautions = cautions(m.job, m.template, m.insight);
    if cautions.is_empty() {
        return;
    }
    ui.label(theme::bold("For this vehicle", 14.0));
    for caution in cautions {
        ui.label(crate::gui::widgets::said(ui, &caution));
    }
}

/// The table of keys: every command by its group, then what belongs to one place.
fn keys(ui: &mut Ui) {
    let p = theme::of(ui.ctx());
    let table = |ui: &mut Ui, name: &str, rows: Vec<(String, String)>| {
        ui.add_space(8.0);
        ui.label(RichText::new(name).color(p.ink_soft));
        for (keys, what) in rows {
            row(ui, &keys, &what);
        }
    };
    for group in Group::ALL {
        let rows = all().filter(|command| command.group == group).map(|command| {
            let keys: Vec<String> = command.keys.iter().copied().map(in_words).collect();
            let keys = if keys.is_empty() { "–".to_owned() } else { keys.join(" or ") };
            (keys, format!("{}. {}", command.name, command.does))
        });
        table(ui, group.name(), rows.collect());
    }
    for (place, rows) in LOCAL {
        table(ui, place, rows.iter().map(|(keys, what)| ((*keys).to_owned(), (*what).to_owned())).collect());
    }
}

/// Something short and what it is, side by side; what is long is broken.
fn row(ui: &mut Ui, left: &str, right: &str) {
    let p = theme::of(ui.ctx());
    ui.horizontal_top(|ui| {
        let narrow = egui::vec2(180.0, 0.0);
        let layout = egui::Layout::left_to_right(egui::Align::TOP);
        ui.allocate_ui_with_layout(narrow, layout, |ui| {
            ui.set_min_width(narrow.x);
            ui.add(egui::Label::new(RichText::new(left).color(p.ink_soft)).wrap());
        });
        ui.add(egui::Label::new(right).wrap());
    });
}

fn files(ui: &mut Ui, m: &Model<'_>) {
    ui.label(
        "A job is one file, NAME.job.ron, wherever you save it. Beside it lie the version before (NAME.job.ron~), pictures of \
         defects (NAME.photos), and the log of a day in the bay (NAME.job.ron.day).",
    );
    let place = |folder: &Option<std::path::PathBuf>| {
        folder.as_ref().map_or_else(|| "nowhere on this computer".to_owned(), |f| f.display().to_string())
    };
    let rows = [
        ("This job", m.path.map_or_else(|| "not saved yet".to_owned(), |path| path.display().to_string())),
        ("Preferences", place(&m.home.places.config)),
        ("Recent jobs", place(&m.home.places.state)),
        ("What was read of folders", place(&m.home.places.cache)),
    ];
    for (what, place) in rows {
        row(ui, what, &place);
    }
    ui.label("The program makes no connection to any network.");
}
