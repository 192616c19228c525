//! The air while the day goes on: the sun comes round, a door is opened.

use super::parts::{GAP, Look, TARGET, press, row};
use crate::bay::Event;
use crate::coat::{Air, WindowBasis, assess};
use crate::gui::action::{Action, Model};
use crate::gui::bay::{Asking, BayWish};
use crate::gui::theme;
use crate::gui::widgets::said;
use crate::say;
use crate::units::{Celsius, RelativeHumidity};
use crate::words::decimal;
use eframe::egui::{Align2, FontId, Rect, RichText, Sense, Ui, pos2, vec2};

/// Draws the sheet; `air` is what was set so far.
pub(super) fn air_ui(ui: &mut Ui, m: &Model<'_>, air: Air, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    ui.label(theme::bold(say!("bay-air-now"), 20.0));
    let degrees = |t: Celsius, by: f64| Celsius::new(t.c() + by).unwrap_or(t);
    let ask = |air: Air| Action::Bay(BayWish::Ask(Some(Asking::Air(air))));
    if let Some(by) = stepper(ui, say!("bay-coldest"), &said(ui, &format!("{:.0}", air.surface_temp_c))) {
        out.push(ask(Air { surface_temp_c: degrees(air.surface_temp_c, by), ..air }));
    }
    if let Some(by) = stepper(ui, say!("bay-warmest"), &said(ui, &format!("{:.0}", air.warmest()))) {
        let warmest = degrees(air.warmest(), by);
        out.push(ask(Air { warmest_surface_temp_c: (warmest > air.surface_temp_c).then_some(warmest), ..air }));
    }
    if let Some(by) = stepper(ui, say!("bay-air"), &said(ui, &format!("{:.0}", air.air_temp_c))) {
        out.push(ask(Air { air_temp_c: degrees(air.air_temp_c, by), ..air }));
    }
    if let Some(by) = stepper(ui, say!("bay-humidity"), &format!("{:.0}", air.humidity_pct)) {
        let humidity_pct = RelativeHumidity::new(air.humidity_pct.pct() + 5.0 * by).unwrap_or(air.humidity_pct);
        out.push(ask(Air { humidity_pct, ..air }));
    }
    let before = m.day_run().day().air().unwrap_or(m.job.air);
    let basis = WindowBasis::new(&m.job.product, m.job.patch.as_ref());
    let change = basis.factor(&air) / basis.factor(&before) - 1.0;
    let text = match (change * 100.0).round() {
        0.0 => say!("bay-windows-stay").to_owned(),
        more if more > 0.0 => say!("bay-windows-longer", share = decimal(more, 0)),
        less => say!("bay-windows-shorter", share = decimal(-less, 0)),
    };
    ui.label(RichText::new(text).size(16.0));
    for stop in assess(&air, &m.job.product, m.job.patch.as_ref()).stops {
        ui.label(RichText::new(said(ui, &stop)).size(16.0).color(p.stop));
    }
    if air != before && row(ui, say!("bay-so-it-is"), Look::Filled(p.accent)) {
        out.push(Action::Bay(BayWish::Note(Event::AirChanged { air })));
    }
    if row(ui, say!("bay-leave-it"), Look::Plain) {
        out.push(Action::Bay(BayWish::Ask(None)));
    }
}

/// A value between two large buttons; answers by how many steps it shall change.
fn stepper(ui: &mut Ui, label: &str, value: &str) -> Option<f64> {
    let p = theme::of(ui.ctx());
    let (place, _) = ui.allocate_exact_size(vec2(ui.available_width(), TARGET + 18.0), Sense::hover());
    ui.painter().text(place.min, Align2::LEFT_TOP, label, FontId::proportional(14.0), p.ink_soft);
    let top = place.top() + 18.0;
    let button = |left: f32| Rect::from_min_size(pos2(left, top), vec2(72.0, TARGET));
    let font = FontId::new(28.0, theme::bold_family());
    let middle = pos2(place.center().x, top + TARGET / 2.0);
    ui.painter().text(middle, Align2::CENTER_CENTER, value, font, p.ink);
    let less = press(ui, button(place.left()), "\u{2212}", &[28.0], Look::Plain, &say!("bay-less", what = label));
    let more =
        press(ui, button(place.right() - 72.0 - GAP), "+", &[28.0], Look::Plain, &say!("bay-more-of", what = label));
    match (less, more) {
        (true, _) => Some(-1.0),
        (_, true) => Some(1.0),
        _ => None,
    }
}
