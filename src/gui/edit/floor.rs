//! The floor seen from above: the body as a rectangle, the room beside it where nobody can stand, and the stances as numbered
//! dots that can be dragged, or pushed with the arrow keys.

use super::Editing;
use super::wish::VehicleWish;
use crate::geometry::{FloorPoint, FloorVector};
use crate::gui::action::{Action, Model};
use crate::gui::theme::{self, Palette};
use crate::say;
use crate::vehicle::{Stance, Template};
use eframe::egui::{
    self, Align2, EventFilter, FontId, Key, Painter, Pos2, Rect, Response, Sense, Shape, Stroke, StrokeKind, Ui, pos2,
    vec2,
};

/// Air round everything, points.
const MARGIN: f32 = 16.0;
/// Room at the left for the heading.
const HEADING: f32 = 132.0;
/// How exactly a stance is put down, mm.
const STEP_MM: f32 = 10.0;
/// How far one press of an arrow key pushes, mm; with Shift one step only.
const PUSH_MM: f32 = 50.0;

/// How the floor lies on the screen, front at the left.
#[derive(Clone, Copy)]
struct Plan {
    origin: Pos2,
    scale: f32,
}

impl Plan {
    fn of(t: &Template, area: Rect) -> Self {
        let (length, half) = (t.length.mm() as f32, 0.5 * t.width.mm() as f32);
        let room = 2.0 * Stance::ROOM_MM as f32;
        let (mut low, mut high) = ((-room, -half - room), (length + room, half + room));
        for stance in &t.stances {
            low = (low.0.min(stance.at.x - 150.0), low.1.min(stance.at.y - 150.0));
            high = (high.0.max(stance.at.x + 150.0), high.1.max(stance.at.y + 150.0));
        }
        let scale = (area.width() / (high.0 - low.0)).min(area.height() / (high.1 - low.1));
        let middle = vec2(low.0.midpoint(high.0), low.1.midpoint(high.1));
        Self { origin: area.center() - middle * scale, scale }
    }

    fn to_screen(self, at: FloorPoint) -> Pos2 {
        self.origin + vec2(at.x, at.y) * self.scale
    }

    fn to_floor(self, at: Pos2) -> FloorPoint {
        let at = (at - self.origin) / self.scale;
        let step = |v: f32| (v / STEP_MM).round() * STEP_MM;
        FloorPoint::new(step(at.x), step(at.y))
    }

    fn body(self, t: &Template, grown: f64) -> Rect {
        let (length, half, grown) = (t.length.mm() as f32, 0.5 * t.width.mm() as f32, grown as f32);
        let corner = |x, y| self.to_screen(FloorPoint::new(x, y));
        Rect::from_two_pos(corner(-grown, -half - grown), corner(length + grown, half + grown))
    }
}

/// Draws the floor and takes drags.
pub(super) fn floor_ui(ui: &mut Ui, m: &Model<'_>, editing: &Editing, out: &mut Vec<Action>) {
    let (whole, _) = ui.allocate_exact_size(ui.available_size(), Sense::hover());
    let paint = ui.painter_at(whole);
    let p = theme::of(ui.ctx());
    let area = Rect::from_min_max(whole.min + vec2(HEADING, MARGIN), whole.max - vec2(MARGIN, MARGIN));
    let plan = Plan::of(m.template, area);
    heading(&paint, whole, p);
    body(&paint, m.template, plan, p);
    let at_work: Vec<usize> = m.view.chosen.iter().filter_map(|id| m.template.panel(id)).map(|p| p.stance).collect();
    let mut moved = None;
    for (index, stance) in m.template.stances.iter().enumerate() {
        let response = dot_response(ui, m, plan, index, stance);
        let place = dragged_to(&response, plan, stance);
        if place != stance.at {
            moved = Some((index, place));
        }
        if response.drag_started() || response.clicked() || response.gained_focus() {
            out.push(Action::Vehicle(VehicleWish::ChooseStance(Some(stance.id.clone()))));
        }
        if response.drag_stopped() && place != stance.at {
            out.push(Action::Vehicle(VehicleWish::MoveStance { stance: stance.id.clone(), to: place, by_keys: false }));
        }
        if let Some(by) = pushed(ui, &response) {
            let to = stance.at + by;
            out.push(Action::Vehicle(VehicleWish::MoveStance { stance: stance.id.clone(), to, by_keys: true }));
        }
        if response.has_focus() {
            paint.circle_stroke(plan.to_screen(place), 14.0, Stroke::new(2.5, p.accent));
        }
    }
    for panel in m.view.chosen.iter().filter_map(|id| m.template.panel(id)) {
        if let Some(stance) = m.template.stances.get(panel.stance) {
            let middle = panel.label.centre;
            let half = 0.5 * m.template.width.mm() as f32;
            let at = FloorPoint::new(middle.x.clamp(0.0, m.template.length.mm() as f32), middle.y.clamp(-half, half));
            paint.line_segment([plan.to_screen(at), plan.to_screen(stance.at)], Stroke::new(1.5, p.accent));
            paint.circle_filled(plan.to_screen(at), 3.0, p.accent);
        }
    }
    for (index, stance) in m.template.stances.iter().enumerate() {
        let at = match moved {
            Some((other, place)) if other == index => place,
            _ => stance.at,
        };
        let chosen = editing.stance.as_ref() == Some(&stance.id);
        // Dragged out of sight it stays at the border.
        let at = whole.shrink(14.0).clamp(plan.to_screen(at));
        dot(&paint, at, index + 1, at_work.contains(&index), chosen, p);
    }
}

fn heading(paint: &Painter, whole: Rect, p: &Palette) {
    let at = whole.min + vec2(MARGIN, 8.0);
    paint.text(at, Align2::LEFT_TOP, say!("edit-stances"), FontId::new(14.0, theme::bold_family()), p.ink);
    let text = say!("edit-stances-how");
    let galley = paint.layout(text.to_owned(), FontId::proportional(12.0), p.ink_soft, HEADING - MARGIN - 8.0);
    paint.galley(at + vec2(0.0, 22.0), galley, p.ink_soft);
}

fn body(paint: &Painter, t: &Template, plan: Plan, p: &Palette) {
    // Nobody can stand between the body and the thin line.
    paint.rect_stroke(plan.body(t, Stance::ROOM_MM), 10.0, Stroke::new(1.0, p.hairline), StrokeKind::Middle);
    let body = plan.body(t, 0.0);
    paint.rect(body, 10.0, p.paint, Stroke::new(1.5, p.contour), StrokeKind::Middle);
    let tip = pos2(body.left() + 10.0, body.center().y);
    let arrow = vec![tip, tip + vec2(9.0, -5.0), tip + vec2(9.0, 5.0)];
    paint.add(Shape::convex_polygon(arrow, p.ink_soft, Stroke::NONE));
    let text = format!("{:.0} × {:.0} mm", t.length.mm(), t.width.mm());
    paint.text(body.center(), Align2::CENTER_CENTER, text, FontId::proportional(12.0), p.ink_soft);
}

fn dot_response(ui: &Ui, m: &Model<'_>, plan: Plan, index: usize, stance: &Stance) -> Response {
    let place = Rect::from_center_size(plan.to_screen(stance.at), vec2(24.0, 24.0));
    let id = ui.scope_id().with(("stance", &stance.id));
    let response = ui.interact(place, id, Sense::click_and_drag());
    let worked: Vec<String> =
        m.template.panels.iter().filter(|p| p.stance == index).map(|p| p.name(m.view.naming)).collect();
    let words = match worked.as_slice() {
        [] => say!("edit-stance-unused").to_owned(),
        [one] => one.clone(),
        [one, rest @ ..] => say!("edit-and-more", names = one, count = rest.len()),
    };
    let text = say!("edit-stance-of", number = index + 1, panels = words);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &text));
    if response.hovered() {
        ui.ctx().set_cursor_icon(egui::CursorIcon::Grab);
    }
    if response.dragged() { response } else { response.on_hover_text(text) }
}

/// Where a stance is held while it is dragged; where it is otherwise. One on the centreline keeps to it.
fn dragged_to(response: &Response, plan: Plan, stance: &Stance) -> FloorPoint {
    let held = response.interact_pointer_pos().filter(|_| response.dragged() || response.drag_stopped());
    let Some(mut place) = held.map(|at| plan.to_floor(at)) else { return stance.at };
    if stance.at.y == 0.0 {
        place.y = 0.0;
    }
    place
}

/// How far the arrow keys push the stance that has the focus.
fn pushed(ui: &Ui, response: &Response) -> Option<FloorVector> {
    if !response.has_focus() {
        return None;
    }
    ui.memory_mut(|memory| {
        let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..Default::default() };
        memory.set_focus_lock_filter(response.id, filter);
    });
    let ways = [
        (Key::ArrowLeft, (-1.0, 0.0)),
        (Key::ArrowRight, (1.0, 0.0)),
        (Key::ArrowUp, (0.0, -1.0)),
        (Key::ArrowDown, (0.0, 1.0)),
    ];
    ui.input(|i| {
        let far = if i.modifiers.shift { STEP_MM } else { PUSH_MM };
        ways.into_iter().find(|(key, _)| i.key_pressed(*key)).map(|(_, (x, y))| FloorVector::new(x, y) * far)
    })
}

fn dot(paint: &Painter, at: Pos2, number: usize, at_work: bool, chosen: bool, p: &Palette) {
    let (fill, text) = if at_work { (p.accent, p.on_accent) } else { (p.sheet, p.ink) };
    paint.circle(at, 9.0, fill, Stroke::new(if chosen { 2.5 } else { 1.0 }, if chosen { p.accent } else { p.contour }));
    paint.text(at, Align2::CENTER_CENTER, number.to_string(), FontId::new(11.0, theme::bold_family()), text);
}
