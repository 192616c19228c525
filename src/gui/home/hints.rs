//! Five hints for the first time, one after the other, each beside what it is about.

use super::HomeWish;
use crate::gui::action::{Action, Model};
use crate::gui::commands::find_button_id;
use crate::gui::theme;
use crate::gui::widgets::primary;
use crate::message;
use crate::say;
use crate::words::Message;
use eframe::egui::{self, Align2, Area, Color32, Order, Pos2, Shape, Stroke, Ui, Vec2, pos2, vec2};

/// What a hint says, and which part of the window it points at.
struct Hint {
    title: Message,
    text: Message,
    at: Place,
}

#[derive(Debug, Clone, Copy)]
enum Place {
    Rail,
    Map,
    Side,
    Below,
    Top,
}

const HINTS: [Hint; 5] = [
    Hint { title: message!("home-hint-work"), text: message!("home-hint-work-text"), at: Place::Rail },
    Hint { title: message!("home-hint-vehicle"), text: message!("home-hint-vehicle-text"), at: Place::Map },
    Hint { title: message!("home-hint-chosen"), text: message!("home-hint-chosen-text"), at: Place::Side },
    Hint { title: message!("home-hint-who"), text: message!("home-hint-who-text"), at: Place::Below },
    Hint { title: message!("home-hint-name"), text: message!("home-hint-name-text"), at: Place::Top },
];

const WIDTH: f32 = 300.0;

/// Draws the hint that is to be seen.
pub(in crate::gui) fn hints_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some((at, hint)) = m.home.hint.and_then(|at| Some((at, HINTS.get(at)?))) else { return };
    let p = theme::of(ui.ctx());
    let (tip, anchor) = place(ui, hint.at);
    let shown = Area::new(egui::Id::unique("hint")).order(Order::Foreground).fixed_pos(anchor.0).pivot(anchor.1).show(
        ui,
        |ui| {
            let frame = egui::Frame::new()
                .fill(p.sheet)
                .stroke(Stroke::new(2.0, p.accent))
                .corner_radius(theme::CORNER)
                .inner_margin(egui::Margin::same(12));
            frame.show(ui, |ui| {
                ui.set_width(WIDTH);
                ui.label(theme::bold(hint.title.text(), 16.0));
                ui.label(hint.text.text());
                if matches!(hint.at, Place::Map) && m.path.is_none() {
                    ui.label(say!("home-hint-invented"));
                }
                ui.horizontal(|ui| {
                    let last = at + 1 == HINTS.len();
                    if primary(ui, if last { say!("common-done") } else { say!("home-next-hint") }).clicked() {
                        out.push(Action::Home(HomeWish::Hint((!last).then_some(at + 1))));
                    }
                    if !last && ui.button(say!("home-no-hints")).clicked() {
                        out.push(Action::Home(HomeWish::Hint(None)));
                    }
                    ui.label(theme::soft(say!("home-hint-of", number = at + 1, all = HINTS.len())));
                });
            });
        },
    );
    pointer(ui, shown.response.rect.center(), tip, p.accent);
}

/// The point that a hint speaks of, and where its box hangs.
fn place(ui: &Ui, place: Place) -> (Pos2, (Pos2, Align2)) {
    let all = ui.ctx().content_rect();
    let left = all.left() + theme::RAIL_WIDTH;
    let right = all.right() - theme::SIDE_WIDTH;
    let bottom = all.bottom() - theme::CHART_HEIGHT;
    let gap = 28.0;
    match place {
        Place::Rail => {
            let tip = pos2(left - 8.0, all.top() + 160.0);
            (tip, (tip + vec2(gap, 0.0), Align2::LEFT_CENTER))
        }
        Place::Map => {
            let tip = pos2(f32::midpoint(left, right), f32::midpoint(all.top(), bottom));
            (tip, (tip + vec2(0.0, gap), Align2::CENTER_TOP))
        }
        Place::Side => {
            let tip = pos2(right + 8.0, all.top() + 200.0);
            (tip, (tip - vec2(gap, 0.0), Align2::RIGHT_CENTER))
        }
        Place::Below => {
            let tip = pos2(f32::midpoint(left, right), bottom + 12.0);
            (tip, (tip - vec2(0.0, gap), Align2::CENTER_BOTTOM))
        }
        Place::Top => {
            let button = ui.data(|data| data.get_temp::<egui::Rect>(find_button_id()));
            let x = button.map_or(right - 40.0, |button| button.center().x);
            let tip = pos2(x, all.top() + theme::bar_height(ui.ctx()) - 6.0);
            (tip, (tip + vec2(0.0, gap), Align2::CENTER_TOP))
        }
    }
}

/// A wedge from the box of a hint to what it speaks of.
fn pointer(ui: &Ui, from: Pos2, tip: Pos2, colour: Color32) {
    let toward: Vec2 = (tip - from).normalized();
    let base = tip - toward * 26.0;
    let side = toward.rot90() * 9.0;
    let painter = ui.ctx().layer_painter(egui::LayerId::new(Order::Foreground, egui::Id::unique("hint-pointer")));
    painter.add(Shape::convex_polygon(vec![tip, base + side, base - side], colour, Stroke::NONE));
}
