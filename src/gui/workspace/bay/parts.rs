//! Large buttons and words.

use crate::gui::theme;
use eframe::egui::{
    Align, Button, Color32, FontId, Layout, Painter, Rect, Response, RichText, Stroke, Ui, UiBuilder, vec2,
};

/// Between things that are pressed.
pub(super) const GAP: f32 = 8.0;
/// Least height of anything that is pressed.
pub(super) const TARGET: f32 = 48.0;

/// How a button looks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Look {
    /// A frame.
    Plain,
    /// In a colour.
    Filled(Color32),
    /// Pressed in.
    Chosen,
}

/// Draws in a part of the screen, from its top.
pub(super) fn within<T>(ui: &mut Ui, area: Rect, draw: impl FnOnce(&mut Ui) -> T) -> T {
    ui.scope_builder(UiBuilder::new().max_rect(area).layout(Layout::top_down(Align::LEFT)), |ui| {
        ui.set_min_size(area.size());
        draw(ui)
    })
    .inner
}

/// The largest of some sizes in which a text has room on one line.
pub(super) fn fitting(paint: &Painter, text: &str, width: f32, sizes: &[f32]) -> f32 {
    let fits = |size: &&f32| {
        let font = FontId::new(**size, theme::bold_family());
        paint.layout_no_wrap(text.to_owned(), font, Color32::PLACEHOLDER).size().x <= width
    };
    sizes.iter().find(fits).or(sizes.last()).copied().unwrap_or(16.0)
}

/// A button that fills a place. `name` is what is read aloud of it.
pub(super) fn press(ui: &mut Ui, place: Rect, text: &str, sizes: &[f32], look: Look, name: &str) -> bool {
    let p = theme::of(ui.ctx());
    let size = fitting(ui.painter(), text, place.width() - 12.0, sizes);
    let (fill, ink, line) = match look {
        Look::Plain => (p.sheet, p.ink, Stroke::new(1.5, p.ink_soft)),
        Look::Chosen => (p.accent_wash, p.accent, Stroke::new(2.5, p.accent)),
        Look::Filled(fill) => (fill, theme::text_on(fill), Stroke::new(1.5, p.contour)),
    };
    let label = RichText::new(text).font(FontId::new(size, theme::bold_family())).color(ink);
    let button = Button::new(label).fill(fill).stroke(line).min_size(place.size()).wrap();
    ui.scope(|ui| {
        ui.spacing_mut().button_padding = vec2(4.0, 2.0);
        let response: Response = ui.put(place, button);
        response.accessible_name(name).clicked()
    })
    .inner
}

/// A button on a row of its own.
pub(super) fn row(ui: &mut Ui, text: &str, look: Look) -> bool {
    let (place, _) = ui.allocate_exact_size(vec2(ui.available_width(), 60.0), eframe::egui::Sense::hover());
    press(ui, place, text, &[20.0, 16.0, 14.0], look, text)
}

/// Several buttons side by side in a place; answers which was pressed.
pub(super) fn side_by_side(ui: &mut Ui, place: Rect, buttons: &[(&str, Look, String)], sizes: &[f32]) -> Option<usize> {
    let count = buttons.len().max(1) as f32;
    let width = (place.width() - GAP * (count - 1.0)) / count;
    let mut pressed = None;
    for (index, (text, look, name)) in buttons.iter().enumerate() {
        let left = place.left() + (width + GAP) * index as f32;
        let place = Rect::from_min_size(eframe::egui::pos2(left, place.top()), vec2(width, place.height()));
        if press(ui, place, text, sizes, *look, name) {
            pressed = Some(index);
        }
    }
    pressed
}
