//! What is known of each panel: film, readings, defects, gloss, earlier visits, notes.

use crate::insight::{Insight, OpenPoints};
use crate::job::{Defect, PanelRecord, Spot};
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{Micrometres, capital};

pub(super) fn panels(input: &SheetInput<'_>, sheet: &mut Sheet) {
    sheet.heading(2, "Film and what may go");
    sheet.small("µm. Mean and lower bound of the readings before polishing, number of readings, the clear coat that is assumed, the budget and what decides it.");
    let (table, reasons) = film(input.insight, input);
    sheet.table(table);
    sheet.small(
        reasons.iter().enumerate().map(|(k, why)| format!("{}\u{202f}{why}", k + 1)).collect::<Vec<_>>().join("\n"),
    );
    if let Some(removal) = &input.insight.removal {
        sheet.text(format!("Over the vehicle: {}", removal.text));
    }
    section(sheet, "Readings", readings(input));
    section(sheet, "Defects", defects(input));
    section(sheet, "Gloss", gloss(input));
    section(sheet, "Earlier visits", ledger(input));
    section(sheet, "Facts and notes of panels", notes(input));
    section(sheet, "What the readings suggest", suggestions(&input.insight.points, input));
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
            ("Panel", false, 0.9),
            figure("n"),
            figure("Mean"),
            figure("At least"),
            figure("After"),
            figure("Clear"),
            figure("Budget"),
            figure("Decided by"),
        ],
    );
    for (index, panel) in insight.panels.iter().enumerate() {
        if panel.film.is_none() && panel.after.is_none() && panel.defects.is_empty() {
            continue;
        }
        let film = panel.film.as_ref();
        let of = |value: Option<f64>, digits: usize| {
            value.map_or_else(|| "\u{2013}".to_owned(), |v| format!("{v:.digits$}"))
        };
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
        &[("Panel", false, 0.6), ("Survey", true, 0.0), ("Place on the map, mm: readings, µm", false, 1.6)],
    );
    for (index, record) in records(input) {
        for survey in 0..=input.job.current_survey() {
            let spots: Vec<String> =
                record.spots.iter().filter(|s| s.count_in(survey) > 0).map(|s| spot_line(s, survey)).collect();
            if !spots.is_empty() {
                table.row([input.name(index), (survey + 1).to_string(), spots.join("\n")]);
            }
        }
    }
    table
}

fn spot_line(spot: &Spot, survey: u32) -> String {
    let value = |r: &crate::job::Reading| {
        let um = r.thickness_um.um();
        if um.fract() == 0.0 { format!("{um:.0}") } else { format!("{um:.1}") }
    };
    let values: Vec<String> = spot.readings_in(survey).map(value).collect();
    let mut line = format!("{}: {}", place(spot.at), values.join(" "));
    if spot.edge {
        line.push_str("; edge");
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
            ("Panel", false, 0.9),
            ("Defect", false, 0.0),
            ("Place, mm", true, 0.0),
            ("Size", true, 0.0),
            ("Number", true, 0.0),
            ("Depth", true, 0.0),
            ("Note", false, 1.0),
        ],
    );
    let depth = |(low, high): (Micrometres, Micrometres)| format!("{:.1} to {:.1}", low.um(), high);
    for (index, record) in records(input) {
        for Defect { kind, at, size_mm, quantity, note, photos, .. } in &record.defects {
            let facts = record.defects.iter().position(|d| d.at == *at && d.kind == *kind);
            let depth_um = facts.and_then(|k| input.insight.panels[index].defects.get(k)).map(|f| depth(f.depth_um));
            let pictures = match photos.len() {
                0 => String::new(),
                n => format!(
                    "{n} {} {}",
                    if n == 1 { "picture" } else { "pictures" },
                    if note.is_empty() { "" } else { "; " }
                ),
            };
            table.row([
                input.name(index),
                kind.name().to_owned(),
                place(*at),
                format!("{size_mm:.0}"),
                quantity.to_string(),
                depth_um.unwrap_or_default(),
                format!("{pictures}{note}"),
            ]);
        }
    }
    table
}

fn gloss(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[("Panel", false, 1.0), ("Survey", true, 0.0), ("Angle", true, 0.0), ("Gloss", true, 0.0)],
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
            ("Panel", false, 0.9),
            ("Visit", false, 1.0),
            ("Went", true, 0.0),
            ("At most", true, 0.0),
            ("Known from", false, 0.0),
        ],
    );
    for (index, record) in records(input) {
        for entry in &record.removals.entries {
            let (went, most) = (format!("{:.1}", entry.removed_um), format!("{:.1}", entry.upper_um));
            table.row([input.name(index), entry.visit.clone(), went, most, entry.source.name().to_owned()]);
        }
    }
    table
}

fn notes(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(TextSize::Small, &[("Panel", false, 0.7), ("What is noted", false, 2.0)]);
    for (index, record) in records(input) {
        let mut told = Vec::new();
        let mut say = |when: bool, text: String| {
            if when {
                told.push(text);
            }
        };
        say(record.left_uncoated, "left uncoated".to_owned());
        say(
            record.finish.is_some(),
            format!("finish: {}", words(&format!("{:?}", input.insight.panels[index].finish))),
        );
        say(record.history != crate::polish::PaintHistory::default(), format!("paint: {}", history(record)));
        if let Some(day) = record.painted_on {
            say(true, format!("painted on {day}"));
        }
        say(
            record.coating != crate::job::PreviousCoating::default(),
            format!("on it before: {}", record.coating.name()),
        );
        if let Some(level) = record.level_at_most {
            say(true, format!("held at {level} at most"));
        }
        if let Some(substrate) = record.substrate {
            say(true, format!("made of {}", substrate.name()));
        }
        say(!record.note.is_empty(), record.note.clone());
        if !told.is_empty() {
            table.row([input.name(index), capital(&told.join("; "))]);
        }
    }
    table
}

fn history(record: &PanelRecord) -> String {
    use crate::polish::PaintHistory as H;
    match record.history {
        H::Unknown => "not known".to_owned(),
        H::Original => "never polished".to_owned(),
        H::Refinished => "painted again".to_owned(),
        H::FreshRefinish { days } => format!("painted again {days} days before"),
        H::PolishedBefore { removed_um } => format!("polished before, {removed_um:.1} in all"),
    }
}

/// `ClearCoat` as "clear coat".
fn words(name: &str) -> String {
    let mut out = String::new();
    for c in name.chars() {
        if c.is_uppercase() && !out.is_empty() {
            out.push(' ');
        }
        out.extend(c.to_lowercase());
    }
    out
}

fn suggestions(points: &OpenPoints, input: &SheetInput<'_>) -> Table {
    let mut table =
        Table::new(TextSize::Small, &[("Where", false, 0.7), ("What", false, 1.3), ("What to do", false, 1.3)]);
    let gauge = points.gauge.iter().map(|f| ("Gauge".to_owned(), f));
    let panels = points.panels.iter().enumerate().flat_map(|(i, found)| found.iter().map(move |f| (i, f)));
    for (place, finding) in gauge.chain(panels.map(|(i, f)| (input.name(i), f))) {
        table.row([place, capital(&finding.cause), capital(&finding.action)]);
    }
    table
}
