//! Pages and pictures as PNG.

use super::font;
use super::page::{Item, Line, Page, Piece};
use super::palette::{PAPER, Rgb};
use crate::say;
use tiny_skia::{FillRule, LineJoin, Paint, PathBuilder, Pixmap, Stroke, StrokeDash, Transform};

/// A picture could not be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{}", say!("sheet-no-picture", width = *_0, height = *_1))]
pub struct PngError(u32, u32);

/// Most pixels along a side.
const MOST: f32 = 16_000.0;

/// Draws a page as PNG with `per_mm` pixels to a millimetre.
///
/// # Errors
/// [`PngError`] where the picture would be empty or of more than 16,000 pixels a side.
pub fn png(page: &Page, per_mm: f32) -> Result<Vec<u8>, PngError> {
    let items = page.items.iter().map(|d| &d.item);
    items_as_png(items, (page.width, page.height), per_mm)
}

/// Draws things on a piece of paper of some mm.
fn items_as_png<'a>(
    items: impl Iterator<Item = &'a Item>,
    (width, height): (f32, f32),
    per_mm: f32,
) -> Result<Vec<u8>, PngError> {
    let pixels = |mm: f32| (mm * per_mm).round().clamp(0.0, MOST + 1.0) as u32;
    let (w, h) = (pixels(width), pixels(height));
    let refused = PngError(w, h);
    if w.max(h) > MOST as u32 {
        return Err(refused);
    }
    let mut map = Pixmap::new(w, h).ok_or(refused)?;
    map.fill(tiny_skia::Color::from_rgba8(PAPER.0, PAPER.1, PAPER.2, 255));
    let scale = Transform::from_scale(per_mm, per_mm);
    for item in items {
        match item {
            Item::Path { pieces, fill, line } => draw(&mut map, pieces, *fill, *line, FillRule::EvenOdd, scale),
            Item::Text(run) => {
                let pieces = font::outline(&run.text, run.bold, run.size, run.at);
                draw(&mut map, &pieces, Some(run.colour), None, FillRule::Winding, scale);
            }
        }
    }
    map.encode_png().ok().ok_or(refused)
}

fn draw(map: &mut Pixmap, pieces: &[Piece], fill: Option<Rgb>, line: Option<Line>, rule: FillRule, scale: Transform) {
    let mut path = PathBuilder::new();
    for piece in pieces {
        match *piece {
            Piece::Move(p) => path.move_to(p.x, p.y),
            Piece::Line(p) => path.line_to(p.x, p.y),
            Piece::Curve(a, b, c) => path.cubic_to(a.x, a.y, b.x, b.y, c.x, c.y),
            Piece::Close => path.close(),
        }
    }
    let Some(path) = path.finish() else { return };
    if let Some(fill) = fill {
        map.fill_path(&path, &paint(fill), rule, scale, None);
    }
    if let Some(line) = line {
        let dash = line.dash.and_then(|(dash, gap)| StrokeDash::new(vec![dash, gap], 0.0));
        let stroke = Stroke { width: line.width, line_join: LineJoin::Round, dash, ..Stroke::default() };
        map.stroke_path(&path, &paint(line.colour), &stroke, scale, None);
    }
}

fn paint(Rgb(r, g, b): Rgb) -> Paint<'static> {
    let mut paint = Paint::default();
    paint.set_color_rgba8(r, g, b, 255);
    paint
}

/// Draws a picture as PNG with `per_mm` pixels to a millimetre.
///
/// # Errors
/// [`PngError`] where the picture would be empty or of more than 16,000 pixels a side.
pub fn figure_png(figure: &super::model::Figure, per_mm: f32) -> Result<Vec<u8>, PngError> {
    items_as_png(figure.items.iter(), (figure.width, figure.height), per_mm)
}
