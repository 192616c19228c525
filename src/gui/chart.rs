//! The time chart under the map: a lane per worker, work as bars, windows as thin bands.

use super::action::{Action, Model, ViewChange};
use super::theme;
use super::view_state::Workspace;
use super::widgets::hatched;
use crate::polish::StepKind;
use crate::say;
use crate::scene::{Bar, Lane, TimeChart, Work, polish_chart, time_chart};
use crate::units::clock;
use eframe::egui::{self, Align2, FontId, Painter, Rect, Sense, Stroke, Ui, pos2, vec2};

/// Room for the names of the workers.
const NAMES: f32 = 132.0;
/// Height of the windows under the bars of a lane.
const STRIP: f32 = 19.0;
/// Least distance between two times along the top.
const LEAST_APART: f32 = 52.0;
/// Room for the clock along the top.
const CLOCK: f32 = 20.0;

/// Draws the chart.
pub(super) fn chart_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(ui.available_size(), Sense::CLICK | Sense::DRAG);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Canvas, true, summary(m)));
    let paint = ui.painter_at(area);
    let Some((chart, stale)) = shown(m) else {
        let font = FontId::proportional(14.0);
        paint.text(area.center(), Align2::CENTER_CENTER, nothing(m), font, p.ink_soft);
        return;
    };
    let plot = Rect::from_min_max(area.min + vec2(NAMES, CLOCK), area.max - vec2(12.0, 8.0));
    let span = chart.span.duration().max(1) as f32;
    let x = |s: i64| plot.left() + plot.width() * s as f32 / span;
    grid(&paint, plot, chart.span.end, chart.tick, x);
    let height = plot.height() / chart.lanes.len().max(1) as f32;
    let mut pointed = None;
    for (k, lane) in chart.lanes.iter().enumerate() {
        let top = plot.top() + height * k as f32;
        let band = Rect::from_min_max(pos2(plot.left(), top + 4.0), pos2(plot.right(), top + height - 4.0));
        pointed = lane_ui(&paint, m, lane, band, x, stale, response.hover_pos()).or(pointed);
        let noted = !lane.note.is_empty() && band.height() >= 34.0;
        let at = pos2(area.left() + 16.0, band.center().y - if noted { 8.0 } else { 0.0 });
        let name = paint.text(at, Align2::LEFT_CENTER, &lane.title, FontId::proportional(14.0), p.ink);
        if noted {
            let under = name.left_bottom() + vec2(0.0, 1.0);
            paint.text(under, Align2::LEFT_TOP, &lane.note, FontId::proportional(12.0), p.ink_soft);
        }
    }
    for (k, day) in chart.days.iter().enumerate() {
        paint.vline(x(*day), plot.y_range(), Stroke::new(2.0, p.note));
        let galley = paint.layout_no_wrap(say!("window-chart-day", day = k + 2), FontId::proportional(12.0), p.note);
        let place = Align2::LEFT_BOTTOM.anchor_size(pos2(x(*day) + 3.0, plot.bottom() + 4.0), galley.size());
        paint.rect_filled(place.expand2(vec2(2.0, 0.0)), 2.0, p.sheet);
        paint.galley(place.min, galley, p.note);
    }
    if let Some(moment) = m.view.moment {
        paint.vline(x(moment), plot.y_range(), Stroke::new(1.5, p.accent));
    }
    if let Some(at) = response.interact_pointer_pos().filter(|_| response.dragged() || response.clicked()) {
        let share = ((at.x - plot.left()) / plot.width()).clamp(0.0, 1.0);
        let moment = Some((share * span).round() as i64);
        if moment != m.view.moment {
            out.push(Action::View(ViewChange::Moment(moment)));
        }
    }
    if let Some((worker, bar)) = pointed {
        let panel = &m.template.panels[bar.panel];
        let text = say!(
            "window-chart-bar",
            who = &m.job.crew[worker].name,
            does = bar.work.verb(),
            panel = panel.name(m.view.naming),
            from = clock(bar.at.start),
            to = clock(bar.at.end)
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
    // Where the lines stand close, only some of them have room for their time.
    let tick = tick.max(1);
    let sparse = (LEAST_APART / (x(tick) - x(0)).max(1.0)).ceil().max(1.0) as i64;
    for k in 0..=end / tick {
        let at = k * tick;
        paint.vline(x(at), plot.y_range(), Stroke::new(1.0, p.hairline));
        if k % sparse == 0 {
            paint.text(pos2(x(at), plot.top() - 4.0), Align2::CENTER_BOTTOM, clock(at), font.clone(), p.ink_soft);
        }
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
        paint.rect(shape, 0.0, fill, line, egui::StrokeKind::Inside);
        if let Work::Polish(kind) = bar.work {
            hatched(paint, shape.shrink(1.0), StepKind::Finish as usize - kind as usize, text_ink.gamma_multiply(0.4));
        }
        let font = FontId::new(12.0, theme::bold_family());
        let long = match bar.work {
            Work::Polish(kind) => format!("{} {}", bar.number, kind.verb()),
            Work::Coat(_) => bar.number.to_string(),
        };
        let mut galley = paint.layout_no_wrap(long, font.clone(), text_ink);
        if galley.size().x + 12.0 > shape.width() {
            galley = paint.layout_no_wrap(bar.number.to_string(), font, text_ink);
        }
        if galley.size().x + 2.0 <= shape.width() {
            if matches!(bar.work, Work::Polish(_)) {
                // The hatch must not run through the number.
                paint.rect_filled(Rect::from_center_size(shape.center(), galley.size() + vec2(2.0, -2.0)), 2.0, fill);
            }
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
        let (color, width) = if chosen == Some(window.panel) { (p.accent, 2.5) } else { (p.rim, 1.0) };
        paint.hline(x(window.open.start)..=to, y, Stroke::new(width, color));
    }
    pointed
}

/// The order of the work that is open, and whether it is out of date; none while none is known.
fn shown(m: &Model<'_>) -> Option<(TimeChart, bool)> {
    if m.view.workspace == Workspace::Correction {
        let order = m.polishing.order.as_ref().filter(|o| !o.rows.is_empty())?;
        return Some((polish_chart(m.job, order), !m.polishing.state.is_current()));
    }
    let window = m.insight.air.window;
    let chart = || time_chart(m.job, m.rows, (window.min_s, window.max_s));
    (!m.rows.is_empty()).then(|| (chart(), !m.order.is_current()))
}

/// What stands where no chart is.
fn nothing(m: &Model<'_>) -> &'static str {
    let correction = m.view.workspace == Workspace::Correction;
    match (correction, if correction { &m.polishing.state } else { m.order }) {
        (true, state) if state.is_empty() => say!("window-nothing-to-polish"),
        (_, state) if state.is_working() => say!("window-planning-order"),
        (true, _) => say!("window-no-polishing-order"),
        (false, _) => say!("window-no-coating-order"),
    }
}

/// The chart in a sentence, for those who don't see it.
fn summary(m: &Model<'_>) -> String {
    let Some((chart, _)) = shown(m) else { return say!("window-chart-empty").to_owned() };
    let steps: usize = chart.lanes.iter().map(|l| l.bars.len()).sum();
    let (people, time) = (m.job.crew.len(), clock(chart.span.end));
    if m.view.workspace == Workspace::Correction {
        say!("window-chart-of-polishing", steps = steps, people = people, time = time)
    } else {
        say!("window-chart-of-coating", steps = steps, people = people, time = time)
    }
}
