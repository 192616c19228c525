//! What is known of each panel: film, readings, defects, gloss, earlier visits, notes.

use crate::insight::{Insight, OpenPoints};
use crate::job::{Defect, PanelRecord, Spot};
use crate::polish::Finish;
use crate::say;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{Micrometres, capital};
use crate::words::decimal;

pub(super) fn panels(input: &SheetInput<'_>, sheet: &mut Sheet) {
    sheet.heading(2, say!("sheet-film-may-go"));
    sheet.small(input.said(say!("sheet-film-small")));
    let (table, reasons) = film(input.insight, input);
    sheet.table(table);
    let reasons = reasons.iter().enumerate().map(|(k, why)| format!("{}\u{202f}{}", k + 1, input.said(why)));
    sheet.small(reasons.collect::<Vec<_>>().join("\n"));
    if let Some(removal) = &input.insight.removal {
        sheet.text(say!("sheet-over-vehicle", removal = input.said(&removal.text)));
    }
    section(sheet, say!("sheet-readings"), readings(input));
    section(sheet, say!("sheet-defects"), defects(input));
    section(sheet, say!("sheet-gloss"), gloss(input));
    section(sheet, say!("sheet-visits"), ledger(input));
    section(sheet, say!("sheet-facts-notes"), notes(input));
    section(sheet, say!("sheet-suggest"), suggestions(&input.insight.points, input));
}

/// A heading with its table, if that has rows.
pub(super) fn section(sheet: &mut Sheet, title: &str, table: Table) {
    if !table.rows.is_empty() {
        sheet.heading(2, title);
        sheet.table(table);
    }
}

fn records<'a>(input: &'a SheetInput<'_>) -> impl Iterator<Item = (usize, &'a PanelRecord)> {
    let panels = input.template.panels.iter().enumerate();
    panels.filter_map(|(index, panel)| Some((index, &**input.job.record(&panel.id)?)))
}

/// A row for each panel, and what decides budgets, in the order of their numbers: most panels have the same.
fn film(insight: &Insight, input: &SheetInput<'_>) -> (Table, Vec<String>) {
    let mut reasons: Vec<String> = Vec::new();
    let figure = |head| (head, true, 0.0);
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 0.9),
            figure("n"),
            figure(say!("sheet-mean")),
            figure(say!("sheet-at-least")),
            figure(say!("sheet-after")),
            figure(say!("sheet-clear")),
            figure(say!("sheet-budget")),
            figure(say!("sheet-decided")),
        ],
    );
    for (index, panel) in insight.panels.iter().enumerate() {
        if panel.film.is_none() && panel.after.is_none() && panel.defects.is_empty() {
            continue;
        }
        let film = panel.film.as_ref();
        let of =
            |value: Option<f64>, digits: usize| value.map_or_else(|| "\u{2013}".to_owned(), |v| input.film(v, digits));
        let after = panel.after.as_ref().and_then(|a| a.read.film.as_ref());
        let limit = panel.budget.deciding().map(|l| l.what.clone());
        table.row([
            input.name(index),
            film.map_or_else(|| "0".to_owned(), |f| f.n.to_string()),
            of(film.map(|f| f.mean), 1),
            of(film.map(|f| f.lower.um()), 1),
            of(after.map(|f| f.mean), 1),
            of(panel.budget.clear.as_ref().map(|c| c.lower.um()), 1),
            of(Some(panel.budget.allowed.um()), 1),
            panel.budget.refused.clone().or(limit).map(|why| number_of(why, &mut reasons)).unwrap_or_default(),
        ]);
    }
    (table, reasons)
}

/// The number of a reason in the list, where it goes if it is not there yet.
fn number_of(why: String, reasons: &mut Vec<String>) -> String {
    let known = reasons.iter().position(|r| *r == why);
    let index = known.unwrap_or_else(|| {
        reasons.push(why);
        reasons.len() - 1
    });
    (index + 1).to_string()
}

fn place(at: crate::geometry::MapPoint) -> String {
    format!("{:.0}, {:.0}", at.x, at.y).replace('-', "\u{2212}")
}

/// A row for each panel and survey, a line for each spot: its place, its readings, what else is known of it.
fn readings(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 0.6),
            (say!("sheet-survey"), true, 0.0),
            (&input.said(say!("sheet-place-readings")), false, 1.6),
        ],
    );
    for (index, record) in records(input) {
        for survey in 0..=input.job.current_survey() {
            let spots: Vec<String> =
                record.spots.iter().filter(|s| s.count_in(survey) > 0).map(|s| spot_line(input, s, survey)).collect();
            if !spots.is_empty() {
                table.row([input.name(index), (survey + 1).to_string(), spots.join("\n")]);
            }
        }
    }
    table
}

fn spot_line(input: &SheetInput<'_>, spot: &Spot, survey: u32) -> String {
    let value = |r: &crate::job::Reading| input.options.units.as_read(r.thickness_um);
    let values: Vec<String> = spot.readings_in(survey).map(value).collect();
    let mut line = format!("{}: {}", place(spot.at), values.join(" "));
    if spot.edge {
        line = say!("sheet-edge", spot = line);
    }
    if !spot.note.is_empty() {
        line = format!("{line}; {}", spot.note);
    }
    line
}

fn defects(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 0.9),
            (say!("sheet-defect"), false, 0.0),
            (say!("sheet-place"), true, 0.0),
            (say!("sheet-size"), true, 0.0),
            (say!("sheet-count"), true, 0.0),
            (say!("sheet-depth"), true, 0.0),
            (say!("sheet-note"), false, 1.0),
        ],
    );
    let depth = |(low, high): (Micrometres, Micrometres)| {
        input.said(say!("sheet-depth-range", low = decimal(low.um(), 1), high = format!("{high:.1}")))
    };
    for (index, record) in records(input) {
        for Defect { kind, at, size_mm, quantity, note, photos, .. } in &record.defects {
            let facts = record.defects.iter().position(|d| d.at == *at && d.kind == *kind);
            let depth_um = facts.and_then(|k| input.insight.panels[index].defects.get(k)).map(|f| depth(f.depth_um));
            let pictures = match photos.len() {
                0 => String::new(),
                count => say!("sheet-pictures", count = count),
            };
            let told: Vec<&str> = [pictures.as_str(), note].into_iter().filter(|t| !t.is_empty()).collect();
            table.row([
                input.name(index),
                kind.name().to_owned(),
                place(*at),
                format!("{size_mm:.0}"),
                quantity.to_string(),
                depth_um.unwrap_or_default(),
                told.join("; "),
            ]);
        }
    }
    table
}

fn gloss(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 1.0),
            (say!("sheet-survey"), true, 0.0),
            (say!("sheet-angle"), true, 0.0),
            (say!("sheet-gloss"), true, 0.0),
        ],
    );
    for (index, record) in records(input) {
        for g in &record.gloss {
            let angle = format!("{:.0}°", g.geometry.degrees());
            table.row([input.name(index), (g.survey + 1).to_string(), angle, format!("{:.1}", g.gloss_gu)]);
        }
    }
    table
}

fn ledger(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 0.9),
            (say!("sheet-visit"), false, 1.0),
            (say!("sheet-went"), true, 0.0),
            (say!("sheet-at-most"), true, 0.0),
            (say!("sheet-known-from"), false, 0.0),
        ],
    );
    for (index, record) in records(input) {
        for entry in &record.removals.entries {
            let figure = |film: Micrometres| input.said(format!("{film:.1}"));
            let (went, most) = (figure(entry.removed_um), figure(entry.upper_um));
            table.row([input.name(index), entry.visit.clone(), went, most, entry.source.name().to_owned()]);
        }
    }
    table
}

fn notes(input: &SheetInput<'_>) -> Table {
    let mut table =
        Table::new(TextSize::Small, &[(say!("sheet-panel"), false, 0.7), (say!("sheet-noted"), false, 2.0)]);
    for (index, record) in records(input) {
        let mut told = Vec::new();
        let mut tell = |when: bool, text: String| {
            if when {
                told.push(text);
            }
        };
        tell(record.left_uncoated, say!("sheet-uncoated").to_owned());
        let finish = finish_in_words(input.insight.panels[index].finish);
        tell(record.finish.is_some(), say!("sheet-finish", finish = finish));
        tell(
            record.history != crate::polish::PaintHistory::default(),
            say!("sheet-paint", history = input.said(history(record))),
        );
        if let Some(day) = record.painted_on {
            tell(true, say!("sheet-painted-on", day = day.to_string()));
        }
        tell(
            record.coating != crate::job::PreviousCoating::default(),
            say!("sheet-on-before", coating = record.coating.name()),
        );
        if let Some(level) = record.level_at_most {
            tell(true, say!("sheet-held", level = level.to_string()));
        }
        if let Some(substrate) = record.substrate {
            tell(true, say!("sheet-made-of", substrate = substrate.name()));
        }
        tell(!record.note.is_empty(), record.note.clone());
        if !told.is_empty() {
            table.row([input.name(index), capital(&told.join("; "))]);
        }
    }
    table
}

fn history(record: &PanelRecord) -> String {
    use crate::polish::PaintHistory as H;
    match record.history {
        H::Unknown => say!("sheet-history-unknown").to_owned(),
        H::Original => say!("sheet-history-original").to_owned(),
        H::Refinished => say!("sheet-history-again").to_owned(),
        H::FreshRefinish { days } => say!("sheet-history-fresh", count = days),
        H::PolishedBefore { removed_um } => say!("sheet-history-polished", film = format!("{removed_um:.1}")),
    }
}

fn finish_in_words(finish: Finish) -> &'static str {
    match finish {
        Finish::ClearCoat => say!("sheet-finish-clear-coat"),
        Finish::SingleStage => say!("sheet-finish-single-stage"),
        Finish::Matte => say!("sheet-finish-matte"),
        Finish::FilmCovered => say!("sheet-finish-film-covered"),
        Finish::Wrapped => say!("sheet-finish-wrapped"),
        Finish::Bare => say!("sheet-finish-bare"),
        Finish::Glass => say!("sheet-finish-glass"),
        Finish::Lens => say!("sheet-finish-lens"),
    }
}

fn suggestions(points: &OpenPoints, input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[(say!("sheet-where"), false, 0.7), (say!("sheet-what"), false, 1.3), (say!("sheet-to-do"), false, 1.3)],
    );
    let gauge = points.gauge.iter().map(|f| (say!("sheet-gauge").to_owned(), f));
    let panels = points.panels.iter().enumerate().flat_map(|(i, found)| found.iter().map(move |f| (i, f)));
    for (place, finding) in gauge.chain(panels.map(|(i, f)| (input.name(i), f))) {
        let told = |text: &str| capital(&input.said(text));
        table.row([place, told(&finding.cause), told(&finding.action)]);
    }
    table
}
