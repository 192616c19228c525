//! Facts about the paint of the chosen panel, or of several at once.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, day, text};
use crate::job::{Command, PanelFact, PanelRecord, PreviousCoating};
use crate::polish::{Finish, PaintHardness, PaintHistory};
use crate::say;
use crate::units::{Date, Micrometres};
use crate::vehicle::{Panel, PanelId, Substrate, Surface};
use eframe::egui::Ui;

/// What the paint is, what was done to it, what lies under and on it, whether it is coated. Where several panels differ, the
/// field says so, and a choice goes to all of them in one step.
pub(super) fn paint_ui(ui: &mut Ui, m: &Model<'_>, panels: &[&Panel], out: &mut Vec<Action>) {
    let blank = PanelRecord::default();
    let records: Vec<&PanelRecord> = panels.iter().map(|p| m.job.record(&p.id).map_or(&blank, |r| r)).collect();
    let Some(first) = records.first() else { return };
    let ids: Vec<&PanelId> = panels.iter().map(|p| &p.id).collect();
    if panels.iter().all(|p| p.surface == Surface::Paint) {
        finish(ui, &records, &ids, out);
        history(ui, m, &records, &ids, out);
        let coatings = PreviousCoating::ALL.map(|c| (Some(c), c.name().to_owned()));
        if let Some(Some(coating)) = choose(ui, say!("survey-on-it"), common(&records, |r| r.coating), &coatings) {
            set(&ids, &PanelFact::Coating(coating), out);
        }
        let hardness = [
            (Some(PaintHardness::Usual), say!("survey-hardness-usual").to_owned()),
            (Some(PaintHardness::Soft), say!("survey-hardness-soft").to_owned()),
            (Some(PaintHardness::Hard), say!("survey-hardness-hard").to_owned()),
        ];
        if let Some(Some(hardness)) = choose(ui, say!("survey-hardness"), common(&records, |r| r.hardness), &hardness) {
            set(&ids, &PanelFact::Hardness(hardness), out);
        }
        substrate(ui, panels, &records, &ids, out);
    }
    let mut coat = !first.left_uncoated;
    if ui.checkbox(&mut coat, say!("survey-is-coated")).changed() {
        set(&ids, &PanelFact::LeftUncoated(!coat), out);
    }
    if let [id] = ids.as_slice()
        && let Some((note, gesture)) = text(ui, say!("survey-note"), &first.note, 2)
    {
        out.push(Action::Edit(Command::SetFact((*id).clone(), PanelFact::Note(note)), Some(gesture)));
    }
}

fn finish(ui: &mut Ui, records: &[&PanelRecord], ids: &[&PanelId], out: &mut Vec<Action>) {
    let finishes = [
        (Finish::ClearCoat, say!("survey-finish-clear")),
        (Finish::SingleStage, say!("survey-finish-single")),
        (Finish::Matte, say!("survey-finish-matte")),
        (Finish::FilmCovered, say!("survey-finish-film")),
        (Finish::Wrapped, say!("survey-finish-wrapped")),
    ];
    let finishes = finishes.map(|(finish, name)| (Some(finish), name.to_owned()));
    let now = common(records, |r| r.finish.unwrap_or_default());
    if let Some(Some(finish)) = choose(ui, say!("survey-finish"), now, &finishes) {
        set(ids, &PanelFact::Finish((finish != Finish::ClearCoat).then_some(finish)), out);
    }
}

/// The past of the paint; what belongs to a choice is asked below it.
fn history(ui: &mut Ui, m: &Model<'_>, records: &[&PanelRecord], ids: &[&PanelId], out: &mut Vec<Action>) {
    let kind = |record: &PanelRecord| match record.history {
        PaintHistory::Unknown => 0,
        PaintHistory::Original => 1,
        PaintHistory::Refinished => 2,
        PaintHistory::FreshRefinish { .. } => 3,
        PaintHistory::PolishedBefore { .. } => 4,
    };
    let names = [
        say!("survey-history-unknown"),
        say!("survey-history-factory"),
        say!("survey-history-again"),
        say!("survey-history-fresh"),
        say!("survey-history-polished"),
    ];
    let histories: Vec<(Option<u8>, String)> = (0..).zip(names).map(|(k, name)| (Some(k), name.to_owned())).collect();
    let now = common(records, kind);
    if let Some(Some(chosen)) = choose(ui, say!("survey-history"), now, &histories) {
        set(
            ids,
            &PanelFact::History(match chosen {
                1 => PaintHistory::Original,
                2 => PaintHistory::Refinished,
                3 => PaintHistory::FreshRefinish { days: 0 },
                4 => PaintHistory::PolishedBefore { removed_um: Micrometres::ZERO },
                _ => PaintHistory::Unknown,
            }),
            out,
        );
    }
    let Some(first) = records.first() else { return };
    match first.history {
        PaintHistory::Refinished | PaintHistory::FreshRefinish { .. } if now.is_some() => {
            if let Some(painted) = day(ui, say!("survey-painted-on"), common(records, |r| r.painted_on).flatten()) {
                set(ids, &PanelFact::PaintedOn(painted), out);
            }
            if now == Some(3) {
                fresh(ui, m, first, out);
            }
        }
        PaintHistory::PolishedBefore { removed_um } if now.is_some() => {
            let value = removed_um.um();
            if let Some(um) = crate::gui::widgets::number(ui, say!("survey-taken-before"), "µm", value, 1, 0.0..=200.0)
                && let Ok(removed_um) = Micrometres::new(um)
            {
                set(ids, &PanelFact::History(PaintHistory::PolishedBefore { removed_um }), out);
            }
        }
        _ => {}
    }
}

/// How long ago a fresh refinish is, which takes the day of the work too.
fn fresh(ui: &mut Ui, m: &Model<'_>, record: &PanelRecord, out: &mut Vec<Action>) {
    if let Some(date) = day(ui, say!("survey-day-of-work"), m.job.date) {
        out.push(Action::edit(Command::SetDate(date)));
    }
    if m.job.date.is_none() && ui.button(say!("survey-is-today")).clicked() {
        out.push(Action::edit(Command::SetDate(today())));
    }
    let limit = m.job.policy.fresh_days;
    ui.label(theme::soft(match (record.painted_on, m.job.date, record.history_on(m.job.date)) {
        (Some(_), Some(_), PaintHistory::FreshRefinish { days }) => {
            say!("survey-days-old", count = days, limit = limit)
        }
        _ => say!("survey-give-days").to_owned(),
    }));
}

/// The day it is where the program runs.
fn today() -> Option<Date> {
    let now = jiff::ZonedDateTime::now().date();
    Date::of(now.year(), now.month(), now.day())
}

fn substrate(ui: &mut Ui, panels: &[&Panel], records: &[&PanelRecord], ids: &[&PanelId], out: &mut Vec<Action>) {
    let [panel, ..] = panels else { return };
    let alike = panels.iter().all(|p| p.substrate == panel.substrate);
    let usual = if alike {
        say!("survey-as-usual-of", substrate = panel.substrate.name())
    } else {
        say!("survey-as-usual").to_owned()
    };
    let mut options = vec![(Some(None), usual)];
    for other in [Substrate::Steel, Substrate::Aluminium, Substrate::Plastic, Substrate::Composite] {
        options.push((Some(Some(other)), other.name().to_owned()));
    }
    if let Some(Some(substrate)) = choose(ui, say!("survey-under-paint"), common(records, |r| r.substrate), &options) {
        set(ids, &PanelFact::Substrate(substrate), out);
    }
}

/// What all records have; none where they differ.
fn common<T: PartialEq>(records: &[&PanelRecord], of: impl Fn(&PanelRecord) -> T) -> Option<T> {
    let first = of(records.first()?);
    records.iter().all(|r| of(r) == first).then_some(first)
}

/// A choice that says where the panels differ.
#[expect(clippy::option_option, reason = "no answer is not the same as the answer none")]
fn choose<T: PartialEq + Copy>(
    ui: &mut Ui,
    label: &str,
    now: Option<T>,
    options: &[(Option<T>, String)],
) -> Option<Option<T>> {
    if now.is_some() {
        return choice(ui, label, now, options);
    }
    let mut all = vec![(None, say!("survey-differ").to_owned())];
    all.extend(options.iter().cloned());
    choice(ui, label, now, &all)
}

/// Gives every panel the fact, as one step.
fn set(ids: &[&PanelId], fact: &PanelFact, out: &mut Vec<Action>) {
    let mut commands: Vec<Command> = ids.iter().map(|id| Command::SetFact((*id).clone(), fact.clone())).collect();
    let Some(last) = commands.pop() else { return };
    out.push(Action::edit(if commands.is_empty() {
        last
    } else {
        let label = last.label();
        commands.push(last);
        Command::All { label, commands }
    }));
}
