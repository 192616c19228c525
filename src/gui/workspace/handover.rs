//! Handover: which sheet, on which paper, and what is written.

use crate::gui::action::{Action, Model};
use crate::gui::handover::{Form, HandoverWish, Which};
use crate::gui::home::{is_unread, nothing_yet};
use crate::gui::theme;
use crate::gui::widgets::{choice, day, fact, number, primary, section};
use crate::job::Command;
use crate::say;
use crate::sheets::{Options, Paper};
use crate::units::DateOrder;
use eframe::egui::{RichText, Ui};

/// Draws the side of Handover.
pub(super) fn handover_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let state = m.handover;
    let mut wishes = Vec::new();
    ui.label(theme::bold(say!("window-workspace-handover"), 20.0));
    if is_unread(m) {
        let sentence = say!("handover-nothing-read");
        nothing_yet(ui, m, sentence, "survey", &mut wishes);
    }
    let mut wish = |wish| wishes.push(Action::Handover(wish));
    for which in Which::ALL {
        if ui.radio(state.which == which, which.name()).clicked() {
            wish(HandoverWish::Show(which));
        }
    }
    ui.label(theme::soft(about(state.which)));
    fact(ui, say!("handover-pages"), state.page_count().to_string());
    for missing in state.missing() {
        ui.label(RichText::new(say!("handover-not-printed", what = missing.to_string())).color(p.stop));
    }
    if primary(ui, Form::Pdf.button()).clicked() {
        wish(HandoverWish::Ask(Form::Pdf));
    }
    let forms: &[Form] = match state.which {
        Which::Customer => &[Form::Html, Form::Calendar, Form::Svg, Form::Png],
        Which::Crew => &[Form::Html, Form::List, Form::Svg, Form::Png],
        Which::Record => &[Form::Html, Form::Svg, Form::Png],
    };
    for form in forms {
        if ui.button(form.button()).clicked() {
            wish(HandoverWish::Ask(*form));
        }
    }
    if let Some(said) = &state.said {
        ui.label(RichText::new(said).color(p.go));
    }
    section(ui, say!("handover-how"));
    let papers = [(Paper::A4, "A4".to_owned()), (Paper::Letter, say!("handover-paper-letter").to_owned())];
    let before = state.options;
    let mut options = before;
    if let Some(paper) = choice(ui, say!("handover-paper"), before.paper, &papers) {
        options.paper = paper;
    }
    // Other languages have one order.
    if DateOrder::is_a_choice() {
        let orders = [
            (DateOrder::DayFirst, say!("handover-day-first").to_owned()),
            (DateOrder::MonthFirst, say!("handover-month-first").to_owned()),
        ];
        if let Some(dates) = choice(ui, say!("handover-days"), before.dates, &orders) {
            options.dates = dates;
        }
    }
    if state.which == Which::Customer {
        care(ui, m, &mut options, out);
        ui.checkbox(&mut options.costs, say!("handover-costs"));
    }
    if options != before {
        wish(HandoverWish::Options(options));
    }
    section(ui, say!("handover-to-watch"));
    ui.label(say!("handover-big-screen-does"));
    if ui.button(say!("handover-big-screen")).clicked() {
        wish(HandoverWish::Play);
    }
    out.extend(wishes);
}

/// When the work is done, so that care times can be told.
fn care(ui: &mut Ui, m: &Model<'_>, options: &mut Options, out: &mut Vec<Action>) {
    if let Some(date) = day(ui, say!("handover-day-of-work"), m.job.date) {
        out.push(Action::edit(Command::SetDate(date)));
    }
    if m.job.date.is_none() {
        ui.label(theme::soft(say!("handover-care-times")));
        return;
    }
    let (hour, minute) = options.done_at;
    if let Some(value) = number(ui, say!("handover-done-hour"), "h", f64::from(hour), 0, 0.0..=23.0) {
        options.done_at.0 = value as i8;
    }
    if let Some(value) = number(ui, say!("handover-done-minute"), "min", f64::from(minute), 0, 0.0..=59.0) {
        options.done_at.1 = value as i8;
    }
}

fn about(which: Which) -> &'static str {
    match which {
        Which::Customer => say!("handover-customer-does"),
        Which::Crew => say!("handover-crew-does"),
        Which::Record => say!("handover-record-does"),
    }
}
