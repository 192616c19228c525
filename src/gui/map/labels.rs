//! Text and numbers on panels. What fits stays inside its panel; what doesn't stands beside the vehicle on a leader line.
//! Nothing overlaps anything.

use super::badges;
use super::layout::{MapCache, PanelShape};
use super::paint::{fill_color, to_screen};
use crate::geometry::{Orientation, ScreenPoint, ScreenRect, Viewport, free_place};
use crate::gui::action::Model;
use crate::gui::theme;
use crate::polish::Level;
use crate::scene::{Fill, MapScene, PanelMark, Waypoint};
use eframe::egui::text::LayoutJob;
use eframe::egui::{Align, Align2, Color32, FontId, Galley, Painter, Pos2, Rect, Stroke, StrokeKind, Vec2, pos2, vec2};
use std::sync::Arc;

/// Sizes of a value, the largest that fits is taken: as few as possible, so that the map stays calm.
const SIZES: [f32; 3] = [20.0, 14.0, 11.0];
/// Words of more letters than a number are never of the largest size.
const NUMBER: usize = 4;
/// The size of a value beside the vehicle.
const SMALLEST: f32 = SIZES[SIZES.len() - 1];
/// Smallest and largest radius of a number in the shape of a worker.
const RADII: (f32, f32) = (8.5, 11.0);
/// Size of a second line beside that of the value, and how close the two stand.
const BELOW: f32 = 0.72;
const LEADING: f32 = 0.88;
/// The smallest size of a second line.
const LEAST_BELOW: f32 = 10.0;
/// Height of the budget bar under a value, with its gap.
const BAR: f32 = 9.0;
/// With more labels than this beside the vehicle none is written there: what they stand for shows as the map is enlarged.
const CROWD: usize = 20;

/// The nearest that a label stands to what it belongs to.
const NEAREST: f32 = 18.0;

/// A label that was drawn.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed {
    /// Whose it is: an index into the panels.
    pub(super) panel: usize,
    /// Where on the screen.
    pub(super) rect: Rect,
    /// On its panel; otherwise beside it on a leader line.
    pub(super) inside: bool,
}

/// All labels of a map.
#[derive(Debug, Clone, Default)]
pub(super) struct Labels {
    /// Those that were drawn.
    pub(super) placed: Vec<Placed>,
    /// How many are left out until the map is enlarged.
    pub(super) left_out: usize,
}

impl Labels {
    /// The middle of the badge of a worker's stop; none where there is no label.
    pub(super) fn badge(&self, scene: &MapScene, worker: usize, stop: &Waypoint) -> Option<Pos2> {
        let label = self.placed.iter().find(|l| l.panel == stop.panel)?;
        let row = &scene.panels[stop.panel].badges;
        let place = row.iter().position(|b| b.worker == worker && b.number == stop.number).unwrap_or(0);
        Some(badges::middle(label.rect, row, place))
    }
}

/// What is to be written for a panel that has no room for it.
struct Outside<'a> {
    panel: usize,
    mark: &'a PanelMark,
    from: Pos2,
    size: Vec2,
}

/// Values, budget bars and numbers of the order; answers where they stand. `hidden` is a panel whose value would cover what is
/// being read on it.
pub(super) fn draw(
    paint: &Painter,
    m: &Model<'_>,
    cache: &MapCache,
    view: &Viewport,
    scene: &MapScene,
    hidden: Option<usize>,
) -> Labels {
    let mut taken = Vec::new();
    let mut outside = Vec::new();
    for (index, (shape, mark)) in cache.panels.iter().zip(&scene.panels).enumerate() {
        if hidden == Some(index) {
            continue;
        }
        let inside = if !mark.badges.is_empty() {
            on_panel(paint, view, shape, mark)
        } else if mark.value.is_empty() {
            continue;
        } else {
            value(paint, view, shape, mark)
        };
        match inside {
            Some(rect) => taken.push(Placed { panel: index, rect, inside: true }),
            None => outside.push(Outside {
                panel: index,
                mark,
                from: to_screen(view, m.template.panels[index].label.centre),
                size: outside_size(paint, mark),
            }),
        }
    }
    let area = paint.clip_rect().shrink2(vec2(6.0, 40.0));
    outside.retain(|o| area.contains(o.from));
    if outside.len() > CROWD {
        return Labels { placed: taken, left_out: outside.len() };
    }
    for item in &outside {
        if let Some(rect) = place_beside(m, view, item, area, &taken) {
            leader(paint, item, rect);
            taken.push(Placed { panel: item.panel, rect, inside: false });
        }
    }
    Labels { placed: taken, left_out: 0 }
}

/// The box on the screen for something of an aspect: middle, width, height.
fn room(view: &Viewport, shape: &PanelShape, aspect: f32) -> Option<(Pos2, f32, f32)> {
    // With the front up, what is wide on the map is high on the screen.
    let (place, width, height) = match view.orientation() {
        Orientation::FrontLeft => shape.room(aspect).map(|p| (p, p.width, p.height))?,
        Orientation::FrontUp => shape.room(1.0 / aspect).map(|p| (p, p.height, p.width))?,
    };
    Some((to_screen(view, place.centre), width * view.scale(), height * view.scale()))
}

/// Writes a value inside its panel; answers where, or none if there is no room.
fn value(paint: &Painter, view: &Viewport, shape: &PanelShape, mark: &PanelMark) -> Option<Rect> {
    let p = theme::of(paint.ctx());
    let fill = fill_color(p, mark.fill);
    let nothing = mark.fill == Fill::Level(Level::Leave);
    let ink = if nothing { p.ink_soft } else { theme::text_on(fill) };
    if let Some(two) = two_lines(paint, view, shape, mark, (fill, ink)) {
        return Some(two);
    }
    let extra = if mark.budget_used.is_some() { BAR } else { 0.0 };
    // What is left as it is needs the least attention.
    let largest = if nothing { SIZES.len() - 1 } else { usize::from(mark.value.chars().count() > NUMBER) };
    let sizes = &SIZES[largest..];
    let tries = sizes.iter().flat_map(|size| ways_to_write(&mark.value).map(move |text| (*size, text)));
    let (at, galley) = tries.into_iter().find_map(|(size, text)| {
        let galley = layout(paint, &text?, size, ink);
        let needed = galley.size() + vec2(0.0, extra);
        let (at, width, height) = room(view, shape, needed.x / needed.y)?;
        (width * 0.92 >= needed.x && height * 0.92 >= needed.y).then_some((at, galley))
    })?;
    let text = Align2::CENTER_CENTER.anchor_size(at - vec2(0.0, extra / 2.0), galley.size());
    backing(paint, text, fill);
    paint.galley(text.min, galley, ink);
    if let Some(used) = mark.budget_used {
        bar(paint, text, used);
    }
    Some(text.union(text.translate(vec2(0.0, extra))))
}

/// A value with its second line under it; none where there is no second line or no room for one of readable size.
fn two_lines(
    paint: &Painter,
    view: &Viewport,
    shape: &PanelShape,
    mark: &PanelMark,
    (fill, ink): (Color32, Color32),
) -> Option<Rect> {
    if mark.below.is_empty() {
        return None;
    }
    let line =
        |text: &str, size: f32| paint.layout_no_wrap(text.to_owned(), FontId::new(size, theme::bold_family()), ink);
    SIZES.iter().filter(|size| **size * BELOW >= LEAST_BELOW).find_map(|&size| {
        let (value, below) = (line(&mark.value, size), line(&mark.below, size * BELOW));
        let whole = vec2(value.size().x.max(below.size().x), (value.size().y + below.size().y) * LEADING);
        let (at, width, height) = room(view, shape, whole.x / whole.y)?;
        if width * 0.92 < whole.x || height * 0.92 < whole.y {
            return None;
        }
        let rect = Rect::from_center_size(at, whole);
        backing(paint, rect, fill);
        paint.galley(Align2::CENTER_TOP.anchor_size(rect.center_top(), value.size()).min, value, ink);
        paint.galley(Align2::CENTER_BOTTOM.anchor_size(rect.center_bottom(), below.size()).min, below, ink);
        Some(rect)
    })
}

/// The colour of the panel behind words, so that no hatch, handle or plate runs through them.
fn backing(paint: &Painter, text: Rect, fill: Color32) {
    paint.rect_filled(text.expand2(vec2(3.0, -2.0)), 3.0, fill);
}

/// On one line, or on two where there are several words.
fn ways_to_write(value: &str) -> [Option<String>; 2] {
    let middle = value.char_indices().filter(|(_, c)| *c == ' ').min_by_key(|(i, _)| i.abs_diff(value.len() / 2));
    [Some(value.to_owned()), middle.map(|(i, _)| format!("{}\n{}", &value[..i], &value[i + 1..]))]
}

/// Bold text, its lines one under the middle of the other.
fn layout(paint: &Painter, text: &str, size: f32, ink: Color32) -> Arc<Galley> {
    let font = FontId::new(size, theme::bold_family());
    let mut job = LayoutJob::simple(text.to_owned(), font, ink, f32::INFINITY);
    job.halign = Align::LEFT;
    paint.layout_job(job)
}

/// How much of the budget the plan uses at most.
pub(super) fn bar(paint: &Painter, text: Rect, used: f32) {
    let p = theme::of(paint.ctx());
    let width = text.width().clamp(28.0, 64.0);
    let frame = Rect::from_center_size(pos2(text.center().x, text.bottom() + BAR / 2.0 - 1.0), vec2(width, 5.0));
    paint.rect_filled(frame, 1.0, p.sheet);
    let filled = Rect::from_min_size(frame.min, vec2(frame.width() * used, frame.height()));
    paint.rect_filled(filled, 1.0, p.accent);
    paint.rect_stroke(frame, 1.0, Stroke::new(0.8, p.contour), StrokeKind::Outside);
}

/// Numbers inside their panel; answers where, or none if there is no room.
fn on_panel(paint: &Painter, view: &Viewport, shape: &PanelShape, mark: &PanelMark) -> Option<Rect> {
    let unit = badges::size(&mark.badges, 1.0);
    let (at, width, height) = room(view, shape, unit.x / unit.y)?;
    let radius = (width / unit.x).min(height / unit.y).min(RADII.1);
    (radius >= RADII.0).then(|| badges::draw(paint, at, radius, &mark.badges))
}

/// The room that a label outside takes.
fn outside_size(paint: &Painter, mark: &PanelMark) -> Vec2 {
    let p = theme::of(paint.ctx());
    if mark.badges.is_empty() {
        paint.layout_no_wrap(mark.value.clone(), FontId::new(SMALLEST, theme::bold_family()), p.ink).size()
    } else {
        badges::size(&mark.badges, RADII.0)
    }
}

/// The nearest place beside a panel where a label covers no other one; rather off the vehicle than on it.
fn place_beside(m: &Model<'_>, view: &Viewport, item: &Outside<'_>, area: Rect, taken: &[Placed]) -> Option<Rect> {
    let egui = |r: ScreenRect| Rect::from_min_max(pos2(r.min.x, r.min.y), pos2(r.max.x, r.max.y));
    let point = |p: Pos2| ScreenPoint::new(p.x, p.y);
    let on_vehicle = |rect: ScreenRect| {
        let corners =
            [rect.min, point(egui(rect).right_top()), point(egui(rect).left_bottom()), rect.max, rect.center()];
        let hits = |p: ScreenPoint| m.template.covers(view.to_map(p));
        12.0 * corners.into_iter().filter(|p| hits(*p)).count() as f32
    };
    let is_free = |rect: ScreenRect| !taken.iter().any(|t| t.rect.expand(2.0).intersects(egui(rect)));
    let size = euclid::vec2(item.size.x, item.size.y);
    let area = ScreenRect::new(point(area.min), point(area.max));
    free_place(point(item.from), size, area, NEAREST, is_free, on_vehicle).map(egui)
}

/// A label beside the vehicle with a line to its panel.
fn leader(paint: &Painter, item: &Outside<'_>, rect: Rect) {
    let p = theme::of(paint.ctx());
    let end = rect.clamp(item.from);
    paint.line_segment([item.from, end], Stroke::new(1.0, p.ink_soft));
    paint.circle_filled(item.from, 2.0, p.ink_soft);
    if item.mark.badges.is_empty() {
        paint.rect_filled(rect.expand2(vec2(3.0, 0.0)), 3.0, p.sheet);
        let font = FontId::new(SMALLEST, theme::bold_family());
        paint.text(rect.center(), Align2::CENTER_CENTER, &item.mark.value, font, p.ink);
    } else {
        badges::draw(paint, rect.center(), RADII.0, &item.mark.badges);
    }
}
