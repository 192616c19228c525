//! Bay: the order being worked. Everything here is read from three metres and pressed with gloves.

mod air;
mod ask;
mod below;
mod call;
mod card;
mod lap;
mod other;
mod parts;
mod start;
mod strip;

pub(in crate::gui) use below::bay_below_ui;
pub(in crate::gui) use call::bay_call_ui;

use crate::gui::action::{Action, Model};
use crate::gui::bay::Asking;
use crate::scene::BayScene;
use eframe::egui::{Rect, ScrollArea, Sense, Ui, UiBuilder, pos2, vec2};
use parts::{GAP, within};

/// Height of the row of buttons for all.
const STRIP: f32 = 52.0;
/// Room for the bar of a list that is too long.
const SCROLL: f32 = 14.0;
/// Least height of a card.
const LEAST_CARD: f32 = 216.0;

/// Draws the right side: a card for each worker, or what is asked, and the buttons for all below.
pub(in crate::gui) fn bay_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let area = ui.max_rect();
    let Some(scene) = &m.bay.scene else {
        // Nobody wears gloves yet; in a low window it scrolls.
        let page = ScrollArea::vertical().id_salt("start").auto_shrink([false, false]);
        page.show(ui, |ui| start::start_ui(ui, m, out));
        return;
    };
    let strip = Rect::from_min_max(pos2(area.left(), area.bottom() - STRIP), area.max);
    let above = Rect::from_min_max(area.min, pos2(area.right(), strip.top() - GAP));
    match (m.view.bay.asking, &m.bay.lap) {
        (Some(Asking::Pause), _) => within(ui, above, |ui| ask::pause_ui(ui, m, out)),
        (Some(Asking::Air(air)), _) => within(ui, above, |ui| air::air_ui(ui, m, air, out)),
        (Some(Asking::More), _) => within(ui, above, |ui| ask::more_ui(ui, m, out)),
        (Some(Asking::StartOver), _) => within(ui, above, |ui| ask::start_over_ui(ui, out)),
        (_, Some(lap)) => within(ui, above, |ui| lap::lap_ui(ui, m, lap, out)),
        _ => cards(ui, above, m, scene, out),
    }
    strip::strip_ui(ui, strip, m, out);
}

fn cards(ui: &mut Ui, area: Rect, m: &Model<'_>, scene: &BayScene, out: &mut Vec<Action>) {
    let count = scene.cards.len().max(1) as f32;
    let height = (area.height() - GAP * (count - 1.0)) / count;
    if height >= LEAST_CARD {
        for (k, card) in scene.cards.iter().enumerate() {
            let top = area.top() + (height + GAP) * k as f32;
            let place = Rect::from_min_size(pos2(area.left(), top), vec2(area.width(), height));
            within(ui, place, |ui| card::card_ui(ui, place, m, card, out));
        }
        return;
    }
    within(ui, area, |ui| {
        ScrollArea::vertical().id_salt("cards").auto_shrink([false, false]).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = GAP;
            for card in &scene.cards {
                let size = vec2(area.width() - SCROLL, LEAST_CARD);
                let (place, _) = ui.allocate_exact_size(size, Sense::hover());
                let mut inner = ui.new_child(UiBuilder::new().max_rect(place));
                card::card_ui(&mut inner, place, m, card, out);
            }
        });
    });
}
