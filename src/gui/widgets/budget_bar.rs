//! Allowed, planned and its spread, and needed, on one scale for all panels, so that bars compare.

use super::units_of;
use crate::gui::theme::{self, Palette};
use crate::insight::PanelInsight;
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;
use eframe::egui::{self, Align2, FontId, Painter, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

/// Right end of the scale in µm: twice what a usual limit allows for one visit.
const SCALE_UM: f64 = 8.0;

/// Where a removal lies on a bar.
fn at(bar: Rect, um: f64) -> f32 {
    bar.left() + bar.width() * (um / SCALE_UM).clamp(0.0, 1.0) as f32
}

fn part(bar: Rect, from: f64, to: f64) -> Rect {
    Rect::from_min_max(pos2(at(bar, from), bar.top()), pos2(at(bar, to), bar.bottom()))
}

/// One bar without a scale: a frame up to what is allowed, a fill up to the planned mean, a lighter one to its upper bound, a
/// tick at what is needed; an arrow where that lies beyond the scale.
pub(in crate::gui) fn removal_bar(paint: &Painter, bar: Rect, insight: &PanelInsight, p: &Palette) {
    paint.rect_filled(bar, 2.0, p.paper);
    planned(paint, bar, insight, p);
    paint.rect_stroke(
        part(bar, 0.0, insight.budget.allowed.um()),
        2.0,
        Stroke::new(1.2, p.contour),
        StrokeKind::Inside,
    );
    needed_tick(paint, bar, insight.needed(), p);
}

fn planned(paint: &Painter, bar: Rect, insight: &PanelInsight, p: &Palette) {
    let (mean, upper) = (insight.polish.removal.um(), insight.removal_upper().um());
    paint.rect_filled(part(bar, 0.0, upper), 2.0, p.level(2));
    paint.rect_filled(part(bar, 0.0, mean), 2.0, p.level(4));
}

fn needed_tick(paint: &Painter, bar: Rect, needed: Micrometres, p: &Palette) {
    let x = at(bar, needed.um());
    if needed.um() > SCALE_UM {
        let y = bar.center().y;
        let tip = vec![pos2(x + 1.0, y), pos2(x - 6.0, y - 5.0), pos2(x - 6.0, y + 5.0)];
        paint.add(egui::Shape::convex_polygon(tip, p.note, Stroke::NONE));
    } else if needed.um() > 0.0 {
        paint.vline(x, bar.y_range().expand(2.0), Stroke::new(2.0, p.note));
    }
}

const NAMES: f32 = 60.0;
const LINE: f32 = 20.0;

/// Allowed with every limit as a tick, planned with its spread, and needed, one below the other, with the scale under them.
pub(in crate::gui) fn budget_bars(ui: &mut Ui, insight: &PanelInsight) {
    let p = theme::of(ui.ctx());
    let units = units_of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 3.0 * LINE + 18.0), Sense::hover());
    let paint = ui.painter();
    let (allowed, needed) = (insight.budget.allowed, insight.needed());
    let small = FontId::proportional(12.0);
    let mut bottom = area.top();
    for (line, name) in [say!("window-allowed"), say!("window-planned"), say!("window-needed")].into_iter().enumerate()
    {
        let y = area.top() + LINE * line as f32 + LINE / 2.0;
        paint.text(pos2(area.left(), y), Align2::LEFT_CENTER, name, small.clone(), p.ink_soft);
        let bar = Rect::from_x_y_ranges(area.left() + NAMES..=area.right(), y - 6.0..=y + 6.0);
        paint.rect_filled(bar, 2.0, p.paper);
        match line {
            0 => {
                paint.rect(
                    part(bar, 0.0, allowed.um()),
                    2.0,
                    p.level(1),
                    Stroke::new(1.5, p.contour),
                    StrokeKind::Inside,
                );
                for limit in insight.budget.limits.iter().filter(|l| l.um.um() <= SCALE_UM) {
                    paint.vline(at(bar, limit.um.um()), bar.y_range(), Stroke::new(1.0, p.rim));
                }
            }
            1 => planned(paint, bar, insight, p),
            _ => {
                paint.rect_filled(part(bar, 0.0, needed.um()), 2.0, p.hairline);
                needed_tick(paint, bar, needed, p);
            }
        }
        paint.vline(at(bar, allowed.um()), y - LINE / 2.0..=y + LINE / 2.0, Stroke::new(1.5, p.contour));
        bottom = bar.bottom();
    }
    let bar = Rect::from_x_y_ranges(area.left() + NAMES..=area.right(), area.top()..=bottom);
    for um in [0.0, 2.0, 4.0, 6.0, 8.0] {
        let (align, text) = match um {
            0.0 => (Align2::LEFT_TOP, "0".to_owned()),
            8.0 => (Align2::RIGHT_TOP, units.with_unit(um, "µm", 0)),
            _ => (Align2::CENTER_TOP, units.number(um, "µm", 0)),
        };
        paint.text(pos2(at(bar, um), bottom + 2.0), align, text, small.clone(), p.ink_soft);
    }
    response.widget_info(|| {
        let (mean, upper) = (insight.polish.removal.um(), insight.removal_upper());
        let text = say!(
            "window-budget",
            allowed = format!("{allowed:.1}"),
            mean = decimal(mean, 1),
            upper = format!("{upper:.1}"),
            needed = format!("{needed:.1}")
        );
        egui::WidgetInfo::labeled(egui::Role::Meter, true, units.say(&text))
    });
}
