//! A list per worker: every stop with its time and what is done there.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::worker_badge;
use crate::insight::PolishRow;
use crate::say;
use crate::units::{clock, minutes};
use eframe::egui::{self, Align2, FontId, Sense, Ui, pos2, vec2};

/// Draws the lists, closed until somebody wants one.
pub(super) fn stops_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some(order) = &m.polishing.order else { return };
    for (worker, member) in m.job.crew.iter().enumerate() {
        let mine: Vec<&PolishRow> = order.rows.iter().filter(|r| r.worker == worker).collect();
        let busy: i64 = mine.iter().map(|r| r.at.duration()).sum();
        let stops = mine.last().map_or(0, |r| r.stop);
        if stops == 0 {
            continue;
        }
        let title = say!("correction-stops", who = &member.name, stops = stops, time = minutes(busy));
        egui::CollapsingHeader::new(title).id_salt(("stops", worker)).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            for stop in mine.chunk_by(|a, b| a.stop == b.stop) {
                stop_ui(ui, m, stop, out);
            }
        });
    }
}

fn stop_ui(ui: &mut Ui, m: &Model<'_>, rows: &[&PolishRow], out: &mut Vec<Action>) {
    let Some(first) = rows.first() else { return };
    let p = theme::of(ui.ctx());
    let panel = &m.template.panels[first.panel];
    let mut verbs: Vec<&str> = rows.iter().map(|r| r.kind.verb()).collect();
    verbs.dedup();
    let words = say!("correction-stop", verbs = verbs.join(", "), panel = panel.name(m.view.naming));
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 24.0), Sense::click());
    let text = format!("{} {} {words}", clock(first.at.start), m.job.crew[first.worker].name);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &text));
    if ui.is_rect_visible(area) {
        let paint = ui.painter();
        if response.hovered() || response.has_focus() {
            paint.rect_filled(area, 4.0, p.paper);
        }
        let (y, font) = (area.center().y, FontId::proportional(14.0));
        let time = pos2(area.left() + 46.0, y);
        paint.text(time, Align2::RIGHT_CENTER, clock(first.at.start), font.clone(), p.ink_soft);
        worker_badge(paint, pos2(area.left() + 62.0, y), 9.0, first.worker, &first.stop.to_string());
        let clipped = paint.with_clip_rect(area.intersect(paint.clip_rect()));
        clipped.text(pos2(area.left() + 78.0, y), Align2::LEFT_CENTER, &words, font, p.ink);
    }
    let names: Vec<&str> = rows.iter().map(|r| r.name.as_str()).collect();
    if response.on_hover_text(names.join(say!("polish-then"))).clicked() {
        out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        out.push(Action::View(ViewChange::Moment(Some(first.at.start))));
    }
}
