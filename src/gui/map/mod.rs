//! The map: pointer and keys to wishes. What it looks like is in [`paint`], where things lie in [`layout`].

mod badges;
mod draw;
mod labels;
#[cfg(test)]
mod labels_test;
mod layout;
mod legend;
mod paint;
mod picture;
mod round;
mod way;

pub use layout::MapCache;

use super::action::{Action, Model, ViewChange};
use super::edit::VehicleWish;
use super::practice::PracticeWish;
use super::theme;
use super::view_state::{Tool, Workspace};
use super::widgets::button_room;
use crate::geometry::{MapPoint, Orientation, ScreenPoint, ScreenRect, ScreenVector, Viewport};
use crate::job::Defect;
use crate::say;
use crate::scene::{MapScene, Overlay};
use crate::vehicle::{Direction, Panel};
use eframe::egui::accesskit::Action as Access;
use eframe::egui::{self, EventFilter, Key, Rect, Sense, Stroke, StrokeKind, Ui, pos2};
use picture::Picture;
use std::sync::Arc;

/// Air round the vehicle, in points.
pub(super) const MARGIN: f32 = 28.0;

/// Draws the map into all the room there is.
pub(super) fn map_ui(ui: &mut Ui, m: &Model<'_>, cache: &mut MapCache, out: &mut Vec<Action>) {
    let builder = egui::UiBuilder::new()
        .id_salt("map")
        .accessibility_role(egui::Role::ListBox)
        .accessibility_label(say!("window-vehicle-map"));
    ui.scope_builder(builder, |ui| {
        let (area, background) = ui.allocate_exact_size(ui.available_size(), Sense::CLICK | Sense::DRAG);
        let view = viewport(m, area, theme::target_side(ui.ctx()) - 8.0, out);
        let (view, moving) = pointer(ui, m, cache, &background, view, out);
        let paint = ui.painter_at(area);
        cache.shift = Picture::bring_up(cache, &paint, m, &view, moving);
        let hovered =
            background.hover_pos().filter(|_| !background.dragged()).and_then(|p| panel_under(m, cache, &view, p));
        let Some(picture) = &cache.picture else { return };
        let scene = Arc::clone(picture.scene());
        picture.draw_ground(&paint, cache.shift);
        if let Some(moment) = m.view.moment.filter(|_| scene.overlay == Overlay::Order) {
            round::at_moment(&paint, cache, &view, &scene, (picture.labels(), cache.shift), moment);
        }
        paint::at_work(&paint, cache, &view, &scene);
        paint::rings(&paint, m, cache, &view, hovered);
        way::draw(&paint, m, &view);
        picture.draw_marks(&paint, cache.shift);
        way::mark(&paint, m, &view);
        if m.view.workspace == Workspace::Practice {
            crate::gui::workspace::practice_marks(&paint, m, &view);
        }
        draw::stroke(&paint, m, &view);
        nodes(ui, m, area, &view, &scene, out);
        front_mark(&paint, area, view.orientation());
        legend::draw(&paint, area, &scene, m, picture.labels().left_out);
        if let Some(index) = hovered {
            hover(ui, m, &background, index, &scene);
        }
    });
    overlay_switch(ui, m, out);
}

/// The viewport of the last frame brought up to this frame's room, or one that fits the vehicle. `above` is kept free at its top,
/// for what is pressed there.
fn viewport(m: &Model<'_>, area: Rect, above: f32, out: &mut Vec<Action>) -> Viewport {
    let screen = ScreenRect::new(
        ScreenPoint::new(area.left(), area.top() + above),
        ScreenPoint::new(area.right(), area.bottom() - 24.0),
    );
    let view = match m.view.viewport {
        Some(view) if view.screen() == screen => return view,
        Some(mut view) => {
            view.resize(screen);
            view
        }
        None => Viewport::fit(m.template.bounds(), screen, MARGIN, m.view.front),
    };
    out.push(Action::View(ViewChange::Viewport(view)));
    view
}

/// Wheel, pinch, drag, click; answers how the map lies then, and whether it is being dragged.
fn pointer(
    ui: &Ui,
    m: &Model<'_>,
    cache: &MapCache,
    background: &egui::Response,
    mut view: Viewport,
    out: &mut Vec<Action>,
) -> (Viewport, bool) {
    let before = view;
    if boxing(ui, m, background, &view, out) || draw::drawing(ui, m, background, &view, out) {
        return (view, false);
    }
    if background.dragged() {
        let by = background.drag_delta();
        view.pan(ScreenVector::new(by.x, by.y));
    }
    if let Some(at) = background.hover_pos().filter(|p| background.rect.contains(*p)) {
        let (scroll, pinch) = ui.input(|i| (i.smooth_scroll_delta().y, i.zoom_delta()));
        let factor = pinch * (scroll / 240.0).exp();
        if (factor - 1.0).abs() > 1e-4 {
            view.zoom_at(ScreenPoint::new(at.x, at.y), factor);
        }
    }
    // While an order is laid, two quick clicks on a panel are two steps.
    if background.double_clicked() && m.view.workspace != Workspace::Practice {
        view = Viewport::fit(m.template.bounds(), view.screen(), MARGIN, view.orientation());
    }
    if view != before {
        out.push(Action::View(ViewChange::Viewport(view)));
    }
    if background.clicked()
        && let Some(at) = background.interact_pointer_pos()
    {
        let place = view.to_map(ScreenPoint::new(at.x, at.y));
        let several = ui.input(|i| i.modifiers.shift);
        click(m, panel_under(m, cache, &view, at), place, several, out);
    }
    let crosshair = m.view.tool != Tool::Choose && background.hovered();
    if crosshair {
        ui.ctx().set_cursor_icon(egui::CursorIcon::Crosshair);
    }
    (view, background.dragged())
}

/// Shift and a drag draw a box; the panels whose middle lies in it are chosen. Answers whether a box is being drawn.
fn boxing(ui: &Ui, m: &Model<'_>, background: &egui::Response, view: &Viewport, out: &mut Vec<Action>) -> bool {
    let (shift, origin) = ui.input(|i| (i.modifiers.shift, i.pointer.press_origin()));
    let Some((from, to)) = origin.zip(background.interact_pointer_pos()).filter(|_| shift) else { return false };
    let drawn = Rect::from_two_pos(from, to);
    if background.drag_stopped() {
        let middle = |p: &&Panel| {
            let at = view.to_screen(p.label.centre);
            drawn.contains(pos2(at.x, at.y))
        };
        let inside = m.template.panels.iter().filter(middle).map(|p| p.id.clone()).collect();
        out.push(Action::View(ViewChange::ChooseAll(inside)));
    } else if background.dragged() {
        let p = theme::of(ui.ctx());
        let layer = egui::LayerId::new(egui::Order::Foreground, egui::Id::unique("selection-box"));
        let paint = ui.ctx().layer_painter(layer);
        paint.rect(drawn, 2.0, p.accent.gamma_multiply(0.12), Stroke::new(1.5, p.accent), StrokeKind::Inside);
    }
    background.dragged() || background.drag_stopped()
}

fn click(m: &Model<'_>, panel: Option<usize>, place: MapPoint, several: bool, out: &mut Vec<Action>) {
    let panel = panel.map(|i| &m.template.panels[i]);
    match (&m.view.tool, panel) {
        (Tool::Cut, _) => out.push(Action::Vehicle(VehicleWish::CutPoint(place))),
        (Tool::PlaceDefect(kind, _), _) => draw::note(m, Defect::new(*kind, place), out),
        (_, Some(panel)) if several => out.push(Action::View(ViewChange::Toggle(panel.id.clone()))),
        (_, panel) => {
            lay(m, panel, out);
            out.push(Action::View(ViewChange::Choose(panel.map(|p| p.id.clone()))));
        }
    }
}

/// While an order is laid, pressing a panel lays what comes next on it.
fn lay(m: &Model<'_>, panel: Option<&Panel>, out: &mut Vec<Action>) {
    if let Some(panel) = panel.filter(|_| m.view.workspace == Workspace::Practice) {
        out.push(Action::Practice(PracticeWish::Lay(panel.id.clone())));
    }
}

/// The panel at a point of the screen; a label beside the vehicle stands for its panel.
fn panel_under(m: &Model<'_>, cache: &MapCache, view: &Viewport, at: egui::Pos2) -> Option<usize> {
    let label = cache.picture.as_ref().and_then(|picture| picture.label_at(at, cache.shift));
    label.or_else(|| m.template.panel_at(view.to_map(ScreenPoint::new(at.x, at.y))))
}

fn hover(ui: &Ui, m: &Model<'_>, background: &egui::Response, index: usize, scene: &MapScene) {
    let panel = &m.template.panels[index];
    let text = format!("{}\n{}", panel.name(m.view.naming), m.units().say(&scene.panels[index].summary));
    if m.view.tool != Tool::Cut && ui.input(|i| i.pointer.time_since_last_movement() > 0.4) {
        background.clone().on_hover_text_at_pointer(text);
    }
}

/// One accessible node per panel, one Tab stop for the whole map, arrow keys along seams.
fn nodes(ui: &Ui, m: &Model<'_>, area: Rect, view: &Viewport, scene: &MapScene, out: &mut Vec<Action>) {
    let current = m.current().map_or(0, |(i, _)| i);
    let mut go = None;
    // Without a reader of the tree only the one that takes the keys is needed.
    let heard = ui.ctx().has_accesskit_node(ui.unique_id());
    for (index, panel) in m.template.panels.iter().enumerate().filter(|(index, _)| heard || *index == current) {
        let id = node_id(ui, panel);
        let b = view.rect_to_screen(panel.outline.bounds());
        let bounds = Rect::from_min_max(pos2(b.min.x, b.min.y), pos2(b.max.x, b.max.y)).intersect(area);
        let sense = if index == current { Sense::FOCUSABLE } else { Sense::empty() };
        let response = ui.interact(bounds, id, sense);
        response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::ListBoxOption, true, panel.name(m.view.naming)));
        ui.ctx().accesskit_node_builder(id, |node| {
            node.add_action(Access::Click);
            node.add_action(Access::Focus);
            node.set_selected(m.view.chosen.contains(&panel.id));
            node.set_description(m.units().say(&scene.panels[index].summary).into_owned());
            node.set_position_in_set(index);
            node.set_size_of_set(m.template.panels.len());
        });
        let (pressed, focused) = ui.input(|i| {
            (i.has_accesskit_action_request(id, Access::Click), i.has_accesskit_action_request(id, Access::Focus))
        });
        if pressed || focused {
            go = Some(index);
        }
        if pressed {
            lay(m, Some(panel), out);
        }
        if response.has_focus() {
            ui.memory_mut(|memory| {
                let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..Default::default() };
                memory.set_focus_lock_filter(id, filter);
            });
            if let Some(direction) = arrow(ui, view.orientation()) {
                go = m.template.step(index, direction);
            }
            focus_ring(ui, bounds);
            if ui.input(|i| i.key_pressed(Key::Enter)) {
                lay(m, Some(panel), out);
            }
        }
    }
    if let Some(index) = go {
        let panel = &m.template.panels[index];
        out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
        ui.memory_mut(|memory| memory.request_focus(node_id(ui, panel)));
    }
}

fn node_id(ui: &Ui, panel: &Panel) -> egui::Id {
    ui.scope_id().with(("panel", panel.id.to_string()))
}

fn focus_ring(ui: &Ui, bounds: Rect) {
    let p = theme::of(ui.ctx());
    ui.painter().rect_stroke(bounds.expand(3.0), 6.0, Stroke::new(3.0, p.accent), StrokeKind::Outside);
}

/// The way on the vehicle that a pressed arrow key means, as the map lies on the screen.
fn arrow(ui: &Ui, orientation: Orientation) -> Option<Direction> {
    use Direction as D;
    let meanings = match orientation {
        Orientation::FrontLeft => [D::Front, D::Rear, D::Right, D::Left],
        Orientation::FrontUp => [D::Left, D::Right, D::Front, D::Rear],
    };
    let keys = [Key::ArrowLeft, Key::ArrowRight, Key::ArrowUp, Key::ArrowDown];
    ui.input(|i| keys.into_iter().zip(meanings).find(|(key, _)| i.key_pressed(*key)).map(|(_, meaning)| meaning))
}

/// Which way the front points.
fn front_mark(paint: &egui::Painter, area: Rect, orientation: Orientation) {
    let p = theme::of(paint.ctx());
    let at = pos2(area.left() + 20.0, area.top() + theme::target_side(paint.ctx()) + 28.0);
    let tip = match orientation {
        Orientation::FrontLeft => [pos2(at.x - 6.0, at.y), pos2(at.x + 4.0, at.y - 6.0), pos2(at.x + 4.0, at.y + 6.0)],
        Orientation::FrontUp => [pos2(at.x, at.y - 6.0), pos2(at.x + 6.0, at.y + 4.0), pos2(at.x - 6.0, at.y + 4.0)],
    };
    paint.add(egui::Shape::convex_polygon(tip.to_vec(), p.ink_soft, Stroke::NONE));
    let font = egui::FontId::proportional(12.0);
    paint.text(pos2(at.x + 10.0, at.y), egui::Align2::LEFT_CENTER, say!("window-front"), font, p.ink_soft);
}

/// The switch between overlays, and the fit button, over the map.
fn overlay_switch(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let (area, side) = (ui.min_rect(), theme::target_side(ui.ctx()));
    let place = Rect::from_min_size(area.min + egui::vec2(12.0, 8.0), egui::vec2(area.width() - 24.0, side));
    ui.scope_builder(
        egui::UiBuilder::new().max_rect(place).layout(egui::Layout::left_to_right(egui::Align::Center)),
        |ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            let switched =
                m.view.overlay != Overlay::Body && !matches!(m.view.workspace, Workspace::Bay | Workspace::Practice);
            for overlay in Overlay::ALL.into_iter().filter(|_| switched) {
                let chosen = m.view.overlay == overlay;
                if ui.add(egui::Button::selectable(chosen, overlay.name())).clicked() {
                    out.push(Action::View(ViewChange::Overlay(overlay)));
                }
            }
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if ui.button(say!("window-fit")).on_hover_text(say!("window-fit-does")).clicked() {
                    out.push(Action::View(ViewChange::Fit));
                }
                let hint = say!("window-zoom-in-does");
                let chosen = !m.view.chosen.is_empty();
                let in_bay = m.view.workspace == Workspace::Bay; // what is called out stands there
                let has_room = ui.available_width() > button_room(ui, say!("window-zoom-in"));
                if !in_bay
                    && has_room
                    && ui.add_enabled(chosen, egui::Button::new(say!("window-zoom-in"))).on_hover_text(hint).clicked()
                {
                    out.push(Action::View(ViewChange::FitChosen));
                }
            });
        },
    );
}
