//! Drawing defects on the map: a click, a line from end to end, a loop round an area.

use super::paint::to_screen;
use crate::geometry::{MapPoint, ScreenPoint, Viewport};
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::{Shape as Drawn, Tool};
use crate::job::{Command, Defect, Extent};
use crate::scene::{Pin, PinShape};
use eframe::egui::{self, Painter, PointerButton, Pos2, Shape, Stroke, Ui};

/// Nearer than this to the last point of a loop, in points, a new one is not kept.
const STEP: f32 = 6.0;
/// Most points of a loop; a longer one is thinned out.
const MOST: usize = 200;
/// Shorter than this, in points, a drag was meant as a click.
const SHORTEST: f32 = 8.0;

/// Where what is being drawn is kept until it is finished.
fn key() -> egui::Id {
    egui::Id::unique("defect-stroke")
}

/// While a line or an area is drawn, dragging draws instead of moving the map. Answers whether something is being drawn.
pub(super) fn drawing(
    ui: &Ui,
    m: &Model<'_>,
    background: &egui::Response,
    view: &Viewport,
    out: &mut Vec<Action>,
) -> bool {
    let Tool::PlaceDefect(kind, shape) = m.view.tool else { return false };
    if shape == Drawn::Point || !background.dragged_by(PointerButton::Primary) && !background.drag_stopped() {
        return false;
    }
    let to_map = |at: Pos2| view.to_map(ScreenPoint::new(at.x, at.y));
    let mut stroke: Vec<MapPoint> = ui.data(|d| d.get_temp(key())).unwrap_or_default();
    if background.drag_started() {
        stroke.clear();
    }
    if stroke.is_empty() {
        stroke.extend(ui.input(|i| i.pointer.press_origin()).map(to_map));
    }
    if let Some(at) = background.interact_pointer_pos().map(to_map) {
        let far = |from: &MapPoint| (at - *from).length() * view.scale();
        match shape {
            Drawn::Line => {
                stroke.truncate(1);
                stroke.push(at);
            }
            _ if stroke.last().is_none_or(|last| far(last) >= STEP) => stroke.push(at),
            _ => {}
        }
    }
    if background.drag_stopped() {
        ui.data_mut(|d| d.remove::<Vec<MapPoint>>(key()));
        let length: f32 = stroke.windows(2).map(|leg| (leg[1] - leg[0]).length()).sum();
        let Some(first) = stroke.first().copied() else { return true };
        let extent = match shape {
            _ if length * view.scale() < SHORTEST => Extent::Point,
            Drawn::Area if stroke.len() >= 3 => Extent::Area(thinned(stroke)),
            _ => Extent::Line(thinned(stroke)),
        };
        note(m, Defect::drawn(kind, first, extent), out);
    } else {
        ui.data_mut(|d| d.insert_temp(key(), stroke));
    }
    true
}

/// At most so many points, evenly chosen, the last one kept.
fn thinned(points: Vec<MapPoint>) -> Vec<MapPoint> {
    let step = points.len().div_ceil(MOST);
    let last = points.len().saturating_sub(1);
    points.into_iter().enumerate().filter(|(k, _)| k % step == 0 || *k == last).map(|(_, p)| p).collect()
}

/// Notes a defect on the panel it lies on: the one under its middle, else the one under its first point that has one. Beside
/// the vehicle nothing is noted.
pub(super) fn note(m: &Model<'_>, defect: Defect, out: &mut Vec<Action>) {
    let on = |at: MapPoint| m.template.panel_at(at);
    let panel = on(defect.at).or_else(|| defect.extent.points().iter().find_map(|p| on(*p)));
    let Some(panel) = panel.map(|index| &m.template.panels[index]) else { return };
    out.push(Action::View(ViewChange::Choose(Some(panel.id.clone()))));
    out.push(Action::edit(Command::AddDefect(panel.id.clone(), defect)));
}

/// What is being drawn at this moment, and which defect is open.
pub(super) fn stroke(paint: &Painter, m: &Model<'_>, view: &Viewport) {
    let open = m.current().and_then(|(_, panel)| m.job.record(&panel.id)?.defects.get(m.view.defect?));
    if let Some(open) = open {
        paint.circle_stroke(to_screen(view, open.at), 16.0, Stroke::new(2.5, theme::of(paint.ctx()).accent));
    }
    let Tool::PlaceDefect(_, shape) = m.view.tool else { return };
    let stroke: Vec<MapPoint> = paint.ctx().data(|d| d.get_temp(key())).unwrap_or_default();
    let points: Vec<Pos2> = stroke.iter().map(|p| to_screen(view, *p)).collect();
    let line = Stroke::new(2.5, theme::of(paint.ctx()).accent);
    paint.add(if shape == Drawn::Area { Shape::closed_line(points, line) } else { Shape::line(points, line) });
}

/// How far a defect reaches: a line or a loop in the colour of its class, with a dark edge so that it shows on any paint.
pub(super) fn extent(paint: &Painter, view: &Viewport, pin: &Pin) {
    let PinShape::Defect(class) = pin.shape else { return };
    let p = theme::of(paint.ctx());
    let points: Vec<Pos2> = pin.extent.points().iter().map(|at| to_screen(view, *at)).collect();
    for line in [Stroke::new(4.0, p.contour), Stroke::new(2.0, theme::defect_class(class as usize))] {
        match pin.extent {
            Extent::Point => {}
            Extent::Line(_) => drop(paint.add(Shape::line(points.clone(), line))),
            Extent::Area(_) => drop(paint.add(Shape::closed_line(points.clone(), line))),
        }
    }
}
