//! Readings by number and Enter.

use super::pad::pad_ui;
use crate::gui::action::{Action, Model};
use crate::gui::entry::{self, EntryWish, NextReading, next_reading, progress};
use crate::gui::theme;
use crate::gui::widgets::units_of;
use crate::job::{Command, PanelRecord};
use crate::measure::READINGS_PER_SPOT;
use crate::say;
use crate::units::{ThicknessUnit, UM_PER_MIL};
use crate::vehicle::Panel;
use crate::words::decimal_sign;
use crate::words::{decimal, shortest};
use eframe::egui::{self, Align2, EventFilter, FontId, Rect, RichText, Sense, Stroke, StrokeKind, Ui, vec2};

/// Where the next reading goes, the field it is typed into, and the keys that go with it.
pub(super) fn entry_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let next = next_reading(m);
    ui.add_space(4.0);
    heading(ui, m, next.as_ref(), out);
    if next.is_some() || m.current().is_none() {
        field(ui, m, next.as_ref());
    }
    ui.horizontal(|ui| {
        let mut button = |text: String, enabled: bool, hint: &str, wish: EntryWish| {
            if ui.add_enabled(enabled, egui::Button::new(text)).on_hover_text(hint).clicked() {
                out.push(Action::Entry(wish));
            }
        };
        button(say!("survey-skip").to_owned(), next.is_some(), say!("survey-skip-hint"), EntryWish::Skip);
        let hint = say!("survey-repeat-hint");
        let read = m.view.entry.last.is_some() || next.as_ref().is_none_or(|n| n.taken > 0);
        button(say!("survey-repeat").to_owned(), read, hint, EntryWish::Repeat);
        let skipped = m.view.entry.skipped.len();
        if skipped > 0 {
            button(say!("survey-skipped", count = skipped), true, say!("survey-skipped-hint"), EntryWish::Skipped);
        }
    });
    if m.view.entry.pad {
        pad_ui(ui, out);
    }
    if let Some(said) = &m.view.entry.said {
        ui.label(RichText::new(said).color(p.note));
    }
    ui.add_space(4.0);
}

/// Which spot is next, how far one is, and the unit of the gauge.
fn heading(ui: &mut Ui, m: &Model<'_>, next: Option<&NextReading>, out: &mut Vec<Action>) {
    let progress = progress(m);
    if let Some(next) = next
        && m.current().is_none()
    {
        ui.label(theme::bold(m.template.panels[next.panel].name(m.view.naming), 16.0));
    }
    if next.is_none() {
        // A sentence has no room beside the choices.
        let chosen = m.current().map(|(index, _)| &m.insight.panels[index]);
        ui.label(match chosen {
            Some(panel) if panel.unreadable.is_some() => "",
            Some(_) => say!("survey-panel-read"),
            None if m.view.entry.skipped.is_empty() => say!("survey-all-read"),
            None => say!("survey-all-or-skipped"),
        });
    }
    ui.horizontal(|ui| {
        if let Some(next) = next {
            let text = say!("survey-spot-of", number = entry::number_of(m, next.stop), all = progress.all);
            ui.label(theme::bold(text, 14.0));
        }
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            let pad = m.view.entry.pad;
            let keys = egui::Button::selectable(pad, say!("survey-keypad"));
            if ui.add(keys).on_hover_text(say!("survey-keypad-hint")).clicked() {
                out.push(Action::Entry(EntryWish::Pad(!pad)));
            }
            for unit in ThicknessUnit::ALL.into_iter().rev() {
                let chosen = m.view.entry.unit == unit;
                let button = ui.add(egui::Button::selectable(chosen, unit.name()));
                if button.on_hover_text(say!("survey-unit-hint")).clicked() {
                    out.push(Action::Entry(EntryWish::Unit(unit)));
                }
            }
        });
    });
    way_bar(ui, progress);
}

/// How much of the way is read, as a thin bar.
fn way_bar(ui: &mut Ui, progress: entry::Progress) {
    let p = theme::of(ui.ctx());
    let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 6.0), Sense::hover());
    let share = progress.full as f32 / progress.all.max(1) as f32;
    ui.painter().rect_filled(area, 3.0, p.hairline);
    let done = Rect::from_min_size(area.min, vec2(area.width() * share, area.height()));
    ui.painter().rect_filled(done, 3.0, p.accent);
    let text = say!("survey-spots-read", count = progress.full, all = progress.all);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Meter, true, &text));
    response.on_hover_text(text);
}

/// The field that shows what is typed. It is no text field of the toolkit, since that forgets what comes after Enter within
/// one picture, and a gauge may be that fast; the keys are taken by [`entry::keys`].
fn field(ui: &mut Ui, m: &Model<'_>, next: Option<&NextReading>) {
    let p = theme::of(ui.ctx());
    let id = entry::field();
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), 48.0), Sense::empty());
    let response = ui.interact(area, id, Sense::click());
    let draft = &m.view.entry.draft;
    let unit = m.view.entry.unit;
    let number = next.map_or(0, |n| entry::number_of(m, n.stop));
    let taken = next.map_or(0, |n| n.taken);
    let name = say!(
        "survey-field",
        number = number,
        all = progress(m).all,
        reading = taken + 1,
        of = READINGS_PER_SPOT,
        unit = unit.name(),
    );
    response.widget_info(|| {
        let mut info = egui::WidgetInfo::labeled(egui::Role::TextInput, true, &name);
        info.current_text_value = Some(draft.clone());
        info
    });
    if response.clicked() {
        response.request_focus();
    }
    if response.has_focus() {
        let filter = EventFilter {
            horizontal_arrows: true,
            vertical_arrows: true,
            tab: !draft.is_empty(),
            escape: !draft.is_empty(),
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
    }
    let paint = ui.painter_at(area.expand(2.0));
    paint.rect(area, 6.0, p.sheet, Stroke::new(2.0, p.accent), StrokeKind::Inside);
    let middle = area.left_center();
    let font = FontId::new(28.0, theme::bold_family());
    let end = if draft.is_empty() {
        let hint = say!("survey-reading-of", reading = taken + 1, of = READINGS_PER_SPOT);
        paint.text(middle + vec2(16.0, 0.0), Align2::LEFT_CENTER, hint, FontId::proportional(16.0), p.ink_soft);
        area.left() + 10.0
    } else {
        paint.text(middle + vec2(12.0, 0.0), Align2::LEFT_CENTER, draft, font, p.ink).right() + 2.0
    };
    paint.vline(end, middle.y - 14.0..=middle.y + 14.0, Stroke::new(2.0, p.accent));
    let unit_place = area.right_center() - vec2(12.0, 0.0);
    paint.text(unit_place, Align2::RIGHT_CENTER, unit.name(), FontId::proportional(16.0), p.ink_soft);
    spot_so_far(ui, m, next);
}

/// The readings that the present spot has; always one line, so that what is below keeps its place.
/// Between numbers in a row: no comma where it is the decimal sign.
fn separator() -> &'static str {
    if decimal_sign() == ',' { "; " } else { ", " }
}

fn spot_so_far(ui: &mut Ui, m: &Model<'_>, next: Option<&NextReading>) {
    let spot = next.and_then(|n| m.job.record(&m.template.panels[n.panel].id)?.spots.get(n.spot?));
    let shown = |um: f64| match m.view.entry.unit {
        ThicknessUnit::Um => shortest(um),
        ThicknessUnit::Mil => decimal(um / UM_PER_MIL, 2),
    };
    let readings = spot.map(|s| s.readings.as_slice()).unwrap_or_default();
    let values: Vec<String> = readings.iter().map(|r| shown(r.thickness_um.um())).collect();
    ui.label(theme::soft(if values.is_empty() {
        say!("survey-spot-none").to_owned()
    } else {
        say!("survey-spot-so-far", values = format!("{}\u{202f}{}", values.join(separator()), m.view.entry.unit.name()))
    }));
}

/// The readings so far, each with a way to take it back.
pub(super) fn readings_ui(ui: &mut Ui, m: &Model<'_>, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    if record.spots.is_empty() {
        return;
    }
    egui::CollapsingHeader::new(say!("survey-readings")).id_salt("readings").show(ui, |ui| {
        let suspects = m.job.suspects();
        if record.spots.iter().flat_map(|s| &s.readings).any(|r| suspects.has(r)) {
            ui.label(theme::soft(say!("survey-doubtful")));
        }
        for (spot, taken) in record.spots.iter().enumerate() {
            ui.horizontal_wrapped(|ui| {
                ui.label(theme::soft(say!("survey-spot", number = spot + 1)));
                let mut edge = taken.edge;
                if ui.checkbox(&mut edge, say!("survey-edge")).on_hover_text(say!("survey-edge-hint")).changed() {
                    out.push(Action::edit(Command::SetEdge { panel: panel.id.clone(), spot, edge }));
                }
                for (reading, value) in taken.readings.iter().enumerate() {
                    let doubt = if suspects.has(value) { " ?" } else { "" };
                    let shown = units_of(ui.ctx()).as_read(value.thickness_um);
                    let button = ui.button(format!("{shown}{doubt}"));
                    let button = button.on_hover_text(say!("survey-remove-reading"));
                    // Two that are equal are told apart by their number.
                    let button = button.accessible_name(format!("{}: {shown}{doubt}", reading + 1));
                    if button.clicked() {
                        let panel = panel.id.clone();
                        out.push(Action::edit(Command::RemoveReading { panel, spot, reading }));
                    }
                }
            });
            if !taken.note.is_empty() {
                ui.label(theme::soft(&taken.note));
            }
        }
    });
}
