//! The time chart under the map: a lane per worker, work as bars, windows as thin bands.

use super::action::{Action, Model, ViewChange};
use super::theme;
use crate::scene::{Bar, Lane, time_chart};
use crate::units::clock;
use eframe::egui::{self, Align2, FontId, Painter, Rect, Sense, Stroke, Ui, pos2, vec2};

/// Room for the names of the workers.
const NAMES: f32 = 132.0;
/// Height of the windows under the bars of a lane.
const STRIP: f32 = 19.0;
/// Room for the clock along the top.
const CLOCK: f32 = 20.0;

/// Draws the chart.
pub(super) fn chart_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(ui.available_size(), Sense::CLICK | Sense::DRAG);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Canvas, true, summary(m)));
    let paint = ui.painter_at(area);
    if m.rows.is_empty() {
        let text = if m.order.is_working() { "Planning the order…" } else { "No order of coating yet." };
        paint.text(area.center(), Align2::CENTER_CENTER, text, FontId::proportional(14.0), p.ink_soft);
        return;
    }
    let window = m.insight.air.window;
    let chart = time_chart(m.job, m.rows, (window.min_s, window.max_s));
    let plot = Rect::from_min_max(area.min + vec2(NAMES, CLOCK), area.max - vec2(12.0, 8.0));
    let span = chart.span.duration().max(1) as f32;
    let x = |s: i64| plot.left() + plot.width() * s as f32 / span;
    grid(&paint, plot, chart.span.end, chart.tick, x);
    let height = plot.height() / chart.lanes.len().max(1) as f32;
    let stale = !m.order.is_current();
    let mut pointed = None;
    for (k, lane) in chart.lanes.iter().enumerate() {
        let top = plot.top() + height * k as f32;
        let band = Rect::from_min_max(pos2(plot.left(), top + 4.0), pos2(plot.right(), top + height - 4.0));
        pointed = lane_ui(&paint, m, lane, band, x, stale, response.hover_pos()).or(pointed);
        paint.text(
            pos2(area.left() + 16.0, band.center().y),
            Align2::LEFT_CENTER,
            &lane.title,
            FontId::proportional(14.0),
            p.ink,
        );
    }
    if let Some(moment) = m.view.moment {
        paint.vline(x(moment), plot.y_range(), Stroke::new(1.5, p.accent));
    }
    if let Some(at) = response.interact_pointer_pos().filter(|_| response.dragged() || response.clicked()) {
        let share = ((at.x - plot.left()) / plot.width()).clamp(0.0, 1.0);
        out.push(Action::View(ViewChange::Moment(Some((share * span).round() as i64))));
    }
    if let Some((worker, bar)) = pointed {
        let panel = &m.template.panels[bar.panel];
        let text = format!(
            "{} {} {}\n{} to {}",
            m.job.crew[worker].name,
            bar.role.verb(),
            panel.name(m.view.naming),
            clock(bar.at.start),
            clock(bar.at.end)
        );
        if response.clicked() {
            out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        }
        response.on_hover_text_at_pointer(text);
    }
}

fn grid(paint: &Painter, plot: Rect, end: i64, tick: i64, x: impl Fn(i64) -> f32) {
    let p = theme::of(paint.ctx());
    let font = FontId::proportional(12.0);
    let mut at = 0;
    while at <= end {
        paint.vline(x(at), plot.y_range(), Stroke::new(1.0, p.hairline));
        paint.text(pos2(x(at), plot.top() - 4.0), Align2::CENTER_BOTTOM, clock(at), font.clone(), p.ink_soft);
        at += tick;
    }
}

/// One lane; answers the bar under the pointer.
fn lane_ui<'l>(
    paint: &Painter,
    m: &Model<'_>,
    lane: &'l Lane,
    band: Rect,
    x: impl Fn(i64) -> f32,
    stale: bool,
    pointer: Option<egui::Pos2>,
) -> Option<(usize, &'l Bar)> {
    let p = theme::of(paint.ctx());
    let chosen = m.current().map(|(i, _)| i);
    let fill = if stale { p.hairline } else { theme::worker(lane.worker) };
    let text_ink = theme::text_on(fill);
    let bar_top = band.top() + 2.0;
    let bar_bottom = if lane.windows.is_empty() { band.bottom() - 2.0 } else { band.bottom() - STRIP };
    let mut pointed = None;
    for bar in &lane.bars {
        let shape = Rect::from_min_max(
            pos2(x(bar.at.start), bar_top),
            pos2(x(bar.at.end).max(x(bar.at.start) + 1.5), bar_bottom),
        );
        let line = if chosen == Some(bar.panel) { Stroke::new(2.5, p.accent) } else { Stroke::new(0.8, p.contour) };
        paint.rect(shape, 2.0, fill, line, egui::StrokeKind::Inside);
        let font = FontId::new(12.0, theme::bold_family());
        let galley = paint.layout_no_wrap(bar.number.to_string(), font, text_ink);
        if galley.size().x + 4.0 <= shape.width() {
            paint.galley(shape.center() - galley.size() / 2.0, galley, text_ink);
        }
        if pointer.is_some_and(|p| shape.expand(1.0).contains(p)) {
            pointed = Some((lane.worker, bar));
        }
    }
    for (k, window) in lane.windows.iter().enumerate() {
        // Each band sits a little lower than the one before, so that those open at one time can be told apart.
        let y = band.bottom() - STRIP + 2.5 + 2.0 * (k % 8) as f32;
        let to = x(window.open.end).min(band.right());
        let (color, width) = if chosen == Some(window.panel) { (p.accent, 2.5) } else { (p.quiet, 1.0) };
        paint.hline(x(window.open.start)..=to, y, Stroke::new(width, color));
    }
    pointed
}

/// The chart in a sentence, for those who don't see it.
fn summary(m: &Model<'_>) -> String {
    let end = m.rows.iter().map(|r| r.at.end).max().unwrap_or(0);
    format!("Time chart: {} steps for {} people in {}", m.rows.len(), m.job.crew.len(), clock(end))
}
