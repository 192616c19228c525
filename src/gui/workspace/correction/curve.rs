//! The price of ambition as two small curves: time, and clear taken off.

use crate::gui::theme;
use crate::gui::widgets::{one_line_at, units_of};
use crate::insight::CarAmbition;
use crate::say;
use crate::units::minutes;
use crate::words::decimal;
use eframe::egui::{self, Align2, FontId, Painter, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

const HEIGHT: f32 = 92.0;
/// Room for the figures along the bottom.
const FOOT: f32 = 16.0;
/// Room for the title.
const HEAD: f32 = 18.0;

/// Both curves side by side, the present goal marked on each.
pub(super) fn curves(ui: &mut Ui, points: &[CarAmbition], now: CarAmbition) {
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), HEIGHT), Sense::hover());
    let units = units_of(ui.ctx());
    response.widget_info(|| {
        let of = |p: &CarAmbition| {
            let gone = units.with_unit(p.mean_um, "µm", 1);
            say!(
                "correction-price-point",
                wanted = decimal(p.wanted * 100.0, 0),
                time = minutes(p.seconds),
                gone = gone
            )
        };
        let some: Vec<String> = points.iter().step_by(4).map(of).collect();
        egui::WidgetInfo::labeled(egui::Role::Figure, true, say!("correction-price", points = some.join("; ")))
    });
    let gap = 16.0;
    let width = (area.width() - gap) / 2.0;
    let paint = ui.painter();
    let left = Rect::from_min_size(area.min, vec2(width, HEIGHT));
    let time = |p: &CarAmbition| p.seconds as f64;
    one(paint, left, say!("correction-time"), points, &now, time, |v| minutes(v.round() as i64));
    let clear = |p: &CarAmbition| p.mean_um;
    one(paint, left.translate(vec2(width + gap, 0.0)), say!("correction-clear-taken-off"), points, &now, clear, |v| {
        units.with_unit(v, "µm", 1)
    });
}

fn one(
    paint: &Painter,
    area: Rect,
    title: &str,
    points: &[CarAmbition],
    now: &CarAmbition,
    value: impl Fn(&CarAmbition) -> f64,
    words: impl Fn(f64) -> String,
) {
    let p = theme::of(paint.ctx());
    let small = FontId::proportional(12.0);
    let plot = Rect::from_min_max(area.min + vec2(0.0, HEAD), area.max - vec2(0.0, FOOT));
    let most = points.iter().chain([now]).map(&value).fold(1e-9, f64::max);
    let last = points.last().map_or(1.0, |l| l.wanted);
    let at = |p: &CarAmbition| {
        let (x, y) = ((p.wanted / last).min(1.0) as f32, (value(p) / most) as f32);
        pos2(plot.left() + plot.width() * x, plot.bottom() - plot.height() * y)
    };
    let now_at = paint.text(area.right_top(), Align2::RIGHT_TOP, words(value(now)), small.clone(), p.ink_soft);
    let room = now_at.left() - 8.0 - area.left();
    one_line_at(paint, area.left_top(), Align2::LEFT_TOP, title, (small.clone(), p.ink_soft), room);
    paint.hline(plot.x_range(), plot.bottom(), Stroke::new(1.0, p.quiet));
    // Between two goals that were worked out the price jumps, so the line has steps: the price of a goal holds up to it.
    let mut line = Vec::new();
    for point in points {
        let here = at(point);
        line.extend(line.last().map(|before: &egui::Pos2| pos2(before.x, here.y)));
        line.push(here);
    }
    paint.add(Shape::line(line, Stroke::new(2.0 * p.line, p.ink_soft)));
    let here = at(now);
    paint.vline(here.x, here.y..=plot.bottom(), Stroke::new(1.0, p.accent));
    paint.circle(here, 4.5, p.accent, Stroke::new(1.5, p.sheet));
    for (share, align) in [(0.0, Align2::LEFT_TOP), (last, Align2::RIGHT_TOP)] {
        let x = plot.left() + plot.width() * (share / last) as f32;
        let text = format!("{:.0}\u{202f}%", share * 100.0);
        paint.text(pos2(x, plot.bottom() + 2.0), align, text, small.clone(), p.ink_soft);
    }
}
