//! The shop's rules for removal, every one of them editable, with a way back.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{NumberRow, number_rows, said};
use crate::job::Command;
use crate::polish::RemovalPolicy;
use crate::say;
use crate::units::Micrometres;
use eframe::egui::{self, Ui};

macro_rules! rules {
    (@um $label:literal, $($field:ident).+, $most:literal) => {
        NumberRow {
            label: say!($label),
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
            label: say!($label),
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
            say!("correction-group-life"),
            say!("correction-group-life-source"),
            vec![
                rules!(@um "correction-rule-visit", visit_cap_um, 50.0),
                rules!(@um "correction-rule-life", lifetime_um, 100.0),
                rules!(@share "correction-rule-life-share", lifetime_share_of_clear),
                rules!(@um "correction-rule-keep", keep_clear_um, 200.0),
                rules!(@share "correction-rule-unknown", unknown_history_spent),
            ],
        ),
        (
            say!("correction-group-clear"),
            say!("correction-group-clear-source"),
            vec![
                rules!(@share "correction-rule-clear-least", assumed_share_low),
                rules!(@um "correction-rule-clear-least-cap", assumed_low_at_most_um, 200.0),
                rules!(@share "correction-rule-clear-most", assumed_share_high),
                rules!(@um "correction-rule-clear-most-cap", assumed_high_at_most_um, 200.0),
            ],
        ),
        (
            say!("correction-group-film"),
            say!("correction-group-film-source"),
            vec![
                rules!(@um "correction-rule-no-cut", bands.no_cut_below_um, 1_000.0),
                rules!(@um "correction-rule-finest-only", bands.finest_only_below_um, 1_000.0),
                rules!(@um "correction-rule-there-at-most", very_thin_um, 50.0),
                rules!(@um "correction-rule-thin", bands.thin_below_um, 1_000.0),
                rules!(@um "correction-rule-there-at-most", thin_um, 50.0),
                rules!(@um "correction-rule-painted-again-above", bands.refinished_above_um, 5_000.0),
                rules!(@um "correction-rule-filler", bands.filler_above_um, 10_000.0),
            ],
        ),
        (
            say!("correction-group-places"),
            say!("correction-group-places-source"),
            vec![
                rules!(@um "correction-rule-painted-again", refinished_um, 50.0),
                rules!(@um "correction-rule-fresh", fresh_um, 50.0),
                NumberRow {
                    label: say!("correction-rule-hardening"),
                    unit: say!("correction-days"),
                    decimals: 0,
                    get: |p| f64::from(p.fresh_days),
                    set: |p, v| p.fresh_days = v.round() as u32,
                    least: 0.0,
                    most: 365.0,
                },
                rules!(@um "correction-rule-narrow", narrow_um, 50.0),
                rules!(@um "correction-rule-sensor", sensor_um, 50.0),
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
    if ui.add_enabled(*before != usual, egui::Button::new(say!("correction-back-to-defaults"))).clicked() {
        policy = usual;
    }
    if policy != *before {
        out.push(Action::edit(Command::SetPolicy(Box::new(policy))));
    }
}
