//! Handover: which sheet, on which paper, and what is written.

use crate::gui::action::{Action, Model};
use crate::gui::handover::{Form, HandoverWish, Which};
use crate::gui::home::{is_unread, nothing_yet};
use crate::gui::theme;
use crate::gui::widgets::{choice, day, fact, number, primary, section};
use crate::job::Command;
use crate::sheets::{Options, Paper};
use crate::units::DateOrder;
use eframe::egui::{RichText, Ui};

/// Draws the side of Handover.
pub(super) fn handover_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let state = m.handover;
    let mut wishes = Vec::new();
    ui.label(theme::bold("Handover", 20.0));
    if is_unread(m) {
        let sentence = "No panel has been read yet, so the sheets have little to say. Read the vehicle first.";
        nothing_yet(ui, m, sentence, "survey", &mut wishes);
    }
    let mut wish = |wish| wishes.push(Action::Handover(wish));
    for which in Which::ALL {
        if ui.radio(state.which == which, which.name()).clicked() {
            wish(HandoverWish::Show(which));
        }
    }
    ui.label(theme::soft(about(state.which)));
    fact(ui, "Pages", state.page_count().to_string());
    for missing in state.missing() {
        ui.label(RichText::new(format!("Can’t be printed: {missing}")).color(p.stop));
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
    section(ui, "How it is written");
    let papers = [(Paper::A4, "A4".to_owned()), (Paper::Letter, "Letter".to_owned())];
    let before = state.options;
    let mut options = before;
    if let Some(paper) = choice(ui, "Paper", before.paper, &papers) {
        options.paper = paper;
    }
    let orders =
        [(DateOrder::DayFirst, "26 November 2026".to_owned()), (DateOrder::MonthFirst, "November 26, 2026".to_owned())];
    if let Some(dates) = choice(ui, "Days", before.dates, &orders) {
        options.dates = dates;
    }
    if state.which == Which::Customer {
        care(ui, m, &mut options, out);
        ui.checkbox(&mut options.costs, "Tell what the polishing costs");
    }
    if options != before {
        wish(HandoverWish::Options(options));
    }
    section(ui, "For the customer to watch");
    ui.label("The plan over the vehicle, in half a minute and the whole window.");
    if ui.button("Show on the big screen").clicked() {
        wish(HandoverWish::Play);
    }
    out.extend(wishes);
}

/// When the work is done, so that care times can be told.
fn care(ui: &mut Ui, m: &Model<'_>, options: &mut Options, out: &mut Vec<Action>) {
    if let Some(date) = day(ui, "Day of the work", m.job.date) {
        out.push(Action::edit(Command::SetDate(date)));
    }
    if m.job.date.is_none() {
        ui.label(theme::soft("With the day of the work care times have real days."));
        return;
    }
    let (hour, minute) = options.done_at;
    if let Some(value) = number(ui, "Done at, hour", "h", f64::from(hour), 0, 0.0..=23.0) {
        options.done_at.0 = value as i8;
    }
    if let Some(value) = number(ui, "and minute", "min", f64::from(minute), 0, 0.0..=59.0) {
        options.done_at.1 = value as i8;
    }
}

fn about(which: Which) -> &'static str {
    match which {
        Which::Customer => "What was found, what will be done and what won’t, care afterwards. No notes of the shop.",
        Which::Crew => "One for each of the crew, to be read from two metres.",
        Which::Record => "Everything that a later visit needs.",
    }
}
