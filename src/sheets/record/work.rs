//! What is done: polishing step by step, test spots, what it uses up, who polishes what, hands and ears.

use super::panels::section;
use crate::insight::supplies;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{clock, minutes};

pub(super) fn work(input: &SheetInput<'_>, sheet: &mut Sheet) {
    section(sheet, "Polishing", steps(input));
    section(sheet, "Test spots", tests(input));
    section(sheet, "Order of polishing", order(input));
    section(sheet, "Hands and ears", exposure(input));
    section(sheet, "Used up in polishing", used(input));
}

fn steps(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            ("Panel", false, 0.8),
            ("Level", false, 0.0),
            ("Steps", false, 1.4),
            ("Takes off, µm", true, 0.0),
            ("At most", true, 0.0),
            ("Time", true, 0.0),
        ],
    );
    for (index, insight) in input.insight.panels.iter().enumerate() {
        let plan = &insight.polish;
        if plan.steps.is_empty() && plan.local.is_empty() {
            continue;
        }
        let whole = plan.steps.iter().map(|s| format!("{}, {}\u{202f}×", s.name, s.passes));
        let local = plan
            .local
            .iter()
            .flat_map(|l| &l.steps)
            .map(|s| format!("at one place: {}, {}\u{202f}×", s.name, s.passes));
        table.row([
            input.name(index),
            plan.level.to_string(),
            local.chain(whole).collect::<Vec<_>>().join("\n"),
            format!("{:.1}", plan.removal.um()),
            format!("{:.1}", insight.removal_upper().um()),
            minutes(plan.seconds),
        ]);
    }
    table
}

fn tests(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[("Step", false, 1.0), ("Passes", true, 0.0), ("Took off", false, 1.0), ("What went", false, 1.0)],
    );
    for test in &input.job.test_spots.results {
        let off =
            test.removal.map(|r| format!("{:.1}, give or take {:.1}", r.um, r.give_or_take_um)).unwrap_or_default();
        let seen =
            test.seen.map(|s| format!("{:.0}\u{202f}% of the {}", s.share * 100.0, s.kind.name())).unwrap_or_default();
        table.row([test.step.clone(), test.passes.to_string(), off, seen]);
    }
    table
}

fn order(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[("From", true, 0.0), ("Who", false, 0.0), ("Panel", false, 1.0), ("Step", false, 1.2), ("Time", true, 0.0)],
    );
    for row in input.polishing.map(|o| o.rows.as_slice()).unwrap_or_default() {
        let who = input.job.crew[row.worker].name.clone();
        table.row([clock(row.at.start), who, input.name(row.panel), row.name.clone(), minutes(row.at.duration())]);
    }
    table
}

fn exposure(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            ("Day", true, 0.0),
            ("Who", false, 1.0),
            ("Vibration A(8), m/s²", true, 0.0),
            ("Points", true, 0.0),
            ("Noise LEX,8h, dB(A)", true, 0.0),
            ("Standing", false, 0.0),
        ],
    );
    for (day, part) in input.polishing.map(|o| o.days.as_slice()).unwrap_or_default().iter().enumerate() {
        for w in &part.workers {
            let noise = w.noise_lex8h_db.map_or_else(|| "\u{2013}".to_owned(), |db| format!("{db:.1}"));
            let standing = format!("{}; {}", w.hav_standing, w.noise_standing);
            let (a8, points) = (format!("{:.2}", w.hav_a8_ms2), format!("{:.0}", w.hav_points));
            table.row([(day + 1).to_string(), w.worker.clone(), a8, points, noise, standing]);
        }
    }
    table
}

fn used(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            ("Step", false, 1.0),
            ("Area", true, 0.0),
            ("Pads", true, 0.0),
            ("Sheets", true, 0.0),
            ("Polish", true, 0.0),
            ("Towels", true, 0.0),
        ],
    );
    for s in supplies(input.job, input.template, input.insight) {
        let (area, polish) = (format!("{:.1}", s.area), format!("{:.0}", s.polish));
        table.row([s.name, area, s.pads.to_string(), s.sheets.to_string(), polish, s.towels.to_string()]);
    }
    table
}
