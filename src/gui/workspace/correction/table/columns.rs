//! The columns of the table of panels: what stands in them and how they sort.

use crate::gui::action::Model;
use crate::gui::view_state::Column;
use crate::insight::PanelInsight;
use crate::say;
use crate::units::minutes;
use crate::vehicle::Surface;
use crate::words::decimal;
use eframe::egui::Align;

/// Head, share of the width, and side that a column's text keeps to.
pub(super) struct Shape {
    pub(super) title: &'static str,
    pub(super) width: f32,
    pub(super) align: Align,
}

/// How a column looks.
pub(super) fn shape(column: Column) -> Shape {
    let (title, width, align) = match column {
        Column::Panel => (say!("correction-column-panel"), 0.19, Align::LEFT),
        Column::Film => (say!("correction-column-film"), 0.10, Align::RIGHT),
        Column::MayGo => (say!("correction-column-may-go"), 0.085, Align::RIGHT),
        Column::Needed => (say!("correction-column-needed"), 0.085, Align::RIGHT),
        Column::WillGo => (say!("correction-column-will-go"), 0.24, Align::LEFT),
        Column::Level => (say!("correction-column-level"), 0.14, Align::LEFT),
        Column::Time => (say!("correction-column-time"), 0.08, Align::RIGHT),
        Column::Stays => (say!("correction-column-stays"), 0.08, Align::RIGHT),
    };
    Shape { title, width, align }
}

/// The head of a column within a sentence.
pub(super) fn in_sentence(column: Column) -> &'static str {
    match column {
        Column::Panel => say!("correction-in-sentence-panel"),
        Column::Film => say!("correction-in-sentence-film"),
        Column::MayGo => say!("correction-in-sentence-may-go"),
        Column::Needed => say!("correction-in-sentence-needed"),
        Column::WillGo => say!("correction-in-sentence-will-go"),
        Column::Level => say!("correction-in-sentence-level"),
        Column::Time => say!("correction-in-sentence-time"),
        Column::Stays => say!("correction-in-sentence-stays"),
    }
}

/// What stands in a column for a panel.
pub(super) fn text(m: &Model<'_>, index: usize, column: Column) -> String {
    m.units().say(&kept(m, index, column)).into_owned()
}

/// The same in the units that the job keeps.
fn kept(m: &Model<'_>, index: usize, column: Column) -> String {
    let panel: &PanelInsight = &m.insight.panels[index];
    let polished = !panel.polish.steps.is_empty();
    let known = panel.film.is_some();
    match column {
        Column::Panel => m.template.panels[index].name(m.view.naming),
        Column::Film => match &panel.film {
            Some(film) => format!("{:.0}", film.lower),
            None => say!("correction-not-read").to_owned(),
        },
        Column::MayGo if panel.budget.refused.is_some() && !known => "–".to_owned(),
        Column::MayGo => format!("{:.1}", panel.budget.allowed),
        Column::Needed if panel.needed().um() <= 0.0 => "–".to_owned(),
        Column::Needed => format!("{:.1}", panel.needed()),
        Column::WillGo | Column::Time if !polished => "–".to_owned(),
        Column::WillGo => {
            let (low, high) = (decimal(panel.polish.removal.um(), 1), format!("{:.1}", panel.removal_upper()));
            say!("correction-from-to", low = low, high = high)
        }
        Column::Level => panel.polish.level.to_string(),
        Column::Time => minutes(panel.polish.seconds),
        Column::Stays if panel.polish.stays.is_empty() => "–".to_owned(),
        Column::Stays => panel.polish.stays.len().to_string(),
    }
}

/// Painted panels in the order asked for; equal ones stay in the order of the vehicle.
pub(super) fn sorted(m: &Model<'_>) -> Vec<usize> {
    let all = 0..m.template.panels.len();
    let mut rows: Vec<usize> = all.filter(|&i| m.template.panels[i].surface == Surface::Paint).collect();
    let (column, rising) = m.view.table_order;
    let figure = |index: &usize| {
        let panel = &m.insight.panels[*index];
        match column {
            Column::Panel => 0.0,
            Column::Film => panel.film.as_ref().map_or(-1.0, |f| f.lower.um()),
            Column::MayGo => panel.budget.allowed.um(),
            Column::Needed => panel.needed().um(),
            Column::WillGo => panel.removal_upper().um(),
            Column::Level => f64::from(panel.polish.level as u8),
            Column::Time => panel.polish.seconds as f64,
            Column::Stays => panel.polish.stays.len() as f64,
        }
    };
    if column == Column::Panel {
        rows.sort_by_cached_key(|index| m.template.panels[*index].name(m.view.naming));
    } else {
        rows.sort_by(|a, b| figure(a).total_cmp(&figure(b)));
    }
    if !rising {
        rows.reverse();
    }
    rows
}
