//! Facts about the paint of the chosen panel.

use crate::gui::action::Action;
use crate::gui::theme;
use crate::gui::widgets::choice;
use crate::job::{Command, PanelFact, PanelRecord};
use crate::polish::{Finish, PaintHistory};
use crate::vehicle::{Panel, Surface};
use eframe::egui::Ui;

/// What the paint is, what was done to it, whether it is coated.
pub(super) fn paint_ui(ui: &mut Ui, panel: &Panel, record: &PanelRecord, out: &mut Vec<Action>) {
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
