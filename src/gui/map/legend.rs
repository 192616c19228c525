//! The legend under the map: only what is on the map.

use super::paint::fill_color;
use super::round::path;
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::{hatched, pin_symbol, worker_badge};
use crate::say;
use crate::scene::{Fill, LegendSymbol, MapScene, hatch_of};
use crate::vehicle::Surface;
use eframe::egui::{Align2, FontId, Painter, Rect, Stroke, StrokeKind, pos2, vec2};

/// Between the lines of a legend that is too long for one.
const LINE: f32 = 20.0;

/// Draws the legend along the lower edge of the map, on as many lines as it needs.
pub(super) fn draw(paint: &Painter, area: Rect, scene: &MapScene, m: &Model<'_>, left_out: usize) {
    let p = theme::of(paint.ctx());
    let y = area.bottom() - 16.0;
    let left = area.left() + 16.0;
    let font = FontId::proportional(12.0);
    if scene.legend.is_empty() {
        let text = match scene.overlay {
            crate::scene::Overlay::Film => say!("window-nothing-read"),
            crate::scene::Overlay::Defects => say!("window-no-defects"),
            crate::scene::Overlay::Polish => say!("window-nothing-to-polish"),
            crate::scene::Overlay::Order if m.view.workspace == Workspace::Correction => polishing(m),
            crate::scene::Overlay::Order if m.order.is_working() => say!("window-planning-order"),
            crate::scene::Overlay::Order => say!("window-no-order"),
            crate::scene::Overlay::Body => say!("window-no-panels"),
        };
        paint.text(pos2(left, y), Align2::LEFT_CENTER, text, font, p.ink_soft);
        return;
    }
    let mut lines = vec![Vec::new()];
    let mut x = left;
    for row in &scene.legend {
        let text = paint.layout_no_wrap(row.text.clone(), font.clone(), p.ink_soft);
        let width = width(row.symbol) + 6.0 + text.size().x;
        if x > left && x + width > area.right() - 8.0 {
            lines.push(Vec::new());
            x = left;
        }
        if let Some(line) = lines.last_mut() {
            line.push((x, row.symbol, text));
        }
        x += width + 18.0;
    }
    let top = y - LINE * (lines.len() - 1) as f32;
    if left_out > 0 {
        let text = say!("window-labels-left-out", count = left_out);
        let text = paint.layout_no_wrap(text, font, p.ink_soft);
        let at = Align2::LEFT_CENTER.anchor_size(pos2(left, top - LINE), text.size());
        paint.galley(at.min, text, p.ink_soft);
    }
    for (line, y) in lines.into_iter().zip((0_u8..).map(|k| top + LINE * f32::from(k))) {
        for (x, mark, text) in line {
            symbol(paint, x, y, mark);
            let at = Align2::LEFT_CENTER.anchor_size(pos2(x + width(mark) + 6.0, y), text.size());
            paint.galley(at.min, text, p.ink_soft);
        }
    }
}

fn polishing(m: &Model<'_>) -> &'static str {
    match &m.polishing.state {
        state if state.is_empty() => say!("window-nothing-to-polish"),
        state if state.is_working() => say!("window-planning-order"),
        _ => say!("window-no-order"),
    }
}

fn width(symbol: LegendSymbol) -> f32 {
    match symbol {
        LegendSymbol::Fill(_) => 18.0,
        LegendSymbol::Ramp | LegendSymbol::Turns => 48.0,
        LegendSymbol::Pin(_) => 14.0,
        LegendSymbol::Worker(_) | LegendSymbol::Budget => 34.0,
    }
}

/// Draws one mark with its left end at `x`.
fn symbol(paint: &Painter, x: f32, y: f32, symbol: LegendSymbol) {
    let p = theme::of(paint.ctx());
    match symbol {
        LegendSymbol::Fill(fill) => {
            let swatch = Rect::from_min_size(pos2(x, y - 6.0), vec2(18.0, 12.0));
            paint.rect_filled(swatch, 2.0, fill_color(p, fill));
            if fill == Fill::Plain(Surface::Lamp) {
                paint.rect_filled(swatch.with_min_x(swatch.center().x), 2.0, p.rear_lamp);
            }
            if let Some(hatch) = hatch_of(fill) {
                hatched(paint, swatch, hatch, p.hatch());
            }
            paint.rect_stroke(swatch, 2.0, Stroke::new(1.0, p.seam), StrokeKind::Inside);
        }
        LegendSymbol::Ramp => {
            for k in 0..48_u8 {
                let slice = Rect::from_min_size(pos2(x + f32::from(k), y - 6.0), vec2(1.2, 12.0));
                paint.rect_filled(slice, 0.0, p.ramp(f32::from(k) / 47.0));
            }
        }
        LegendSymbol::Turns => {
            for k in 0..48_u8 {
                let slice = Rect::from_min_size(pos2(x + f32::from(k), y - 6.0), vec2(1.2, 12.0));
                paint.rect_filled(slice, 0.0, fill_color(p, Fill::Turn(Surface::Paint, f32::from(k) / 47.0)));
            }
            let frame = Rect::from_min_size(pos2(x, y - 6.0), vec2(48.0, 12.0));
            paint.rect_stroke(frame, 0.0, Stroke::new(1.0, p.seam), StrokeKind::Inside);
        }
        LegendSymbol::Pin(shape) => pin_symbol(paint, pos2(x + 7.0, y), shape, 0.4),
        LegendSymbol::Worker(worker) => {
            let stroke = Stroke::new(1.5 * p.line, theme::worker(worker));
            paint.extend(path(&[pos2(x, y), pos2(x + 34.0, y)], stroke, worker));
            worker_badge(paint, pos2(x + 17.0, y), 7.0, worker, "");
        }
        LegendSymbol::Budget => {
            super::labels::bar(paint, Rect::from_min_size(pos2(x, y - 8.0), vec2(34.0, 5.0)), 0.6);
        }
    }
}
