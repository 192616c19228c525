//! What is said aloud, over the map, large; and what can't be met any more.

use super::parts::fitting;
use crate::coat::assess;
use crate::gui::action::Model;
use crate::gui::theme;
use crate::say;
use eframe::egui::{Align, FontId, Rect, Stroke, StrokeKind, Ui, UiBuilder, pos2, vec2};

/// Room for the buttons at the top right of the map.
const BUTTONS: f32 = 84.0;

/// Draws the call and the warnings over the top of the map.
pub(in crate::gui) fn bay_call_ui(ui: &mut Ui, m: &Model<'_>, area: Rect) {
    let p = theme::of(ui.ctx());
    let Some(scene) = &m.bay.scene else { return };
    let air =
        m.day_run().day().air().map(|air| assess(&air, &m.job.product, m.job.patch.as_ref()).stops).unwrap_or_default();
    let failure = m.day_run().failure.iter().chain(&air).map(|f| (f, p.stop));
    let lines = failure.chain(scene.warnings.iter().map(|w| (w, p.note)));
    let mut at = area.min + vec2(12.0, 4.0);
    let width = area.width() - 12.0 - BUTTONS;
    let call = scene.call.as_ref().map(|call| {
        let call = say!("bay-said-aloud", call = call);
        // On one line, so that it does not reach down to the vehicle.
        let size = fitting(ui.painter(), &call, width - 24.0, &[28.0, 25.0, 22.0, 20.0, 18.0]);
        (call, size)
    });
    let mut band = |text: &str, ink, font: FontId| {
        let mut job = eframe::egui::text::LayoutJob::simple(text.to_owned(), font, ink, width - 24.0);
        job.halign = Align::LEFT;
        let galley = ui.painter().layout_job(job);
        let place = Rect::from_min_size(at, vec2(galley.size().x + 24.0, galley.size().y + 6.0));
        ui.painter().rect(place, 8.0, p.sheet, Stroke::new(1.5, ink), StrokeKind::Inside);
        ui.painter().galley(place.min + vec2(12.0, 3.0), galley, ink);
        at = pos2(at.x, place.bottom() + 6.0);
        let heard = ui.scope_builder(UiBuilder::new().max_rect(place), |ui| ui.unique_id()).inner;
        let response = ui.interact(place, heard, eframe::egui::Sense::hover());
        response.widget_info(|| eframe::egui::WidgetInfo::labeled(eframe::egui::Role::Status, true, text));
    };
    if let Some((call, size)) = call {
        band(&call, p.ink, FontId::new(size, theme::bold_family()));
    }
    for (text, ink) in lines {
        band(text, ink, FontId::new(18.0, theme::bold_family()));
    }
}
