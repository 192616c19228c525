//! Many numbers of one thing, each on a line of its own.

use super::number;
use eframe::egui::Ui;

/// A number of a thing as a field: what it is called, its unit, how it is read and written, its range.
pub(in crate::gui) struct NumberRow<T> {
    pub(in crate::gui) label: &'static str,
    pub(in crate::gui) unit: &'static str,
    pub(in crate::gui) decimals: usize,
    pub(in crate::gui) get: fn(&T) -> f64,
    pub(in crate::gui) set: fn(&mut T, f64),
    pub(in crate::gui) least: f64,
    pub(in crate::gui) most: f64,
}

/// Draws the rows of one group; answers with what the thing has become once a number was finished.
pub(in crate::gui) fn number_rows<T: Clone + PartialEq>(
    ui: &mut Ui,
    group: &str,
    before: &T,
    rows: &[NumberRow<T>],
) -> Option<T> {
    let mut after = before.clone();
    for (at, row) in rows.iter().enumerate() {
        ui.push_id((group, at), |ui| {
            let range = row.least..=row.most;
            if let Some(value) = number(ui, row.label, row.unit, (row.get)(before), row.decimals, range) {
                (row.set)(&mut after, value);
            }
        });
    }
    (after != *before).then_some(after)
}
