//! The plan of the whole vehicle.

use super::goal::goal_ui;
use super::open_points::open_points_ui;
use super::people;
use super::policy::policy_ui;
use super::steps::steps_ui;
use super::test_spot::test_spot_ui;
use crate::gui::action::{Action, Model};
use crate::gui::home::{is_unread, nothing_yet};
use crate::gui::theme;
use crate::say;
use eframe::egui::{self, Ui};

/// Goal, open points, exposure, and everything the plan rests on.
pub(super) fn whole_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("correction-title"), 20.0));
    if is_unread(m) {
        let sentence = say!("correction-nothing-read");
        nothing_yet(ui, m, sentence, "survey", out);
    }
    goal_ui(ui, m, out);
    people::order_ui(ui, m, out);
    open_points_ui(ui, m, out);
    let folded = |ui: &mut Ui, title: &str, add: &mut dyn FnMut(&mut Ui)| {
        ui.add_space(8.0);
        egui::CollapsingHeader::new(theme::bold(title, 14.0)).id_salt(title).show(ui, |ui| add(ui));
    };
    folded(ui, say!("correction-test-spot"), &mut |ui| test_spot_ui(ui, m, out));
    folded(ui, say!("correction-shop-steps"), &mut |ui| steps_ui(ui, m, out));
    folded(ui, say!("correction-rules"), &mut |ui| policy_ui(ui, m, out));
    people::shop_ui(ui, m, out);
}
