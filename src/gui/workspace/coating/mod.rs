//! Coating: the air, the window, the order, the coating itself.

mod air;
mod amounts;
mod choices;
mod order;
mod product;

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::section;
use crate::say;
use eframe::egui::{self, Ui};

/// Draws the coating sheet.
pub(super) fn coating_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    air::verdict_ui(ui, m);
    section(ui, say!("coating-order"));
    order::order_ui(ui, m, out);
    order::reasons_ui(ui, m);
    folded(ui, "asked", say!("coating-asked-of-order"), |ui| choices::choices_ui(ui, m, out));
    folded(ui, "levels", say!("coating-who-levels"), |ui| choices::crew_ui(ui, m, out));
    section(ui, say!("coating-air"));
    air::air_ui(ui, m, out);
    air::window_ui(ui, m, out);
    section(ui, say!("coating-coating"));
    product::product_ui(ui, m, out);
    folded(ui, "needed", say!("coating-how-much-needed"), |ui| amounts::amounts_ui(ui, m));
    section(ui, say!("coating-step-by-step"));
    order::rows_ui(ui, m, out);
}

/// Something that is closed until somebody wants it; `salt` tells it from others, whatever its title says.
fn folded(ui: &mut Ui, salt: &str, title: &str, add: impl FnOnce(&mut Ui)) {
    egui::CollapsingHeader::new(theme::bold(title, 14.0)).id_salt(salt).show(ui, add);
}
