//! The buttons for everybody: taking a tap back, stopping, the air, the rest.

use super::parts::{Look, side_by_side};
use crate::bay::Event;
use crate::gui::action::{Action, Model};
use crate::gui::bay::{Asking, BayWish, Trade};
use crate::say;
use eframe::egui::{Rect, Ui};

/// Draws the row.
pub(super) fn strip_ui(ui: &mut Ui, place: Rect, m: &Model<'_>, out: &mut Vec<Action>) {
    let run = m.day_run();
    let away: Vec<usize> =
        (0..run.problem().workers.len()).filter(|&w| run.day().away_until(w, run.now_s()).is_some()).collect();
    let all_away = away.len() == run.problem().workers.len();
    let asking = m.view.bay.asking;
    let look = |open: bool| if open { Look::Chosen } else { Look::Plain };
    let mut buttons = vec![
        (say!("bay-take-back"), Look::Plain, say!("bay-take-back-aloud").to_owned()),
        (
            if all_away { say!("bay-go-on") } else { say!("bay-pause") },
            look(asking == Some(Asking::Pause)),
            if all_away { say!("bay-go-on-aloud") } else { say!("bay-pause-aloud") }.to_owned(),
        ),
        (say!("bay-more"), look(asking == Some(Asking::More)), say!("bay-more").to_owned()),
    ];
    let air = run.day().air().unwrap_or(m.job.air);
    if m.view.bay.trade == Trade::Coating {
        let look = look(matches!(asking, Some(Asking::Air(_))));
        buttons.push((say!("bay-air"), look, say!("bay-air-aloud").to_owned()));
    }
    let toggle = |ask: Asking, open: bool| BayWish::Ask((!open).then_some(ask));
    let wish = match side_by_side(ui, place, &buttons, &[15.0, 14.0, 12.0]) {
        Some(0) => BayWish::Note(Event::TakenBack),
        Some(1) if all_away => {
            let back = |&w: &usize| Event::Returned { worker: run.problem().workers[w].id.clone() };
            BayWish::NoteAll(away.iter().map(back).collect())
        }
        Some(1) => toggle(Asking::Pause, asking == Some(Asking::Pause)),
        Some(2) => toggle(Asking::More, asking == Some(Asking::More)),
        Some(_) => toggle(Asking::Air(air), matches!(asking, Some(Asking::Air(_)))),
        None => return,
    };
    out.push(Action::Bay(wish));
}
