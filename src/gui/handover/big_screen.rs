//! The plan played over the map in the whole window, for a customer: half a minute from the first panel to the last.

use super::{HandoverState, HandoverWish};
use crate::gui::action::{Action, Model};
use crate::gui::map::{MapCache, map_ui};
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::job::Role;
use crate::say;
use crate::units::{Seconds, clock, minutes};
use eframe::egui::{self, Key, RichText, Ui};
use std::time::Duration;

/// How long the whole plan is played, in s.
const PLAYS_S: f64 = 30.0;
/// Between two pictures.
const PICTURE: Duration = Duration::from_millis(33);

impl HandoverState {
    /// Begins to play; `now` is the time of the window's clock, in s.
    pub(super) fn play(&mut self, now: f64) {
        self.playing = Some(now);
    }

    /// Back to the sheets.
    pub(super) fn stop_playing(&mut self) {
        self.playing = None;
    }

    /// The moment of the plan that is shown now; none when nothing is played. Never past the end.
    pub(in crate::gui) fn moment(&self, now: f64, takes: Seconds) -> Option<Seconds> {
        let share = ((now - self.playing?) / PLAYS_S).clamp(0.0, 1.0);
        Some((share * takes as f64).round() as Seconds)
    }
}

/// Draws the big screen into the whole window.
pub(in crate::gui) fn big_screen_ui(ui: &mut Ui, m: &Model<'_>, cache: &mut MapCache, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let takes = m.order.order().map_or(0, |o| o.plan.makespan_s);
    let moment = m.view.moment.unwrap_or(0);
    let head = egui::Frame::new().fill(p.sheet).inner_margin(egui::Margin::symmetric(24, 12));
    egui::Panel::top("big-head").exact_size(64.0).resizable(false).frame(head).show(ui, |ui| {
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.button(say!("common-back")).on_hover_text(say!("handover-escape")).clicked() {
                out.push(Action::Handover(HandoverWish::StopPlaying));
            }
            if moment >= takes && primary(ui, say!("handover-play-again")).clicked() {
                out.push(Action::Handover(HandoverWish::Play));
            }
            ui.label(theme::bold(say!("handover-moment", moment = clock(moment), takes = clock(takes)), 24.0));
            ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                ui.add(egui::Label::new(theme::bold(&m.job.vehicle.description, 24.0)).truncate());
            });
        });
    });
    let foot = egui::Frame::new().fill(p.sheet).inner_margin(egui::Margin::symmetric(24, 12));
    egui::Panel::bottom("big-foot").exact_size(72.0).resizable(false).frame(foot).show(ui, |ui| {
        for worker in 0..m.job.crew.len() {
            ui.label(RichText::new(doing(m, worker, moment)).size(20.0));
        }
        if m.rows.is_empty() {
            ui.label(RichText::new(say!("handover-no-order")).size(20.0));
        }
    });
    egui::CentralPanel::default().frame(egui::Frame::new().fill(p.paper)).show(ui, |ui| map_ui(ui, m, cache, out));
    if ui.input(|i| i.key_pressed(Key::Escape)) {
        out.push(Action::Handover(HandoverWish::StopPlaying));
    }
    if moment < takes {
        ui.ctx().request_repaint_after(PICTURE);
    }
}

/// What somebody does at a moment, in words for a customer.
fn doing(m: &Model<'_>, worker: usize, moment: Seconds) -> String {
    let name = &m.job.crew[worker].name;
    let mine = || m.rows.iter().filter(|r| r.worker == worker);
    let now = mine().find(|r| r.at.start <= moment && moment < r.at.end);
    if let Some(row) = now {
        let panel = m.template.panels[row.panel].name(m.view.naming);
        return match row.role {
            Role::Apply => say!("handover-applies", who = name, panel = panel),
            Role::Level => say!("handover-levels", who = name, panel = panel),
        };
    }
    if let Some(next) = mine().find(|r| r.at.start > moment) {
        say!("handover-goes-on", who = name, time = minutes(next.at.start - moment))
    } else {
        say!("handover-is-done", who = name)
    }
}
