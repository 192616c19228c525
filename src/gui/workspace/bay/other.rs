//! Somebody takes something else than the plan says: from the map, or from a list.

use super::card::verb_panel;
use super::parts::{Look, TARGET, press};
use crate::bay::Event;
use crate::crew::State;
use crate::gui::action::{Action, Model};
use crate::gui::bay::BayWish;
use crate::gui::theme;
use crate::say;
use crate::scene::{BayFacts, Card};
use eframe::egui::{Rect, ScrollArea, Sense, Ui, pos2, vec2};

/// Draws what a worker may take, the panel that is chosen on the map first.
pub(super) fn other_ui(ui: &mut Ui, m: &Model<'_>, card: &Card, out: &mut Vec<Action>) {
    ui.horizontal(|ui| {
        ui.label(theme::bold(say!("bay-takes", person = &card.name), 20.0));
        let right = ui.max_rect().right();
        let back = Rect::from_min_size(pos2(right - 92.0, ui.min_rect().top() - 4.0), vec2(92.0, TARGET - 4.0));
        if press(ui, back, say!("bay-back-to-card"), &[16.0], Look::Plain, say!("bay-back-to-card-aloud")) {
            out.push(Action::Bay(BayWish::Ask(None)));
        }
    });
    ui.add_space(18.0);
    let rows = choices(m, card.worker);
    if rows.is_empty() {
        ui.label(say!("bay-nothing-to-begin"));
    }
    ScrollArea::vertical().id_salt("other").auto_shrink([false, false]).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 6.0;
        for (operation, text, why) in rows {
            let (place, _) = ui.allocate_exact_size(vec2(ui.available_width() - 12.0, TARGET), Sense::hover());
            let aloud = say!("bay-takes-what", person = &card.name, what = &text);
            if press(ui, place, &text, &[18.0, 16.0, 14.0, 12.0], Look::Plain, &aloud) {
                let operation = m.day_run().problem().operations[operation].id.clone();
                out.push(Action::Bay(BayWish::Ask(None)));
                out.push(Action::Bay(BayWish::Note(Event::Began { worker: card.name.clone(), operation })));
            }
            if let Some(why) = why {
                ui.label(theme::soft(why));
            }
        }
    });
}

/// Something that can be begun: index, words, what speaks against it.
type Choice = (usize, String, Option<String>);

/// What somebody can begin, that of the chosen panel first, then in the order of the plan.
fn choices(m: &Model<'_>, worker: usize) -> Vec<Choice> {
    let run = m.day_run();
    let (problem, day, now_s) = (run.problem(), run.day(), run.now_s());
    let board = run.board();
    let facts =
        BayFacts { template: m.template, naming: m.view.naming, problem, day, board: &board, late: run.late(), now_s };
    let so_far = day.so_far(problem, now_s);
    let planned = |o: usize| board.workers.iter().flat_map(|w| &w.next).find(|n| n.operation == o).map(|n| n.start_s);
    let chosen = m.current().map(|(index, _)| index);
    let mut rows: Vec<((bool, Option<i64>), Choice)> = (0..problem.operations.len())
        .filter(|&o| so_far.operations[o] == State::ToDo)
        .filter(|&o| problem.workers[worker].roles.contains(&problem.operations[o].role))
        .filter(|&o| day.can_begin(problem, worker, o))
        .map(|o| {
            let doing = facts.doing(o);
            let why = run.holds(worker, o).first().map(|h| facts.hold(*h));
            let text = verb_panel(&doing);
            ((doing.panel != chosen || chosen.is_none(), planned(o)), (o, text, why))
        })
        .collect();
    rows.sort();
    rows.into_iter().map(|(_, choice)| choice).collect()
}
