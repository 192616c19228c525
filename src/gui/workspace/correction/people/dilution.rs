//! A small calculator for mixtures, with both readings of a ratio.

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::Mix;
use crate::gui::widgets::{number, said};
use crate::polish::{Mixture, RatioReading, mix};
use crate::say;
use crate::units::Millilitres;
use crate::words::decimal;
use eframe::egui::{self, Ui};

/// Asks how much at which ratio, and says both meanings.
pub(super) fn dilution_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let mut wanted = m.view.mix;
    if let Some(ml) = number(ui, say!("correction-mixture-wanted"), "ml", wanted.whole_ml, 0, 1.0..=1_000_000.0) {
        wanted.whole_ml = ml;
    }
    if let Some(parts) =
        number(ui, say!("correction-one-part-to"), say!("correction-parts"), wanted.parts, 0, 1.0..=10_000.0)
    {
        wanted.parts = parts;
    }
    ui.horizontal(|ui| {
        for parts in [10.0, 64.0, 256.0] {
            let chosen = (wanted.parts - parts).abs() < 0.5;
            if ui.add(egui::Button::selectable(chosen, format!("1:{parts:.0}"))).clicked() {
                wanted.parts = parts;
            }
        }
    });
    if wanted != m.view.mix {
        out.push(Action::View(ViewChange::Mix(wanted)));
    }
    let Mix { whole_ml, parts } = wanted;
    let whole = Millilitres::new(whole_ml).unwrap_or(Millilitres::ZERO);
    let meanings = [
        (RatioReading::PartsWater, say!("correction-parts-water", parts = decimal(parts, 0))),
        (RatioReading::PartsInAll, say!("correction-parts-in-all", parts = decimal(parts, 0))),
    ];
    for (reading, meaning) in meanings {
        ui.label(theme::bold(meaning, 14.0));
        ui.label(said(ui, &words(mix(whole, parts, reading))));
    }
    ui.label(theme::soft(say!("correction-ratio-hint")));
}

fn words(mixture: Mixture) -> String {
    let Mixture { concentrate, water, share } = mixture;
    let fine = |ml: Millilitres| if ml.ml() < 100.0 { format!("{ml:.1}") } else { format!("{ml:.0}") };
    let share = decimal(share * 100.0, 2);
    say!("correction-mixture", concentrate = fine(concentrate), water = fine(water), share = share)
}
