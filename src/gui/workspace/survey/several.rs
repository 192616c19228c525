//! Several panels at once: the same defect on each, the same fact of each.

use super::defects::{QUANTITIES, kinds};
use super::paint;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{choice, primary, section};
use crate::job::{Command, Defect};
use crate::polish::DefectKind;
use crate::say;
use crate::vehicle::{Panel, Surface};
use eframe::egui::Ui;

/// Draws the sheet of the panels that are chosen.
pub(super) fn several_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let panels: Vec<&Panel> = m.chosen().into_iter().map(|(_, panel)| panel).collect();
    let painted: Vec<&Panel> = panels.iter().copied().filter(|p| p.surface == Surface::Paint).collect();
    ui.label(theme::bold(say!("survey-chosen", count = panels.len()), 20.0));
    let names: Vec<String> = panels.iter().map(|p| p.name(m.view.naming)).collect();
    ui.label(theme::soft(names.join("; ")));
    ui.separator();
    section(ui, say!("survey-same-on-each"));
    let id = ui.make_persistent_id("several-defect");
    let (mut kind, mut quantity) = ui.data(|d| d.get_temp::<(DefectKind, u8)>(id)).unwrap_or((DefectKind::Swirl, 3));
    if let Some(chosen) = choice(ui, say!("survey-kind"), kind, &kinds()) {
        kind = chosen;
    }
    let quantities: Vec<(u8, String)> =
        (1..).zip(&QUANTITIES[1..]).map(|(q, n)| (q, format!("{q}, {}", n.text()))).collect();
    if let Some(chosen) = choice(ui, say!("survey-how-many"), quantity, &quantities) {
        quantity = chosen;
    }
    ui.data_mut(|d| d.insert_temp(id, (kind, quantity)));
    if primary(ui, &say!("survey-add-to", count = panels.len())).clicked() {
        let of = |panel: &&Panel| Command::AddDefect(panel.id.clone(), Defect { quantity, ..whole(kind, panel) });
        let commands = panels.iter().map(of).collect();
        out.push(Action::edit(Command::All { label: say!("survey-add-many"), commands }));
        out.push(Action::View(ViewChange::Overlay(crate::scene::Overlay::Defects)));
    }
    if !painted.is_empty() {
        section(ui, say!("survey-paint-each"));
        paint::paint_ui(ui, m, &painted, out);
    }
}

/// A defect that is all over a panel.
fn whole(kind: DefectKind, panel: &Panel) -> Defect {
    let across = panel.outline.bounds();
    let size = crate::units::Millimetres::new(f64::from(across.width().max(across.height()).round()));
    let plain = Defect::new(kind, panel.label.centre);
    Defect { size_mm: size.unwrap_or(plain.size_mm), ..plain }
}
