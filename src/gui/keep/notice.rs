//! A line below the top bar, there only while something about the file should be known.

use super::{Keep, KeepWish};
use crate::file::Holder;
use crate::gui::action::{Action, Effect};
use crate::gui::theme;
use crate::say;
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
        let save_as = || (say!("keep-save-as"), Action::Effect(Effect::AskSaveAs));
        let notice = |text: String, offers| Some(Notice { text, offers });
        if self.unsaved.later && keeper.found().is_some() {
            let text = say!("keep-waiting");
            return notice(text.to_owned(), vec![(say!("keep-look"), Action::Keep(KeepWish::AskAgain))]);
        }
        if let Some(reason) = keeper.failure() {
            let text = say!("keep-not-beside", why = reason);
            return notice(text, vec![save_as()]);
        }
        match keeper.standing() {
            Standing::Free | Standing::Ours(_) => None,
            Standing::NoLocks(_) => {
                let text = say!("keep-two-windows");
                let read = KeepWish::NoticeRead(text.to_owned());
                let is_new = self.read.as_deref() != Some(text);
                notice(text.to_owned(), vec![(say!("common-close"), Action::Keep(read))]).filter(|_| is_new)
            }
            standing => {
                let mut offers = vec![save_as()];
                if matches!(standing, Standing::Others(_)) {
                    offers.push((say!("keep-work-here"), Action::Keep(KeepWish::WorkHere)));
                }
                notice(say!("keep-save-elsewhere", why = self.why_not(standing)?), offers)
            }
        }
    }

    /// Why the job can't be saved under its name, as a sentence.
    pub(super) fn why_not(&self, standing: &Standing) -> Option<String> {
        Some(match standing {
            Standing::Free | Standing::Ours(_) | Standing::NoLocks(_) => return None,
            Standing::Others(holder) => self.who(holder.as_ref()),
            Standing::NoWriting(reason) => say!("keep-no-writing", why = reason),
            Standing::Protected => say!("keep-protected").to_owned(),
            Standing::Newer(format) => say!("keep-newer", format = format),
        })
    }

    /// Who has a file open, as a sentence.
    pub(super) fn who(&self, holder: Option<&Holder>) -> String {
        let Some(holder) = holder else { return say!("keep-another").to_owned() };
        let since = clock_words(holder.since_s, self.keeper.now_s());
        match (holder.user.trim(), holder.host.trim()) {
            ("", "") => say!("keep-open-since", since = since),
            ("", host) => say!("keep-open-on", host = host, since = since),
            (user, "") => say!("keep-open-by", user = user, since = since),
            (user, host) => say!("keep-open-by-on", user = user, host = host, since = since),
        }
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
