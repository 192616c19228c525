//! A line below the top bar, there only while something about the file should be known.

use super::{Keep, KeepWish};
use crate::file::Holder;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::work::{Standing, clock_words};
use eframe::egui::{self, Ui};

/// What is said, and what can be done.
struct Notice {
    text: String,
    offers: Vec<(&'static str, Action)>,
}

impl Keep {
    fn notice(&self) -> Option<Notice> {
        let keeper = &self.keeper;
        let save_as = || ("Save as…", Action::Effect(Effect::AskSaveAs));
        let notice = |text: String, offers| Some(Notice { text, offers });
        if self.unsaved.later && keeper.found().is_some() {
            let text = "Unsaved work from before is waiting. Until you say what becomes of it, changes are only kept by saving.";
            return notice(text.to_owned(), vec![("Look at it", Action::Keep(KeepWish::AskAgain))]);
        }
        if let Some(reason) = keeper.failure() {
            let text = format!(
                "What is unsaved could not be kept beside the job: {reason}. It is tried again; free some space, or save soon."
            );
            return notice(text, vec![save_as()]);
        }
        match keeper.standing() {
            Standing::Free | Standing::Ours(_) => None,
            Standing::NoLocks(_) => {
                let text = "In this folder two windows can't know of each other. Open this job in one window only.";
                let read = KeepWish::NoticeRead(text.to_owned());
                let is_new = self.read.as_deref() != Some(text);
                notice(text.to_owned(), vec![("Close", Action::Keep(read))]).filter(|_| is_new)
            }
            standing => {
                let mut offers = vec![save_as()];
                if matches!(standing, Standing::Others(_)) {
                    offers.push(("Work on it here", Action::Keep(KeepWish::WorkHere)));
                }
                notice(format!("{} Save changes under another name.", self.why_not(standing)?), offers)
            }
        }
    }

    /// Why the job can't be saved under its name, as a sentence.
    pub(super) fn why_not(&self, standing: &Standing) -> Option<String> {
        Some(match standing {
            Standing::Free | Standing::Ours(_) | Standing::NoLocks(_) => return None,
            Standing::Others(holder) => self.who(holder.as_ref()),
            Standing::NoWriting(reason) => format!("Nothing can be written in the folder of this job: {reason}."),
            Standing::Protected => "The file of this job is marked as not to be written.".to_owned(),
            Standing::Newer(format) => format!(
                "A newer version of the program wrote this file (format {format}). It is shown as far as this version \
                 understands it, and never written over."
            ),
        })
    }

    /// Who has a file open, as a sentence.
    pub(super) fn who(&self, holder: Option<&Holder>) -> String {
        let Some(holder) = holder else { return "Another window has this job open.".to_owned() };
        let by = match (holder.user.trim(), holder.host.trim()) {
            ("", "") => String::new(),
            ("", host) => format!(" on {host}"),
            (user, "") => format!(" by {user}"),
            (user, host) => format!(" by {user} on {host}"),
        };
        let since = clock_words(holder.since_s, self.keeper.now_s());
        format!("This job is open in another window{by}, since {since}.")
    }
}

/// Draws the line, if there is something to say.
pub(in crate::gui) fn notice_ui(ui: &mut Ui, keep: &Keep, out: &mut Vec<Action>) {
    let Some(notice) = keep.notice() else { return };
    let p = theme::of(ui.ctx());
    let frame = egui::Frame::new().fill(p.accent_wash).inner_margin(egui::Margin::symmetric(16, 6));
    egui::Panel::top("notice").resizable(false).frame(frame).show(ui, |ui| {
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            for (name, action) in notice.offers {
                if ui.button(name).clicked() {
                    out.push(action);
                }
            }
            ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                ui.add(egui::Label::new(notice.text).wrap());
            });
        });
    });
}
