//! A sentence at the foot of the map that something happened, until it was read.

use super::HomeWish;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::say;
use eframe::egui::{self, Align2, Area, Order, Stroke, Ui, UiBuilder};

/// Draws what there is to say.
pub(in crate::gui) fn notice_ui(ui: &Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some(said) = &m.home.said else { return };
    let p = theme::of(ui.ctx());
    let area = ui.ctx().content_rect();
    let at = egui::pos2(area.center().x, area.bottom() - theme::CHART_HEIGHT - 40.0);
    Area::new(egui::Id::unique("notice")).order(Order::Tooltip).fixed_pos(at).pivot(Align2::CENTER_BOTTOM).show(
        ui.ctx(),
        |ui| {
            let frame = egui::Frame::new()
                .fill(p.sheet)
                .stroke(Stroke::new(1.0, p.contour))
                .corner_radius(theme::CORNER)
                .inner_margin(egui::Margin::symmetric(12, 8));
            let builder = UiBuilder::new().accessibility_role(egui::Role::Alert).accessibility_label(said);
            frame.show(ui, |ui| {
                ui.scope_builder(builder, |ui| {
                    ui.set_max_width(520.0);
                    ui.horizontal(|ui| {
                        ui.add(egui::Label::new(said).wrap());
                        if ui.button("OK").on_hover_text(say!("home-put-away")).clicked() {
                            out.push(Action::Home(HomeWish::Read));
                        }
                    });
                });
            });
        },
    );
}
