//! The legend under the map: only what is on the map.

use super::{labels, plain, symbols, whole};
use crate::geometry::{MapCurve, MapPoint, Outline, hatch_lines};
use crate::scene::{Fill, LegendSymbol, MapScene, PinShape, hatch_of};
use crate::sheets::font;
use crate::sheets::page::{Item, PaperPoint, circle, polyline, rectangle};
use crate::sheets::palette::{self, CONTOUR, HATCH, INK_SOFT, SEAM};
use crate::vehicle::Surface;

const SIZE: f32 = 2.9;
const LINE: f32 = 5.2;

/// Draws the legend under a map of a size; answers the height of both.
pub(super) fn draw(items: &mut Vec<Item>, scene: &MapScene, (width, height): (f32, f32)) -> f32 {
    let (mut x, mut y) = (0.0, height + LINE * 0.6);
    if scene.legend.is_empty() {
        return height;
    }
    for row in &scene.legend {
        let takes = mark_width(row.symbol) + 1.6 + font::width(&row.text, false, SIZE);
        if x > 0.0 && x + takes > width {
            x = 0.0;
            y += LINE;
        }
        symbol(items, x, y, row.symbol);
        let at = PaperPoint::new(x + mark_width(row.symbol) + 1.6, y + SIZE * font::CAPITALS / 2.0);
        items.push(Item::Text(plain(&row.text, at, SIZE, INK_SOFT)));
        x += takes + 5.0;
    }
    y + LINE * 0.6
}

fn mark_width(symbol: LegendSymbol) -> f32 {
    match symbol {
        LegendSymbol::Fill(_) => 6.0,
        LegendSymbol::Ramp | LegendSymbol::Turns => 14.0,
        LegendSymbol::Pin(_) | LegendSymbol::Worker(_) => 4.2,
        LegendSymbol::Budget => 9.0,
    }
}

/// Draws one mark with its left end at `x`, its middle at `y`.
fn symbol(items: &mut Vec<Item>, x: f32, y: f32, symbol: LegendSymbol) {
    let rim = Some(whole(SEAM, 0.2));
    match symbol {
        LegendSymbol::Fill(fill) => {
            items.push(rectangle(x, y - 1.9, 6.0, 3.8, Some(palette::fill(fill, false)), None));
            if let Some(hatch) = hatch_of(fill) {
                hatched(items, x, y - 1.9, hatch);
            }
            items.push(rectangle(x, y - 1.9, 6.0, 3.8, None, rim));
        }
        LegendSymbol::Ramp | LegendSymbol::Turns => {
            for k in 0..28_u8 {
                let share = f32::from(k) / 27.0;
                let fill = match symbol {
                    LegendSymbol::Ramp => palette::ramp(share),
                    _ => palette::fill(Fill::Turn(Surface::Paint, share), false),
                };
                items.push(rectangle(
                    x + 0.5 * f32::from(k),
                    y - 1.9,
                    if k < 27 { 0.9 } else { 0.5 },
                    3.8,
                    Some(fill),
                    None,
                ));
            }
            items.push(rectangle(x, y - 1.9, 14.0, 3.8, None, rim));
        }
        LegendSymbol::Pin(PinShape::Spot) => items.push(circle(PaperPoint::new(x + 2.1, y), 0.35, Some(CONTOUR), None)),
        LegendSymbol::Pin(shape) => symbols::pin(items, PaperPoint::new(x + 2.1, y), shape, 0.35),
        LegendSymbol::Worker(worker) => symbols::shape(items, PaperPoint::new(x + 2.1, y), 1.8, worker),
        LegendSymbol::Budget => labels::bar(items, (x, y - 0.6), 9.0, 0.6),
    }
}

/// The hatch of a level on a swatch, as far apart as on a map of usual scale.
fn hatched(items: &mut Vec<Item>, x: f32, y: f32, hatch: usize) {
    const DISTANCES: [f32; 4] = [3.0, 2.0, 1.35, 0.85];
    let corner = |dx: f32, dy: f32| MapPoint::new((x + dx) * 10.0, (y + dy) * 10.0);
    let corners = [corner(0.0, 0.0), corner(6.0, 0.0), corner(6.0, 3.8), corner(0.0, 3.8)];
    let curves = (0..4).map(|k| MapCurve::line(corners[k], corners[(k + 1) % 4])).collect();
    let Ok(swatch) = Outline::new(curves) else { return };
    // Ten times as large, since distances under a millimetre are not told apart.
    for (a, b) in hatch_lines(&swatch, DISTANCES[hatch.min(3)] * 10.0) {
        let ends = [a, b].map(|p| PaperPoint::new(p.x / 10.0, p.y / 10.0));
        items.push(polyline(&ends, whole(HATCH, 0.12)));
    }
}
