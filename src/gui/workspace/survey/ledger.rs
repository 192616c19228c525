//! What earlier visits took: of one panel, and of the whole vehicle.

use crate::gui::action::{Action, Effect, Model};
use crate::gui::theme;
use crate::gui::widgets::{button_room, choice, entry_field, fact, said, section};
use crate::insight::earlier_visits;
use crate::job::{Command, PanelRecord, SurveyChange};
use crate::polish::{LedgerEntry, RemovalSource};
use crate::say;
use crate::units::Micrometres;
use crate::vehicle::{Panel, PanelId, Surface};
use crate::words::decimal;
use eframe::egui::{self, Ui};

/// The ledger of one panel, closed at first.
pub(super) fn panel_ledger(ui: &mut Ui, m: &Model<'_>, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    if panel.surface != Surface::Paint {
        return;
    }
    let removed = record.removals.removed();
    let title = if record.removals.entries.is_empty() {
        say!("survey-visits").to_owned()
    } else {
        say!("survey-visits-most", film = format!("{removed:.1}"))
    };
    egui::CollapsingHeader::new(said(ui, &title)).id_salt("ledger").show(ui, |ui| {
        let room = button_room(ui, say!("survey-remove"));
        for (entry, visit) in record.removals.entries.iter().enumerate() {
            ui.horizontal(|ui| {
                ui.vertical(|ui| {
                    ui.set_width(ui.available_width() - room);
                    ui.spacing_mut().item_spacing.y = 0.0;
                    ui.label(&visit.visit);
                    let source = visit.source.name();
                    let text = say!(
                        "survey-visit",
                        went = format!("{:.1}", visit.removed_um),
                        most = format!("{:.1}", visit.upper_um),
                        source = source,
                    );
                    ui.label(theme::soft(said(ui, &text)));
                });
                if ui.button(say!("survey-remove")).clicked() {
                    let change = SurveyChange::RemoveRemoval { panel: panel.id.clone(), entry };
                    out.push(Action::edit(Command::Survey(change)));
                }
            });
        }
        let left = record.removals.visits_left(m.job.policy.lifetime_um, m.job.policy.visit_cap_um);
        if let (Some(left), false) = (left, record.removals.is_empty()) {
            fact(ui, say!("survey-visits-left"), left.to_string());
        }
        new_entry(ui, "panel", std::slice::from_ref(&panel.id), say!("survey-add-to-panel"), out);
    });
}

/// The earlier visits over all panels, and the way to the next one.
pub(super) fn vehicle_ledger(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, say!("survey-visits"));
    let visits = earlier_visits(m.job);
    if visits.is_empty() {
        ui.label(say!("survey-visits-none"));
    }
    for visit in visits {
        let most = say!("survey-most-film", film = format!("{}\u{202f}µm", decimal(visit.most_um, 1)));
        fact(ui, &visit.visit, most);
        ui.label(theme::soft(say!("survey-visit-panels", count = visit.panels, source = visit.source.name())));
    }
    egui::CollapsingHeader::new(say!("survey-add-visit")).id_salt("add-visit").show(ui, |ui| {
        let painted = m.template.panels.iter().filter(|p| p.surface == Surface::Paint);
        let painted: Vec<PanelId> = painted.map(|p| p.id.clone()).collect();
        new_entry(ui, "vehicle", &painted, say!("survey-add-to-all"), out);
    });
    let hint = say!("survey-next-visit-hint");
    if ui.button(say!("survey-next-visit")).on_hover_text(hint).clicked() {
        out.push(Action::Effect(Effect::NextVisit));
    }
}

/// What somebody types of an earlier visit.
#[derive(Debug, Clone, PartialEq)]
struct Draft {
    visit: String,
    source: RemovalSource,
}

fn new_entry(ui: &mut Ui, key: &str, panels: &[PanelId], button: &str, out: &mut Vec<Action>) {
    let id = ui.make_persistent_id(("earlier visit", key));
    let blank = Draft { visit: String::new(), source: RemovalSource::Told };
    let mut draft = ui.data(|d| d.get_temp::<Draft>(id)).unwrap_or(blank);
    let name = ui.label(theme::soft(say!("survey-visit-name")));
    let edit = egui::TextEdit::singleline(&mut draft.visit).id(id.with("visit")).desired_width(f32::INFINITY);
    ui.add(edit.char_limit(200).margin(egui::Margin::symmetric(8, 6))).labelled_by(name.id);
    let likely = entry_field(ui, key, say!("survey-probably-went"), "µm", 0.0..=1_000.0);
    let upper = entry_field(ui, key, say!("survey-at-most-went"), "µm", 0.0..=1_000.0);
    let sources: Vec<_> = RemovalSource::ALL.iter().map(|s| (*s, s.name().to_owned())).collect();
    if let Some(source) = choice(ui, say!("survey-known-from"), draft.source, &sources) {
        draft.source = source;
    }
    let um = |value: f64| Micrometres::new(value).ok();
    let most = upper.value.or(likely.value).and_then(um);
    let probably = likely.value.or(upper.value).and_then(um);
    let amounts = probably.zip(most).filter(|(likely, most)| likely <= most && !draft.visit.trim().is_empty());
    if ui.add_enabled(amounts.is_some(), egui::Button::new(button)).clicked()
        && let Some((removed_um, upper_um)) = amounts
    {
        let (visit, source) = (draft.visit.trim().to_owned(), draft.source);
        let entry = LedgerEntry { visit, removed_um, upper_um, source };
        out.push(Action::edit(Command::Survey(SurveyChange::AddRemoval(panels.to_vec(), entry))));
        likely.clear(ui);
        upper.clear(ui);
        draft = Draft { visit: String::new(), source: RemovalSource::Told };
    }
    ui.data_mut(|d| d.insert_temp(id, draft));
}
