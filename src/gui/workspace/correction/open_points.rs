//! What somebody has to look at or to say before polishing begins.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{said, section};
use crate::polish::SeamDifference;
use crate::say;
use crate::units::{capital, listed};
use eframe::egui::{self, RichText, Ui};

/// Contradictory tests and seams across which the finish will differ; nothing where there is none.
pub(super) fn open_points_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let (notes, seams) = (&m.insight.learned.notes, &m.insight.differences);
    if notes.is_empty() && seams.is_empty() {
        return;
    }
    section(ui, say!("correction-open-points"));
    for note in notes {
        ui.label(RichText::new(said(ui, note)).color(p.note));
    }
    if seams.is_empty() {
        return;
    }
    let head = say!("correction-finish-differs", seams = seams.len());
    egui::CollapsingHeader::new(RichText::new(head).color(p.note)).id_salt("seams").show(ui, |ui| {
        ui.label(theme::soft(say!("correction-seam-advice")));
        for seam in seams {
            let (a, b) = seam.panels;
            let name = |at: usize| m.template.panels[at].name(m.view.naming);
            let text = RichText::new(listed(&[name(a), name(b)])).color(p.accent);
            ui.spacing_mut().interact_size.y = 24.0;
            if ui.add(egui::Button::new(text).frame(false)).clicked() {
                let ids = [a, b].map(|at| m.template.panels[at].id.clone());
                out.push(Action::View(ViewChange::ChooseAll(ids.to_vec())));
            }
            ui.label(theme::soft(said(ui, &format!("{}.", capital(&seam.cause)))));
        }
    });
}

/// What differs between one panel and its neighbours.
pub(super) fn beside_ui(ui: &mut Ui, m: &Model<'_>, index: usize) {
    let p = theme::of(ui.ctx());
    let other = |seam: &SeamDifference| match seam.panels {
        (a, b) if a == index => Some(b),
        (a, b) if b == index => Some(a),
        _ => None,
    };
    let mine: Vec<_> = m.insight.differences.iter().filter_map(|s| Some((other(s)?, &s.cause))).collect();
    if mine.is_empty() {
        return;
    }
    section(ui, say!("correction-beside"));
    for (other, cause) in mine {
        let name = m.template.panels[other].name(m.view.naming);
        let text = said(ui, &say!("correction-looks-different", panel = name, cause = cause));
        ui.label(RichText::new(text).color(p.note));
    }
}
