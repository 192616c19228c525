//! Large keys on the screen, for gloves and wet hands.

use crate::gui::action::Action;
use crate::gui::entry::EntryWish;
use crate::gui::theme;
use crate::say;
use eframe::egui::{Button, RichText, Ui, vec2};

/// Height of a key in points, as in the bay.
const KEY: f32 = 56.0;
/// Air between keys.
const AIR: f32 = 8.0;

/// Draws the keys.
pub(super) fn pad_ui(ui: &mut Ui, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let wide = ((ui.available_width() - 3.0 * AIR) / 4.0).max(KEY);
    ui.spacing_mut().item_spacing = vec2(AIR, AIR);
    let digit = |text: &str| EntryWish::Type(text.to_owned());
    let rows: [[(&str, &str, EntryWish); 4]; 4] = [
        [
            ("7", "7", digit("7")),
            ("8", "8", digit("8")),
            ("9", "9", digit("9")),
            (say!("survey-pad-back"), say!("survey-pad-back-name"), EntryWish::Back),
        ],
        [
            ("4", "4", digit("4")),
            ("5", "5", digit("5")),
            ("6", "6", digit("6")),
            (say!("survey-pad-skip"), say!("survey-pad-skip-name"), EntryWish::Skip),
        ],
        [
            ("1", "1", digit("1")),
            ("2", "2", digit("2")),
            ("3", "3", digit("3")),
            (say!("survey-pad-again"), say!("survey-pad-again-name"), EntryWish::Repeat),
        ],
        [
            ("0", "0", digit("0")),
            (",", say!("survey-pad-sign"), digit(",")),
            ("", "", EntryWish::Clear),
            ("Enter", say!("survey-pad-take"), EntryWish::Take),
        ],
    ];
    for row in rows {
        ui.horizontal(|ui| {
            for (text, name, wish) in row {
                let width = match wish {
                    EntryWish::Clear => continue,
                    EntryWish::Take => 2.0 * wide + AIR,
                    _ => wide,
                };
                let is_digit = text.len() == 1;
                let mut label = RichText::new(text).size(if is_digit { 20.0 } else { 16.0 });
                if wish == EntryWish::Take {
                    label = label.color(p.on_accent);
                }
                let button = Button::new(label);
                let button = if wish == EntryWish::Take { button.fill(p.accent) } else { button };
                let key = ui.add_sized([width, KEY], button);
                if key.accessible_name(name).clicked() {
                    out.push(Action::Entry(wish));
                }
            }
        });
    }
}
