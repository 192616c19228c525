//! Results over time: a dot for each, a line through them.

use crate::file::Attempt;
use crate::gui::action::Model;
use crate::gui::theme;
use crate::practice::Done;
use crate::say;
use eframe::egui::{self, Align2, FontId, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

/// Room for the figures at the left, for the dates below, for the head above.
const LEFT: f32 = 64.0;
const FOOT: f32 = 22.0;
const HEAD: f32 = 38.0;
/// Most results shown.
const MOST: usize = 60;

/// Draws the results of the learner; of one exercise while that is open.
pub(super) fn plot_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(ui.available_size(), Sense::hover());
    let paint = ui.painter_at(area);
    let doing = m.practice.doing();
    let all: Vec<&Attempt> =
        m.practice.attempts.iter().filter(|a| doing.is_none_or(|d| a.exercise == d.written())).collect();
    let said = say!("practice-results", count = all.len());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Figure, true, &said));
    if all.is_empty() {
        let text = match &m.practice.learner {
            Some(name) => say!("practice-results-of", person = name),
            None => say!("practice-results-here").to_owned(),
        };
        paint.text(area.center(), Align2::CENTER_CENTER, text, FontId::proportional(14.0), p.ink_soft);
        return;
    }
    let shown = &all[all.len().saturating_sub(MOST)..];
    let small = FontId::proportional(12.0);
    let who = m.practice.learner.as_deref().unwrap_or(say!("practice-nobody"));
    let what = doing.map_or_else(|| say!("practice-every-exercise"), Done::name);
    let head = say!("practice-share-of-best", person = who, exercise = what);
    paint.text(area.left_top() + vec2(16.0, 6.0), Align2::LEFT_TOP, head, FontId::proportional(14.0), p.ink);
    let plot = Rect::from_min_max(area.min + vec2(LEFT, HEAD), area.max - vec2(24.0, FOOT));
    for pct in [0_u8, 50, 100] {
        let y = plot.bottom() - plot.height() * f32::from(pct) / 100.0;
        paint.hline(plot.x_range(), y, Stroke::new(1.0, p.hairline));
        let text = format!("{pct}\u{202f}%");
        paint.text(pos2(plot.left() - 8.0, y), Align2::RIGHT_CENTER, text, small.clone(), p.ink_soft);
    }
    // Dots keep a distance that people can see, from the left, until there are too many for that.
    let step = ((plot.width() - 150.0) / (shown.len().max(2) - 1) as f32).min(56.0);
    let at = |k: usize, a: &Attempt| {
        pos2(plot.left() + 12.0 + (step - 0.4) * k as f32, plot.bottom() - plot.height() * a.score_pct as f32 / 100.0)
    };
    let mut taken = Vec::new();
    for done in Done::ALL {
        let mine: Vec<_> =
            shown.iter().enumerate().filter(|(_, a)| a.exercise == done.written()).map(|(k, a)| at(k, a)).collect();
        // Where several are drawn, each line says at its end which exercise it is.
        if let Some(last) = mine.last().filter(|_| doing.is_none()) {
            let name = paint.layout_no_wrap(done.name().to_owned(), small.clone(), p.ink_soft);
            let place = Align2::LEFT_CENTER.anchor_size(*last + vec2(9.0, 0.0), name.size());
            let on_dot = |(k, a): (usize, &&Attempt)| place.expand(6.0).contains(at(k, a)) && at(k, a) != *last;
            let covered = taken.iter().any(|t: &Rect| t.intersects(place)) || shown.iter().enumerate().any(on_dot);
            let place = if covered { place.translate(vec2(-14.0, 16.0)) } else { place };
            taken.push(place);
            paint.galley(place.min, name, p.ink_soft);
        }
        paint.add(Shape::line(mine, Stroke::new(1.5 * p.line, p.ink_soft)));
    }
    let mut last_date = f32::MIN;
    for (k, attempt) in shown.iter().enumerate() {
        let place = at(k, attempt);
        paint.circle(place, 4.5, p.accent, Stroke::new(1.5, p.sheet));
        let new_day = k == 0 || shown[k - 1].date != attempt.date;
        if new_day && place.x - last_date > 84.0 {
            last_date = place.x;
            paint.vline(place.x, plot.bottom()..=plot.bottom() + 4.0, Stroke::new(1.0, p.quiet));
            let x = place.x.min(plot.right() - 60.0);
            paint.text(
                pos2(x, plot.bottom() + 5.0),
                Align2::LEFT_TOP,
                attempt.date.to_string(),
                small.clone(),
                p.ink_soft,
            );
        }
    }
    if let Some(pointer) = response.hover_pos() {
        let near = shown
            .iter()
            .enumerate()
            .min_by(|(i, a), (k, b)| at(*i, a).distance(pointer).total_cmp(&at(*k, b).distance(pointer)));
        if let Some((_, a)) = near.filter(|(k, a)| at(*k, a).distance(pointer) < 14.0) {
            let exercise = Done::of_written(&a.exercise).map_or(a.exercise.as_str(), |done| done.name());
            let text = format!("{}\n{exercise}, {}\n{}\u{202f}%", a.date, a.vehicle, a.score_pct);
            response.on_hover_text_at_pointer(text);
        }
    }
}
