//! Input fields. A change of text or of a slider comes with a gesture, so that one movement is one step of undo; a number is
//! handed over once, when it is finished.

use super::beside::{beside, width_of};
use super::units_of;
use crate::gui::theme;
use crate::job::GestureId;
use crate::units::{Date, number as read_number};
use eframe::egui::{self, Response, Ui};
use std::ops::RangeInclusive;

/// A line or a few lines of text; answers while somebody types.
pub(in crate::gui) fn text(ui: &mut Ui, label: &str, value: &str, rows: usize) -> Option<(String, GestureId)> {
    let mut draft = value.to_owned();
    let response = steady(ui, ("text", label), |ui| {
        let name = ui.label(theme::soft(label));
        let edit =
            if rows == 1 { egui::TextEdit::singleline(&mut draft) } else { egui::TextEdit::multiline(&mut draft) };
        let place = if rows == 1 { egui::Align2::LEFT_CENTER } else { egui::Align2::LEFT_TOP };
        let edit = edit.desired_rows(rows).desired_width(f32::INFINITY).char_limit(10_000).align(place);
        ui.add(edit.margin(egui::Margin::symmetric(8, 6))).labelled_by(name.id)
    });
    let gesture = gesture(ui, &response);
    response.changed().then_some((draft, gesture))
}

/// A line of text that answers once, when Enter is pressed or the field is left, and only where something stands in it.
pub(in crate::gui) fn name(ui: &mut Ui, label: &str, value: &str) -> Option<String> {
    line(ui, label, value).filter(|entered| !entered.trim().is_empty())
}

/// A line of text that answers once, when Enter is pressed or the field is left; it may be emptied.
pub(in crate::gui) fn line(ui: &mut Ui, label: &str, value: &str) -> Option<String> {
    let id = ui.make_persistent_id(("name", label));
    let said = ui.label(theme::soft(label));
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_else(|| value.to_owned());
    let edit = egui::TextEdit::singleline(&mut draft)
        .id(id)
        .desired_width(f32::INFINITY)
        .char_limit(200)
        .align(egui::Align2::LEFT_CENTER)
        .margin(egui::Margin::symmetric(8, 6));
    let response = ui.add(edit).labelled_by(said.id);
    let entered = finished(ui, &response, id, &draft)?;
    (entered != value).then_some(entered)
}

/// A number with its unit; answers when Enter is pressed or the field is left, and only with a number in range.
pub(in crate::gui) fn number(
    ui: &mut Ui,
    label: &str,
    unit: &str,
    value: f64,
    decimals: usize,
    range: RangeInclusive<f64>,
) -> Option<f64> {
    let units = units_of(ui.ctx());
    let shown = units.number(value, unit, decimals);
    let entered = number_field(ui, label, units.name(unit), &shown, "")?;
    units.typed(&entered, unit).filter(|v| range.contains(v) && entered != shown)
}

/// A number that may be left out; answers as [`number`] does, with none where the field was emptied.
#[expect(clippy::option_option, reason = "no answer is not the same as the answer none")]
pub(in crate::gui) fn optional_number(
    ui: &mut Ui,
    label: &str,
    unit: &str,
    value: Option<f64>,
    decimals: usize,
    range: RangeInclusive<f64>,
) -> Option<Option<f64>> {
    let units = units_of(ui.ctx());
    let shown = value.map(|v| units.number(v, unit, decimals)).unwrap_or_default();
    let entered = number_field(ui, label, units.name(unit), &shown, "–")?;
    if entered == shown {
        return None;
    }
    match units.typed(&entered, unit).filter(|v| range.contains(v)) {
        Some(number) => Some(Some(number)),
        None => entered.trim().is_empty().then_some(None),
    }
}

/// Room of the field of a number with its unit.
pub(super) const WITH_UNIT: f32 = 132.0;

/// The field of a number; answers its text once it is finished.
fn number_field(ui: &mut Ui, label: &str, unit: &str, shown: &str, hint: &str) -> Option<String> {
    let id = ui.make_persistent_id(("number", label));
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_else(|| shown.to_owned());
    let mut response = None;
    beside(ui, label, WITH_UNIT, |ui, name| {
        ui.add_sized([36.0, 20.0], egui::Label::new(theme::soft(unit)).halign(egui::Align::LEFT));
        let edit = egui::TextEdit::singleline(&mut draft)
            .id(id)
            .hint_text(hint)
            .desired_width(64.0)
            .align(egui::Align2::RIGHT_CENTER)
            .margin(egui::Margin::symmetric(8, 6));
        response = Some(ui.add(edit).labelled_by(name.id));
    });
    finished(ui, &response?, id, &draft)
}

/// What was typed, at the moment the field is left; until then it is kept for the next frame.
fn finished(ui: &Ui, response: &Response, id: egui::Id, draft: &str) -> Option<String> {
    if response.has_focus() {
        ui.data_mut(|d| d.insert_temp(id, draft.to_owned()));
        return None;
    }
    ui.data_mut(|d| d.remove::<String>(id));
    response.lost_focus().then(|| draft.to_owned())
}

/// A day, typed as `YYYY-MM-DD`; answers when Enter is pressed or the field is left, with none where it was emptied.
#[expect(clippy::option_option, reason = "no answer, and the answer that there is no day, are two things")]
pub(in crate::gui) fn day(ui: &mut Ui, label: &str, value: Option<Date>) -> Option<Option<Date>> {
    let id = ui.make_persistent_id(("day", label));
    let shown = value.map(|d| d.to_string()).unwrap_or_default();
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_else(|| shown.clone());
    let mut response = None;
    beside(ui, label, 136.0, |ui, name| {
        let edit = egui::TextEdit::singleline(&mut draft)
            .id(id)
            .desired_width(120.0)
            .hint_text("2026-03-14")
            .char_limit(12)
            .margin(egui::Margin::symmetric(8, 6));
        response = Some(ui.add(edit).labelled_by(name.id));
    });
    let response = response?;
    let read = if draft.trim().is_empty() { Ok(None) } else { Date::parse(&draft).map(Some) };
    if response.has_focus() {
        ui.data_mut(|d| d.insert_temp(id, draft));
        return None;
    }
    ui.data_mut(|d| d.remove::<String>(id));
    read.ok().filter(|read| response.lost_focus() && *read != value)
}

/// A slider with its value; answers while it moves.
pub(in crate::gui) fn slider(
    ui: &mut Ui,
    label: &str,
    unit: &str,
    value: f64,
    range: RangeInclusive<f64>,
    step: f64,
) -> Option<(f64, GestureId)> {
    let units = units_of(ui.ctx());
    let conversion = units.conversion(unit);
    let as_shown = |kept: f64| conversion.map_or(kept, |c| c.shown(kept));
    let (range, step) = (as_shown(*range.start())..=as_shown(*range.end()), conversion.map_or(step, |c| c.step(step)));
    // A slider takes the nearest of its steps for a change, so where the unit has another grid it begins on that.
    let on_grid = |v: f64| range.start() + ((v - range.start()) / step).round() * step;
    let value = if conversion.is_some() { on_grid(as_shown(value)) } else { value };
    let unit = units.name(unit);
    let mut draft = value;
    let decimals = usize::from(step < 1.0);
    let response = steady(ui, ("slider", label), |ui| {
        let name = ui.label(theme::soft(label));
        let slider = egui::Slider::new(&mut draft, range)
            .step_by(step)
            .suffix(format!("\u{202f}{unit}"))
            .fixed_decimals(decimals)
            .custom_parser(|text| read_number(text.trim_end_matches(|c: char| !c.is_ascii_digit())));
        // The part that is passed is the strong one, and the rail is seen without it.
        let p = theme::of(ui.ctx());
        let visuals = ui.visuals_mut();
        visuals.selection.bg_fill = p.accent;
        visuals.widgets.inactive.bg_fill = p.hairline;
        ui.add(slider).labelled_by(name.id)
    });
    let gesture = gesture(ui, &response);
    // A held slider says "changed" in every frame where its step rounds the value a little.
    let kept = conversion.map_or(draft, |c| c.typed(draft));
    (response.changed() && (draft - value).abs() > step * 1e-3).then_some((kept, gesture))
}

/// Width of a drop-down beside its label.
const DROP_DOWN: f32 = 168.0;

/// One of a few things, as a drop-down; a label that has no room beside it stands above it.
pub(in crate::gui) fn choice<T: PartialEq + Copy>(
    ui: &mut Ui,
    label: &str,
    current: T,
    options: &[(T, String)],
) -> Option<T> {
    let p = theme::of(ui.ctx());
    let mut chosen = current;
    let shown = options.iter().find(|(v, _)| *v == current).map_or("", |(_, name)| name.as_str());
    let name = egui::RichText::new(label).color(p.ink_soft);
    let wide = width_of(ui, label);
    let mut list = |ui: &mut Ui, name: &Response, width: f32| {
        let inner = egui::ComboBox::from_id_salt(label).selected_text(shown).width(width).show_ui(ui, |ui| {
            for (value, name) in options {
                ui.selectable_value(&mut chosen, *value, name);
            }
        });
        inner.response.labelled_by(name.id);
    };
    if wide + ui.spacing().item_spacing.x + DROP_DOWN > ui.available_width() {
        let name = ui.label(name);
        let width = ui.available_width();
        list(ui, &name, width);
    } else {
        ui.horizontal(|ui| {
            let name = ui.label(name);
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| list(ui, &name, DROP_DOWN));
        });
    }
    (chosen != current).then_some(chosen)
}

/// A part whose widgets stay the same ones whatever comes and goes above them, so that a drag or the focus is not lost when a
/// notice appears.
fn steady<R>(ui: &mut Ui, salt: (&str, &str), add: impl FnOnce(&mut Ui) -> R) -> R {
    let id = ui.scope_id().with(salt);
    ui.scope_builder(egui::UiBuilder::new().scope_id(id), add).inner
}

/// The gesture that a change of this widget belongs to: a new one each time it gains the focus or a drag begins.
fn gesture(ui: &Ui, response: &Response) -> GestureId {
    let key = response.id.with("gesture");
    let begins = response.gained_focus() || response.drag_started();
    let count = ui.data_mut(|d| {
        let count = d.get_temp_mut_or(key, 0_u64);
        *count += u64::from(begins);
        *count
    });
    GestureId(key.with(count).value())
}
