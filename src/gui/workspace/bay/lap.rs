//! The last lap: one place to stand after another, what to look at from there, what was found.

use super::parts::{GAP, Look, TARGET, press, side_by_side};
use crate::bay::{Event, LapMark};
use crate::gui::action::{Action, Model};
use crate::gui::bay::BayWish;
use crate::gui::theme;
use crate::say;
use crate::scene::{LapPlaceRow, LapScene};
use crate::units::{clock, minutes};
use eframe::egui::{Align2, FontId, Rect, RichText, ScrollArea, Sense, Ui, pos2, vec2};

/// With less than this left, in s, a place to stand is marked: our own estimate.
pub(super) const SOON_S: i64 = 600;

/// Draws the next place to stand, and the button that is pressed most.
pub(super) fn lap_ui(ui: &mut Ui, m: &Model<'_>, lap: &LapScene, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let (done, all) = lap.done;
    ui.label(theme::bold(say!("bay-lap", done = done, all = all), 20.0));
    let Some(stand) = lap.stands.first() else { return finished(ui, m, lap) };
    ui.label(theme::bold(&stand.name, 28.0));
    let left = if stand.left_s >= 0 {
        say!("bay-time-to-save", time = clock(stand.left_s))
    } else {
        say!("bay-too-late").to_owned()
    };
    ui.label(RichText::new(left).size(18.0).color(if stand.left_s < SOON_S { p.note } else { p.ink }));
    let area = ui.available_rect_before_wrap();
    let button = Rect::from_min_max(pos2(area.left(), area.bottom() - 96.0), area.max);
    let list = Rect::from_min_max(area.min, pos2(area.right(), button.top() - GAP));
    super::parts::within(ui, list, |ui| {
        ScrollArea::vertical().id_salt(("lap", stand.stance)).auto_shrink([false, false]).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 6.0;
            for spot in &stand.spots {
                spot_row(ui, spot, out);
            }
        });
    });
    let open: Vec<Event> =
        stand.spots.iter().filter(|s| s.mark.is_none()).map(|s| Event::Looked { place: s.id.clone() }).collect();
    let text = if open.len() == stand.spots.len() { say!("bay-all-fine") } else { say!("bay-rest-fine") };
    if !open.is_empty() && press(ui, button, text, &[32.0, 28.0, 24.0], Look::Filled(p.go), text) {
        out.push(Action::Bay(BayWish::NoteAll(open)));
    }
}

/// One place: nothing found yet, or what to do with what was found.
fn spot_row(ui: &mut Ui, spot: &LapPlaceRow, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let width = ui.available_width() - 12.0;
    let found = spot.mark == Some(LapMark::HighSpot);
    let height = if found { 2.0 * TARGET + 32.0 } else { TARGET };
    let (place, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let paint = ui.painter();
    let words = width - if spot.mark.is_none() { 104.0 } else { 0.0 };
    let galley = paint.layout(spot.name.clone(), FontId::proportional(15.0), p.ink, words - 8.0);
    let at = if found { place.min } else { pos2(place.left(), place.center().y - galley.size().y / 2.0) };
    paint.galley(at, galley, p.ink);
    let place_id = spot.id.clone();
    match spot.mark {
        None => {
            let button = Rect::from_min_max(pos2(place.right() - 100.0, place.top()), place.max);
            let aloud = say!("bay-high-spot-at", place = &spot.name);
            if press(ui, button, say!("bay-high-spot"), &[16.0, 14.0], Look::Plain, &aloud) {
                out.push(Action::Bay(BayWish::Note(Event::FoundHighSpot { place: place_id })));
            }
        }
        Some(LapMark::HighSpot) => {
            let text = say!("bay-wet-again", time = clock(spot.left_s.max(0)));
            let font = FontId::new(15.0, theme::bold_family());
            let galley = paint.layout(text, font, p.note, width);
            paint.galley(place.min + vec2(0.0, 40.0), galley, p.note);
            let row = Rect::from_min_max(pos2(place.left(), place.bottom() - TARGET), place.max);
            let buttons = [
                (say!("bay-gone"), Look::Filled(p.go), say!("bay-gone-at", place = &spot.name)),
                (say!("bay-to-polish"), Look::Plain, say!("bay-to-polish-at", place = &spot.name)),
            ];
            match side_by_side(ui, row, &buttons, &[18.0, 16.0, 14.0]) {
                Some(0) => out.push(Action::Bay(BayWish::Note(Event::SavedHighSpot { place: place_id }))),
                Some(_) => out.push(Action::Bay(BayWish::Note(Event::LeftForPolishing { place: place_id }))),
                None => {}
            }
        }
        Some(mark) => {
            let text = match mark {
                LapMark::Fine => say!("bay-mark-fine"),
                LapMark::Saved => say!("bay-mark-saved"),
                _ => say!("bay-mark-to-polish"),
            };
            let font = FontId::new(15.0, theme::bold_family());
            paint.text(pos2(place.right(), place.center().y), Align2::RIGHT_CENTER, text, font, p.go);
        }
    }
}

fn finished(ui: &mut Ui, m: &Model<'_>, lap: &LapScene) {
    let p = theme::of(ui.ctx());
    ui.label(theme::bold(say!("bay-all-looked-at"), 28.0).color(p.go));
    for name in &lap.to_polish {
        ui.label(RichText::new(say!("bay-left-to-polish", place = name)).size(16.0).color(p.note));
    }
    let product = &m.job.product;
    let text = say!("bay-keep-dry", rain = minutes(product.rain_s), drive = minutes(product.drive_s));
    ui.label(RichText::new(text).size(16.0));
}
