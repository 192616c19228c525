//! A dot for each reading on a line of thickness, a row for each spot, and a line for the bound that counts.

use crate::gui::theme;
use crate::gui::widgets::units_of;
use crate::job::{Job, Spot};
use crate::measure::FilmSummary;
use crate::say;
use eframe::egui::{self, Align2, FontId, Rect, Sense, Stroke, Ui, pos2, vec2};

/// Height of a row and of the scale, in points.
const ROW: f32 = 9.0;
const SCALE: f32 = 18.0;
/// Rows that are shown at most; a panel with more spots has several in a row.
const ROWS: usize = 12;

/// Draws the readings of one survey.
pub(super) fn dots_ui(ui: &mut Ui, job: &Job, spots: &[Spot], survey: u32, film: &FilmSummary) {
    let p = theme::of(ui.ctx());
    let suspects = job.suspects();
    let read: Vec<&Spot> = spots.iter().filter(|s| s.count_in(survey) > 0).collect();
    let values = || read.iter().flat_map(|s| s.readings_in(survey)).map(|r| r.thickness_um.um());
    let low = values().fold(film.lower.um(), f64::min);
    let high = values().fold(film.mean, f64::max);
    let (low, high) = ((low - 2.0).floor(), (high + 2.0).ceil());
    let rows = read.len().clamp(1, ROWS);
    let size = vec2(ui.available_width(), ROW * rows as f32 + SCALE + 8.0);
    let (area, response) = ui.allocate_exact_size(size, Sense::hover());
    let plot = Rect::from_min_max(area.min + vec2(6.0, 4.0), area.max - vec2(6.0, SCALE + 4.0));
    let x = |um: f64| plot.left() + plot.width() * ((um - low) / (high - low)) as f32;
    let paint = ui.painter();
    paint.rect_filled(plot.expand(4.0), 3.0, p.paper);
    paint.vline(x(film.mean), plot.y_range(), Stroke::new(1.0, p.rim));
    for (row, spot) in read.iter().enumerate() {
        let y = plot.top() + ROW * ((row % rows) as f32 + 0.5);
        for reading in spot.readings_in(survey) {
            let at = pos2(x(reading.thickness_um.um()), y);
            if suspects.has(reading) {
                paint.circle_stroke(at, 3.0, Stroke::new(1.2, p.note));
            } else {
                paint.circle_filled(at, 3.0, if spot.edge { p.rim } else { p.ink });
            }
        }
    }
    let bound = x(film.lower.um());
    paint.vline(bound, plot.y_range().expand(4.0), Stroke::new(2.5, p.accent));
    let font = FontId::proportional(12.0);
    let below = plot.bottom() + 6.0;
    let bold = FontId::new(12.0, theme::bold_family());
    let units = units_of(ui.ctx());
    let text = say!("survey-at-least", film = units.with_unit(film.lower.um(), "µm", 0));
    let lower = paint.text(pos2(bound.max(area.left()), below), Align2::LEFT_TOP, text, bold, p.accent);
    let mean = say!("survey-mean", film = units.number(film.mean, "µm", 0));
    let half = paint.layout_no_wrap(mean.clone(), font.clone(), p.ink_soft).size().x / 2.0;
    let middle = x(film.mean).max(lower.right() + 8.0 + half).min(area.right() - half);
    paint.text(pos2(middle, below), Align2::CENTER_TOP, mean, font, p.ink_soft);
    let name = say!(
        "survey-plot",
        count = film.n,
        low = format!("{:.0}", values().fold(f64::INFINITY, f64::min)),
        high = format!("{:.0}", values().fold(0.0, f64::max)),
        mean = format!("{:.0}", film.mean),
        least = format!("{:.0}", film.lower.um()),
    );
    let name = units.say(&name).into_owned();
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Meter, true, &name));
}
