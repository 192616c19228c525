//! How sure the bounds have to be, and the borders of the film bands.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, number, said, section};
use crate::job::Command;
use crate::measure::{Assurance, FilmBands};
use crate::polish::RemovalPolicy;
use crate::units::Micrometres;
use eframe::egui::{self, Ui};

/// Levels that can be chosen; a job file may say others.
const LEVELS: [f64; 6] = [0.75, 0.80, 0.90, 0.95, 0.975, 0.99];

/// Coverage and confidence of the lower bound.
pub(super) fn assurance_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, "How sure");
    let now = m.job.assurance;
    if let Some(coverage) = level(ui, "Share of the panel", now.coverage) {
        out.push(Action::edit(Command::SetAssurance(Assurance { coverage, ..now })));
    }
    if let Some(confidence) = level(ui, "Sure of that", now.confidence) {
        out.push(Action::edit(Command::SetAssurance(Assurance { confidence, ..now })));
    }
    ui.label(theme::soft(format!(
        "\u{201c}At least\u{201d} means: {}. Few spots make it a cautious number.",
        now.in_words()
    )));
}

fn level(ui: &mut Ui, label: &str, now: f64) -> Option<f64> {
    let mut levels = LEVELS.to_vec();
    if !levels.contains(&now) {
        levels.push(now);
        levels.sort_by(f64::total_cmp);
    }
    let name = |level: f64| format!("{}\u{202f}%", (level * 1000.0).round() / 10.0);
    let options: Vec<_> = levels.into_iter().map(|l| (l, name(l))).collect();
    choice(ui, label, now, &options)
}

/// The borders between thin, usual, refinished and filled; closed at first.
pub(super) fn bands_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let bands = &m.job.policy.bands;
    egui::CollapsingHeader::new("Borders of the film, trade practice").id_salt("bands").show(ui, |ui| {
        let mut set = |bands: FilmBands| {
            let policy = RemovalPolicy { bands, ..m.job.policy.clone() };
            out.push(Action::edit(Command::SetPolicy(Box::new(policy))));
        };
        for (label, border) in BORDERS {
            let mut changed = bands.clone();
            let value = *border(&mut changed);
            if let Some(um) = number(ui, label, "µm", value.um(), 0, 0.0..=10_000.0).and_then(|v| Micrometres::new(v).ok()) {
                *border(&mut changed) = um;
                set(changed);
            }
        }
        if ui.add_enabled(*bands != FilmBands::default(), egui::Button::new("Back to the defaults")).clicked() {
            set(FilmBands::default());
        }
        ui.label(theme::soft(said(
            ui,
            "70 to 200\u{202f}µm are repeated on trade pages without a measurement behind them, 300 and 1000\u{202f}µm are common \
             practice; the two differences are our estimate. What the vehicle's maker says comes first.",
        )));
    });
}

type Border = fn(&mut FilmBands) -> &mut Micrometres;

/// Each border with its name, from thin to thick.
const BORDERS: [(&str, Border); 8] = [
    ("Too thin to cut, below", |b| &mut b.no_cut_below_um),
    ("Finest polish only, below", |b| &mut b.finest_only_below_um),
    ("Thin, below", |b| &mut b.thin_below_um),
    ("Refinished, above", |b| &mut b.refinished_above_um),
    ("Several times, above", |b| &mut b.several_above_um),
    ("Filler, above", |b| &mut b.filler_above_um),
    ("Uneven, spots differ by", |b| &mut b.uneven_above_um),
    ("Mirror panel differs by", |b| &mut b.mirror_above_um),
];
