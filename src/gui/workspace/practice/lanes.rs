//! What was laid against the clock: a lane for each person, marks where they happen, and the buttons to play it.

use super::marks::sign;
use crate::gui::action::{Action, Model};
use crate::gui::practice::{Laying, PracticeWish, SPEEDS};
use crate::gui::theme;
use crate::gui::widgets::hatched;
use crate::insight::OrderRow;
use crate::job::Role;
use crate::say;
use crate::units::{clock, listed};
use crate::words::shortest;
use eframe::egui::{self, Align2, FontId, Painter, Rect, Sense, Stroke, StrokeKind, Ui, UiBuilder, pos2, vec2};

/// Room for the names.
const NAMES: f32 = 132.0;
/// Room for the buttons, and for the clock along the top.
const BUTTONS: f32 = 36.0;
const CLOCK: f32 = 18.0;
/// Height of the windows under the bars.
const STRIP: f32 = 12.0;

/// Draws buttons and lanes.
pub(super) fn lanes_ui(ui: &mut Ui, m: &Model<'_>, laying: &Laying, out: &mut Vec<Action>) {
    let area = ui.max_rect();
    let top = Rect::from_min_max(area.min + vec2(16.0, 2.0), pos2(area.right() - 12.0, area.top() + BUTTONS));
    ui.scope_builder(UiBuilder::new().max_rect(top).layout(egui::Layout::left_to_right(egui::Align::Center)), |ui| {
        buttons(ui, laying, out);
    });
    let below = Rect::from_min_max(pos2(area.left(), top.bottom()), area.max);
    let response = ui.interact(below, ui.unique_id().with("lanes"), Sense::CLICK | Sense::DRAG);
    let said = say!("practice-lanes", count = laying.rows().len(), time = clock(laying.played.end_s()));
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Canvas, true, &said));
    let plot = Rect::from_min_max(below.min + vec2(NAMES, CLOCK), below.max - vec2(12.0, 4.0));
    let end = laying.played.end_s().max(laying.exercise.best.makespan_s).max(60);
    let x = |s: i64| plot.left() + plot.width() * s as f32 / end as f32;
    let paint = ui.painter_at(below);
    grid(&paint, plot, end, x);
    let rows = laying.rows();
    let people = laying.exercise.people();
    let height = plot.height() / people as f32;
    let mut pointed = None;
    for worker in 0..people {
        let band = Rect::from_min_max(
            pos2(plot.left(), plot.top() + height * worker as f32 + 2.0),
            pos2(plot.right(), plot.top() + height * (worker + 1) as f32 - 2.0),
        );
        let member = &laying.exercise.job.crew[worker];
        let verbs: Vec<&str> = member.roles.iter().map(|r| r.verb()).collect();
        name(&paint, pos2(area.left() + 16.0, band.center().y), &member.name, &listed(&verbs));
        lane(&paint, laying, (worker, &rows), band, x);
        away(&paint, laying, worker, band, x);
        let at = response.hover_pos().filter(|at| band.contains(*at));
        pointed = pointed.or_else(|| {
            let at = at?;
            rows.iter().find(|r| r.worker == worker && x(r.at.start) <= at.x && at.x <= x(r.at.end)).cloned()
        });
    }
    for (k, mark) in laying.marks_so_far() {
        let y = plot.top() + height * (mark.worker.min(people - 1) as f32 + 0.42);
        sign(&paint, pos2(x(mark.at_s), y), k + 1);
    }
    let p = theme::of(ui.ctx());
    if let Some(moment) = laying.moment_s() {
        paint.vline(x(moment), plot.y_range(), Stroke::new(1.5, p.accent));
    }
    if let Some(at) = response.interact_pointer_pos().filter(|_| response.dragged() || response.clicked()) {
        let share = ((at.x - plot.left()) / plot.width()).clamp(0.0, 1.0);
        out.push(Action::Practice(PracticeWish::Moment((share * end as f32).round() as i64)));
    }
    if let Some(row) = pointed {
        response.on_hover_text_at_pointer(words(m, laying, &row));
    }
}

fn words(m: &Model<'_>, laying: &Laying, row: &OrderRow) -> String {
    let panel = laying.exercise.template.panels[row.panel].name(m.view.naming);
    let who = &laying.exercise.job.crew[row.worker].name;
    let does = match row.role {
        Role::Apply => say!("practice-lane-apply", person = who, panel = panel),
        Role::Level => say!("practice-lane-level", person = who, panel = panel),
    };
    format!("{does}\n{}", say!("practice-from-to", from = clock(row.at.start), to = clock(row.at.end)))
}

fn buttons(ui: &mut Ui, laying: &Laying, out: &mut Vec<Action>) {
    let mut wish = |wish| out.push(Action::Practice(wish));
    let some = !laying.played.rows.is_empty();
    let text = if laying.playing { say!("practice-stop") } else { say!("practice-play") };
    if ui.add_enabled(some, egui::Button::new(text).min_size(vec2(64.0, 28.0))).clicked() {
        wish(PracticeWish::Play(!laying.playing));
    }
    for speed in SPEEDS {
        let chosen = (laying.speed - speed).abs() < 0.01;
        let shown = shortest(f64::from(speed));
        let response = ui.add(egui::Button::selectable(chosen, format!("{shown}×")));
        if response.on_hover_text(say!("practice-speed", speed = shown)).clicked() {
            wish(PracticeWish::Speed(speed));
        }
    }
    let end = clock(laying.played.end_s());
    ui.label(match laying.moment_s() {
        Some(now) => say!("practice-moment-of", now = clock(now), end = end),
        None => end,
    });
    if let Some(judged) = &laying.judged {
        let right = ui.max_rect().right_center();
        super::judged::summary(ui.painter(), right, judged.marks.len());
    } else if laying.best {
        ui.label(theme::soft(say!("practice-planners-order")));
    }
}

fn name(paint: &Painter, at: egui::Pos2, name: &str, does: &str) {
    let p = theme::of(paint.ctx());
    paint.text(at - vec2(0.0, 8.0), Align2::LEFT_CENTER, name, FontId::proportional(14.0), p.ink);
    paint.text(at + vec2(0.0, 8.0), Align2::LEFT_CENTER, does, FontId::proportional(12.0), p.ink_soft);
}

fn grid(paint: &Painter, plot: Rect, end: i64, x: impl Fn(i64) -> f32) {
    const STEPS: [i64; 6] = [30, 60, 120, 300, 600, 1800];
    let p = theme::of(paint.ctx());
    let tick = STEPS.into_iter().find(|s| x(*s) - x(0) >= 56.0).unwrap_or(3600);
    for at in (0..=end / tick).map(|k| k * tick) {
        paint.vline(x(at), plot.y_range(), Stroke::new(1.0, p.hairline));
        let place = pos2(x(at), plot.top() - 2.0);
        paint.text(place, Align2::CENTER_BOTTOM, clock(at), FontId::proportional(12.0), p.ink_soft);
    }
}

/// The bars of a worker, levelling hatched where one does both, and the windows of what is levelled.
fn lane(
    paint: &Painter,
    laying: &Laying,
    (worker, rows): (usize, &[OrderRow]),
    band: Rect,
    x: impl Fn(i64) -> f32 + Copy,
) {
    let p = theme::of(paint.ctx());
    let fill = theme::worker(worker);
    let ink = theme::text_on(fill);
    let alone = laying.exercise.job.crew[worker].roles.len() > 1;
    let levels = laying.exercise.job.crew[worker].roles.contains(&Role::Level);
    let bottom = if levels { band.bottom() - STRIP } else { band.bottom() };
    for (k, row) in rows.iter().filter(|r| r.worker == worker).enumerate() {
        let bar = Rect::from_min_max(pos2(x(row.at.start), band.top()), pos2(x(row.at.end), bottom));
        paint.rect(bar, 0.0, fill, Stroke::new(0.8, p.contour), StrokeKind::Inside);
        if alone && row.role == Role::Level {
            hatched(paint, bar.shrink(1.0), 2, ink.gamma_multiply(0.5));
        }
        let galley = paint.layout_no_wrap((k + 1).to_string(), FontId::new(12.0, theme::bold_family()), ink);
        if galley.size().x + 2.0 <= bar.width() {
            let place = Align2::CENTER_CENTER.anchor_size(bar.center(), galley.size());
            paint.rect_filled(place.expand2(vec2(1.0, -2.0)), 2.0, fill);
            paint.galley(place.min, galley, ink);
        }
    }
    let (min_s, max_s) = laying.exercise.window_s();
    let mine = rows.iter().filter(|r| r.worker == worker && r.role == Role::Level);
    for (k, row) in mine.enumerate() {
        let applied = rows.iter().find(|r| r.role == Role::Apply && r.panel == row.panel);
        let Some(end) = applied.map(|r| r.at.end) else { continue };
        let y = bottom + 2.0 + 2.0 * (k % 5) as f32;
        let late = row.at.end > end + max_s;
        let (color, width) = if late { (p.note, 2.5) } else { (p.rim, 1.0) };
        paint.hline(x(end + min_s)..=x(end + max_s).min(band.right()), y, Stroke::new(width, color));
    }
}

/// Where somebody is away at the beginning.
fn away(paint: &Painter, laying: &Laying, worker: usize, band: Rect, x: impl Fn(i64) -> f32) {
    let p = theme::of(paint.ctx());
    let is_away = |o: usize| laying.exercise.panel_of(o).is_none();
    for row in laying.played.rows.iter().filter(|r| r.worker == worker && is_away(r.operation)) {
        if row.interval.duration() < 30 {
            continue; // only stands there
        }
        let bar = Rect::from_min_max(
            pos2(x(row.interval.start), band.top()),
            pos2(x(row.interval.end), band.bottom() - STRIP),
        );
        paint.rect(bar, 2.0, p.paper, Stroke::new(1.0, p.rim), StrokeKind::Inside);
        paint.text(bar.center(), Align2::CENTER_CENTER, say!("practice-away"), FontId::proportional(12.0), p.ink);
    }
}
