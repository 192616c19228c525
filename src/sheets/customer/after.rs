//! Before and after, where the vehicle was read twice.

use crate::measure::{GlossGeometry, Visibility, compare_gloss};
use crate::say;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::Micrometres;

/// Thickness and gloss before and after; nothing without a second survey.
pub(super) fn before_and_after(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let film = film(input);
    let gloss = gloss(input);
    if film.rows.is_empty() && gloss.rows.is_empty() {
        return;
    }
    sheet.heading(2, say!("sheet-before-after"));
    sheet.table(film);
    sheet.table(gloss);
}

/// Two panels beside one another in each row, the first half of them at the left.
fn film(input: &SheetInput<'_>) -> Table {
    let head = [
        (say!("sheet-panel"), false, 1.0),
        (say!("sheet-paint-before"), true, 0.0),
        (say!("sheet-after"), true, 0.0),
        (say!("sheet-polished-off"), true, 0.0),
    ];
    let rows = film_rows(input);
    if rows.len() < 4 {
        let mut table = Table::new(TextSize::Normal, &head);
        for row in rows {
            table.row(row);
        }
        return table;
    }
    let mut table = Table::new(TextSize::Normal, &[head, head].concat());
    let (left, right) = rows.split_at(rows.len().div_ceil(2));
    for (k, row) in left.iter().enumerate() {
        let beside = right.get(k).cloned().unwrap_or_default();
        table.rows.push(row.iter().cloned().chain(beside).collect());
    }
    table
}

/// Panel, before, after, what was taken off.
fn film_rows(input: &SheetInput<'_>) -> Vec<[String; 4]> {
    let mut rows = Vec::new();
    for (index, insight) in input.insight.panels.iter().enumerate() {
        let (Some(before), Some(after)) = (&insight.film, &insight.after) else { continue };
        let Some(now) = &after.read.film else { continue };
        let shown = after.removal.as_ref().is_some_and(|r| r.visibility == Visibility::Shown);
        let went = if shown {
            input.said(say!("sheet-about", film = format!("{:.1}", after.went.likely)))
        } else {
            say!("sheet-too-little").to_owned()
        };
        let mean = |v: f64| input.options.units.with_unit(v, Micrometres::UNIT, 0);
        rows.push([input.short_name(index), mean(before.mean), mean(now.mean), went]);
    }
    rows
}

fn gloss(input: &SheetInput<'_>) -> Table {
    let mut table =
        Table::new(TextSize::Normal, &[(say!("sheet-panel"), false, 0.0), (say!("sheet-gloss-units"), false, 1.0)]);
    for (index, panel) in input.template.panels.iter().enumerate() {
        let Some(record) = input.job.record(&panel.id) else { continue };
        let at = |geometry: GlossGeometry, after: bool| -> Vec<f64> {
            let stage = |survey: u32| input.job.surveys.get(survey as usize).map(|s| s.stage);
            let wanted = if after { crate::job::SurveyStage::After } else { crate::job::SurveyStage::Before };
            let mine = record.gloss.iter().filter(|g| g.geometry == geometry && stage(g.survey) == Some(wanted));
            mine.map(|g| g.gloss_gu.gu()).collect()
        };
        let compared = GlossGeometry::ALL.into_iter().filter_map(|g| compare_gloss(g, &at(g, false), &at(g, true)));
        let told: Vec<String> = compared.map(|c| c.text).collect();
        if !told.is_empty() {
            table.row([input.short_name(index), told.join(" ")]);
        }
    }
    table
}
