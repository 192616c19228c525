//! The help: what each workspace is for, all keys, the cautions, where files are. It is all in the program; nothing is looked up.

use super::help_text::{CAUTIONS, LOCAL, about};
use super::{Group, all, in_words};
use crate::gui::action::{Action, Model};
use crate::gui::home::HomeWish;
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::{page_over, section};
use crate::insight::cautions;
use crate::say;
use crate::words::Message;
use eframe::egui::{self, RichText, Ui};

/// Draws the help.
pub(in crate::gui) fn help_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let room = ui.ctx().content_rect().size();
    let shown = page_over(ui, "help").show(ui, |ui| {
        let width = 760.0_f32.min(room.x - 96.0);
        ui.set_width(width);
        ui.horizontal(|ui| {
            ui.label(theme::bold(say!("find-help"), 20.0));
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if ui.button(say!("common-close")).clicked() {
                    ui.close();
                }
                if ui.button(say!("command-hints")).clicked() {
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
            section(ui, say!("find-cautions"));
            for caution in CAUTIONS {
                ui.label(caution.text());
            }
            of_this_job(ui, m);
            section(ui, say!("find-keys"));
            ui.label(say!("find-by-name"));
            keys(ui);
            section(ui, say!("find-files"));
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
    ui.label(theme::bold(say!("find-for-vehicle"), 14.0));
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
            let both = |all: String, other: String| say!("find-or", keys = all, other = other);
            let keys = keys.into_iter().reduce(both).unwrap_or_else(|| "–".to_owned());
            (keys, format!("{}. {}", command.name(), command.does()))
        });
        table(ui, group.name(), rows.collect());
    }
    for (place, rows) in LOCAL {
        let row = |(keys, what): &(Message, Message)| (keys.text().to_owned(), what.text().to_owned());
        table(ui, place.text(), rows.iter().map(row).collect());
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
    ui.label(say!("find-one-file"));
    let place = |folder: &Option<std::path::PathBuf>| {
        folder.as_ref().map_or_else(|| say!("find-nowhere").to_owned(), |f| f.display().to_string())
    };
    let rows = [
        (
            say!("find-this-job"),
            m.path.map_or_else(|| say!("find-unsaved").to_owned(), |path| path.display().to_string()),
        ),
        (say!("command-preferences"), place(&m.home.places.config)),
        (say!("find-recent-jobs"), place(&m.home.places.state)),
        (say!("find-read-folders"), place(&m.home.places.cache)),
    ];
    for (what, place) in rows {
        row(ui, what, &place);
    }
    ui.label(say!("find-no-network"));
}
