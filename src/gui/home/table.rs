//! What the map shows, as a table: for reading, and for copying into a spreadsheet.

use crate::gui::action::Model;
use crate::gui::view_state::Workspace;
use crate::gui::widgets::units_of;
use crate::say;
use crate::sheets::spreadsheet_cell;
use crate::units::{ShownUnits, clock};
use crate::vehicle::Surface;
use eframe::egui;

/// Heads and rows, each row as long as the heads.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct PlainTable {
    pub(super) heads: Vec<String>,
    pub(super) rows: Vec<Vec<String>>,
}

impl PlainTable {
    /// With tabs between cells and a line for each row, as spreadsheets take it.
    pub(super) fn as_text(&self) -> String {
        let clean = |cell: &String| spreadsheet_cell(&cell.replace(['\t', '\n', '\r'], " ")).into_owned();
        let line = |row: &Vec<String>| row.iter().map(clean).collect::<Vec<_>>().join("\t");
        std::iter::once(&self.heads).chain(&self.rows).map(|row| line(row) + "\n").collect()
    }
}

/// The table that belongs to the workspace that is open: who does what where there is an order, otherwise the panels.
pub(super) fn of_workspace(ctx: &egui::Context, m: &Model<'_>) -> PlainTable {
    let order = matches!(m.view.workspace, Workspace::Coating | Workspace::Bay | Workspace::Practice);
    if order && !m.rows.is_empty() { order_table(m) } else { panels_table(units_of(ctx), m) }
}

/// Every panel with everything that the map shows of it.
pub(super) fn panels_table(units: ShownUnits, m: &Model<'_>) -> PlainTable {
    let um = |head: &str| format!("{head}, {}", units.name("µm"));
    let heads = vec![
        say!("home-table-panel").to_owned(),
        say!("home-table-made-of").to_owned(),
        um(say!("home-table-mean")),
        um(say!("home-table-least")),
        say!("home-table-defects").to_owned(),
        um(say!("home-table-may-go")),
        um(say!("home-table-needed")),
        um(say!("home-table-will-go")),
        say!("home-table-level").to_owned(),
        say!("home-table-minutes").to_owned(),
        say!("home-table-turn").to_owned(),
    ];
    let figure = |um: f64, decimals| units.number(um, "µm", decimals);
    let row = |(index, panel): (usize, &crate::vehicle::Panel)| {
        let insight = &m.insight.panels[index];
        let painted = panel.surface == Surface::Paint;
        let film = insight.film.as_ref();
        let polished = !insight.polish.steps.is_empty();
        let or_dash = |text: Option<String>| text.unwrap_or_else(|| "–".to_owned());
        vec![
            panel.name(m.view.naming),
            insight.substrate.name().to_owned(),
            or_dash(film.map(|f| figure(f.mean, 0))),
            or_dash(film.map(|f| figure(f.lower.um(), 0))),
            insight.defects.len().to_string(),
            or_dash(film.map(|_| figure(insight.budget.allowed.um(), 1))),
            or_dash((insight.needed().um() > 0.0).then(|| figure(insight.needed().um(), 1))),
            or_dash(polished.then(|| figure(insight.removal_upper().um(), 1))),
            if painted { insight.polish.level.to_string() } else { "–".to_owned() },
            or_dash(polished.then(|| format!("{:.0}", insight.polish.seconds as f64 / 60.0))),
            or_dash(turn(m, index)),
        ]
    };
    PlainTable { heads, rows: m.template.panels.iter().enumerate().map(row).collect() }
}

/// Who comes to a panel, and as which of their panels.
fn turn(m: &Model<'_>, panel: usize) -> Option<String> {
    let turns: Vec<String> = (0..m.job.crew.len())
        .flat_map(|worker| {
            let mine = m.rows.iter().filter(move |row| row.worker == worker);
            let here = (1..).zip(mine).filter(move |(_, row)| row.panel == panel);
            here.map(move |(place, _)| format!("{} {place}", m.job.crew[worker].name))
        })
        .collect();
    (!turns.is_empty()).then(|| turns.join(", "))
}

/// Who does what, from when to when.
fn order_table(m: &Model<'_>) -> PlainTable {
    let heads = [
        say!("home-table-worker"),
        say!("home-table-what"),
        say!("home-table-panel"),
        say!("home-table-layer"),
        say!("home-table-begins"),
        say!("home-table-ends"),
    ]
    .map(str::to_owned)
    .to_vec();
    let row = |row: &crate::insight::OrderRow| {
        vec![
            m.job.crew.get(row.worker).map(|member| member.name.clone()).unwrap_or_default(),
            row.role.verb().to_owned(),
            m.template.panels[row.panel].name(m.view.naming),
            row.layer.to_string(),
            clock(row.at.start),
            clock(row.at.end),
        ]
    };
    PlainTable { heads, rows: m.rows.iter().map(row).collect() }
}
