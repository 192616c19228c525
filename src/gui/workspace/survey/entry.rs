//! Readings by number and Enter.

use crate::geometry::MapPoint;
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::job::{Command, PanelRecord};
use crate::measure::{READINGS_PER_SPOT, spots_for};
use crate::units::{Micrometres, number};
use crate::vehicle::{Panel, PanelId, Surface};
use eframe::egui::{self, Ui};

/// A spot this near to a recommended place counts as that place, in mm on the map.
const SAME_PLACE_MM: f32 = 60.0;

/// Where the next reading belongs.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::gui) struct NextReading {
    /// The panel.
    pub(in crate::gui) panel: PanelId,
    /// The spot it goes to, or none for a new one.
    pub(in crate::gui) spot: Option<usize>,
    /// Where that is on the map.
    pub(in crate::gui) at: MapPoint,
}

/// Where the next reading of a panel belongs; none when every recommended spot has its three.
pub(in crate::gui) fn next_reading(m: &Model<'_>, index: usize) -> Option<NextReading> {
    let panel = &m.template.panels[index];
    if panel.surface != Surface::Paint || m.insight.panels[index].unreadable.is_some() {
        return None;
    }
    let spots = m.job.record(&panel.id).map(|r| r.spots.as_slice()).unwrap_or_default();
    let survey = m.job.current_survey();
    if spots.iter().filter(|s| s.count_in(survey) >= READINGS_PER_SPOT).count() >= spots_for(panel.area) {
        return None;
    }
    m.wanted_spots(index).iter().find_map(|&at| {
        let spot = spots.iter().position(|s| (s.at - at).length() < SAME_PLACE_MM);
        let full = spot.is_some_and(|s| spots[s].count_in(survey) >= READINGS_PER_SPOT);
        (!full).then(|| NextReading { panel: panel.id.clone(), spot, at: spot.map_or(at, |s| spots[s].at) })
    })
}

/// The field for the next reading.
pub(super) fn entry_ui(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let Some(next) = next_reading(m, index) else { return };
    let id = ui.make_persistent_id("reading");
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_default();
    let record = m.job.record(&next.panel);
    let count = next.spot.and_then(|s| record.map(|r| r.spots[s].count_in(m.job.current_survey()))).unwrap_or(0);
    let place = m.wanted_spots(index).iter().position(|p| (*p - next.at).length() < SAME_PLACE_MM).unwrap_or(0);
    ui.add_space(4.0);
    let label = format!(
        "Spot {} of {}, reading {} of {READINGS_PER_SPOT}, in µm",
        place + 1,
        m.wanted_spots(index).len(),
        count + 1
    );
    let name = ui.label(label);
    let edit = egui::TextEdit::singleline(&mut draft)
        .id(id)
        .font(egui::FontId::new(20.0, theme::bold_family()))
        .hint_text("number, Enter")
        .desired_width(f32::INFINITY)
        .char_limit(12)
        .margin(egui::Margin::symmetric(8, 8));
    let response = ui.add(edit).labelled_by(name.id);
    let entered = response.lost_focus() && ui.input(|i| i.key_pressed(egui::Key::Enter));
    let value = number(&draft).and_then(|v| Micrometres::new(v).ok());
    if !draft.trim().is_empty() && value.is_none() {
        ui.label(egui::RichText::new("Type a thickness in µm, for example 112 or 112,5.").color(p.note));
    }
    if entered {
        if let Some(thickness) = value {
            let command = match next.spot {
                Some(spot) => Command::AddReading { panel: next.panel, spot, thickness },
                None => Command::AddSpot { panel: next.panel, at: next.at, thickness },
            };
            out.push(Action::edit(command));
            draft.clear();
        }
        response.request_focus();
    }
    ui.data_mut(|d| d.insert_temp(id, draft));
}

/// The readings so far, each with a way to take it back.
pub(super) fn readings_ui(ui: &mut Ui, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    if record.spots.is_empty() {
        return;
    }
    egui::CollapsingHeader::new("Readings").id_salt("readings").show(ui, |ui| {
        for (spot, taken) in record.spots.iter().enumerate() {
            ui.horizontal_wrapped(|ui| {
                ui.label(theme::soft(format!("Spot {}", spot + 1)));
                let mut edge = taken.edge;
                if ui.checkbox(&mut edge, "edge").on_hover_text("Taken on an edge or a body line").changed() {
                    out.push(Action::edit(Command::SetEdge { panel: panel.id.clone(), spot, edge }));
                }
                for (reading, value) in taken.readings.iter().enumerate() {
                    let text = format!("{}", value.thickness_um.um());
                    let button = ui.button(text).on_hover_text("Remove this reading");
                    if button.clicked() {
                        let panel = panel.id.clone();
                        out.push(Action::edit(Command::RemoveReading { panel, spot, reading }));
                    }
                }
            });
        }
    });
}
