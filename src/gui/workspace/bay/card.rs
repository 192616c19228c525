//! The card of one worker: what they do now, one large button, what comes next.

use super::other::other_ui;
use super::parts::{GAP, Look, TARGET, fitting, press, side_by_side, within};
use crate::bay::Event;
use crate::coat::Feel;
use crate::gui::action::{Action, Model};
use crate::gui::bay::{Asking, BayWish, Trade};
use crate::gui::theme;
use crate::gui::widgets::{one_line_at, worker_badge};
use crate::insight::spoken;
use crate::say;
use crate::scene::{Card, CardState, Doing};
use crate::units::clock;
use eframe::egui::{Align2, Color32, FontId, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

/// Draws a card into its place.
pub(super) fn card_ui(ui: &mut Ui, place: Rect, m: &Model<'_>, card: &Card, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let color = theme::worker(card.worker);
    let ground = ui.painter();
    ground.rect(place, 8.0, p.paper, Stroke::new(1.5, p.hairline), StrokeKind::Inside);
    ground.rect_filled(Rect::from_min_size(place.min, vec2(8.0, place.height())), 4.0, color);
    let inner = Rect::from_min_max(place.min + vec2(16.0, 8.0), place.max - vec2(10.0, 10.0));
    let asking = m.view.bay.asking;
    ui.push_id(("card", card.worker), |ui| match asking {
        Some(Asking::Away(worker)) if worker == card.worker => away_ui(ui, inner, card, out),
        Some(Asking::Other(worker)) if worker == card.worker => {
            within(ui, inner, |ui| other_ui(ui, m, card, out));
        }
        _ => usual(ui, inner, m, card, out),
    });
}

fn usual(ui: &mut Ui, inner: Rect, m: &Model<'_>, card: &Card, out: &mut Vec<Action>) {
    let top = head(ui, inner, card);
    let foot = Rect::from_min_max(pos2(inner.left(), inner.bottom() - TARGET), inner.max);
    let asked = asked_line(ui, foot.top() - 2.0, inner, card);
    let next = next_line(ui, asked - 2.0, inner, card);
    let middle = Rect::from_min_max(pos2(inner.left(), top + 6.0), pos2(inner.right(), next - 4.0));
    main_button(ui, middle, m, card, out);
    foot_row(ui, foot, m, card, out);
}

/// Name, time, what and where; answers where that ends.
fn head(ui: &Ui, inner: Rect, card: &Card) -> f32 {
    let p = theme::of(ui.ctx());
    let paint = ui.painter();
    worker_badge(paint, inner.min + vec2(11.0, 15.0), 10.0, card.worker, "");
    let bold = |size| FontId::new(size, theme::bold_family());
    let (time, time_ink) = time_of(card, p.ink, p.note);
    let time = paint.text(pos2(inner.right(), inner.top() - 2.0), Align2::RIGHT_TOP, time, bold(28.0), time_ink);
    let name = paint.layout(card.name.clone(), bold(20.0), p.ink, f32::INFINITY);
    let room = Rect::from_min_max(inner.min + vec2(30.0, 0.0), pos2(time.left() - 6.0, inner.top() + 32.0));
    paint.with_clip_rect(room).galley(room.min + vec2(0.0, 1.0), name, p.ink);
    let (verb, where_) = words(card);
    let verb = paint.text(inner.min + vec2(0.0, 32.0), Align2::LEFT_TOP, verb, FontId::proportional(18.0), p.ink_soft);
    let size = fitting(ui.painter(), &where_, inner.width(), &[32.0, 28.0, 24.0, 20.0]);
    let galley = paint.layout(where_, bold(size), p.ink, inner.width());
    let at = pos2(inner.left(), verb.bottom() - 4.0);
    let bottom = at.y + galley.size().y;
    paint.galley(at, galley, p.ink);
    match &card.state {
        CardState::Working { since_s, takes_s, .. } => {
            let bar = Rect::from_min_size(pos2(inner.left(), bottom + 1.0), vec2(inner.width(), 8.0));
            let share = (*since_s as f32 / (*takes_s).max(1) as f32).clamp(0.0, 1.0);
            paint.rect_filled(bar, 3.0, p.hairline);
            let filled = Rect::from_min_size(bar.min, vec2(bar.width() * share, bar.height()));
            paint.rect_filled(filled, 3.0, if since_s > takes_s { p.note } else { p.ink_soft });
            bar.bottom()
        }
        CardState::Waiting { why: Some(why), .. } => {
            paint.text(pos2(inner.left(), bottom), Align2::LEFT_TOP, why, FontId::proportional(14.0), p.note).bottom()
        }
        _ => bottom,
    }
}

/// The time at the top right: what is left, or what it takes longer.
fn time_of(card: &Card, ink: Color32, note: Color32) -> (String, Color32) {
    match &card.state {
        CardState::Working { since_s, takes_s, .. } if since_s > takes_s => {
            (format!("+{}", clock(since_s - takes_s)), note)
        }
        CardState::Working { since_s, takes_s, .. } => (clock(takes_s - since_s), ink),
        CardState::Waiting { in_s: 0, .. } => (say!("bay-now").to_owned(), ink),
        CardState::Waiting { in_s, .. } => (say!("bay-in", time = clock(*in_s)), ink),
        CardState::Away { back_s, .. } => (clock(*back_s), ink),
        CardState::Free => (String::new(), ink),
    }
}

fn words(card: &Card) -> (String, String) {
    match &card.state {
        CardState::Working { doing, .. } => (doing.verb.clone(), doing.name.clone()),
        CardState::Waiting { doing, in_s, .. } => {
            let verb = doing.verb.to_lowercase();
            let what = if *in_s == 0 { doing.verb.clone() } else { say!("bay-wait-then", verb = verb) };
            (what, doing.name.clone())
        }
        CardState::Away { doing, .. } => {
            let waits = doing.as_ref().map(|d| say!("bay-panel-waits", panel = &d.name));
            (waits.unwrap_or_else(|| say!("bay-away").to_owned()), say!("bay-back-soon").to_owned())
        }
        CardState::Free => (say!("bay-nothing-left").to_owned(), say!("bay-free").to_owned()),
    }
}

/// Which panel the answers below are about, above `bottom`; answers where it begins.
fn asked_line(ui: &Ui, bottom: f32, inner: Rect, card: &Card) -> f32 {
    let p = theme::of(ui.ctx());
    let Some(doing) = &card.feel else { return bottom };
    let text = say!("bay-how-felt", panel = spoken(&doing.name));
    let size = fitting(ui.painter(), &text, inner.width(), &[16.0, 14.0, 12.0]);
    let font = FontId::new(size, theme::bold_family());
    ui.painter().text(pos2(inner.left(), bottom), Align2::LEFT_BOTTOM, text, font, p.ink).top()
}

/// What comes after that, above `bottom`; answers where it begins.
fn next_line(ui: &Ui, bottom: f32, inner: Rect, card: &Card) -> f32 {
    let p = theme::of(ui.ctx());
    let Some((doing, in_s)) = &card.next else { return bottom };
    let paint = ui.painter();
    let soft = FontId::proportional(14.0);
    let at = pos2(inner.left(), bottom - 4.0);
    let label = paint.text(at, Align2::LEFT_BOTTOM, say!("bay-next"), soft.clone(), p.ink_soft);
    let at = pos2(inner.right(), bottom - 4.0);
    let time = paint.text(at, Align2::RIGHT_BOTTOM, say!("bay-in", time = clock(*in_s)), soft, p.ink_soft);
    let width = time.left() - label.right() - 16.0;
    let name = if doing.coats { doing.name.clone() } else { verb_panel(doing) };
    let size = fitting(ui.painter(), &name, width, &[20.0, 18.0, 16.0, 14.0, 12.0]);
    let font = FontId::new(size, theme::bold_family());
    let at = pos2(label.right() + 8.0, bottom - 2.0);
    one_line_at(paint, at, Align2::LEFT_BOTTOM, &name, (font, p.ink), width).top().min(bottom - 26.0)
}

/// What is done and where, as in "Polish roof left".
pub(super) fn verb_panel(doing: &Doing) -> String {
    say!("bay-verb-panel", verb = &doing.verb, panel = spoken(&doing.name))
}

/// Sizes of the word on the button that is pressed most.
fn huge(place: Rect) -> [f32; 4] {
    [(place.height() * 0.36).clamp(24.0, 64.0), 32.0, 24.0, 20.0]
}

/// Done, start, back.
fn main_button(ui: &mut Ui, place: Rect, m: &Model<'_>, card: &Card, out: &mut Vec<Action>) {
    let color = theme::worker(card.worker);
    let worker = card.worker;
    let sizes = huge(place);
    let id = |operation: usize| m.day_run().problem().operations[operation].id.clone();
    match &card.state {
        CardState::Working { doing, .. } => {
            let name = say!("bay-person-done", person = &card.name, panel = &doing.name);
            if press(ui, place, say!("bay-done"), &sizes, Look::Filled(color), &name) {
                out.push(Action::Bay(BayWish::Finish { worker, operation: doing.operation }));
            }
        }
        CardState::Waiting { doing, .. } => {
            let name = say!("bay-person-start", person = &card.name, panel = &doing.name);
            if press(ui, place, say!("bay-start-now"), &sizes, Look::Plain, &name) {
                let event = Event::Began { worker: card.name.clone(), operation: id(doing.operation) };
                out.push(Action::Bay(BayWish::Note(event)));
            }
        }
        CardState::Away { .. } => {
            let name = say!("bay-person-back", person = &card.name);
            if press(ui, place, say!("bay-back"), &sizes, Look::Filled(color), &name) {
                out.push(Action::Bay(BayWish::Note(Event::Returned { worker: card.name.clone() })));
            }
        }
        CardState::Free => {}
    }
}

/// How the last panel felt, until that is said; otherwise leaving and taking something else.
fn foot_row(ui: &mut Ui, place: Rect, m: &Model<'_>, card: &Card, out: &mut Vec<Action>) {
    if let Some(doing) = &card.feel {
        return feel_row(ui, place, m, doing, out);
    }
    let name = &card.name;
    let mut buttons = Vec::new();
    if !matches!(card.state, CardState::Away { .. }) {
        let (away, other) = (say!("bay-person-away", person = name), say!("bay-person-other-panel", person = name));
        buttons.push((say!("bay-away-ask"), Look::Plain, away, Asking::Away(card.worker)));
        buttons.push((say!("bay-other-panel-ask"), Look::Plain, other, Asking::Other(card.worker)));
    }
    let asks: Vec<Asking> = buttons.iter().map(|b| b.3).collect();
    let mut shown: Vec<(&str, Look, String)> = buttons.into_iter().map(|b| (b.0, b.1, b.2)).collect();
    let pads = say!("bay-fresh-pad", count = card.pads);
    if m.view.bay.trade == Trade::Polishing {
        shown.push((&pads, Look::Plain, say!("bay-person-fresh-pad", person = name)));
    }
    match side_by_side(ui, place, &shown, &[16.0, 14.0, 12.0]) {
        Some(index) if index < asks.len() => out.push(Action::Bay(BayWish::Ask(Some(asks[index])))),
        Some(_) => out.push(Action::Bay(BayWish::Note(Event::PadChanged { worker: card.name.clone() }))),
        None => {}
    }
}

fn feel_row(ui: &mut Ui, place: Rect, m: &Model<'_>, doing: &Doing, out: &mut Vec<Action>) {
    let panel = &doing.name;
    let answers = [Feel::StillWet, Feel::Right, Feel::Dragging];
    let buttons = [
        (say!("bay-feel-wet"), Look::Plain, say!("bay-felt-wet", panel = panel)),
        (say!("bay-feel-right"), Look::Plain, say!("bay-felt-right", panel = panel)),
        (say!("bay-feel-dragging"), Look::Plain, say!("bay-felt-dragging", panel = panel)),
    ];
    if let Some(index) = side_by_side(ui, place, &buttons, &[16.0, 14.0, 12.0]) {
        let operation = m.day_run().problem().operations[doing.operation].id.clone();
        out.push(Action::Bay(BayWish::Note(Event::Felt { operation, feel: answers[index] })));
    }
}

/// For how long somebody leaves.
fn away_ui(ui: &mut Ui, inner: Rect, card: &Card, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let font = FontId::new(20.0, theme::bold_family());
    ui.painter().text(inner.min, Align2::LEFT_TOP, say!("bay-leaves-for", person = &card.name), font, p.ink);
    let height = ((inner.height() - 36.0 - 2.0 * GAP) / 3.0).max(TARGET);
    let row = |k: f32| {
        Rect::from_min_size(pos2(inner.left(), inner.top() + 36.0 + (height + GAP) * k), vec2(inner.width(), height))
    };
    let minutes = [(1, "1\u{202f}min"), (2, "2\u{202f}min"), (5, "5\u{202f}min"), (15, "15\u{202f}min")];
    for (k, pair) in minutes.chunks(2).enumerate() {
        let buttons: Vec<_> =
            pair.iter().map(|(_, text)| (*text, Look::Plain, say!("bay-away-for", time = *text))).collect();
        if let Some(index) = side_by_side(ui, row(k as f32), &buttons, &[28.0, 20.0]) {
            let event = Event::Left { worker: card.name.clone(), for_s: pair[index].0 * 60 };
            out.push(Action::Bay(BayWish::Note(event)));
        }
    }
    if press(ui, row(2.0), say!("bay-stays"), &[20.0], Look::Plain, say!("bay-stays-aloud")) {
        out.push(Action::Bay(BayWish::Ask(None)));
    }
}
