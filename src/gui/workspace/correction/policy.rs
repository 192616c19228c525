//! The shop's rules for removal, every one of them editable, with a way back.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{NumberRow, number_rows, said};
use crate::job::Command;
use crate::polish::RemovalPolicy;
use crate::units::Micrometres;
use eframe::egui::{self, Ui};

macro_rules! rules {
    (@um $label:literal, $($field:ident).+, $most:literal) => {
        NumberRow {
            label: $label,
            unit: "µm",
            decimals: if $most <= 50.0 { 1 } else { 0 },
            get: |p: &RemovalPolicy| p.$($field).+.um(),
            set: |p, v| p.$($field).+ = Micrometres::new(v).unwrap_or(p.$($field).+),
            least: 0.0,
            most: $most,
        }
    };
    (@share $label:literal, $field:ident) => {
        NumberRow {
            label: $label,
            unit: "%",
            decimals: 0,
            get: |p: &RemovalPolicy| p.$field * 100.0,
            set: |p, v| p.$field = v / 100.0,
            least: 0.0,
            most: 100.0,
        }
    };
}

/// Groups of rules, with what is said of each group.
fn groups() -> [(&'static str, &'static str, Vec<NumberRow<RemovalPolicy>>); 4] {
    [
        (
            "Life of the paint",
            "Our estimates around what trade pages repeat; a convention, not a law of nature.",
            vec![
                rules!(@um "Most in one visit", visit_cap_um, 50.0),
                rules!(@um "Most in its life", lifetime_um, 100.0),
                rules!(@share "and of its clear", lifetime_share_of_clear),
                rules!(@um "Clear that is kept", keep_clear_um, 200.0),
                rules!(@share "Taken as used, history unknown", unknown_history_spent),
            ],
        ),
        (
            "Clear that is assumed",
            "Gauges of this kind can't see the clear; it is taken as a share of the film.",
            vec![
                rules!(@share "At least, of the film", assumed_share_low),
                rules!(@um "but no more than", assumed_low_at_most_um, 200.0),
                rules!(@share "At most, of the film", assumed_share_high),
                rules!(@um "and no more than", assumed_high_at_most_um, 200.0),
            ],
        ),
        (
            "Thin and thick film",
            "Trade practice for the whole film on metal.",
            vec![
                rules!(@um "No cutting below", bands.no_cut_below_um, 1_000.0),
                rules!(@um "Finest polish only below", bands.finest_only_below_um, 1_000.0),
                rules!(@um "there at most", very_thin_um, 50.0),
                rules!(@um "Nothing strong below", bands.thin_below_um, 1_000.0),
                rules!(@um "there at most", thin_um, 50.0),
                rules!(@um "Painted again above", bands.refinished_above_um, 5_000.0),
                rules!(@um "Filler above", bands.filler_above_um, 10_000.0),
            ],
        ),
        (
            "Special places",
            "Our estimates. For sensors the vehicle maker's guidance comes first.",
            vec![
                rules!(@um "Painted again, at most", refinished_um, 50.0),
                rules!(@um "Still hardening, at most", fresh_um, 50.0),
                NumberRow {
                    label: "Hardening takes",
                    unit: "days",
                    decimals: 0,
                    get: |p| f64::from(p.fresh_days),
                    set: |p, v| p.fresh_days = v.round() as u32,
                    least: 0.0,
                    most: 365.0,
                },
                rules!(@um "Narrow panel, at most", narrow_um, 50.0),
                rules!(@um "Over a sensor, at most", sensor_um, 50.0),
            ],
        ),
    ]
}

/// All rules, and the way back to the defaults.
pub(super) fn policy_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let before = &m.job.policy;
    let mut policy = before.clone();
    for (title, source, rules) in groups() {
        ui.add_space(4.0);
        ui.label(theme::bold(title, 12.0));
        if let Some(changed) = number_rows(ui, title, before, &rules) {
            policy = changed;
        }
        ui.label(theme::soft(said(ui, source)));
    }
    let usual = RemovalPolicy::default();
    if ui.add_enabled(*before != usual, egui::Button::new("Back to the defaults")).clicked() {
        policy = usual;
    }
    if policy != *before {
        out.push(Action::edit(Command::SetPolicy(Box::new(policy))));
    }
}
