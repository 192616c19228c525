//! The map on paper: the same scene as in the window, in the colours of paper.

mod labels;
#[cfg(test)]
mod labels_test;
mod legend;
mod symbols;

use super::font;
use super::model::Figure;
use super::page::{Item, Line, PaperPoint, Piece, Run, circle, polygon, polyline};
use super::palette::{self, CONTOUR, HATCH, INK_SOFT, LAMP, PAINT, PAPER, QUIET, Rgb, SEAM, TRIM, TYRE, WHEEL};
use crate::geometry::{MapCurve, MapPoint, Orientation, Outline, ScreenPoint, ScreenRect, Viewport, hatch_lines};
use crate::job::Extent;
use crate::say;
use crate::scene::{
    HATCH_MM, MapScene, Overlay, Pin, PinShape, SeamKind, hatch_of, inside_of, is_rear_lamp, is_shape_only,
};
use crate::vehicle::{FeatureKind, Template, Wheel};
use labels::Label;

/// How a map is put on paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MapStyle<'a> {
    /// A short name.
    pub title: &'a str,
    /// What it shows, in words.
    pub words: &'a str,
    /// Width, mm.
    pub width: f32,
    /// Greatest height without the legend, mm; the drawing is made smaller where it would be higher.
    pub most_height: f32,
    /// Radius of the numbers of an order, mm.
    pub badge: f32,
}

/// Room at the edges of a map, for labels beside the vehicle and the names of its sides, mm.
const MARGIN: f32 = 5.5;

/// Widths of lines, mm: what is drawn on panels, gaps, the outer edge.
const FINE: f32 = 0.14;
const GAP: f32 = 0.2;
const HEAVY: f32 = 0.4;

/// Where things come to stand.
struct View {
    view: Viewport,
    size: (f32, f32),
}

impl View {
    fn at(&self, p: MapPoint) -> PaperPoint {
        self.view.to_screen(p).cast_unit()
    }

    fn scale(&self) -> f32 {
        self.view.scale()
    }

    fn curves(&self, curves: &[MapCurve], closed: bool) -> Vec<Piece> {
        let mut pieces = Vec::with_capacity(curves.len() + 2);
        pieces.extend(curves.first().map(|c| Piece::Move(self.at(c.from))));
        pieces.extend(curves.iter().map(|c| {
            let [_, a, b, to] = c.points().map(|p| self.at(p));
            if c.is_line() { Piece::Line(to) } else { Piece::Curve(a, b, to) }
        }));
        if closed {
            pieces.push(Piece::Close);
        }
        pieces
    }

    fn outline(&self, outline: &Outline, fill: Rgb) -> Item {
        Item::Path { pieces: self.curves(outline.curves(), true), fill: Some(fill), line: None }
    }
}

/// Draws a map with its legend.
pub fn figure(template: &Template, scene: &MapScene, style: &MapStyle<'_>) -> Figure {
    let bounds = template.bounds();
    let size = size(template, style);
    let screen = ScreenRect::new(ScreenPoint::zero(), ScreenPoint::new(size.0, size.1));
    let view = View { view: Viewport::fit(bounds, screen, MARGIN, Orientation::FrontLeft), size };
    let mut items = Vec::new();
    vehicle(&mut items, template, &view, scene);
    sides(&mut items, &view);
    let placed = labels::draw(&mut items, template, &view, scene, style.badge);
    pins(&mut items, &view, scene, &placed);
    let height = legend::draw(&mut items, scene, size);
    Figure { title: style.title.to_owned(), words: style.words.to_owned(), width: size.0, height, items }
}

/// The room that a map takes with its legend, with nothing drawn in it.
pub(super) fn room(template: &Template, scene: &MapScene, style: &MapStyle<'_>) -> Figure {
    let size = size(template, style);
    let height = legend::draw(&mut Vec::new(), scene, size);
    Figure { title: style.title.to_owned(), words: String::new(), width: size.0, height, items: Vec::new() }
}

/// Width and height of a map without its legend, mm.
fn size(template: &Template, style: &MapStyle<'_>) -> (f32, f32) {
    let bounds = template.bounds();
    let wide = style.width - 2.0 * MARGIN;
    let high = (wide * bounds.height() / bounds.width().max(1.0)).min(style.most_height - 2.0 * MARGIN);
    (style.width, high + 2.0 * MARGIN)
}

/// Fills, hatches, seams, contour, quiet drawing.
fn vehicle(items: &mut Vec<Item>, template: &Template, view: &View, scene: &MapScene) {
    for each in &template.wheels {
        wheel(items, view, each);
    }
    for (panel, mark) in template.panels.iter().zip(&scene.panels) {
        items.push(view.outline(&panel.outline, palette::fill(mark.fill, is_rear_lamp(panel, template))));
        if let Some(hatch) = hatch_of(mark.fill) {
            let lines = hatch_lines(&panel.outline, HATCH_MM[hatch]);
            let pieces = lines.iter().flat_map(|(a, b)| [Piece::Move(view.at(*a)), Piece::Line(view.at(*b))]).collect();
            items.push(Item::Path { pieces, fill: None, line: Some(whole(HATCH, 0.12)) });
        }
    }
    for feature in &template.features {
        let colour = match feature.kind {
            FeatureKind::Lamp => LAMP,
            FeatureKind::Plate | FeatureKind::Emblem => PAPER,
            FeatureKind::Mirror => PAINT,
            _ => TRIM,
        };
        items.extend(inside_of(feature).map(|inside| view.outline(&inside, colour)));
    }
    for feature in &template.features {
        let colour = if is_shape_only(feature.kind) { QUIET } else { SEAM };
        let pieces = view.curves(feature.shape.curves(), false);
        items.push(Item::Path { pieces, fill: None, line: Some(whole(colour, FINE)) });
    }
    for kind in SeamKind::ALL {
        let line = match kind {
            SeamKind::Middle => Line { dash: Some((1.6, 0.9)), ..whole(SEAM, FINE) },
            SeamKind::Gap => whole(SEAM, GAP),
            SeamKind::Contour => whole(CONTOUR, HEAVY),
        };
        for seam in template.seams.iter().filter(|s| SeamKind::of(s, template) == kind) {
            items.push(Item::Path { pieces: view.curves(&[seam.curve], false), fill: None, line: Some(line) });
        }
    }
}

fn whole(colour: Rgb, width: f32) -> Line {
    Line { colour, width, dash: None }
}

/// A tyre, a rim with five spokes, a hub.
fn wheel(items: &mut Vec<Item>, view: &View, wheel: &Wheel) {
    let (at, radius) = (view.at(wheel.centre), wheel.radius * view.scale());
    let line = whole(QUIET, FINE);
    items.push(circle(at, radius, Some(TYRE), Some(line)));
    items.push(circle(at, radius * 0.68, Some(WHEEL), Some(line)));
    for spoke in 0..5_u8 {
        let angle = std::f32::consts::TAU * (f32::from(spoke) / 5.0 - 0.25);
        let out = euclid::vec2(angle.cos(), angle.sin());
        let aside = euclid::vec2(-out.y, out.x) * radius * 0.045;
        for side in [aside, -aside] {
            items.push(polyline(&[at + out * radius * 0.17 + side, at + out * radius * 0.66 + side], line));
        }
    }
    items.push(circle(at, radius * 0.16, Some(WHEEL), Some(line)));
}

/// Which way the front is, and which side is which.
fn sides(items: &mut Vec<Item>, view: &View) {
    const SIZE: f32 = 2.9;
    let (width, height) = view.size;
    let mut write =
        |text: &str, x: f32, y: f32| items.push(Item::Text(plain(text, PaperPoint::new(x, y), SIZE, INK_SOFT)));
    write(say!("sheet-map-front"), 3.2, 3.0);
    let at_right = |text: &str| width - font::width(text, false, SIZE);
    let (right, left) = (say!("sheet-map-right"), say!("sheet-map-left"));
    write(right, at_right(right), 3.0);
    write(left, at_right(left), height - 0.8);
    let tip = [(0.0, 2.0), (2.4, 0.7), (2.4, 3.3)].map(|(x, y)| PaperPoint::new(x, y));
    items.push(polygon(&tip, Some(INK_SOFT), None));
}

fn plain(text: &str, at: PaperPoint, size: f32, colour: Rgb) -> Run {
    Run { at, size, bold: false, colour, text: text.to_owned() }
}

/// Spots and defects. A spot keeps clear of labels; a defect is drawn where it is.
fn pins(items: &mut Vec<Item>, view: &View, scene: &MapScene, placed: &[Label]) {
    for pin in &scene.pins {
        let at = view.at(pin.at);
        if matches!(pin.shape, PinShape::Defect(_)) {
            extent(items, view, pin);
            symbols::pin(items, at, pin.shape, pin.severity);
        } else if scene.overlay != Overlay::Polish
            && !placed.iter().any(|l| l.rect.inflate(0.6, 0.6).contains(at.cast_unit()))
        {
            match pin.shape {
                PinShape::SuspectSpot => symbols::pin(items, at, pin.shape, 0.0),
                _ => items.push(circle(at, 0.35, Some(CONTOUR), None)),
            }
        }
    }
}

/// How far a defect reaches, with a dark edge so that it shows on any paint.
fn extent(items: &mut Vec<Item>, view: &View, pin: &Pin) {
    let PinShape::Defect(class) = pin.shape else { return };
    let points: Vec<PaperPoint> = pin.extent.points().iter().map(|p| view.at(*p)).collect();
    for line in [whole(CONTOUR, 0.9), whole(palette::class(class), 0.5)] {
        match pin.extent {
            Extent::Point => {}
            Extent::Line(_) => items.push(polyline(&points, line)),
            Extent::Area(_) => items.push(polygon(&points, None, Some(line))),
        }
    }
}
