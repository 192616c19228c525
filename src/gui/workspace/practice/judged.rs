//! After the check: the score and what it is made of, every mark with its rule, long walks.

use super::{head, kept};
use crate::gui::action::{Action, Model};
use crate::gui::practice::{Laying, PracticeWish};
use crate::gui::theme;
use crate::gui::widgets::{fact, primary, section};
use crate::practice::{Done, LongWay, MOST_SECONDS_MORE, Mark, Trouble, price_s};
use crate::say;
use crate::units::{clock, minutes};
use eframe::egui::{self, Align2, FontId, RichText, Sense, Ui, vec2};

/// Draws the sheet.
pub(super) fn judged_ui(ui: &mut Ui, m: &Model<'_>, laying: &Laying, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let Some(judged) = &laying.judged else { return };
    head(ui, laying.exercise.setup.lesson.name(), out);
    let score = &judged.score;
    ui.label(theme::bold(say!("practice-of-best", percent = score.percent()), 28.0));
    kept(ui, m);
    let against = |mine, best| say!("practice-against-best", mine = minutes(mine), best = minutes(best));
    fact(ui, say!("practice-takes"), against(score.makespan_s, score.best_makespan_s));
    fact(ui, say!("practice-walking"), against(score.walking_s, score.best_walking_s));
    let broken = match score.broken {
        0 => say!("practice-none-broken").to_owned(),
        n => say!("practice-broken-cost", count = n, time = minutes(score.price_s)),
    };
    fact(ui, say!("practice-broken-rules"), broken);
    ui.horizontal_wrapped(|ui| {
        if primary(ui, say!("practice-again")).clicked() {
            let done = Done::Lesson(laying.exercise.setup.lesson);
            out.push(Action::Practice(PracticeWish::Start(done)));
        }
        if ui.button(say!("practice-change-it")).on_hover_text(say!("practice-change-it-means")).clicked() {
            out.push(Action::Practice(PracticeWish::Change));
        }
        if ui.button(say!("practice-show-best")).clicked() {
            out.push(Action::Practice(PracticeWish::ShowBest));
        }
    });
    if judged.marks.is_empty() {
        section(ui, say!("practice-no-rule-broken"));
        ui.label(RichText::new(say!("practice-all-good")).color(p.go));
    } else {
        section(ui, say!("practice-went-wrong"));
        for (k, mark) in judged.marks.iter().enumerate() {
            one_mark(ui, k, mark, laying.mark == Some(k), out);
        }
    }
    if !judged.ways.is_empty() {
        section(ui, &say!("practice-long-walks", count = judged.ways.len()));
        ui.label(theme::soft(LongWay::RULE.text()));
        for way in &judged.ways {
            let text = format!("{}  {}", clock(way.at_s), way.happens);
            let label = egui::Label::new(text).sense(Sense::click());
            if ui.add(label).clicked() {
                out.push(Action::Practice(PracticeWish::Moment(way.at_s)));
            }
        }
    }
    section(ui, say!("practice-score-comes-about"));
    ui.label(theme::soft(how()));
}

/// The rule of the score in words.
fn how() -> String {
    let prices = Trouble::ALL.map(priced).join(", ");
    say!("practice-score-rule", prices = prices, most = minutes(MOST_SECONDS_MORE))
}

/// A kind of broken rule with what it costs.
fn priced(trouble: Trouble) -> String {
    let time = minutes(price_s(trouble));
    match trouble {
        Trouble::Lean => say!("practice-price-lean", time = time),
        Trouble::TopLast => say!("practice-price-top-last", time = time),
        Trouble::Place => say!("practice-price-place", time = time),
        Trouble::Window => say!("practice-price-window", time = time),
        Trouble::Other => say!("practice-price-other", time = time),
    }
}

/// One mark; open, it says the rule and what a good order does.
fn one_mark(ui: &mut Ui, k: usize, mark: &Mark, open: bool, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let width = ui.available_width();
    let text = format!("{}  {}", clock(mark.at_s), mark.happens);
    let galley = ui.painter().layout(text.clone(), FontId::proportional(14.0), p.ink, width - 36.0);
    let (area, response) = ui.allocate_exact_size(vec2(width, galley.size().y + 10.0), Sense::click());
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::Button, true, open, &text));
    if ui.is_rect_visible(area) {
        let paint = ui.painter();
        if open || response.hovered() || response.has_focus() {
            paint.rect_filled(area, 4.0, if open { p.accent_wash } else { p.paper });
        }
        super::marks::sign(paint, area.left_top() + vec2(15.0, 15.0), k + 1);
        paint.galley(area.left_top() + vec2(32.0, 5.0), galley, p.ink);
    }
    if response.clicked() {
        out.push(Action::Practice(PracticeWish::Mark((!open).then_some(k))));
    }
    if open {
        ui.indent(("mark", k), |ui| {
            ui.label(theme::bold(mark.trouble.name(), 14.0));
            ui.label(mark.trouble.rule());
            ui.label(RichText::new(&mark.better).color(p.go));
        });
    }
}

/// The number of marks in a corner, for whoever sees only the chart.
pub(super) fn summary(paint: &egui::Painter, at: egui::Pos2, count: usize) {
    let p = theme::of(paint.ctx());
    let text = say!("practice-broken-count", count = count);
    paint.text(at, Align2::RIGHT_CENTER, text, FontId::proportional(12.0), p.note);
}
