//! The head of the right side: which panel this is, and a picture of it in its place.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::say;
use crate::vehicle::Panel;
use crate::words::decimal;
use eframe::egui::{self, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

/// Name, facts and place of the chosen panel.
pub(in crate::gui) fn panel_head(ui: &mut Ui, m: &Model<'_>, index: usize, panel: &Panel) {
    ui.horizontal(|ui| {
        ui.vertical(|ui| {
            ui.set_width(ui.available_width() - 104.0);
            ui.label(theme::bold(panel.name(m.view.naming), 20.0));
            let substrate = m.insight.panels[index].substrate.name();
            let facts = say!("window-panel-facts", area = decimal(panel.area.m2(), 2), substrate = substrate);
            ui.label(theme::soft(facts));
        });
        let (area, _) = ui.allocate_exact_size(vec2(96.0, 64.0), Sense::hover());
        place_picture(ui, m, index, area);
    });
    ui.separator();
}

/// The whole vehicle in hairlines with one panel filled.
fn place_picture(ui: &Ui, m: &Model<'_>, index: usize, area: Rect) {
    let p = theme::of(ui.ctx());
    let bounds = m.template.bounds();
    let scale = (area.width() / bounds.width()).min(area.height() / bounds.height());
    let middle = bounds.center();
    let to_screen = |p: crate::geometry::MapPoint| {
        pos2(area.center().x + (p.x - middle.x) * scale, area.center().y + (p.y - middle.y) * scale)
    };
    for (i, panel) in m.template.panels.iter().enumerate() {
        let points: Vec<egui::Pos2> = panel.outline.flattened(20.0).into_iter().map(to_screen).collect();
        if i == index {
            // A thick outline of its own colour fills small concave panels as well.
            ui.painter().add(Shape::closed_line(points, Stroke::new(3.0, p.accent)));
        } else {
            ui.painter().add(Shape::closed_line(points, Stroke::new(0.5, p.quiet)));
        }
    }
}
