//! Survey: readings by number and Enter, defects by kind and click.

use crate::geometry::MapPoint;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::Tool;
use crate::gui::widgets::{choice, fact, panel_head, section};
use crate::insight::PanelInsight;
use crate::job::{Command, Defect, PanelFact, PanelRecord};
use crate::measure::{FilmBand, READINGS_PER_SPOT, film_remarks, spots_for};
use crate::polish::{DefectKind, Finish, PaintHistory};
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
    if spots.iter().filter(|s| s.readings.len() >= READINGS_PER_SPOT).count() >= spots_for(panel.area) {
        return None;
    }
    m.wanted_spots(index).iter().find_map(|&at| {
        let spot = spots.iter().position(|s| (s.at - at).length() < SAME_PLACE_MM);
        let full = spot.is_some_and(|s| spots[s].readings.len() >= READINGS_PER_SPOT);
        (!full).then(|| NextReading { panel: panel.id.clone(), spot, at: spot.map_or(at, |s| spots[s].at) })
    })
}

/// Draws the survey of the chosen panel.
pub(super) fn survey_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some((index, panel)) = m.current() else {
        overview(ui, m, out);
        return;
    };
    let blank = PanelRecord::default();
    let record = m.job.record(&panel.id).map_or(&blank, |r| r);
    let insight = &m.insight.panels[index];
    panel_head(ui, m, index, panel);
    film(ui, m, insight);
    entry(ui, m, index, out);
    readings(ui, panel, record, out);
    section(ui, "Defects");
    defects(ui, m, panel, record, out);
    section(ui, "Paint");
    paint(ui, panel, record, out);
}

/// What to do when no panel is chosen.
fn overview(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold("Survey", 20.0));
    ui.label("Choose a panel on the map, then type a reading and press Enter. The next spot lights up by itself.");
    let next = (0..m.template.panels.len()).find(|&i| next_reading(m, i).is_some());
    if let Some(index) = next {
        let name = m.template.panels[index].name(m.view.naming);
        if crate::gui::widgets::primary(ui, &format!("Read next: {name}")).clicked() {
            out.push(Action::View(ViewChange::Choose(Some(m.template.panels[index].id.clone()))));
        }
    } else {
        ui.label("Every panel that the gauge can read has its readings.");
    }
    section(ui, "Gauge");
    fact(ui, "Principle", m.job.gauge.principle.name());
    fact(
        ui,
        "Accuracy",
        format!(
            "±({:.1} + {:.0}\u{202f}%)\u{202f}µm",
            m.job.gauge.accuracy_fixed_um.um(),
            m.job.gauge.accuracy_share * 100.0
        ),
    );
    ui.label(theme::soft(
        "These gauges read everything above the metal. The clear coat is assumed from it, as a range.",
    ));
}

/// The three numbers that matter.
fn film(ui: &mut Ui, m: &Model<'_>, insight: &PanelInsight) {
    let p = theme::of(ui.ctx());
    let Some(film) = &insight.film else {
        match &insight.unreadable {
            Some(reason) => ui.label(format!("Not read: {reason}.")),
            None => ui.label("Not read yet."),
        };
        return;
    };
    ui.horizontal(|ui| {
        number_with_name(ui, &format!("{:.0}", film.mean), "mean, µm");
        number_with_name(ui, &format!("{:.0}", film.lower.um()), "at least, µm");
        number_with_name(ui, &format!("{:.1}", insight.budget.allowed.um()), "may go, µm");
    });
    for remark in film_remarks(film, &m.job.policy.bands) {
        let ink = if remark.band == FilmBand::Normal { p.ink } else { p.note };
        ui.label(egui::RichText::new(remark.text).color(ink));
    }
    ui.label(theme::soft(format!(
        "{} readings at {} spots. At least: {}.",
        film.n,
        film.spots,
        m.job.assurance.in_words()
    )));
}

fn number_with_name(ui: &mut Ui, value: &str, name: &str) {
    ui.vertical(|ui| {
        ui.set_width(92.0);
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.label(theme::bold(value, 28.0));
        ui.label(theme::soft(name));
    });
}

/// The field for the next reading.
fn entry(ui: &mut Ui, m: &Model<'_>, index: usize, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let Some(next) = next_reading(m, index) else { return };
    let id = ui.make_persistent_id("reading");
    let mut draft = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_default();
    let record = m.job.record(&next.panel);
    let count = next.spot.and_then(|s| record.map(|r| r.spots[s].readings.len())).unwrap_or(0);
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
fn readings(ui: &mut Ui, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
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

fn defects(ui: &mut Ui, m: &Model<'_>, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    for (index, defect) in record.defects.iter().enumerate() {
        ui.push_id(("defect", index), |ui| defect_row(ui, panel, index, defect, out));
    }
    let placing = if let Tool::PlaceDefect(kind) = m.view.tool { Some(kind) } else { None };
    let kind = placing.unwrap_or(DefectKind::Swirl);
    let options: Vec<_> = DefectKind::ALL.iter().map(|k| (*k, k.name().to_owned())).collect();
    if let Some(kind) = choice(ui, "New defect", kind, &options) {
        out.push(Action::View(ViewChange::Tool(Tool::PlaceDefect(kind))));
    }
    match placing {
        Some(kind) => {
            ui.label(egui::RichText::new(format!("Click on the map to place: {}.", kind.name())).color(p.accent));
            if ui.button("Done").clicked() {
                out.push(Action::View(ViewChange::Tool(Tool::Choose)));
            }
        }
        None => {
            if ui.button("Place on the map").clicked() {
                out.push(Action::View(ViewChange::Tool(Tool::PlaceDefect(kind))));
            }
        }
    }
}

fn defect_row(ui: &mut Ui, panel: &Panel, index: usize, defect: &Defect, out: &mut Vec<Action>) {
    ui.horizontal(|ui| {
        ui.label(capital(defect.kind.name()));
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            let panel = panel.id.clone();
            if ui.button("Remove").clicked() {
                out.push(Action::edit(Command::RemoveDefect { panel: panel.clone(), defect: index }));
            }
            let names = ["none", "very few", "few", "moderate", "considerable", "dense"];
            let mut quantity = defect.quantity;
            egui::ComboBox::from_id_salt("quantity")
                .width(104.0)
                .selected_text(names[usize::from(quantity.min(5))])
                .show_ui(ui, |ui| {
                    for (value, name) in (1_u8..).zip(&names[1..]) {
                        ui.selectable_value(&mut quantity, value, *name);
                    }
                })
                .response
                .accessible_name("How many");
            if quantity != defect.quantity {
                let value = Defect { quantity, ..defect.clone() };
                out.push(Action::edit(Command::SetDefect { panel, defect: index, value }));
            }
        });
    });
    if !defect.note.is_empty() {
        ui.label(theme::soft(&defect.note));
    }
}

fn paint(ui: &mut Ui, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
    let mut set = |fact| out.push(Action::edit(Command::SetFact(panel.id.clone(), fact)));
    if panel.surface == Surface::Paint {
        let finishes = [
            (Finish::ClearCoat, "clear coat".to_owned()),
            (Finish::SingleStage, "single-stage".to_owned()),
            (Finish::Matte, "matte".to_owned()),
            (Finish::FilmCovered, "under protective film".to_owned()),
            (Finish::Wrapped, "wrapped".to_owned()),
        ];
        if let Some(finish) = choice(ui, "Finish", record.finish.unwrap_or_default(), &finishes) {
            set(PanelFact::Finish((finish != Finish::ClearCoat).then_some(finish)));
        }
        let histories = [(0, "not known".to_owned()), (1, "factory paint".to_owned()), (2, "painted again".to_owned())];
        let now = match record.history {
            PaintHistory::Original => 1,
            PaintHistory::Refinished | PaintHistory::FreshRefinish { .. } => 2,
            PaintHistory::Unknown | PaintHistory::PolishedBefore { .. } => 0,
        };
        if let Some(chosen) = choice(ui, "History", now, &histories) {
            set(PanelFact::History(match chosen {
                1 => PaintHistory::Original,
                2 => PaintHistory::Refinished,
                _ => PaintHistory::Unknown,
            }));
        }
    }
    let mut coat = !record.left_uncoated;
    if ui.checkbox(&mut coat, "is coated").changed() {
        set(PanelFact::LeftUncoated(!coat));
    }
    if !record.note.is_empty() {
        ui.label(theme::soft(&record.note));
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
