//! The legend under the map: only what is on the map.

use super::paint::fill_color;
use crate::gui::action::Model;
use crate::gui::theme;
use crate::gui::widgets::{pin_symbol, worker_badge};
use crate::scene::{LegendSymbol, MapScene};
use eframe::egui::{Align2, FontId, Painter, Rect, Stroke, StrokeKind, pos2, vec2};

/// Draws the legend along the lower edge of the map.
pub(super) fn draw(paint: &Painter, area: Rect, scene: &MapScene, m: &Model<'_>) {
    let y = area.bottom() - 16.0;
    let mut x = area.left() + 16.0;
    let font = FontId::proportional(12.0);
    if scene.legend.is_empty() {
        let text = match scene.overlay {
            crate::scene::Overlay::Film => "Nothing read yet.",
            crate::scene::Overlay::Defects => "No defects noted.",
            crate::scene::Overlay::Polish => "Nothing to polish.",
            crate::scene::Overlay::Order if m.order.is_working() => "Planning the order…",
            crate::scene::Overlay::Order => "No order yet.",
            crate::scene::Overlay::Body => "No panels.",
        };
        paint.text(pos2(x, y), Align2::LEFT_CENTER, text, font, theme::INK_SOFT);
        return;
    }
    for row in &scene.legend {
        x += symbol(paint, x, y, row.symbol) + 6.0;
        let text = paint.text(pos2(x, y), Align2::LEFT_CENTER, &row.text, font.clone(), theme::INK_SOFT);
        x = text.right() + 18.0;
    }
}

/// Draws one mark with its left end at `x`; answers its width.
fn symbol(paint: &Painter, x: f32, y: f32, symbol: LegendSymbol) -> f32 {
    match symbol {
        LegendSymbol::Fill(fill) => {
            let swatch = Rect::from_min_size(pos2(x, y - 6.0), vec2(18.0, 12.0));
            paint.rect(swatch, 2.0, fill_color(fill), Stroke::new(1.0, theme::SEAM), StrokeKind::Inside);
            18.0
        }
        LegendSymbol::Ramp => {
            for k in 0..48_u8 {
                let slice = Rect::from_min_size(pos2(x + f32::from(k), y - 6.0), vec2(1.2, 12.0));
                paint.rect_filled(slice, 0.0, theme::ramp(f32::from(k) / 47.0));
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
