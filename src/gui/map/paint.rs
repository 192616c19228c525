//! From a scene to shapes on the screen.

use super::labels::Placed;
use super::layout::MapCache;
use crate::geometry::{MapPoint, Viewport};
use crate::gui::action::Model;
use crate::gui::theme::{self, Palette};
use crate::gui::view_state::Workspace;
use crate::gui::widgets::pin_symbol;
use crate::scene::{Fill, MapScene, Overlay, PinShape, SeamKind, hatch_of, is_rear_lamp, is_shape_only};
use crate::vehicle::{FeatureKind, Surface};
use eframe::egui::epaint::{CircleShape, Mesh, Vertex, WHITE_UV};
use eframe::egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, pos2, vec2};
use std::sync::Arc;

/// Fills, hatches, seams, contour, quiet drawing.
pub(super) fn vehicle(paint: &Painter, m: &Model<'_>, cache: &MapCache, view: &Viewport, scene: &MapScene) {
    let p = theme::of(paint.ctx());
    let screen = |p: MapPoint| to_screen(view, p);
    for wheel in &m.template.wheels {
        draw_wheel(paint, p, screen(wheel.centre), wheel.radius * view.scale());
    }
    for ((shape, mark), panel) in cache.panels.iter().zip(&scene.panels).zip(&m.template.panels) {
        let fill = if is_rear_lamp(panel, m.template) { rear_lamp(p, mark.fill) } else { fill_color(p, mark.fill) };
        paint.add(filled(view, &shape.vertices, &shape.indices, fill));
        if let Some(hatch) = hatch_of(mark.fill) {
            for (from, to) in &shape.hatches[hatch] {
                paint.line_segment([screen(*from), screen(*to)], Stroke::new(1.0, p.hatch()));
            }
        }
    }
    for decor in cache.decor.iter().filter(|d| !d.indices.is_empty()) {
        let color = match decor.kind {
            FeatureKind::Lamp => p.lamp,
            FeatureKind::Plate | FeatureKind::Emblem => p.sheet,
            FeatureKind::Mirror => p.paint,
            _ => p.trim,
        };
        paint.add(filled(view, &decor.vertices, &decor.indices, color));
    }
    let line = |points: &[MapPoint]| points.iter().map(|p| screen(*p)).collect::<Vec<Pos2>>();
    for decor in &cache.decor {
        // What one can take hold of is drawn a little stronger than what is only a shape of the sheet metal.
        let color = if is_shape_only(decor.kind) { p.quiet } else { p.seam };
        paint.add(Shape::line(line(&decor.points), Stroke::new(FINE * p.line, color)));
    }
    for kind in SeamKind::ALL {
        for seam in cache.seams.iter().filter(|s| s.kind == kind) {
            let points = line(&seam.points);
            match kind {
                SeamKind::Middle => {
                    paint.extend(Shape::dashed_line(&points, Stroke::new(FINE * p.line, p.seam), 9.0, 4.0));
                }
                SeamKind::Gap => {
                    paint.add(Shape::line(points, Stroke::new(p.line, p.seam)));
                }
                SeamKind::Contour => {
                    paint.add(Shape::line(points, Stroke::new(HEAVY * p.line, p.contour)));
                }
            }
        }
    }
}

/// Widths of lines: what is drawn on panels, and the outer edge; gaps between panels are 1.
const FINE: f32 = 0.8;
const HEAVY: f32 = 1.8;

fn filled(view: &Viewport, vertices: &[MapPoint], indices: &[u32], color: Color32) -> Shape {
    let vertices = vertices.iter().map(|p| Vertex { pos: to_screen(view, *p), uv: WHITE_UV, color }).collect();
    Shape::mesh(Arc::new(Mesh { indices: indices.to_vec(), vertices, ..Mesh::default() }))
}

/// A tyre, a rim with five spokes, a hub.
fn draw_wheel(paint: &Painter, p: &Palette, at: Pos2, radius: f32) {
    let line = Stroke::new(FINE, p.quiet);
    let ring = |share: f32, fill: Color32| {
        paint.add(Shape::Circle(CircleShape { center: at, radius: radius * share, fill, stroke: line }))
    };
    ring(1.0, p.tyre);
    ring(0.68, p.wheel);
    for spoke in 0..5_u8 {
        let angle = std::f32::consts::TAU * (f32::from(spoke) / 5.0 - 0.25);
        let out = vec2(angle.cos(), angle.sin());
        let aside = vec2(-out.y, out.x) * radius * 0.045;
        for side in [aside, -aside] {
            paint.line_segment([at + out * radius * 0.17 + side, at + out * radius * 0.66 + side], line);
        }
    }
    ring(0.16, p.wheel);
}

/// Who is at work where, in the bay.
pub(super) fn at_work(paint: &Painter, cache: &MapCache, view: &Viewport, scene: &MapScene) {
    let p = theme::of(paint.ctx());
    for here in &scene.here {
        let points: Vec<Pos2> = cache.panels[here.panel].outline.iter().map(|p| to_screen(view, *p)).collect();
        paint.add(Shape::closed_line(points.clone(), Stroke::new(7.0, p.contour)));
        paint.add(Shape::closed_line(points, Stroke::new(5.0, theme::worker(here.worker))));
    }
}

/// What the pointer is over, what is chosen, and who is where.
pub(super) fn rings(paint: &Painter, m: &Model<'_>, cache: &MapCache, view: &Viewport, hovered: Option<usize>) {
    let p = theme::of(paint.ctx());
    let screen = |p: MapPoint| to_screen(view, p);
    let ring = |index: usize, stroke: Stroke| {
        let points: Vec<Pos2> = cache.panels[index].outline.iter().map(|p| screen(*p)).collect();
        paint.add(Shape::closed_line(points, stroke));
    };
    if let Some(index) = hovered {
        ring(index, Stroke::new(1.6, p.contour));
    }
    for (index, panel) in m.template.panels.iter().enumerate() {
        if m.view.chosen.contains(&panel.id) {
            ring(index, Stroke::new(3.0, p.accent));
        }
    }
}

/// Zoom in points per mm from which every spot shows its value.
const SPOT_VALUES_FROM: f32 = 0.3;

/// Spots and defects. A spot keeps clear of the labels in `taken`; a defect is drawn where it is.
pub(super) fn pins(paint: &Painter, m: &Model<'_>, view: &Viewport, scene: &MapScene, taken: &[Placed]) {
    let p = theme::of(paint.ctx());
    let current = m.current().map(|(i, _)| i);
    if m.view.workspace == Workspace::Survey
        && let Some(index) = current
        && m.template.panels[index].surface == Surface::Paint
        && m.insight.panels[index].unreadable.is_none()
    {
        let next = super::way::next_place(m);
        for at in m.wanted_spots(index).iter().filter(|at| next.is_none_or(|next| (next - **at).length() > 1.0)) {
            pin_symbol(paint, to_screen(view, *at), PinShape::WantedSpot, 0.0);
        }
    }
    for pin in &scene.pins {
        let at = to_screen(view, pin.at);
        let covered = |rect: Rect| taken.iter().any(|t| t.rect.intersects(rect));
        if !matches!(pin.shape, PinShape::Spot | PinShape::SuspectSpot) {
            super::draw::extent(paint, view, pin);
            pin_symbol(paint, at, pin.shape, pin.severity);
        } else if current == Some(pin.panel) || view.scale() >= SPOT_VALUES_FROM {
            let galley = paint.layout_no_wrap(pin.value.clone(), FontId::proportional(12.0), p.ink);
            let area = Align2::CENTER_BOTTOM.anchor_size(at - vec2(0.0, 5.0), galley.size());
            if !covered(area.union(Rect::from_center_size(at, vec2(8.0, 8.0)))) {
                pin_symbol(paint, at, pin.shape, pin.severity);
                paint.rect_filled(area.expand2(vec2(3.0, 0.0)), 3.0, p.sheet);
                paint.galley(area.min, galley, p.ink);
            }
        } else if covered(Rect::from_center_size(at, vec2(4.0, 4.0))) {
            // A label stands there.
        } else if pin.shape == PinShape::SuspectSpot {
            pin_symbol(paint, at, pin.shape, pin.severity);
        } else if scene.overlay != Overlay::Polish {
            paint.circle_filled(at, 1.5, p.contour);
        }
    }
}

pub(super) fn to_screen(view: &Viewport, p: MapPoint) -> Pos2 {
    let p = view.to_screen(p);
    pos2(p.x, p.y)
}

pub(super) fn fill_color(p: &Palette, fill: Fill) -> Color32 {
    match fill {
        Fill::Plain(Surface::Paint) | Fill::Unread => p.paint,
        Fill::Plain(Surface::Glass) => p.glass,
        Fill::Plain(Surface::Lamp) => p.lamp,
        Fill::Plain(Surface::Trim) => p.trim,
        Fill::Scale(share) => p.ramp(share),
        Fill::Level(level) => p.level(level as usize),
        Fill::LeftOut => p.sheet,
        Fill::Wet => p.wet,
        Fill::Done => p.done,
        Fill::Turn(surface, share) => turn(p, fill_color(p, Fill::Plain(surface)), share),
    }
}

/// The later the turn, the darker (or, on a dark table, the lighter).
fn turn(p: &Palette, surface: Color32, share: f32) -> Color32 {
    surface.lerp_to_gamma(p.contour, 0.34 * share)
}

/// As other lamps, with the colour of those at the rear.
fn rear_lamp(p: &Palette, fill: Fill) -> Color32 {
    match fill {
        Fill::Plain(Surface::Lamp) => p.rear_lamp,
        Fill::Turn(Surface::Lamp, share) => turn(p, p.rear_lamp, share),
        other => fill_color(p, other),
    }
}
