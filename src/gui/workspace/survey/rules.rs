//! How sure the bounds have to be, and the borders of the film bands.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{choice, number, said, section};
use crate::job::Command;
use crate::measure::{Assurance, FilmBands};
use crate::message;
use crate::polish::RemovalPolicy;
use crate::say;
use crate::units::Micrometres;
use crate::words::Message;
use crate::words::shortest;
use eframe::egui::{self, Ui};

/// Levels that can be chosen; a job file may say others.
const LEVELS: [f64; 6] = [0.75, 0.80, 0.90, 0.95, 0.975, 0.99];

/// Coverage and confidence of the lower bound.
pub(super) fn assurance_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    section(ui, say!("survey-how-sure"));
    let now = m.job.assurance;
    if let Some(coverage) = level(ui, say!("survey-share-of-panel"), now.coverage) {
        out.push(Action::edit(Command::SetAssurance(Assurance { coverage, ..now })));
    }
    if let Some(confidence) = level(ui, say!("survey-sure-of-that"), now.confidence) {
        out.push(Action::edit(Command::SetAssurance(Assurance { confidence, ..now })));
    }
    ui.label(theme::soft(say!("survey-at-least-means", meaning = now.in_words())));
}

fn level(ui: &mut Ui, label: &str, now: f64) -> Option<f64> {
    let mut levels = LEVELS.to_vec();
    if !levels.contains(&now) {
        levels.push(now);
        levels.sort_by(f64::total_cmp);
    }
    let name = |level: f64| format!("{}\u{202f}%", shortest((level * 1000.0).round() / 10.0));
    let options: Vec<_> = levels.into_iter().map(|l| (l, name(l))).collect();
    choice(ui, label, now, &options)
}

/// The borders between thin, usual, refinished and filled; closed at first.
pub(super) fn bands_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let bands = &m.job.policy.bands;
    egui::CollapsingHeader::new(say!("survey-borders")).id_salt("bands").show(ui, |ui| {
        let mut set = |bands: FilmBands| {
            let policy = RemovalPolicy { bands, ..m.job.policy.clone() };
            out.push(Action::edit(Command::SetPolicy(Box::new(policy))));
        };
        for (label, border) in BORDERS {
            let mut changed = bands.clone();
            let value = *border(&mut changed);
            if let Some(um) =
                number(ui, label.text(), "µm", value.um(), 0, 0.0..=10_000.0).and_then(|v| Micrometres::new(v).ok())
            {
                *border(&mut changed) = um;
                set(changed);
            }
        }
        if ui.add_enabled(*bands != FilmBands::default(), egui::Button::new(say!("survey-to-defaults"))).clicked() {
            set(FilmBands::default());
        }
        ui.label(theme::soft(said(ui, say!("survey-borders-source"))));
    });
}

type Border = fn(&mut FilmBands) -> &mut Micrometres;

/// Each border with its name, from thin to thick.
const BORDERS: [(Message, Border); 8] = [
    (message!("survey-border-no-cut"), |b| &mut b.no_cut_below_um),
    (message!("survey-border-finest"), |b| &mut b.finest_only_below_um),
    (message!("survey-border-thin"), |b| &mut b.thin_below_um),
    (message!("survey-border-refinished"), |b| &mut b.refinished_above_um),
    (message!("survey-border-several"), |b| &mut b.several_above_um),
    (message!("survey-border-filler"), |b| &mut b.filler_above_um),
    (message!("survey-border-uneven"), |b| &mut b.uneven_above_um),
    (message!("survey-border-mirror"), |b| &mut b.mirror_above_um),
];
