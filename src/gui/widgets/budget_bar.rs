//! Allowed, planned and its spread on one scale for all panels, so that bars compare.

use crate::gui::theme;
use crate::insight::PanelInsight;
use eframe::egui::{self, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

/// Right end of the scale in µm: twice what a usual limit allows for one visit.
const SCALE_UM: f64 = 8.0;

/// Draws the bar of one panel: a frame up to what is allowed, a fill up to the planned mean, a lighter fill to its upper bound,
/// and a tick at the depth that the deepest polishable defect needs.
pub(in crate::gui) fn budget_bar(ui: &mut Ui, insight: &PanelInsight) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 40.0), Sense::hover());
    let (allowed, mean, upper) =
        (insight.budget.allowed.um(), insight.polish.removal.um(), insight.removal_upper().um());
    let needed = insight.needed().um();
    let bar = Rect::from_min_size(area.min + vec2(0.0, 4.0), vec2(area.width(), 14.0));
    let at = |um: f64| bar.left() + bar.width() * (um / SCALE_UM).clamp(0.0, 1.0) as f32;
    let to = |um: f64| Rect::from_min_max(bar.min, pos2(at(um), bar.bottom()));
    let paint = ui.painter();
    paint.rect_filled(bar, 2.0, p.paper);
    paint.rect_filled(to(upper), 2.0, p.level(2));
    paint.rect_filled(to(mean), 2.0, p.level(4));
    paint.rect_stroke(to(allowed), 2.0, Stroke::new(1.5, p.contour), StrokeKind::Inside);
    if needed > 0.0 {
        let x = at(needed);
        paint.vline(x, bar.y_range().expand(3.0), Stroke::new(2.0, p.note));
    }
    let font = egui::FontId::proportional(12.0);
    for um in [0.0, 2.0, 4.0, 6.0, 8.0] {
        let (align, text) = match um {
            0.0 => (egui::Align2::LEFT_TOP, "0".to_owned()),
            8.0 => (egui::Align2::RIGHT_TOP, "8\u{202f}µm".to_owned()),
            _ => (egui::Align2::CENTER_TOP, format!("{um:.0}")),
        };
        paint.text(pos2(at(um), bar.bottom() + 3.0), align, text, font.clone(), p.ink_soft);
    }
    response.widget_info(|| {
        let text =
            format!("allowed {allowed:.1} µm, planned {mean:.1} µm, at most {upper:.1} µm, needed {needed:.1} µm");
        egui::WidgetInfo::labeled(egui::Role::Meter, true, text)
    });
}
