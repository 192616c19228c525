//! The legend under the map: only what is on the map.

use super::paint::{fill_color, hatch_of};
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::{hatched, pin_symbol, worker_badge};
use crate::scene::{LegendSymbol, MapScene};
use eframe::egui::{Align2, FontId, Painter, Rect, Stroke, StrokeKind, pos2, vec2};

/// Draws the legend along the lower edge of the map.
pub(super) fn draw(paint: &Painter, area: Rect, scene: &MapScene, m: &Model<'_>) {
    let p = theme::of(paint.ctx());
    let y = area.bottom() - 16.0;
    let mut x = area.left() + 16.0;
    let font = FontId::proportional(12.0);
    if scene.legend.is_empty() {
        let text = match scene.overlay {
            crate::scene::Overlay::Film => "Nothing read yet.",
            crate::scene::Overlay::Defects => "No defects noted.",
            crate::scene::Overlay::Polish => "Nothing to polish.",
            crate::scene::Overlay::Order if m.view.workspace == Workspace::Correction => polishing(m),
            crate::scene::Overlay::Order if m.order.is_working() => "Planning the order…",
            crate::scene::Overlay::Order => "No order yet.",
            crate::scene::Overlay::Body => "No panels.",
        };
        paint.text(pos2(x, y), Align2::LEFT_CENTER, text, font, p.ink_soft);
        return;
    }
    for row in &scene.legend {
        x += symbol(paint, x, y, row.symbol) + 6.0;
        let text = paint.text(pos2(x, y), Align2::LEFT_CENTER, &row.text, font.clone(), p.ink_soft);
        x = text.right() + 18.0;
    }
}

fn polishing(m: &Model<'_>) -> &'static str {
    match &m.polishing.state {
        state if state.is_empty() => "Nothing to polish.",
        state if state.is_working() => "Planning the order…",
        _ => "No order yet.",
    }
}

/// Draws one mark with its left end at `x`; answers its width.
fn symbol(paint: &Painter, x: f32, y: f32, symbol: LegendSymbol) -> f32 {
    let p = theme::of(paint.ctx());
    match symbol {
        LegendSymbol::Fill(fill) => {
            let swatch = Rect::from_min_size(pos2(x, y - 6.0), vec2(18.0, 12.0));
            paint.rect_filled(swatch, 2.0, fill_color(p, fill));
            if let Some(hatch) = hatch_of(fill) {
                hatched(paint, swatch, hatch, p.hatch());
            }
            paint.rect_stroke(swatch, 2.0, Stroke::new(1.0, p.seam), StrokeKind::Inside);
            18.0
        }
        LegendSymbol::Ramp => {
            for k in 0..48_u8 {
                let slice = Rect::from_min_size(pos2(x + f32::from(k), y - 6.0), vec2(1.2, 12.0));
                paint.rect_filled(slice, 0.0, p.ramp(f32::from(k) / 47.0));
            }
            48.0
        }
        LegendSymbol::Pin(shape) => {
            pin_symbol(paint, pos2(x + 7.0, y), shape, 0.4);
            14.0
        }
        LegendSymbol::Worker(worker) => {
            worker_badge(paint, pos2(x + 7.0, y), 7.0, worker, "");
            14.0
        }
    }
}
